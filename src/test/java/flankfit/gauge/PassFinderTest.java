package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.ModalState;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.unit.LengthUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Passes found on tapes written arc by arc. */
class PassFinderTest {
  private static final ModalState STATE = ModalState.initial(LengthUnit.MILLIMETRE);

  private final TapeBuilder tape = new TapeBuilder(new Point(3, 0, -10), Milled.RATES);
  private int line = 1;

  private void arc(double toAngle, double radius, double sweep, double z) {
    tape.arc(
        radius * Math.cos(toAngle),
        radius * Math.sin(toAngle),
        z,
        0,
        0,
        radius,
        radius,
        sweep,
        line,
        line,
        STATE);
    line++;
  }

  private List<Pass> passes() {
    Tape built = tape.build();
    return PassFinder.find(built, tool -> true).passes();
  }

  @Test
  void quarters_of_a_turn_are_one_pass() {
    for (int i = 1; i <= 8; i++) {
      arc(i * Math.PI / 2, 3, Math.PI / 2, -10 + 0.375 * i);
    }
    Pass pass = passes().get(0);
    assertThat(passes()).hasSize(1);
    assertThat(pass.turns()).isCloseTo(2, within(1e-12));
    assertThat(pass.lead()).isCloseTo(1.5, within(1e-12));
    assertThat(pass.isRightHanded()).isTrue();
    assertThat(pass.zLow()).isEqualTo(-10);
  }

  @Test
  void a_dwell_within_a_turn_does_not_part_it() {
    arc(Math.PI, 3, Math.PI, -9.25);
    tape.dwell(0.5, line, line, STATE);
    arc(2 * Math.PI, 3, Math.PI, -8.5);
    assertThat(passes()).hasSize(1);
  }

  @Test
  void another_rise_sense_or_radius_parts_passes() {
    arc(0, 3, 2 * Math.PI, -8.5);
    arc(0, 3, 2 * Math.PI, -7.1);
    arc(0, 3, -2 * Math.PI, -5.7);
    assertThat(passes()).hasSize(3);
    assertThat(passes().get(2).isRightHanded()).isFalse();
  }

  @Test
  void half_turns_of_entry_and_spirals_are_no_passes() {
    arc(Math.PI, 3, Math.PI, -9.25);
    tape.arc(1, 0, -8, 0, 0, 3, 1, 3 * Math.PI, line, line, STATE);
    assertThat(passes()).isEmpty();
  }

  @Test
  void centres_within_rounding_of_an_inch_program_are_one_axis() {
    arc(Math.PI, 3, Math.PI, -9.25);
    tape.arc(3, 0, -8.5, 0.0025, 0, 3, 3, Math.PI, line, line, STATE);
    assertThat(passes()).hasSize(1);
    assertThat(PassFinder.byAxis(passes())).hasSize(1);
  }

  @Test
  void tools_that_cut_no_threads_are_passed_over() {
    arc(0, 3, 2 * Math.PI, -8.5);
    assertThat(PassFinder.find(tape.build(), tool -> false).passes()).isEmpty();
  }
}
