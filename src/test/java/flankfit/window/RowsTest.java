package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows of a text in a room of so many characters. */
class RowsTest {
  private static List<String> rows(String text, int room) {
    return Rows.of(text, words -> words.length() <= room);
  }

  @Test
  void what_fits_is_one_row_and_else_blanks_are_where_it_breaks() {
    assertThat(rows("write a value", 13)).containsExactly("write a value");
    assertThat(rows("write a value", 12)).containsExactly("write a", "value");
    assertThat(rows("write a value", 5)).containsExactly("write", "a", "value");
    assertThat(rows("", 5)).containsExactly("");
  }

  @Test
  void a_word_wider_than_the_room_is_broken_and_nothing_of_it_is_lost() {
    assertThat(rows("/programs/shop/valve-block.nc, line 3", 16))
        .containsExactly("/programs/shop/", "valve-block.nc,", "line 3");
    assertThat(rows("0123456789", 4)).containsExactly("0123", "4567", "89");
    assertThat(rows("ab", 0)).containsExactly("a", "b");
    assertThat(String.join("", rows("a\uD83D\uDD29b", 2))).isEqualTo("a\uD83D\uDD29b");
    assertThat(rows("a\uD83D\uDD29b", 2)).doesNotContain("a\uD83D");
  }
}
