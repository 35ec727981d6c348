package flankfit.metal;

import flankfit.solid.Crossing;
import java.util.ArrayList;
import java.util.List;

/** Answers questions for single points. One for each thread; holds the cuts of one leaf ready. */
final class Probe {
  /** Place of a crossing on its segment (mm). */
  private static final double EXACT = 1e-10;

  private static final int MOST_STEPS = 100;

  /** Deepest search for metal that ends earlier than the first crossing found. */
  private static final int EARLIER = 8;

  private final StockBody stock;
  private final Cuts cuts;
  private final MoveTree tree;
  private final Node root;
  private final Lattice lattice;
  private final List<SweptCut> ready = new ArrayList<>();
  private final MoveList moves = new MoveList();
  private final double[] normal = new double[3];
  private final Segment segment = new Segment();
  private final SweptCut other = new SweptCut();
  private final MoveList around = new MoveList();
  private Node leaf;
  private int after = -1;
  private int maker;
  private double measured;

  Probe(Workpiece piece, Skeleton skeleton) {
    this.stock = piece.stock();
    this.cuts = piece.cuts();
    this.tree = piece.tree();
    this.root = skeleton.root();
    this.lattice = skeleton.lattice();
  }

  /** The leaf that holds a point, or the root when it lies outside. */
  private Node leafAt(double x, double y, double z) {
    double i = lattice.i(x);
    double j = lattice.j(y);
    double k = lattice.k(z);
    boolean inside = Math.min(i, Math.min(j, k)) >= 0 && Math.max(i, Math.max(j, k)) < root.size;
    return inside ? root.leafAt((int) i, (int) j, (int) k) : root;
  }

  /** Holds the cuts of a leaf ready. */
  private void use(Node node, int k) {
    if (node == leaf && k == after) {
      return;
    }
    leaf = node;
    after = k;
    moves.clear();
    for (int i = 0; i < node.moves.length && node.moves[i] < k; i++) {
      moves.add(node.moves[i]);
    }
    load();
  }

  private void load() {
    while (ready.size() < moves.size()) {
      ready.add(new SweptCut());
    }
    for (int i = 0; i < moves.size(); i++) {
      cuts.load(moves.get(i), ready.get(i));
    }
  }

  /** Holds all cuts ready that may reach a box about a point. */
  private void useAround(double x, double y, double z, double half, int k) {
    leaf = null;
    after = k;
    moves.clear();
    tree.collect(x, y, z, half, k, moves);
    load();
  }

  private boolean isAir(double x, double y, double z) {
    if (stock.distance(x, y, z) > 0) {
      return true;
    }
    for (int i = 0; i < moves.size(); i++) {
      if (ready.get(i).holds(x, y, z)) {
        return true;
      }
    }
    return false;
  }

  /** As {@link flankfit.solid.Solid#value}, after so many moves. */
  double value(double x, double y, double z, int k) {
    double skin = stock.distance(x, y, z);
    Node node = leafAt(x, y, z);
    if (node == root && !root.isLeaf()) {
      return skin;
    }
    use(node, k);
    double depth = skin;
    for (int i = 0; i < moves.size(); i++) {
      if (ready.get(i).holds(x, y, z)) {
        depth = Math.max(depth, -ready.get(i).distance(x, y, z));
      }
    }
    return depth > 0 ? depth : -toAir(x, y, z, k, -skin, node);
  }

  private double toAir(double x, double y, double z, int k, double skin, Node node) {
    double best = skin;
    for (int i = 0; i < moves.size(); i++) {
      best = Math.min(best, ready.get(i).exactWithin(x, y, z, best));
    }
    double room = Math.min(room(x, lattice.x(node.x)), room(lattice.x(node.x + node.size), x));
    room = Math.min(room, room(y, lattice.y(node.y)));
    room = Math.min(room, room(lattice.y(node.y + (double) node.size), y));
    room = Math.min(room, room(z, lattice.z(node.z)));
    room = Math.min(room, room(lattice.z(node.z + (double) node.size), z));
    if (best > room) {
      around.clear();
      tree.collect(x, y, z, best, k, around);
      for (int i = 0; i < around.size(); i++) {
        cuts.load(around.get(i), other);
        best = Math.min(best, other.exactWithin(x, y, z, best));
      }
    }
    return best;
  }

  private static double room(double high, double low) {
    return high - low;
  }

  /** As {@link flankfit.solid.Solid#crossing}, after so many moves. */
  void crossing(
      double mx,
      double my,
      double mz,
      double ax,
      double ay,
      double az,
      int k,
      boolean earliest,
      Crossing result) {
    Node node = leafAt((mx + ax) / 2, (my + ay) / 2, (mz + az) / 2);
    if (node != root && lattice.holds(node, mx, my, mz) && lattice.holds(node, ax, ay, az)) {
      use(node, k);
    } else {
      double half = Math.max(Math.abs(ax - mx), Math.max(Math.abs(ay - my), Math.abs(az - mz))) / 2;
      useAround((mx + ax) / 2, (my + ay) / 2, (mz + az) / 2, half, k);
    }
    segment.between(mx, my, mz, ax, ay, az);
    double share = first(1);
    for (int i = 0; earliest && i < EARLIER; i++) {
      double before = earlier(share);
      if (before >= share) {
        break;
      }
      share = first(before);
    }
    fill(share, result);
  }

  /** The least share at which one of the volumes that hold a point of air begins. */
  private double first(double air) {
    double x = segment.x(air);
    double y = segment.y(air);
    double z = segment.z(air);
    double best = air;
    maker = Crossing.STOCK;
    if (stock.distance(x, y, z) > 0) {
      best = begins(-1, air);
    }
    for (int i = 0; i < moves.size(); i++) {
      if (ready.get(i).holds(x, y, z)) {
        double begins = begins(i, air);
        if (begins < best || (maker == Crossing.STOCK && begins <= best)) {
          best = begins;
          maker = i;
        }
      }
    }
    return best;
  }

  /** Whether another volume took the metal just before a crossing, or in between. */
  private double earlier(double share) {
    double before = share - 4 * EXACT / Math.max(segment.length(), EXACT);
    if (before > 0 && isAir(segment.x(before), segment.y(before), segment.z(before))) {
      return before;
    }
    for (int i = 1; i < 4; i++) {
      double s = share * i / 4;
      if (isAir(segment.x(s), segment.y(s), segment.z(s))) {
        return s;
      }
    }
    return share;
  }

  /** Whether a volume holds the point at a share, and a measure that has its root there. */
  private boolean held(int which, double share) {
    double x = segment.x(share);
    double y = segment.y(share);
    double z = segment.z(share);
    if (which < 0) {
      measured = -stock.distance(x, y, z);
      return measured < 0;
    }
    SweptCut cut = ready.get(which);
    measured = cut.excess(x, y, z);
    return cut.isSure() ? measured <= 0 : cut.holds(x, y, z);
  }

  /**
   * Where a volume begins between metal and a share at which it holds the point: the secant where
   * it helps, halving where it does not.
   */
  private double begins(int which, double air) {
    double low = 0;
    double high = air;
    held(which, low);
    double outside = measured;
    held(which, high);
    double inside = measured;
    double within = EXACT / Math.max(segment.length(), EXACT);
    boolean halve = false;
    for (int i = 0; i < MOST_STEPS && high - low > within; i++) {
      double width = high - low;
      boolean bracketed = outside > 0 && inside <= 0 && outside < Double.POSITIVE_INFINITY;
      double at = (low + high) / 2;
      if (bracketed && !halve) {
        double secant = low + width * outside / (outside - inside);
        // Beyond the root by more than the secant errs, so that the far end closes in too.
        double beyond = Math.max(within / 2, width * Math.min(0.01, width * segment.length() / 5));
        double step = i % 2 == 0 ? 0 : secant > at ? -beyond : beyond;
        at = Math.min(high - within / 4, Math.max(low + within / 4, secant + step));
      }
      if (held(which, at)) {
        high = at;
        inside = measured;
      } else {
        low = at;
        outside = measured;
      }
      halve = i % 2 == 1 && high - low > width / 2;
    }
    return high;
  }

  private void fill(double share, Crossing result) {
    double x = segment.x(share);
    double y = segment.y(share);
    double z = segment.z(share);
    result.place(x, y, z);
    if (maker == Crossing.STOCK) {
      stock.normal(x, y, z, normal);
      result.normal(normal[0], normal[1], normal[2]);
      result.maker(Crossing.STOCK);
    } else {
      double back = segment.before(share);
      ready.get(maker).normal(segment.x(back), segment.y(back), segment.z(back), normal);
      result.normal(-normal[0], -normal[1], -normal[2]);
      result.maker(moves.get(maker));
    }
  }
}
