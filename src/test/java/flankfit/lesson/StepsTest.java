package flankfit.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.control.BlockTrace.Outcome;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What single blocks are told to be. */
class StepsTest {
  private static final String HEAD = "G21 G90 G17 G54 F200. S1000 M3\nG0 X0 Y0 Z0\n";

  private static void isAt(Point p, double x, double y, double z) {
    assertThat(p.x()).isCloseTo(x, within(1e-9));
    assertThat(p.y()).isCloseTo(y, within(1e-9));
    assertThat(p.z()).isCloseTo(z, within(1e-9));
  }

  /**
   * Kramer, Proctor, Messina, The NIST RS274NGC Interpreter – Version 3, NISTIR 6556, 2000,
   * 3.5.3.2: from X7 Y7 Z9 the block G17 G2 X10 Y16 I3 J4 Z9 has its centre at X10 Y11 and radius
   * 5.
   */
  @Test
  void arc_by_centre_of_the_published_example() {
    List<Step> steps = Lessons.steps(HEAD + "G1 X7 Y7 Z9\nG17 G2 X10 Y16 I3 J4 Z9\n");
    Step arc = Lessons.at(steps, 4);
    isAt(arc.end(), 10, 16, 9);
    isAt(arc.move(), 3, 9, 0);
    isAt(arc.arc().orElseThrow().centre(), 10, 11, 9);
    assertThat(arc.arc().orElseThrow().radius()).isCloseTo(5, within(1e-9));
    assertThat(arc.absolute()).contains("G90 G17 G2 X10 Y16 I3 J4 Z9");
    assertThat(arc.incremental()).contains("G91 G17 G2 X3 Y9 I3 J4 Z0");
    assertThat(arc.plain())
        .contains("3 right and 9 back", "clockwise", "centre 3 right and 4 back");
  }

  @Test
  void full_turn_of_a_helix_is_told_as_one_would_say_it() {
    Step turn = Lessons.at(Lessons.steps(HEAD + "G1 X3.\nG91\nG3 I-3. Z1.5\n"), 5);
    assertThat(turn.plain())
        .isEqualTo(
            "from where it stands, 1.5 up while going once round anticlockwise, centre 3 left");
    assertThat(turn.absolute()).contains("G90 G3 I-3. Z1.5");
    assertThat(turn.mode()).isEqualTo(Distance.INCREMENTAL);
  }

  @Test
  void radius_words_and_other_planes_are_kept() {
    List<Step> steps =
        Lessons.steps(HEAD + "G1 X10. Z-5.\nG3 X14. Y4. R4.\nG18 G91 G2 X2. Z2. I2.\n");
    assertThat(Lessons.at(steps, 4).incremental()).contains("G91 G3 X4. Y4. R4.");
    Step zx = Lessons.at(steps, 5);
    assertThat(zx.absolute()).contains("G18 G90 G2 X16. Z-3. I2.");
    assertThat(zx.plain()).contains("seen from the back");
  }

  @Test
  void inch_keeps_four_decimals_and_the_manner_of_writing() {
    List<Step> steps = Lessons.steps("G20 G90 G54 F9.\nG0 X0 Y0 Z0\nG1 X.175\nY.02 X.25\n");
    assertThat(Lessons.at(steps, 4).incremental()).contains("G91 Y.02 X.075");
    isAt(Lessons.at(steps, 4).move(), 1.905, 0.508, 0);
  }

  @Test
  void first_point_cannot_be_said_as_a_distance() {
    Step first = Lessons.at(Lessons.steps(HEAD), 2);
    assertThat(first.incremental()).isEmpty();
    assertThat(first.unsayable().orElseThrow()).contains("where the tool stands in X");
  }

  @Test
  void another_work_offset_makes_the_next_coordinates_unsayable_as_distances() {
    List<Step> steps = Lessons.steps(HEAD + "X1.\nG55 X2.\nX3.\n", "G55 = [100, 0, 0]");
    isAt(Lessons.at(steps, 4).move(), 101, 0, 0);
    assertThat(Lessons.at(steps, 4).incremental()).isEmpty();
    assertThat(Lessons.at(steps, 5).incremental()).contains("G91 X1.");
  }

  @Test
  void cycle_counts_r_from_the_initial_level_and_depth_from_r() {
    Step hole = Lessons.at(Lessons.steps(HEAD + "G0 Z10.\nG81 X5. Z-8. R2.\nX9.\nG80\n"), 4);
    assertThat(hole.incremental()).contains("G91 G81 X5. Z-10. R-8.");
    assertThat(hole.unfolds()).hasSize(4);
    assertThat(hole.plain()).contains("a hole at X5 Y0", "R 2", "down to -8", "back up to 10");
  }

  @Test
  void several_holes_of_one_line_are_distances_only() {
    Step holes = Lessons.at(Lessons.steps(HEAD + "G91 G81 X5. Z-8. R-2. L3\nG80\n"), 3);
    assertThat(holes.absolute()).isEmpty();
    assertThat(holes.plain()).contains("3 holes, the last at X15");
  }

  @Test
  void compensated_end_stands_beside_the_end_told() {
    Step on =
        Lessons.at(
            Lessons.steps(HEAD + "G41 D4 G1 X10. Y0\nY10.\nG40 X0\nM30\n", "D4 = { geometry = 2 }"),
            3);
    isAt(on.end(), 10, 0, 0);
    isAt(on.compensatedEnd().orElseThrow(), 8, 0, 0);
    assertThat(on.plain()).contains("2 to the left of the path told");
  }

  @Test
  void mirrored_numbers_are_those_of_the_program_and_the_side_that_of_the_part() {
    Step mirrored = Lessons.at(Lessons.steps(HEAD + "G51.1 X0\nG1 X5. Y1.\nG91 X2.\nG50.1\n"), 5);
    isAt(mirrored.move(), 2, 0, 0);
    isAt(mirrored.end(), 7, 1, 0);
    assertThat(mirrored.absolute()).contains("G90 X7.");
    assertThat(mirrored.plain()).contains("2 left", "mirrored on the part");
  }

  @Test
  void machine_coordinates_and_registers_are_not_said_in_the_other_mode() {
    List<Step> steps = Lessons.steps(HEAD + "G53 G0 Z100.\nG10 L12 P4 R1.\n");
    assertThat(Lessons.at(steps, 3).unsayable().orElseThrow()).contains("G53 needs G90");
    assertThat(Lessons.at(steps, 4).unsayable().orElseThrow()).contains("adds in G91");
  }

  @Test
  void block_executed_again_is_told_once_with_its_last_end() {
    List<Step> steps = Lessons.steps(HEAD + "M98 P7 L3\nM30\nO7\nG91 G1 X2.\nG90 G0 Y5.\nM99\n");
    Step sub = Lessons.at(steps, 6);
    assertThat(sub.again().orElseThrow().times()).isEqualTo(2);
    assertThat(sub.again().orElseThrow().alike()).isTrue();
    isAt(sub.again().orElseThrow().lastEnd(), 6, 5, 0);
    Step up = Lessons.at(steps, 7);
    assertThat(up.again().orElseThrow().alike()).isFalse();
    assertThat(steps.stream().filter(s -> s.place().line() == 6)).hasSize(1);
  }

  @Test
  void stop_is_the_last_step_that_was_executed() {
    List<Step> steps = Lessons.steps(HEAD + "G3 X10. I2.\nX9.\n");
    assertThat(Lessons.at(steps, 3).outcome()).isEqualTo(Outcome.STOPPED);
    assertThat(Lessons.at(steps, 3).plain()).contains("an error ends the run here");
    assertThat(Lessons.at(steps, 4).plain()).isEqualTo("not executed");
  }

  @Test
  void computed_coordinate_is_told_with_its_value() {
    Step step = Lessons.at(Lessons.steps(HEAD + "#1=4\nG1 X[#1*2]\nX[#1*3]\n"), 5);
    assertThat(step.incremental()).contains("G91 X4.");
    assertThat(step.absolute()).contains("G90 X[#1*3]");
  }
}
