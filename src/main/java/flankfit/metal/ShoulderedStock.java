package flankfit.metal;

import flankfit.motion.Extents;
import flankfit.setup.Hole;
import java.util.List;

/** A stock of which nothing but bosses stands above a shoulder. */
final class ShoulderedStock implements StockBody {
  private static final double CELLS_A_RADIUS = 60;

  /** A cylinder without end, upright. */
  private record Boss(double x, double y, double radius) {
    double outside(double toX, double toY) {
      return Math.hypot(toX - x, toY - y) - radius;
    }
  }

  private final StockBody whole;
  private final double shoulder;
  private final List<Boss> bosses;

  private ShoulderedStock(StockBody whole, double shoulder, List<Boss> bosses) {
    this.whole = whole;
    this.shoulder = shoulder;
    this.bosses = List.copyOf(bosses);
  }

  /**
   * A stock from which bosses stand up; the deepest of them says where the shoulder lies.
   *
   * @param whole the stock as if there were no bosses
   * @param bosses bosses whose depth is stated, at least one
   */
  static StockBody of(StockBody whole, List<Hole> bosses) {
    double shoulder = Double.POSITIVE_INFINITY;
    for (Hole boss : bosses) {
      shoulder = Math.min(shoulder, boss.top() - boss.depth().orElseThrow());
    }
    return new ShoulderedStock(
        whole,
        shoulder,
        bosses.stream().map(b -> new Boss(b.x(), b.y(), b.diameter() / 2)).toList());
  }

  private Boss nearest(double x, double y) {
    Boss nearest = bosses.get(0);
    for (Boss boss : bosses) {
      if (boss.outside(x, y) < nearest.outside(x, y)) {
        nearest = boss;
      }
    }
    return nearest;
  }

  @Override
  public Extents box() {
    return whole.box();
  }

  @Override
  public double distance(double x, double y, double z) {
    double up = z - shoulder;
    return Math.max(whole.distance(x, y, z), Math.min(up, nearest(x, y).outside(x, y)));
  }

  @Override
  public void normal(double x, double y, double z, double[] target) {
    Boss boss = nearest(x, y);
    double up = z - shoulder;
    double out = boss.outside(x, y);
    if (Math.min(up, out) <= whole.distance(x, y, z)) {
      whole.normal(x, y, z, target);
      return;
    }
    double r = out + boss.radius();
    boolean level = up <= out || r == 0;
    target[0] = level ? 0 : (x - boss.x()) / r;
    target[1] = level ? 0 : (y - boss.y()) / r;
    target[2] = level ? 1 : 0;
  }

  @Override
  public boolean isOutside(double[] corners, int count) {
    return whole.isOutside(corners, count) || isBeside(corners, count);
  }

  /** Whether a convex body stands above the shoulder, its box in plan clear of every boss. */
  private boolean isBeside(double[] corners, int count) {
    double lowX = Double.POSITIVE_INFINITY;
    double lowY = Double.POSITIVE_INFINITY;
    double highX = Double.NEGATIVE_INFINITY;
    double highY = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      if (corners[3 * i + 2] < shoulder) {
        return false;
      }
      lowX = Math.min(lowX, corners[3 * i]);
      highX = Math.max(highX, corners[3 * i]);
      lowY = Math.min(lowY, corners[3 * i + 1]);
      highY = Math.max(highY, corners[3 * i + 1]);
    }
    for (Boss boss : bosses) {
      double x = Math.min(highX, Math.max(lowX, boss.x()));
      double y = Math.min(highY, Math.max(lowY, boss.y()));
      if (boss.outside(x, y) < 0) {
        return false;
      }
    }
    return true;
  }

  @Override
  public double cell() {
    double finest = whole.cell();
    for (Boss boss : bosses) {
      finest = Math.min(finest, boss.radius() / CELLS_A_RADIUS);
    }
    return finest;
  }

  @Override
  public double cell(double x, double y, double z, double radius) {
    double finest = whole.cell(x, y, z, radius);
    for (Boss boss : bosses) {
      if (Math.abs(boss.outside(x, y)) <= radius && z + radius >= shoulder) {
        finest = Math.min(finest, boss.radius() / CELLS_A_RADIUS);
      }
    }
    return finest;
  }
}
