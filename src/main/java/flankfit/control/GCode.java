package flankfit.control;

/** The groups of the G and M functions, and what they are called. Codes are times ten. */
final class GCode {
  static final int UNKNOWN = 0;
  static final int MOTION = 1;
  static final int PLANE = 2;
  static final int DISTANCE = 3;
  static final int CENTRE = 4;
  static final int FEED = 5;
  static final int UNIT = 6;
  static final int RADIUS = 7;
  static final int LENGTH = 8;
  static final int RETURN_LEVEL = 9;
  static final int SCALE = 10;
  static final int WORK_OFFSET = 11;
  static final int PATH = 12;
  static final int MODAL_CALL = 13;
  static final int MIRROR = 14;
  static final int ROTATION = 15;
  static final int ONE_BLOCK = 16;
  static final int CYCLE_END = 17;
  static final int STATED = 18;
  static final int LATER = 19;
  static final int GROUPS = 20;

  private static final int KNOWN = 1000;
  private static final byte[] GROUP_OF = new byte[KNOWN];
  private static final String[] NAMES = {
    "",
    "motion",
    "plane",
    "distance mode",
    "arc centre mode",
    "feed mode",
    "unit",
    "radius compensation",
    "length compensation",
    "return level",
    "scale",
    "work offset",
    "path mode",
    "modal call",
    "mirror",
    "rotation",
    "one-block function",
    "cycle",
    "",
    ""
  };

  static {
    put(MOTION, 0, 10, 20, 30);
    put(MOTION, 730, 740, 760, 810, 820, 830, 840, 850, 860, 870, 880, 890);
    put(PLANE, 170, 180, 190);
    put(DISTANCE, 900, 910);
    put(CENTRE, 901, 911);
    put(FEED, 930, 940, 950);
    put(UNIT, 200, 210, 700, 710);
    put(RADIUS, 400, 410, 420);
    put(LENGTH, 430, 440, 490);
    put(RETURN_LEVEL, 980, 990);
    put(SCALE, 500, 510);
    put(WORK_OFFSET, 540, 550, 560, 570, 580, 590, 541, 591, 592, 593);
    put(PATH, 610, 611, 640);
    put(MODAL_CALL, 660, 670);
    put(MIRROR, 501, 511);
    put(ROTATION, 680, 690);
    put(ONE_BLOCK, 40, 90, 100, 280, 300, 520, 530, 650, 920, 921, 922, 923);
    put(CYCLE_END, 800);
    put(STATED, 150, 970);
  }

  private GCode() {}

  private static void put(int group, int... codes) {
    for (int code : codes) {
      GROUP_OF[code] = (byte) group;
    }
  }

  static int group(int code) {
    return code >= 0 && code < KNOWN ? GROUP_OF[code] : UNKNOWN;
  }

  static String groupName(int group) {
    return NAMES[group];
  }

  /** The function as people write it, {@code G54.1}. */
  static String text(int code) {
    return code % 10 == 0 ? "G" + code / 10 : "G" + code / 10 + "." + code % 10;
  }

  /** What a function that is not modelled commonly is; empty text when that is not well known. */
  static String commonMeaning(int code) {
    return switch (code) {
      case 50, 51, 60, 61, 62, 63 -> "spline or high-speed path";
      case 70, 80 -> "lathe diameter and radius input";
      case 120, 130 -> "circular pocket";
      case 160 -> "polar input";
      case 220, 230 -> "limits of travel";
      case 310, 380, 382, 383, 384, 385 -> "probing";
      case 330, 331, 320 -> "threading with the spindle";
      case 411, 421 -> "radius compensation by a given radius";
      case 434, 435 -> "tool inclination";
      case 450, 460, 470, 480 -> "corner offset";
      case 600 -> "positioning from one direction";
      case 960 -> "constant surface speed";
      default -> "";
    };
  }
}
