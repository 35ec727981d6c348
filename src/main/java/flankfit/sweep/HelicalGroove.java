package flankfit.sweep;

import flankfit.unit.Angles;
import flankfit.unit.Require;

/**
 * The groove that one tooth leaves along an endless regular helix. A point of the metal is cut
 * when, for some angle φ between it and the cutter's axis, it lies inside the tooth raised by the
 * helix's rise over φ; so the wall on each cylinder is a maximum of one variable.
 *
 * <p>Hand, sense and starting point do not matter: the distance from the cutter's axis is even in
 * φ.
 *
 * @param tooth the cutter's tooth
 * @param internal whether the cutter runs inside a hole
 * @param pathRadius radius of the path of the cutter's axis (mm), above 0; outside a boss above the
 *     tooth's outside radius
 * @param lead travel along the axis in one turn, without sign (mm), not below 0
 */
public record HelicalGroove(Tooth tooth, boolean internal, double pathRadius, double lead)
    implements Groove {
  public HelicalGroove {
    Require.positive("pathRadius", pathRadius);
    Require.notNegative("lead", lead);
    if (!internal) {
      Require.positive("pathRadius less outside radius", pathRadius - tooth.outsideRadius());
    }
  }

  @Override
  public boolean isInternal() {
    return internal;
  }

  @Override
  public double bottom() {
    return internal ? pathRadius + tooth.outsideRadius() : pathRadius - tooth.outsideRadius();
  }

  @Override
  public boolean isSymmetric() {
    return tooth.isSymmetric();
  }

  @Override
  public double halfWidth(double radius, Flank flank) {
    if (isBeyondBottom(radius)) {
      return Double.NaN;
    }
    return tooth.reach(new Station(radius, pathRadius, lead), flank);
  }

  /**
   * The surface at a height by the defining maximum itself (mm): over the cutter's positions φ the
   * greatest of {@code e cos φ + sqrt(r(z - pφ)² - e² sin² φ)}, outside a boss the least of {@code
   * e cos φ - sqrt(…)}. Slow; the witness for {@link #halfWidth}.
   *
   * @param z height above the groove's middle (mm)
   * @param steps number of positions tried in a turn, refined about the best
   * @return radius (mm); NaN where no position reaches
   */
  public double envelope(double z, int steps) {
    double best = Double.NaN;
    double at = 0;
    double step = Angles.TURN / steps;
    for (int i = 0; i <= steps; i++) {
      double phi = -Math.PI + i * step;
      double rho = reachAt(phi, z);
      if (!Double.isNaN(rho) && (Double.isNaN(best) || isDeeper(rho, best))) {
        best = rho;
        at = phi;
      }
    }
    return Double.isNaN(best) ? best : refined(z, at, step, best);
  }

  private double refined(double z, double at, double step, double best) {
    double sign = internal ? 1 : -1;
    double found =
        Maximum.of(
            phi -> {
              double rho = reachAt(phi, z);
              return Double.isNaN(rho) ? Double.NEGATIVE_INFINITY : sign * rho;
            },
            at - step,
            at + step);
    return isDeeper(sign * found, best) ? sign * found : best;
  }

  private boolean isDeeper(double rho, double than) {
    return internal ? rho > than : rho < than;
  }

  private double reachAt(double phi, double z) {
    double r = tooth.radius(z - lead / Angles.TURN * phi);
    double across = pathRadius * Math.sin(phi);
    double square = r * r - across * across;
    if (square < 0) {
      return Double.NaN;
    }
    double along = Math.sqrt(square);
    double rho = pathRadius * Math.cos(phi) + (internal ? along : -along);
    return rho > 0 ? rho : Double.NaN;
  }
}
