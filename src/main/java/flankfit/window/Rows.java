package flankfit.window;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** A text broken into rows. */
final class Rows {
  private Rows() {}

  /**
   * Rows that fit, broken at blanks; a word that fits no row is broken where the row ends, after a
   * slash if there is one in its later half.
   *
   * @param fits whether words fit into a row; what fits, fits without its end as well
   */
  static List<String> of(String text, Predicate<String> fits) {
    List<String> rows = new ArrayList<>();
    String rest = text;
    while (!fits.test(rest)) {
      int blank = lastBlank(rest, fits);
      int end = blank > 0 ? blank : within(rest, fits);
      rows.add(rest.substring(0, end));
      rest = rest.substring(blank > 0 ? end + 1 : end);
      if (rest.isEmpty()) {
        return rows;
      }
    }
    rows.add(rest);
    return rows;
  }

  /** The last blank before which all fits; 0 if there is none. */
  private static int lastBlank(String text, Predicate<String> fits) {
    int end = 0;
    for (int at = text.indexOf(' ', 1); at > 0; at = text.indexOf(' ', at + 1)) {
      if (!fits.test(text.substring(0, at))) {
        break;
      }
      end = at;
    }
    return end;
  }

  /** How many characters of a long word fit, at least one. */
  private static int within(String text, Predicate<String> fits) {
    int end = 1;
    while (end + 1 < text.length() && fits.test(text.substring(0, end + 1))) {
      end++;
    }
    int slash = text.lastIndexOf('/', end - 1);
    if (slash > end / 2) {
      return slash + 1;
    }
    return end > 1 && Character.isHighSurrogate(text.charAt(end - 1)) ? end - 1 : end;
  }
}
