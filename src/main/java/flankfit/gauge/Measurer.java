package flankfit.gauge;

import flankfit.standard.ThreadSpec;
import flankfit.sweep.Flank;
import flankfit.sweep.Groove;
import flankfit.sweep.RegularThread;
import java.util.OptionalDouble;

/** Measures a regular thread as a thread wanted is measured. */
final class Measurer {
  /** Points of the least-squares line of a flank. */
  private static final int FLANK_POINTS = 31;

  /** Share of a flank left out at each end. */
  private static final double FLANK_END = 0.2;

  private final ThreadSpec spec;
  private final Mate mate;

  Measurer(ThreadSpec spec) {
    this.spec = spec;
    this.mate = Mate.of(spec);
  }

  /**
   * Everything that is measured.
   *
   * @param leadError lead of the motion less the lead wanted (mm)
   * @param accumulated greatest axial error between engaged grooves (mm)
   */
  Measures measure(RegularThread thread, double leadError, double accumulated) {
    Fit fit = fit(thread, accumulated);
    double crest = thread.crest();
    double bottom = thread.groove().bottom();
    return new Measures(
        2 * (spec.internal() ? bottom : crest),
        2 * (spec.internal() ? crest : bottom),
        simple(thread),
        spec.internal() ? BallReading.pitchDiameter(thread, spec) : OptionalDouble.empty(),
        fit.functional(),
        fit.flanks(),
        fit.decidedBy(),
        flankAngle(thread.groove(), crest, bottom, Flank.UP),
        flankAngle(thread.groove(), crest, bottom, Flank.DOWN),
        leadError,
        accumulated / Math.tan(spec.halfAngle()));
  }

  /** The GO gauge tried on the thread. */
  Fit fit(RegularThread thread, double accumulated) {
    return Fit.of(thread, mate, accumulated);
  }

  /**
   * Simple pitch diameter (mm): where the groove is half the pitch wide, inside the metal or, on a
   * thread too shallow for that, on its flanks prolonged beyond the ridge; NaN when even the bottom
   * is wider.
   */
  double simple(RegularThread thread) {
    double slack = 0.45 * spec.pitch();
    double beyond =
        spec.internal()
            ? Math.min(thread.blankRadius(), spec.basicMinor() / 2) - slack
            : Math.max(thread.blankRadius(), spec.nominal() / 2) + slack;
    RegularThread prolonged = new RegularThread(thread.groove(), thread.spacing(), beyond);
    return 2 * prolonged.radiusOfWidth(spec.pitch() / 2);
  }

  private static double flankAngle(Groove groove, double crest, double bottom, Flank flank) {
    double from = crest + FLANK_END * (bottom - crest);
    double to = bottom - FLANK_END * (bottom - crest);
    double middle = (from + to) / 2;
    double products = 0;
    double squares = 0;
    for (int i = 0; i < FLANK_POINTS; i++) {
      double rho = from + (to - from) * i / (FLANK_POINTS - 1);
      products += (rho - middle) * groove.halfWidth(rho, flank);
      squares += (rho - middle) * (rho - middle);
    }
    return Math.atan(Math.abs(products / squares));
  }
}
