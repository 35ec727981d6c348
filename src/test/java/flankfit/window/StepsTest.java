package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.Tape;
import flankfit.picture.Samples;
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
}
