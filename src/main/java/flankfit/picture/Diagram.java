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
  /** How far a patch under a text covers what lies below (1). */
  private static final double PLATE = 0.86;

  private final int width;
  private final int height;
  private final Theme theme;
  private final String title;
  private final String description;
  private final List<Consumer<Ink>> shapes = new ArrayList<>();
  private final List<TextBox> written = new ArrayList<>();
  private final List<TextBox> kept = new ArrayList<>();
  private final Letters letters = new Letters();

  /**
   * An empty sheet.
   *
   * @param width width (px), 200 to 8192
   * @param height height (px), 200 to 8192
   * @param theme paper
   * @param title what the drawing shows, in words, for those who cannot see it
   */
  Diagram(int width, int height, Theme theme, String title) {
    this(width, height, theme, title, "");
  }

  /**
   * An empty sheet.
   *
   * @param width width (px), 200 to 8192
   * @param height height (px), 200 to 8192
   * @param theme paper
   * @param title what the drawing shows, in words, for those who cannot see it
   * @param description what it comes to, in a sentence; empty if the title says it all
   */
  Diagram(int width, int height, Theme theme, String title, String description) {
    this.width = (int) Require.within("width", width, 200, 8192);
    this.height = (int) Require.within("height", height, 200, 8192);
    this.theme = Objects.requireNonNull(theme, "theme");
    this.title = Objects.requireNonNull(title, "title");
    this.description = Objects.requireNonNull(description, "description");
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

  /** What it comes to, in a sentence; may be empty. */
  public String description() {
    return description;
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

  /** Width of a text (px). */
  double width(Face face, String words) {
    return letters.width(face, words);
  }

  /** A line of text, come what may; y is its base line. */
  void text(Face face, double x, double y, String words, Align align, int colour) {
    written.add(TextBox.of(face, x, y, width(face, words), align));
    shapes.add(ink -> ink.text(face, x, y, words, align, colour));
  }

  /**
   * A line of text if it lies on the sheet and covers no other and nothing that is to be kept free;
   * left out otherwise.
   *
   * @return whether it is written
   */
  boolean label(Face face, double x, double y, String words, Align align, int colour) {
    boolean free = isFree(face, x, y, words, align);
    if (free) {
      text(face, x, y, words, align, colour);
    }
    return free;
  }

  /** The same on a patch of paper, to be read over lines and shades. */
  boolean plate(Face face, double x, double y, String words, Align align, int colour) {
    boolean free = isFree(face, x, y, words, align);
    if (free) {
      TextBox box = TextBox.of(face, x, y, width(face, words), align);
      double left = Math.max(0, box.left() - 3);
      double top = Math.max(0, box.top() - 1);
      double right = Math.min(width, box.right() + 3);
      double bottom = Math.min(height, box.bottom() + 1);
      bar(left, top, right - left, bottom - top, palette().ground(), PLATE);
      text(face, x, y, words, align, colour);
    }
    return free;
  }

  /** Keeps labels and plates written from now on off a mark (px). */
  void keepFree(double left, double top, double right, double bottom) {
    kept.add(new TextBox(left, top, right, bottom));
  }

  private boolean isFree(Face face, double x, double y, String words, Align align) {
    TextBox box = TextBox.of(face, x, y, width(face, words), align);
    return box.isWithin(width, height)
        && written.stream().noneMatch(box::touches)
        && kept.stream().noneMatch(box::covers);
  }

  /** Cells of colour; see {@link Ink#raster}. */
  void raster(double x, double y, double wide, double high, int columns, int[] cells) {
    int[] kept = cells.clone();
    shapes.add(ink -> ink.raster(x, y, wide, high, columns, kept));
  }
}
