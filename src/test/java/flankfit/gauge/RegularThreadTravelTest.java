package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Travel.End;
import flankfit.gauge.Travel.From;
import flankfit.gauge.Travel.Play;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.HelicalGroove;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Tooth;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The endless regular thread read as a wall gives the fit that its axial section gives. */
class RegularThreadTravelTest {
  /** A twentieth of a micrometre. */
  private static final double SAME = 5e-5;

  @ParameterizedTest(name = "{0} mill {1} path {2} {3}")
  @CsvSource({
    "M20x1.5-6H, 14, 3.000, straight",
    "M20x1.5-6H, 14, 3.050, straight",
    "M20x1.5-6H, 14, 2.980, straight",
    "M20x2.5-6H, 16, 2.000, straight",
    "M20x2.5-6H, 16, 2.002, straight",
    "M20x2.5-6H, 16, 2.050, straight",
    "M20x1.5-6H, 14, 3.005, ground",
    "M20x1.5-6H, 14, 2.990, ground",
    "M20x1.5-6H, 14, 2.700, straight",
    "M20x1.5-6g, 14, 16.080, straight"
  })
  void a_central_gauge_fits_as_on_the_axial_section(
      String designation, double mill, double path, String form) {
    ThreadSpec spec = TurnedWall.spec(designation);
    double crest = spec.internal() ? spec.pitch() / 8 : spec.pitch() / 4;
    Tooth tooth =
        form.equals("ground")
            ? TeethForms.groundFor(spec, mill / 2)
            : PolylineTooth.straight(mill / 2, crest, spec.halfAngle());
    double blank = spec.internal() ? spec.basicMinor() / 2 + 0.04 : spec.nominal() / 2 - 0.02;
    HelicalGroove groove = new HelicalGroove(tooth, spec.internal(), path, spec.lead());
    RegularThread thread = new RegularThread(groove, spec.pitch(), blank);
    Fit fit = Fit.of(thread, Mate.of(spec), 0);
    EndlessWall wall = new EndlessWall(thread, spec.lead(), 0, -5 * spec.pitch());
    WallField field = WallField.sample(wall, spec, true, 12);
    double low = -3.5 * spec.pitch();
    double high = -1.5 * spec.pitch();
    for (Play play : Play.values()) {
      Functional full = Functional.full(field, play, low, high);
      assertThat(full.diameter()).isCloseTo(fit.functional(), within(SAME));
      assertThat(full.decidedBy()).isEqualTo(fit.decidedBy());
      Functional flanks = Functional.flanks(field, play, low, high);
      assertThat(flanks.diameter()).isCloseTo(fit.flanks(), within(SAME));
    }
    boolean enters = (spec.internal() ? 1 : -1) * (fit.functional() - Mate.goPitch(spec)) >= 0;
    Travel travel = Travel.of(field, ThreadGauge.go(spec), From.MOUTH, Play.CENTRAL);
    assertThat(travel.end() == End.THROUGH).isEqualTo(enters);
  }
}
