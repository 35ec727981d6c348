package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.setup.ControlSwitches.StartUp;
import org.junit.jupiter.api.Test;

/** Each finding is given once where it belongs, and not for the mended program. */
class RadiusCompensationFindingsTest {
  private static final int CW = -1;
  private static final int CCW = 1;

  @Test
  void rc02_start_up_on_an_arc() {
    Contour bad = new Contour(0, 0, 0).on(1).arc(CCW, 6, 0, 0, 3, 0).line(6, 9, 0);
    assertThat(bad.run().codes()).containsExactly("RC02@1");
    assertThat(bad.run().tape().size()).isZero();
    assertThat(bad.run(Contour.startOnArc()).findings()).isEmpty();
    Contour mended = new Contour(0, 5, 0).on(1).line(0, 0, 0).arc(CCW, 6, 0, 0, 3, 0).line(6, 9, 0);
    assertThat(mended.run().findings()).isEmpty();
  }

  @Test
  void rc03_cancel_on_an_arc_keeps_all_moves_before_it() {
    Contour bad =
        new Contour(0, 0, 0).on(1).line(5, 0, 0).line(5, 9, 0).off().arc(CCW, 0, 9, 0, -2.5, 0);
    assertThat(bad.run().codes()).containsExactly("RC03@3");
    assertThat(bad.run().tape().size()).isEqualTo(2);
    assertThat(bad.run().tape().to(1)).isEqualTo(new Point(4, 9, 0));
    Contour mended = new Contour(0, 0, 0).on(1).line(5, 0, 0).line(5, 9, 0).off().line(0, 9, 0);
    assertThat(mended.run().findings()).isEmpty();
  }

  @Test
  void rc04_short_start_up_warns() {
    Contour bad = new Contour(0, 0, 0).on(5).line(4, 0, 0).line(4, 20, 0).off().line(0, 20, 0);
    assertThat(bad.run().codes()).containsExactly("RC04@1");
    assertThat(bad.run().findings().get(0).what()).isEqualTo("start-up of 4 mm for 5 mm");
    assertThat(bad.run().findings().get(0).severity()).isEqualTo(Severity.WARNING);
    assertThat(bad.run().compensation().stopped()).isFalse();
    Contour mended = new Contour(0, 0, 0).on(5).line(5, 0, 0).line(5, 20, 0).off().line(0, 20, 0);
    assertThat(mended.run().findings()).isEmpty();
  }

  @Test
  void rc04_short_tangent_start_up_stops() {
    Contour bad = new Contour(0, 0, 0).on(-5).line(4, 0, 0).line(4, 20, 0);
    Contour.Run run = bad.run(Contour.style(StartUp.TANGENT));
    assertThat(run.codes()).containsExactly("RC04@1");
    assertThat(run.findings().get(0).severity()).isEqualTo(Severity.ERROR);
    assertThat(run.compensation().stopped()).isTrue();
    assertThat(run.tape().size()).isZero();
  }

  @Test
  void rc05_inside_arc_smaller_than_the_tool_ends_before_the_element_before() {
    Contour bad =
        new Contour(0, 10, 0)
            .on(5)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .line(40, 0, 0)
            .arc(CCW, 44, 4, 0, 0, 4)
            .line(44, 20, 0);
    assertThat(bad.run().codes()).containsExactly("RC05@4");
    assertThat(bad.run().findings().get(0).what())
        .isEqualTo("arc radius 4 mm is smaller than the compensation 5 mm");
    assertThat(bad.run().tape().size()).isEqualTo(2);
    Contour limit =
        new Contour(0, 10, 0)
            .on(4)
            .line(0, 0, 0)
            .line(40, 0, 0)
            .arc(CCW, 44, 4, 3, 0, 4)
            .line(44, 20, 3);
    Contour.Run run = limit.run();
    assertThat(run.findings()).isEmpty();
    assertThat(run.tape().size()).isEqualTo(4);
    assertThat(run.tape().kind(2)).isEqualTo(MoveKind.LINE);
    assertThat(run.tape().from(2)).isEqualTo(new Point(40, 4, 0));
    assertThat(run.tape().to(2)).isEqualTo(new Point(40, 4, 3));
  }

  @Test
  void rc05_in_inches_says_both_units() {
    Contour bad =
        new Contour(0, 0, 0).inInches().on(25.4).line(50, 0, 0).arc(CCW, 62.7, 12.7, 0, 0, 12.7);
    assertThat(bad.run().findings().get(0).what())
        .isEqualTo("arc radius 0.5 in (12.7 mm) is smaller than the compensation 1 in (25.4 mm)");
  }

  @Test
  void rc06_slot_narrower_than_the_tool_ends_before_the_swallowed_element() {
    Contour bad = slot(9.99);
    assertThat(bad.run().codes()).containsExactly("RC06@4");
    assertThat(bad.run().findings().get(0).what())
        .isEqualTo("tool of radius 5 mm does not fit between line 3 and this block");
    assertThat(bad.run().tape().size()).isEqualTo(2);
    assertThat(slot(10.01).run().findings()).isEmpty();
    assertThat(slot(10).run().findings()).as("a slot as wide as the tool").isEmpty();
  }

  private static Contour slot(double width) {
    return new Contour(0, 40, 0)
        .on(5)
        .line(-5, 30, 0)
        .line(-5, 0, 0)
        .line(-5 + width, 0, 0)
        .line(-5 + width, 30, 0)
        .off()
        .line(width, 40, 0);
  }

  @Test
  void rc06_walls_that_do_not_meet() {
    Contour bad =
        new Contour(-20, 10, 0).on(5).line(-20, 0, 0).line(0, 0, 0).line(-3, 3, 0).line(-30, 30, 0);
    assertThat(bad.run().codes()).containsExactly("RC06@3");
    assertThat(bad.run().tape().size()).isEqualTo(1);
  }

  @Test
  void rc07_inside_corner_if_the_switch_says_so() {
    Contour bad = new Contour(0, 10, 0).on(2).line(0, 0, 0).line(20, 0, 0).line(20, 20, 0);
    Contour.Run run = bad.run(Contour.noInsideCorners());
    assertThat(run.codes()).containsExactly("RC07@3");
    assertThat(run.tape().to(run.tape().size() - 1)).isEqualTo(new Point(20, 2, 0));
    assertThat(bad.run().findings()).isEmpty();
    Contour mended =
        new Contour(0, 10, 0)
            .on(2)
            .line(0, 0, 0)
            .line(17, 0, 0)
            .arc(CCW, 20, 3, 0, 0, 3)
            .line(20, 20, 0);
    assertThat(mended.run(Contour.noInsideCorners()).findings()).isEmpty();
  }

  @Test
  void rc07_inside_corner_after_a_tangent_start_up() {
    Contour bad = new Contour(0, 10, 0).on(2).line(0, 0, 0).line(20, 0, 0);
    Contour.Run run = bad.run(Contour.style(StartUp.TANGENT));
    assertThat(run.codes()).containsExactly("RC07@2");
    assertThat(run.compensation().stopped()).isTrue();
    assertThat(run.tape().size()).isEqualTo(1);
    Contour mended = new Contour(0, -10, 0).on(2).line(0, 0, 0).line(20, 0, 0);
    assertThat(mended.run(Contour.style(StartUp.TANGENT)).findings()).isEmpty();
  }

  @Test
  void rc17_two_blocks_between_walls_that_meet_at_an_angle() {
    assertThat(withBlocksBetween(2, 0).run().codes()).containsExactly("RC17@5");
    assertThat(withBlocksBetween(1, 0).run().findings()).isEmpty();
    assertThat(withBlocksBetween(2, 20).run().findings()).as("tangent").isEmpty();
  }

  @Test
  void rc17_counts_blocks_that_make_no_move() {
    Contour bad =
        new Contour(0, 10, 0)
            .on(2)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .line(20, 0, -1)
            .then(c -> c.blockWithoutMove(9, new Place("contour.nc", 9, 1, 0)))
            .line(20, 20, -1);
    assertThat(bad.run().codes()).containsExactly("RC17@9");
  }

  private static Contour withBlocksBetween(int blocks, double direction) {
    Contour c = new Contour(0, 10, 0).on(2).line(0, 0, 0).line(20, 0, 0).at(4);
    for (int i = 1; i <= blocks; i++) {
      c.line(20, 0, -i);
    }
    return direction == 0
        ? c.line(20, 20, -blocks).off().line(0, 20, 0)
        : c.line(20 + direction, 0, -blocks).off().line(0, 20, 0);
  }

  @Test
  void rc17_is_not_given_before_the_cancel_move() {
    Contour good =
        new Contour(0, 10, 0)
            .on(2)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .line(20, 0, 1)
            .line(20, 0, 2)
            .off()
            .line(20, 20, 2);
    assertThat(good.run().findings()).isEmpty();
  }

  @Test
  void rc18_nothing_between_start_up_and_cancel() {
    Contour bad = new Contour(0, 0, 0).on(2).line(10, 0, 0).off().line(20, 0, 0);
    assertThat(bad.run().codes()).containsExactly("RC18@2");
    assertThat(bad.run().tape().to(0)).isEqualTo(new Point(10, 2, 0));
    assertThat(bad.run().tape().to(1)).isEqualTo(new Point(20, 0, 0));
    Contour mended = new Contour(0, 0, 0).on(2).line(10, 0, 0).line(15, 0, 0).off().line(20, 0, 0);
    assertThat(mended.run().findings()).isEmpty();
  }

  @Test
  void rc19_path_that_turns_back_goes_round_the_end() {
    Contour bad =
        new Contour(0, -10, 0)
            .on(2)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .line(5, 0, 0)
            .off()
            .line(5, -10, 0);
    Contour.Run run = bad.run();
    assertThat(run.codes()).containsExactly("RC19@3");
    assertThat(run.tape().kind(2)).isEqualTo(MoveKind.ARC);
    assertThat(run.tape().sweep(2)).isEqualTo(-Math.PI);
    assertThat(run.tape().to(3)).isEqualTo(new Point(5, -2, 0));
    TapeChecks.assertContinuous(run.tape());
    Contour mirrored =
        new Contour(0, 10, 0)
            .on(-2)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .line(5, 0, 0)
            .off()
            .line(5, 10, 0);
    assertThat(mirrored.run().tape().sweep(2)).isEqualTo(Math.PI);
    Contour mended =
        new Contour(0, -10, 0)
            .on(2)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .line(5, -1, 0)
            .off()
            .line(5, -10, 0);
    assertThat(mended.run().findings()).isEmpty();
  }

  @Test
  void reversal_onto_an_arc_turns_by_its_curvature() {
    // Anticlockwise arc back from (20, 0): it lies to the right of the line, a right turn for it.
    Contour right =
        new Contour(0, -10, 0).on(1).line(0, 0, 0).line(20, 0, 0).arc(CCW, 10, -10, 0, 0, -10);
    assertThat(right.run().codes()).containsExactly("RC19@3");
    assertThat(right.run().tape().sweep(2)).isNegative();
    assertThat(right.run().tape().sweep(2)).isEqualTo(-Math.PI);
    Contour left =
        new Contour(0, 10, 0).on(-1).line(0, 0, 0).line(20, 0, 0).arc(CW, 10, 10, 0, 0, 10);
    assertThat(left.run().tape().sweep(2)).isEqualTo(Math.PI);
  }

  @Test
  void compensation_of_zero_gives_no_warning_at_corners() {
    Contour c =
        new Contour(0, 0, 0)
            .on(0)
            .line(1, 0, 0)
            .line(1, 0, 1)
            .line(1, 0, 2)
            .line(9, 0, 2)
            .line(3, 0, 2)
            .off()
            .line(0, 0, 0);
    assertThat(c.run().findings()).isEmpty();
  }
}
