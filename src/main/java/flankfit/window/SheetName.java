package flankfit.window;

/** The four sheets, in their order; a window shows those that it can draw. */
enum SheetName {
  MOTION("Motion"),
  METAL("Metal"),
  GAUGE("Gauge"),
  LESSON("Lesson");

  private final String word;

  SheetName(String word) {
    this.word = word;
  }

  /** The word people see. */
  String word() {
    return word;
  }
}
