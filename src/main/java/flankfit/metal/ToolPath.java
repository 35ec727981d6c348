package flankfit.metal;

import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;

/** The path of the tool's tip in one move, loaded anew for each; share 0 to 1. Not thread-safe. */
final class ToolPath {
  /** How a path is taken: each has its own closed forms. */
  enum Kind {
    /** Nothing moves, or nothing is loaded. */
    REST,
    /** Straight, level. */
    LEVEL,
    /** Straight along the tool. */
    PLUNGE,
    /** Straight, neither level nor along the tool. */
    RAMP,
    /** An arc about the tool's direction, level or a helix. */
    ROUND,
    /** An arc in another plane. */
    TILTED
  }

  Kind kind = Kind.REST;

  double fromX;
  double fromY;
  double fromZ;
  double toX;
  double toY;
  double toZ;

  /** Of an arc: first plane coordinate of the centre (mm), and so on. */
  double centreU;

  double centreV;
  double radius;
  double endRadius;
  double startAngle;
  double sweep;

  private int u;
  private int n;
  private double length;
  private double bend;

  /** Takes a move of a tape. */
  void load(Tape tape, int move) {
    fromX = tape.fromX(move);
    fromY = tape.fromY(move);
    fromZ = tape.fromZ(move);
    toX = tape.toX(move);
    toY = tape.toY(move);
    toZ = tape.toZ(move);
    MoveKind made = tape.kind(move);
    if (made == MoveKind.DWELL) {
      kind = Kind.REST;
      length = 0;
      bend = 0;
    } else if (made == MoveKind.ARC) {
      loadArc(tape, move);
    } else {
      loadLine();
    }
  }

  private void loadLine() {
    double dx = toX - fromX;
    double dy = toY - fromY;
    double dz = toZ - fromZ;
    length = Math.sqrt(dx * dx + dy * dy + dz * dz);
    bend = 0;
    boolean still = dx == 0 && dy == 0;
    if (still) {
      kind = dz == 0 ? Kind.REST : Kind.PLUNGE;
    } else {
      kind = dz == 0 ? Kind.LEVEL : Kind.RAMP;
    }
  }

  private void loadArc(Tape tape, int move) {
    Plane plane = tape.state(move).plane();
    u = plane.u();
    n = plane.n();
    centreU = tape.centreU(move);
    centreV = tape.centreV(move);
    radius = tape.radius(move);
    endRadius = tape.endRadius(move);
    startAngle = tape.startAngle(move);
    sweep = tape.sweep(move);
    double widest = Math.max(radius, endRadius);
    double change = Math.abs(endRadius - radius);
    double rise = n == 0 ? toX - fromX : n == 1 ? toY - fromY : toZ - fromZ;
    double turned = widest * Math.abs(sweep) + change;
    length = Math.sqrt(turned * turned + rise * rise);
    bend = (widest * sweep * sweep + 2 * change * Math.abs(sweep)) / 8;
    kind = n == 2 ? Kind.ROUND : Kind.TILTED;
  }

  /** Greatest distance from centre to path (mm) of a round path. */
  double widest() {
    return Math.max(radius, endRadius);
  }

  /** An upper bound of the path's length between two shares (mm). */
  double length(double share) {
    return length * share;
  }

  /** How far the path between two shares may stray from a steady motion along its chord (mm). */
  double stray(double share) {
    return bend * share * share;
  }

  /** Pieces that make good first steps: each bends by an eighth of a turn at most. */
  int pieces() {
    if (bend == 0) {
      return 1;
    }
    double turns = Math.abs(sweep) / (Math.PI / 4);
    return (int) Math.max(1, Math.min(4096, Math.ceil(turns)));
  }

  double x(double share) {
    return bend == 0 || n == 0 ? straight(fromX, toX, share) : curved(0, share);
  }

  double y(double share) {
    return bend == 0 || n == 1 ? straight(fromY, toY, share) : curved(1, share);
  }

  double z(double share) {
    return bend == 0 || n == 2 ? straight(fromZ, toZ, share) : curved(2, share);
  }

  private static double straight(double from, double to, double share) {
    return share >= 1 ? to : from + share * (to - from);
  }

  private double curved(int axis, double share) {
    double r = radius + share * (endRadius - radius);
    double a = startAngle + share * sweep;
    return axis == u ? centreU + r * Math.cos(a) : centreV + r * Math.sin(a);
  }
}
