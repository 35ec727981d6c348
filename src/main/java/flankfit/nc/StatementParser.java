package flankfit.nc;

import flankfit.finding.Code;
import flankfit.nc.Statement.Assignment;
import flankfit.nc.Statement.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads assignments and control statements. */
final class StatementParser {
  private static final int LOOPS = 3;

  private final ExpressionParser expressions;
  private final SyntaxText text;

  StatementParser(ExpressionParser expressions) {
    this.expressions = expressions;
    text = expressions.text();
  }

  /** Reads one statement; {@link ExpressionParser#fault} tells whether it is one. */
  Statement read(int from, int before) {
    expressions.begin(from, before);
    Statement statement = statement();
    if (text.peek() != '\n') {
      tail(statement);
    }
    return statement;
  }

  private Statement statement() {
    if (text.peek() == '#') {
      return assignments();
    }
    if (text.take("IF")) {
      return conditional();
    }
    if (text.take("GOTO")) {
      return jump(Kind.GOTO, Optional.empty());
    }
    if (text.take("WHILE")) {
      Expression condition = expressions.bracketed();
      if (!text.take("DO")) {
        text.expected("DO");
      }
      return loop(Kind.WHILE, Optional.of(condition));
    }
    if (text.take("DO")) {
      return loop(Kind.DO, Optional.empty());
    }
    if (text.take("END")) {
      return loop(Kind.END, Optional.empty());
    }
    text.expected("#, IF, GOTO, WHILE, DO or END");
    return assign(List.of());
  }

  private static Statement assign(List<Assignment> all) {
    return new Statement(Kind.ASSIGN, Optional.empty(), Optional.empty(), 0, all, "");
  }

  private Statement assignments() {
    List<Assignment> all = new ArrayList<>();
    while (text.peek() == '#') {
      all.add(assignment());
    }
    return assign(all);
  }

  private Assignment assignment() {
    if (text.peek() != '#') {
      text.expected("#");
    }
    text.moveTo(text.failed() ? text.at() : text.at() + 1);
    Expression variable = expressions.variableNumber();
    if (text.peek() != '=') {
      text.expected("=");
    }
    text.moveTo(text.failed() ? text.at() : text.at() + 1);
    return new Assignment(variable, expressions.expression());
  }

  private Statement conditional() {
    Expression condition = expressions.bracketed();
    if (text.take("GOTO")) {
      return jump(Kind.IF_GOTO, Optional.of(condition));
    }
    if (!text.take("THEN")) {
      text.expected("GOTO or THEN");
    }
    return new Statement(
        Kind.IF_THEN,
        Optional.of(condition),
        Optional.empty(),
        0,
        text.failed() ? List.of() : List.of(assignment()),
        "");
  }

  private Statement jump(Kind kind, Optional<Expression> condition) {
    return new Statement(kind, condition, Optional.of(expressions.value()), 0, List.of(), "");
  }

  private Statement loop(Kind kind, Optional<Expression> condition) {
    int c = text.peek();
    int number = c - '0';
    if (number < 1 || number > LOOPS) {
      text.expected("1, 2 or 3");
      number = 1;
    } else {
      text.moveTo(text.at() + 1);
      if (Characters.isDigit(text.peek()) || text.peek() == '.') {
        text.expected("1, 2 or 3");
      }
    }
    return new Statement(kind, condition, Optional.empty(), number, List.of(), "");
  }

  /** Something stands behind a whole statement: FL07 for a word, else FL01. */
  private void tail(Statement statement) {
    int c = text.peek();
    boolean assigns = statement.kind() == Kind.ASSIGN || statement.kind() == Kind.IF_THEN;
    if (Characters.isLetter(c) && !letterFollows()) {
      mixed(assigns ? "assignment" : "control");
    } else if (c == '#' || Characters.isLetter(c)) {
      boolean another = c == '#' || text.sees("IF") || text.sees("GOTO") || text.sees("WHILE");
      if (another) {
        mixed("control");
      } else {
        text.expected("an operator or the end");
      }
    } else {
      text.expected("an operator or the end");
    }
  }

  private boolean letterFollows() {
    int here = text.at();
    text.moveTo(here + 1);
    boolean letter = Characters.isLetter(text.peek());
    text.moveTo(text.failed() ? text.at() : here);
    return letter;
  }

  private void mixed(String what) {
    int here = text.at();
    text.fail(
        Code.FL07,
        here,
        1,
        "words and " + what + " in one block",
        "controls differ about the order",
        "two blocks");
  }
}
