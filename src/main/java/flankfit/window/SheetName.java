package flankfit.window;

/** The four sheets, in their order; a window shows those that it can draw. */
enum SheetName {
  MOTION("Motion", 1),
  METAL("Metal", 2),
  GAUGE("Gauge", 3),
  LESSON("Lesson", 4);

  private final String word;
  private final int digit;

  SheetName(String word, int digit) {
    this.word = word;
    this.digit = digit;
  }

  /** The digit of its key. */
  int digit() {
    return digit;
  }

  /** The word people see. */
  String word() {
    return word;
  }
}
