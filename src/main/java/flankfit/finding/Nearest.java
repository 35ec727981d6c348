package flankfit.finding;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a misspelt one most likely stands for. */
public final class Nearest {
  private static final int LEAST_PREFIX = 3;

  private Nearest() {}

  /**
   * The nearest known word. Case, blanks and underscores don't count; a letter too many, too few,
   * wrong, or swapped with its neighbour counts 1. Near is up to a third of the word's length, at
   * least 1; failing that, the only known word that begins with the word.
   *
   * @param word word as written
   * @param known words to choose from; the first of equally near ones wins
   * @return a known word, empty when none is near
   */
  public static Optional<String> of(String word, Collection<String> known) {
    String plain = plain(word);
    int least = Math.max(1, plain.length() / 3) + 1;
    String nearest = "";
    for (String candidate : known) {
      String other = plain(candidate);
      if (Math.abs(other.length() - plain.length()) < least) {
        int distance = distance(plain, other);
        if (distance < least && distance < Math.max(plain.length(), other.length())) {
          least = distance;
          nearest = candidate;
        }
      }
    }
    return nearest.isEmpty() ? begunBy(plain, known) : Optional.of(nearest);
  }

  private static Optional<String> begunBy(String plain, Collection<String> known) {
    if (plain.length() < LEAST_PREFIX) {
      return Optional.empty();
    }
    var begun = known.stream().filter(k -> plain(k).startsWith(plain)).toList();
    return begun.size() == 1 ? Optional.of(begun.get(0)) : Optional.empty();
  }

  private static String plain(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
  }

  /**
   * Number of single changes that turn one word into the other, a swap of neighbours being one
   * (optimal string alignment).
   */
  static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + change);
        if (i > 1 && j > 1 && swapped(a, i, b, j)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] free = before;
      before = last;
      last = row;
      row = free;
    }
    return last[b.length()];
  }

  private static boolean swapped(String a, int i, String b, int j) {
    return a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
