package flankfit.metal;

import java.util.Arrays;

/** Makes bricks: finds the first move that makes each lattice point air. One for each thread. */
final class BrickFill {
  private static final int POINTS = Node.POINTS;
  private static final int COLUMNS = POINTS * POINTS;
  private static final int MIDDLE = Node.CELLS / 2;

  /** From the middle of a layer to its corners, of a block of nine points to theirs (cells). */
  private static final double LAYER = MIDDLE * Math.sqrt(2);

  private static final double NINE = Math.sqrt(2);

  /** A little more than rounding does to a measure (mm). */
  private static final double MARGIN = 1e-9;

  private final StockBody stock;
  private final LeafField field;
  private int[] time = {};
  private int move;
  private double side;

  BrickFill(StockBody stock, LeafField field) {
    this.stock = stock;
    this.field = field;
  }

  Brick fill(Node leaf) {
    field.take(leaf);
    side = field.side();
    time = new int[COLUMNS * POINTS];
    Arrays.fill(time, Brick.NEVER);
    if (leaf.start != Node.Start.METAL) {
      skin(0, 0, 0, POINTS);
    }
    int last = leaf.moves.length - 1;
    for (int m = 0; m <= last; m++) {
      move = leaf.moves[m];
      if (m == last && leaf.emptied) {
        box(0, POINTS, 0, POINTS, 0, POINTS, move);
      } else {
        cut(field.cut(m));
      }
    }
    Brick made = new Brick(time);
    time = new int[0];
    return made;
  }

  /** Decides a cube of points by the stock: all by its middle, or each of 27 smaller ones. */
  private void skin(int i, int j, int k, int points) {
    double middle = (points - 1) / 2.0;
    double found = stock.distance(field.x(i + middle), field.y(j + middle), field.z(k + middle));
    double corner = middle * side * Math.sqrt(3) + MARGIN;
    if (points == 1 ? found <= 0 : found < -corner) {
      return;
    }
    if (points == 1 || found > corner) {
      box(i, i + points, j, j + points, k, k + points, Brick.OUTSIDE);
      return;
    }
    int third = points / 3;
    for (int n = 0; n < 27; n++) {
      skin(i + n % 3 * third, j + n / 3 % 3 * third, k + n / 9 * third, third);
    }
  }

  /** All metal of a box of points goes with a move. */
  private void box(int i0, int i1, int j0, int j1, int k0, int k1, int when) {
    for (int k = k0; k < k1; k++) {
      for (int j = j0; j < j1; j++) {
        for (int at = Brick.index(i0, j, k); at < Brick.index(i1, j, k); at++) {
          if (time[at] == Brick.NEVER) {
            time[at] = when;
          }
        }
      }
    }
  }

  private void cut(LeafField.Layered cut) {
    if (cut.isStack()) {
      for (int k = 0; k < POINTS; k++) {
        stack(cut, k, cut.reach(k));
      }
    } else if (cut.isMeasured()) {
      for (int k = 0; k < POINTS; k++) {
        if (isOpen(0, POINTS, 0, POINTS, k)) {
          layer(cut, k);
        }
      }
    } else {
      points(cut.cut(), 0, 0, 0, POINTS);
    }
  }

  private void stack(LeafField.Layered cut, int k, double reach) {
    for (int column = 0; column < COLUMNS; column++) {
      int at = k * COLUMNS + column;
      if (time[at] == Brick.NEVER && cut.planDistance(column) <= reach) {
        time[at] = move;
      }
    }
  }

  private boolean isOpen(int i0, int i1, int j0, int j1, int k) {
    for (int j = j0; j < j1; j++) {
      for (int i = i0; i < i1; i++) {
        if (time[Brick.index(i, j, k)] == Brick.NEVER) {
          return true;
        }
      }
    }
    return false;
  }

  /** The middle of a layer may decide all of it, that of each block of nine points those nine. */
  private void layer(LeafField.Layered cut, int k) {
    double middle = cut.measure(MIDDLE, MIDDLE, k);
    if (Math.abs(middle) > LAYER * side + MARGIN + cut.doubt()) {
      if (middle < 0) {
        box(0, POINTS, 0, POINTS, k, k + 1, move);
      }
      return;
    }
    for (int j = 1; j < POINTS; j += 3) {
      for (int i = 1; i < POINTS; i += 3) {
        if (isOpen(i - 1, i + 2, j - 1, j + 2, k)) {
          nine(cut, i, j, k);
        }
      }
    }
  }

  private void nine(LeafField.Layered cut, int i, int j, int k) {
    double middle = cut.measure(i, j, k);
    double sure = Math.abs(middle) - MARGIN - cut.doubt();
    if (sure > NINE * side) {
      if (middle < 0) {
        box(i - 1, i + 2, j - 1, j + 2, k, k + 1, move);
      }
      return;
    }
    for (int n = 0; n < 9; n++) {
      int di = n % 3 - 1;
      int dj = n / 3 - 1;
      int at = Brick.index(i + di, j + dj, k);
      if (time[at] == Brick.NEVER) {
        boolean decided = n == 4 || (di * dj == 0 && sure > side);
        double measure = decided ? middle : cut.measure(i + di, j + dj, k);
        if (measure <= 0) {
          time[at] = move;
        }
      }
    }
  }

  /** Where there is no measure: cubes that the cut does not reach, then point by point. */
  private void points(SweptCut cut, int i, int j, int k, int points) {
    double middle = (points - 1) / 2.0;
    double x = field.x(i + middle);
    double y = field.y(j + middle);
    double z = field.z(k + middle);
    if (points == 1) {
      int at = Brick.index(i, j, k);
      if (time[at] == Brick.NEVER && cut.holds(x, y, z)) {
        time[at] = move;
      }
      return;
    }
    double corner = middle * side * Math.sqrt(3) + MARGIN;
    if (cut.within(x, y, z, corner) >= corner) {
      return;
    }
    int third = points / 3;
    for (int n = 0; n < 27; n++) {
      points(cut, i + n % 3 * third, j + n / 3 % 3 * third, k + n / 9 * third, third);
    }
  }
}
