package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.unit.LengthUnit;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MeasureTest {
  private static final double LAST_DIGIT = 1e-12;

  private static Pick pick(double x, double y, double z) {
    return new Pick(Pick.Kind.END, 0, 1, new Point(x, y, z));
  }

  /** A box of 2, 3 and 6 has a diagonal of 7: 4 + 9 + 36 = 49. */
  @Test
  void distances_are_those_of_a_box_with_a_whole_diagonal() {
    Measure m = new Measure(new Point(1, 1, 1), new Point(3, 4, 7));
    assertThat(m.dx()).isEqualTo(2);
    assertThat(m.dy()).isEqualTo(3);
    assertThat(m.dz()).isEqualTo(6);
    assertThat(m.distance()).isCloseTo(7, within(LAST_DIGIT));
    assertThat(m.inPlan()).isCloseTo(Math.sqrt(13), within(LAST_DIGIT));
  }

  /** Sides 3 and 4 have a diagonal of 5; tan 36.8699° = 3/4, from memory of trigonometry tables. */
  @Test
  void angles_run_anticlockwise_from_x_through_a_whole_turn() {
    Point zero = Point.ZERO;
    assertThat(Math.toDegrees(new Measure(zero, new Point(4, 3, 0)).angle()))
        .isCloseTo(36.8699, within(5e-5));
    assertThat(Math.toDegrees(new Measure(zero, new Point(0, -1, 0)).angle()))
        .isCloseTo(270, within(1e-9));
    assertThat(new Measure(zero, zero).angle()).isZero();
    assertThat(Math.toDegrees(new Measure(zero, new Point(4, 0, 3)).rise()))
        .isCloseTo(36.8699, within(5e-5));
    assertThat(Math.toDegrees(new Measure(zero, new Point(0, 0, -2)).rise()))
        .isCloseTo(-90, within(1e-9));
  }

  @Test
  void two_points_are_measured_and_a_third_begins_anew() {
    Selection selection = new Selection();
    selection.take(Optional.of(pick(0, 0, 0)));
    assertThat(selection.picked()).isPresent();
    selection.toggleMeasuring();
    selection.take(Optional.of(pick(0, 0, 0)));
    selection.take(Optional.empty());
    assertThat(selection.points()).hasSize(1);
    selection.take(Optional.of(pick(3, 4, 0)));
    assertThat(selection.measure().orElseThrow().distance()).isEqualTo(5);
    selection.take(Optional.of(pick(9, 9, 9)));
    assertThat(selection.points()).hasSize(1);
    assertThat(selection.measure()).isEmpty();
    assertThat(selection.clear()).isTrue();
    assertThat(selection.clear()).isFalse();
  }

  @Test
  void words_of_a_measure_follow_the_unit() {
    Selection selection = new Selection();
    selection.toggleMeasuring();
    selection.take(Optional.of(pick(0, 0, 0)));
    selection.take(Optional.of(pick(25.4, 0, 0)));
    Tape tape = WindowSamples.thread().tape();
    assertThat(SelectionWords.measured(selection, tape, LengthUnit.MILLIMETRE))
        .contains(new StateWords.Row("distance", "25.400 mm"))
        .contains(new StateWords.Row("in plan", "25.400 mm at 0.000° from +X"));
    assertThat(SelectionWords.measured(selection, tape, LengthUnit.INCH))
        .contains(new StateWords.Row("distance", "1.0000 in"));
  }

  /** The block N G3 X0. Y0. Z1.5 I-10. J0. of the sample: its I and J are its own words. */
  @Test
  void a_picked_helix_tells_its_centre_in_the_words_of_its_block() {
    WindowInput input = WindowSamples.thread();
    Tape tape = input.tape();
    int move = 0;
    while (tape.line(move) != 8) {
      move++;
    }
    assertThat(input.programLines().get(7)).contains("I-10. J0.");
    ArcVectors vectors = ArcVectors.of(tape, move);
    assertThat(vectors.word(0)).isCloseTo(-10, within(1e-9));
    assertThat(vectors.word(1)).isCloseTo(0, within(1e-9));
    assertThat(vectors.corner(1).x()).isEqualTo(vectors.centre().x());
    assertThat(vectors.corner(1).y()).isEqualTo(vectors.start().y());
    var rows =
        SelectionWords.picked(
            input, new Pick(Pick.Kind.LINE, move, 0.5, Point.ZERO), LengthUnit.MILLIMETRE);
    assertThat(rows).extracting(StateWords.Row::label).contains("centre", "radius", "rise");
    assertThat(rows)
        .contains(new StateWords.Row("centre", "I −10.000  J 0.000 from the start as programmed"))
        .contains(new StateWords.Row("rise", "1.500 mm, 1.500 mm a turn"));
  }
}
