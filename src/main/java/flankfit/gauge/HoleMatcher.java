package flankfit.gauge;

import flankfit.setup.Hole;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which hole or boss of the sheet a thread's motion belongs to. */
final class HoleMatcher {
  /** Distance of the axes up to which a thread is taken to be meant for a hole (mm). */
  static final double NEAR = 1.0;

  private final List<Hole> holes;

  HoleMatcher(List<Hole> holes) {
    this.holes = List.copyOf(holes);
  }

  /**
   * The hole about an axis. Of several about one axis, one with a thread goes first, then the one
   * whose wall the teeth come nearest to.
   *
   * @param outside radius over the teeth (mm)
   */
  Optional<Hole> match(Pass pass, double outside) {
    return holes.stream()
        .filter(hole -> distance(hole, pass) <= NEAR)
        .min(
            Comparator.comparing((Hole hole) -> hole.thread().isEmpty())
                .thenComparingDouble(hole -> fromWall(hole, pass, outside))
                .thenComparingDouble(hole -> distance(hole, pass)));
  }

  /** The hole nearest to an axis, however far. */
  Optional<Hole> nearest(Pass pass) {
    return holes.stream().min(Comparator.comparingDouble(hole -> distance(hole, pass)));
  }

  static double distance(Hole hole, Pass pass) {
    return Math.hypot(hole.x() - pass.x(), hole.y() - pass.y());
  }

  private static double fromWall(Hole hole, Pass pass, double outside) {
    double reach = hole.boss() ? pass.radius() - outside : pass.radius() + outside;
    return Math.abs(reach - hole.diameter() / 2);
  }
}
