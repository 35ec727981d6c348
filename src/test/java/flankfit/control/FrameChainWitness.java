package flankfit.control;

import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The chain from program coordinates to the part frame as products of 4×4 matrices, by the book and
 * slowly: mirror, scale, rotation, shifts and offsets, length. Everything is in millimetre.
 */
final class FrameChainWitness {
  /** Blocks that go less far make no move (mm). */
  private static final double STILL = 1e-9;

  /**
   * One move as it must be on the tape.
   *
   * @param end end in the part frame (mm)
   * @param plane plane in force
   * @param centre centre of an arc in the part frame (mm)
   * @param radius radius of an arc (mm)
   * @param sweep signed sweep of an arc on the part (rad)
   */
  record Expected(
      MoveKind kind, Point end, Plane plane, Point centre, double radius, double sweep) {}

  final List<Expected> moves = new ArrayList<>();
  final double[] tip;
  boolean absolute = true;
  Plane plane = Plane.XY;
  final boolean[] mirrored = new boolean[3];
  private final double[] mirrorAt = new double[3];
  boolean scaled;
  private final double[] scaleAt = new double[3];
  final double[] factor = {1, 1, 1};
  boolean rotated;
  private Plane rotationPlane = Plane.XY;
  private final double[] rotationAt = new double[3];
  private double degrees;
  final double[] local = new double[3];
  private final double[] shift = new double[3];
  boolean suspended;
  private final Map<String, double[]> offsets = new HashMap<>();
  private String work = "G54";
  private final Map<Integer, double[]> lengths = new HashMap<>();
  private int lengthSign;
  private int lengthRegister;
  private final double ownLength;

  /**
   * @param start where the tip stands, part frame (mm)
   * @param ownLength geometry of the register that belongs to the tool (mm)
   */
  FrameChainWitness(double[] start, double ownLength) {
    tip = start.clone();
    this.ownLength = ownLength;
  }

  void offset(String name, double... value) {
    offsets.put(name, value);
  }

  double[] offset(String name) {
    return offsets.getOrDefault(name, new double[3]).clone();
  }

  void length(int register, double geometry, double wear) {
    lengths.put(register, new double[] {geometry, wear});
  }

  double[] length(int register) {
    return lengths.getOrDefault(register, new double[2]).clone();
  }

  void select(String name) {
    work = name;
  }

  /** G43 for +1, G44 for -1, G49 for 0. */
  void lengthMode(int sign, int register) {
    lengthSign = sign;
    lengthRegister = register;
  }

  void mirror(int axis, double at) {
    mirrored[axis] = true;
    mirrorAt[axis] = at;
  }

  /** Scales about these coordinates; not a number where the tool is to stay. */
  void scale(double[] at, double[] by) {
    double[] present = apply(inverse(product(offsetMatrix(), rotationMatrix())), tip);
    for (int axis = 0; axis < 3; axis++) {
      scaleAt[axis] = Double.isNaN(at[axis]) ? present[axis] : at[axis];
      factor[axis] = by[axis];
    }
    scaled = true;
  }

  void endScale() {
    scaled = false;
    factor[0] = factor[1] = factor[2] = 1;
  }

  /** Rotates about these coordinates; not a number where the tool is to stay. */
  void rotate(double[] at, double angle) {
    double[] present = apply(inverse(offsetMatrix()), tip);
    for (int axis = 0; axis < 3; axis++) {
      rotationAt[axis] = Double.isNaN(at[axis]) ? present[axis] : at[axis];
    }
    degrees = absolute || !rotated ? angle : degrees + angle;
    rotationPlane = plane;
    rotated = true;
  }

  /** G92: the tool stands at these coordinates now; not a number for an axis not named. */
  void present(double[] coordinates) {
    double[] p = programmed();
    for (int axis = 0; axis < 3; axis++) {
      p[axis] = Double.isNaN(coordinates[axis]) ? p[axis] : coordinates[axis];
    }
    double[] seems = apply(chain(), p);
    for (int axis = 0; axis < 3; axis++) {
      shift[axis] += tip[axis] - seems[axis];
    }
  }

  void endShift() {
    shift[0] = shift[1] = shift[2] = 0;
    suspended = false;
  }

  /** Coordinates of the tool in the program frame. */
  double[] programmed() {
    return apply(inverse(chain()), tip);
  }

  /** Where words lead; not a number for an axis not named. */
  double[] aim(double[] words) {
    double[] p = programmed();
    for (int axis = 0; axis < 3; axis++) {
      if (!Double.isNaN(words[axis])) {
        p[axis] = absolute ? words[axis] : p[axis] + words[axis];
      }
    }
    return apply(chain(), p);
  }

  void line(boolean feed, double[] words) {
    straightTo(feed, aim(words));
  }

  void straightTo(boolean feed, double[] end) {
    double way = Math.hypot(Math.hypot(end[0] - tip[0], end[1] - tip[1]), end[2] - tip[2]);
    if (way > STILL) {
      MoveKind kind = feed ? MoveKind.LINE : MoveKind.RAPID;
      moves.add(new Expected(kind, point(end), plane, Point.ZERO, 0, 0));
      System.arraycopy(end, 0, tip, 0, 3);
    }
  }

  /**
   * An arc.
   *
   * @param words end words; not a number for an axis not named
   * @param centre centre in program coordinates
   * @param sweep signed sweep in the program frame (rad)
   */
  void arc(double[] words, double[] centre, double sweep) {
    double[] p = programmed();
    double r = Math.hypot(p[plane.u()] - centre[plane.u()], p[plane.v()] - centre[plane.v()]);
    double[] end = aim(words);
    boolean flips = mirrored[plane.u()] != mirrored[plane.v()];
    Point about = point(apply(chain(), centre));
    double scaledRadius = r * factor[plane.u()];
    double sense = flips ? -1 : 1;
    moves.add(new Expected(MoveKind.ARC, point(end), plane, about, scaledRadius, sense * sweep));
    System.arraycopy(end, 0, tip, 0, 3);
  }

  private static Point point(double[] p) {
    return new Point(p[0], p[1], p[2]);
  }

  /** Program frame to part frame. */
  private double[][] chain() {
    double[][] first = product(scaleMatrix(), mirrorMatrix());
    return product(offsetMatrix(), product(rotationMatrix(), first));
  }

  private double[][] mirrorMatrix() {
    double[][] m = identity();
    for (int axis = 0; axis < 3; axis++) {
      if (mirrored[axis]) {
        m[axis][axis] = -1;
        m[axis][3] = 2 * mirrorAt[axis];
      }
    }
    return m;
  }

  private double[][] scaleMatrix() {
    if (!scaled) {
      return identity();
    }
    double[][] m = identity();
    for (int axis = 0; axis < 3; axis++) {
      m[axis][axis] = factor[axis];
    }
    return about(scaleAt, m);
  }

  private double[][] rotationMatrix() {
    if (!rotated) {
      return identity();
    }
    double[][] m = identity();
    int u = rotationPlane.u();
    int v = rotationPlane.v();
    double angle = Math.toRadians(degrees);
    m[u][u] = Math.cos(angle);
    m[u][v] = -Math.sin(angle);
    m[v][u] = Math.sin(angle);
    m[v][v] = Math.cos(angle);
    return about(rotationAt, m);
  }

  private double[][] offsetMatrix() {
    double[][] m = translation(offset(work));
    m = product(translation(offset("common")), m);
    m = product(translation(local), m);
    if (!suspended) {
      m = product(translation(shift), m);
    }
    double[] register = length(lengthRegister);
    double used = lengthSign * (register[0] + register[1]);
    return product(translation(new double[] {0, 0, used - ownLength}), m);
  }

  private static double[][] identity() {
    return new double[][] {{1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}};
  }

  private static double[][] translation(double[] by) {
    double[][] m = identity();
    for (int axis = 0; axis < 3; axis++) {
      m[axis][3] = by[axis];
    }
    return m;
  }

  /** A map about a point instead of zero. */
  private static double[][] about(double[] point, double[][] m) {
    double[] back = {-point[0], -point[1], -point[2]};
    return product(translation(point), product(m, translation(back)));
  }

  private static double[][] product(double[][] a, double[][] b) {
    double[][] m = new double[4][4];
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        for (int k = 0; k < 4; k++) {
          m[i][j] += a[i][k] * b[k][j];
        }
      }
    }
    return m;
  }

  private static double[] apply(double[][] m, double[] p) {
    double[] q = new double[3];
    for (int i = 0; i < 3; i++) {
      q[i] = m[i][0] * p[0] + m[i][1] * p[1] + m[i][2] * p[2] + m[i][3];
    }
    return q;
  }

  /** By elimination with the largest pivot. */
  private static double[][] inverse(double[][] of) {
    double[][] m = new double[4][8];
    for (int i = 0; i < 4; i++) {
      System.arraycopy(of[i], 0, m[i], 0, 4);
      m[i][4 + i] = 1;
    }
    for (int column = 0; column < 4; column++) {
      int pivot = column;
      for (int i = column + 1; i < 4; i++) {
        pivot = Math.abs(m[i][column]) > Math.abs(m[pivot][column]) ? i : pivot;
      }
      double[] row = m[pivot];
      m[pivot] = m[column];
      m[column] = row;
      for (int j = 7; j >= column; j--) {
        row[j] /= row[column];
      }
      for (int i = 0; i < 4; i++) {
        double share = i == column ? 0 : m[i][column];
        for (int j = column; j < 8 && share != 0; j++) {
          m[i][j] -= share * row[j];
        }
      }
    }
    double[][] result = new double[4][4];
    for (int i = 0; i < 4; i++) {
      System.arraycopy(m[i], 4, result[i], 0, 4);
    }
    return result;
  }
}
