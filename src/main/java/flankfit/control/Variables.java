package flankfit.control;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The variables that a program may set: #1 to #33 of each call level, #100 to #199 and #500 to #999
 * common to all. A vacant one is not a number.
 */
final class Variables {
  private static final int LAST_LOCAL = 33;
  private static final int LEVELS = Calls.DEEPEST + 1;
  private static final int COMMON = 1000;

  private final double[][] locals = new double[LEVELS][];
  private final double[] common = new double[COMMON];
  private double[] local;

  Variables() {
    Arrays.fill(common, Double.NaN);
    local = fresh(0);
  }

  /** Empties the local variables of a level; they are used after {@link #level}. */
  double[] fresh(int level) {
    if (locals[level] == null) {
      locals[level] = new double[LAST_LOCAL + 1];
    }
    Arrays.fill(locals[level], Double.NaN);
    return locals[level];
  }

  /** Uses the local variables of a level. */
  void level(int level) {
    local = locals[level] == null ? fresh(level) : locals[level];
  }

  /** Takes over the common variables of another run. */
  void takeOverCommon(Variables other) {
    System.arraycopy(other.common, 0, common, 0, COMMON);
  }

  /** Numbers of the common variables that have a value. */
  List<Integer> commonWithValue() {
    return IntStream.range(0, COMMON).filter(n -> !Double.isNaN(common[n])).boxed().toList();
  }

  /** Whether it is a variable of one call level. */
  static boolean isLocal(int number) {
    return number >= 1 && number <= LAST_LOCAL;
  }

  /** Whether a program may set this variable. */
  static boolean isWritable(int number) {
    return isLocal(number)
        || (number >= 100 && number <= 199)
        || (number >= 500 && number < COMMON);
  }

  /** A value, not a number when vacant; the variable must be writable, or 0. */
  double get(int number) {
    return number <= LAST_LOCAL ? local[number] : common[number];
  }

  void set(int number, double value) {
    if (number <= LAST_LOCAL) {
      local[number] = value;
    } else {
      common[number] = value;
    }
  }
}
