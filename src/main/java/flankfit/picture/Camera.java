package flankfit.picture;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.unit.Require;

/**
 * An orthographic eye: where it looks, from where, and how many millimetres a pixel shows. Changes
 * in place; not for use by several threads. Pixels count from the lower left corner of the frame.
 */
public final class Camera {
  private static final double FINEST = 1e-5;
  private static final double COARSEST = 1e3;

  private final double[] centre = new double[3];
  private final double[] right = new double[3];
  private final double[] up = new double[3];
  private final double[] eye = new double[3];
  private double azimuth;
  private double elevation;
  private double millimetresPerPixel = 0.1;
  private int width = 1;
  private int height = 1;

  /** An eye that looks at the part's zero from a standard view. */
  public Camera(View view) {
    look(view);
  }

  /** Turns to a standard view; centre and scale stay. */
  public void look(View view) {
    turn(view.azimuth(), view.elevation());
  }

  /**
   * Turns to any direction; centre and scale stay.
   *
   * @param toAzimuth see {@link View} (rad)
   * @param toElevation above the level (rad); held within straight down and straight up
   */
  public void turn(double toAzimuth, double toElevation) {
    azimuth = Math.IEEEremainder(toAzimuth, 2 * Math.PI);
    elevation = Math.max(-Math.PI / 2, Math.min(Math.PI / 2, toElevation));
    double sa = StrictMath.sin(azimuth);
    double ca = StrictMath.cos(azimuth);
    double se = StrictMath.sin(elevation);
    double ce = StrictMath.cos(elevation);
    set(right, ca, sa, 0);
    set(up, -se * sa, se * ca, ce);
    set(eye, ce * sa, -ce * ca, se);
  }

  private static void set(double[] target, double x, double y, double z) {
    target[0] = x;
    target[1] = y;
    target[2] = z;
  }

  /** Where the eye stands round the part (rad), in [-π, π]. */
  public double azimuth() {
    return azimuth;
  }

  /** How far the eye stands above the level (rad). */
  public double elevation() {
    return elevation;
  }

  /** What a pixel shows (mm). */
  public double millimetresPerPixel() {
    return millimetresPerPixel;
  }

  /** Width of the frame (px). */
  public int width() {
    return width;
  }

  /** Height of the frame (px). */
  public int height() {
    return height;
  }

  /** The direction on the part that an axis of the frame shows, to the right: 0 X, 1 Y, 2 Z (1). */
  public double right(int axis) {
    return right[axis];
  }

  /** The direction on the part that points upwards in the frame (1). */
  public double up(int axis) {
    return up[axis];
  }

  /** The direction on the part that points to the eye (1). */
  public double eye(int axis) {
    return eye[axis];
  }

  /** The point in the middle of the frame. */
  public Point centre() {
    return new Point(centre[0], centre[1], centre[2]);
  }

  /** Looks at another point. */
  public void centre(Point point) {
    set(centre, point.x(), point.y(), point.z());
  }

  /** Takes another frame size (px), each at least 1. */
  public void resize(int toWidth, int toHeight) {
    width = Math.max(1, toWidth);
    height = Math.max(1, toHeight);
  }

  /** Takes another scale (mm per px), held within sense. */
  public void scale(double toMillimetresPerPixel) {
    Require.positive("millimetresPerPixel", toMillimetresPerPixel);
    millimetresPerPixel = Math.max(FINEST, Math.min(COARSEST, toMillimetresPerPixel));
  }

  /** Whether Z runs straight up the frame, so that a depth rule holds. */
  public boolean showsDepth() {
    return Math.abs(elevation) < 1e-9;
  }

  /** Column of a point (px). */
  public double column(double x, double y, double z) {
    return width / 2.0 + along(right, x, y, z) / millimetresPerPixel;
  }

  /** Row of a point (px), upwards. */
  public double row(double x, double y, double z) {
    return height / 2.0 + along(up, x, y, z) / millimetresPerPixel;
  }

  private double along(double[] axis, double x, double y, double z) {
    return axis[0] * (x - centre[0]) + axis[1] * (y - centre[1]) + axis[2] * (z - centre[2]);
  }

  /** Shifts what is seen by pixels, as a hand shifts paper. */
  public void pan(double columns, double rows) {
    for (int k = 0; k < 3; k++) {
      centre[k] -= (right[k] * columns + up[k] * rows) * millimetresPerPixel;
    }
  }

  /**
   * Zooms so that the point under the pointer stays there.
   *
   * @param factor scale change, above 1 to come nearer (1)
   * @param column of the pointer (px)
   * @param row of the pointer (px), upwards
   */
  public void zoom(double factor, double column, double row) {
    double dx = column - width / 2.0;
    double dy = row - height / 2.0;
    double before = millimetresPerPixel;
    scale(before / factor);
    double shift = before - millimetresPerPixel;
    for (int k = 0; k < 3; k++) {
      centre[k] += (right[k] * dx + up[k] * dy) * shift;
    }
  }

  /**
   * Moves and scales so that a box fills the frame between its insets.
   *
   * @param box what shall be seen
   * @param insets left, right, bottom, top (px)
   */
  public void fit(Extents box, double[] insets) {
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE};
    centre(box.middle());
    for (int corner = 0; corner < 8; corner++) {
      double x = (corner & 1) == 0 ? box.min().x() : box.max().x();
      double y = (corner & 2) == 0 ? box.min().y() : box.max().y();
      double z = (corner & 4) == 0 ? box.min().z() : box.max().z();
      double u = along(right, x, y, z);
      double v = along(up, x, y, z);
      low[0] = Math.min(low[0], u);
      high[0] = Math.max(high[0], u);
      low[1] = Math.min(low[1], v);
      high[1] = Math.max(high[1], v);
    }
    double roomX = Math.max(16, width - insets[0] - insets[1]);
    double roomY = Math.max(16, height - insets[2] - insets[3]);
    double wanted = Math.max((high[0] - low[0]) / roomX, (high[1] - low[1]) / roomY);
    scale(Math.max(wanted, 1e-4));
    pan((insets[0] - insets[1]) / 2, (insets[2] - insets[3]) / 2);
  }

  /**
   * Writes the matrix from millimetres about an origin to clip space, by columns.
   *
   * @param origin what positions are relative to
   * @param depth half the depth that is kept (mm)
   * @param target takes 16 numbers
   */
  void writeClip(Point origin, double depth, float[] target) {
    double sx = 2 / (width * millimetresPerPixel);
    double sy = 2 / (height * millimetresPerPixel);
    double sz = -1 / depth;
    double ox = origin.x() - centre[0];
    double oy = origin.y() - centre[1];
    double oz = origin.z() - centre[2];
    for (int k = 0; k < 3; k++) {
      target[4 * k] = (float) (right[k] * sx);
      target[4 * k + 1] = (float) (up[k] * sy);
      target[4 * k + 2] = (float) (eye[k] * sz);
      target[4 * k + 3] = 0;
    }
    target[12] = (float) ((right[0] * ox + right[1] * oy + right[2] * oz) * sx);
    target[13] = (float) ((up[0] * ox + up[1] * oy + up[2] * oz) * sy);
    target[14] = (float) ((eye[0] * ox + eye[1] * oy + eye[2] * oz) * sz);
    target[15] = 1;
  }

  /** Writes the matrix that turns directions on the part towards the eye, by columns. */
  void writeView(float[] target) {
    for (int k = 0; k < 3; k++) {
      target[4 * k] = (float) right[k];
      target[4 * k + 1] = (float) up[k];
      target[4 * k + 2] = (float) eye[k];
      target[4 * k + 3] = 0;
      target[12 + k] = 0;
    }
    target[15] = 1;
  }
}
