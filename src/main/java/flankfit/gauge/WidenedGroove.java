package flankfit.gauge;

import flankfit.sweep.Flank;
import flankfit.sweep.Groove;

/**
 * The groove of a tooth that is wider all along: both flanks stand off by half of it, exactly, for
 * a wall point is the greatest of tooth half widths raised by the helix.
 *
 * @param groove groove of the tooth as stated
 * @param wider how much wider the tooth is (mm), either sign
 */
record WidenedGroove(Groove groove, double wider) implements Groove {
  @Override
  public boolean isInternal() {
    return groove.isInternal();
  }

  @Override
  public double bottom() {
    return groove.bottom();
  }

  @Override
  public double halfWidth(double radius, Flank flank) {
    return groove.halfWidth(radius, flank) + wider / 2;
  }

  @Override
  public boolean isSymmetric() {
    return groove.isSymmetric();
  }
}
