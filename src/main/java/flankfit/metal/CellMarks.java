package flankfit.metal;

import java.util.IdentityHashMap;

/** Marks the cells of leaves that are to be listed: those with surface, and all around them. */
final class CellMarks {
  private static final int WORDS = Node.CELLS * Node.CELLS * Node.CELLS / 64;

  private static final long[] NONE = {};

  private final Node root;
  private final CellCursor cursor = new CellCursor();
  private final IdentityHashMap<Node, long[]> marks = new IdentityHashMap<>();

  CellMarks(Node root) {
    this.root = root;
  }

  /** The cells of a brick whose corners differ, a bit each: a layer in a word, a row in a byte. */
  static long[] surface(Brick brick, int after) {
    int[] rows = new int[Node.POINTS * Node.POINTS];
    brick.rows(after, rows);
    long[] bits = new long[WORDS];
    for (int k = 0; k < Node.CELLS; k++) {
      for (int j = 0; j < Node.CELLS; j++) {
        int row = k * Node.POINTS + j;
        int a = rows[row];
        int b = rows[row + 1];
        int c = rows[row + Node.POINTS];
        int d = rows[row + Node.POINTS + 1];
        bits[k] |= (long) Brick.mixed(a | b | c | d, a & b & c & d) << (Node.CELLS * j);
      }
    }
    return bits;
  }

  private static void set(long[] bits, int i, int j, int k) {
    int at = (k * Node.CELLS + j) * Node.CELLS + i;
    bits[at >> 6] |= 1L << (at & 63);
  }

  /** Marks cells of a leaf and their neighbours. */
  void mark(Node leaf, long[] bits) {
    long[] own = of(leaf);
    cursor.begin(bits);
    while (cursor.next()) {
      around(leaf, own, cursor.i, cursor.j, cursor.k);
    }
  }

  /** The marked cells of a leaf, a bit each. */
  long[] marked(Node leaf) {
    return marks.getOrDefault(leaf, NONE);
  }

  /** Number of marked cells of a leaf. */
  int count(Node leaf) {
    return count(marked(leaf));
  }

  private static int count(long[] bits) {
    int count = 0;
    for (long word : bits) {
      count += Long.bitCount(word);
    }
    return count;
  }

  private long[] of(Node leaf) {
    return marks.computeIfAbsent(leaf, key -> new long[WORDS]);
  }

  private void around(Node leaf, long[] own, int i, int j, int k) {
    for (int dk = -1; dk <= 1; dk++) {
      for (int dj = -1; dj <= 1; dj++) {
        for (int di = -1; di <= 1; di++) {
          int a = i + di;
          int b = j + dj;
          int c = k + dk;
          if (((a | b | c) & ~(Node.CELLS - 1)) == 0) {
            set(own, a, b, c);
          } else {
            beyond(leaf, a, b, c, di, dj, dk);
          }
        }
      }
    }
  }

  private void beyond(Node leaf, int a, int b, int c, int di, int dj, int dk) {
    int cell = leaf.cell();
    int x = leaf.x + a * cell;
    int y = leaf.y + b * cell;
    int z = leaf.z + c * cell;
    if (Math.min(x, Math.min(y, z)) < 0 || Math.max(x, Math.max(y, z)) >= root.size) {
      return;
    }
    Node other = root.leafAt(x, y, z);
    long[] bits = of(other);
    int theirs = other.cell();
    if (theirs >= cell) {
      set(bits, (x - other.x) / theirs, (y - other.y) / theirs, (z - other.z) / theirs);
      return;
    }
    // Half the size: those of the eight that touch.
    for (int n = 0; n < 8; n++) {
      int ni = n & 1;
      int nj = n >> 1 & 1;
      int nk = n >> 2;
      if (touches(di, ni) && touches(dj, nj) && touches(dk, nk)) {
        set(
            bits,
            (x - other.x) / theirs + ni,
            (y - other.y) / theirs + nj,
            (z - other.z) / theirs + nk);
      }
    }
  }

  private static boolean touches(int step, int half) {
    return step == 0 || (step > 0 ? half == 0 : half == 1);
  }

  /** Lists what is marked, in the octree's order. */
  CellList list(Lattice lattice, Corners corners) {
    int count = 0;
    for (long[] bits : marks.values()) {
      count = Math.addExact(count, count(bits));
    }
    CellList cells = new CellList(lattice, corners, count);
    list(root, cells);
    return cells;
  }

  private void list(Node node, CellList cells) {
    for (Node child : node.children) {
      list(child, cells);
    }
    if (node.isLeaf()) {
      cursor.begin(marked(node));
      while (cursor.next()) {
        cells.add(node, cursor);
      }
    }
  }
}
