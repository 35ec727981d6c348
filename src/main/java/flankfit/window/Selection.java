package flankfit.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was picked with the pointer: a move to look at, or points to measure between. */
final class Selection {
  private Optional<Pick> picked = Optional.empty();
  private final List<Pick> points = new ArrayList<>();
  private boolean measuring;
  private long changes;

  /** The move looked at. */
  Optional<Pick> picked() {
    return picked;
  }

  /** Whether picked points are measured. */
  boolean isMeasuring() {
    return measuring;
  }

  /** The points measured, none to two. */
  List<Pick> points() {
    return List.copyOf(points);
  }

  /** From the first to the second point, once there are both. */
  Optional<Measure> measure() {
    return points.size() < 2
        ? Optional.empty()
        : Optional.of(new Measure(points.get(0).point(), points.get(1).point()));
  }

  /** Grows with every change. */
  long changes() {
    return changes;
  }

  /** Takes what the pointer met; nothing met lets a move go, but keeps points measured. */
  void take(Optional<Pick> met) {
    changes++;
    if (!measuring) {
      picked = met;
    } else if (met.isPresent()) {
      if (points.size() == 2) {
        points.clear();
      }
      points.add(met.get());
    }
  }

  /** Begins to measure, or ends it. */
  void toggleMeasuring() {
    changes++;
    measuring = !measuring;
    points.clear();
  }

  /** Lets everything go; gives whether there was anything. */
  boolean clear() {
    boolean any = picked.isPresent() || measuring;
    changes += any ? 1 : 0;
    picked = Optional.empty();
    points.clear();
    measuring = false;
    return any;
  }
}
