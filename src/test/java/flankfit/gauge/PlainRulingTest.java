package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Travel.End;
import org.junit.jupiter.api.Test;

/** Plain plugs and depth plugs on walls whose answer is known by their formula. */
class PlainRulingTest {
  // M16 x 2-6H: minor diameter 13.835 to 14.210 (ISO 965-1, table of limits), so are the plugs.
  private static final double LEAST = 13.835;
  private static final double GREATEST = 14.210;

  private final TurnedWall wall = new TurnedWall("M16x2-6H");

  private PlainRuling ruling(double minorDiameter) {
    wall.minor = minorDiameter / 2;
    return PlainRuling.of(WallField.sample(wall, wall.spec, true), -16).orElseThrow();
  }

  @Test
  void within_the_limits_go_passes_and_no_go_stops_at_the_first_ridge() {
    PlainRuling ruling = ruling(14.0);
    assertThat(ruling.goEnters()).isTrue();
    assertThat(ruling.noGoStops()).isTrue();
    assertThat(ruling.go().end()).isEqualTo(End.THROUGH);
    assertThat(ruling.go().clearance()).isCloseTo(14.0 - LEAST, within(1e-6));
    // Shifted to one side it goes a part of a turn farther than held central.
    assertThat(ruling.noGo().clearance()).isBetween(14.0 - GREATEST, 0.0);
    assertThat(ruling.noGo().z()).isBetween(-2.0, 0.0);
  }

  @Test
  void outside_the_limits_they_do_what_they_are_for() {
    assertThat(ruling(13.8).goEnters()).isFalse();
    assertThat(ruling(13.8).noGoStops()).isTrue();
    assertThat(ruling(14.3).goEnters()).isTrue();
    assertThat(ruling(14.3).noGoStops()).isFalse();
  }

  @Test
  void a_boss_has_none() {
    TurnedWall boss = new TurnedWall("M16x2-6g");
    assertThat(PlainRuling.of(WallField.sample(boss, boss.spec, true), -16)).isEmpty();
  }

  @Test
  void a_depth_plug_reads_where_the_groove_ends() {
    wall.lastGroove = -11;
    WallField field = WallField.sample(wall, wall.spec, false);
    ThreadGauge go = ThreadGauge.go(wall.spec).withPitchDiameter(wall.pitchDiameter() - 0.02);
    Travel travel = Travel.of(field, go);
    DepthReading deep = DepthReading.of(field, travel, -10).orElseThrow();
    assertThat(deep.reads()).isCloseTo(11, within(0.02));
    assertThat(deep.wanted()).isEqualTo(10);
    assertThat(deep.isDeepEnough()).isTrue();
    assertThat(DepthReading.of(field, travel, -12).orElseThrow().isDeepEnough()).isFalse();
  }

  @Test
  void a_depth_plug_that_goes_through_reads_nothing() {
    WallField field = WallField.sample(wall, wall.spec, true);
    ThreadGauge go = ThreadGauge.go(wall.spec).withPitchDiameter(wall.pitchDiameter() - 0.02);
    assertThat(DepthReading.of(field, Travel.of(field, go), -16)).isEmpty();
  }
}
