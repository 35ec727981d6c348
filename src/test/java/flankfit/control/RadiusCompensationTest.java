package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.setup.ControlSwitches.StartUp;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RadiusCompensationTest {
  private static final int CW = -1;
  private static final int CCW = 1;
  private static final double NEAR = 1e-9;

  private static void assertEnd(Tape tape, int move, double x, double y) {
    assertThat(tape.toX(move)).isCloseTo(x, within(NEAR));
    assertThat(tape.toY(move)).isCloseTo(y, within(NEAR));
  }

  @Test
  void blocks_before_the_start_up_move_are_made_uncompensated() {
    Contour.Run run =
        new Contour(0, 0, 0).on(2).line(0, 0, -3).dwell(1).line(10, 0, -3).line(10, 9, -3).run();
    assertThat(run.tape().to(0)).isEqualTo(new Point(0, 0, -3));
    assertThat(run.tape().kind(1)).isEqualTo(MoveKind.DWELL);
    assertEnd(run.tape(), 2, 8, 0);
    assertEnd(run.tape(), 3, 8, 9);
  }

  @Test
  void start_up_and_cancel_move_linearly_along_the_normal() {
    Contour.Run run =
        new Contour(0, 0, 0).on(2).line(10, 0, -3).line(10, 9, -3).off().line(0, 9, 5).run();
    assertThat(run.tape().toZ(0)).isEqualTo(-3);
    assertThat(run.tape().kind(2)).isEqualTo(MoveKind.LINE);
    assertThat(run.tape().to(2)).isEqualTo(new Point(0, 9, 5));
  }

  @Test
  void mitre_beyond_a_right_angle_is_cut_off_by_a_line() {
    Contour.Run run =
        new Contour(0, -10, 0)
            .on(2)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .line(10, -10, 0)
            .off()
            .line(0, -10, 0)
            .run(Contour.mitre());
    Tape tape = run.tape();
    double s = Math.sqrt(0.5);
    assertThat(tape.size()).isEqualTo(5);
    assertEnd(tape, 1, 22, 2);
    assertThat(tape.inserted(1)).isFalse();
    assertEnd(tape, 2, 20 + 2 * s + 2 * s, 0);
    assertThat(tape.inserted(2)).isTrue();
    assertThat(tape.line(2)).isEqualTo(3);
    assertEnd(tape, 3, 10 + 2 * s, -10 - 2 * s);
  }

  @Test
  void mitre_before_and_after_an_arc_is_an_extra_line() {
    Contour.Run run =
        new Contour(-20, -10, 0)
            .on(2)
            .line(-20, 0, 0)
            .line(0, 0, 0)
            .arc(CW, 0, -20, 0, 0, -10)
            .off()
            .line(0, -30, 0)
            .run(Contour.mitre());
    assertThat(run.tape().size()).as("tangent: nothing put in").isEqualTo(4);
    Tape cornered =
        new Contour(-20, -10, 0)
            .on(2)
            .line(-20, 0, 0)
            .line(0, 0, 0)
            .arc(CW, 0, -20, 0, -10, -10)
            .line(-30, -20, 0)
            .off()
            .line(-30, -30, 0)
            .run(Contour.mitre())
            .tape();
    // Line at (0, 0) meets the arc about (-10, -10) whose tangent there points to (1, -1).
    assertThat(cornered.kind(2)).isEqualTo(MoveKind.LINE);
    assertThat(cornered.inserted(2)).isTrue();
    assertThat(cornered.kind(3)).isEqualTo(MoveKind.ARC);
    assertThat(cornered.kind(4)).isEqualTo(MoveKind.LINE);
    assertThat(cornered.inserted(4)).isTrue();
    assertThat(cornered.inserted(5)).isFalse();
    TapeChecks.assertContinuous(cornered);
  }

  @Test
  void corner_moves_come_after_blocks_without_plane_motion() {
    Tape tape =
        new Contour(0, -10, 0)
            .on(2)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .line(20, 0, -5)
            .line(20, -10, -5)
            .run()
            .tape();
    assertThat(tape.to(2)).isEqualTo(new Point(20, 2, -5));
    assertThat(tape.kind(3)).isEqualTo(MoveKind.ARC);
    assertThat(tape.inserted(3)).isTrue();
    assertThat(tape.rise(3)).isZero();
    assertEnd(tape, 3, 22, 0);
  }

  @Test
  void several_turns_keep_their_sweep_and_rise() {
    Tape tape =
        new Contour(0, 0, 0)
            .on(7)
            .line(10, 0, 0)
            .arc(CCW, 10, 0, 6, -10, 0, 4)
            .off()
            .line(0, 0, 6)
            .run()
            .tape();
    assertThat(tape.sweep(1)).isEqualTo(8 * Math.PI);
    assertThat(tape.rise(1)).isEqualTo(6);
    assertThat(tape.radius(1)).isEqualTo(3);
    assertThat(tape.to(1)).isEqualTo(new Point(3, 0, 6));
  }

  @Test
  void several_turns_are_trimmed_in_the_first_and_the_last() {
    Tape tape =
        new Contour(-30, 20, 0)
            .on(3)
            .line(-30, 0, 0)
            .line(-10, 0, 0)
            .arc(CW, 10, 0, -6, 10, 0, 3)
            .line(30, 0, -6)
            .off()
            .line(30, 20, -6)
            .run()
            .tape();
    double x = Math.sqrt(13 * 13 - 9);
    assertEnd(tape, 1, -x, 3);
    assertEnd(tape, 2, x, 3);
    double cutOff = Math.asin(3.0 / 13);
    assertThat(tape.sweep(2)).isCloseTo(-5 * Math.PI + 2 * cutOff, within(NEAR));
    assertThat(tape.rise(2)).isEqualTo(-6);
    TapeChecks.assertContinuous(tape);
  }

  @Test
  void arcs_are_trimmed_against_each_other() {
    // Two bumps side by side: circles of radius 10 about (0, 0) and (16, 0).
    Tape tape =
        new Contour(-20, 0, 0)
            .on(2)
            .line(-10, 0, 0)
            .arc(CW, 8, 6, 0, 10, 0)
            .arc(CW, 26, 0, 0, 8, -6)
            .off()
            .line(40, 0, 0)
            .run()
            .tape();
    assertEnd(tape, 1, 8, Math.sqrt(144 - 64));
    assertThat(tape.endRadius(1)).isEqualTo(12);
    assertEnd(tape, 2, 28, 0);
    TapeChecks.assertContinuous(tape);
  }

  @Test
  void of_two_crossings_the_one_that_cuts_off_least_is_taken() {
    double x = Math.sqrt(9 * 9 - 1);
    Tape there =
        new Contour(-30, 5, 0)
            .on(1)
            .line(-30, 0, 0)
            .line(10, 0, 0)
            .arc(CCW, -10, 0, 0, -10, 0)
            .run()
            .tape();
    assertEnd(there, 1, x, 1);
    Tape back =
        new Contour(-20, 0, 0)
            .on(-1)
            .line(-10, 0, 0)
            .arc(CW, 10, 0, 0, 10, 0)
            .line(-30, 0, 0)
            .run()
            .tape();
    assertEnd(back, 1, x, 1);
  }

  @Test
  void spiral_keeps_its_growth_and_is_trimmed_on_the_spiral() {
    double grown = 10.015;
    Tape tape =
        new Contour(-30, 20, 0)
            .on(3)
            .line(-30, 0, 0)
            .line(-10, 0, 0)
            .arc(CW, grown, 0, 0, 10, 0)
            .line(30, 0, 0)
            .off()
            .line(30, 20, 0)
            .run()
            .tape();
    double x0 = tape.toX(1);
    double phi0 = Math.atan2(3, -x0);
    assertThat(Math.hypot(x0, 3)).isCloseTo(13 + 0.015 * phi0 / Math.PI, within(1e-7));
    double x1 = tape.toX(2);
    double phi1 = Math.PI - Math.atan2(3, x1);
    assertThat(Math.hypot(x1, 3)).isCloseTo(13 + 0.015 * phi1 / Math.PI, within(1e-7));
    assertThat(tape.toY(2)).isCloseTo(3, within(1e-7));
    assertThat(tape.endRadius(2)).isGreaterThan(tape.radius(2));
    TapeChecks.assertContinuous(tape);
  }

  @Test
  void nearly_tangent_inside_corner_of_line_and_spiral_is_found() {
    // A corner of 0.0002 rad between a line and an arc rounded to a thousandth.
    Contour.Run run =
        new Contour(-30, 20, 0)
            .on(3)
            .line(-30, 0, 0)
            .line(0, 0, 0)
            .arc(CCW, 9.999, 10, 0, -0.002, 10)
            .line(9.999, 30, 0)
            .run();
    assertThat(run.findings()).isEmpty();
    TapeChecks.assertContinuous(run.tape());
  }

  @Test
  void start_on_an_arc_spirals_to_its_offset_end() {
    Tape tape =
        new Contour(0, 0, 0)
            .on(0.5)
            .arc(CCW, 6, 0, 1, 3, 0)
            .arc(CCW, 6, 0, 2, -6, 0)
            .off()
            .line(0, 0, 2)
            .run(Contour.startOnArc())
            .tape();
    assertThat(tape.radius(0)).isEqualTo(3);
    assertThat(tape.endRadius(0)).isEqualTo(2.5);
    assertThat(tape.sweep(0)).isEqualTo(Math.PI);
    assertEnd(tape, 0, 5.5, 0);
    assertEnd(tape, 1, 5.5, 0);
    TapeChecks.assertContinuous(tape);
  }

  @Test
  void planes_are_their_own() {
    Tape zx =
        new Contour(Plane.ZX, 0, 0, -20)
            .on(2)
            .line(0, 0, 0)
            .line(0, 3, 20)
            .line(20, 3, 20)
            .run()
            .tape();
    // In ZX the first axis is Z; left of +Z is +X, where the tool is in the way of the next line.
    assertThat(zx.to(0)).isEqualTo(new Point(2, 0, 0));
    assertThat(zx.to(1)).isEqualTo(new Point(2, 3, 18));
    assertThat(zx.to(2)).isEqualTo(new Point(20, 3, 18));
    Tape yz = new Contour(Plane.YZ, 0, -20, 0).on(2).line(0, 0, 0).line(4, 20, 0).run().tape();
    assertThat(yz.to(1)).isEqualTo(new Point(4, 20, 2));
  }

  @Test
  void cancel_by_a_rapid_in_own_normal_style_goes_round_by_straight_rapids() {
    Tape tape =
        new Contour(0, -10, 0)
            .on(2)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .off()
            .rapid(20, -20, 0)
            .run(Contour.style(StartUp.OWN_NORMAL))
            .tape();
    int n = tape.size();
    assertEnd(tape, n - 3, 22, 2);
    assertEnd(tape, n - 2, 22, 0);
    assertThat(tape.kind(n - 3)).isEqualTo(MoveKind.RAPID);
    assertThat(tape.inserted(n - 2)).isTrue();
    assertThat(tape.to(n - 1)).isEqualTo(new Point(20, -20, 0));
  }

  @Test
  void mitre_after_an_own_normal_start_up_is_an_extra_line() {
    Tape tape =
        new Contour(-20, 0, 0)
            .on(2)
            .line(0, 0, 0)
            .line(0, -20, 0)
            .run(Contour.ownNormalWithMitre())
            .tape();
    assertEnd(tape, 0, 0, 2);
    assertEnd(tape, 1, 2, 2);
    assertThat(tape.inserted(1)).isTrue();
    assertEnd(tape, 2, 2, -20);
  }

  @Test
  void tangent_start_up_to_the_right_mirrors_that_to_the_left() {
    Tape left =
        new Contour(0, 5, 0)
            .on(1)
            .line(0, 0, 0)
            .line(-9, 0, 0)
            .run(Contour.style(StartUp.TANGENT))
            .tape();
    Tape right =
        new Contour(0, 5, 0)
            .on(-1)
            .line(0, 0, 0)
            .line(9, 0, 0)
            .run(Contour.style(StartUp.TANGENT))
            .tape();
    assertThat(left.size()).isEqualTo(right.size());
    for (int i = 0; i < left.size(); i++) {
      assertEnd(right, i, -left.toX(i), left.toY(i));
    }
  }

  @Test
  void cancel_before_any_motion_leaves_nothing_displaced() {
    Contour.Run run = new Contour(0, 0, 0).on(2).off().line(9, 0, 0).run();
    assertThat(run.tape().to(0)).isEqualTo(new Point(9, 0, 0));
    assertThat(run.compensation().active()).isFalse();
    assertThat(run.compensation().toolAt()).isEqualTo(Optional.empty());
  }

  @Test
  void cancel_counted_from_where_the_tool_stands_goes_round_the_last_programmed_point() {
    Tape tape =
        new Contour(0, -10, 0)
            .on(2)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .off()
            .standingAt(20, 2, 0)
            .line(20, -18, 0)
            .run(Contour.style(StartUp.OWN_NORMAL))
            .tape();
    int n = tape.size();
    assertEnd(tape, n - 3, 20, 2);
    assertThat(tape.kind(n - 2)).isEqualTo(MoveKind.ARC);
    assertThat(tape.centreU(n - 2)).isEqualTo(20);
    assertThat(tape.centreV(n - 2)).isZero();
    assertEnd(tape, n - 2, 22, 0);
    assertEnd(tape, n - 1, 20, -18);
    TapeChecks.assertContinuous(tape);
  }

  @Test
  void long_contours_are_written_as_they_come() {
    int teeth = 20_000;
    Contour rack = new Contour(-5, -5, 0).on(0.1).line(0, 0, 0);
    for (int i = 0; i < teeth; i++) {
      rack.line(2 * i + 1, i % 2, 0);
    }
    TapeBuilder tape = new TapeBuilder(new Point(-5, -5, 0), new double[] {1, 1, 1});
    Findings findings = new Findings();
    RadiusCompensation c = new RadiusCompensation(Contour.DEFAULTS, tape, findings);
    c.start(0.1, Plane.XY, Place.file("contour.nc"));
    int moves = 0;
    for (ProgrammedMove move : rack.moves) {
      c.move(move);
      moves++;
      assertThat(tape.size()).isGreaterThanOrEqualTo(moves - 1);
    }
    c.finish();
    assertThat(findings.sorted()).isEmpty();
    assertThat(tape.size()).isGreaterThan(teeth);
  }

  @Test
  void starting_twice_is_refused() {
    RadiusCompensation c =
        new RadiusCompensation(
            Contour.DEFAULTS, new TapeBuilder(Point.ZERO, new double[] {1, 1, 1}), new Findings());
    c.start(1, Plane.XY, Place.file("contour.nc"));
    assertThatThrownBy(() -> c.start(1, Plane.XY, Place.file("contour.nc")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () ->
                new RadiusCompensation(
                        Contour.DEFAULTS,
                        new TapeBuilder(Point.ZERO, new double[] {1, 1, 1}),
                        new Findings())
                    .start(Double.NaN, Plane.XY, Place.file("contour.nc")))
        .hasMessageContaining("offset");
  }

  @Test
  void tool_is_known_while_an_element_waits() {
    Contour c =
        new Contour(0, -10, 0)
            .on(2)
            .line(0, 0, 0)
            .line(20, 0, 0)
            .line(20, 0, -4)
            .then(r -> assertThat(r.toolAt()).contains(new Point(20, 2, -4)))
            .line(20, -10, -4);
    assertThat(c.run().tape().size()).isEqualTo(5);
  }
}
