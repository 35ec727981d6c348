package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Travel.End;
import flankfit.unit.LengthUnit;
import org.junit.jupiter.api.Test;

/** What the turns of a NO-GO gauge and the way of plain gauges mean. */
class TurnsRulingTest {
  private static final Text TEXT = new Text(LengthUnit.MILLIMETRE);

  private static TurnsRuling rule(TurnedWall wall, boolean through, double noGo) {
    return TurnsRuling.of(
        WallField.sample(wall, wall.spec, through),
        ThreadGauge.noGo(wall.spec).withPitchDiameter(noGo));
  }

  @Test
  void a_metric_thread_is_tried_from_either_end() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.larger = (theta, z) -> 0.1 * (-16 - z) / 16;
    double mouth = wall.pitchDiameter() - 0.1;
    TurnsRuling fromBoth = rule(wall, true, mouth + 0.08);
    assertThat(fromBoth.travels()).hasSize(2);
    // 0.02 mm of room for 0.00625 mm per mm: 3.2 mm from the far end, and a quarter turn by
    // leaning.
    assertThat(fromBoth.turns()).isCloseTo(1.6 + 0.25, within(0.02));
    assertThat(fromBoth.accepted()).isTrue();
    assertThat(rule(wall, true, mouth + 0.06).accepted()).isFalse();
    assertThat(rule(wall, false, mouth + 0.06).accepted()).isTrue();
  }

  @Test
  void a_gauge_that_runs_through_is_never_accepted() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.bottom = -3;
    TurnsRuling ruling = rule(wall, true, wall.pitchDiameter() - 0.01);
    assertThat(ruling.turns()).isCloseTo(1.5, within(1e-9));
    assertThat(ruling.accepted()).isFalse();
    assertThat(ruling.isShort()).isTrue();
  }

  @Test
  void a_unified_thread_has_three_turns() {
    TurnedWall wall = new TurnedWall("1/2-13 UNC-2B");
    double perTurn = 0.01;
    wall.larger = (theta, z) -> perTurn * z / wall.spec.lead();
    TurnsRuling ruling = rule(wall, true, wall.pitchDiameter() - 0.026);
    assertThat(ruling.travels()).hasSize(1);
    assertThat(ruling.turns()).isCloseTo(2.6 + 0.25, within(0.03));
    assertThat(ruling.allowed()).isEqualTo(3);
    assertThat(ruling.accepted()).isTrue();
    assertThat(ruling.isShort()).isFalse();
  }

  @Test
  void a_ring_is_tried_like_a_plug() {
    TurnedWall wall = new TurnedWall("M16x2-6g");
    TurnsRuling stays = rule(wall, true, wall.pitchDiameter() - 0.02);
    assertThat(stays.accepted()).isTrue();
    assertThat(stays.allowed()).isEqualTo(2);
    assertThat(rule(wall, true, wall.pitchDiameter() + 0.02).accepted()).isFalse();
  }

  @Test
  void a_travel_is_told_in_turns_and_depth() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.lastGroove = -11;
    WallField field = WallField.sample(wall, wall.spec, true);
    Travel travel =
        Travel.of(field, ThreadGauge.go(wall.spec).withPitchDiameter(wall.pitchDiameter() - 0.02));
    assertThat(TravelText.of(travel, true, TEXT))
        .isEqualTo("GO plug stops after 5.5 turns, Z-11, its crest on the groove's bottom at 234°");
    wall.lastGroove = Double.NEGATIVE_INFINITY;
    Travel through =
        Travel.of(
            WallField.sample(wall, wall.spec, true),
            ThreadGauge.noGo(wall.spec).withPitchDiameter(14));
    assertThat(TravelText.of(through, true, TEXT)).isEqualTo("NO-GO plug goes through: 8.0 turns");
  }

  @Test
  void a_plain_plug_finds_the_smallest_place_between_the_ridges() {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.axisX = 0.05;
    WallField field = WallField.sample(wall, wall.spec, true);
    PlainTravel goes = PlainTravel.of(field, 2 * wall.minor - 0.03);
    assertThat(goes.end()).isEqualTo(End.THROUGH);
    assertThat(goes.clearance()).isCloseTo(0.03, within(1e-3));
    PlainTravel stays = PlainTravel.of(field, 2 * wall.minor + 0.01);
    assertThat(stays.end()).isEqualTo(End.STOPPED);
    assertThat(stays.z()).isGreaterThan(-2.5);
    wall.axisX = 0;
    wall.chamfer = 0.5;
    assertThat(PlainTravel.of(WallField.sample(wall, wall.spec, true), 2 * wall.minor - 1e-4).end())
        .isEqualTo(End.THROUGH);
  }
}
