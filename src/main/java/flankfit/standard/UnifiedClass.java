package flankfit.standard;

import java.util.Optional;

/**
 * Tolerance classes of Unified threads, A for screws and B for nuts, with the factor on the
 * pitch-diameter tolerance of class 2A.
 *
 * @see "ASME B1.1, paragraphs 5.8.1 (c) and 5.8.2 (b)"
 */
enum UnifiedClass {
  CLASS_1A("1A", 1.5),
  CLASS_2A("2A", 1.0),
  CLASS_3A("3A", 0.75),
  CLASS_1B("1B", 1.95),
  CLASS_2B("2B", 1.3),
  CLASS_3B("3B", 0.975);

  private final String text;
  private final double pitchFactor;

  UnifiedClass(String text, double pitchFactor) {
    this.text = text;
    this.pitchFactor = pitchFactor;
  }

  /** The class of that name in capitals; empty where there is none. */
  static Optional<UnifiedClass> named(String text) {
    for (UnifiedClass threadClass : values()) {
      if (threadClass.text.equals(text)) {
        return Optional.of(threadClass);
      }
    }
    return Optional.empty();
  }

  /** The class as written: {@code 2B}. */
  String text() {
    return text;
  }

  /** Tolerance of the pitch diameter as a multiple of that of class 2A (1). */
  double pitchFactor() {
    return pitchFactor;
  }

  /** Whether it is a nut's class. */
  boolean internal() {
    return text.endsWith("B");
  }

  /** Whether it is the close class, which has no allowance and its own minor diameter. */
  boolean close() {
    return text.startsWith("3");
  }

  /** Whether it is the loose class. */
  boolean loose() {
    return text.startsWith("1");
  }
}
