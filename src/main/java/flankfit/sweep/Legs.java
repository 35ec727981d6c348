package flankfit.sweep;

import flankfit.unit.Angles;
import java.util.ArrayList;
import java.util.List;

/** Turns a path into legs about a wall's axis: spirals into arcs, arcs in a row into one. */
final class Legs {
  /** Radii and joints nearer than this are one (mm): a hundredth of the surface's accuracy. */
  private static final double SAME = 1e-8;

  private final double x;
  private final double y;
  private final List<Leg> legs = new ArrayList<>();

  private Legs(double x, double y) {
    this.x = x;
    this.y = y;
  }

  /** The legs of a path about an axis (mm). */
  static List<Leg> of(CutterPath path, double x, double y) {
    Legs made = new Legs(x, y);
    path.pieces().forEach(made::add);
    return made.legs;
  }

  private void add(PathPiece piece) {
    if (piece instanceof PathPiece.Line line) {
      legs.add(
          LineLeg.of(
              line.from().x() - x,
              line.from().y() - y,
              line.from().z(),
              line.to().x() - x,
              line.to().y() - y,
              line.to().z()));
      return;
    }
    PathPiece.Arc arc = (PathPiece.Arc) piece;
    double radius = (arc.radius() + arc.endRadius()) / 2;
    if (radius < Leg.NONE) {
      legs.add(
          LineLeg.of(arc.x() - x, arc.y() - y, arc.zStart(), arc.x() - x, arc.y() - y, arc.zEnd()));
    } else if (Math.abs(arc.radius() - arc.endRadius()) > SAME) {
      List<PathPiece> parts = new ArrayList<>();
      CircularArcs.along(arc::pointAt, arc.sweep(), arc.move(), parts);
      parts.forEach(this::add);
    } else {
      addArc(ArcLeg.of(arc.x() - x, arc.y() - y, arc, radius), arc.sweep() > 0);
    }
  }

  private void addArc(ArcLeg arc, boolean anticlockwise) {
    int last = legs.size() - 1;
    if (last >= 0
        && legs.get(last) instanceof ArcLeg before
        && continues(before, arc, anticlockwise)) {
      legs.set(last, before.longer(arc.high() - arc.low(), anticlockwise));
    } else {
      legs.add(arc);
    }
  }

  /** Whether the second arc carries the first on. */
  private static boolean continues(ArcLeg a, ArcLeg b, boolean anticlockwise) {
    double from = anticlockwise ? a.high() : a.low();
    double begins = anticlockwise ? b.low() : b.high();
    double slip = Math.IEEEremainder(begins - from, Angles.TURN) * a.radius();
    double climb = (b.perRadian() - a.perRadian()) * (b.high() - b.low());
    double step = b.z() + b.perRadian() * begins - (a.z() + a.perRadian() * from);
    return Math.hypot(a.x() - b.x(), a.y() - b.y()) <= SAME
        && Math.abs(a.radius() - b.radius()) <= SAME
        && Math.abs(slip) <= SAME
        && Math.abs(climb) <= SAME
        && Math.abs(step) <= SAME;
  }
}
