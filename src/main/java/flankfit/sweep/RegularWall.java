package flankfit.sweep;

import flankfit.unit.Require;
import flankfit.unit.Tolerance;
import java.util.Objects;

/**
 * An endless regular thread as a wall: for comparison, and for threads known by formula alone.
 *
 * @param thread the thread
 * @param phase where its grooves lie; its spacing is the thread's own
 * @param range heights between which it is looked at
 */
public record RegularWall(RegularThread thread, GroovePhase phase, SweptWall.Range range)
    implements Wall {
  public RegularWall {
    Objects.requireNonNull(thread, "thread");
    Objects.requireNonNull(range, "range");
    if (!Tolerance.MODEL.near(phase.spacing(), thread.spacing())) {
      throw new IllegalArgumentException(
          "spacing of the phase must be the thread's: " + phase.spacing());
    }
  }

  @Override
  public boolean isInternal() {
    return thread.groove().isInternal();
  }

  @Override
  public double top() {
    return range.top();
  }

  @Override
  public double bottom() {
    return range.bottom();
  }

  @Override
  public int open(double theta, double radius, double[] stretches) {
    Openings out = new Openings(bottom(), top());
    Groove groove = thread.groove();
    boolean inBlank = isInternal() ? radius < thread.blankRadius() : radius > thread.blankRadius();
    if (inBlank) {
      out.add(bottom(), top());
    } else if (thread.isCut() && !groove.isBeyondBottom(radius)) {
      double up = groove.halfWidth(radius, Flank.UP);
      double down = groove.halfWidth(radius, Flank.DOWN);
      double first = phase.middle(0, theta);
      double spacing = phase.spacing();
      // Grooves are counted downwards; go from the lowest that reaches up to the bottom.
      long lowest = (long) Math.floor((first - bottom() + up) / spacing);
      long highest = (long) Math.ceil((first - top() - down) / spacing);
      for (long k = lowest; k >= highest; k--) {
        double middle = phase.middle(k, theta);
        out.add(middle - down, middle + up);
      }
    }
    return out.joined(stretches);
  }

  @Override
  public double radius(double theta, double z) {
    Require.within("z", z, bottom(), top());
    return thread.surface(z - phase.middle(0, theta));
  }
}
