package flankfit.sweep;

import flankfit.unit.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Looks along the paths for places where the cutters' bodies reach into the blank. */
final class RubSearch {
  private static final int STEPS = 256;

  private final SweptWall wall;
  private final double x;
  private final double y;
  private final double[] at = new double[3];

  private RubSearch(SweptWall wall, double x, double y) {
    this.wall = wall;
    this.x = x;
    this.y = y;
  }

  /** The deepest place of each sweep's each section that reaches into metal, deepest first. */
  static List<Rub> of(SweptWall wall, double x, double y) {
    RubSearch search = new RubSearch(wall, x, y);
    List<Rub> found = new ArrayList<>();
    for (int i = 0; i < wall.sweeps().size(); i++) {
      for (Cutter.Section section : wall.sweeps().get(i).cutter().body()) {
        search.deepest(i, section).ifPresent(found::add);
      }
    }
    found.sort(Comparator.comparingDouble(Rub::depth).reversed());
    return List.copyOf(found);
  }

  private Optional<Rub> deepest(int sweep, Cutter.Section section) {
    double best = Tolerance.MODEL.value();
    Rub found = null;
    for (PathPiece piece : wall.sweeps().get(sweep).path().pieces()) {
      double share = bestShare(piece, section);
      double depth = depth(piece, section, share);
      if (depth > best) {
        best = depth;
        found = rub(sweep, section, piece, share, depth);
      }
    }
    return Optional.ofNullable(found);
  }

  private double bestShare(PathPiece piece, Cutter.Section section) {
    double best = Double.NEGATIVE_INFINITY;
    double at = 0;
    for (int i = 0; i <= STEPS; i++) {
      double depth = depth(piece, section, (double) i / STEPS);
      if (depth > best) {
        best = depth;
        at = (double) i / STEPS;
      }
    }
    return at;
  }

  private double depth(PathPiece piece, Cutter.Section section, double share) {
    piece.pointAt(share, at);
    double low = Math.max(wall.bottom(), at[2] + section.from());
    if (low >= Math.min(wall.top(), at[2] + section.to())) {
      return Double.NEGATIVE_INFINITY;
    }
    double off = Math.hypot(at[0] - x, at[1] - y);
    double blank = wall.blankRadius(low);
    return wall.isInternal() ? off + section.radius() - blank : blank - (off - section.radius());
  }

  private Rub rub(int sweep, Cutter.Section section, PathPiece piece, double share, double depth) {
    double[] p = new double[3];
    piece.pointAt(share, p);
    double towards = Math.atan2(p[1] - y, p[0] - x);
    double low = Math.max(wall.bottom(), p[2] + section.from());
    return new Rub(sweep, section, piece.move(), towards, low, depth);
  }
}
