package flankfit.metal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How far the lattice points of one leaf stay out of each of its cuts, measured across the axis, as
 * far as it was asked for. At one height such a measure changes no faster than the place, so one
 * value decides all points around. One for each thread; holds one leaf at a time.
 */
final class LeafField {
  private static final int POINTS = Node.POINTS;
  private static final int COLUMNS = POINTS * POINTS;
  private static final int ALL = COLUMNS * POINTS;

  /** Beyond so many cells a measure is not needed: no leaf's layer reaches farther. */
  private static final double REACH = 6;

  /** A measure that may be off by more than this counts for nothing (cells). */
  private static final double DOUBTFUL = 0.02;

  private final Cuts cuts;
  private final Lattice lattice;
  private final List<Layered> layers = new ArrayList<>();
  private Node leaf;
  private boolean[] loaded = new boolean[8];
  private double side;

  LeafField(Cuts cuts, Lattice lattice) {
    this.cuts = cuts;
    this.lattice = lattice;
  }

  /** Turns to a leaf; what is known of it is kept if it was the last. */
  void take(Node node) {
    if (node == leaf) {
      return;
    }
    leaf = node;
    side = node.cell() * lattice.cell();
    int size = node.moves.length;
    if (loaded.length < size) {
      loaded = new boolean[2 * size];
    }
    Arrays.fill(loaded, false);
  }

  /** Side of the leaf's cells (mm). */
  double side() {
    return side;
  }

  double x(double i) {
    return lattice.x(leaf.x + i * leaf.cell());
  }

  double y(double j) {
    return lattice.y(leaf.y + j * leaf.cell());
  }

  double z(double k) {
    return lattice.z(leaf.z + k * leaf.cell());
  }

  /** One of the leaf's cuts, by its place in the leaf's list. */
  Layered cut(int index) {
    while (layers.size() <= index) {
      layers.add(new Layered());
    }
    Layered layered = layers.get(index);
    if (!loaded[index]) {
      layered.load(leaf.moves[index]);
      loaded[index] = true;
    }
    return layered;
  }

  /** A cut with what is known of it at the leaf's points. */
  final class Layered {
    private final SweptCut cut = new SweptCut();
    private final double[] measures = new double[ALL];
    private final double[] distance = new double[COLUMNS];
    private final double[] angle = new double[COLUMNS];
    private final double[] reach = new double[POINTS];
    private boolean stack;
    private boolean round;
    private boolean measured;
    private double doubt;

    private void load(int move) {
      cuts.load(move, cut);
      stack = cut.isStack();
      round = cut.path().kind == ToolPath.Kind.ROUND;
      doubt = cut.doubt();
      measured = cut.isMeasured() && doubt <= DOUBTFUL * side;
      if (stack) {
        for (int k = 0; k < POINTS; k++) {
          reach[k] = cut.reach(z(k));
        }
        for (int j = 0; j < POINTS; j++) {
          for (int i = 0; i < POINTS; i++) {
            distance[j * POINTS + i] = cut.planDistance(x(i), y(j));
          }
        }
      } else {
        Arrays.fill(measures, Double.NaN);
        Arrays.fill(distance, Double.NaN);
      }
    }

    SweptCut cut() {
      return cut;
    }

    boolean isStack() {
      return stack;
    }

    /** Whether points may be decided by measures of their neighbours. */
    boolean isMeasured() {
      return measured;
    }

    /** Of a stack: the radius on a layer (mm), below 0 where the tool does not come. */
    double reach(int k) {
      return reach[k];
    }

    /** Of a stack: distance of a column from the path in plan (mm). */
    double planDistance(int column) {
      return distance[column];
    }

    /** How far measures may be off (mm). */
    double doubt() {
      return doubt;
    }

    /**
     * How far a point stays out (mm), below or at 0 inside; infinite where that is more than a few
     * cells. Without measures all points inside count as a few cells deep.
     */
    double measure(int i, int j, int k) {
      int column = j * POINTS + i;
      if (stack) {
        return reach[k] < 0 ? Double.POSITIVE_INFINITY : distance[column] - reach[k];
      }
      int at = k * COLUMNS + column;
      double known = measures[at];
      if (Double.isNaN(known)) {
        known = find(i, j, k, column);
        measures[at] = known;
      }
      return known;
    }

    /** The same beside one of the leaf's points (mm). */
    double measureAt(int i, int j, double x, double y, double z) {
      if (stack) {
        return cut.excess(x, y, z);
      }
      if (!measured) {
        return cut.holds(x, y, z) ? -REACH * side : Double.POSITIVE_INFINITY;
      }
      double known = round ? distance[j * POINTS + i] : Double.NaN;
      if (Double.isNaN(known)) {
        cut.column(x, y);
      } else {
        cut.placeBeside(x, y, x(i), y(j), angle[j * POINTS + i]);
      }
      return cut.signed(x, y, z, cut.columnExcess(z, REACH * side));
    }

    private double find(int i, int j, int k, int column) {
      double limit = REACH * side;
      if (!measured) {
        return cut.holds(x(i), y(j), z(k)) ? -limit : Double.POSITIVE_INFINITY;
      }
      if (!round) {
        cut.column(x(i), y(j));
      } else if (Double.isNaN(distance[column])) {
        cut.column(x(i), y(j));
        distance[column] = cut.round().distance();
        angle[column] = cut.round().angle();
      } else {
        cut.place(distance[column], angle[column]);
      }
      double found = cut.columnExcess(z(k), limit);
      if (doubt > 0) {
        found = cut.signed(x(i), y(j), z(k), found);
      }
      return found >= limit ? Double.POSITIVE_INFINITY : found;
    }
  }
}
