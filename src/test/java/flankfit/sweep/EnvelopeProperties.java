package flankfit.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of the swept surface, and the slow maximum over the path as witness. */
class EnvelopeProperties {
  private static final double ANGLE = Math.PI / 6;

  @Test
  void closed_form_is_the_direct_maximum() {
    Random random = new Random(7);
    for (int i = 0; i < 40; i++) {
      double pitch = 0.5 + 3 * random.nextDouble();
      double major = (8 + 12 * random.nextDouble()) * pitch;
      double share = 0.4 + 0.45 * random.nextDouble();
      double mill = share * major;
      double path = (major - mill) / 2;
      InvoluteFlank flank = InvoluteFlank.of(pitch, path, ANGLE);
      HelicalGroove groove = straight(mill / 2, pitch, path, pitch);
      double rho = major / 2 - 0.3 * pitch - 0.25 * pitch * random.nextDouble();
      double z = groove.halfWidth(rho, Flank.UP);
      assertThat(z).isCloseTo(flank.halfWidthInside(rho, mill / 2, pitch / 16), within(1e-12));
      assertThat(groove.envelope(z, 3000)).isCloseTo(rho, within(1e-9));
      assertThat(groove.envelope(-z, 3000)).isCloseTo(rho, within(1e-9));
      assertThat(bruteForce(groove, z)).isCloseTo(rho, within(1e-6));
    }
  }

  @Test
  void outside_a_boss_closed_form_is_the_direct_minimum() {
    Random random = new Random(8);
    for (int i = 0; i < 20; i++) {
      double pitch = 0.5 + 3 * random.nextDouble();
      double major = (8 + 12 * random.nextDouble()) * pitch;
      double mill = major * (0.5 + random.nextDouble());
      double path = (major - 1.08 * pitch + mill) / 2;
      HelicalGroove groove =
          new HelicalGroove(PolylineTooth.straight(mill / 2, pitch / 4, ANGLE), false, path, pitch);
      double rho = major / 2 - 0.3 * pitch;
      double z = groove.halfWidth(rho, Flank.UP);
      InvoluteFlank flank = InvoluteFlank.of(pitch, path, ANGLE);
      assertThat(z).isCloseTo(flank.halfWidthOutside(rho, mill / 2, pitch / 8), within(1e-12));
      assertThat(groove.envelope(z, 3000)).isCloseTo(rho, within(1e-9));
    }
  }

  @Test
  void ground_and_measured_teeth_agree_with_the_direct_maximum_on_both_sides() {
    PolylineTooth lopsided =
        PolylineTooth.measured(
            List.of(
                List.of(-0.80, 5.55),
                List.of(-0.35, 6.50),
                List.of(-0.10, 7.00),
                List.of(0.07, 7.00),
                List.of(0.30, 6.60),
                List.of(0.85, 5.60)));
    for (Tooth tooth : List.of(lopsided, GroundMillCheckTest.groundFor(18, 1.5, 14))) {
      HelicalGroove groove = new HelicalGroove(tooth, true, 3, 1.5);
      for (Flank side : Flank.values()) {
        for (double rho = 9.3; rho < 9.99; rho += 0.037) {
          double z = groove.halfWidth(rho, side);
          double at = side == Flank.UP ? z : -z;
          assertThat(groove.envelope(at, 4000)).as("%s %s", side, rho).isCloseTo(rho, within(2e-9));
        }
      }
    }
  }

  @Test
  void a_groove_bottom_has_the_fillet_of_the_crest_corner() {
    HelicalGroove groove = straight(8, 2.5, 2, 2.5);
    InvoluteFlank flank = InvoluteFlank.of(2.5, 2, ANGLE);
    double rise = 2.5 / (2 * Math.PI);
    for (double psi = 0; psi < flank.contactAngle(); psi += 0.02) {
      double rho = Math.sqrt(4 + 64 + 32 * Math.cos(psi));
      double z = 2.5 / 16 + rise * Math.atan2(8 * Math.sin(psi), 2 + 8 * Math.cos(psi));
      assertThat(groove.halfWidth(rho, Flank.UP)).isCloseTo(z, within(1e-9));
    }
  }

  @Test
  void two_mills_leave_congruent_flanks() {
    HelicalGroove small = straight(6, 2.5, 4, 2.5);
    HelicalGroove large = straight(8, 2.5, 2, 2.5);
    InvoluteFlank four = InvoluteFlank.of(2.5, 4, ANGLE);
    InvoluteFlank two = InvoluteFlank.of(2.5, 2, ANGLE);
    double shift = Math.tan(ANGLE) * ((2 - two.w(2)) - (4 - four.w(4)));
    for (double rho = 8.7; rho < 9.8; rho += 0.1) {
      double apart = small.halfWidth(rho, Flank.UP) - large.halfWidth(rho, Flank.UP);
      assertThat(apart).isCloseTo(shift, within(1e-12));
    }
  }

  @Test
  void without_lead_the_tooth_itself_is_left() {
    HelicalGroove ring = straight(7, 1.5, 3, 0);
    assertThat(ring.halfWidth(9.5, Flank.UP))
        .isCloseTo(1.5 / 16 + 0.5 * Math.tan(ANGLE), within(1e-12));
    double tenth = overcut(0.15);
    double hundredth = overcut(0.015);
    assertThat(tenth / hundredth).isCloseTo(100, within(0.1));
  }

  private static double overcut(double lead) {
    return straight(7, 1.5, 3, lead).halfWidth(9.5, Flank.UP)
        - straight(7, 1.5, 3, 0).halfWidth(9.5, Flank.UP);
  }

  @Test
  void ten_micrometres_of_mill_radius_give_a_little_more_than_twenty() {
    // Computed from the closed form: 20.02, 20.06, 20.08 micrometres.
    double[][] cases = {{20, 1.5, 14, 20.02}, {20, 2.5, 16, 20.06}, {10, 1.5, 7.5, 20.08}};
    for (double[] c : cases) {
      double path = (c[0] - c[2]) / 2;
      double more = pitchDiameter(c[2] / 2 + 0.01, c[1], path, c[0]);
      double gain = (more - pitchDiameter(c[2] / 2, c[1], path, c[0])) * 1000;
      assertThat(gain).isCloseTo(c[3], within(0.0051));
      InvoluteFlank flank = InvoluteFlank.of(c[1], path, ANGLE);
      assertThat(gain / 20).isCloseTo(flank.millSensitivity(more / 2), within(1e-4));
    }
  }

  private static double pitchDiameter(double outside, double pitch, double path, double major) {
    HelicalGroove groove = straight(outside, pitch, path, pitch);
    return 2 * new RegularThread(groove, pitch, major / 2 - 0.54 * pitch).radiusOfWidth(pitch / 2);
  }

  @Test
  void neighbouring_grooves_that_meet_make_the_crest() {
    HelicalGroove groove = straight(8, 2.5, 2, 2.5);
    RegularThread small = new RegularThread(groove, 2.5, 8);
    assertThat(groove.width(small.crest())).isCloseTo(2.5, within(1e-9));
    assertThat(small.crest()).isGreaterThan(8);
    assertThat(small.surface(1.25)).isCloseTo(small.crest(), within(1e-9));
    RegularThread usual = new RegularThread(groove, 2.5, 8.75);
    assertThat(usual.crest()).isEqualTo(8.75);
    assertThat(usual.surface(1.25)).isEqualTo(8.75);
    assertThat(usual.surface(2.5 + 0.3)).isCloseTo(usual.surface(0.3), within(1e-12));
  }

  @Test
  void a_trapezoidal_mill_too_large_for_tangency_still_has_an_envelope() {
    // Path radius below the base radius: no contact on the flank, only its lowest edge counts.
    HelicalGroove groove =
        new HelicalGroove(PolylineTooth.straight(12, 1.9, Math.PI / 12), true, 3.2, 6);
    double z = groove.halfWidth(14.2, Flank.UP);
    assertThat(groove.envelope(z - 1e-7, 20000)).isGreaterThanOrEqualTo(14.2 - 1e-6);
    assertThat(groove.envelope(z + 1e-6, 20000)).isLessThan(14.2);
  }

  @Test
  void passes_in_phase_leave_the_deepest_and_out_of_phase_a_wider_groove() {
    HelicalGroove rough = straight(7, 1.5, 2.8, 1.5);
    HelicalGroove finish = straight(7, 1.5, 3, 1.5);
    JoinedGroove inPhase =
        new JoinedGroove(
            List.of(new JoinedGroove.Member(finish, 0), new JoinedGroove.Member(rough, 0)));
    JoinedGroove out =
        new JoinedGroove(
            List.of(new JoinedGroove.Member(finish, 0), new JoinedGroove.Member(finish, 0.02)));
    assertThat(inPhase.width(9.5)).isEqualTo(finish.width(9.5));
    assertThat(inPhase.bottom()).isEqualTo(10);
    assertThat(out.width(9.5)).isCloseTo(finish.width(9.5) + 0.02, within(1e-12));
  }

  private static HelicalGroove straight(double outside, double pitch, double path, double lead) {
    return new HelicalGroove(PolylineTooth.straight(outside, pitch / 8, ANGLE), true, path, lead);
  }

  /** Nothing but many positions. */
  private static double bruteForce(HelicalGroove groove, double z) {
    double best = 0;
    double e = groove.pathRadius();
    for (int i = -20000; i <= 20000; i++) {
      double phi = i * Math.PI / 40000;
      double r = groove.tooth().radius(z - groove.lead() / (2 * Math.PI) * phi);
      double square = r * r - Math.pow(e * Math.sin(phi), 2);
      if (square >= 0) {
        best = Math.max(best, e * Math.cos(phi) + Math.sqrt(square));
      }
    }
    return best;
  }
}
