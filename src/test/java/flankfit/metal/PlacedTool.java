package flankfit.metal;

import flankfit.motion.Tape;

/** The slow witness: a tool set down at many places of a move. */
final class PlacedTool {
  private final double[] at;
  private final Profile profile;
  private final double error;

  PlacedTool(Tape tape, Profile profile, int places) {
    this.profile = profile;
    at = new double[3 * (places + 1)];
    double[] p = new double[3];
    for (int i = 0; i <= places; i++) {
      tape.pointAt(0, (double) i / places, p);
      System.arraycopy(p, 0, at, 3 * i, 3);
    }
    // The distance changes no faster than the tool moves: half a step may be missed.
    error = 0.51 * (tape.length(0) * 1.2 + 1e-9) / places;
  }

  /** How much too great the least may be (mm). */
  double error() {
    return error;
  }

  /** The least signed distance over all places (mm). */
  double least(double x, double y, double z, Near near) {
    double best = Double.POSITIVE_INFINITY;
    for (int i = 0; i < at.length; i += 3) {
      profile.distance(Math.hypot(x - at[i], y - at[i + 1]), z - at[i + 2], near);
      best = Math.min(best, near.distance);
    }
    return best;
  }
}
