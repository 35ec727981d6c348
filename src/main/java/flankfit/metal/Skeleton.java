package flankfit.metal;

import flankfit.motion.Extents;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.RecursiveAction;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;

/**
 * The octree of a whole program: which moves may cut where, refined down to what the tools want,
 * with neighbours that differ by one level at most. It is the same for every moment.
 */
final class Skeleton {
  /** Memory of a node besides its moves (bytes): fields, headers, its place in the parent. */
  private static final long NODE_BYTES = 104;

  /** Shifts of the lattice off the stock's corner (1), so that no face of a part lies in it. */
  private static final double[] SHIFT = {0.381966011, 0.414213562, 0.302775638};

  /** Cubes of fewer finest cells are not given to other threads. */
  private static final int SMALL = 8 * Node.CELLS;

  private final Lattice lattice;
  private final Node root;
  private final List<Node> leaves;
  private final List<Node> uniform;
  private final long bytes;
  private final double scale;

  private Skeleton(Lattice lattice, Node root, Growing growing, double scale) {
    this.lattice = lattice;
    this.root = root;
    this.leaves = new ArrayList<>();
    this.uniform = new ArrayList<>();
    this.bytes = growing.bytes.get();
    this.scale = scale;
    collect(root);
  }

  /** How many times coarser its cells are than tools and stock want (1). */
  double scale() {
    return scale;
  }

  Lattice lattice() {
    return lattice;
  }

  Node root() {
    return root;
  }

  /** All leaves that may hold surface at some time, in a fixed order. */
  List<Node> leaves() {
    return leaves;
  }

  /** All leaves that are metal at first, and then all metal or all air. */
  List<Node> uniform() {
    return uniform;
  }

  /** Memory that nodes and their lists take (bytes). */
  long bytes() {
    return bytes;
  }

  /**
   * Makes the octree.
   *
   * @param cell side of the finest cells (mm)
   * @param scale how many times coarser cells shall be than tools and stock want (1)
   * @param most memory (bytes) for nodes and for the bricks that hold surface at the end
   * @return empty when that is not enough
   */
  static Optional<Skeleton> of(
      Workpiece piece, double cell, double scale, long most, ForkJoinPool pool, Pace pace) {
    Extents box = piece.stock().box();
    Lattice lattice =
        new Lattice(
            box.min().x() - (1 + SHIFT[0]) * cell,
            box.min().y() - (1 + SHIFT[1]) * cell,
            box.min().z() - (1 + SHIFT[2]) * cell,
            cell);
    double longest =
        Math.max(
            box.max().x() - box.min().x(),
            Math.max(box.max().y() - box.min().y(), box.max().z() - box.min().z()));
    double cells = Math.max(Node.CELLS, longest / cell + 3);
    if (cells > 1 << 28) {
      return Optional.empty();
    }
    int size = Integer.highestOneBit((int) Math.ceil(cells) - 1) << 1;
    Growing growing =
        new Growing(
            () -> new NodeMaker(piece, lattice, scale), most, pace, piece.cuts().tape().size());
    pace.begin(Math.pow(size, 3));
    Node root = growing.maker().root(size);
    pool.invoke(new Refining(growing, growing.maker(), root));
    if (growing.isFull()) {
      return Optional.empty();
    }
    growing.balance(root);
    if (growing.isFull()) {
      return Optional.empty();
    }
    return Optional.of(new Skeleton(lattice, root, growing, scale));
  }

  private void collect(Node node) {
    for (Node child : node.children) {
      collect(child);
    }
    if (node.isLeaf() && !node.isUniform()) {
      leaves.add(node);
    } else if (node.isLeaf() && node.start == Node.Start.METAL) {
      uniform.add(node);
    }
  }

  /** What all threads share while the octree grows. */
  private static final class Growing {
    private final Supplier<NodeMaker> makers;
    private final long most;
    private final Pace pace;
    private final int end;
    private final AtomicLong bytes = new AtomicLong();
    private final AtomicLong bricks = new AtomicLong();

    Growing(Supplier<NodeMaker> makers, long most, Pace pace, int end) {
      this.makers = makers;
      this.most = most;
      this.pace = pace;
      this.end = end;
    }

    NodeMaker maker() {
      return makers.get();
    }

    boolean isFull() {
      return bytes.get() + bricks.get() > most;
    }

    void leaf(Node node, int sign) {
      if (node.mayHoldSurface(end)) {
        bricks.addAndGet(sign * Brick.BYTES);
      }
    }

    boolean refine(Node node, NodeMaker maker) {
      if (node.isUniform() || isFull() || node.cell() <= 1 || node.cell() <= maker.wanted(node)) {
        leaf(node, 1);
        pace.done(Math.pow(node.size, 3));
        return false;
      }
      split(node, maker);
      return true;
    }

    void split(Node node, NodeMaker maker) {
      Node[] children = new Node[8];
      for (int i = 0; i < 8; i++) {
        children[i] = maker.child(node, i);
        bytes.addAndGet(NODE_BYTES + 4L * children[i].moves.length);
      }
      node.children = children;
    }

    /** Splits leaves until neighbours differ by one level at most. */
    void balance(Node root) {
      NodeMaker maker = maker();
      ArrayDeque<Node> queue = new ArrayDeque<>();
      gather(root, queue);
      while (!queue.isEmpty() && !isFull()) {
        Node node = queue.removeFirst();
        pace.done(0);
        if (node.isLeaf()) {
          balance(root, node, maker, queue);
        }
      }
    }

    private void balance(Node root, Node node, NodeMaker maker, ArrayDeque<Node> queue) {
      for (int d = 0; d < 27; d++) {
        int px = node.x + (d % 3 - 1) * node.size;
        int py = node.y + (d / 3 % 3 - 1) * node.size;
        int pz = node.z + (d / 9 - 1) * node.size;
        Node beside = root;
        boolean there = holds(root, px, py, pz);
        while (there && !beside.isLeaf() && beside.size > node.size) {
          beside = beside.child(px, py, pz);
        }
        while (there && beside.isLeaf() && beside.size > 2 * node.size) {
          leaf(beside, -1);
          split(beside, maker);
          for (Node child : beside.children) {
            leaf(child, 1);
            queue.add(child);
          }
          beside = beside.child(px, py, pz);
        }
      }
    }

    private static boolean holds(Node root, int px, int py, int pz) {
      return Math.min(px, Math.min(py, pz)) >= 0 && Math.max(px, Math.max(py, pz)) < root.size;
    }

    private static void gather(Node node, ArrayDeque<Node> queue) {
      if (node.isLeaf()) {
        queue.add(node);
      }
      for (Node child : node.children) {
        gather(child, queue);
      }
    }
  }

  /** One cube and all below it. */
  private static final class Refining extends RecursiveAction {
    private static final long serialVersionUID = 1;

    private final transient Growing growing;
    private final transient NodeMaker maker;
    private final transient Node node;

    Refining(Growing growing, NodeMaker maker, Node node) {
      this.growing = growing;
      this.maker = maker;
      this.node = node;
    }

    @Override
    protected void compute() {
      if (node.size <= SMALL) {
        below(node);
      } else if (growing.refine(node, maker)) {
        List<Refining> tasks = new ArrayList<>();
        for (Node child : node.children) {
          tasks.add(new Refining(growing, growing.maker(), child));
        }
        invokeAll(tasks);
      }
    }

    private void below(Node one) {
      if (growing.refine(one, maker)) {
        for (Node child : one.children) {
          below(child);
        }
      }
    }
  }
}
