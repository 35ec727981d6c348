package flankfit.nc;

import java.util.Arrays;

/**
 * An expression, compiled once to a row of steps on a stack: every operand before its operation.
 * Knows nothing of values; whoever evaluates it walks the steps in order.
 */
public final class Expression {
  /** What a step does with the stack. */
  public enum Step {
    /** Puts a number on the stack. */
    NUMBER(0),
    /** Puts the value of the variable on the stack whose number the step holds. */
    VARIABLE(0),
    /** Replaces the number of a variable by its value. */
    READ(1),
    NEGATE(1),
    POWER(2),
    MULTIPLY(2),
    DIVIDE(2),
    MODULO(2),
    AND(2),
    ADD(2),
    SUBTRACT(2),
    OR(2),
    XOR(2),
    EQUAL(2),
    NOT_EQUAL(2),
    GREATER(2),
    GREATER_OR_EQUAL(2),
    LESS(2),
    LESS_OR_EQUAL(2),
    SIN(1),
    COS(1),
    TAN(1),
    ASIN(1),
    ACOS(1),
    /** Angle of one number, its tangent. */
    ATAN(1),
    /** Angle of two numbers, height and width. */
    ANGLE(2),
    SQRT(1),
    ABS(1),
    ROUND(1),
    FIX(1),
    FUP(1),
    LN(1),
    EXP(1);

    private final int operands;

    Step(int operands) {
      this.operands = operands;
    }

    /** How many values it takes from the stack. */
    public int operands() {
      return operands;
    }
  }

  private final Step[] steps;
  private final double[] numbers;
  private final int[] offsets;
  private final int[] lengths;
  private final int depth;
  private final int offset;
  private final int length;

  private Expression(Builder from, int offset, int length) {
    steps = Arrays.copyOf(from.steps, from.size);
    numbers = Arrays.copyOf(from.numbers, from.size);
    offsets = Arrays.copyOf(from.offsets, from.size);
    lengths = Arrays.copyOf(from.lengths, from.size);
    depth = from.deepest;
    this.offset = offset;
    this.length = length;
  }

  /** Number of steps. */
  public int size() {
    return steps.length;
  }

  /** A step, counted from 0. */
  public Step step(int i) {
    return steps[i];
  }

  /** The number of a NUMBER, or the number of a VARIABLE; 0 for other steps. */
  public double number(int i) {
    return numbers[i];
  }

  /** Offset in the text where the word of a step stands. */
  public int offset(int i) {
    return offsets[i];
  }

  /** Length of the word of a step (bytes). */
  public int length(int i) {
    return lengths[i];
  }

  /** How many places of the stack it needs. */
  public int depth() {
    return depth;
  }

  /** Offset in the text where the expression begins. */
  public int offset() {
    return offset;
  }

  /** Length of the whole expression (bytes). */
  public int length() {
    return length;
  }

  /** Collects the steps of one expression. */
  static final class Builder {
    private static final int FIRST_CAPACITY = 8;

    private Step[] steps = new Step[FIRST_CAPACITY];
    private double[] numbers = new double[FIRST_CAPACITY];
    private int[] offsets = new int[FIRST_CAPACITY];
    private int[] lengths = new int[FIRST_CAPACITY];
    private int size;
    private int held;
    private int deepest;

    /**
     * Adds a step.
     *
     * @param taken how many values it takes from the stack; it leaves one
     */
    void add(Step step, double number, int taken, int at, int bytes) {
      if (size == steps.length) {
        int capacity = size * 2;
        steps = Arrays.copyOf(steps, capacity);
        numbers = Arrays.copyOf(numbers, capacity);
        offsets = Arrays.copyOf(offsets, capacity);
        lengths = Arrays.copyOf(lengths, capacity);
      }
      steps[size] = step;
      numbers[size] = number;
      offsets[size] = at;
      lengths[size] = bytes;
      size++;
      held += 1 - taken;
      deepest = Math.max(deepest, held);
    }

    Expression build(int at, int bytes) {
      return new Expression(this, at, bytes);
    }
  }
}
