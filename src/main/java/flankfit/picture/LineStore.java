package flankfit.picture;

import flankfit.motion.Point;
import java.util.Arrays;

/**
 * Polylines on their way to the graphics memory: one texel a point, in slots of 1024 texels. A
 * chord runs from a texel to the next one; the last point of a slot is the first of the next, so
 * that each slot can be drawn alone.
 */
final class LineStore {
  /** Texels of a slot; it holds one chord less. */
  static final int SLOT = 1024;

  /** Style of a chord that is not drawn. */
  static final byte HIDDEN = (byte) 255;

  private static final int FLOATS = 4;

  private final Point origin;
  private float[] points = new float[FLOATS * SLOT];
  private byte[] styles = new byte[SLOT];
  private int size;

  /** An empty store of points about an origin. */
  LineStore(Point origin) {
    this.origin = origin;
  }

  /** Number of texels used. */
  int size() {
    return size;
  }

  /** Four floats a texel: x, y, z from the origin, length from the move's start (mm). */
  float[] points() {
    return points;
  }

  /** Style of the chord that starts at each texel. */
  byte[] styles() {
    return styles;
  }

  /** Texel of the point last written: chords of what follows start here or later. */
  int last() {
    return size - 1;
  }

  /** Begins a polyline at a point (mm). */
  void moveTo(double x, double y, double z) {
    append(x, y, z, 0);
  }

  /**
   * Draws on to a point.
   *
   * @param length from the move's start to there (mm)
   * @param style style of this chord
   */
  void lineTo(double x, double y, double z, double length, int style) {
    styles[size - 1] = (byte) style;
    append(x, y, z, length);
  }

  /** Begins a new length at the point last written. */
  void restart() {
    if (points[FLOATS * (size - 1) + 3] != 0) {
      int at = FLOATS * (size - 1);
      appendRaw(points[at], points[at + 1], points[at + 2], 0);
    }
  }

  /** A straight line on its own (mm). */
  void segment(Point a, Point b, int style) {
    moveTo(a.x(), a.y(), a.z());
    lineTo(b.x(), b.y(), b.z(), a.distance(b), style);
  }

  /** A circle about the vertical (mm). */
  void circle(double x, double y, double z, double radius, int chords, int style) {
    moveTo(x + radius, y, z);
    for (int i = 1; i <= chords; i++) {
      double a = 2 * Math.PI * i / chords;
      lineTo(x + radius * StrictMath.cos(a), y + radius * StrictMath.sin(a), z, radius * a, style);
    }
  }

  private void append(double x, double y, double z, double length) {
    appendRaw(
        (float) (x - origin.x()),
        (float) (y - origin.y()),
        (float) (z - origin.z()),
        (float) length);
  }

  private void appendRaw(float x, float y, float z, float length) {
    put(x, y, z, length);
    if (size % SLOT == 0) {
      put(x, y, z, length);
    }
  }

  private void put(float x, float y, float z, float length) {
    if (size == styles.length) {
      points = Arrays.copyOf(points, points.length * 2);
      styles = Arrays.copyOf(styles, styles.length * 2);
    }
    int at = FLOATS * size;
    points[at] = x;
    points[at + 1] = y;
    points[at + 2] = z;
    points[at + 3] = length;
    styles[size] = HIDDEN;
    size++;
  }
}
