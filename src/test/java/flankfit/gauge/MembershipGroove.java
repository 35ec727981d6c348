package flankfit.gauge;

import java.util.function.DoubleUnaryOperator;

/**
 * The slow witness of one groove of an endless helix: stands a spinning cutter at very many places
 * and asks of each whether a point lies within it. It knows the cutter's radius at a height and
 * nothing else: no envelope, no involute, no inverse of the profile.
 *
 * @param internal whether the thread is a hole's
 * @param profile radius of the cutter at a height above the middle of its tooth (mm)
 * @param path radius of the cutter's path (mm)
 * @param perRadian rise of the helix, above 0 (mm)
 * @param pitch distance between grooves: half of it either way is looked at (mm)
 */
record MembershipGroove(
    boolean internal, DoubleUnaryOperator profile, double path, double perRadian, double pitch) {
  /** Places round the whole circle, and again and again beside the one that reaches farthest. */
  private static final int PLACES = 240;

  private static final int ROUNDS = 3;

  private static final int BISECTIONS = 22;

  /** Places whose cutter is asked, on both sides of an angle (rad). */
  private static final class Places {
    final double about;
    final double width;
    final double[] distance = new double[PLACES + 1];
    final double[] height = new double[PLACES + 1];

    Places(double about, double width) {
      this.about = about;
      this.width = width;
    }

    double angle(int i) {
      return about + width * (2.0 * i / PLACES - 1);
    }
  }

  private Places places(double rho, double about, double width) {
    Places places = new Places(about, width);
    for (int i = 0; i <= PLACES; i++) {
      double phi = places.angle(i);
      places.distance[i] = Math.sqrt(path * path + rho * rho - 2 * path * rho * Math.cos(phi));
      places.height[i] = perRadian * phi;
    }
    return places;
  }

  /**
   * How far the groove reaches above (sign 1) or below (-1) its middle on a cylinder (mm). The
   * middle itself must lie in the cutter that stands at angle 0.
   */
  double reach(double rho, int sign) {
    double about = 0;
    double width = Math.PI;
    double in = 0;
    double out = pitch;
    for (int round = 0; round < ROUNDS; round++) {
      Places places = places(rho, about, width);
      int owner = PLACES / 2;
      for (int k = 0; k < BISECTIONS; k++) {
        double z = (in + out) / 2;
        int member = member(places, sign * z, owner);
        if (member >= 0) {
          in = z;
          owner = member;
        } else {
          out = z;
        }
      }
      // The best place lies within a step of the best of these, and reaches little farther.
      about = places.angle(owner);
      width *= 2.0 / PLACES;
      out = in + 2 * width * perRadian + (round == 0 ? pitch / 100 : pitch / 1e5);
    }
    return in;
  }

  /** A place whose cutter holds the point; -1 when none does. */
  private int member(Places places, double z, int first) {
    if (places.distance[first] <= profile.applyAsDouble(z - places.height[first])) {
      return first;
    }
    for (int i = 0; i <= PLACES; i++) {
      if (places.distance[i] <= profile.applyAsDouble(z - places.height[i])) {
        return i;
      }
    }
    return -1;
  }

  private double width(double rho) {
    return reach(rho, 1) + reach(rho, -1);
  }

  /** Diameter on which the groove is half the pitch wide (mm), between two radii. */
  double pitchDiameter(double oneRadius, double otherRadius) {
    double wide = internal ? Math.min(oneRadius, otherRadius) : Math.max(oneRadius, otherRadius);
    double narrow = oneRadius + otherRadius - wide;
    for (int k = 0; k < 26; k++) {
      double rho = (wide + narrow) / 2;
      if (width(rho) > pitch / 2) {
        wide = rho;
      } else {
        narrow = rho;
      }
    }
    return wide + narrow;
  }

  /**
   * What the upper and the lower flank leave between two radii for a ridge of width 0 on the axis
   * (mm): the least of the groove's half width and what a straight flank is narrower there.
   *
   * @param tan tangent of the gauge's half angle
   */
  double[] rooms(double root, double crest, double tan, int cylinders) {
    double sign = internal ? 1 : -1;
    double[] least = new double[2];
    for (int side = 0; side < 2; side++) {
      int up = side == 0 ? 1 : -1;
      least[side] = least(rho -> reach(rho, up) + sign * rho * tan, root, crest, cylinders);
    }
    return least;
  }

  /**
   * Pitch diameter of the largest plug, or smallest ring, that stands in the groove, free along the
   * axis: on every cylinder its ridge is P/2 wide less what the cylinder lies off its pitch line.
   */
  double plug(double[] rooms, double tan) {
    return (internal ? 1 : -1) * (rooms[0] + rooms[1] - pitch / 2) / tan;
  }

  /** The least over many cylinders, and again over many beside the least of these. */
  private static double least(DoubleUnaryOperator f, double from, double to, int cylinders) {
    double low = from;
    double high = to;
    double least = Double.POSITIVE_INFINITY;
    for (int round = 0; round < 3; round++) {
      double step = (high - low) / cylinders;
      int at = 0;
      for (int i = 0; i <= cylinders; i++) {
        double here = f.applyAsDouble(i == cylinders ? high : low + step * i);
        if (here < least) {
          least = here;
          at = i;
        }
      }
      double middle = low + step * at;
      // Both ends stay within the first ones.
      low = Math.max(Math.min(from, to), middle - Math.abs(step));
      high = Math.min(Math.max(from, to), middle + Math.abs(step));
    }
    return least;
  }
}
