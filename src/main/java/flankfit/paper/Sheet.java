package flankfit.paper;

import java.util.Locale;
import java.util.Optional;

/** Sizes of sheets that papers are printed on. */
public enum Sheet {
  /** ISO 216 A4, 210 mm by 297 mm. */
  A4(210 / 25.4 * 72, 297 / 25.4 * 72),
  /** ANSI/ASME Y14.1 size A, 8.5 in by 11 in. */
  LETTER(8.5 * 72, 11 * 72);

  private final double width;
  private final double height;

  Sheet(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** Width (1/72 in). */
  double width() {
    return width;
  }

  /** Height (1/72 in). */
  double height() {
    return height;
  }

  /** The word people write. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The sheet of that word. */
  public static Optional<Sheet> of(String word) {
    for (Sheet sheet : values()) {
      if (sheet.word().equals(word.toLowerCase(Locale.ROOT))) {
        return Optional.of(sheet);
      }
    }
    return Optional.empty();
  }
}
