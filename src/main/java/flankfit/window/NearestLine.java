package flankfit.window;

import java.util.List;

/** Where a line of a text stands in the text's next edition. */
final class NearestLine {
  /** Lines looked at on either side: as many as a frame has time for. */
  private static final int AROUND = 2000;

  private NearestLine() {}

  /**
   * The line that most likely is the same.
   *
   * @param before the text as it was
   * @param line a line of it, from 1
   * @param now the text as it is
   * @return of equal lines the one with most equal neighbours, then the nearest; the same number,
   *     held within the text, if there is none; at least 1
   */
  static int of(List<String> before, int line, List<String> now) {
    int held = Math.max(1, Math.min(line, now.size()));
    if (line < 1 || line > before.size()) {
      return held;
    }
    String text = before.get(line - 1);
    int best = held;
    int most = -1;
    int from = Math.max(1, line - AROUND);
    int to = Math.min(now.size(), line + AROUND);
    for (int at = from; at <= to; at++) {
      if (now.get(at - 1).equals(text)) {
        int alike = same(before, line - 1, now, at - 1) + same(before, line + 1, now, at + 1);
        boolean nearer = Math.abs(at - line) < Math.abs(best - line);
        if (alike > most || (alike == most && nearer)) {
          most = alike;
          best = at;
        }
      }
    }
    return best;
  }

  private static int same(List<String> before, int line, List<String> now, int at) {
    boolean in = line >= 1 && line <= before.size() && at >= 1 && at <= now.size();
    return in && before.get(line - 1).equals(now.get(at - 1)) ? 1 : 0;
  }
}
