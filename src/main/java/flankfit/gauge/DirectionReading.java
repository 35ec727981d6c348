package flankfit.gauge;

/**
 * A wall read in one direction: what each groove along the wanted helix shows there, the lowest
 * first. Grooves are numbered by the helix from direction 0 on, so that neighbouring directions
 * have the same number for the same groove.
 */
final class DirectionReading {
  final double theta;
  final long first;
  final double[] height;
  final double[] bottom;
  final double[] ridgeUp;
  final double[] ridgeDown;
  final double[] upAtRidge;
  final double[] downAtRidge;
  final double[] upAtBottom;
  final double[] downAtBottom;
  final double[] up;
  final double[] down;

  /** Depth of the wall at the mouth's face (mm). */
  final double face;

  private DirectionReading(double theta, long first, int grooves, int depths, double face) {
    this.theta = theta;
    this.first = first;
    this.face = face;
    this.height = new double[grooves];
    this.bottom = new double[grooves];
    this.ridgeUp = new double[grooves];
    this.ridgeDown = new double[grooves];
    this.upAtRidge = new double[grooves];
    this.downAtRidge = new double[grooves];
    this.upAtBottom = new double[grooves];
    this.downAtBottom = new double[grooves];
    this.up = new double[grooves * depths];
    this.down = new double[grooves * depths];
  }

  /**
   * Reads the grooves of a range.
   *
   * @param phase height of groove 0 in direction 0 (mm)
   * @param low least height of grooves' middles (mm)
   * @param high greatest height (mm)
   * @param face depth of the wall at the mouth's face (mm); not a number where nobody asks
   */
  static DirectionReading of(
      WallSection section,
      GrooveReader reader,
      double phase,
      double low,
      double high,
      double face) {
    double base = phase + section.winding().rise() * section.theta();
    double pitch = section.winding().pitch();
    long first = (long) Math.ceil((low - base) / pitch);
    int grooves = Math.max(0, (int) ((long) Math.floor((high - base) / pitch) - first + 1));
    DirectionReading read =
        new DirectionReading(section.theta(), first, grooves, reader.depths(), face);
    for (int i = 0; i < grooves; i++) {
      read.height[i] = base + (first + i) * pitch;
      reader.read(section, read.height[i]);
      read.take(i, reader);
    }
    return read;
  }

  private void take(int i, GrooveReader reader) {
    bottom[i] = reader.bottom;
    ridgeUp[i] = reader.ridgeUp;
    ridgeDown[i] = reader.ridgeDown;
    upAtRidge[i] = reader.upAtRidge;
    downAtRidge[i] = reader.downAtRidge;
    upAtBottom[i] = reader.upAtBottom;
    downAtBottom[i] = reader.downAtBottom;
    int depths = reader.depths();
    System.arraycopy(reader.up, 0, up, i * depths, depths);
    System.arraycopy(reader.down, 0, down, i * depths, depths);
  }

  int grooves() {
    return height.length;
  }
}
