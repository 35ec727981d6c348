package flankfit.control;

import flankfit.motion.Plane;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * A seeded path of lines, arcs and helices in plane coordinates whose headings stay within 70° of
 * the first axis, so that it never crosses itself.
 *
 * @param points corners u, v, n (mm), one more than pieces
 * @param pieces what joins them
 */
record RandomPath(List<double[]> points, List<Piece> pieces) {
  private static final double STEEPEST = Math.toRadians(70);

  /**
   * A line, or an arc about a centre.
   *
   * @param sense +1 anticlockwise, -1 clockwise, 0 for a line
   */
  record Piece(int sense, double centreU, double centreV) {}

  /** A path whose lines are at least four times the radius long. */
  static RandomPath of(Random random, double rho, int length, boolean linesOnly) {
    return grow(random, rho, length, linesOnly, 0.6);
  }

  /** A path whose pieces meet tangentially. */
  static RandomPath tangent(Random random, double rho, int length) {
    return grow(random, rho, length, false, 0);
  }

  private static RandomPath grow(
      Random random, double rho, int length, boolean linesOnly, double corners) {
    List<double[]> points = new ArrayList<>();
    List<Piece> pieces = new ArrayList<>();
    double u = 20 * (random.nextDouble() - 0.5);
    double v = 20 * (random.nextDouble() - 0.5);
    double n = random.nextDouble() - 0.5;
    points.add(new double[] {u, v, n});
    double heading = heading(random);
    for (int i = 0; i < length; i++) {
      if (random.nextDouble() < corners) {
        heading = random.nextInt(4) > 0 ? heading(random) : nearly(random, heading);
      }
      n += random.nextBoolean() ? 0 : random.nextDouble() - 0.5;
      double next = heading(random);
      if (linesOnly || random.nextBoolean() || Math.abs(next - heading) < 0.2) {
        double reach = rho * (4 + 6 * random.nextDouble());
        u += reach * Math.cos(heading);
        v += reach * Math.sin(heading);
        pieces.add(new Piece(0, 0, 0));
      } else {
        int sense = next > heading ? 1 : -1;
        double least = Math.max(2, 4 / Math.abs(next - heading));
        double r = rho * (least + 5 * random.nextDouble());
        double cu = u - sense * r * Math.sin(heading);
        double cv = v + sense * r * Math.cos(heading);
        u = cu + sense * r * Math.sin(next);
        v = cv - sense * r * Math.cos(next);
        heading = next;
        pieces.add(new Piece(sense, cu, cv));
      }
      points.add(new double[] {u, v, n});
    }
    return new RandomPath(points, pieces);
  }

  private static double heading(Random random) {
    return STEEPEST * (2 * random.nextDouble() - 1);
  }

  /** A heading that misses another by 1e-9 to 1e-2. */
  private static double nearly(Random random, double heading) {
    double miss = Math.pow(10, -2 - 7 * random.nextDouble());
    return heading + (random.nextBoolean() ? miss : -miss);
  }

  /**
   * The path with every coordinate rounded, so that arcs become spirals and joins slight corners.
   */
  RandomPath rounded(double steps) {
    return mapped(u -> Math.rint(u * steps) / steps, v -> Math.rint(v * steps) / steps, 1);
  }

  /** The same path the other way. */
  RandomPath reversed() {
    List<double[]> back = new ArrayList<>(points);
    Collections.reverse(back);
    List<Piece> turned = new ArrayList<>();
    for (int i = pieces.size() - 1; i >= 0; i--) {
      Piece p = pieces.get(i);
      turned.add(new Piece(-p.sense(), p.centreU(), p.centreV()));
    }
    return new RandomPath(back, turned);
  }

  /** The path mirrored in the first axis. */
  RandomPath mirrored() {
    return mapped(v -> v, v -> -v, -1);
  }

  private RandomPath mapped(DoubleUnaryOperator onU, DoubleUnaryOperator onV, int senses) {
    List<double[]> moved = new ArrayList<>();
    for (double[] p : points) {
      moved.add(new double[] {onU.applyAsDouble(p[0]), onV.applyAsDouble(p[1]), p[2]});
    }
    List<Piece> turned = new ArrayList<>();
    for (Piece p : pieces) {
      turned.add(
          new Piece(
              senses * p.sense(), onU.applyAsDouble(p.centreU()), onV.applyAsDouble(p.centreV())));
    }
    return new RandomPath(moved, turned);
  }

  /** The path turned about the origin and shifted. */
  RandomPath turned(double angle, double du, double dv) {
    List<double[]> moved = new ArrayList<>();
    for (double[] p : points) {
      moved.add(rotate(p[0], p[1], p[2], angle, du, dv));
    }
    List<Piece> turned = new ArrayList<>();
    for (Piece p : pieces) {
      double[] c = rotate(p.centreU(), p.centreV(), 0, angle, du, dv);
      turned.add(new Piece(p.sense(), c[0], c[1]));
    }
    return new RandomPath(moved, turned);
  }

  static double[] rotate(double u, double v, double n, double angle, double du, double dv) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return new double[] {c * u - s * v + du, s * u + c * v + dv, n};
  }

  /**
   * A program that follows it under compensation; the path's first block stands on line 2.
   *
   * @param ends two points u, v from which it starts up and to which it cancels
   */
  Contour contour(Plane plane, double sigma, double[][] ends) {
    double[] first = points.get(0);
    double[] last = points.get(points.size() - 1);
    double[] s = part(plane, ends[0][0], ends[0][1], first[2]);
    Contour c = new Contour(plane, s[0], s[1], s[2]).on(sigma);
    double[] p = part(plane, first[0], first[1], first[2]);
    c.line(p[0], p[1], p[2]);
    for (int i = 0; i < pieces.size(); i++) {
      double[] from = points.get(i);
      double[] to = points.get(i + 1);
      double[] q = part(plane, to[0], to[1], to[2]);
      Piece piece = pieces.get(i);
      if (piece.sense() == 0) {
        c.line(q[0], q[1], q[2]);
      } else {
        double cu = piece.centreU() - from[0];
        double cv = piece.centreV() - from[1];
        c.arc(piece.sense(), q[0], q[1], q[2], cu, cv);
      }
    }
    double[] e = part(plane, ends[1][0], ends[1][1], last[2]);
    return c.off().line(e[0], e[1], e[2]);
  }

  /** Start and end beyond the path's own, in its first and last direction of travel or near it. */
  double[][] ends(double away) {
    double[] first = points.get(0);
    double[] last = points.get(points.size() - 1);
    return new double[][] {{first[0] - away, first[1]}, {last[0] + away, last[1]}};
  }

  private static double[] part(Plane plane, double u, double v, double n) {
    double[] p = new double[3];
    p[plane.u()] = u;
    p[plane.v()] = v;
    p[plane.n()] = n;
    return p;
  }
}
