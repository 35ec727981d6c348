package flankfit.metal;

/** A way from metal at share 0 to air at share 1. Used again by loops. */
final class Segment {
  /** Distance before a crossing at which a cut's direction is read (mm). */
  private static final double ASIDE = 1e-3;

  private double x;
  private double y;
  private double z;
  private double dx;
  private double dy;
  private double dz;
  private double length;

  /** Takes both ends (mm). */
  void between(double mx, double my, double mz, double ax, double ay, double az) {
    from(mx, my, mz);
    way(ax - mx, ay - my, az - mz);
  }

  /** Takes the end at share 0 (mm). */
  void from(double atX, double atY, double atZ) {
    x = atX;
    y = atY;
    z = atZ;
  }

  /** Takes the way from there to the end at share 1 (mm). */
  void way(double alongX, double alongY, double alongZ) {
    dx = alongX;
    dy = alongY;
    dz = alongZ;
    length = Math.sqrt(dx * dx + dy * dy + dz * dz);
  }

  double x(double share) {
    return x + share * dx;
  }

  double y(double share) {
    return y + share * dy;
  }

  double z(double share) {
    return z + share * dz;
  }

  double length() {
    return length;
  }

  /**
   * A share a little before a crossing, outside the volume that begins there, where its edges too
   * have one direction.
   */
  double before(double share) {
    return Math.max(0, share - ASIDE / Math.max(length, ASIDE));
  }
}
