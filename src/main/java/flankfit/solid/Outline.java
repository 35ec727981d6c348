package flankfit.solid;

/** Loops on a plane. */
final class Outline {
  private final double[] places;
  private final int[] makers;
  private final int[] starts;

  Outline(double[] places, int[] makers, int[] starts) {
    this.places = places;
    this.makers = makers;
    this.starts = starts;
  }

  /** Right and up of each point (mm). */
  double[] places() {
    return places;
  }

  /** Maker of the piece that starts at each point. */
  int[] makers() {
    return makers;
  }

  /** First point of each loop, and the number of points. */
  int[] starts() {
    return starts;
  }
}
