package flankfit.control;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Evaluates an expression the obvious way: two stacks, operators shunted by priority, each function
 * by the platform's mathematics. Knows neither vacant variables nor faults.
 */
final class ExpressionWitness {
  private static final Pattern TOKEN =
      Pattern.compile("\\s*(\\d+\\.?\\d*|\\.\\d+|\\*\\*|[A-Z]+|[-+*/#\\[\\]])");
  private static final List<String> COMPARISONS = List.of("EQ", "NE", "GT", "GE", "LT", "LE");

  private final Deque<Double> values = new ArrayDeque<>();
  private final Deque<String> operators = new ArrayDeque<>();
  private final double[] variables;
  private final Matcher tokens;
  private final String text;
  private boolean wantsValue = true;

  ExpressionWitness(String text, double[] variables) {
    this.text = text;
    this.variables = variables;
    tokens = TOKEN.matcher(text);
  }

  double value() {
    int at = 0;
    while (at < text.length()) {
      if (!tokens.find(at) || tokens.start() != at) {
        throw new IllegalArgumentException("no token at " + at + " of " + text);
      }
      at = tokens.end();
      token(tokens.group(1));
    }
    reduce(0);
    return values.pop();
  }

  private void token(String token) {
    if (Character.isDigit(token.charAt(0))) {
      values.push(Double.parseDouble(token));
      wantsValue = false;
      closeValue();
    } else if (token.equals("[")) {
      operators.push("[");
      wantsValue = true;
    } else if (token.equals("]")) {
      reduce(0);
      operators.pop();
      wantsValue = false;
      closeValue();
    } else if (wantsValue) {
      operators.push(token.equals("-") ? "NEG" : token.equals("+") ? "POS" : token);
    } else {
      binary(token);
    }
  }

  /** A stroke between the brackets of ATAN joins them; any other operator waits its turn. */
  private void binary(String token) {
    if (token.equals("/") && "ATAN1".equals(operators.peek())) {
      operators.pop();
      operators.push("ATAN2");
    } else {
      settle();
      reduce(priority(token));
      operators.push(token);
    }
    wantsValue = true;
  }

  /** Marks and functions bind to the value just finished. */
  private void closeValue() {
    while (!operators.isEmpty()) {
      String top = operators.peek();
      if (top.equals("#")) {
        operators.pop();
        values.push(variables[(int) Math.rint(values.pop())]);
      } else if (top.equals("ATAN")) {
        operators.pop();
        operators.push("ATAN1");
        return;
      } else if (top.equals("ATAN2")) {
        operators.pop();
        double x = values.pop();
        values.push(Math.toDegrees(Math.atan2(values.pop(), x)));
      } else if (top.length() > 2 && Character.isLetter(top.charAt(0)) && isFunction(top)) {
        operators.pop();
        values.push(function(top, values.pop()));
      } else {
        return;
      }
    }
  }

  private void settle() {
    if ("ATAN1".equals(operators.peek())) {
      operators.pop();
      values.push(Math.toDegrees(Math.atan(values.pop())));
    }
  }

  private static boolean isFunction(String name) {
    return List.of("SIN", "SQRT", "ABS", "ROUND").contains(name);
  }

  private static double function(String name, double x) {
    return switch (name) {
      case "SIN" -> Math.sin(Math.toRadians(x));
      case "SQRT" -> Math.sqrt(x);
      case "ABS" -> Math.abs(x);
      default -> Math.signum(x) * Math.floor(Math.abs(x) + 0.5);
    };
  }

  private static int priority(String operator) {
    return switch (operator) {
      case "NEG", "POS" -> 5;
      case "**" -> 4;
      case "*", "/", "MOD" -> 3;
      case "+", "-" -> 2;
      default -> COMPARISONS.contains(operator) ? 1 : -1;
    };
  }

  /** Carries out what binds at least as tightly. */
  private void reduce(int least) {
    settle();
    while (!operators.isEmpty() && priority(operators.peek()) >= Math.max(1, least)) {
      apply(operators.pop());
      settle();
    }
  }

  private void apply(String operator) {
    double b = values.pop();
    if (operator.equals("NEG") || operator.equals("POS")) {
      values.push(operator.equals("NEG") ? -b : b);
      return;
    }
    double a = values.pop();
    values.push(
        switch (operator) {
          case "**" -> Math.pow(a, b);
          case "*" -> a * b;
          case "/" -> a / b;
          case "MOD" -> a % b;
          case "+" -> a + b;
          case "-" -> a - b;
          default -> compare(operator, a - b) ? 1.0 : 0.0;
        });
  }

  private static boolean compare(String operator, double difference) {
    boolean equal = Math.abs(difference) <= 1e-9;
    return switch (operator) {
      case "EQ" -> equal;
      case "NE" -> !equal;
      case "GT" -> difference > 0 && !equal;
      case "GE" -> difference > 0 || equal;
      case "LT" -> difference < 0 && !equal;
      default -> difference < 0 || equal;
    };
  }
}
