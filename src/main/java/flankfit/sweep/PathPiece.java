package flankfit.sweep;

import flankfit.motion.Point;
import flankfit.unit.Require;
import java.util.Objects;

/** A piece of the path of a cutter's lowest point, part frame; its axis stands along Z. */
public sealed interface PathPiece permits PathPiece.Line, PathPiece.Arc {
  /** Index of the tape's move it comes from; -1 when it comes from none. */
  int move();

  /**
   * The point at a share of the piece.
   *
   * @param share 0 at the start to 1 at the end (1)
   * @param target takes x, y, z (mm); at least 3 long
   */
  void pointAt(double share, double[] target);

  /** A straight piece. */
  record Line(Point from, Point to, int move) implements PathPiece {
    public Line {
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
    }

    @Override
    public void pointAt(double share, double[] target) {
      target[0] = from.x() + share * (to.x() - from.x());
      target[1] = from.y() + share * (to.y() - from.y());
      target[2] = from.z() + share * (to.z() - from.z());
    }
  }

  /**
   * An arc in the XY plane with a steady rise, spiral where its radii differ.
   *
   * @param x centre (mm)
   * @param y centre (mm)
   * @param radius at its start (mm), not below 0
   * @param endRadius at its end (mm), not below 0
   * @param startAngle polar angle of its first point about the centre (rad)
   * @param sweep signed sweep (rad), positive anticlockwise seen from +Z, not 0; may exceed a turn
   * @param zStart height of its first point (mm)
   * @param zEnd height of its last point (mm)
   * @param move index of the tape's move; -1 for none
   */
  record Arc(
      double x,
      double y,
      double radius,
      double endRadius,
      double startAngle,
      double sweep,
      double zStart,
      double zEnd,
      int move)
      implements PathPiece {
    public Arc {
      Require.finite("x", x);
      Require.finite("y", y);
      Require.notNegative("radius", radius);
      Require.notNegative("endRadius", endRadius);
      Require.finite("startAngle", startAngle);
      Require.positive("size of sweep", Math.abs(sweep));
      Require.finite("zStart", zStart);
      Require.finite("zEnd", zEnd);
    }

    /** Signed rise for one radian anticlockwise (mm). */
    public double perRadian() {
      return (zEnd - zStart) / sweep;
    }

    @Override
    public void pointAt(double share, double[] target) {
      double r = radius + share * (endRadius - radius);
      double a = startAngle + share * sweep;
      target[0] = x + r * Math.cos(a);
      target[1] = y + r * Math.sin(a);
      target[2] = zStart + share * (zEnd - zStart);
    }
  }
}
