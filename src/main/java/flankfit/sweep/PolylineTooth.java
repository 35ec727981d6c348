package flankfit.sweep;

import flankfit.unit.Require;
import java.util.List;

/**
 * A tooth whose profile is made of straight lines: the true V, or a measured profile. Each line
 * leaves an involute helicoid, so the surface has a closed form, crest corners and their fillets
 * included.
 */
public final class PolylineTooth implements Tooth {
  private final ToothSide up;
  private final ToothSide down;
  private final double outsideRadius;
  private final boolean symmetric;

  private PolylineTooth(ToothSide up, ToothSide down, boolean symmetric) {
    this.up = up;
    this.down = down;
    this.outsideRadius = up.top();
    this.symmetric = symmetric;
  }

  /**
   * True V flanks below a flat crest.
   *
   * @param outsideRadius radius over the teeth (mm), above 0
   * @param crestFlat width of the crest (mm), not below 0
   * @param halfAngle half the angle between the flanks (rad), in (0, π/2)
   */
  public static PolylineTooth straight(double outsideRadius, double crestFlat, double halfAngle) {
    Require.positive("outsideRadius", outsideRadius);
    Require.notNegative("crestFlat", crestFlat);
    Require.within("halfAngle", halfAngle, 1e-3, Math.PI / 2 - 1e-3);
    double half = crestFlat / 2;
    double[] radius = {outsideRadius, 0};
    double[] width = {half, half + outsideRadius * Math.tan(halfAngle)};
    ToothSide side = new ToothSide(radius, width);
    return new PolylineTooth(side, side, true);
  }

  /**
   * A measured profile. A profile that begins at 0 is mirrored. A hollow behind a higher point does
   * not count: the outermost flank is taken. Beyond its ends the tooth does not cut.
   *
   * @param profile rows of axial distance from the middle and radius (mm), [n][2], by rising axial
   *     distance, at least two
   * @throws IllegalArgumentException if there are too few rows, or they do not rise, or the middle
   *     is not inside
   */
  public static PolylineTooth measured(List<List<Double>> profile) {
    checkRows(profile);
    boolean half = profile.get(0).get(0) >= 0;
    ToothSide up = ToothSide.of(profile, 1);
    return new PolylineTooth(up, half ? up : ToothSide.of(profile, -1), half);
  }

  private static void checkRows(List<List<Double>> profile) {
    if (profile.size() < 2) {
      throw new IllegalArgumentException("profile must have two rows or more: " + profile.size());
    }
    double before = Double.NEGATIVE_INFINITY;
    for (List<Double> row : profile) {
      if (row.size() != 2 || !(row.get(0) > before)) {
        throw new IllegalArgumentException("profile rows must be [s, r] by rising s: " + row);
      }
      Require.notNegative("profile radius", row.get(1));
      before = row.get(0);
    }
    if (profile.get(0).get(0) > 0 || before <= 0) {
      throw new IllegalArgumentException("profile must hold the middle of the tooth, s = 0");
    }
  }

  @Override
  public double outsideRadius() {
    return outsideRadius;
  }

  @Override
  public double rootRadius() {
    return Math.max(up.root(), down.root());
  }

  @Override
  public boolean isSymmetric() {
    return symmetric;
  }

  @Override
  public double halfWidth(double radius, Flank flank) {
    return side(flank).width(radius);
  }

  @Override
  public double radius(double s) {
    return s >= 0 ? up.radiusAt(s) : down.radiusAt(-s);
  }

  @Override
  public FlankShape side(Flank flank) {
    return flank == Flank.UP ? up : down;
  }
}
