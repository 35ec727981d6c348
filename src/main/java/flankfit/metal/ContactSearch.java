package flankfit.metal;

import flankfit.motion.Extents;
import java.util.List;

/**
 * The deepest metal in a part of a tool on its way, at one moment. Cubes of the octree are halved
 * on and on as long as they may hold metal deeper than what is found: the part's depth bends away
 * from its tangent on one side only, so what is deeper in a cube lies in the cube cut off by a
 * plane; and where all corners of that lie in one earlier cut, there is no metal. A place found is
 * moved up to the surface of the metal. One for each thread.
 */
final class ContactSearch {
  /** How exact a depth is when nothing ends the search early (mm). */
  static final double EXACT = 5e-4;

  /** Boxes looked into in one round of the search. */
  private static final int MOST_BOXES = 24_000;

  /** Boxes whose time a cut by rows of teeth takes, about. */
  private static final int ROWS = 8;

  /**
   * What is passed over in each round: first what is hardly deeper than what was found, then less.
   */
  private static final double[] PASSED_OVER = {0.05, 0.005, EXACT};

  /** The same as a share of the depth found (1). */
  private static final double[] PASSED_OVER_SHARE = {0.1, 0.01, 0};

  private static final int HALVINGS = 32;

  /** Goes from a place found into the part, each along its new direction. */
  private static final int CLIMBS = 3;

  private static final int[] NO_MOVES = {};

  private final Cuts cuts;
  private final MoveTree tree;
  private final Skeleton skeleton;
  private final StockBody stock;
  private final Clip clip = new Clip();
  private final LoadedCuts loaded;
  private final MoveList around = new MoveList();
  private StockBody ground;
  private BodyPath body;
  private int moment;
  private boolean inMetal;
  private boolean anyWillDo;
  private double from;
  private double best;
  private double left;
  private double bound;
  private int round;
  private int boxes;

  double x;
  double y;
  double z;

  /** Share of the move at which the deepest place was found. */
  double share;

  ContactSearch(Metal metal) {
    cuts = metal.cuts();
    loaded = new LoadedCuts(cuts);
    tree = metal.piece().tree();
    skeleton = metal.skeleton();
    stock = metal.stock();
    ground = stock;
  }

  /**
   * Searches the metal after so many moves.
   *
   * @param least depth that matters (mm)
   * @param any whether any place that deep will do
   * @return the greatest depth (mm), or {@code least} if there is none
   */
  double inMetal(List<BodyPath> bodies, int after, double least, boolean any) {
    begin(stock, after, least, any, true);
    for (int i = 0; i < PASSED_OVER.length && beginRound(i); i++) {
      for (BodyPath one : bodies) {
        body = one;
        visit(skeleton.root());
      }
      endRound();
    }
    return best;
  }

  /** The same in a body that is there for good. */
  double inBody(List<BodyPath> bodies, StockBody obstacle, double least, boolean any) {
    begin(obstacle, 0, least, any, false);
    Extents box = obstacle.box();
    double[] sides = {
      box.min().x(), box.min().y(), box.min().z(), box.max().x(), box.max().y(), box.max().z()
    };
    for (int i = 0; i < PASSED_OVER.length && beginRound(i); i++) {
      for (BodyPath one : bodies) {
        body = one;
        box(sides, NO_MOVES, 0);
      }
      endRound();
    }
    return best;
  }

  /** How much deeper there may be metal than was found (mm). */
  double within() {
    return Math.max(EXACT, bound - best);
  }

  /** Whether the search ended without an answer: nothing found, and not everything looked at. */
  boolean isUnsure() {
    return !isFound() && bound > from + PASSED_OVER[1];
  }

  private void begin(StockBody of, int after, double least, boolean any, boolean metal) {
    ground = of;
    moment = after;
    from = least;
    best = least;
    bound = Double.POSITIVE_INFINITY;
    anyWillDo = any;
    inMetal = metal;
  }

  private boolean isFound() {
    return best > from;
  }

  /** What a place must be deeper than to matter (mm). */
  private double wanted() {
    if (!isFound()) {
      return from;
    }
    return best + PASSED_OVER[round] + PASSED_OVER_SHARE[round] * best;
  }

  /** Begins a round; false when no more is to be found by one. */
  private boolean beginRound(int number) {
    if (isDone() || (number > 0 && !isFound())) {
      return false;
    }
    round = number;
    boxes = 0;
    left = from;
    return true;
  }

  private void endRound() {
    bound = Math.min(bound, Math.max(isFound() ? wanted() : from, left));
  }

  private boolean isDone() {
    return anyWillDo && isFound();
  }

  private void visit(Node node) {
    int last = node.moves.length - 1;
    if (node.start == Node.Start.AIR || (node.emptied && node.moves[last] < moment) || isDone()) {
      return;
    }
    Lattice lattice = skeleton.lattice();
    double[] sides = {
      lattice.x(node.x),
      lattice.y(node.y),
      lattice.z(node.z),
      lattice.x(node.x + (double) node.size),
      lattice.y(node.y + (double) node.size),
      lattice.z(node.z + (double) node.size)
    };
    clip.box(sides);
    if (!body.narrow(clip, wanted()) || !clip.close()) {
      return;
    }
    if (node.isLeaf()) {
      int count = 0;
      while (count < node.moves.length && node.moves[count] < moment) {
        count++;
      }
      box(sides, node.moves, count);
      return;
    }
    int[] order = order(node);
    for (int i : order) {
      visit(node.children[i]);
    }
  }

  /** The children, the ones around the corner where the part is deepest first. */
  private int[] order(Node node) {
    double half = node.size / 2.0;
    Lattice lattice = skeleton.lattice();
    body.depth(lattice.x(node.x + half), lattice.y(node.y + half), lattice.z(node.z + half));
    int first = (body.alongX > 0 ? 1 : 0) + (body.alongY > 0 ? 2 : 0) + (body.alongZ > 0 ? 4 : 0);
    int[] order = new int[8];
    for (int i = 0; i < 8; i++) {
      order[i] = first ^ i;
    }
    return order;
  }

  private void box(double[] sides, int[] moves, int count) {
    clip.box(sides);
    if (isDone() || !within(ground.box()) || !body.narrow(clip, wanted()) || !clip.close()) {
      return;
    }
    double half = clip.half();
    double mx = clip.middle(0);
    double my = clip.middle(1);
    double mz = clip.middle(2);
    if (ground.distance(mx, my, mz) >= half || ground.isOutside(clip.corners, clip.count)) {
      return;
    }
    int[] near = new int[count];
    int kept = 0;
    double step = Double.NaN;
    for (int i = 0; i < count; i++) {
      SweptCut cut = loaded.cut(moves[i]);
      double away = cut.within(mx, my, mz, half + LoadedCuts.ROUNDING);
      if (away < half + LoadedCuts.ROUNDING) {
        if (away <= LoadedCuts.ROUNDING && loaded.covers(moves[i], clip, half)) {
          return;
        }
        near[kept++] = moves[i];
        boxes += loaded.isConvex(moves[i]) ? 0 : ROWS;
        step = face(moves[i], cut, step);
      }
    }
    double[] next = {
      clip.low[0], clip.low[1], clip.low[2], clip.high[0], clip.high[1], clip.high[2]
    };
    offer(clip.mean(0), clip.mean(1), clip.mean(2), near, kept);
    if (isDone()) {
      return;
    }
    if (half < EXACT || ++boxes > MOST_BOXES) {
      left = Math.max(left, wanted() + half);
      return;
    }
    double[] lower = new double[6];
    double[] upper = new double[6];
    split(next, step, lower, upper);
    box(upper, near, kept);
    box(lower, near, kept);
  }

  private void split(double[] sides, double step, double[] lower, double[] upper) {
    int axis = 0;
    for (int i = 1; i < 3; i++) {
      if (sides[i + 3] - sides[i] > sides[axis + 3] - sides[axis]) {
        axis = i;
      }
    }
    double at = (sides[axis] + sides[axis + 3]) / 2;
    if (step > sides[2] && step < sides[5]) {
      axis = 2;
      at = step;
    }
    System.arraycopy(sides, 0, lower, 0, 6);
    System.arraycopy(sides, 0, upper, 0, 6);
    lower[axis + 3] = at;
    upper[axis] = at;
  }

  /** The height of a level face of a cut within the box, where boxes are best parted. */
  private double face(int move, SweptCut cut, double otherwise) {
    ToolPath path = cut.path();
    Profile profile = cuts.body(move).orElseThrow().cutting();
    if (path.fromZ != path.toZ && path.kind != ToolPath.Kind.PLUNGE) {
      return otherwise;
    }
    double bottom = Math.min(path.fromZ, path.toZ) + profile.bottom();
    double top = Math.max(path.fromZ, path.toZ) + profile.top();
    if (bottom > clip.low[2] + EXACT && bottom < clip.high[2] - EXACT) {
      return bottom;
    }
    return top > clip.low[2] + EXACT && top < clip.high[2] - EXACT ? top : otherwise;
  }

  /** Narrows the clip to a box; false when nothing is left. */
  private boolean within(Extents box) {
    for (int axis = 0; axis < 3; axis++) {
      clip.low[axis] = Math.max(clip.low[axis], box.min().axis(axis));
      clip.high[axis] = Math.min(clip.high[axis], box.max().axis(axis));
      if (clip.low[axis] > clip.high[axis]) {
        return false;
      }
    }
    return true;
  }

  private void offer(double px, double py, double pz, int[] near, int count) {
    double depth = body.depth(px, py, pz);
    if (depth <= wanted() || ground.distance(px, py, pz) > 0) {
      return;
    }
    for (int i = 0; i < count; i++) {
      if (loaded.cut(near[i]).holds(px, py, pz)) {
        return;
      }
    }
    take(px, py, pz, depth);
    if (!anyWillDo) {
      climb();
    }
  }

  private void take(double px, double py, double pz, double depth) {
    x = px;
    y = py;
    z = pz;
    best = depth;
    share = body.piece.moveShare(body.share);
  }

  /** Goes from the place found into the part as far as there is metal. */
  private void climb() {
    for (int go = 0; go < CLIMBS; go++) {
      double depth = body.depth(x, y, z);
      double ax = body.alongX;
      double ay = body.alongY;
      double az = body.alongZ;
      double px = x;
      double py = y;
      double pz = z;
      double low = 0;
      double high = body.room;
      if (isBetter(px + high * ax, py + high * ay, pz + high * az, depth + 0.9 * high)) {
        low = high;
      }
      for (int i = 0; i < HALVINGS && high - low > 1e-8; i++) {
        double middle = (low + high) / 2;
        if (isBetter(px + middle * ax, py + middle * ay, pz + middle * az, depth + 0.9 * middle)) {
          low = middle;
        } else {
          high = middle;
        }
      }
      double gained = body.depth(px + low * ax, py + low * ay, pz + low * az);
      if (low == 0 || gained <= best) {
        return;
      }
      take(px + low * ax, py + low * ay, pz + low * az, gained);
    }
  }

  private boolean isBetter(double px, double py, double pz, double depth) {
    if (body.depth(px, py, pz) < depth || ground.distance(px, py, pz) > 0) {
      return false;
    }
    if (inMetal) {
      around.clear();
      tree.collect(px, py, pz, 0, moment, around);
      for (int i = 0; i < around.size(); i++) {
        if (loaded.cut(around.get(i)).holds(px, py, pz)) {
          return false;
        }
      }
    }
    return true;
  }
}
