package flankfit.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A tape has room for so many moves; what weighs more takes the room of several. */
class FullTapeTest {
  private static final ModalState FEED_600 = Tapes.state(Plane.XY, 600);

  private static TapeBuilder tape(int mostMoves) {
    return new TapeBuilder(Point.ZERO, Tapes.RATES, 0, mostMoves);
  }

  private static void line(TapeBuilder tape, double x, ModalState state) {
    tape.straight(MoveKind.LINE, x, 0, 0, 1, 1, state);
  }

  private static void turn(TapeBuilder tape) {
    tape.arc(0, 0, 0, 1, 0, 1, 1, Math.PI * 2, 1, 1, FEED_600);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 255, 256, 257, 700, 5000})
  void straight_moves_find_room_up_to_the_limit(int most) {
    TapeBuilder tape = tape(most);
    for (int i = 0; i < most; i++) {
      line(tape, i, FEED_600);
    }
    assertThatExceptionOfType(TapeFullException.class)
        .isThrownBy(() -> line(tape, 0, FEED_600))
        .withMessageContaining(Integer.toString(most));
    Tape full = tape.finish();
    assertThat(full.size()).isEqualTo(most);
    assertThat(full.toX(most - 1)).isEqualTo(most - 1.0);
    assertThat(full.columnBytes()).isBetween(36L * most, 40L * most);
  }

  @Test
  void arcs_take_the_room_of_two() {
    TapeBuilder tape = tape(2000);
    assertThatExceptionOfType(TapeFullException.class)
        .isThrownBy(
            () -> {
              for (int i = 0; i < 2000; i++) {
                turn(tape);
              }
            });
    Tape full = tape.finish();
    assertThat(full.size()).isBetween(1000, 1064);
    assertThat(full.sweep(full.size() - 1)).isEqualTo(Math.PI * 2);
    assertThat(full.columnBytes()).isLessThanOrEqualTo(42L * 2128);
  }

  @Test
  void a_move_whose_programmed_end_finds_no_room_is_taken_back() {
    TapeBuilder tape = tape(1000);
    assertThatExceptionOfType(TapeFullException.class)
        .isThrownBy(
            () -> {
              for (int i = 0; i < 1000; i++) {
                line(tape, i, FEED_600);
                tape.programmedTo(i, 1, 0);
              }
            });
    Tape full = tape.finish();
    int last = full.size() - 1;
    assertThat(full.programmedTo(last)).isEqualTo(new Point(last, 1, 0));
  }

  @Test
  void ever_new_states_take_room_too() {
    TapeBuilder tape = tape(10_000);
    assertThatExceptionOfType(TapeFullException.class)
        .isThrownBy(
            () -> {
              for (int i = 0; i < 10_000; i++) {
                line(tape, i, Tapes.state(Plane.XY, 600 + i));
              }
            });
    Tape full = tape.finish();
    assertThat(full.size()).isEqualTo(full.states().size()).isBetween(1900, 2000);
  }

  @Test
  void room_for_moves_that_wait_elsewhere_can_be_asked_for() {
    TapeBuilder tape = tape(300);
    line(tape, 1, FEED_600);
    tape.checkRoom(299);
    assertThatExceptionOfType(TapeFullException.class).isThrownBy(() -> tape.checkRoom(300));
  }

  @Test
  void a_limit_beyond_what_an_index_reaches_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> tape(0)).withMessageContaining("0");
    assertThatIllegalArgumentException().isThrownBy(() -> tape(TapeBuilder.MOST_MOVES + 1));
  }

  @Test
  void finishing_gives_the_same_tape_as_building() {
    TapeBuilder tape = tape(1000);
    line(tape, 1, FEED_600);
    turn(tape);
    tape.programmedTo(5, 0, 0);
    tape.dwell(2, 3, 4, FEED_600);
    Tape built = tape.build();
    Tape finished = tape.finish();
    assertThat(finished.size()).isEqualTo(built.size()).isEqualTo(3);
    assertThat(finished.columnBytes()).isEqualTo(built.columnBytes());
    assertThat(finished.sweep(1)).isEqualTo(built.sweep(1));
    assertThat(finished.programmedTo(1)).isEqualTo(new Point(5, 0, 0));
    assertThat(finished.seconds(2)).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(ints = {900, 1000, 1100, 1111, 1112, 5000})
  void a_finished_tape_keeps_no_more_room_than_forty_bytes_a_move(int likelyMoves) {
    TapeBuilder tape = new TapeBuilder(Point.ZERO, Tapes.RATES, likelyMoves, 10_000);
    for (int i = 0; i < 1000; i++) {
      line(tape, i, FEED_600);
    }
    Tape finished = tape.finish();
    assertThat(finished.size()).isEqualTo(1000);
    assertThat(finished.columnBytes()).isBetween(36_000L, 40_000L);
    assertThat(finished.extents().max()).isEqualTo(new Point(999, 0, 0));
  }
}
