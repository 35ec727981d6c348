package flankfit.control;

/** The drilling and boring cycles. */
enum CycleKind {
  G73("Q"),
  G74("P"),
  G76("QPIJ"),
  G81(""),
  G82("P"),
  G83("Q"),
  G84("P"),
  G85(""),
  G86("P"),
  G87("QPIJ"),
  G88("P"),
  G89("P");

  /** Cycles have the greatest numbers of the motion functions (times ten). */
  static final int FIRST_CODE = 730;

  private final String letters;

  CycleKind(String letters) {
    this.letters = letters;
  }

  /** The cycle of a motion function (times ten). */
  static CycleKind of(int code) {
    return valueOf(GCode.text(code));
  }

  /** Whether it reads a word of this letter, those of position, level and repeats apart. */
  boolean reads(char letter) {
    return letters.indexOf(letter) >= 0;
  }

  boolean isPecking() {
    return this == G73 || this == G83;
  }

  boolean isTapping() {
    return this == G74 || this == G84;
  }

  /** Whether the tool leaves the bore sideways. */
  boolean isShifting() {
    return this == G76 || this == G87;
  }
}
