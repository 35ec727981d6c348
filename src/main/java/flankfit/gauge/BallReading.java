package flankfit.gauge;

import flankfit.standard.ThreadSpec;
import flankfit.sweep.Flank;
import flankfit.sweep.Groove;
import flankfit.sweep.Maximum;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Root;
import java.util.OptionalDouble;

/**
 * Measuring over balls or wires. The ball rests in the plane through the axis: the correction for
 * the lead angle, 0.4 micrometres on an M20 x 1.5, is neglected.
 *
 * @see "three wires: M = d2 + w (1 + 1 / sin α) - (P / 2) cot α, article of a national metrology
 *     institute with the constants 3 and 0.866025 (60°), 3.16568 and 0.960491 (55°); two balls
 *     inside derived by the same geometry"
 */
final class BallReading {
  /** Clearance below which the ball counts as resting on the bottom (mm). */
  private static final double ON_BOTTOM = 1e-9;

  private BallReading() {}

  /** Diameter of the ball or wire that touches at the pitch line (mm). */
  static double bestSize(double pitch, double halfAngle) {
    return pitch / (2 * Math.cos(halfAngle));
  }

  /** Reading over three wires on a screw (mm). */
  static double overWires(double pitchDiameter, double wire, double pitch, double halfAngle) {
    return pitchDiameter + wire * (1 + 1 / Math.sin(halfAngle)) - pitch / 2 / Math.tan(halfAngle);
  }

  /** Distance of the centres of two balls in a nut (mm). */
  static double betweenCentres(double pitchDiameter, double ball, double pitch, double halfAngle) {
    return pitchDiameter - ball / Math.sin(halfAngle) + pitch / 2 / Math.tan(halfAngle);
  }

  /**
   * The pitch diameter that two best-size balls read inside a hole (mm); empty where the ball rests
   * on the bottom or the ridge instead of both flanks.
   */
  static OptionalDouble pitchDiameter(RegularThread thread, ThreadSpec spec) {
    double ball = bestSize(spec.pitch(), spec.halfAngle());
    double centre = deepestCentre(thread, ball / 2);
    double touch = centre + ball / 2 * Math.sin(spec.halfAngle());
    if (!(touch > thread.crest()) || centre + ball / 2 > thread.groove().bottom() - ON_BOTTOM) {
      return OptionalDouble.empty();
    }
    double offset = betweenCentres(0, ball, spec.pitch(), spec.halfAngle());
    return OptionalDouble.of(2 * centre - offset);
  }

  /** Radius of the ball's centre when it lies as deep in the groove as it goes (mm). */
  private static double deepestCentre(RegularThread thread, double radius) {
    double deep = thread.groove().bottom() - radius;
    // There the ball only dips into the groove's mouth, where it is wide.
    double shallow = thread.crest() - 0.9 * radius;
    if (room(thread, shallow, radius) <= 0) {
      return shallow;
    }
    if (deep <= shallow || room(thread, deep, radius) >= 0) {
      return deep;
    }
    return Root.between(centre -> room(thread, centre, radius), shallow, deep);
  }

  /** The least of groove width less the ball's chord over the cylinders where both are (mm). */
  private static double room(RegularThread thread, double centre, double radius) {
    Groove groove = thread.groove();
    double low = Math.max(thread.crest(), centre - radius);
    double high = Math.min(groove.bottom(), centre + radius);
    double up = -least(groove, Flank.UP, centre, radius, low, high);
    double down = groove.isSymmetric() ? up : -least(groove, Flank.DOWN, centre, radius, low, high);
    return up + down;
  }

  private static double least(
      Groove groove, Flank flank, double centre, double radius, double low, double high) {
    return Maximum.of(
        rho -> {
          double from = rho - centre;
          double half = Math.sqrt(Math.max(0, radius * radius - from * from));
          return half - groove.halfWidth(rho, flank);
        },
        low,
        high);
  }
}
