package flankfit.gauge;

import flankfit.motion.Tape;
import flankfit.sweep.SweptWall;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What gauges of all sizes do on the walls of paths that depart from the tape; holes cut by the
 * same moves share what is read of their wall.
 */
final class VariedWalls {
  private final Tape tape;
  private final Map<RealPath.Key, Optional<Ways>> known = new ConcurrentHashMap<>();

  VariedWalls(Tape tape) {
    this.tape = tape;
  }

  /**
   * The ways in one thread; empty where there is no such wall, or no gauge is settled in it.
   *
   * @param outwards how much larger the radius of each pass's path is than on the tape (mm)
   */
  Optional<Ways> of(FoundThread found, double[] outwards) {
    RealPath path = new RealPath(found, tape, outwards);
    if (path.impossible().isPresent()) {
      return Optional.empty();
    }
    RealPath.Key key = path.key();
    Optional<Ways> ways = known.get(key);
    if (ways == null) {
      ways = read(path);
      known.put(key, ways);
    }
    return ways;
  }

  private static Optional<Ways> read(RealPath path) {
    SweptWall wall = path.wall();
    try {
      return Optional.of(Ways.of(path.read(wall), Math.max(path.wanted(), wall.bottom())));
    } catch (UnsettledGaugeException e) {
      // whoever asks says that there is no answer
      return Optional.empty();
    }
  }
}
