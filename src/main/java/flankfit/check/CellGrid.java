package flankfit.check;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import java.util.Arrays;
import java.util.Optional;

/**
 * Heights over the cells of a grid in X and Y. It covers the stock's plan; without a stock, where
 * the tape goes, with no top. What the stock lacks from the start is lowered at once: what lies
 * outside a round stock or within a bore, declared holes to their depth, and, for a boss that the
 * program does not make itself, all round it.
 */
final class CellGrid {
  /** About as many cells as there are. */
  private static final int CELLS = 90_000;

  private static final double LEAST_CELL = 0.02;

  /** How far the grid goes beyond the tape (mm). */
  private static final double ROUND = 1;

  private final double x0;
  private final double y0;
  private final double dx;
  private final double dy;
  private final int columns;
  private final int rows;
  private final double[] heights;
  private final double uncut;
  private final boolean stock;

  private CellGrid(Extents box, double uncut, boolean stock) {
    double width = box.max().x() - box.min().x();
    double depth = box.max().y() - box.min().y();
    double side = Math.max(LEAST_CELL, Math.sqrt(width * depth / CELLS));
    columns = (int) Math.max(1, Math.min(CELLS, Math.rint(width / side)));
    rows = (int) Math.max(1, Math.min(CELLS, Math.rint(depth / side)));
    dx = width / columns;
    dy = depth / rows;
    x0 = box.min().x();
    y0 = box.min().y();
    this.uncut = uncut;
    this.stock = stock;
    heights = new double[columns * rows];
    Arrays.fill(heights, uncut);
  }

  static CellGrid of(Tape tape, SetupSheet sheet) {
    Optional<Stock> stock = sheet.stock();
    if (stock.isEmpty()) {
      CellGrid grid = new CellGrid(wider(tape.extents()), Double.POSITIVE_INFINITY, false);
      sheet.holes().forEach(grid::lower);
      return grid;
    }
    CellGrid grid = new CellGrid(stock.get().box(), stock.get().top(), true);
    grid.shape(stock.get());
    sheet.holes().forEach(grid::lower);
    return grid;
  }

  private static Extents wider(Extents box) {
    Point low = new Point(box.min().x() - ROUND, box.min().y() - ROUND, box.min().z());
    Point high = new Point(box.max().x() + ROUND, box.max().y() + ROUND, box.max().z());
    return new Extents(low, high);
  }

  private void shape(Stock body) {
    Point middle = body.box().middle();
    double outside = (body.box().max().x() - body.box().min().x()) / 2;
    for (int k = 0; k < heights.length; k++) {
      double distance = Math.hypot(x(k) - middle.x(), y(k) - middle.y());
      boolean lacks =
          switch (body.shape()) {
            case BLOCK -> false;
            // What a mesh fills of its box is not known here: nothing counts as certain.
            case MESH -> true;
            case CYLINDER -> distance + halfDiagonal() > outside;
            case TUBE ->
                distance + halfDiagonal() > outside || distance - halfDiagonal() < body.bore() / 2;
          };
      if (lacks) {
        heights[k] = Double.NEGATIVE_INFINITY;
      }
    }
  }

  private void lower(Hole hole) {
    double bottom = hole.depth().map(depth -> hole.top() - depth).orElse(Double.NEGATIVE_INFINITY);
    for (int k = 0; k < heights.length; k++) {
      double distance = Math.hypot(x(k) - hole.x(), y(k) - hole.y());
      if (hole.boss()) {
        heights[k] = Math.min(heights[k], roundBoss(hole, bottom, distance));
      } else if (distance - halfDiagonal() < hole.diameter() / 2) {
        heights[k] = Math.min(heights[k], bottom);
      } else if (hole.countersink().isPresent()) {
        heights[k] = Math.min(heights[k], cone(hole, hole.countersink().get(), distance));
      }
    }
  }

  private double roundBoss(Hole boss, double bottom, double distance) {
    boolean made = boss.madeBy().filter(by -> by == Hole.MadeBy.PROGRAM).isPresent();
    boolean beside = distance + halfDiagonal() > boss.diameter() / 2;
    return made ? uncut : beside ? bottom : boss.top();
  }

  private double cone(Hole hole, Hole.Countersink sink, double distance) {
    boolean within = distance - halfDiagonal() < sink.diameter() / 2;
    double depth = (sink.diameter() - hole.diameter()) / 2 / Math.tan(sink.angle() / 2);
    return within ? hole.top() - depth : uncut;
  }

  private double x(int k) {
    return x0 + (k % columns + 0.5) * dx;
  }

  private double y(int k) {
    int row = k / columns;
    return y0 + (row + 0.5) * dy;
  }

  /** The longer side of a cell (mm). */
  double cell() {
    return Math.max(dx, dy);
  }

  /** Greatest distance of a point of a cell from its middle (mm). */
  double halfDiagonal() {
    return Math.hypot(dx, dy) / 2;
  }

  /** Height where nothing has been cut (mm); infinite without a stock. */
  double uncut() {
    return uncut;
  }

  /** Whether the heights are those of a stock. */
  boolean isStock() {
    return stock;
  }

  /**
   * Lowers all cells whose middles are covered.
   *
   * @return how many cells were looked at
   */
  long lower(Capsule area, double z) {
    long looked = 0;
    for (int row = firstRow(area); row <= lastRow(area); row++) {
      if (area.cross(y0 + (row + 0.5) * dy)) {
        int end = row * columns + lastColumn(area);
        for (int k = row * columns + firstColumn(area); k <= end; k++) {
          heights[k] = Math.min(heights[k], z);
          looked++;
        }
      }
    }
    return looked;
  }

  /** The highest of all cells that are covered or that the middle of the disc passes. */
  double highest(Capsule area) {
    double highest = Double.NEGATIVE_INFINITY;
    for (int row = firstRow(area); row <= lastRow(area); row++) {
      if (area.cross(y0 + (row + 0.5) * dy)) {
        int end = row * columns + lastColumn(area);
        for (int k = row * columns + firstColumn(area); k <= end; k++) {
          highest = Math.max(highest, heights[k]);
        }
      }
    }
    for (int i = 0; i <= steps(area); i++) {
      highest =
          Math.max(highest, heightAt(area.alongX(share(area, i)), area.alongY(share(area, i))));
    }
    return highest;
  }

  /** Least share of the line at which a covered cell is higher than z; over 1 when none is. */
  double firstAbove(Capsule area, double z) {
    double first = 2;
    for (int row = firstRow(area); row <= lastRow(area); row++) {
      double y = y0 + (row + 0.5) * dy;
      if (area.cross(y)) {
        int end = row * columns + lastColumn(area);
        for (int k = row * columns + firstColumn(area); k <= end; k++) {
          if (heights[k] > z) {
            first = Math.min(first, area.reaches(x(k), y));
          }
        }
      }
    }
    for (int i = 0; i <= steps(area) && share(area, i) < first; i++) {
      if (heightAt(area.alongX(share(area, i)), area.alongY(share(area, i))) > z) {
        first = share(area, i);
      }
    }
    return first;
  }

  private int steps(Capsule area) {
    return (int) Math.ceil(2 * area.length() / Math.min(dx, dy));
  }

  private double share(Capsule area, int i) {
    return i == 0 ? 0 : (double) i / steps(area);
  }

  private double heightAt(double x, double y) {
    double column = Math.floor((x - x0) / dx);
    double row = Math.floor((y - y0) / dy);
    boolean outside = column < 0 || row < 0 || column >= columns || row >= rows;
    return outside ? Double.NEGATIVE_INFINITY : heights[(int) (row * columns + column)];
  }

  private int firstRow(Capsule area) {
    return (int) Math.max(0, Math.ceil((area.low() - y0) / dy - 0.5));
  }

  private int lastRow(Capsule area) {
    return (int) Math.min(rows - 1.0, Math.floor((area.high() - y0) / dy - 0.5));
  }

  private int firstColumn(Capsule area) {
    return (int) Math.max(0, Math.ceil((area.left() - x0) / dx - 0.5));
  }

  private int lastColumn(Capsule area) {
    return (int) Math.min(columns - 1.0, Math.floor((area.right() - x0) / dx - 0.5));
  }
}
