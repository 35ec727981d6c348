package flankfit.sweep;

import flankfit.motion.Point;
import java.util.List;

/**
 * Lays circular arcs along a curve that is none: a spiral, an ellipse. Each goes through the
 * curve's ends and middle; it is halved until it stays within half a nanometre.
 */
final class CircularArcs {
  /** Greatest distance of an arc from the curve (mm): below the surface's 1e-6. */
  private static final double NEAR = 5e-7;

  /** Longest arc (rad): three points tell little of a longer one. */
  private static final double LONGEST = Math.PI / 2;

  /** Radius above which an arc is as good as straight (mm). */
  private static final double STRAIGHT = 1e6;

  private static final int MOST_HALVINGS = 16;

  private final Curve curve;
  private final int move;
  private final List<PathPiece> found;
  private final double[] a = new double[3];
  private final double[] m = new double[3];
  private final double[] b = new double[3];
  private final double[] q = new double[3];

  private CircularArcs(Curve curve, int move, List<PathPiece> found) {
    this.curve = curve;
    this.move = move;
    this.found = found;
  }

  /** A curve in space, by a share of it. */
  interface Curve {
    void pointAt(double share, double[] target);
  }

  /**
   * Lays arcs along a curve.
   *
   * @param sweep about the angle it turns through (rad), of either sign
   * @param move index of the tape's move the pieces shall name
   * @param found takes the pieces, in order
   */
  static void along(Curve curve, double sweep, int move, List<PathPiece> found) {
    int parts = Math.max(1, (int) Math.ceil(Math.abs(sweep) / LONGEST));
    CircularArcs arcs = new CircularArcs(curve, move, found);
    for (int i = 0; i < parts; i++) {
      arcs.lay((double) i / parts, (i + 1.0) / parts, 0);
    }
  }

  private void lay(double from, double to, int halvings) {
    curve.pointAt(from, a);
    curve.pointAt((from + to) / 2, m);
    curve.pointAt(to, b);
    PathPiece piece = throughPoints();
    if (halvings == MOST_HALVINGS || isNear(piece, from, to)) {
      found.add(piece);
      return;
    }
    lay(from, (from + to) / 2, halvings + 1);
    lay((from + to) / 2, to, halvings + 1);
  }

  private PathPiece throughPoints() {
    double ux = m[0] - a[0];
    double uy = m[1] - a[1];
    double vx = b[0] - a[0];
    double vy = b[1] - a[1];
    double cross = 2 * (ux * vy - uy * vx);
    double u = ux * ux + uy * uy;
    double v = vx * vx + vy * vy;
    double cx = (vy * u - uy * v) / cross;
    double cy = (ux * v - vx * u) / cross;
    double r = Math.hypot(cx, cy);
    if (!(r < STRAIGHT)) {
      return new PathPiece.Line(point(a), point(b), move);
    }
    double start = Math.atan2(-cy, -cx);
    double end = Math.atan2(vy - cy, vx - cx);
    double sweep = end - start;
    if (cross > 0 && sweep < 0) {
      sweep += 2 * Math.PI;
    } else if (cross < 0 && sweep > 0) {
      sweep -= 2 * Math.PI;
    }
    return new PathPiece.Arc(a[0] + cx, a[1] + cy, r, r, start, sweep, a[2], b[2], move);
  }

  private static Point point(double[] p) {
    return new Point(p[0], p[1], p[2]);
  }

  /** Whether the piece stays near at its quarters, where an arc through three points strays. */
  private boolean isNear(PathPiece piece, double from, double to) {
    double[] p = new double[3];
    for (double share = 0.25; share < 1; share += 0.5) {
      curve.pointAt(from + share * (to - from), q);
      piece.pointAt(share, p);
      if (Math.abs(p[0] - q[0]) + Math.abs(p[1] - q[1]) + Math.abs(p[2] - q[2]) > NEAR) {
        return false;
      }
    }
    return true;
  }
}
