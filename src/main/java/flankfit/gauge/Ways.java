package flankfit.gauge;

import flankfit.gauge.SizeCourse.Form;
import flankfit.gauge.Travel.From;
import flankfit.standard.PlugGauges;
import java.util.Objects;
import java.util.Optional;

/**
 * What gauges of all sizes do on the wall that one path leaves.
 *
 * @param flanks course of the GO gauge's flanks, behind its crest where that goes
 * @param crest course of its crest
 * @param crestGoes way that its crest goes, however large its flanks are (mm); infinite when
 *     through
 * @param noGo course of the NO-GO gauge from the mouth
 * @param noGoFar the same from the far end, where the rule asks for it
 * @param plainSpare what the nearer of both plain plugs has to spare (mm); infinite without them
 * @param wanted way that the GO gauge has to go (mm)
 * @param allowed way that a NO-GO gauge may go (mm)
 * @param whole way from first to last metal (mm)
 */
public record Ways(
    SizeCourse flanks,
    SizeCourse crest,
    double crestGoes,
    SizeCourse noGo,
    Optional<SizeCourse> noGoFar,
    double plainSpare,
    double wanted,
    double allowed,
    double whole) {
  public Ways {
    Objects.requireNonNull(flanks, "flanks");
    Objects.requireNonNull(crest, "crest");
    Objects.requireNonNull(noGo, "noGo");
    Objects.requireNonNull(noGoFar, "noGoFar");
  }

  /**
   * Tries all gauges of a wall's thread.
   *
   * @param wanted height that the GO gauge has to reach (mm)
   */
  static Ways of(WallField field, double wanted) {
    ThreadGauge go = ThreadGauge.go(field.spec());
    ThreadGauge noGo = ThreadGauge.noGo(field.spec());
    double allowed = TurnsRuling.allowed(field.spec()) * field.spec().lead();
    SizeCourse behind = SizeCourse.of(field, go, Form.FLANKS_BEHIND_CREST, From.MOUTH, wanted);
    boolean far = field.isThrough() && field.spec().threadsPerInch().isEmpty();
    return new Ways(
        behind.isBlocked()
            ? behind.then(SizeCourse.of(field, go, Form.FLANKS, From.MOUTH, wanted))
            : behind,
        SizeCourse.of(field, go, Form.CREST, From.MOUTH, wanted),
        behind.blockedAt(),
        noGo(field, noGo, From.MOUTH, field.mouth() - allowed),
        far
            ? Optional.of(noGo(field, noGo, From.FAR_END, field.farMouth() + allowed))
            : Optional.empty(),
        plainSpare(field, field.mouth() - wanted),
        field.mouth() - wanted,
        allowed,
        field.mouth() - field.farMouth());
  }

  private static SizeCourse noGo(WallField field, ThreadGauge gauge, From from, double limit) {
    return SizeCourse.of(field, gauge, Form.FLANKS_BEHIND_CREST, from, limit);
  }

  /** The rules of {@link PlainRuling}: fronts lie half a pitch before the middle of a groove. */
  private static double plainSpare(WallField field, double wanted) {
    if (!field.spec().internal() || field.spec().gauges().isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    PlugGauges gauges = field.spec().gauges().get();
    SizeCourse course = SizeCourse.ofPlain(field, gauges.plainGo());
    double half = field.spec().pitch() / 2;
    double go = course.upTo(wanted + half);
    double noGo = gauges.plainNoGo() - gauges.plainGo() - course.upTo(3 * half);
    return Math.min(go, noGo);
  }

  /** What the NO-GO gauge has too much of to pass the turns allowed from either end (mm). */
  public double noGoRuns() {
    double near = noGo.upTo(allowed);
    return noGoFar.map(far -> Math.max(near, far.upTo(allowed))).orElse(near);
  }
}
