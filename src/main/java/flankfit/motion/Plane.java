package flankfit.motion;

/**
 * Plane of an arc. Anticlockwise runs from {@link #u} towards {@link #v}, seen from the tip of the
 * normal {@link #n}.
 */
public enum Plane {
  XY(0, 1, 2),
  ZX(2, 0, 1),
  YZ(1, 2, 0);

  private final int u;
  private final int v;
  private final int n;

  Plane(int u, int v, int n) {
    this.u = u;
    this.v = v;
    this.n = n;
  }

  /** Index of the first axis: 0 X, 1 Y, 2 Z. */
  public int u() {
    return u;
  }

  /** Index of the second axis. */
  public int v() {
    return v;
  }

  /** Index of the normal axis. */
  public int n() {
    return n;
  }
}
