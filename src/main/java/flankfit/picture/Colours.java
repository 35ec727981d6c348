package flankfit.picture;

/** Arithmetic on colours written as 0xRRGGBB. */
public final class Colours {
  private Colours() {}

  /** A colour between two: share 0 gives the first, 1 the second. */
  public static int mix(int first, int second, double share) {
    int mixed = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int a = first >> shift & 0xFF;
      int b = second >> shift & 0xFF;
      mixed |= (int) Math.round(a + (b - a) * share) << shift;
    }
    return mixed;
  }

  /** Writes red, green, blue and alpha, each 0 to 1, from an index on. */
  public static void put(int colour, double alpha, float[] target, int at) {
    target[at] = (colour >> 16 & 0xFF) / 255f;
    target[at + 1] = (colour >> 8 & 0xFF) / 255f;
    target[at + 2] = (colour & 0xFF) / 255f;
    target[at + 3] = (float) alpha;
  }

  /** The colour that red, green and blue from an index on stand for. */
  static int rgb(float[] source, int at) {
    return Math.round(source[at] * 255) << 16
        | Math.round(source[at + 1] * 255) << 8
        | Math.round(source[at + 2] * 255);
  }

  /**
   * The contrast of two colours, 1 to 21.
   *
   * @see "WCAG 2.2, definitions of contrast ratio and relative luminance"
   */
  public static double contrast(int a, int b) {
    double la = luminance(a);
    double lb = luminance(b);
    return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
  }

  private static double luminance(int colour) {
    return 0.2126 * linear(colour >> 16 & 0xFF)
        + 0.7152 * linear(colour >> 8 & 0xFF)
        + 0.0722 * linear(colour & 0xFF);
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4);
  }
}
