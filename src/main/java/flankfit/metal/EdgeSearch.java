package flankfit.metal;

import flankfit.solid.Crossing;

/**
 * Where metal ends on an edge of a leaf's cells, as exactly as a volume wants it: the line between
 * the measures at both ends gives a place, one more measure there makes it good.
 */
final class EdgeSearch extends RootSearch {
  /** A measure so small ends the search with one last line (cells). */
  private static final double CLOSE = 1e-5;

  /** An interval so short ends the search (cells). */
  private static final double NARROW = 1e-6;

  /** A measure so small ends the search for a bulge (cells). */
  private static final double BULGE = 2e-3;

  private static final int BULGE_STEPS = 8;

  /** Places so near are one (cells): the first of two cuts over the same surface counts. */
  private static final double SAME = 1e-4;

  private final StockBody stock;
  private final LeafField field;
  private final double[] out = new double[3];
  private int moves;

  /** The edge under way, from metal to air, and the column of its metal end. */
  private final Segment edge = new Segment();

  private int i;
  private int j;
  private int maker;
  private boolean isDirected;

  EdgeSearch(StockBody stock, LeafField field) {
    this.stock = stock;
    this.field = field;
  }

  /** Turns to a leaf after so many moves of the program. */
  void take(Node node, int after) {
    field.take(node);
    moves = 0;
    while (moves < node.moves.length && node.moves[moves] < after) {
      moves++;
    }
  }

  private static boolean isRound(LeafField.Layered cut) {
    return cut.cut().path().kind == ToolPath.Kind.ROUND;
  }

  /** Whether the direction at a crossing that a volume of the leaf's list made costs little. */
  boolean isCheap(int by) {
    return by < 0 || field.cut(by).isStack();
  }

  /** Whether the direction at the last crossing is known already. */
  boolean isDirected() {
    return isDirected;
  }

  /** Gives the direction out of the metal at the last crossing, if {@link #isDirected}. */
  void direction(double[] target, int to) {
    target[to] = -out[0];
    target[to + 1] = -out[1];
    target[to + 2] = -out[2];
  }

  /** What ended the metal on the last edge: a place in the leaf's list of moves, or the stock. */
  int maker() {
    return maker;
  }

  /**
   * Share of an edge at which metal ends.
   *
   * @param metal lattice point of the leaf that is metal
   * @param air the one beside it, along an axis, that is not
   * @param skin whether the stock itself ends between them
   * @return 0 at the metal's end to 1
   */
  double crossing(int metal, int air, int axis, boolean skin) {
    int mi = metal % Node.POINTS;
    int mj = metal / Node.POINTS % Node.POINTS;
    int mk = metal / (Node.POINTS * Node.POINTS);
    int sign = air > metal ? 1 : -1;
    int ai = mi + (axis == 0 ? sign : 0);
    int aj = mj + (axis == 1 ? sign : 0);
    int ak = mk + (axis == 2 ? sign : 0);
    begin(mi, mj, mk, axis, sign);
    double best = 1;
    maker = Crossing.STOCK;
    isDirected = false;
    if (skin) {
      double outside = -stock.distance(edge.x(0), edge.y(0), edge.z(0));
      double inside = -stock.distance(field.x(ai), field.y(aj), field.z(ak));
      best = begins(maker, outside, inside, CLOSE * field.side(), 1, NARROW);
    }
    for (int m = 0; m < moves; m++) {
      LeafField.Layered cut = field.cut(m);
      double inside = cut.measure(ai, aj, ak);
      if (inside <= 0) {
        boolean measured = cut.isStack() || cut.isMeasured();
        double close = measured ? CLOSE * field.side() : -1;
        double share = begins(m, cut.measure(mi, mj, mk), inside, close, 1, NARROW);
        if (share < best - SAME || (maker < 0 && !skin)) {
          maker = m;
          isDirected = measured && !cut.isStack() && isRound(cut) && isOnLine();
          if (isDirected) {
            cut.cut().round().direction(edge.x(share), edge.y(share), out);
          }
        }
        best = Math.min(best, share);
      }
    }
    return best;
  }

  private void begin(int ofI, int ofJ, int ofK, int axis, int sign) {
    i = ofI;
    j = ofJ;
    edge.from(field.x(i), field.y(j), field.z(ofK));
    double step = sign * field.side();
    edge.way(axis == 0 ? step : 0, axis == 1 ? step : 0, axis == 2 ? step : 0);
  }

  @Override
  double value(int which, double share) {
    double px = edge.x(share);
    double py = edge.y(share);
    double pz = edge.z(share);
    return which < 0 ? -stock.distance(px, py, pz) : field.cut(which).measureAt(i, j, px, py, pz);
  }

  /**
   * Share of a way within a cell at which the surface of one volume lies.
   *
   * @param volume a place in the leaf's list of moves
   * @param lowest the cell's lowest point; both ends of the way count from there in sides of cells
   * @return 0 to 1; 1 if both ends lie on one side
   */
  double bulge(
      int volume, int lowest, double ax, double ay, double az, double bx, double by, double bz) {
    i = lowest % Node.POINTS;
    j = lowest / Node.POINTS % Node.POINTS;
    int k = lowest / (Node.POINTS * Node.POINTS);
    double side = field.side();
    edge.from(field.x(i) + ax * side, field.y(j) + ay * side, field.z(k) + az * side);
    edge.way((bx - ax) * side, (by - ay) * side, (bz - az) * side);
    double first = value(volume, 0);
    double last = value(volume, 1);
    if (first <= 0 == last <= 0) {
      return 1;
    }
    double near = 0;
    double far = 1;
    for (int step = 0; step < BULGE_STEPS; step++) {
      double gap = first - last;
      double at =
          Math.abs(gap) < Double.POSITIVE_INFINITY
              ? near + (far - near) * first / gap
              : (near + far) / 2;
      double found = value(volume, at);
      if (Math.abs(found) < BULGE * side) {
        return at;
      }
      if (found <= 0 == first <= 0) {
        near = at;
        first = found;
      } else {
        far = at;
        last = found;
      }
    }
    return (near + far) / 2;
  }

  /**
   * The direction out of the metal at a crossing of the leaf.
   *
   * @param share from the metal's end (1)
   * @param by what ended the metal there, as {@link #maker} says
   * @param target takes the unit vector from {@code to} on
   */
  void normal(int metal, int air, int axis, double share, int by, double[] target, int to) {
    int mi = metal % Node.POINTS;
    int mj = metal / Node.POINTS % Node.POINTS;
    int mk = metal / (Node.POINTS * Node.POINTS);
    begin(mi, mj, mk, axis, air > metal ? 1 : -1);
    if (by < 0) {
      stock.normal(edge.x(share), edge.y(share), edge.z(share), out);
    } else {
      double back = edge.before(share);
      field.cut(by).cut().closeNormal(edge.x(back), edge.y(back), edge.z(back), out);
      out[0] = -out[0];
      out[1] = -out[1];
      out[2] = -out[2];
    }
    System.arraycopy(out, 0, target, to, 3);
  }
}
