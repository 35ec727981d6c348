package flankfit.window;

import java.util.Locale;

/** How well typed letters fit a text: all of them must be in it, in order. */
final class Fuzzy {
  private static final int AT_WORD = 8;
  private static final int NEXT = 9;
  private static final int FIRST = 4;

  private Fuzzy() {}

  /**
   * Rates a text.
   *
   * @param typed letters in any case; blanks do not count
   * @return the higher the better: letters that begin words and letters side by side count most, a
   *     short text before a long one; -1 if one is missing
   */
  static int rate(String typed, String text) {
    String wanted = typed.toLowerCase(Locale.ROOT).replace(" ", "");
    String lower = text.toLowerCase(Locale.ROOT);
    if (wanted.isEmpty()) {
      return 0;
    }
    int best = -1;
    for (int from = lower.indexOf(wanted.charAt(0));
        from >= 0;
        from = lower.indexOf(wanted.charAt(0), from + 1)) {
      best = Math.max(best, rate(wanted, lower, from));
    }
    return best;
  }

  /**
   * Takes the earliest letters from a place on, but one that begins a word before one that does
   * not.
   */
  private static int rate(String wanted, String text, int from) {
    int points = from == 0 ? FIRST : 0;
    int last = -1;
    int at = from;
    for (int i = 0; i < wanted.length(); i++) {
      if (i > 0) {
        at = next(text, wanted.charAt(i), last);
      }
      if (at < 0) {
        return -1;
      }
      points += begins(text, at) ? AT_WORD : 0;
      points += i > 0 && at == last + 1 ? NEXT : 0;
      last = at;
    }
    return 100 * points + 100 - Math.min(99, text.length());
  }

  private static int next(String text, char letter, int last) {
    int first = text.indexOf(letter, last + 1);
    if (first < 0 || first == last + 1) {
      return first;
    }
    for (int at = first; at >= 0; at = text.indexOf(letter, at + 1)) {
      if (begins(text, at)) {
        return at;
      }
    }
    return first;
  }

  private static boolean begins(String text, int at) {
    return at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1));
  }
}
