package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;

/**
 * A flat drawing: strokes, fills, letters and cells, in pixels from the upper left corner. It is
 * data: the same drawing goes to a PNG, an SVG, or a window.
 */
public final class Diagram {
  private final int width;
  private final int height;
  private final Theme theme;
  private final String title;
  private final List<Consumer<Ink>> shapes = new ArrayList<>();

  /**
   * An empty sheet.
   *
   * @param width width (px), 200 to 8192
   * @param height height (px), 200 to 8192
   * @param theme paper
   * @param title what the drawing shows, in words, for those who cannot see it
   */
  Diagram(int width, int height, Theme theme, String title) {
    this.width = (int) Require.within("width", width, 200, 8192);
    this.height = (int) Require.within("height", height, 200, 8192);
    this.theme = Objects.requireNonNull(theme, "theme");
    this.title = Objects.requireNonNull(title, "title");
  }

  /** Width (px). */
  public int width() {
    return width;
  }

  /** Height (px). */
  public int height() {
    return height;
  }

  /** Paper. */
  public Theme theme() {
    return theme;
  }

  /** What it shows, in words. */
  public String title() {
    return title;
  }

  Theme.Palette palette() {
    return theme.palette();
  }

  /** Puts everything on paper, in the order of drawing. */
  void onto(Ink ink) {
    shapes.forEach(shape -> shape.accept(ink));
  }

  /** A full line from point to point. */
  void line(double x0, double y0, double x1, double y1, double thick, int colour) {
    stroke(new double[] {x0, y0, x1, y1}, thick, 0, colour);
  }

  /** A dashed line from point to point. */
  void dashed(double x0, double y0, double x1, double y1, double thick, double dash, int colour) {
    stroke(new double[] {x0, y0, x1, y1}, thick, dash, colour);
  }

  /** A line through points, x and y in turn; see {@link Ink#stroke}. */
  void stroke(double[] points, double thick, double dash, int colour) {
    double[] kept = points.clone();
    shapes.add(ink -> ink.stroke(kept, thick, dash, colour));
  }

  /** The area between two lines over the same columns; see {@link Ink#fill}. */
  void fill(double[] x, double[] upper, double[] lower, int colour, double alpha) {
    double[] keptX = x.clone();
    double[] keptUpper = upper.clone();
    double[] keptLower = lower.clone();
    shapes.add(ink -> ink.fill(keptX, keptUpper, keptLower, colour, alpha));
  }

  /** A bar along the edges of the sheet. */
  void bar(double x, double y, double wide, double high, int colour, double alpha) {
    fill(
        new double[] {x, x + wide},
        new double[] {y, y},
        new double[] {y + high, y + high},
        colour,
        alpha);
  }

  /** A line of text; y is its base line. */
  void text(Face face, double x, double y, String words, Align align, int colour) {
    shapes.add(ink -> ink.text(face, x, y, words, align, colour));
  }

  /** Cells of colour; see {@link Ink#raster}. */
  void raster(double x, double y, double wide, double high, int columns, int[] cells) {
    int[] kept = cells.clone();
    shapes.add(ink -> ink.raster(x, y, wide, high, columns, kept));
  }
}
