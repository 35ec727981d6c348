package flankfit.metal;

/** Finds out what may happen in cubes. One for each thread. */
final class NodeMaker {
  /** Half a cube's diagonal for a side of 1, a little more so that rounding does not show. */
  private static final double HALF_DIAGONAL = Math.sqrt(3) / 2 * (1 + 1e-9);

  private final StockBody stock;
  private final Cuts cuts;
  private final MoveTree tree;
  private final Lattice lattice;
  private final double scale;
  private final SweptCut cut = new SweptCut();
  private final MoveList near = new MoveList();
  private final MoveList found = new MoveList();

  /**
   * For one thread.
   *
   * @param scale how many times coarser the cells shall be than tools and stock want (1)
   */
  NodeMaker(Workpiece piece, Lattice lattice, double scale) {
    this.stock = piece.stock();
    this.cuts = piece.cuts();
    this.tree = piece.tree();
    this.lattice = lattice;
    this.scale = scale;
  }

  /** Half the diagonal of a cube of so many finest cells (mm). */
  static double halfDiagonal(double cells, Lattice lattice) {
    return cells * lattice.cell() * HALF_DIAGONAL;
  }

  /** A cube of which only its place is known. */
  Node root(int size) {
    return make(0, 0, 0, size, tree.moves());
  }

  /** A child, whose moves are among those of its parent. */
  Node child(Node parent, int i) {
    int half = parent.size / 2;
    return make(
        parent.x + (i & 1) * half,
        parent.y + (i >> 1 & 1) * half,
        parent.z + (i >> 2 & 1) * half,
        half,
        parent.moves);
  }

  private Node make(int x, int y, int z, int size, int[] candidates) {
    double half = size / 2.0;
    double cx = lattice.x(x + half);
    double cy = lattice.y(y + half);
    double cz = lattice.z(z + half);
    double diagonal = halfDiagonal(size, lattice);
    double skin = stock.distance(cx, cy, cz);
    if (skin >= diagonal) {
      return new Node(x, y, z, size, Node.Start.AIR, candidates, false);
    }
    Node.Start start = skin <= -diagonal ? Node.Start.METAL : Node.Start.SKIN;
    near.clear();
    if (candidates.length > 512) {
      tree.collect(cx, cy, cz, half * lattice.cell(), Integer.MAX_VALUE, near);
    } else {
      for (int move : candidates) {
        near.add(move);
      }
    }
    found.clear();
    boolean emptied = false;
    for (int i = 0; i < near.size() && !emptied; i++) {
      cuts.load(near.get(i), cut);
      double away = cut.within(cx, cy, cz, diagonal);
      if (away < diagonal) {
        found.add(near.get(i));
        emptied = away <= 0 && cut.coversBall(cx, cy, cz, diagonal);
      }
    }
    return new Node(x, y, z, size, start, found.toArray(), emptied);
  }

  /**
   * Side of the cells, in finest cells, that show what may be in a cube (1): the finest of all that
   * leave surface here. The move that empties all of it leaves none.
   */
  double wanted(Node node) {
    double wanted = node.start == Node.Start.SKIN ? stock.cell() : Double.POSITIVE_INFINITY;
    int leaving = node.moves.length - (node.emptied ? 1 : 0);
    for (int i = 0; i < leaving; i++) {
      wanted = Math.min(wanted, cuts.cell(node.moves[i]));
    }
    return wanted * scale / lattice.cell() * (1 + 1e-9);
  }

  /** The lattice points of a leaf. */
  Brick brick(Node leaf) {
    return new BrickFill(leaf).fill();
  }

  /** One brick being made. */
  private final class BrickFill {
    private final Node leaf;
    private final int cell;
    private final int[] time = new int[Node.POINTS * Node.POINTS * Node.POINTS];
    private int move;

    BrickFill(Node leaf) {
      this.leaf = leaf;
      this.cell = leaf.cell();
    }

    Brick fill() {
      for (int k = 0; k < Node.POINTS; k++) {
        for (int j = 0; j < Node.POINTS; j++) {
          for (int i = 0; i < Node.POINTS; i++) {
            boolean metal =
                leaf.start == Node.Start.METAL || stock.distance(px(i), py(j), pz(k)) <= 0;
            time[Brick.index(i, j, k)] = metal ? Brick.NEVER : Brick.OUTSIDE;
          }
        }
      }
      int last = leaf.moves.length - 1;
      for (int m = 0; m <= last; m++) {
        move = leaf.moves[m];
        if (m == last && leaf.emptied) {
          all();
        } else {
          cuts.load(move, cut);
          columns();
        }
      }
      return new Brick(time);
    }

    private double px(double i) {
      return lattice.x(leaf.x + i * cell);
    }

    private double py(double j) {
      return lattice.y(leaf.y + j * cell);
    }

    private double pz(double k) {
      return lattice.z(leaf.z + k * cell);
    }

    /** All metal that is left goes with the move. */
    private void all() {
      for (int at = 0; at < time.length; at++) {
        if (time[at] == Brick.NEVER) {
          time[at] = move;
        }
      }
    }

    /** Upright lines of points share what depends on their place in plan alone. */
    private void columns() {
      for (int j = 0; j < Node.POINTS; j++) {
        for (int i = 0; i < Node.POINTS; i++) {
          if (cut.column(px(i), py(j))) {
            for (int k = 0; k < Node.POINTS; k++) {
              int at = Brick.index(i, j, k);
              if (time[at] == Brick.NEVER && cut.columnHolds(pz(k))) {
                time[at] = move;
              }
            }
          }
        }
      }
    }
  }
}
