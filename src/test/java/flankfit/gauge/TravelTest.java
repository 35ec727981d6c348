package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Fit.DecidedBy;
import flankfit.gauge.Travel.End;
import flankfit.gauge.Travel.From;
import flankfit.gauge.Travel.Play;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Gauges on their way through walls whose answer is known in closed form. */
class TravelTest {
  private static Travel travel(TurnedWall wall, ThreadGauge gauge, Play play) {
    return Travel.of(WallField.sample(wall, wall.spec, true), gauge, From.MOUTH, play);
  }

  private static ThreadGauge go(TurnedWall wall, double larger) {
    double sign = wall.spec.internal() ? 1 : -1;
    return ThreadGauge.go(wall.spec).withPitchDiameter(wall.pitchDiameter() + sign * larger);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"M16x2-6H", "M20x1.5-6H-LH", "M20xPh3P1.5-6H", "M16x2-6g", "1/2-13 UNC-2B"})
  void a_perfect_thread_lets_its_own_size_through_and_no_larger(String designation) {
    TurnedWall wall = new TurnedWall(designation);
    Travel same = travel(wall, go(wall, 0), Play.FREE);
    assertThat(same.end()).isEqualTo(End.THROUGH);
    assertThat(same.clearance().orElseThrow()).isCloseTo(0, within(1e-8));
    assertThat(same.turns()).isCloseTo(16 / wall.spec.lead(), within(1e-9));
    Travel larger = travel(wall, go(wall, 0.001), Play.CENTRAL);
    assertThat(larger.end()).isEqualTo(End.STOPPED);
    assertThat(larger.clearance().orElseThrow()).isCloseTo(-0.001, within(1e-8));
    assertThat(larger.turns()).isLessThan(0.5);
    Travel smaller = travel(wall, go(wall, -0.02), Play.FREE);
    assertThat(smaller.end()).isEqualTo(End.THROUGH);
    assertThat(smaller.clearance().orElseThrow()).isCloseTo(0.02, within(1e-8));
  }

  @Test
  void a_tapered_thread_takes_the_no_go_plug_in_by_the_turns_of_the_worked_example() {
    // M16 x 2, pitch diameter 14.930 at the mouth, 0.004 mm per mm smaller below, plug 14.913:
    // (14.930 - 14.913) / 0.004 = 4.25 mm = 2.125 turns.
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.larger = (theta, z) -> 14.930 - wall.pitchDiameter() + 0.004 * z;
    ThreadGauge noGo = ThreadGauge.noGo(wall.spec).withPitchDiameter(14.913);
    Travel central = travel(wall, noGo, Play.CENTRAL);
    assertThat(central.turns()).isCloseTo(2.125, within(0.001));
    assertThat(central.z()).isCloseTo(-4.25, within(0.002));
    assertThat(wall.spec.gauges().orElseThrow().acceptsNoGoTurns(central.turns())).isFalse();
    assertThat(
            TurnedWall.spec("5/8-11 UNC-2B")
                .gauges()
                .orElseThrow()
                .acceptsNoGoTurns(central.turns()))
        .isTrue();
    // Free to shift it leans on the wider side half a turn behind: a quarter turn further, less
    // what leaning turns the helix.
    assertThat(travel(wall, noGo, Play.FREE).turns()).isCloseTo(2.375, within(0.02));
  }

  @Test
  void a_lead_error_stops_the_go_plug_when_it_has_used_up_the_clearance() {
    // 5 µm a turn long; 40 µm of clearance last for 0.040 tan 30° / 0.005 turns.
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.raised = (theta, z) -> -0.005 * (z + 0.3) / 2;
    double wholeTurns = 0.040 * Math.tan(Math.PI / 6) / 0.005;
    Travel central = travel(wall, go(wall, -0.040), Play.CENTRAL);
    assertThat(central.end()).isEqualTo(End.STOPPED);
    // The first element that both flanks hold lies within the topmost turn.
    assertThat(central.turns()).isBetween(wholeTurns - 0.5, wholeTurns + 0.3);
    assertThat(central.stoppedOn().orElseThrow().by()).isEqualTo(DecidedBy.FLANK_DOWN);
    Travel free = travel(wall, go(wall, -0.040), Play.FREE);
    assertThat(free.turns()).isBetween(central.turns(), central.turns() + 0.51);
  }

  @Test
  void a_go_plug_stops_on_its_crest_where_the_groove_runs_out() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.lastGroove = -11;
    Travel travel = travel(wall, go(wall, -0.02), Play.FREE);
    assertThat(travel.end()).isEqualTo(End.STOPPED);
    assertThat(travel.z()).isCloseTo(-11, within(0.02));
    assertThat(travel.turns()).isCloseTo(5.5, within(0.01));
    assertThat(travel.stoppedOn().orElseThrow().by()).isEqualTo(DecidedBy.CREST);
    assertThat(travel.reaches(-10.9)).isTrue();
    assertThat(travel.reaches(-11.1)).isFalse();
    Travel noGo = travel(wall, ThreadGauge.noGo(wall.spec).withPitchDiameter(14.6), Play.FREE);
    assertThat(noGo.z()).isCloseTo(-11, within(0.02));
  }

  @Test
  void a_groove_that_grows_shallow_at_its_end_stops_the_crest_there() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.shallower = (theta, z) -> Math.max(0, -10 - z) * 0.5;
    // Crest 8.001, bottom 8.05 less half a millimetre for a millimetre below -10.
    Travel travel = travel(wall, go(wall, -0.02), Play.CENTRAL);
    double crest = ThreadGauge.go(wall.spec).crestRadius();
    assertThat(travel.z()).isCloseTo(-10 - (8.05 - crest) / 0.5, within(0.02));
    assertThat(travel.stoppedOn().orElseThrow().by()).isEqualTo(DecidedBy.CREST);
  }

  @Test
  void a_gauge_of_the_very_size_stops_where_the_thread_grows_tight_and_tells_by_how_much() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.larger = (theta, z) -> z < -6 ? -0.01 : 0;
    Travel travel = travel(wall, go(wall, 0), Play.CENTRAL);
    assertThat(travel.z()).isCloseTo(-6, within(0.02));
    assertThat(travel.clearance().orElseThrow()).isCloseTo(-0.01, within(1e-6));
    assertThat(travel.stoppedOn().orElseThrow().by()).isNotEqualTo(DecidedBy.CREST);
  }

  @Test
  void one_groove_only_lets_a_plug_through_that_finds_it() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.bottom = -2;
    Travel travel = travel(wall, go(wall, -0.01), Play.FREE);
    assertThat(travel.end()).isEqualTo(End.THROUGH);
    assertThat(travel.turns()).isCloseTo(1, within(1e-9));
  }

  @Test
  void an_axis_off_centre_costs_nothing_to_a_plug_that_shifts() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.axisX = 0.012;
    wall.axisY = -0.005;
    Travel clear = travel(wall, go(wall, -0.01), Play.FREE);
    assertThat(clear.clearance().orElseThrow()).isCloseTo(0.01, within(2.5e-4));
    assertThat(clear.shiftX()).isCloseTo(0.012, within(1e-4));
    assertThat(clear.shiftY()).isCloseTo(-0.005, within(1e-4));
    WallField field = WallField.sample(wall, wall.spec, true);
    Functional central = Functional.flanks(field, Play.CENTRAL, -15, -1);
    assertThat(central.diameter()).isCloseTo(wall.pitchDiameter() - 0.026, within(1e-4));
    Travel held = Travel.of(field, go(wall, -0.01), From.MOUTH, Play.CENTRAL);
    assertThat(held.end()).isEqualTo(End.STOPPED);
  }

  @Test
  void an_oval_thread_is_as_small_as_its_small_axis() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.larger = (theta, z) -> 0.010 * Math.cos(2 * theta);
    Travel free = travel(wall, go(wall, -0.03), Play.FREE);
    assertThat(free.clearance().orElseThrow()).isCloseTo(0.020, within(1e-6));
  }

  @Test
  void a_bell_mouth_takes_the_no_go_plug_in_and_no_farther() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.larger = (theta, z) -> z > -3 ? 0.2 : 0.05;
    ThreadGauge noGo = ThreadGauge.noGo(wall.spec).withPitchDiameter(wall.pitchDiameter() + 0.1);
    Travel travel = travel(wall, noGo, Play.CENTRAL);
    assertThat(travel.turns()).isCloseTo(1.5, within(0.01));
    assertThat(travel.clearance().orElseThrow()).isCloseTo(-0.05, within(1e-8));
  }

  @Test
  void an_entry_mark_is_not_felt() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.upperWider = (theta, z) -> Math.abs(theta - 1) < 0.1 ? 0.05 : 0;
    Travel travel = travel(wall, go(wall, 0), Play.FREE);
    assertThat(travel.end()).isEqualTo(End.THROUGH);
    assertThat(travel.clearance().orElseThrow()).isCloseTo(0, within(1e-8));
  }

  @Test
  void a_chamfer_counts_as_free() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.chamfer = wall.major - wall.minor + 0.1;
    WallField field = WallField.sample(wall, wall.spec, true);
    assertThat(field.mouth())
        .isCloseTo(-(wall.major + 0.1 - wall.pitchDiameter() / 2), within(1e-6));
    Travel travel = Travel.of(field, go(wall, -0.01));
    assertThat(travel.end()).isEqualTo(End.THROUGH);
    assertThat(travel.clearance().orElseThrow()).isCloseTo(0.01, within(1e-8));
  }

  @Test
  void the_wrong_hand_stops_at_once() {
    TurnedWall left = new TurnedWall("M16x2-6H-LH");
    WallField field = WallField.sample(left, TurnedWall.spec("M16x2-6H"), true);
    Travel travel = Travel.of(field, ThreadGauge.go(left.spec));
    assertThat(travel.end()).isEqualTo(End.STOPPED);
    assertThat(travel.turns()).isLessThan(0.8);
  }

  @Test
  void a_blind_hole_ends_the_way_and_has_no_far_end() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    WallField blind = WallField.sample(wall, wall.spec, false);
    Travel travel = Travel.of(blind, go(wall, -0.01));
    assertThat(travel.end()).isEqualTo(End.ON_FLOOR);
    assertThat(travel.turns()).isCloseTo(8, within(1e-9));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Travel.of(blind, go(wall, 0), From.FAR_END, Play.FREE));
  }

  @Test
  void from_the_far_end_a_taper_is_met_the_other_way_round() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.larger = (theta, z) -> 0.004 * (-16 - z);
    ThreadGauge noGo = ThreadGauge.noGo(wall.spec).withPitchDiameter(wall.pitchDiameter() - 0.017);
    WallField field = WallField.sample(wall, wall.spec, true);
    assertThat(Travel.of(field, noGo, From.FAR_END, Play.CENTRAL).turns())
        .isCloseTo(2.125, within(0.001));
    assertThat(Travel.of(field, noGo, From.MOUTH, Play.CENTRAL).turns()).isLessThan(0.5);
  }

  @Test
  void every_element_has_a_bottom_wherever_the_wall_ends() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.lastGroove = -11;
    for (int k = 0; k < 40; k++) {
      // Steps unlike those of the elements, whose heights differ by a 60th of a millimetre.
      wall.bottom = -15 - 0.0513 * k;
      WallField field = WallField.sample(wall, wall.spec, true, 24);
      for (int e = 0; e < field.size(); e++) {
        assertThat(field.bottom(e)).isGreaterThanOrEqualTo(wall.minor - 1e-6);
      }
      assertThat(PlainTravel.of(field, 2 * wall.minor - 0.01).end()).isEqualTo(End.THROUGH);
    }
  }
}
