package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.setup.Tool.CutterForm;
import flankfit.standard.ThreadSpec;
import flankfit.unit.LengthUnit;
import org.junit.jupiter.api.Test;

/** Register advice, proved by gauging again with the register it gives. */
class OffsetAdviceTest {
  private final Milled job = new Milled();

  private OffsetAdvice advice() {
    return job.only().offset().orElseThrow();
  }

  @Test
  void sensitivity_is_that_of_the_closed_form_with_its_sign_from_the_motion() {
    // 10 micrometres of the path radius give 19.83 on the M20x1.5 with a 14 mm mill.
    assertThat(advice().sensitivity()).isCloseTo(-1.983, within(5e-4));
    job.inwards = total -> total;
    assertThat(advice().sensitivity()).isCloseTo(1.983, within(5e-4));
    job.inwards = total -> -total / 2;
    assertThat(advice().sensitivity()).isCloseTo(-1.983 / 2, within(5e-4));
  }

  @Test
  void coarse_thread_with_a_large_mill_follows_the_register_less() {
    // -18.82 micrometres for 10 on the M20x2.5 with a 16 mm mill.
    job.thread = "M20-6H";
    job.mill = 16;
    job.lead = 2.5;
    job.rowPitch = 2.5;
    job.crest = 2.5 / 8;
    job.hole = 17.5;
    job.radii = new double[] {2};
    assertThat(advice().sensitivity()).isCloseTo(-1.882, within(1e-3));
  }

  @Test
  void the_entries_put_the_gauges_where_they_say() {
    OffsetAdvice advice = job.endless().offset().orElseThrow();
    ThreadSpec spec = job.only().spec();
    job.wear = advice.toMiddle();
    double middle = (spec.limits().pitchMin() + spec.limits().pitchMax()) / 2;
    assertThat(job.only().finished().orElseThrow().pitchSimple()).isCloseTo(middle, within(1e-6));
    job.wear = advice.toGoLimit();
    assertThat(job.only().go().orElseThrow().clearance()).isCloseTo(0, within(1e-6));
    job.wear = advice.toNoGoLimit();
    assertThat(job.only().finished().orElseThrow().pitchSimple())
        .isCloseTo(job.only().noGo().orElseThrow().pitch(), within(1e-6));
    assertThat(advice.hasWindow()).isTrue();
  }

  @Test
  void rounded_entries_stay_inside_and_are_the_same_from_anywhere() {
    OffsetAdvice here = advice();
    job.wear = here.keyToGoLimit();
    assertThat(job.only().verdict()).isEqualTo(Verdict.GAUGES_GOOD);
    job.wear = here.keyToNoGoLimit();
    assertThat(job.only().verdict()).isEqualTo(Verdict.GAUGES_GOOD);
    OffsetAdvice there = advice();
    assertThat(there.now()).isEqualTo(job.wear);
    assertThat(there.toMiddle()).isCloseTo(here.toMiddle(), within(1e-6));
    assertThat(there.toGoLimit()).isCloseTo(here.toGoLimit(), within(1e-6));
  }

  @Test
  void a_full_radius_in_the_geometry_entry_stays_and_wear_is_keyed_in() {
    OffsetAdvice centre = advice();
    job.geometry = 7;
    job.inwards = total -> 7 - total;
    OffsetAdvice contour = advice();
    assertThat(contour.geometry()).isEqualTo(7);
    assertThat(contour.now()).isZero();
    assertThat(contour.toMiddle()).isCloseTo(centre.toMiddle(), within(1e-9));
    assertThat(contour.sensitivity()).isCloseTo(centre.sensitivity(), within(1e-9));
  }

  @Test
  void inch_programs_round_to_a_ten_thousandth_of_an_inch() {
    job.unit = LengthUnit.INCH;
    OffsetAdvice advice = advice();
    double steps = advice.keyToMiddle() / 0.00254;
    assertThat(steps).isCloseTo(Math.rint(steps), within(1e-9));
  }

  @Test
  void without_compensation_no_register_is_named() {
    job.register = 0;
    assertThat(job.only().offset()).isEmpty();
  }

  @Test
  void a_lead_error_that_eats_the_tolerance_leaves_no_window() {
    job.rows = 1;
    job.turns = 12;
    job.lead = 1.515;
    ThreadAnswer thread = job.only();
    assertThat(thread.offset().orElseThrow().hasWindow()).isFalse();
    assertThat(thread.reason()).contains("no register entry");
  }

  @Test
  void a_path_far_off_still_gets_the_entry_that_mends_it() {
    OffsetAdvice right = advice();
    job.wear = 0.3;
    assertThat(job.only().verdict()).isEqualTo(Verdict.GO_REFUSED);
    assertThat(advice().toMiddle()).isCloseTo(right.toMiddle(), within(1e-6));
    job.wear = -0.3;
    assertThat(job.only().verdict()).isEqualTo(Verdict.NO_GO_ENTERS);
    assertThat(advice().toMiddle()).isCloseTo(right.toMiddle(), within(1e-6));
  }

  @Test
  void a_ground_mill_gets_its_own_entries() {
    job.form = new CutterForm.GroundFor("M20x1.5-6H", false);
    job.wear = advice().toMiddle();
    assertThat(job.only().verdict()).isEqualTo(Verdict.GAUGES_GOOD);
    assertThat(job.only().finished().orElseThrow().pitchSimple())
        .isCloseTo((19.026 + 19.216) / 2, within(1e-6));
  }

  @Test
  void all_passes_of_the_register_move_together() {
    OffsetAdvice alone = advice();
    job.radii = new double[] {2.7, 2.9, 3, 3};
    assertThat(advice().toMiddle()).isCloseTo(alone.toMiddle(), within(1e-9));
  }
}
