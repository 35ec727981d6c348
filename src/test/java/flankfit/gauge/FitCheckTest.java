package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.sweep.Groove;
import flankfit.sweep.HelicalGroove;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.RegularThread;
import flankfit.unit.Angles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Functional diameters against figures computed from the closed form of the flank. */
class FitCheckTest {
  private static final double ANGLE = Math.PI / 6;

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/flankfit/sweep/internal-overcut.csv", numLinesToSkip = 5)
  void flanks_alone_let_in_the_plug_computed(ArgumentsAccessor row) {
    double major = row.getDouble(1);
    double pitch = row.getDouble(2);
    double angle = Angles.toRadians(row.getDouble(4));
    double halfCrest = row.getString(5) == null ? pitch / 16 : row.getDouble(5);
    double mill = row.getDouble(6);
    double basic = row.getDouble(11);
    double minor =
        row.getString(19) == null ? major - 1.25 * Math.sqrt(3) / 2 * pitch : row.getDouble(19);
    PolylineTooth tooth = PolylineTooth.straight(mill / 2, 2 * halfCrest, angle);
    Groove groove = new HelicalGroove(tooth, true, (major - mill) / 2, pitch * row.getInteger(3));
    double relieved = basic / 2 + (major - basic) / 6;
    Mate plug = new Mate(true, pitch, angle, basic, major / 2 - 0.2, minor / 2, relieved);
    Fit fit = Fit.of(new RegularThread(groove, pitch, minor / 2), plug, 0);
    assertThat((fit.flanks() - basic) * 1000).isCloseTo(row.getDouble(15), within(0.0061));
  }

  private static Fit fit(double crestClearance, double error) {
    Groove groove = new HelicalGroove(PolylineTooth.straight(8, 2.5 / 8, ANGLE), true, 2, 2.5);
    double minor = (20 - 1.25 * Math.sqrt(3) / 2 * 2.5) / 2;
    double basic = 20 - 0.75 * Math.sqrt(3) / 2 * 2.5;
    Mate plug = new Mate(true, 2.5, ANGLE, basic, 10 - crestClearance, minor, basic / 2 + 0.5);
    return Fit.of(new RegularThread(groove, 2.5, minor), plug, error);
  }

  @Test
  void a_full_crest_gains_nothing_and_a_little_clearance_much() {
    double basic = 20 - 0.75 * Math.sqrt(3) / 2 * 2.5;
    double all = fit(0.3, 0).functional() - basic;
    assertThat(fit(0, 0).functional()).isCloseTo(basic, within(1e-9));
    assertThat(fit(0, 0).decidedBy()).isEqualTo(Fit.DecidedBy.CREST);
    // Two micrometres on the radius give back about a quarter, fifty nearly all.
    assertThat((fit(0.002, 0).functional() - basic) / all).isBetween(0.2, 0.32);
    assertThat((fit(0.05, 0).functional() - basic) / all).isGreaterThan(0.9);
    assertThat(fit(0.3, 0).decidedBy()).isEqualTo(Fit.DecidedBy.FLANK_UP);
  }

  @Test
  void a_crest_beyond_the_bottom_keeps_the_plug_out_by_that_much() {
    double basic = 20 - 0.75 * Math.sqrt(3) / 2 * 2.5;
    Fit fit = fit(-0.01, 0);
    assertThat(fit.functional()).isCloseTo(basic - 0.02, within(1e-9));
    assertThat(fit.decidedBy()).isEqualTo(Fit.DecidedBy.CREST);
  }

  @Test
  void an_error_along_the_axis_costs_its_cotangent() {
    // Lead 5 micrometres long over 10 pitches: 50 micrometres cost 86.6 of the functional diameter.
    double lost = fit(0.3, 0).flanks() - fit(0.3, 0.050).flanks();
    assertThat(lost).isCloseTo(0.0866, within(0.5e-4));
  }
}
