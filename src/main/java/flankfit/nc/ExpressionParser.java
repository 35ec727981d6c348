package flankfit.nc;

import flankfit.nc.Expression.Step;
import java.util.Optional;

/**
 * Compiles expressions from bytes. Goes down one level for each priority and for each bracket, at
 * most {@value #DEEPEST} brackets deep. The first fault ends the text, so that nothing follows it.
 *
 * @see "T. R. Kramer, F. M. Proctor, E. Messina, The NIST RS274NGC Interpreter – Version 3, NISTIR
 *     6556, 2000, 3.3.2; priorities and logic are this product's own"
 */
final class ExpressionParser {
  /** How deep brackets may nest. */
  static final int DEEPEST = 32;

  private static final String[] COMPARISONS = {"EQ", "NE", "GT", "GE", "LT", "LE"};
  private static final Step[] COMPARING = {
    Step.EQUAL, Step.NOT_EQUAL, Step.GREATER, Step.GREATER_OR_EQUAL, Step.LESS, Step.LESS_OR_EQUAL
  };
  private static final String[] FUNCTIONS = {
    "SIN", "COS", "TAN", "ASIN", "ACOS", "ATAN", "SQRT", "ABS", "ROUND", "FIX", "FUP", "LN", "EXP"
  };
  private static final Step[] CALLING = {
    Step.SIN,
    Step.COS,
    Step.TAN,
    Step.ASIN,
    Step.ACOS,
    Step.ATAN,
    Step.SQRT,
    Step.ABS,
    Step.ROUND,
    Step.FIX,
    Step.FUP,
    Step.LN,
    Step.EXP
  };

  private final SyntaxText text;
  private final LiteralReader literals;
  private int open;
  private Expression.Builder steps = new Expression.Builder();

  ExpressionParser(SourceText source, int end) {
    text = new SyntaxText(source);
    literals = new LiteralReader(source, text, end);
  }

  /** The text that is read. */
  SyntaxText text() {
    return text;
  }

  /** Begins a statement or a value that ends before a limit. */
  void begin(int from, int before) {
    text.begin(from, before);
    literals.begin();
    open = 0;
  }

  /** The first number with a blank inside. */
  Optional<LiteralReader.Span> blankInside() {
    return literals.blankInside();
  }

  /** The last comment that was passed; empty text for none. */
  String remark() {
    return text.remark();
  }

  /** Where reading stands: after what was read. */
  int at() {
    return text.at();
  }

  void moveTo(int offset) {
    text.moveTo(offset);
  }

  /** The fault, when {@link #failed}. */
  SyntaxFault fault() {
    return text.fault();
  }

  boolean failed() {
    return text.failed();
  }

  /** FL01, or FL02 when the brackets are to blame. */
  void expected(String wanted) {
    text.expected(wanted);
  }

  /** An expression up to the first thing that cannot belong to it. */
  Expression expression() {
    text.peek();
    int start = text.at();
    steps = new Expression.Builder();
    comparison();
    return steps.build(start, Math.max(0, text.trimmed(text.at()) - start));
  }

  /** An expression in brackets, such as a condition. */
  Expression bracketed() {
    text.peek();
    int start = text.at();
    steps = new Expression.Builder();
    brackets();
    return steps.build(start, Math.max(0, text.at() - start));
  }

  /** The value of a word: signs, then a number, variable, bracket or function. */
  Expression value() {
    text.peek();
    int start = text.at();
    steps = new Expression.Builder();
    signed();
    return steps.build(start, Math.max(0, text.at() - start));
  }

  /** The number of a variable, after its mark was read. */
  Expression variableNumber() {
    text.peek();
    int start = text.at();
    steps = new Expression.Builder();
    primary();
    return steps.build(start, Math.max(0, text.at() - start));
  }

  private void comparison() {
    sum();
    while (true) {
      int which = which(COMPARISONS);
      if (which < 0) {
        return;
      }
      int start = text.at();
      text.moveTo(text.at() + 2);
      sum();
      steps.add(COMPARING[which], 0, 2, start, 2);
    }
  }

  private int which(String[] words) {
    text.peek();
    for (int i = 0; i < words.length; i++) {
      if (text.spells(words[i])) {
        return i;
      }
    }
    return -1;
  }

  private void sum() {
    term();
    while (true) {
      int c = text.peek();
      int start = text.at();
      Step step;
      if (c == '+' || c == '-') {
        text.moveTo(text.at() + 1);
        step = c == '+' ? Step.ADD : Step.SUBTRACT;
      } else if (text.take("OR")) {
        step = Step.OR;
      } else if (text.take("XOR")) {
        step = Step.XOR;
      } else {
        return;
      }
      int bytesLong = text.at() - start;
      term();
      steps.add(step, 0, 2, start, bytesLong);
    }
  }

  private void term() {
    power();
    while (true) {
      int c = text.peek();
      int start = text.at();
      Step step;
      if (c == '*' || c == '/') {
        text.moveTo(text.at() + 1);
        step = c == '*' ? Step.MULTIPLY : Step.DIVIDE;
      } else if (text.take("MOD")) {
        step = Step.MODULO;
      } else if (text.take("AND")) {
        step = Step.AND;
      } else {
        return;
      }
      int bytesLong = text.at() - start;
      power();
      steps.add(step, 0, 2, start, bytesLong);
    }
  }

  private void power() {
    signed();
    while (text.peek() == '*' && text.spells("**")) {
      int start = text.at();
      text.moveTo(text.at() + 2);
      signed();
      steps.add(Step.POWER, 0, 2, start, 2);
    }
  }

  private void signed() {
    boolean negative = false;
    int start = text.at();
    for (int c = text.peek(); c == '+' || c == '-'; c = text.peek()) {
      negative ^= c == '-';
      start = text.at();
      text.moveTo(text.at() + 1);
    }
    primary();
    if (negative) {
      steps.add(Step.NEGATE, 0, 1, start, 1);
    }
  }

  private void primary() {
    int c = text.peek();
    if (c == '#') {
      variable();
    } else if (c == '[') {
      brackets();
    } else if (Characters.isDigit(c) || c == '.') {
      literal();
    } else {
      function();
    }
  }

  /** One or more marks and the number they stand before. */
  private void variable() {
    int start = text.at();
    int marks = 0;
    while (text.peek() == '#') {
      marks++;
      text.moveTo(text.at() + 1);
    }
    int c = text.peek();
    if (c == '[') {
      brackets();
    } else if (Characters.isDigit(c) || c == '.') {
      int from = text.at();
      double value = literals.read();
      if (value == Math.rint(value) && value < 100_000) {
        steps.add(Step.VARIABLE, value, 0, start, text.at() - start);
        marks--;
      } else {
        steps.add(Step.NUMBER, value, 0, from, Math.max(0, text.at() - from));
      }
    } else {
      function();
    }
    for (int i = 0; i < marks; i++) {
      steps.add(Step.READ, 0, 1, start, Math.max(0, text.at() - start));
    }
  }

  private void brackets() {
    if (text.peek() != '[') {
      text.expected("[");
      return;
    }
    if (++open > DEEPEST) {
      text.unbalanced();
      return;
    }
    text.moveTo(text.at() + 1);
    comparison();
    if (text.peek() != ']') {
      text.expected("an operator or ]");
      return;
    }
    text.moveTo(text.at() + 1);
    open--;
  }

  private void literal() {
    int start = text.at();
    double value = literals.read();
    steps.add(Step.NUMBER, value, 0, start, Math.max(0, text.at() - start));
  }

  private void function() {
    int which = which(FUNCTIONS);
    if (which < 0) {
      text.expected("a number, a variable, a function or [");
      return;
    }
    int start = text.at();
    text.moveTo(text.at() + FUNCTIONS[which].length());
    brackets();
    if (CALLING[which] == Step.ATAN && text.peek() == '/' && secondFollows()) {
      text.moveTo(text.at() + 1);
      brackets();
      steps.add(Step.ANGLE, 0, 2, start, Math.max(0, text.at() - start));
    } else {
      steps.add(CALLING[which], 0, 1, start, Math.max(0, text.at() - start));
    }
  }

  /** Whether a bracket stands after the stroke: the second number of an angle. */
  private boolean secondFollows() {
    int stroke = text.at();
    text.moveTo(text.at() + 1);
    boolean bracket = text.peek() == '[';
    text.moveTo(text.failed() ? text.at() : stroke);
    return bracket;
  }
}
