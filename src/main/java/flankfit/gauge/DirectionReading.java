package flankfit.gauge;

/**
 * A wall read in one direction: what each groove along the wanted helix shows there, the lowest
 * first. Grooves are numbered by the helix from direction 0 on, so that neighbouring directions
 * have the same number for the same groove.
 */
final class DirectionReading extends GrooveColumns {
  final double theta;
  final long first;

  /** Depth of the wall at the mouth's face (mm). */
  final double face;

  private DirectionReading(double theta, long first, int grooves, int depths, double face) {
    super(grooves, depths);
    this.theta = theta;
    this.first = first;
    this.face = face;
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
      double height = base + (first + i) * pitch;
      reader.read(section, height);
      read.take(i, height, reader);
    }
    return read;
  }

  int grooves() {
    return height.length;
  }
}
