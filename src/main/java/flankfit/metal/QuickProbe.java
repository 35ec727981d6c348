package flankfit.metal;

import flankfit.solid.Crossing;
import java.util.ArrayList;
import java.util.List;

/**
 * Answers what a mesh asks for by the million, as exactly as a mesh wants it: closed forms alone,
 * no search for distances. One for each thread; holds the cuts of one leaf ready.
 */
final class QuickProbe {
  /** A measure so small ends the search with one last line (mm). */
  private static final double CLOSE = 1e-6;

  /** An interval so short ends the search (mm). */
  private static final double NARROW = 1e-8;

  /** What rounding may put a corner of a leaf out of it (mm). */
  private static final double SLACK = 1e-9;

  private static final int MOST_STEPS = 60;

  /** Distance before a crossing at which a cut's direction is read (mm). */
  private static final double ASIDE = 1e-3;

  /** The first of two cuts over the same surface counts (share of an edge). */
  private static final double SAME = 1e-4;

  private final StockBody stock;
  private final Cuts cuts;
  private final Node root;
  private final Lattice lattice;
  private final List<SweptCut> ready = new ArrayList<>();
  private final double[] normal = new double[3];
  private Node leaf;
  private int loaded;
  private int count;
  private double fromX;
  private double fromY;
  private double fromZ;
  private double alongX;
  private double alongY;
  private double alongZ;

  QuickProbe(Workpiece piece, Skeleton skeleton) {
    this.stock = piece.stock();
    this.cuts = piece.cuts();
    this.root = skeleton.root();
    this.lattice = skeleton.lattice();
    this.leaf = root;
  }

  private boolean take(double x, double y, double z, int after) {
    double i = Math.floor((x - lattice.originX()) / lattice.cell());
    double j = Math.floor((y - lattice.originY()) / lattice.cell());
    double k = Math.floor((z - lattice.originZ()) / lattice.cell());
    if (Math.min(i, Math.min(j, k)) < 0 || Math.max(i, Math.max(j, k)) >= root.size) {
      return false;
    }
    boolean same =
        i >= leaf.x
            && j >= leaf.y
            && k >= leaf.z
            && i < leaf.x + leaf.size
            && j < leaf.y + leaf.size
            && k < leaf.z + leaf.size
            && leaf.isLeaf();
    if (!same) {
      leaf = root.leafAt((int) i, (int) j, (int) k);
      loaded = 0;
    }
    count = 0;
    while (count < leaf.moves.length && leaf.moves[count] < after) {
      count++;
    }
    return true;
  }

  /** One of the leaf's cuts, by its place in the leaf's list. */
  private SweptCut cut(int index) {
    while (loaded <= index) {
      if (ready.size() <= loaded) {
        ready.add(new SweptCut());
      }
      cuts.load(leaf.moves[loaded], ready.get(loaded));
      loaded++;
    }
    return ready.get(index);
  }

  /** Whether a place is metal after so many moves. */
  boolean isMetal(double x, double y, double z, int after) {
    if (!take(x, y, z, after)) {
      return false;
    }
    if (leaf.start == Node.Start.AIR || (leaf.emptied && count == leaf.moves.length)) {
      return false;
    }
    if (leaf.start != Node.Start.METAL && stock.distance(x, y, z) > 0) {
      return false;
    }
    for (int m = 0; m < count; m++) {
      if (cut(m).holds(x, y, z)) {
        return false;
      }
    }
    return true;
  }

  /**
   * How deep a place lies in air (mm): in the stock's outside, or across the axis of the tool that
   * has been there. 0 in metal.
   */
  double air(double x, double y, double z, int after, double enough) {
    double deep = stock.distance(x, y, z);
    if (!take(x, y, z, after) || deep >= enough) {
      return Math.max(0, deep);
    }
    if (leaf.start == Node.Start.METAL && leaf.emptied && count == leaf.moves.length) {
      deep = Math.max(deep, 0);
    }
    for (int m = count - 1; m >= 0 && deep < enough; m--) {
      SweptCut cut = cut(m);
      if (cut.isMeasured()) {
        deep = Math.max(deep, -cut.excess(x, y, z));
      } else if (cut.holds(x, y, z)) {
        deep = Math.max(deep, -cut.distance(x, y, z));
      }
    }
    return Math.max(0, deep);
  }

  /**
   * Where metal ends on an edge of a cell of a leaf; false where closed forms do not tell.
   *
   * @param result takes place, normal and maker
   */
  boolean crossing(
      double mx,
      double my,
      double mz,
      double ax,
      double ay,
      double az,
      int after,
      Crossing result) {
    if (!take((mx + ax) / 2, (my + ay) / 2, (mz + az) / 2, after)
        || !reaches(mx, my, mz)
        || !reaches(ax, ay, az)) {
      return false;
    }
    fromX = mx;
    fromY = my;
    fromZ = mz;
    alongX = ax - mx;
    alongY = ay - my;
    alongZ = az - mz;
    double length = Math.sqrt(alongX * alongX + alongY * alongY + alongZ * alongZ);
    double best = 2;
    int maker = Crossing.STOCK;
    if (leaf.start != Node.Start.METAL) {
      double inside = -stock.distance(ax, ay, az);
      if (inside < 0) {
        best = begins(Crossing.STOCK, -stock.distance(mx, my, mz), inside, length);
      }
    }
    for (int m = 0; m < count; m++) {
      if (!cut(m).isMeasured()) {
        return false;
      }
      double inside = value(m, 1);
      if (inside <= 0) {
        double share = begins(m, value(m, 0), inside, length);
        if (share < best - SAME || (maker == Crossing.STOCK && share <= best + SAME)) {
          maker = m;
        }
        best = Math.min(best, share);
      }
    }
    if (best > 1) {
      return false;
    }
    fill(best, maker, length, result);
    return true;
  }

  /** Whether the cuts of the leaf are all that a place can meet. */
  private boolean reaches(double x, double y, double z) {
    return x >= lattice.x(leaf.x) - SLACK
        && y >= lattice.y(leaf.y) - SLACK
        && z >= lattice.z(leaf.z) - SLACK
        && x <= lattice.x(leaf.x + (double) leaf.size) + SLACK
        && y <= lattice.y(leaf.y + (double) leaf.size) + SLACK
        && z <= lattice.z(leaf.z + (double) leaf.size) + SLACK;
  }

  private double value(int which, double share) {
    double x = fromX + share * alongX;
    double y = fromY + share * alongY;
    double z = fromZ + share * alongZ;
    if (which < 0) {
      return -stock.distance(x, y, z);
    }
    SweptCut cut = cut(which);
    double found = cut.excess(x, y, z);
    double doubt = cut.doubt();
    if (doubt == 0 || Math.abs(found) > doubt) {
      return found;
    }
    double size = Math.max(Math.abs(found), Double.MIN_NORMAL);
    return cut.holds(x, y, z) ? -size : size;
  }

  private double begins(int which, double atMetal, double atAir, double length) {
    double low = 0;
    double high = 1;
    double outside = atMetal;
    double inside = atAir;
    boolean halve = false;
    for (int step = 0; step < MOST_STEPS && (high - low) * length > NARROW; step++) {
      boolean line = outside < Double.POSITIVE_INFINITY && outside - inside > 0;
      double width = high - low;
      double at = line && !halve ? low + width * outside / (outside - inside) : (low + high) / 2;
      double found = value(which, at);
      if (found <= 0) {
        high = at;
        inside = found;
      } else {
        low = at;
        outside = found;
      }
      if (line && Math.abs(found) <= CLOSE && outside - inside > 0) {
        return low + (high - low) * outside / (outside - inside);
      }
      halve = high - low > width / 2;
    }
    return (low + high) / 2;
  }

  private void fill(double share, int maker, double length, Crossing result) {
    double x = fromX + share * alongX;
    double y = fromY + share * alongY;
    double z = fromZ + share * alongZ;
    result.place(x, y, z);
    if (maker == Crossing.STOCK) {
      stock.normal(x, y, z, normal);
      result.normal(normal[0], normal[1], normal[2]);
      result.maker(Crossing.STOCK);
      return;
    }
    // From a little way outside the volume, where its edges too have one direction.
    double back = Math.max(0, share - ASIDE / Math.max(length, ASIDE));
    cut(maker)
        .closeNormal(fromX + back * alongX, fromY + back * alongY, fromZ + back * alongZ, normal);
    result.normal(-normal[0], -normal[1], -normal[2]);
    result.maker(leaf.moves[maker]);
  }
}
