package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;

/** Draws a drawing through OpenGL, enlarged by a scale. */
final class OverlayInk implements Ink {
  private final Overlay overlay;
  private final double scale;
  private final double height;

  /**
   * Makes the ink.
   *
   * @param height height of the drawing (px)
   */
  OverlayInk(Overlay overlay, double scale, double height) {
    this.overlay = overlay;
    this.scale = scale;
    this.height = height;
  }

  private double up(double y) {
    return (height - y) * scale;
  }

  @Override
  public void stroke(double[] points, double width, double dash, int colour) {
    overlay.ink(colour, 1);
    double travelled = 0;
    for (int i = 0; i + 3 < points.length; i += 2) {
      double length = Math.hypot(points[i + 2] - points[i], points[i + 3] - points[i + 1]);
      if (dash > 0) {
        dashes(points, i, length, width, dash, travelled);
      } else {
        piece(points, i, 0, 1, width);
      }
      travelled += length;
    }
  }

  private void dashes(
      double[] points, int i, double length, double width, double dash, double travelled) {
    double at = -(travelled % (2 * dash));
    for (; at < length; at += 2 * dash) {
      double from = Math.max(0, at);
      double to = Math.min(length, at + dash);
      if (to > from) {
        piece(points, i, from / length, to / length, width);
      }
    }
  }

  private void piece(double[] points, int i, double from, double to, double width) {
    double dx = points[i + 2] - points[i];
    double dy = points[i + 3] - points[i + 1];
    overlay.stroke(
        (points[i] + from * dx) * scale,
        up(points[i + 1] + from * dy),
        (points[i] + to * dx) * scale,
        up(points[i + 1] + to * dy),
        width * scale);
  }

  @Override
  public void fill(double[] x, double[] upper, double[] lower, int colour, double alpha) {
    overlay.ink(colour, alpha);
    for (int i = 0; i + 1 < x.length; i++) {
      overlay.quad(
          x[i] * scale,
          up(upper[i]),
          x[i + 1] * scale,
          up(upper[i + 1]),
          x[i + 1] * scale,
          up(lower[i + 1]),
          x[i] * scale,
          up(lower[i]));
    }
  }

  @Override
  public void text(Face face, double x, double y, String text, Align align, int colour) {
    overlay.ink(colour, 1);
    overlay.text(face, x * scale, up(y), text, align);
  }

  @Override
  public void raster(double x, double y, double width, double high, int columns, int[] cells) {
    int rows = cells.length / columns;
    double wide = width / columns;
    double tall = high / rows;
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; ) {
        int run = column + 1;
        int colour = cells[row * columns + column];
        while (run < columns && cells[row * columns + run] == colour) {
          run++;
        }
        overlay.ink(colour, 1);
        double left = (x + column * wide) * scale;
        double right = (x + run * wide) * scale;
        overlay.bar(left, up(y + (row + 1) * tall), right - left, tall * scale);
        column = run;
      }
    }
  }
}
