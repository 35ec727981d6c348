package flankfit.standard;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The text of a designation with signs and blanks made uniform, before anything is read from it.
 */
final class DesignationText {
  /** Longest text worth reading (characters). */
  private static final int LONGEST = 60;

  private static final Pattern BLANKS = Pattern.compile("\\s+");
  private static final Pattern JOINED = Pattern.compile(" ?([-/]) ?");
  private static final Pattern NUMBER_WORD = Pattern.compile("^(?i)no\\.? ?(?=\\d)");

  private static final Pattern METRIC = Pattern.compile("[Mm] ?[\\d.]");

  private DesignationText() {}

  /**
   * The text with plain hyphens, points and {@code x}, single blanks, none beside hyphen or slash.
   *
   * @throws InvalidDesignationException if it is empty or too long
   */
  static String uniform(String text) throws InvalidDesignationException {
    if (text.length() > LONGEST) {
      throw new InvalidDesignationException(
          "the thread designation is " + text.length() + " characters long",
          "a designation has at most " + LONGEST + " characters",
          "write a designation such as M20x1.5-6H or 1/2-13 UNC-2B");
    }
    String plain =
        text.replace('\u00D7', 'x')
            .replace('X', 'x')
            .replace('\u2010', '-')
            .replace('\u2011', '-')
            .replace('\u2013', '-')
            .replace('\u2212', '-')
            .replace('\u00A0', ' ')
            .replace(',', '.')
            .replace("\"", "");
    String single = BLANKS.matcher(plain).replaceAll(" ").strip();
    String joined = JOINED.matcher(single).replaceAll("$1");
    if (joined.isEmpty()) {
      throw new InvalidDesignationException(
          "the thread designation is empty",
          "size, pitch and class say what the thread is",
          "write a designation such as M20x1.5-6H or 1/2-13 UNC-2B");
    }
    return NUMBER_WORD.matcher(joined).replaceFirst("#");
  }

  /** The text in upper case, whatever the locale. */
  static String upper(String text) {
    return text.toUpperCase(Locale.ROOT);
  }

  /** Whether the text begins as a metric designation does: M, then a number. */
  static boolean beginsMetric(String text) {
    return METRIC.matcher(text).lookingAt();
  }

  /** Whether the text begins as a Unified designation does: a number, its sign or a point. */
  static boolean beginsUnified(String text) {
    char first = text.charAt(0);
    return first == '#' || first == '.' || (first >= '0' && first <= '9');
  }
}
