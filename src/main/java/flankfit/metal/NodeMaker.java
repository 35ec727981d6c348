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
  private final LeafField field;
  private final BrickFill fill;

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
    this.field = new LeafField(cuts, lattice);
    this.fill = new BrickFill(stock, field);
  }

  /** Half the diagonal of a cube of so many finest cells (mm). */
  static double halfDiagonal(double cells, Lattice lattice) {
    return cells * lattice.cell() * HALF_DIAGONAL;
  }

  /** A cube of which only its place is known. */
  Node root(int size) {
    return make(0, 0, 0, size, tree.distinct());
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
    double half = node.size / 2.0;
    double wanted =
        node.start == Node.Start.SKIN
            ? stock.cell(
                lattice.x(node.x + half),
                lattice.y(node.y + half),
                lattice.z(node.z + half),
                halfDiagonal(node.size, lattice))
            : Double.POSITIVE_INFINITY;
    int leaving = node.moves.length - (node.emptied ? 1 : 0);
    for (int i = 0; i < leaving; i++) {
      wanted = Math.min(wanted, cuts.cell(node.moves[i]));
    }
    return wanted * scale / lattice.cell() * (1 + 1e-9);
  }

  /** The lattice points of a leaf. */
  Brick brick(Node leaf) {
    return fill.fill(leaf);
  }

  /** The measures of the leaf whose points were found last. */
  LeafField field() {
    return field;
  }
}
