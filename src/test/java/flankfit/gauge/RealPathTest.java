package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.Tape;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Both sides of what is too much to be read as moved (finding GA12). */
class RealPathTest {
  private final Milled job = new Milled();

  private Optional<String> impossible() {
    Tape tape = job.tape(job.sheet().offsets());
    return new RealPath(job.found(tape), tape).impossible();
  }

  @Test
  void five_hundred_turns_are_read_and_no_more() {
    job.depth = Optional.of(500 * 1.5);
    assertThat(impossible()).isEmpty();
    job.depth = Optional.of(500 * 1.5 + 0.01);
    assertThat(impossible()).contains("it is 501 turns long, 500 are read");
  }

  /** Two lines lead in and one leads out: with four thousand moves that leaves 3997 arcs. */
  @Test
  void four_thousand_moves_are_swept_and_no_more() {
    job.arcs = 3997;
    assertThat(impossible()).isEmpty();
    job.arcs = 3998;
    assertThat(impossible()).contains("the pass at line 8 has 4001 moves, 4000 are swept");
  }
}
