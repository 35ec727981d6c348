package flankfit.solid;

import java.util.Arrays;

/** Joins the crossings of one leaf to sheets; one tracer for each thread. */
final class SheetTracer {
  /** Whole and half edges of a cell, those inside its faces too. */
  private static final int MOST = 48;

  private final Solid solid;
  private final SurfaceCells cells;
  private final LeafIndex index;
  private final GridEdges edges;
  private final FaceWalks walks = new FaceWalks();
  private final int[] atSlot = new int[FaceWalks.SLOTS];
  private final int[] slots = new int[MOST];
  private final int[] root = new int[MOST];
  private final int[] number = new int[MOST];
  private final int[] met = new int[8];
  private final boolean[] leaving = new boolean[8];
  private boolean crowded;

  SheetTracer(Solid solid, SurfaceCells cells, LeafIndex index, GridEdges edges) {
    this.solid = solid;
    this.cells = cells;
    this.index = index;
    this.edges = edges;
    Arrays.fill(atSlot, -1);
  }

  /** Whether the last leaf has a face on which more than two crossings met. */
  boolean sawCrowdedFace() {
    return crowded;
  }

  /** Numbers the sheets of a leaf; returns how many there are. */
  int trace(int leaf, int[] crossings, int start, int count, int[] sheetOf, int[] partners) {
    crowded = false;
    enter(leaf, crossings, start, count);
    for (int face = 0; face < 6; face++) {
      boolean quartered = false;
      for (int slot : walks.inner(face)) {
        quartered |= atSlot[slot] >= 0;
      }
      if (quartered) {
        for (int quarter = 0; quarter < 4; quarter++) {
          join(leaf, face, quarter, walks.quarter(face, quarter), crossings, start, partners);
        }
      } else {
        join(leaf, face, -1, walks.face(face), crossings, start, partners);
      }
    }
    for (int i = 0; i < count; i++) {
      atSlot[slots[i]] = -1;
    }
    int sheets = 0;
    for (int i = 0; i < count; i++) {
      int first = find(i);
      if (first == i) {
        number[i] = sheets++;
      }
      sheetOf[start + i] = number[first];
    }
    return sheets;
  }

  private void enter(int leaf, int[] crossings, int start, int count) {
    int size = cells.size(leaf);
    for (int i = 0; i < count; i++) {
      int edge = crossings[start + i];
      int place =
          FaceWalks.place(
              2 * (edges.low(edge, 0) - cells.x(leaf)) / size,
              2 * (edges.low(edge, 1) - cells.y(leaf)) / size,
              2 * (edges.low(edge, 2) - cells.z(leaf)) / size);
      int slot = FaceWalks.slot(edges.axis(edge), place, 2 * edges.length(edge) / size);
      slots[i] = slot;
      atSlot[slot] = i;
      root[i] = i;
    }
  }

  private void join(
      int leaf, int face, int quarter, int[] walk, int[] crossings, int start, int[] partners) {
    int count = 0;
    for (int step : walk) {
      int at = atSlot[step >> 1];
      if (at >= 0) {
        met[count] = at;
        leaving[count] = edges.metalLow(crossings[start + at]) == ((step & 1) == 0);
        count++;
      }
    }
    if (count == 0) {
      return;
    }
    if (count % 2 != 0) {
      throw new IllegalStateException(
          "surface ends on a face of leaf "
              + leaf
              + ": signs of its corners contradict each other");
    }
    // Metal that meets at the centre is one: then each stretch of air round the face is cut off.
    boolean cutAir = false;
    if (count > 2) {
      crowded = true;
      cutAir = centreIsMetal(leaf, face, quarter);
    }
    for (int i = 0; i < count; i++) {
      if (leaving[i] == cutAir) {
        link(met[i], met[(i + 1) % count], face / 2, crossings, start, partners);
      }
    }
  }

  private void link(int a, int b, int faceAxis, int[] crossings, int start, int[] partners) {
    int edgeA = crossings[start + a];
    int edgeB = crossings[start + b];
    partners[2 * (start + a) + (faceAxis - edges.axis(edgeA) + 3) % 3 - 1] = edgeB;
    partners[2 * (start + b) + (faceAxis - edges.axis(edgeB) + 3) % 3 - 1] = edgeA;
    int rootA = find(a);
    int rootB = find(b);
    root[Math.max(rootA, rootB)] = Math.min(rootA, rootB);
  }

  private int find(int i) {
    int at = i;
    while (root[at] != at) {
      at = root[at];
    }
    return at;
  }

  private boolean centreIsMetal(int leaf, int face, int quarter) {
    int size = cells.size(leaf);
    int axis = face / 2;
    int side = face % 2;
    int u = (axis + 1) % 3;
    // in half cells, so that both leaves beside the face reckon the same bits
    int middleU = quarter < 0 ? size : size / 2 + quarter % 2 * size;
    int middleV = quarter < 0 ? size : size / 2 + quarter / 2 * size;
    int across = 2 * side * size;
    int x = 2 * cells.x(leaf) + (axis == 0 ? across : u == 0 ? middleU : middleV);
    int y = 2 * cells.y(leaf) + (axis == 1 ? across : u == 1 ? middleU : middleV);
    int z = 2 * cells.z(leaf) + (axis == 2 ? across : u == 2 ? middleU : middleV);
    if (quarter < 0 && size > 1) {
      int beyond = 1 - side;
      int neighbour =
          index.at(
              x / 2 - (axis == 0 ? beyond : 0),
              y / 2 - (axis == 1 ? beyond : 0),
              z / 2 - (axis == 2 ? beyond : 0),
              size);
      if (neighbour >= 0 && cells.size(neighbour) < size) {
        return cells.metal(x / 2, y / 2, z / 2);
      }
    }
    double half = cells.cell() / 2;
    return solid.value(
            cells.originX() + x * half, cells.originY() + y * half, cells.originZ() + z * half)
        < 0;
  }
}
