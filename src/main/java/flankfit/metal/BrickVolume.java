package flankfit.metal;

import java.util.Arrays;

/** How much metal a leaf holds after some moves. One for each thread. */
final class BrickVolume {
  private static final int POINTS = Node.POINTS;
  private static final int ALL = POINTS * POINTS * POINTS;

  /** Directions within 20 degrees are those of one smooth face (cosine). */
  private static final double SMOOTH = 0.9396926207859084;

  private final EdgeSearch search;
  private final Lattice lattice;
  private final CellVolume cell = new CellVolume(this::bulge);
  private final int[] rows = new int[POINTS * POINTS];

  /** By three times a point's index and an edge's axis: share from the lower end, what made it. */
  private final double[] crossings = new double[3 * ALL];

  private final int[] makers = new int[3 * ALL];
  private final double[] normals = new double[9 * ALL];

  /**
   * Of the cell under way: where its crossings are kept, on which of its edges, how many; its
   * lowest point and what made its surface.
   */
  private final int[] met = new int[CellVolume.EDGES];

  private final int[] edges = new int[CellVolume.EDGES];
  private int count;
  private int lowest;
  private int maker;
  private Node leaf;
  private int[] time = {};
  private int after;

  BrickVolume(StockBody stock, LeafField field, Lattice lattice) {
    this.search = new EdgeSearch(stock, field);
    this.lattice = lattice;
  }

  /** Metal of a leaf that may hold surface (mm³). */
  double metal(Node node, Brick brick, int moves) {
    leaf = node;
    time = brick.time;
    after = moves;
    search.take(node, moves);
    brick.rows(moves, rows);
    boolean fresh = true;
    int whole = 0;
    double sum = 0;
    for (int k = 0; k < Node.CELLS; k++) {
      for (int j = 0; j < Node.CELLS; j++) {
        int row = k * POINTS + j;
        int a = rows[row];
        int b = rows[row + 1];
        int c = rows[row + POINTS];
        int d = rows[row + POINTS + 1];
        int all = a & b & c & d;
        int any = a | b | c | d;
        whole += Integer.bitCount(all & all >> 1);
        for (int mixed = Brick.mixed(any, all); mixed != 0; mixed &= mixed - 1) {
          if (fresh) {
            Arrays.fill(crossings, Double.NaN);
            fresh = false;
          }
          int i = Integer.numberOfTrailingZeros(mixed);
          int corners = two(a, i) + 4 * two(b, i) + 16 * two(c, i) + 64 * two(d, i);
          sum += share(i, j, k, corners);
        }
      }
    }
    double side = node.cell() * lattice.cell();
    return (whole + sum) * side * side * side;
  }

  /** A row's bits of two points from one on. */
  private static int two(int row, int i) {
    return (row >> i) & 3;
  }

  private double share(int i, int j, int k, int metal) {
    int low = Brick.index(i, j, k);
    count = 0;
    boolean cheap = true;
    boolean alike = true;
    for (int e = 0; e < CellVolume.EDGES; e++) {
      int from = CellVolume.from(e);
      int axis = e >> 2;
      if ((metal >> from & 1) != (metal >> (from | 1 << axis) & 1)) {
        int at = 3 * (low + corner(from)) + axis;
        if (Double.isNaN(crossings[at])) {
          cross(at);
        }
        cell.cross(e, crossings[at]);
        cheap &= search.isCheap(makers[at]) || !Double.isNaN(normals[3 * at]);
        alike &= count == 0 || makers[at] == makers[met[0]];
        met[count] = at;
        edges[count] = e;
        count++;
      }
    }
    // Directions that have to be searched for are, where the stock's skin ends.
    if (!cheap && (alike || leaf.start != Node.Start.SKIN)) {
      return cell.share(metal, CellVolume.Surface.FLAT);
    }
    for (int n = 0; n < count; n++) {
      normal(met[n]);
      cell.direct(edges[n], normals, 3 * met[n]);
    }
    if (leastCosine() > SMOOTH) {
      return cell.share(metal, CellVolume.Surface.SMOOTH);
    }
    // One tool's pass may leave a round, another's or the stock's skin meets it in an edge.
    lowest = low;
    maker = makers[met[0]];
    boolean round = alike && maker >= 0;
    return cell.share(metal, round ? CellVolume.Surface.ROUNDED : CellVolume.Surface.CREASED);
  }

  private double bulge(double ax, double ay, double az, double bx, double by, double bz) {
    return search.bulge(maker, lowest, ax, ay, az, bx, by, bz);
  }

  private static int corner(int corner) {
    return Brick.index(corner & 1, corner >> 1 & 1, corner >> 2);
  }

  /** The least cosine between the first direction of the cell and the others. */
  private double leastCosine() {
    int a = 3 * met[0];
    double least = 1;
    for (int n = 1; n < count; n++) {
      int b = 3 * met[n];
      double dot =
          normals[a] * normals[b]
              + normals[a + 1] * normals[b + 1]
              + normals[a + 2] * normals[b + 2];
      least = Math.min(least, dot);
    }
    return least;
  }

  private void cross(int at) {
    int low = at / 3;
    int axis = at % 3;
    int high = low + corner(1 << axis);
    boolean lowMetal = time[low] >= after;
    int air = lowMetal ? high : low;
    double share = search.crossing(lowMetal ? low : high, air, axis, time[air] == Brick.OUTSIDE);
    crossings[at] = lowMetal ? share : 1 - share;
    makers[at] = search.maker();
    if (search.isDirected()) {
      search.direction(normals, 3 * at);
    } else {
      normals[3 * at] = Double.NaN;
    }
  }

  private void normal(int at) {
    if (Double.isNaN(normals[3 * at])) {
      int low = at / 3;
      int axis = at % 3;
      int high = low + corner(1 << axis);
      boolean lowMetal = time[low] >= after;
      search.normal(
          lowMetal ? low : high,
          lowMetal ? high : low,
          axis,
          lowMetal ? crossings[at] : 1 - crossings[at],
          makers[at],
          normals,
          3 * at);
    }
  }
}
