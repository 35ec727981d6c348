package flankfit.control;

/**
 * Crossings of a spiral with another element by search: an arc whose ends lie at different radii
 * has no closed form. Steps are even over the spiral and grow finer towards the corner, where a
 * path that is nearly tangent crosses.
 */
final class SpiralCrossings {
  private static final int STEPS_A_TURN = 360;
  private static final int LEAST_STEPS = 32;
  private static final int MOST_STEPS = 36_000;
  private static final int HALVINGS_TO_CORNER = 30;
  private static final int BISECTIONS = 60;

  /** A root farther off than this is a jump between turns (mm). */
  private static final double ON_CURVE = 1e-7;

  private final PlaneElement spiral;
  private final PlaneElement other;
  private final Crossing crossing;

  private SpiralCrossings(PlaneElement spiral, PlaneElement other, Crossing crossing) {
    this.spiral = spiral;
    this.other = other;
    this.crossing = crossing;
  }

  /** Hands every crossing found to {@code crossing}. */
  static void search(PlaneElement before, PlaneElement after, Crossing crossing) {
    if (before.isSpiral()) {
      new SpiralCrossings(before, after, crossing).scan(before.extent);
    } else {
      new SpiralCrossings(after, before, crossing).scan(0);
    }
  }

  private void scan(double corner) {
    double turns = spiral.extent / (2 * Math.PI);
    int steps = (int) Math.max(LEAST_STEPS, Math.min(MOST_STEPS, Math.ceil(turns * STEPS_A_TURN)));
    double step = spiral.extent / steps;
    double away = corner == 0 ? step : -step;
    for (int i = 1; i < steps; i++) {
      between(corner + i * away, corner + (i + 1) * away);
    }
    double far = away;
    for (int i = 0; i < HALVINGS_TO_CORNER; i++) {
      between(corner + far / 2, corner + far);
      far /= 2;
    }
    between(corner, corner + far);
  }

  private double u(double station) {
    return spiral.move.centreU() + spiral.radiusAt(station) * Math.cos(spiral.angleAt(station));
  }

  private double v(double station) {
    return spiral.move.centreV() + spiral.radiusAt(station) * Math.sin(spiral.angleAt(station));
  }

  private double side(double station) {
    return other.side(u(station), v(station));
  }

  private void between(double a, double b) {
    double low = a;
    double high = b;
    double sideLow = side(low);
    double sideHigh = side(high);
    if (sideLow > 0 == sideHigh > 0 && sideLow != 0) {
      return;
    }
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (low + high) / 2;
      if (side(middle) > 0 == sideLow > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    if (Math.abs(side(high)) <= ON_CURVE) {
      crossing.consider(u(high), v(high));
    }
  }
}
