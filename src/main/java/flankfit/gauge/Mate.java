package flankfit.gauge;

import flankfit.standard.PlugGauges;
import flankfit.standard.ThreadSpec;

/**
 * The perfect thread of the GO gauge that is tried on the part: a plug in a hole, a ring on a boss.
 *
 * @param internal whether the part's thread is a hole's
 * @param pitch pitch of the gauge (mm)
 * @param halfAngle half the angle between its flanks (rad)
 * @param pitchDiameter pitch diameter of the GO gauge (mm)
 * @param crestRadius radius of its crest: major of a plug, minor of a ring (mm)
 * @param rootRadius radius of the far end of its flanks (mm)
 * @param relievedRadius radius to which its flanks reach when the crest is relieved (mm)
 */
record Mate(
    boolean internal,
    double pitch,
    double halfAngle,
    double pitchDiameter,
    double crestRadius,
    double rootRadius,
    double relievedRadius) {
  /** The GO gauge of a thread; a ring of an external thread at the limits of size. */
  static Mate of(ThreadSpec spec) {
    double quarterHeight = spec.pitch() / (8 * Math.tan(spec.halfAngle()));
    if (spec.internal()) {
      double pitch = goPitch(spec);
      double crest = spec.gauges().map(PlugGauges::goMajorMin).orElseGet(() -> majorMin(spec)) / 2;
      return new Mate(
          true,
          spec.pitch(),
          spec.halfAngle(),
          pitch,
          crest,
          spec.basicMinor() / 2,
          spec.basicPitch() / 2 + quarterHeight);
    }
    return new Mate(
        false,
        spec.pitch(),
        spec.halfAngle(),
        goPitch(spec),
        spec.basicMinor() / 2,
        spec.nominal() / 2,
        spec.basicPitch() / 2 - quarterHeight);
  }

  private static double majorMin(ThreadSpec spec) {
    return spec.limits().majorMin().orElse(spec.nominal());
  }

  static double goPitch(ThreadSpec spec) {
    return spec.internal()
        ? spec.gauges().map(PlugGauges::goPitch).orElse(spec.limits().pitchMin())
        : spec.limits().pitchMax();
  }

  static double noGoPitch(ThreadSpec spec) {
    return spec.internal()
        ? spec.gauges().map(PlugGauges::noGoPitch).orElse(spec.limits().pitchMax())
        : spec.limits().pitchMin();
  }
}
