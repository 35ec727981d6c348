package flankfit.sweep;

import flankfit.unit.Require;
import java.util.Objects;

/**
 * An endless regular thread: one groove repeated along the axis, in a hole or on a boss.
 *
 * @param groove the groove
 * @param spacing axial distance from groove to groove (mm), above 0
 * @param blankRadius radius of the hole or boss before the thread is cut (mm), above 0
 */
public record RegularThread(Groove groove, double spacing, double blankRadius) {
  public RegularThread {
    Objects.requireNonNull(groove, "groove");
    Require.positive("spacing", spacing);
    Require.positive("blankRadius", blankRadius);
  }

  /** Whether the cutter cuts into the blank at all. */
  public boolean isCut() {
    return groove.isInternal() ? groove.bottom() > blankRadius : groove.bottom() < blankRadius;
  }

  /**
   * Radius of the ridge's crest (mm): that of the blank, or where the flanks of neighbouring
   * grooves meet before they reach it; the groove's bottom when nothing is left of the ridge.
   */
  public double crest() {
    if (!isCut() || !meet(blankRadius)) {
      return blankRadius;
    }
    if (meet(groove.bottom())) {
      return groove.bottom();
    }
    return where(spacing);
  }

  private boolean meet(double radius) {
    return groove.width(radius) >= spacing;
  }

  /**
   * Radius on which the groove has a width (mm); NaN when it is narrower even at the crest or wider
   * even at the bottom.
   *
   * @param width axial width (mm)
   */
  public double radiusOfWidth(double width) {
    if (!isCut() || groove.width(blankRadius) < width || groove.width(groove.bottom()) > width) {
      return Double.NaN;
    }
    return where(width);
  }

  /** The radius of a width, between blank, where it is wider, and bottom, where it is narrower. */
  private double where(double width) {
    return Root.between(
        radius -> groove.width(radius) - width,
        Math.min(blankRadius, groove.bottom()),
        Math.max(blankRadius, groove.bottom()));
  }

  /**
   * The surface at a height (mm): radius of the metal, blank and neighbouring grooves included.
   *
   * @param z height above the middle of one groove (mm)
   */
  public double surface(double z) {
    double from = z - spacing * Math.rint(z / spacing);
    double own = depthAt(Math.abs(from), from >= 0 ? Flank.UP : Flank.DOWN);
    double next = depthAt(spacing - Math.abs(from), from >= 0 ? Flank.DOWN : Flank.UP);
    return groove.isInternal() ? Math.max(own, next) : Math.min(own, next);
  }

  /** Radius at which one flank stands a distance from the groove's middle (mm). */
  private double depthAt(double distance, Flank flank) {
    double bottom = groove.bottom();
    if (!isCut() || groove.halfWidth(blankRadius, flank) <= distance) {
      return blankRadius;
    }
    if (groove.halfWidth(bottom, flank) >= distance) {
      return bottom;
    }
    return Root.between(
        radius -> groove.halfWidth(radius, flank) - distance,
        Math.min(blankRadius, bottom),
        Math.max(blankRadius, bottom));
  }
}
