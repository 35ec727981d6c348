package flankfit.gauge;

import flankfit.sweep.Flank;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Wall;

/** An endless regular right-hand thread as a wall between two heights, for tests. */
record EndlessWall(RegularThread thread, double lead, double top, double bottom) implements Wall {
  @Override
  public boolean isInternal() {
    return thread.groove().isInternal();
  }

  private double middle(double theta) {
    return lead * theta / (2 * Math.PI);
  }

  @Override
  public int open(double theta, double radius, double[] stretches) {
    boolean blank = isInternal() ? radius <= thread.blankRadius() : radius >= thread.blankRadius();
    double up = blank ? thread.spacing() : thread.groove().halfWidth(radius, Flank.UP);
    double down = blank ? thread.spacing() : thread.groove().halfWidth(radius, Flank.DOWN);
    if (Double.isNaN(up) || thread.groove().isBeyondBottom(radius)) {
      return 0;
    }
    if (up + down >= thread.spacing()) {
      stretches[0] = bottom;
      stretches[1] = top;
      return 1;
    }
    int count = 0;
    double first = middle(theta);
    first += thread.spacing() * Math.floor((bottom - first) / thread.spacing() - 1);
    for (double z = first; z < top + thread.spacing(); z += thread.spacing()) {
      double low = Math.max(bottom, z - down);
      double high = Math.min(top, z + up);
      if (high > low) {
        stretches[2 * count] = low;
        stretches[2 * count + 1] = high;
        count++;
      }
    }
    return count;
  }

  @Override
  public double radius(double theta, double z) {
    return thread.surface(z - middle(theta));
  }
}
