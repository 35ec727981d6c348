package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;

/**
 * Where a line of text stands (px from the upper left corner).
 *
 * @param left left edge
 * @param top top of the highest letters
 * @param right right edge
 * @param bottom bottom of the lowest letters
 */
record TextBox(double left, double top, double right, double bottom) {
  /** Share of a face's size above the base line, as the bundled letters have it (1). */
  private static final double ABOVE = 0.78;

  /** Space between two texts, so that they do not read as one (px). */
  private static final double APART = 4;

  /** The box of a text; y is its base line, width its width (px). */
  static TextBox of(Face face, double x, double y, double width, Align align) {
    double left =
        switch (align) {
          case LEFT -> x;
          case MIDDLE -> x - width / 2;
          case RIGHT -> x - width;
        };
    double top = y - ABOVE * face.size();
    return new TextBox(left, top, left + width, top + face.size());
  }

  boolean isWithin(double width, double height) {
    return left >= 0 && top >= 0 && right <= width && bottom <= height;
  }

  /** Whether two texts cover each other or, on one line, run together. */
  boolean touches(TextBox other) {
    return left < other.right + APART
        && other.left < right + APART
        && top < other.bottom
        && other.top < bottom;
  }

  /** Whether one lies over the other. */
  boolean covers(TextBox other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }
}
