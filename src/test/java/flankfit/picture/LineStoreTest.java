package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.Point;
import org.junit.jupiter.api.Test;

class LineStoreTest {
  @Test
  void the_last_point_of_a_slot_is_the_first_of_the_next() {
    LineStore store = new LineStore(new Point(1, 0, 0));
    store.moveTo(0, 0, 0);
    for (int i = 1; i <= 2500; i++) {
      store.lineTo(i, 0, 0, i, 3);
    }
    int drawn = 0;
    for (int t = 0; t + 1 < store.size(); t++) {
      boolean lastOfSlot = t % LineStore.SLOT == LineStore.SLOT - 1;
      if (store.styles()[t] == LineStore.HIDDEN) {
        assertThat(lastOfSlot).isTrue();
        assertThat(store.points()[4 * t]).isEqualTo(store.points()[4 * t + 4]);
      } else {
        assertThat(lastOfSlot).isFalse();
        assertThat(store.points()[4 * t + 4] - store.points()[4 * t]).isEqualTo(1f);
        drawn++;
      }
    }
    assertThat(drawn).isEqualTo(2500);
    assertThat(store.points()[0]).isEqualTo(-1f);
  }
}
