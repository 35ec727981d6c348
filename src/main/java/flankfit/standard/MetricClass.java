package flankfit.standard;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tolerance class of ISO 965-1: grade and position of the pitch diameter, grade of the crest
 * diameter (minor of the nut, major of the screw).
 *
 * @param pitchGrade grade of the pitch diameter (1)
 * @param crestGrade grade of the crest diameter (1)
 * @param position position of the tolerance zone: {@code H G} for nuts, {@code e f g h} for screws
 */
record MetricClass(int pitchGrade, int crestGrade, char position) {
  private static final String POSITIONS = "efghGH";
  private static final Pattern ONE_OR_TWO =
      Pattern.compile("(\\d{1,2})([A-Za-z])(?:(\\d{1,2})([A-Za-z]))?");
  private static final Pattern REVERSED = Pattern.compile("([efghEFGH])(\\d{1,2})");

  /** Whether it is a nut's class. */
  boolean internal() {
    return Character.isUpperCase(position);
  }

  /** The class as the standard writes it: {@code 6H}, {@code 4g6g}. */
  String text() {
    String first = "" + pitchGrade + position;
    return pitchGrade == crestGrade ? first : first + crestGrade + position;
  }

  /**
   * Reads a class and asks whether the standard has it at that pitch.
   *
   * @param text the class as written
   * @param thread the thread before the class, for messages
   * @param P pitch (µm)
   * @throws InvalidDesignationException if the class is none, or not for this pitch
   */
  static MetricClass read(String text, String thread, long P) throws InvalidDesignationException {
    Matcher m = ONE_OR_TWO.matcher(text);
    if (!m.matches()) {
      throw notAClass(text, thread, P);
    }
    char position = m.group(2).charAt(0);
    boolean two = m.group(3) != null;
    if (two && m.group(4).charAt(0) != position) {
      throw new InvalidDesignationException(
          "the class " + text + " has two positions",
          "the classes of ISO 965-1 keep one position, "
              + position
              + " or "
              + m.group(4)
              + ", for pitch and crest diameter",
          "write " + thread + "-" + m.group(1) + position);
    }
    requirePosition(text, position, thread, P);
    int pitchGrade = Integer.parseInt(m.group(1));
    int crestGrade = two ? Integer.parseInt(m.group(3)) : pitchGrade;
    MetricClass read = new MetricClass(pitchGrade, crestGrade, position);
    read.requireGrades(text, thread, P);
    return read;
  }

  /** The class a nut has when none is written: medium, 5H up to 1.4 mm, 6H above. */
  static MetricClass ordinaryNut(long d, long P) {
    int wanted = d <= 1400 ? 5 : 6;
    int grade = Math.min(wanted, greatestNut(P));
    return new MetricClass(grade, grade, 'H');
  }

  private static InvalidDesignationException notAClass(String text, String thread, long P) {
    Matcher reversed = REVERSED.matcher(text);
    if (reversed.matches()) {
      return new InvalidDesignationException(
          text + " is not a thread class",
          "ISO 965-1 writes the grade before the position",
          "write " + thread + "-" + reversed.group(2) + reversed.group(1));
    }
    return new InvalidDesignationException(
        text + " is not a thread class",
        "a class of ISO 965-1 is a grade 3 to 9 and a position: H G for holes, e f g h for screws",
        "write " + examples(thread, P));
  }

  private static void requirePosition(String text, char position, String thread, long P)
      throws InvalidDesignationException {
    if (POSITIONS.indexOf(position) < 0) {
      throw new InvalidDesignationException(
          text + " is not a thread class known here: position " + position,
          "positions known here are H and G for holes, e f g h for screws",
          "write " + examples(thread, P));
    }
    if (!MetricTolerances.hasPosition(position, P)) {
      throw new InvalidDesignationException(
          "there is no position " + position + at(P),
          "ISO 965-1 table 1 has position e from 0.5 mm and f from 0.35 mm up",
          "write " + thread + "-" + greatestCrest(false, P) + "g");
    }
  }

  private void requireGrades(String text, String thread, long P)
      throws InvalidDesignationException {
    int pitchLow = internal() ? 4 : 3;
    int pitchHigh = internal() ? greatestNut(P) : greatestScrew(P);
    boolean pitchFits = pitchGrade >= pitchLow && pitchGrade <= pitchHigh;
    int crestHigh = greatestCrest(internal(), P);
    boolean crestFits =
        crestGrade >= 4 && crestGrade <= crestHigh && (internal() || crestGrade % 2 == 0);
    if (pitchFits && crestFits) {
      return;
    }
    int pitch = Math.max(pitchLow, Math.min(pitchHigh, pitchGrade));
    int crest = Math.max(4, Math.min(crestHigh, internal() ? crestGrade : evenGrade(crestGrade)));
    throw new InvalidDesignationException(
        text + " is not a class for a " + part() + at(P),
        pitchFits
            ? "ISO 965-1 has " + crestGrades(crestHigh) + " for the " + crestName() + at(P)
            : "ISO 965-1 has "
                + range(pitchLow, pitchHigh)
                + " for the pitch diameter of a "
                + part()
                + at(P),
        "write " + thread + "-" + new MetricClass(pitch, crest, position).text());
  }

  private static String at(long P) {
    return " at a pitch of " + Rounding.text(P / 1000.0) + " mm";
  }

  private static String range(int low, int high) {
    return low == high ? "only grade " + low : "grades " + low + " to " + high;
  }

  /** The grade of a screw's major diameter that goes with an odd one: 5g6g, but 7g6g. */
  private static int evenGrade(int grade) {
    if (grade % 2 == 0) {
      return grade;
    }
    return grade <= 5 ? grade + 1 : grade - 1;
  }

  private String part() {
    return internal() ? "hole" : "screw";
  }

  private String crestName() {
    return internal() ? "minor diameter of a hole" : "major diameter of a screw";
  }

  private String crestGrades(int high) {
    if (internal()) {
      return range(4, high);
    }
    return high == 8 ? "grades 4, 6 and 8" : "grades 4 and 6";
  }

  private static String examples(String thread, long P) {
    int nut = Math.min(6, greatestNut(P));
    return thread + "-" + nut + "H for a hole or " + thread + "-6g for a screw";
  }

  /** Coarsest grade of a nut at a pitch (µm); which there are is from memory of tables 3 and 5. */
  private static int greatestNut(long P) {
    if (P < 250) {
      return 4;
    }
    if (P < 300) {
      return 5;
    }
    if (P < 500) {
      return 6;
    }
    return P < 800 ? 7 : 8;
  }

  /** Coarsest grade of a screw's pitch diameter; which there are is from memory of table 6. */
  private static int greatestScrew(long P) {
    if (P < 350) {
      return 6;
    }
    return P < 800 ? 7 : 9;
  }

  private static int greatestCrest(boolean internal, long P) {
    if (internal) {
      return greatestNut(P);
    }
    return P < 800 ? 6 : 8;
  }
}
