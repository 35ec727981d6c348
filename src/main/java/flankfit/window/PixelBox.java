package flankfit.window;

/**
 * A part of a picture (px from its upper left corner).
 *
 * @param left first column
 * @param top first row
 * @param right column after the last
 * @param bottom row after the last
 */
record PixelBox(int left, int top, int right, int bottom) {
  PixelBox {
    if (left < 0 || top < 0 || right <= left || bottom <= top) {
      throw new IllegalArgumentException(
          "a part of a picture has pixels: " + left + " " + top + " " + right + " " + bottom);
    }
  }

  int width() {
    return right - left;
  }

  int height() {
    return bottom - top;
  }

  /**
   * The part of a picture: red, green, blue, rows from the top.
   *
   * @param rgb the picture
   * @param width its width (px)
   */
  byte[] of(byte[] rgb, int width) {
    byte[] part = new byte[3 * width() * height()];
    for (int row = 0; row < height(); row++) {
      System.arraycopy(rgb, 3 * ((top + row) * width + left), part, 3 * row * width(), 3 * width());
    }
    return part;
  }
}
