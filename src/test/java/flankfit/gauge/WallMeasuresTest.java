package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Fit.DecidedBy;
import flankfit.gauge.WallMeasures.Spread;
import flankfit.sweep.Flank;
import flankfit.unit.Angles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is measured on walls whose every deviation is known. */
class WallMeasuresTest {
  private static WallMeasures measure(TurnedWall wall) {
    return WallMeasures.of(WallField.sample(wall, wall.spec, true)).orElseThrow();
  }

  private static void assertAll(Spread spread, double value, double within) {
    assertThat(spread.mean()).isCloseTo(value, within(within));
    assertThat(spread.least()).isCloseTo(value, within(within));
    assertThat(spread.greatest()).isCloseTo(value, within(within));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"M16x2-6H", "M20x1.5-6H-LH", "M20xPh3P1.5-6H", "M16x2-6g", "1/2-13 UNC-2B"})
  void a_perfect_thread_measures_as_it_is_made(String designation) {
    TurnedWall wall = new TurnedWall(designation);
    WallMeasures measured = measure(wall);
    double outer = Math.max(wall.major, wall.minor);
    double inner = Math.min(wall.major, wall.minor);
    assertThat(measured.major()).isCloseTo(2 * outer, within(1e-5));
    assertThat(measured.minor()).isCloseTo(2 * inner, within(1e-5));
    assertAll(measured.pitch(), wall.pitchDiameter(), 1e-8);
    if (wall.spec.internal()) {
      assertAll(measured.overBall().orElseThrow(), wall.pitchDiameter(), 1e-8);
    } else {
      assertThat(measured.overBall()).isEmpty();
    }
    double functional = measured.functional().free().diameter();
    assertThat(functional).isCloseTo(wall.pitchDiameter(), within(1e-6));
    assertThat(measured.flanks().central().diameter())
        .isCloseTo(wall.pitchDiameter(), within(1e-6));
    assertThat(measured.flankAngleUp()).isCloseTo(Math.PI / 6, within(1e-8));
    assertThat(measured.flankAngleDown()).isCloseTo(Math.PI / 6, within(1e-8));
    assertThat(measured.leadError()).isCloseTo(0, within(1e-9));
    assertThat(measured.taper()).isCloseTo(0, within(1e-9));
    assertThat(measured.roundness()).isCloseTo(0, within(1e-9));
    assertThat(measured.bellMouth().orElseThrow()).isCloseTo(0, within(1e-9));
    assertThat(measured.deepest().depth()).isCloseTo(0, within(1e-8));
    double turns = 16 / wall.spec.lead();
    assertThat(measured.ends().fullTurns()).isBetween(turns - 1, turns);
    assertThat(measured.ends().incompleteAtMouth()).isBetween(0.0, 0.5);
    assertThat(measured.ends().chamferDepth()).isCloseTo(0, within(1e-9));
  }

  @Test
  void taper_and_lead_error_are_told_apart() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.larger = (theta, z) -> 0.004 * z;
    wall.raised = (theta, z) -> 0.003 * z;
    WallMeasures measured = measure(wall);
    // Diameters are fitted at the helix of the wanted lead: the pitch line there is that of z.
    assertThat(measured.taper()).isCloseTo(0.004, within(1e-8));
    assertThat(measured.leadError()).isCloseTo(0.006, within(1e-8));
    assertThat(measured.leadSpread())
        .isCloseTo(0.006 * measured.ends().fullTurns(), within(0.006 / WallField.DIRECTIONS));
    assertThat(measured.bellMouth().orElseThrow()).isCloseTo(0, within(1e-8));
    double loss = measured.pitch().least() - measured.flanks().central().diameter();
    // A lead error costs its whole length times cot 30° when the plug is held central.
    assertThat(loss).isBetween(0.0, measured.leadSpread() * Math.sqrt(3) + 1e-6);
  }

  /** "pitch: ΔD2 = cot α |δP_E|" over the engaged length; derived from the virtual diameter. */
  @Test
  void a_lead_error_costs_its_cotangent_to_a_central_plug_and_less_to_a_free_one() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.raised = (theta, z) -> 0.005 * z / 2;
    WallField field = WallField.sample(wall, wall.spec, true);
    double perTurn = 0.005 * Math.sqrt(3);
    double one = -2.0;
    for (double turns = 1; turns <= 6; turns += 0.5) {
      double low = one - turns * 2;
      double central =
          wall.pitchDiameter() - Functional.flanks(field, Travel.Play.CENTRAL, low, one).diameter();
      double free =
          wall.pitchDiameter() - Functional.flanks(field, Travel.Play.FREE, low, one).diameter();
      assertThat(central).isCloseTo(perTurn * turns, within(0.02 * perTurn));
      double share = free / central;
      if (turns == 1) {
        assertThat(share).isBetween(0.5, 0.6);
      } else if (turns != Math.rint(turns)) {
        assertThat(share).isGreaterThan(0.97);
      } else {
        assertThat(share).isBetween(1 - 0.55 / turns, 1.0);
      }
    }
  }

  /** Half angles wrong by δ: 0.00873 P (small), 0.01309 P (large) per degree and flank. */
  @Test
  void angle_errors_cost_what_the_formulas_say() {
    double degree = Angles.toRadians(0.5);
    for (double error : new double[] {-degree, degree}) {
      TurnedWall wall = new TurnedWall("M10x1.5-6H");
      wall.minor = wall.spec.basicMinor() / 2;
      wall.upperAngle = error;
      wall.lowerAngle = error;
      WallMeasures measured = measure(wall);
      assertThat(measured.flankAngleUp()).isCloseTo(Math.PI / 6 + error, within(1e-8));
      assertThat(measured.pitch().mean()).isCloseTo(wall.pitchDiameter(), within(1e-8));
      double loss = measured.pitch().mean() - fullFlanks(wall);
      double formula = (error < 0 ? 0.00873 : 0.01309) * 1.5;
      // The formula is of first order in the angle; half a degree leaves two in a hundred.
      assertThat(loss).isCloseTo(formula, within(0.02 * formula));
    }
  }

  /** Flanks alone as far as the major diameter: H/8 beyond the relieved crest. */
  private static double fullFlanks(TurnedWall wall) {
    WallField field = WallField.sample(wall, wall.spec, true);
    return Functional.full(field, Travel.Play.CENTRAL, -14, -2).diameter();
  }

  @Test
  void one_flank_wrong_is_told_by_its_side() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.lowerAngle = -Angles.toRadians(0.5);
    WallMeasures measured = measure(wall);
    assertThat(measured.flankAngleUp()).isCloseTo(Math.PI / 6, within(1e-8));
    assertThat(Angles.toDegrees(measured.flankAngleDown())).isCloseTo(29.5, within(1e-6));
    assertThat(measured.functional().free().decidedBy()).isEqualTo(DecidedBy.FLANK_DOWN);
  }

  @Test
  void an_oval_an_axis_and_three_lobes_are_told_apart() {
    TurnedWall oval = new TurnedWall("M16x2-6H");
    oval.larger = (theta, z) -> 0.010 * Math.cos(2 * theta);
    WallMeasures measured = measure(oval);
    assertThat(measured.roundness()).isCloseTo(0.010, within(1e-4));
    assertThat(measured.pitch().least()).isCloseTo(oval.pitchDiameter() - 0.010, within(1e-6));
    assertThat(measured.pitch().greatest()).isCloseTo(oval.pitchDiameter() + 0.010, within(1e-6));

    TurnedWall off = new TurnedWall("M16x2-6H");
    off.axisX = 0.010;
    off.axisY = -0.004;
    measured = measure(off);
    assertThat(measured.axisX()).isCloseTo(0.010, within(2e-5));
    assertThat(measured.axisY()).isCloseTo(-0.004, within(2e-5));
    assertAll(measured.pitch(), off.pitchDiameter(), 2e-5);
    assertThat(measured.roundness()).isLessThan(2e-5);
    assertThat(measured.flanks().free().diameter() - measured.flanks().central().diameter())
        .isCloseTo(2 * Math.hypot(0.010, 0.004), within(5e-4));

    TurnedWall lobes = new TurnedWall("M16x2-6H");
    lobes.larger = (theta, z) -> 0.010 * Math.cos(3 * theta);
    measured = measure(lobes);
    // Equal width all round: no diameter shows it, the plug does.
    assertAll(measured.pitch(), lobes.pitchDiameter(), 2e-5);
    assertThat(measured.roundness()).isCloseTo(0.010, within(1e-4));
    assertThat(measured.flanks().free().diameter())
        .isCloseTo(lobes.pitchDiameter() - 0.010, within(5e-4));
  }

  @Test
  void a_bell_mouth_is_what_the_first_turn_stands_wider() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.larger = (theta, z) -> 0.002 * z + (z > -2.2 ? 0.04 : 0);
    WallMeasures measured = measure(wall);
    assertThat(measured.bellMouth().orElseThrow()).isBetween(0.03, 0.0401);
    assertThat(measured.levels().get(0).pitch().greatest()).isGreaterThan(wall.pitchDiameter());
    assertThat(measured.levels()).hasSize((int) measured.ends().fullTurns());
  }

  @Test
  void an_entry_mark_is_found_where_it_is() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.upperWider = (theta, z) -> Math.abs(theta - 1) < 0.15 ? 0.05 : 0;
    WallMeasures measured = measure(wall);
    assertThat(measured.deepest().depth()).isCloseTo(0.05 * Math.sqrt(3), within(1e-6));
    assertThat(measured.deepest().theta()).isCloseTo(1, within(0.2));
    assertThat(measured.deepest().flank()).isEqualTo(Flank.UP);
    WallField field = WallField.sample(wall, wall.spec, true);
    assertThat(Departure.within(field, 2, 2).orElseThrow().depth()).isLessThan(1e-6);
    assertThat(Departure.within(field, 0.5, 1).orElseThrow().depth()).isGreaterThan(0.08);
  }

  @Test
  void ends_are_counted_in_turns() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.firstGroove = -1.5;
    wall.lastGroove = -12;
    wall.shallower = (theta, z) -> Math.max(0, -11 - z) * 2;
    WallMeasures measured = measure(wall);
    // Full form to a twentieth of the pitch: the run-out is full to 0.05 below -11.
    assertThat(measured.ends().incompleteAtMouth()).isCloseTo(0.75, within(0.01));
    assertThat(measured.ends().fullTurns()).isCloseTo((11.05 - 1.5) / 2, within(0.02));
    assertThat(measured.ends().incompleteAtEnd()).isBetween(0.15, 0.48);
  }

  @Test
  void flanks_not_cut_to_the_full_are_left_out_at_the_ends_for_a_quarter_turn_only() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.lastGroove = -12;
    // Left out up to where the flank stands as far as the others.
    wall.upperWider = (theta, z) -> Math.min(0, (z + 11.6) * 0.1);
    WallMeasures measured = measure(wall);
    assertThat(measured.ends().incompleteAtEnd()).isCloseTo(0.4 / 2, within(0.01));
    assertThat(measured.pitch().least()).isGreaterThan(wall.pitchDiameter() - 0.004 - 1e-6);
    wall.upperWider = (theta, z) -> Math.min(0, (z + 10.4) * 0.1);
    measured = measure(wall);
    assertThat(measured.ends().incompleteAtEnd()).isCloseTo(0.25, within(0.01));
    assertThat(measured.pitch().least()).isLessThan(wall.pitchDiameter() - 0.05);
  }

  @Test
  void a_chamfer_is_measured_at_the_face() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.chamfer = wall.major - wall.minor + 0.1;
    WallMeasures measured = measure(wall);
    assertThat(measured.ends().chamferDiameter())
        .isCloseTo(2 * (wall.minor + wall.chamfer), within(1e-6));
    // Ridges count as whole to a fiftieth of the pitch.
    assertThat(measured.ends().chamferDepth()).isCloseTo(wall.chamfer - 0.04, within(1e-3));
  }

  @Test
  void no_thread_has_no_measures() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.firstGroove = Double.NEGATIVE_INFINITY;
    WallField field = WallField.sample(wall, wall.spec, true);
    assertThat(WallMeasures.of(field)).isEmpty();
    Travel travel = Travel.of(field, ThreadGauge.go(wall.spec));
    assertThat(travel.turns()).isLessThan(0.3);
    assertThat(travel.stoppedOn().orElseThrow().by()).isEqualTo(DecidedBy.CREST);
  }
}
