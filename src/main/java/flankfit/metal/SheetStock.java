package flankfit.metal;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.setup.Hole;
import flankfit.setup.Stock;
import flankfit.solid.MeshBody;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Block, cylinder, tube or mesh of a sheet, less the holes that are in it before the program
 * starts. Each hole is a body of revolution about its axis.
 */
final class SheetStock implements StockBody {
  private static final double CELLS_A_BOX = 48;
  private static final double CELLS_A_RADIUS = 60;
  private static final int NONE = -1;

  /** A bored volume: where its axis stands, and at which height its profile's 0 lies. */
  private record Bore(double x, double y, double z, Profile profile) {}

  private final Stock stock;
  private final Optional<MeshStock> mesh;
  private final Extents box;
  private final double middleX;
  private final double middleY;
  private final List<Bore> bores;
  private final double cell;

  private SheetStock(Stock stock, Optional<MeshStock> mesh, List<Bore> bores) {
    this.stock = stock;
    this.mesh = mesh;
    this.box = stock.box();
    this.middleX = box.middle().x();
    this.middleY = box.middle().y();
    this.bores = List.copyOf(bores);
    double finest = Double.POSITIVE_INFINITY;
    for (Bore bore : bores) {
      finest = Math.min(finest, bore.profile().widest() / CELLS_A_RADIUS);
    }
    this.cell = Math.min(finest, outerCell());
  }

  /**
   * The stock of a sheet.
   *
   * @param mesh the body of a mesh; empty for other shapes
   * @param holes holes that are in it already
   */
  static SheetStock of(Stock stock, Optional<MeshBody> mesh, List<Hole> holes) {
    if (mesh.isPresent() != (stock.shape() == Stock.Shape.MESH)) {
      throw new IllegalArgumentException("a mesh needs its body: " + stock);
    }
    List<Bore> bores = new ArrayList<>();
    double beyond = stock.box().diagonal();
    if (stock.bore() > 0) {
      Point middle = stock.box().middle();
      Profile through =
          Profile.cylinder(stock.bore() / 2, 0, stock.top() - stock.bottom() + 2 * beyond);
      bores.add(new Bore(middle.x(), middle.y(), stock.bottom() - beyond, through));
    }
    for (Hole hole : holes) {
      if (!hole.boss()) {
        bores.add(bore(hole, stock, beyond));
      }
    }
    return new SheetStock(stock, mesh.map(body -> new MeshStock(body, stock.box())), bores);
  }

  /** Reaches beyond the stock's top, so that nothing is left over a sunk mouth. */
  private static Bore bore(Hole hole, Stock stock, double beyond) {
    double radius = hole.diameter() / 2;
    double bottom =
        hole.depth().isPresent() ? hole.top() - hole.depth().get() : stock.bottom() - beyond;
    double point = 0;
    if (hole.depth().isPresent() && hole.bottomAngle() < Math.PI) {
      point = radius / Math.tan(hole.bottomAngle() / 2);
    }
    double zero = bottom - point;
    double mouth = hole.top() - zero;
    double end = Math.max(hole.top(), stock.top()) + beyond - zero;
    Profile.Builder builder = new Profile.Builder(0).line(point, 0, radius);
    if (hole.countersink().isPresent()) {
      double wide = hole.countersink().get().diameter() / 2;
      double deep = (wide - radius) / Math.tan(hole.countersink().get().angle() / 2);
      builder.line(mouth - deep, radius, radius).line(mouth, radius, wide).line(end, wide, wide);
    } else {
      builder.line(end, radius, radius);
    }
    return new Bore(hole.x(), hole.y(), zero, builder.build());
  }

  @Override
  public boolean isOutside(double[] corners, int count) {
    for (Bore bore : bores) {
      if (holds(bore, corners, count)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a convex body lies in the widest cylinder that a bore has over its heights. */
  private static boolean holds(Bore bore, double[] corners, int count) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double wide = 0;
    for (int i = 0; i < count; i++) {
      double z = corners[3 * i + 2] - bore.z();
      low = Math.min(low, z);
      high = Math.max(high, z);
      wide = Math.max(wide, Math.hypot(corners[3 * i] - bore.x(), corners[3 * i + 1] - bore.y()));
    }
    Profile profile = bore.profile();
    if (low < profile.bottom() || high > profile.top()) {
      return false;
    }
    for (int b = profile.bandAt(low); b < profile.bands() && profile.low(b) <= high; b++) {
      double from = Math.max(low, profile.low(b));
      double to = Math.min(high, profile.high(b));
      if (wide > Math.min(profile.radiusOf(b, from), profile.radiusOf(b, to))) {
        return false;
      }
    }
    return true;
  }

  private double outerCell() {
    double dx = box.max().x() - box.min().x();
    double dy = box.max().y() - box.min().y();
    double dz = box.max().z() - box.min().z();
    return switch (stock.shape()) {
      case BLOCK, MESH -> Math.max(dx, Math.max(dy, dz)) / CELLS_A_BOX;
      case CYLINDER, TUBE -> dx / 2 / CELLS_A_RADIUS;
    };
  }

  @Override
  public Extents box() {
    return box;
  }

  @Override
  public double cell() {
    return cell;
  }

  @Override
  public double cell(double x, double y, double z, double radius) {
    double finest = outerCell();
    Near near = new Near();
    for (Bore bore : bores) {
      bore.profile().distance(plan(bore, x, y), z - bore.z(), near);
      if (Math.abs(near.distance) <= radius) {
        finest = Math.min(finest, bore.profile().widest() / CELLS_A_RADIUS);
      }
    }
    return finest;
  }

  private static double plan(Bore bore, double x, double y) {
    return Math.sqrt(sq(x - bore.x()) + sq(y - bore.y()));
  }

  @Override
  public double distance(double x, double y, double z) {
    double most = outer(x, y, z);
    if (bores.isEmpty()) {
      return most;
    }
    Near near = new Near();
    for (int i = 0; i < bores.size(); i++) {
      Bore bore = bores.get(i);
      double plan = plan(bore, x, y);
      // A bore that is so far away cannot be what the point is nearest to.
      if (bore.profile().widest() - plan > most) {
        bore.profile().distance(plan, z - bore.z(), near);
        most = Math.max(most, -near.distance);
      }
    }
    return most;
  }

  private double outer(double x, double y, double z) {
    if (mesh.isPresent()) {
      return mesh.get().distance(x, y, z);
    }
    double up = Math.max(box.min().z() - z, z - box.max().z());
    if (stock.shape() == Stock.Shape.BLOCK) {
      double a = Math.max(box.min().x() - x, x - box.max().x());
      double b = Math.max(box.min().y() - y, y - box.max().y());
      double inside = Math.max(a, Math.max(b, up));
      return inside <= 0
          ? inside
          : Math.sqrt(sq(Math.max(0, a)) + sq(Math.max(0, b)) + sq(Math.max(0, up)));
    }
    double out = Math.sqrt(sq(x - middleX) + sq(y - middleY)) - (box.max().x() - middleX);
    return out > 0 && up > 0 ? Math.sqrt(out * out + up * up) : Math.max(out, up);
  }

  private static double sq(double a) {
    return a * a;
  }

  @Override
  public void normal(double x, double y, double z, double[] target) {
    if (bores.isEmpty()) {
      outerNormal(x, y, z, target);
      return;
    }
    Near near = new Near();
    double most = outer(x, y, z);
    int which = NONE;
    for (int i = 0; i < bores.size(); i++) {
      Bore bore = bores.get(i);
      bore.profile().distance(plan(bore, x, y), z - bore.z(), near);
      if (-near.distance > most) {
        most = -near.distance;
        which = i;
      }
    }
    if (which == NONE) {
      outerNormal(x, y, z, target);
      return;
    }
    Bore bore = bores.get(which);
    double dx = x - bore.x();
    double dy = y - bore.y();
    double r = Math.hypot(dx, dy);
    bore.profile().distance(r, z - bore.z(), near);
    double scale = r > 0 ? near.alongRadius / r : 0;
    target[0] = -dx * scale;
    target[1] = -dy * scale;
    target[2] = -near.alongAxis;
  }

  private void outerNormal(double x, double y, double z, double[] target) {
    if (mesh.isPresent()) {
      mesh.get().normal(x, y, z, target);
      return;
    }
    double up = Math.max(box.min().z() - z, z - box.max().z());
    double upwards = z > box.middle().z() ? 1 : -1;
    target[0] = 0;
    target[1] = 0;
    target[2] = 0;
    if (stock.shape() == Stock.Shape.BLOCK) {
      double a = Math.max(box.min().x() - x, x - box.max().x());
      double b = Math.max(box.min().y() - y, y - box.max().y());
      if (up >= a && up >= b) {
        target[2] = upwards;
      } else if (a >= b) {
        target[0] = x > middleX ? 1 : -1;
      } else {
        target[1] = y > middleY ? 1 : -1;
      }
      return;
    }
    double r = Math.hypot(x - middleX, y - middleY);
    if (up >= r - (box.max().x() - middleX) || r == 0) {
      target[2] = upwards;
    } else {
      target[0] = (x - middleX) / r;
      target[1] = (y - middleY) / r;
    }
  }
}
