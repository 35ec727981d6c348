package flankfit.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The known word that a misspelt one stands for. */
class NearestTest {
  private static final List<String> KNOWN =
      List.of("diameter", "depth", "thread", "thread-depth", "wear-entry", "pitch", "mm", "in");

  @ParameterizedTest
  @CsvSource({
    "diametre, diameter",
    "Diameter, diameter",
    "dpeth, depth",
    "thraed, thread",
    "thread_depth, thread-depth",
    "threaddepth, thread-depth",
    "pich, pitch",
    "dia, diameter",
    "cm, mm"
  })
  void a_slip_leads_to_the_word_that_was_meant(String word, String meant) {
    assertThat(Nearest.of(word, KNOWN)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"colour", "x", "''", "thr"})
  void a_word_unlike_any_or_like_several_leads_nowhere(String word) {
    assertThat(Nearest.of(word, KNOWN)).isEmpty();
  }

  @Test
  void the_distance_counts_single_changes_and_swaps() {
    assertThat(Nearest.distance("", "abc")).isEqualTo(3);
    assertThat(Nearest.distance("abc", "abc")).isZero();
    assertThat(Nearest.distance("abc", "acb")).isEqualTo(1);
    assertThat(Nearest.distance("abcd", "bc")).isEqualTo(2);
    assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
  }

  @Test
  void the_distance_is_the_same_both_ways_and_at_most_the_longer_length() {
    Random random = new Random(9);
    for (int i = 0; i < 500; i++) {
      String a = word(random);
      String b = word(random);
      assertThat(Nearest.distance(a, b))
          .isEqualTo(Nearest.distance(b, a))
          .isBetween(Math.abs(a.length() - b.length()), Math.max(a.length(), b.length()));
    }
  }

  private static String word(Random random) {
    StringBuilder word = new StringBuilder();
    int length = random.nextInt(8);
    for (int i = 0; i < length; i++) {
      word.append((char) ('a' + random.nextInt(4)));
    }
    return word.toString();
  }
}
