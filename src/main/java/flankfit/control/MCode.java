package flankfit.control;

/** The groups of the M functions. */
final class MCode {
  static final int UNKNOWN = 0;
  static final int STOP = 1;
  static final int TOOL = 2;
  static final int SPINDLE = 3;
  static final int COOLANT = 4;
  static final int OVERRIDE = 5;
  static final int GROUPS = 6;

  private static final String[] NAMES = {
    "", "end or stop", "tool change", "spindle", "coolant", "override"
  };

  private MCode() {}

  static int group(int code) {
    return switch (code) {
      case 0, 1, 2, 30, 60, 98, 99 -> STOP;
      case 6 -> TOOL;
      case 3, 4, 5, 19 -> SPINDLE;
      case 7, 8, 9 -> COOLANT;
      case 48, 49 -> OVERRIDE;
      default -> UNKNOWN;
    };
  }

  static String groupName(int group) {
    return NAMES[group];
  }
}
