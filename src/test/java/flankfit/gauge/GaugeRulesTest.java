package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Travel.End;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Acceptance by the rules of the standards, on cases worked out by hand. */
class GaugeRulesTest {
  /**
   * Turns of the NO-GO plug in a taper: (D2 at the mouth - plug) / (taper for a turn), and a
   * quarter turn more by leaning on the wider side. Two turns by hand from either end, more is a
   * reject: ISO 1502 as printed in a gauge maker's instructions for thread gauges. Not more than
   * three complete turns: ASME B1.2-1983, acceptance by NOT-GO gauges.
   */
  @ParameterizedTest(name = "{0}: {1} micrometres of room, {2} a turn")
  @CsvSource({
    // 17 / 10 + 0.25 = 1.95 turns
    "M16x2-6H, 17, 10, 1.95, true",
    // 18.5 / 10 + 0.25 = 2.1 turns
    "M16x2-6H, 18.5, 10, 2.10, false",
    // 26 / 20 + 0.25 = 1.55, 42 / 20 + 0.25 = 2.35 turns
    "M24x1.5-6H, 26, 20, 1.55, true",
    "M24x1.5-6H, 42, 20, 2.35, false",
    // The same two in the Unified system: three turns are allowed.
    "5/8-11 UNC-2B, 18.5, 10, 2.10, true",
    "5/8-11 UNC-2B, 27, 10, 2.95, true",
    "5/8-11 UNC-2B, 29, 10, 3.15, false",
    "1/4-20 UNC-2B, 43, 16, 2.94, true",
    "1/4-20 UNC-2B, 47, 16, 3.19, false"
  })
  void no_go_turns(String thread, double room, double perTurn, double turns, boolean accepted) {
    TurnedWall wall = new TurnedWall(thread);
    wall.bottom = -9 * wall.spec.lead();
    wall.larger = (theta, z) -> perTurn / 1000 * z / wall.spec.lead();
    WallField field = WallField.sample(wall, wall.spec, true);
    ThreadGauge noGo =
        ThreadGauge.noGo(wall.spec).withPitchDiameter(wall.pitchDiameter() - room / 1000);
    TurnsRuling ruling = TurnsRuling.of(field, noGo);
    assertThat(ruling.turns()).isCloseTo(turns, within(0.04));
    assertThat(ruling.accepted()).isEqualTo(accepted);
    assertThat(ruling.allowed()).isEqualTo(thread.startsWith("M") ? 2 : 3);
    assertThat(ruling.travels()).hasSize(thread.startsWith("M") ? 2 : 1);
  }

  /**
   * Plain plugs stand at the limits of the minor diameter: M16 x 2-6H 13.835 to 14.210, M10 x
   * 1.5-6H 8.376 to 8.676 (ISO 965-1, limits of size); 1/2-13 UNC-2B 0.417 to 0.434 in, 1/4-20
   * UNC-2B 0.1959 to 0.2067 in (ASME B1.1, limits of size, the third and fourth decimals printed).
   * Two hundredths of a millimetre cover what a gauge's own tolerance is.
   */
  @ParameterizedTest(name = "{0}, minor {1} mm")
  @CsvSource({
    "M16x2-6H, 13.815, false, true",
    "M16x2-6H, 13.855, true, true",
    "M16x2-6H, 14.190, true, true",
    "M16x2-6H, 14.230, true, false",
    "M10x1.5-6H, 8.356, false, true",
    "M10x1.5-6H, 8.396, true, true",
    "M10x1.5-6H, 8.656, true, true",
    "M10x1.5-6H, 8.696, true, false",
    "1/2-13 UNC-2B, 10.56, false, true",
    "1/2-13 UNC-2B, 10.63, true, true",
    "1/2-13 UNC-2B, 11.00, true, true",
    "1/2-13 UNC-2B, 11.06, true, false",
    "1/4-20 UNC-2B, 4.95, false, true",
    "1/4-20 UNC-2B, 5.00, true, true",
    "1/4-20 UNC-2B, 5.23, true, true",
    "1/4-20 UNC-2B, 5.28, true, false"
  })
  void plain_plugs(String thread, double minor, boolean goEnters, boolean noGoStops) {
    TurnedWall wall = new TurnedWall(thread);
    wall.minor = minor / 2;
    WallField field = WallField.sample(wall, wall.spec, true, 24);
    PlainRuling ruling = PlainRuling.of(field, -14).orElseThrow();
    assertThat(ruling.goEnters()).isEqualTo(goEnters);
    assertThat(ruling.noGoStops()).isEqualTo(noGoStops);
    double clearance = minor - wall.spec.gauges().orElseThrow().plainGo();
    if (goEnters) {
      assertThat(ruling.go().end()).isEqualTo(End.THROUGH);
      assertThat(ruling.go().clearance()).isCloseTo(clearance, within(1e-6));
    }
  }

  /** A depth plug reads from the face to where the groove ends, whatever its chamfer. */
  @ParameterizedTest(name = "groove to {0}, chamfer {1}, wanted {2}")
  @CsvSource({
    "11, 0, 10.5, true",
    "11, 0.9, 10.5, true",
    "11, 1.3, 11.5, false",
    "13.4, 0, 13, true",
    "6.2, 0.5, 7, false"
  })
  void depth_reading(double groove, double chamfer, double wanted, boolean enough) {
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.lastGroove = -groove;
    wall.chamfer = chamfer;
    WallField field = WallField.sample(wall, wall.spec, false);
    ThreadGauge go = ThreadGauge.go(wall.spec).withPitchDiameter(wall.pitchDiameter() - 0.02);
    DepthReading reading = DepthReading.of(field, Travel.of(field, go), -wanted).orElseThrow();
    assertThat(reading.reads()).isCloseTo(groove, within(0.02));
    assertThat(reading.wanted()).isEqualTo(wanted);
    assertThat(reading.isDeepEnough()).isEqualTo(enough);
  }
}
