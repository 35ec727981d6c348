package flankfit.control;

import flankfit.finding.Code;
import flankfit.nc.Block;
import flankfit.nc.Expression;
import flankfit.nc.Expression.Step;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;

/** Evaluates expressions on a stack that is used again. Reports FL03 to FL06, WD10. */
final class Evaluator {
  private static final double NEARLY_EQUAL = 1e-9;
  private static final double WHOLE = 1e-4;
  private static final double LARGEST_WHOLE = 1L << 53;
  private static final int FIRST_CAPACITY = 16;

  private final Machine machine;
  private final Variables variables;
  private final Report report;
  private final FlowLog log;
  private final boolean fixDown;
  private final Set<Long> toldVacant = new HashSet<>();
  private double[] stack = new double[FIRST_CAPACITY];

  // Number of the variable that a vacant place of the stack came from.
  private int[] from = new int[FIRST_CAPACITY];
  private Block block;
  private Expression expression;
  private boolean failed;

  Evaluator(Machine machine, Variables variables, Block block) {
    this.machine = machine;
    this.variables = variables;
    this.block = block;
    report = machine.report;
    log = machine.log;
    fixDown = machine.switches.flow().fixDown();
  }

  /**
   * The value; not a number when it is one vacant variable and nothing else. After a finding that
   * stops it means nothing.
   */
  double value(Expression what, Block in) {
    double quick = log.isOn() ? Double.NaN : quick(what);
    return Double.isNaN(quick) ? told(what, in) : quick;
  }

  /**
   * The value if nothing is to be told: all variables named have values, and no operation fails;
   * else not a number. Reports nothing.
   */
  double quick(Expression what) {
    makeRoom(what);
    double[] values = stack;
    int top = -1;
    for (int i = 0; i < what.size(); i++) {
      Step step = what.step(i);
      if (step == Step.NUMBER) {
        values[++top] = what.number(i);
      } else if (step == Step.VARIABLE) {
        int number = (int) what.number(i);
        values[++top] = Variables.isWritable(number) ? variables.get(number) : Double.NaN;
      } else if (step.operands() == 2) {
        top--;
        values[top] = quick(step, values[top], values[top + 1]);
      } else {
        values[top] = quick(step, values[top]);
      }
      // A vacant variable is a value for some operations only: those are told.
      if (!Double.isFinite(values[top])) {
        return Double.NaN;
      }
    }
    return values[0];
  }

  private double quick(Step step, double x) {
    return switch (step) {
      case NEGATE -> -x;
      case READ -> Double.NaN;
      default -> Functions.of(step, x, fixDown);
    };
  }

  private static double quick(Step step, double a, double b) {
    return switch (step) {
      case EQUAL -> Math.abs(a - b) <= NEARLY_EQUAL ? 1 : 0;
      case NOT_EQUAL -> Math.abs(a - b) <= NEARLY_EQUAL ? 0 : 1;
      default -> two(step, a, b);
    };
  }

  private void makeRoom(Expression what) {
    if (stack.length < what.depth()) {
      stack = new double[2 * what.depth()];
      from = new int[2 * what.depth()];
    }
  }

  private double told(Expression what, Block in) {
    block = in;
    expression = what;
    failed = false;
    if (log.isOn()) {
      log.beginExpression();
    }
    makeRoom(what);
    int top = -1;
    for (int i = 0; i < what.size() && !failed; i++) {
      top = step(i, what.step(i), top);
    }
    if (log.isOn() && !failed) {
      log.value(what, in, stack[0]);
    }
    return failed ? 0 : stack[0];
  }

  /** The number of the variable that {@link #value} found vacant. */
  int vacantVariable() {
    return from[0];
  }

  /** Executes a step; gives the new top of the stack. */
  private int step(int i, Step step, int top) {
    switch (step) {
      case NUMBER -> {
        stack[top + 1] = expression.number(i);
        return top + 1;
      }
      case VARIABLE -> {
        read((int) expression.number(i), i, top + 1);
        return top + 1;
      }
      case READ -> {
        int number = index(operand(top, i), i);
        if (!failed) {
          read(number, i, top);
        }
        return top;
      }
      case NEGATE -> {
        stack[top] = -operand(top, i);
        return top;
      }
      case EQUAL, NOT_EQUAL -> {
        boolean equal = equal(top - 1, top, i);
        stack[top - 1] = equal == (step == Step.EQUAL) ? 1 : 0;
        return top - 1;
      }
      case POWER,
          MULTIPLY,
          DIVIDE,
          MODULO,
          AND,
          ADD,
          SUBTRACT,
          OR,
          XOR,
          GREATER,
          GREATER_OR_EQUAL,
          LESS,
          LESS_OR_EQUAL,
          ANGLE -> {
        double a = operand(top - 1, i);
        double b = operand(top, i);
        boolean byZero = b == 0 && (step == Step.DIVIDE || step == Step.MODULO);
        stack[top - 1] = byZero ? byZero(i) : checked(two(step, a, b), i, a, b, true);
        return top - 1;
      }
      default -> {
        double x = operand(top, i);
        stack[top] = checked(Functions.of(step, x, fixDown), i, x, 0, false);
        return top;
      }
    }
  }

  private static double two(Step step, double a, double b) {
    return switch (step) {
      case ADD -> a + b;
      case SUBTRACT -> a - b;
      case MULTIPLY -> a * b;
      case DIVIDE -> a / b;
      case MODULO -> a % b;
      case POWER -> Functions.power(a, b);
      case ANGLE -> Functions.angle(a, b);
      case GREATER -> a - b > NEARLY_EQUAL ? 1 : 0;
      case GREATER_OR_EQUAL -> a - b >= -NEARLY_EQUAL ? 1 : 0;
      case LESS -> b - a > NEARLY_EQUAL ? 1 : 0;
      case LESS_OR_EQUAL -> b - a >= -NEARLY_EQUAL ? 1 : 0;
      default -> logic(step, a, b);
    };
  }

  private static double logic(Step step, double a, double b) {
    boolean whole = isWhole(a) && isWhole(b);
    if (!whole) {
      return Double.NaN;
    }
    long x = Math.round(a);
    long y = Math.round(b);
    return step == Step.AND ? x & y : step == Step.OR ? x | y : x ^ y;
  }

  private static boolean isWhole(double value) {
    return Math.abs(value - Math.rint(value)) <= WHOLE && Math.abs(value) < LARGEST_WHOLE;
  }

  /** Vacant equals vacant and nothing else. */
  private boolean equal(int a, int b, int i) {
    boolean vacantA = Double.isNaN(stack[a]);
    boolean vacantB = Double.isNaN(stack[b]);
    if (vacantA != vacantB) {
      int other = vacantA ? from[a] : from[b];
      if (other != 0) {
        vacant(other, i, "it equals no number, not even 0");
      }
      return false;
    }
    return vacantA || Math.abs(stack[a] - stack[b]) <= NEARLY_EQUAL;
  }

  /** A value to reckon with: 0 for a vacant variable, with FL03. */
  private double operand(int place, int i) {
    double value = stack[place];
    if (!Double.isNaN(value)) {
      return value;
    }
    vacant(from[place], i, "taken as 0");
    return 0;
  }

  private void vacant(int number, int i, String why) {
    vacant(number, expression.offset(i), expression.length(i), why, block);
  }

  /** FL03, once for a variable at one place of the text. */
  void vacant(int number, int offset, int length, String why, Block in) {
    if (toldVacant.add((long) offset << 32 | number)) {
      report.add(
          Code.FL03,
          in.placeAt(offset, length),
          "#" + number + " has no value",
          why,
          "assign it first");
    }
  }

  private int index(double value, int i) {
    if (Math.abs(value - Math.rint(value)) > WHOLE) {
      fail(
          Code.WD10,
          i,
          "#" + Wording.number(value) + " is not a whole number",
          "# stands before the number of a variable",
          "correct it");
      return 0;
    }
    return (int) Math.max(-1, Math.min(Math.rint(value), Integer.MAX_VALUE));
  }

  private void read(int number, int i, int place) {
    from[place] = number;
    if (number == 0 || Variables.isWritable(number)) {
      stack[place] = variables.get(number);
    } else if ((number > 5000 && number <= 5003) || (number > 5040 && number <= 5043)) {
      int axis = number % 10 - 1;
      double[] at = machine.tip.clone();
      machine.frame.toProgram(at);
      stack[place] = machine.modes.unit().fromMillimetres(at[axis]);
    } else {
      fail(
          Code.FL06,
          i,
          "#" + number + " is not known",
          "there are #1–#33, #100–#199, #500–#999, and #5001–#5003, #5041–#5043 for the position",
          "use #1–#33, #100–#199, #500–#999");
      stack[place] = 0;
    }
    if (log.isOn() && !failed) {
      log.read(number, stack[place]);
    }
  }

  private double byZero(int i) {
    fail(
        Code.FL04,
        i,
        "division by zero",
        block.textAt(expression.offset(), expression.length()) + withValues(),
        "guard it with IF");
    return 0;
  }

  private double checked(double result, int i, double x, double y, boolean two) {
    if (Double.isFinite(result) || failed) {
      return result;
    }
    String text = block.textAt(expression.offset(i), expression.length(i)).replaceAll("\\s", "");
    int bracket = text.indexOf('[');
    String name = bracket > 0 ? text.substring(0, bracket) : text;
    String arguments =
        two
            ? "[" + Wording.number(x) + ", " + Wording.number(y) + "]"
            : "[" + Wording.number(x) + "]";
    fail(
        Code.FL05,
        i,
        name + arguments + " is not defined",
        block.textAt(expression.offset(), expression.length()) + withValues(),
        "check the value");
    return 0;
  }

  private void fail(Code code, int i, String what, String why, String fix) {
    failed = true;
    report.add(code, block.placeAt(expression.offset(i), expression.length(i)), what, why, fix);
  }

  /** The values of the variables that the expression names. */
  private String withValues() {
    StringBuilder text = new StringBuilder();
    Set<Integer> numbers = new TreeSet<>();
    for (int i = 0; i < expression.size(); i++) {
      int number = (int) expression.number(i);
      if (expression.step(i) == Step.VARIABLE
          && (number == 0 || Variables.isWritable(number))
          && numbers.add(number)) {
        text.append(text.length() == 0 ? " with #" : ", #").append(number).append(" = ");
        double value = variables.get(number);
        text.append(Double.isNaN(value) ? "vacant" : Wording.number(value));
      }
    }
    return text.toString();
  }
}
