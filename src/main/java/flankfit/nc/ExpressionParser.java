package flankfit.nc;

import flankfit.finding.Code;
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
  private static final int DEEPEST = 32;

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

  private final SourceText source;
  private final byte[] bytes;
  private final NumberReader number;
  private int begin;
  private int at;
  private int limit;
  private int open;
  private Expression.Builder steps = new Expression.Builder();
  private SyntaxFault fault = SyntaxFault.NONE;
  private boolean failed;
  private Optional<Span> blankInside = Optional.empty();
  private String remark = "";

  /** A stretch of the text (bytes). */
  record Span(int offset, int length) {}

  ExpressionParser(SourceText source, int end) {
    this.source = source;
    this.bytes = source.bytes();
    this.number = new NumberReader(bytes, end);
  }

  /** Begins a statement or a value that ends before a limit. */
  void begin(int from, int before) {
    begin = from;
    at = from;
    limit = before;
    open = 0;
    failed = false;
    blankInside = Optional.empty();
    remark = "";
  }

  /** The first number with a blank inside. */
  Optional<Span> blankInside() {
    return blankInside;
  }

  /** The last comment that was passed; empty text for none. */
  String remark() {
    return remark;
  }

  /** Where reading stands: after what was read. */
  int at() {
    return at;
  }

  void moveTo(int offset) {
    at = offset;
  }

  /** The fault, when {@link #failed}. */
  SyntaxFault fault() {
    return fault;
  }

  boolean failed() {
    return failed;
  }

  /** The first fault stays; nothing is read after it. */
  void fail(Code code, int offset, int length, String what, String why, String fix) {
    if (!failed) {
      failed = true;
      fault = new SyntaxFault(code, offset, length, what, why, fix);
    }
    at = limit;
  }

  /** FL01, or FL02 when the brackets are to blame. */
  void expected(String wanted) {
    int opened = count('[');
    int closed = count(']');
    if (opened != closed) {
      brackets(opened, closed);
      return;
    }
    int last = trimmed(limit);
    String rest = at >= last ? "the end" : source.text(at, Math.min(last - at, 20));
    String text = source.text(begin, Math.max(0, last - begin));
    fail(
        Code.FL01,
        begin,
        Math.max(1, last - begin),
        text + ": not an assignment, condition or value",
        "expected " + wanted + " at " + rest,
        "write #i = value, IF [a EQ b] GOTO n, or a letter and [value]");
  }

  private void brackets(int opened, int closed) {
    fail(
        Code.FL02,
        begin,
        Math.max(1, trimmed(limit) - begin),
        "brackets do not balance",
        opened + " opened, " + closed + " closed; " + DEEPEST + " deep at most",
        "close them; ( ) is a comment");
  }

  private int count(int bracket) {
    int found = 0;
    boolean comment = false;
    for (int i = begin; i < limit; i++) {
      comment = bytes[i] == '(' || (comment && bytes[i] != ')');
      found += !comment && bytes[i] == bracket ? 1 : 0;
    }
    return found;
  }

  /** The end without blanks and comments before it. */
  int trimmed(int to) {
    int last = begin;
    boolean comment = false;
    for (int i = begin; i < to; i++) {
      comment = bytes[i] == '(' || (comment && bytes[i] != ')');
      if (!comment && bytes[i] != ')' && !Characters.isBlank(bytes[i])) {
        last = i + 1;
      }
    }
    return last;
  }

  /** The next byte that means something, as a capital; a line end at the limit. */
  int peek() {
    while (at < limit) {
      int c = bytes[at];
      if (c == '(') {
        comment();
      } else if (Characters.isBlank(c)) {
        at++;
      } else {
        return Characters.capital(c);
      }
    }
    return '\n';
  }

  private void comment() {
    int start = at;
    at++;
    while (at < limit && bytes[at] != ')' && bytes[at] != '(') {
      at++;
    }
    if (at >= limit) {
      fail(
          Code.RD08,
          start,
          limit - start,
          "comment is not closed",
          "everything after ( would be lost",
          "add )");
    } else if (bytes[at] == '(') {
      fail(
          Code.RD09,
          at,
          1,
          "parentheses do not match",
          "comments cannot be nested",
          "use only one pair; brackets [ ] for arithmetic");
    } else {
      remark = source.text(start + 1, at - start - 1).strip();
      at++;
    }
  }

  /** Reads a word in letters if it stands here. */
  boolean take(String word) {
    if (peek() != word.charAt(0) || !spells(at, word)) {
      return false;
    }
    at += word.length();
    return true;
  }

  /** Whether a word in letters stands here. */
  boolean sees(String word) {
    return peek() == word.charAt(0) && spells(at, word);
  }

  private boolean spells(int from, String word) {
    if (from + word.length() > limit) {
      return false;
    }
    for (int i = 0; i < word.length(); i++) {
      if (Characters.capital(bytes[from + i]) != word.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** An expression up to the first thing that cannot belong to it. */
  Expression expression() {
    peek();
    int start = at;
    steps = new Expression.Builder();
    comparison();
    return steps.build(start, Math.max(0, trimmed(at) - start));
  }

  /** An expression in brackets, such as a condition. */
  Expression bracketed() {
    peek();
    int start = at;
    steps = new Expression.Builder();
    brackets();
    return steps.build(start, Math.max(0, at - start));
  }

  /** The value of a word: signs, then a number, variable, bracket or function. */
  Expression value() {
    peek();
    int start = at;
    steps = new Expression.Builder();
    signed();
    return steps.build(start, Math.max(0, at - start));
  }

  /** The number of a variable, after its mark was read. */
  Expression variableNumber() {
    peek();
    int start = at;
    steps = new Expression.Builder();
    primary();
    return steps.build(start, Math.max(0, at - start));
  }

  private void comparison() {
    sum();
    while (true) {
      int which = which(COMPARISONS);
      if (which < 0) {
        return;
      }
      int start = at;
      at += 2;
      sum();
      steps.add(COMPARING[which], 0, 2, start, 2);
    }
  }

  private int which(String[] words) {
    peek();
    for (int i = 0; i < words.length; i++) {
      if (spells(at, words[i])) {
        return i;
      }
    }
    return -1;
  }

  private void sum() {
    term();
    while (true) {
      int c = peek();
      int start = at;
      Step step;
      if (c == '+' || c == '-') {
        at++;
        step = c == '+' ? Step.ADD : Step.SUBTRACT;
      } else if (take("OR")) {
        step = Step.OR;
      } else if (take("XOR")) {
        step = Step.XOR;
      } else {
        return;
      }
      int bytesLong = at - start;
      term();
      steps.add(step, 0, 2, start, bytesLong);
    }
  }

  private void term() {
    power();
    while (true) {
      int c = peek();
      int start = at;
      Step step;
      if (c == '*' || c == '/') {
        at++;
        step = c == '*' ? Step.MULTIPLY : Step.DIVIDE;
      } else if (take("MOD")) {
        step = Step.MODULO;
      } else if (take("AND")) {
        step = Step.AND;
      } else {
        return;
      }
      int bytesLong = at - start;
      power();
      steps.add(step, 0, 2, start, bytesLong);
    }
  }

  private void power() {
    signed();
    while (peek() == '*' && spells(at, "**")) {
      int start = at;
      at += 2;
      signed();
      steps.add(Step.POWER, 0, 2, start, 2);
    }
  }

  private void signed() {
    boolean negative = false;
    int start = at;
    for (int c = peek(); c == '+' || c == '-'; c = peek()) {
      negative ^= c == '-';
      start = at;
      at++;
    }
    primary();
    if (negative) {
      steps.add(Step.NEGATE, 0, 1, start, 1);
    }
  }

  private void primary() {
    int c = peek();
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
    int start = at;
    int marks = 0;
    while (peek() == '#') {
      marks++;
      at++;
    }
    int c = peek();
    if (c == '[') {
      brackets();
    } else if (Characters.isDigit(c) || c == '.') {
      int from = at;
      literalNumber();
      double value = failed() ? 0 : number.value();
      if (value == Math.rint(value) && value < 100_000) {
        steps.add(Step.VARIABLE, value, 0, start, at - start);
        marks--;
      } else {
        steps.add(Step.NUMBER, value, 0, from, Math.max(0, at - from));
      }
    } else {
      function();
    }
    for (int i = 0; i < marks; i++) {
      steps.add(Step.READ, 0, 1, start, Math.max(0, at - start));
    }
  }

  private void brackets() {
    if (peek() != '[') {
      expected("[");
      return;
    }
    if (++open > DEEPEST) {
      brackets(count('['), count(']'));
      return;
    }
    at++;
    comparison();
    if (peek() != ']') {
      expected("an operator or ]");
      return;
    }
    at++;
    open--;
  }

  private void literal() {
    int start = at;
    literalNumber();
    steps.add(Step.NUMBER, failed() ? 0 : number.value(), 0, start, Math.max(0, at - start));
  }

  private void literalNumber() {
    int start = at;
    if (!number.read(at)) {
      expected("a number");
      return;
    }
    at = Math.min(number.end(), limit);
    int next = at < limit ? bytes[at] : '\n';
    if (number.blankInside() && blankInside.isEmpty()) {
      blankInside = Optional.of(new Span(start, at - start));
    }
    if (!number.reason().isEmpty()) {
      notNumber(start, number.reason());
    } else if (next == '.') {
      notNumber(start, "it has two points");
    } else if (next == ',') {
      comma(start);
    } else if (Characters.capital(next) == 'O' && !spells(at, "OR")) {
      fail(
          Code.RD14,
          start,
          at + 1 - start,
          "letter O in " + source.text(start, at + 1 - start),
          "a program number cannot stand here",
          "write the digit 0");
    }
  }

  private void notNumber(int start, String reason) {
    int stop = at;
    while (stop < limit && (Characters.isDigit(bytes[stop]) || bytes[stop] == '.')) {
      stop++;
    }
    fail(
        Code.RD12,
        start,
        stop - start,
        source.text(start, stop - start) + " is not a number",
        reason,
        "write one number");
  }

  private void comma(int start) {
    int stop = at + 1;
    while (stop < limit && Characters.isDigit(bytes[stop])) {
      stop++;
    }
    String text = source.text(start, stop - start);
    fail(
        Code.RD07,
        start,
        stop - start,
        text + ": decimal comma",
        "the decimal sign is a point",
        ReadingFindings.withoutComma(text));
  }

  private void function() {
    int which = which(FUNCTIONS);
    if (which < 0) {
      expected("a number, a variable, a function or [");
      return;
    }
    int start = at;
    at += FUNCTIONS[which].length();
    brackets();
    if (CALLING[which] == Step.ATAN && peek() == '/' && secondFollows()) {
      at++;
      brackets();
      steps.add(Step.ANGLE, 0, 2, start, Math.max(0, at - start));
    } else {
      steps.add(CALLING[which], 0, 1, start, Math.max(0, at - start));
    }
  }

  /** Whether a bracket stands after the stroke: the second number of an angle. */
  private boolean secondFollows() {
    int stroke = at;
    at++;
    boolean bracket = peek() == '[';
    at = failed() ? at : stroke;
    return bracket;
  }
}
