package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Travel.From;
import flankfit.gauge.Travel.Play;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.HelicalGroove;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Tooth;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The steps between the depths at which a wall is read are close enough. */
class DepthLadderTest {
  /** A tenth of a micrometre. */
  private static final double SAME = 1e-4;

  /** What a kink of a measured tooth may hide between the closer steps that are read then (mm). */
  private static final double KINK = 1.5e-4;

  private static final int FINER = 4;

  /** Threads, share of the mill, form of its teeth, path beyond the basic one in pitches. */
  @ParameterizedTest(name = "{0}, mill {1}, {2}, {3} P beyond")
  @CsvSource({
    "M3x0.5-6H, 0.7, straight, 0.01",
    "M4x0.7-6H, 0.8, straight, 0.002",
    "M6x1-6H, 0.6, ground, 0.01",
    "M6x1-6H, 0.8, lopsided, 0.02",
    "M8x1.25-6H, 0.75, straight, 0",
    "M10x1.5-6H, 0.85, straight, 0.02",
    "M12x1.75-6H, 0.75, lopsided, 0.01",
    "M16x2-6H, 0.75, straight, 0.005",
    "M20x1.5-6H, 0.9, straight, 0.015",
    "M20x2.5-6H, 0.8, straight, 0.02",
    "M20x2.5-6H, 0.8, ground, 0.01",
    "M24x3-6H, 0.85, straight, 0.004",
    "M30x3.5-6H, 0.83, straight, 0.02",
    "M36x4-6H, 0.69, lopsided, 0.02",
    "M42x4.5-6H, 0.88, straight, 0.03",
    "M48x3-6H, 0.5, ground, 0.01",
    "M64x6-6H, 0.89, straight, 0.01",
    "M20xPh3P1.5-6H, 0.6, straight, 0.02",
    "#8-32 UNC-2B, 0.7, straight, 0.01",
    "1/4-20 UNC-2B, 0.8, straight, 0.02",
    "5/16-18 UNC-2B, 0.74, straight, 0.01",
    "1/2-13 UNC-2B, 0.75, ground, 0.01",
    "1-8 UNC-2B, 0.85, straight, 0.02",
    "2-4.5 UNC-2B, 0.85, lopsided, 0.03",
    "M10x1.5-6g, 1.2, straight, 0.01",
    "M20x2.5-6g, 1.0, straight, 0.02",
    "1-8 UNC-2A, 0.6, straight, 0.02"
  })
  void four_times_closer_steps_change_no_measure_and_no_way(
      String designation, double share, String form, double beyond) {
    ThreadSpec spec = TurnedWall.spec(designation);
    double mill = share * spec.nominal();
    double sign = spec.internal() ? 1 : -1;
    double bottom =
        spec.internal() ? spec.nominal() / 2 : spec.basicMinor() / 2 - 0.03 * spec.pitch();
    double path = bottom - sign * mill / 2 + sign * beyond * spec.pitch();
    double blank = spec.internal() ? spec.basicMinor() / 2 + 0.01 : spec.nominal() / 2 - 0.01;
    HelicalGroove groove =
        new HelicalGroove(tooth(spec, mill, form), spec.internal(), path, spec.lead());
    RegularThread thread = new RegularThread(groove, spec.pitch(), blank);
    EndlessWall wall = new EndlessWall(thread, spec.lead(), 0, -6 * spec.lead());
    boolean kinked = form.equals("lopsided");
    double[] ladder = kinked ? DepthLadder.ofKinked(spec) : DepthLadder.of(spec);
    double[] closer = DepthLadder.of(spec, kinked ? 40 * FINER : FINER);
    WallField usual = WallField.sample(wall, spec, true, 12, ladder);
    WallField fine = WallField.sample(wall, spec, true, 12, closer);
    assertThat(fine.depths()).isGreaterThan(3 * usual.depths());
    double same = kinked ? KINK : SAME;
    sameMeasures(WallMeasures.of(usual).orElseThrow(), WallMeasures.of(fine).orElseThrow(), same);
    double felt = WallMeasures.of(fine).orElseThrow().functional().central().diameter();
    for (ThreadGauge gauge : List.of(ThreadGauge.go(spec), ThreadGauge.noGo(spec))) {
      sameWay(usual, fine, gauge, same);
      // With so much room that it goes through, the clearance is a measure of the whole wall.
      sameWay(usual, fine, gauge.withPitchDiameter(felt - sign * 0.02 * spec.pitch()), same);
    }
  }

  private static Tooth tooth(ThreadSpec spec, double mill, String form) {
    double p = spec.pitch();
    double r = mill / 2;
    double half = spec.internal() ? p / 16 : p / 8;
    return switch (form) {
      case "ground" -> TeethForms.groundFor(spec, r);
      case "straight" -> PolylineTooth.straight(r, 2 * half, spec.halfAngle());
      default ->
          PolylineTooth.measured(
              List.of(
                  List.of(-0.60 * p, r - 0.93 * p),
                  List.of(-half - 0.20 * p, r - 0.34 * p),
                  List.of(-half - 0.01 * p, r - 0.005 * p),
                  List.of(-half + 0.02 * p, r),
                  List.of(half, r),
                  List.of(half + 0.22 * p, r - 0.39 * p),
                  List.of(0.60 * p, r - 0.91 * p)));
    };
  }

  private static void sameMeasures(WallMeasures usual, WallMeasures fine, double same) {
    assertThat(usual.pitch().mean()).isCloseTo(fine.pitch().mean(), within(same));
    assertThat(usual.functional().free().diameter())
        .isCloseTo(fine.functional().free().diameter(), within(same));
    assertThat(usual.functional().central().diameter())
        .isCloseTo(fine.functional().central().diameter(), within(same));
    assertThat(usual.functional().central().decidedBy())
        .isEqualTo(fine.functional().central().decidedBy());
    assertThat(usual.flanks().central().diameter())
        .isCloseTo(fine.flanks().central().diameter(), within(same));
    assertThat(usual.major()).isCloseTo(fine.major(), within(same));
    assertThat(usual.minor()).isCloseTo(fine.minor(), within(same));
    usual
        .overBall()
        .ifPresent(
            ball ->
                assertThat(ball.mean())
                    .isCloseTo(fine.overBall().orElseThrow().mean(), within(same)));
  }

  private static void sameWay(WallField usual, WallField fine, ThreadGauge gauge, double same) {
    Travel one = Travel.of(usual, gauge, From.MOUTH, Play.CENTRAL);
    Travel other = Travel.of(fine, gauge, From.MOUTH, Play.CENTRAL);
    assertThat(one.end()).isEqualTo(other.end());
    assertThat(one.turns()).isCloseTo(other.turns(), within(1e-4));
    // A gauge refused at the face touches a ridge cut off by it: its clearance is that of one edge.
    if (one.turns() > 0.5) {
      double clearance = other.clearance().orElseThrow();
      assertThat(one.clearance().orElseThrow()).isCloseTo(clearance, within(same));
    }
  }
}
