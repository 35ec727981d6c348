package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;

/**
 * A scale of a diagram: maps lengths (mm) to pixels and writes round figures of a unit beside it.
 */
final class DiagramRule {
  private static final double LEAST_STEP = 46;

  private final double first;
  private final double last;
  private final double from;
  private final double to;

  /**
   * Makes the scale.
   *
   * @param first length (mm) at pixel {@code from}
   * @param last length (mm) at pixel {@code to}
   */
  DiagramRule(double first, double last, double from, double to) {
    this.first = first;
    this.last = last;
    this.from = from;
    this.to = to;
  }

  /** The pixel of a length (mm). */
  double at(double length) {
    return from + (length - first) / (last - first) * (to - from);
  }

  /** The pixel of a length (mm), kept on the scale. */
  double within(double length) {
    double low = Math.min(from, to);
    double high = Math.max(from, to);
    return Math.min(high, Math.max(low, at(length)));
  }

  /** The length (mm) at a pixel. */
  double length(double pixel) {
    return first + (pixel - from) / (to - from) * (last - first);
  }

  boolean holds(double length) {
    return length >= Math.min(first, last) && length <= Math.max(first, last);
  }

  /** Something for each round figure. */
  interface Tick {
    /**
     * One figure.
     *
     * @param pixel where it stands
     * @param figure its text
     */
    void at(double pixel, String figure);
  }

  /** Calls for every round figure of the unit on the scale. */
  void ticks(LengthUnit unit, Tick each) {
    double perPixel = Math.abs(last - first) / Math.abs(to - from);
    double step = Ticks.stepAtLeast(unit.fromMillimetres(perPixel * LEAST_STEP));
    int decimals = Ticks.decimals(step);
    double low = unit.fromMillimetres(Math.min(first, last));
    double high = unit.fromMillimetres(Math.max(first, last));
    for (long k = (long) Math.ceil(low / step - 1e-9); k * step <= high + step * 1e-9; k++) {
      each.at(at(unit.toMillimetres(k * step)), Figures.fixed(k * step, decimals));
    }
  }

  /** Writes the figures left of a column and short ticks on it. */
  void upright(Diagram diagram, double column, LengthUnit unit) {
    Theme.Palette palette = diagram.palette();
    ticks(
        unit,
        (y, figure) -> {
          diagram.line(column - 5, y, column, y, 1, palette.softInk());
          diagram.label(Face.SMALL, column - 9, y + 4, figure, Align.RIGHT, palette.softInk());
        });
    diagram.line(column, Math.min(from, to), column, Math.max(from, to), 1, palette.softInk());
  }

  /** Writes the figures below a row and short ticks on it. */
  void level(Diagram diagram, double row, LengthUnit unit) {
    Theme.Palette palette = diagram.palette();
    ticks(
        unit,
        (x, figure) -> {
          diagram.line(x, row, x, row + 5, 1, palette.softInk());
          diagram.label(Face.SMALL, x, row + 19, figure, Align.MIDDLE, palette.softInk());
        });
    diagram.line(Math.min(from, to), row, Math.max(from, to), row, 1, palette.softInk());
  }
}
