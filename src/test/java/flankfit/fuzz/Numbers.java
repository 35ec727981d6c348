package flankfit.fuzz;

/** Numbers as programs write them: plausible ones, and those at an edge. */
final class Numbers {
  private static final String[] EDGES = {
    "0",
    "-0",
    "0.",
    ".0",
    "1",
    "-1",
    "+1",
    ".001",
    ".0001",
    ".00001",
    "-.0005",
    "99999",
    "100000",
    "100000.001",
    "-100000.",
    "999999999999999",
    "1234567890123456",
    "0.30000000000000004",
    "1.5",
    "1e5",
    "--1",
    "1..2",
    ".",
    "-",
    "1,5",
    "2 5",
    "1.00005",
    "0.99996",
    "33",
    "34",
    "999",
    "1000",
    "99999999",
    "2147483648",
    "00000000000000000001.50",
    "5.",
    "10",
    "1.4142136",
    "7.0710678",
    "-.000000001",
    "3.1415926535",
    "100",
    "9999"
  };

  private Numbers() {}

  /** Any number, or nearly one. */
  static String any(Choices choices) {
    return switch (choices.below(4)) {
      case 0 -> plain(choices);
      case 1 -> Integer.toString(choices.below(100));
      case 2 -> choices.of(EDGES);
      default -> value(choices);
    };
  }

  /** A coordinate on a grid that meets itself often (mm). */
  static String plain(Choices choices) {
    int steps = choices.between(-40, 40);
    String whole = Integer.toString(steps / 2);
    String sign = steps == -1 ? "-" : "";
    return sign + whole + (steps % 2 == 0 ? "." : ".5");
  }

  /** A length above 0 (mm). */
  static String length(Choices choices) {
    int eighths = choices.between(1, 120);
    return Double.toString(eighths / 8.0);
  }

  /** A variable or an expression in the place of a number. */
  static String value(Choices choices) {
    return switch (choices.below(4)) {
      case 0 -> variable(choices);
      case 1 -> "-" + variable(choices);
      default -> "[" + expression(choices, 0) + "]";
    };
  }

  /** A variable: local, common, system, computed, or none. */
  static String variable(Choices choices) {
    return switch (choices.below(16)) {
      case 0 -> "#" + choices.between(100, 130);
      case 1 -> "#" + choices.of("0", "33", "34", "199", "200", "500", "999", "1000", "3000");
      case 2 -> "#" + choices.of("5001", "5003", "5041", "5043", "5044", "4", "8");
      case 3 -> "##" + choices.between(1, 9);
      case 4 -> "#[" + choices.between(1, 9) + "+" + choices.below(3) + "]";
      default -> "#" + choices.between(1, 9);
    };
  }

  /** The inside of a pair of brackets. */
  static String expression(Choices choices, int depth) {
    if (depth > 3 || choices.isEmpty()) {
      return primary(choices);
    }
    return switch (choices.below(7)) {
      case 0 -> primary(choices);
      case 1 -> primary(choices) + operator(choices) + expression(choices, depth + 1);
      case 2 -> "[" + expression(choices, depth + 1) + "]" + operator(choices) + primary(choices);
      case 3 ->
          choices.of("SIN", "COS", "TAN", "ASIN", "ACOS", "SQRT", "ABS", "LN", "EXP")
              + "["
              + expression(choices, depth + 1)
              + "]";
      case 4 ->
          choices.of("ROUND", "FIX", "FUP", "ATAN") + "[" + expression(choices, depth + 1) + "]";
      case 5 ->
          "ATAN[" + expression(choices, depth + 1) + "]/[" + expression(choices, depth + 1) + "]";
      default -> choices.of("-", "+", "--") + expression(choices, depth + 1);
    };
  }

  private static String primary(Choices choices) {
    return choices.oneIn(3) ? variable(choices) : choices.of("1", "2", ".5", "10", "0", "90", "-3");
  }

  private static String operator(Choices choices) {
    return choices.of("+", "-", "*", "/", " MOD ", " AND ", " OR ", " XOR ", "**", " EQ ", " LT ");
  }

  /** A comparison. */
  static String condition(Choices choices) {
    return variable(choices)
        + choices.of(" EQ ", " NE ", " GT ", " GE ", " LT ", " LE ")
        + expression(choices, 2);
  }
}
