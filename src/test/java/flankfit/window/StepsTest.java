package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.picture.Samples;
import flankfit.unit.LengthUnit;
import org.junit.jupiter.api.Test;

class StepsTest {
  private final Tape tape = Samples.threadTape();
  private final Steps steps = new Steps(tape);

  @Test
  void steps_go_from_block_to_block_and_stop_at_both_ends() {
    assertThat(steps.next(0)).isEqualTo(1);
    assertThat(steps.previous(1)).isZero();
    assertThat(steps.previous(0)).isZero();
    int last = tape.size() - 1;
    assertThat(steps.next(last)).isEqualTo(last);
  }

  @Test
  void forward_and_back_is_the_same_place() {
    for (int move = 0; move + 1 < tape.size(); move++) {
      assertThat(steps.previous(steps.next(move))).isEqualTo(move);
    }
  }

  @Test
  void a_line_without_a_move_leads_to_the_next_that_makes_one() {
    assertThat(tape.line(steps.ofLine(1).getAsInt())).isEqualTo(3);
    assertThat(tape.line(steps.ofLine(12).getAsInt())).isEqualTo(13);
    assertThat(steps.ofLine(99)).isEmpty();
  }

  @Test
  void times_grow_and_are_found_again() {
    for (int move = 0; move < tape.size(); move++) {
      assertThat(steps.at(steps.until(move))).isEqualTo(move);
    }
    assertThat(steps.seconds()).isEqualTo(steps.until(tape.size() - 1));
    assertThat(steps.at(1e9)).isEqualTo(tape.size() - 1);
  }

  @Test
  void steps_of_a_tape_that_grows_are_those_of_the_whole() {
    Tape whole = PlainTapes.lines(5000);
    Steps grown = Steps.NONE;
    for (int moves = 0; moves <= whole.size(); moves += 321) {
      grown = grown.and(PlainTapes.lines(moves));
    }
    grown = grown.and(whole);
    Steps once = new Steps(whole);
    assertThat(grown.seconds()).isEqualTo(once.seconds());
    for (int move = 0; move < whole.size(); move += 7) {
      assertThat(grown.until(move)).isEqualTo(once.until(move));
      assertThat(grown.ofLine(whole.line(move))).isEqualTo(once.ofLine(whole.line(move)));
    }
  }

  @Test
  void a_line_is_found_as_well_where_lines_go_back() {
    TapeBuilder loop = new TapeBuilder(Point.ZERO, new double[] {1, 1, 1});
    ModalState state = ModalState.initial(LengthUnit.MILLIMETRE);
    int[] lines = {3, 4, 6, 3, 4, 6, 9};
    for (int i = 0; i < lines.length; i++) {
      loop.straight(MoveKind.RAPID, i + 1, 0, 0, lines[i], i + 1, state);
    }
    Steps looping = new Steps(loop.build());
    assertThat(looping.ofLine(1)).hasValue(0);
    assertThat(looping.ofLine(5)).hasValue(2);
    assertThat(looping.ofLine(7)).hasValue(6);
    assertThat(looping.ofLine(10)).isEmpty();
  }
}
