package flankfit.metal;

import java.util.Arrays;

/** How much metal a leaf holds after some moves. One for each thread. */
final class BrickVolume {
  private static final int POINTS = Node.POINTS;

  private final Probe probe;
  private final Lattice lattice;
  private final CellVolume cell = new CellVolume();
  private final double[] crossings = new double[3 * POINTS * POINTS * POINTS];
  private final double[] normals = new double[3 * crossings.length];

  BrickVolume(Probe probe, Lattice lattice) {
    this.probe = probe;
    this.lattice = lattice;
  }

  /** Metal of a leaf that may hold surface (mm³). */
  double metal(Node leaf, Brick brick, int after) {
    Arrays.fill(crossings, Double.NaN);
    double sum = 0;
    for (int k = 0; k < Node.CELLS; k++) {
      for (int j = 0; j < Node.CELLS; j++) {
        for (int i = 0; i < Node.CELLS; i++) {
          sum += share(leaf, brick, after, i, j, k);
        }
      }
    }
    double side = leaf.cell() * lattice.cell();
    return sum * side * side * side;
  }

  private double share(Node leaf, Brick brick, int after, int i, int j, int k) {
    int metal = 0;
    for (int c = 0; c < 8; c++) {
      boolean solid = brick.isMetal(i + (c & 1), j + (c >> 1 & 1), k + (c >> 2), after);
      metal |= solid ? 1 << c : 0;
    }
    if (metal == 0 || metal == 0xff) {
      return metal == 0 ? 0 : 1;
    }
    for (int c = 0; c < 8; c++) {
      for (int axis = 0; axis < 3; axis++) {
        int other = c | 1 << axis;
        if (other != c && (metal >> c & 1) != (metal >> other & 1)) {
          int a = i + (c & 1);
          int b = j + (c >> 1 & 1);
          int d = k + (c >> 2);
          cell.cross(c, axis, crossing(leaf, after, a, b, d, axis, (metal >> c & 1) != 0));
          if (leaf.start == Node.Start.SKIN) {
            cell.direct(c, axis, normals, 3 * (3 * Brick.index(a, b, d) + axis));
          }
        }
      }
    }
    return cell.share(metal);
  }

  /** Share of the way from an edge's lower end at which it is crossed (1). */
  private double crossing(Node leaf, int after, int i, int j, int k, int axis, boolean lowMetal) {
    int at = 3 * Brick.index(i, j, k) + axis;
    if (Double.isNaN(crossings[at])) {
      int cells = leaf.cell();
      double x0 = lattice.x(leaf.x + i * cells);
      double y0 = lattice.y(leaf.y + j * cells);
      double z0 = lattice.z(leaf.z + k * cells);
      double x1 = lattice.x(leaf.x + (i + (axis == 0 ? 1 : 0)) * cells);
      double y1 = lattice.y(leaf.y + (j + (axis == 1 ? 1 : 0)) * cells);
      double z1 = lattice.z(leaf.z + (k + (axis == 2 ? 1 : 0)) * cells);
      double share =
          lowMetal
              ? probe.edge(leaf, after, x0, y0, z0, x1, y1, z1)
              : probe.edge(leaf, after, x1, y1, z1, x0, y0, z0);
      crossings[at] = lowMetal ? share : 1 - share;
      if (leaf.start == Node.Start.SKIN) {
        // Cells are coarse on the stock's own skin, whose edges would show if they were cut off.
        probe.edgeNormal(share, normals, 3 * at);
      }
    }
    return crossings[at];
  }
}
