package flankfit.solid;

/**
 * A plane to cut at, seen from the side its normal points to.
 *
 * @param normalX of the unit normal
 * @param normalY of the unit normal
 * @param normalZ of the unit normal
 * @param offset distance of the plane from the origin along the normal (mm)
 * @param rightX of the unit direction that is to the right when looking against the normal
 * @param rightY of that direction
 * @param rightZ of that direction
 */
public record SectionPlane(
    double normalX,
    double normalY,
    double normalZ,
    double offset,
    double rightX,
    double rightY,
    double rightZ) {
  private static final double UNIT = 1e-9;

  /** Checks the directions. */
  public SectionPlane {
    double n = normalX * normalX + normalY * normalY + normalZ * normalZ;
    double r = rightX * rightX + rightY * rightY + rightZ * rightZ;
    double dot = normalX * rightX + normalY * rightY + normalZ * rightZ;
    if (!(Math.abs(n - 1) < UNIT && Math.abs(r - 1) < UNIT && Math.abs(dot) < UNIT)) {
      throw new IllegalArgumentException(
          "normal and right of a section must be unit vectors at a right angle, their squares are "
              + n
              + " and "
              + r
              + ", their product is "
              + dot);
    }
    if (!Double.isFinite(offset)) {
      throw new IllegalArgumentException("offset of a section is " + offset + " mm");
    }
  }

  /**
   * The plane through a point, across a direction of any length; its right is +X, or +Y where the
   * direction is nearer to X than to the others, made square to the direction.
   *
   * @throws IllegalArgumentException if the direction is zero or not finite
   */
  public static SectionPlane through(
      double x, double y, double z, double alongX, double alongY, double alongZ) {
    double length = Math.sqrt(alongX * alongX + alongY * alongY + alongZ * alongZ);
    if (!(length > 0) || Double.isInfinite(length)) {
      throw new IllegalArgumentException(
          "direction " + alongX + " " + alongY + " " + alongZ + " of a section has no length");
    }
    double nx = alongX / length;
    double ny = alongY / length;
    double nz = alongZ / length;
    boolean nearX = Math.abs(nx) > Math.abs(ny) && Math.abs(nx) > Math.abs(nz);
    double part = nearX ? ny : nx;
    double rx = (nearX ? 0 : 1) - part * nx;
    double ry = (nearX ? 1 : 0) - part * ny;
    double rz = -part * nz;
    double r = Math.sqrt(rx * rx + ry * ry + rz * rz);
    return new SectionPlane(nx, ny, nz, nx * x + ny * y + nz * z, rx / r, ry / r, rz / r);
  }

  /** Height of a place above the plane (mm). */
  double height(double x, double y, double z) {
    return normalX * x + normalY * y + normalZ * z - offset;
  }

  /** Of the unit direction upward on the plane: normal times right. */
  double upX() {
    return normalY * rightZ - normalZ * rightY;
  }

  double upY() {
    return normalZ * rightX - normalX * rightZ;
  }

  double upZ() {
    return normalX * rightY - normalY * rightX;
  }

  /** Coordinate to the right of a place, 0 in line with the origin (mm). */
  double right(double x, double y, double z) {
    return rightX * x + rightY * y + rightZ * z;
  }

  /** Coordinate upward of a place (mm). */
  double up(double x, double y, double z) {
    return upX() * x + upY() * y + upZ() * z;
  }

  /** X of the place on the plane with these coordinates (mm). */
  public double x(double right, double up) {
    return offset * normalX + right * rightX + up * upX();
  }

  /** Y of the place on the plane with these coordinates (mm). */
  public double y(double right, double up) {
    return offset * normalY + right * rightY + up * upY();
  }

  /** Z of the place on the plane with these coordinates (mm). */
  public double z(double right, double up) {
    return offset * normalZ + right * rightZ + up * upZ();
  }
}
