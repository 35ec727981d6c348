package flankfit.sweep;

import flankfit.motion.Point;
import flankfit.unit.Angles;
import java.util.ArrayList;
import java.util.List;

/** A thread milled in one pass as a programmer would write it, about an axis at (x, y). */
record MilledCase(
    String name,
    boolean internal,
    double major,
    double pitch,
    int starts,
    double mill,
    boolean rightHand,
    boolean anticlockwise,
    Entry entry,
    double riseShare,
    double turns,
    int rows,
    Tooth tooth,
    double x,
    double y,
    double startAngle) {
  static final double ANGLE = Math.PI / 6;

  enum Entry {
    STRAIGHT,
    QUARTER,
    HALF,
    SPIRAL
  }

  /** Greatest depth of a groove on the radius (mm). */
  double depth() {
    return 0.5412659 * pitch;
  }

  double pathRadius() {
    return internal ? (major - mill) / 2 : major / 2 - 1.25 * depth() / 1.1 + mill / 2;
  }

  double lead() {
    return pitch * starts;
  }

  /** Signed rise for one radian anticlockwise (mm). */
  double perRadian() {
    return (rightHand ? 1 : -1) * lead() / Angles.TURN;
  }

  double blankRadius() {
    return internal ? major / 2 - depth() : major / 2;
  }

  /** Radius of the groove's bottom (mm). */
  double bottomRadius() {
    return internal ? pathRadius() + mill / 2 : pathRadius() - mill / 2;
  }

  Cutter cutter() {
    return new Cutter(tooth, rows, rows > 1 ? pitch : 0, 0.7, pitch, List.of());
  }

  double zStart() {
    return -4 * pitch;
  }

  SweptWall.Range range() {
    double over = (rows + turns * starts + 8) * pitch;
    return new SweptWall.Range(-over, over);
  }

  Blank blank() {
    return internal
        ? Blank.hole(blankRadius(), range().bottom())
        : Blank.boss(blankRadius(), range().bottom());
  }

  /** Entry, turns, exit; the helix begins at the start angle. */
  CutterPath path() {
    List<PathPiece> pieces = new ArrayList<>();
    int sense = anticlockwise ? 1 : -1;
    double sweep = sense * turns * Angles.TURN;
    double e = pathRadius();
    pieces.add(entry(startAngle, zStart(), sense, true));
    double end = zStart() + perRadian() * sweep;
    pieces.add(new PathPiece.Arc(x, y, e, e, startAngle, sweep, zStart(), end, -1));
    pieces.add(entry(startAngle + sweep, end, sense, false));
    return new CutterPath(pieces);
  }

  /** The piece that leads to a point of the helix, or from it. */
  private PathPiece entry(double at, double z, int sense, boolean in) {
    double e = pathRadius();
    if (entry == Entry.STRAIGHT) {
      double off = internal ? 0 : 2 * e + 1;
      Point far = new Point(x + off * Math.cos(at), y + off * Math.sin(at), z);
      Point near = new Point(x + e * Math.cos(at), y + e * Math.sin(at), z);
      return in ? new PathPiece.Line(far, near, -1) : new PathPiece.Line(near, far, -1);
    }
    if (entry == Entry.SPIRAL) {
      double far = internal ? 0.6 * e : e + 2 * depth();
      double sweep = sense * Angles.TURN;
      double rise = perRadian() * sweep * riseShare;
      return in
          ? new PathPiece.Arc(x, y, far, e, at - sweep, sweep, z - rise, z, -1)
          : new PathPiece.Arc(x, y, e, far, at, sweep, z, z + rise, -1);
    }
    double share = entry == Entry.HALF ? 0.5 : 0.75;
    double a = share * e;
    // Inside, the arc touches the helix from within and turns alike; outside, the other way.
    double centre = internal ? e - a : e + a;
    int turn = internal ? sense : -sense;
    double touch = internal ? at : at + Math.PI;
    double sweep = turn * (entry == Entry.HALF ? Math.PI : Math.PI / 2);
    double rise = perRadian() * sense * Math.abs(sweep) * riseShare;
    double cx = x + centre * Math.cos(at);
    double cy = y + centre * Math.sin(at);
    return in
        ? new PathPiece.Arc(cx, cy, a, a, touch - sweep, sweep, z - rise, z, -1)
        : new PathPiece.Arc(cx, cy, a, a, touch, sweep, z, z + rise, -1);
  }

  Sweep sweep() {
    return Sweep.of(cutter(), path());
  }

  SweptWall wall() {
    return wall(blank(), sweep());
  }

  SweptWall wall(Blank blank, Sweep... sweeps) {
    return new SweptWall(internal, x, y, range(), List.of(blank), List.of(sweeps));
  }

  static Tooth straight(double mill, double pitch) {
    return PolylineTooth.straight(mill / 2, pitch / 8, ANGLE);
  }

  /** A measured profile with a round crest and uneven flanks, of three and four lines. */
  static Tooth lopsided(double mill, double pitch) {
    double r = mill / 2;
    return PolylineTooth.measured(
        List.of(
            List.of(-0.55 * pitch, r - 0.82 * pitch),
            List.of(-0.26 * pitch, r - 0.35 * pitch),
            List.of(-0.07 * pitch, r - 0.01 * pitch),
            List.of(-0.03 * pitch, r),
            List.of(0.02 * pitch, r),
            List.of(0.09 * pitch, r - 0.04 * pitch),
            List.of(0.50 * pitch, r - 0.75 * pitch)));
  }

  static Tooth ground(boolean internal, double major, double pitch, int starts, double mill) {
    double pitchRadius = (major - 0.6495191 * pitch) / 2;
    double bottom = internal ? major / 2 : major / 2 - 1.25 * 0.5412659 / 1.1 * pitch;
    return new GroundTooth(
        new GroundTooth.Basis(internal, bottom, pitchRadius, pitch, pitch * starts, ANGLE),
        mill / 2);
  }

  @Override
  public String toString() {
    return name;
  }
}
