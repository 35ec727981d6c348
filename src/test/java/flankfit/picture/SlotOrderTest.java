package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SlotOrderTest {
  @Test
  void every_slot_comes_once_and_the_first_ones_lie_far_apart() {
    SlotOrder order = new SlotOrder();
    List<Integer> seen = new ArrayList<>();
    for (int slot = order.next(100, 5); slot >= 0; slot = order.next(100, 5)) {
      seen.add(slot);
    }
    assertThat(seen).hasSize(100).doesNotHaveDuplicates();
    assertThat(seen.subList(0, 7)).containsExactly(0, 16, 32, 48, 64, 80, 96);
  }

  @Test
  void a_slot_that_gets_more_lines_comes_again() {
    SlotOrder order = new SlotOrder();
    assertThat(order.next(1, 5)).isZero();
    assertThat(order.next(1, 5)).isEqualTo(-1);
    assertThat(order.next(1, 6)).isZero();
    assertThat(order.next(1, 6)).isEqualTo(-1);
    assertThat(order.next(2, 3)).isZero();
    assertThat(order.next(2, 3)).isEqualTo(1);
    assertThat(order.next(2, 3)).isEqualTo(-1);
  }

  @Test
  void however_a_path_grows_all_of_its_lines_are_drawn() {
    Random random = new Random(7);
    for (int run = 0; run < 200; run++) {
      SlotOrder order = new SlotOrder();
      int[] drawn = new int[300];
      int lines = 1;
      while (lines < 250 * 1023) {
        lines += random.nextInt(3000);
        int draws = random.nextInt(6);
        for (int i = 0; i < draws; i++) {
          draw(order, lines, drawn);
        }
      }
      while (draw(order, lines, drawn)) {
        // Goes on until all is drawn.
      }
      for (int slot = 0; slot <= (lines - 1) / 1023; slot++) {
        assertThat(drawn[slot]).as("slot %d", slot).isEqualTo(Math.min(1023, lines - slot * 1023));
      }
    }
  }

  private static boolean draw(SlotOrder order, int lines, int[] drawn) {
    int slots = (lines - 1) / 1023 + 1;
    int slot = order.next(slots, lines - (slots - 1) * 1023);
    if (slot >= 0) {
      drawn[slot] = Math.min(1023, lines - slot * 1023);
    }
    return slot >= 0;
  }
}
