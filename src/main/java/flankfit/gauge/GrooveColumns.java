package flankfit.gauge;

/** What was read of grooves, each in one direction; filled once, then only read. */
class GrooveColumns {
  final double[] height;
  final double[] bottom;
  final double[] ridgeUp;
  final double[] ridgeDown;
  final double[] upAtRidge;
  final double[] downAtRidge;
  final double[] upAtBottom;
  final double[] downAtBottom;

  /** The flanks, as many depths for each groove. */
  final double[] up;

  final double[] down;
  private final int depths;

  /**
   * Columns yet empty.
   *
   * @param size number of grooves
   * @param depths number of depths on which flanks are read
   */
  GrooveColumns(int size, int depths) {
    this.depths = depths;
    this.height = new double[size];
    this.bottom = new double[size];
    this.ridgeUp = new double[size];
    this.ridgeDown = new double[size];
    this.upAtRidge = new double[size];
    this.downAtRidge = new double[size];
    this.upAtBottom = new double[size];
    this.downAtBottom = new double[size];
    this.up = new double[size * depths];
    this.down = new double[size * depths];
  }

  /** Takes over what a reader found of the groove at a height (mm). */
  final void take(int at, double middle, GrooveReader reader) {
    height[at] = middle;
    bottom[at] = reader.bottom;
    ridgeUp[at] = reader.ridgeUp;
    ridgeDown[at] = reader.ridgeDown;
    upAtRidge[at] = reader.upAtRidge;
    downAtRidge[at] = reader.downAtRidge;
    upAtBottom[at] = reader.upAtBottom;
    downAtBottom[at] = reader.downAtBottom;
    System.arraycopy(reader.up, 0, up, at * depths, depths);
    System.arraycopy(reader.down, 0, down, at * depths, depths);
  }

  /** Takes over a groove of other columns with as many depths. */
  final void copy(int at, GrooveColumns from, int groove) {
    height[at] = from.height[groove];
    bottom[at] = from.bottom[groove];
    ridgeUp[at] = from.ridgeUp[groove];
    ridgeDown[at] = from.ridgeDown[groove];
    upAtRidge[at] = from.upAtRidge[groove];
    downAtRidge[at] = from.downAtRidge[groove];
    upAtBottom[at] = from.upAtBottom[groove];
    downAtBottom[at] = from.downAtBottom[groove];
    System.arraycopy(from.up, groove * depths, up, at * depths, depths);
    System.arraycopy(from.down, groove * depths, down, at * depths, depths);
  }
}
