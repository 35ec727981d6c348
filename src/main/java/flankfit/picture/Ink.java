package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;

/** What a {@link Diagram} is put on paper with: pixels from the upper left corner. */
interface Ink {
  /**
   * A line through points.
   *
   * @param points x and y in turn (px)
   * @param width width (px), above 0
   * @param dash length of dashes and of the gaps between them (px); 0 for a full line
   * @param colour 0xRRGGBB
   */
  void stroke(double[] points, double width, double dash, int colour);

  /**
   * The area between two lines over the same columns.
   *
   * @param x columns (px), rising
   * @param upper rows of the one line (px)
   * @param lower rows of the other (px)
   * @param colour 0xRRGGBB
   * @param alpha 0 to 1
   */
  void fill(double[] x, double[] upper, double[] lower, int colour, double alpha);

  /** A line of text; y is its base line (px). */
  void text(Face face, double x, double y, String text, Align align, int colour);

  /**
   * A picture of equal cells.
   *
   * @param columns cells in a row
   * @param cells colours 0xRRGGBB, rows from the top
   */
  void raster(double x, double y, double width, double height, int columns, int[] cells);
}
