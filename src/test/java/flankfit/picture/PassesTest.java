package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.Tape;
import org.junit.jupiter.api.Test;

class PassesTest {
  @Test
  void three_passes_over_one_hole_count_back_from_the_last() {
    Tape tape = Samples.threadTape();
    Passes passes = new Passes(tape, Samples.threadSetup().holes());
    assertThat(passes.following(3)).isEqualTo(2);
    assertThat(passes.following(4)).isEqualTo(2);
    assertThat(passes.following(10)).isEqualTo(1);
    assertThat(passes.following(16)).isZero();
    assertThat(passes.several()).isTrue();
  }

  @Test
  void one_pass_over_each_of_four_holes_is_the_last_everywhere() {
    Tape tape = Samples.patternTape();
    assertThat(new Passes(tape, Samples.patternSetup().holes()).several()).isFalse();
  }
}
