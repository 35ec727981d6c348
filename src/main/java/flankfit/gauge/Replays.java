package flankfit.gauge;

import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Runs of the program with other registers: all holes of a pattern ask for the same ones. */
final class Replays {
  /** Moves of runs that are kept at most, about 200 MB; older runs are made again. */
  private static final long MOST_KEPT = 5_000_000;

  private final Function<Offsets, Optional<Tape>> replay;
  private final GroupedPasses grouped;
  private final Map<Offsets, Optional<List<List<Pass>>>> groups = new HashMap<>();
  private final Map<Offsets, Tape> tapes = new HashMap<>();
  private final Deque<Offsets> order = new ArrayDeque<>();
  private long kept;

  /** The passes of one thread and the motion they lie in. */
  record Again(Tape tape, List<Pass> passes) {}

  Replays(Function<Offsets, Optional<Tape>> replay, GroupedPasses grouped) {
    this.replay = replay;
    this.grouped = grouped;
  }

  /** The passes that cut the thread of a pass; empty when that run stops or cuts it elsewhere. */
  Optional<List<Pass>> passes(Offsets offsets, Pass like) {
    Optional<Hole> hole = grouped.holeOf(like);
    Optional<List<List<Pass>>> known = groups.get(offsets);
    if (known == null) {
      tape(offsets);
      known = groups.get(offsets);
    }
    return known.flatMap(
        all ->
            all.stream()
                .filter(group -> grouped.holeOf(group.get(0)).equals(hole))
                .filter(group -> apart(group.get(0), like) <= PassFinder.ONE_AXIS.value())
                .findFirst());
  }

  /** The same with their motion. */
  Optional<Again> again(Offsets offsets, Pass like) {
    return passes(offsets, like)
        .flatMap(passes -> tape(offsets).map(tape -> new Again(tape, passes)));
  }

  private Optional<Tape> tape(Offsets offsets) {
    Tape known = tapes.get(offsets);
    if (known != null) {
      return Optional.of(known);
    }
    Optional<Tape> tape = replay.apply(offsets);
    groups.computeIfAbsent(offsets, key -> tape.map(t -> grouped.groups(grouped.find(t).passes())));
    tape.ifPresent(t -> keep(offsets, t));
    return tape;
  }

  private void keep(Offsets offsets, Tape tape) {
    tapes.put(offsets, tape);
    order.add(offsets);
    kept += tape.size();
    while (kept > MOST_KEPT && order.size() > 1) {
      kept -= tapes.remove(order.remove()).size();
    }
  }

  private static double apart(Pass a, Pass b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }
}
