package flankfit.metal;

import flankfit.solid.Crossing;
import java.util.ArrayList;
import java.util.List;

/**
 * Answers what a mesh asks for by the million, as exactly as a mesh wants it: closed forms alone,
 * no search for distances. One for each thread; holds the cuts of one leaf ready.
 */
final class QuickProbe extends RootSearch {
  /** A measure so small ends the search with one last line (mm). */
  private static final double CLOSE = 1e-6;

  /** An interval so short ends the search (mm). */
  private static final double NARROW = 1e-8;

  /** The first of two cuts over the same surface counts (share of an edge). */
  private static final double SAME = 1e-4;

  private final StockBody stock;
  private final Cuts cuts;
  private final Node root;
  private final Lattice lattice;
  private final List<SweptCut> ready = new ArrayList<>();
  private final double[] normal = new double[3];
  private final Segment edge = new Segment();
  private Node leaf;
  private int loaded;
  private int count;

  QuickProbe(Workpiece piece, Skeleton skeleton) {
    this.stock = piece.stock();
    this.cuts = piece.cuts();
    this.root = skeleton.root();
    this.lattice = skeleton.lattice();
    this.leaf = root;
  }

  private boolean take(double x, double y, double z, int after) {
    double i = lattice.i(x);
    double j = lattice.j(y);
    double k = lattice.k(z);
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
    // The cuts of the leaf are all that its own places can meet.
    if (!take((mx + ax) / 2, (my + ay) / 2, (mz + az) / 2, after)
        || !lattice.holds(leaf, mx, my, mz)
        || !lattice.holds(leaf, ax, ay, az)) {
      return false;
    }
    edge.between(mx, my, mz, ax, ay, az);
    double best = 2;
    int maker = Crossing.STOCK;
    if (leaf.start != Node.Start.METAL) {
      double inside = -stock.distance(ax, ay, az);
      if (inside < 0) {
        best = begins(Crossing.STOCK, -stock.distance(mx, my, mz), inside);
      }
    }
    for (int m = 0; m < count; m++) {
      if (!cut(m).isMeasured()) {
        return false;
      }
      double inside = value(m, 1);
      if (inside <= 0) {
        double share = begins(m, value(m, 0), inside);
        if (share < best - SAME || (maker == Crossing.STOCK && share <= best + SAME)) {
          maker = m;
        }
        best = Math.min(best, share);
      }
    }
    if (best > 1) {
      return false;
    }
    fill(best, maker, result);
    return true;
  }

  private double begins(int which, double outside, double inside) {
    return begins(which, outside, inside, CLOSE, edge.length(), NARROW);
  }

  @Override
  double value(int which, double share) {
    double x = edge.x(share);
    double y = edge.y(share);
    double z = edge.z(share);
    if (which < 0) {
      return -stock.distance(x, y, z);
    }
    SweptCut cut = cut(which);
    return cut.signed(x, y, z, cut.excess(x, y, z));
  }

  private void fill(double share, int maker, Crossing result) {
    double x = edge.x(share);
    double y = edge.y(share);
    double z = edge.z(share);
    result.place(x, y, z);
    if (maker == Crossing.STOCK) {
      stock.normal(x, y, z, normal);
      result.normal(normal[0], normal[1], normal[2]);
      result.maker(Crossing.STOCK);
      return;
    }
    double back = edge.before(share);
    cut(maker).closeNormal(edge.x(back), edge.y(back), edge.z(back), normal);
    result.normal(-normal[0], -normal[1], -normal[2]);
    result.maker(leaf.moves[maker]);
  }
}
