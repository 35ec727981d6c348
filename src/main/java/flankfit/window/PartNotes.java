package flankfit.window;

import flankfit.odds.Observation;
import flankfit.odds.PartObserved;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What gauges said of parts, by hole. What is told belongs to one part until another entry stands
 * in the register, or until the next part is begun.
 */
final class PartNotes {
  private final Map<String, List<PartObserved>> parts = new LinkedHashMap<>();
  private int part = 1;
  private long changes;

  /** Keeps what was seen on the part at hand, cut with some wear entry (mm). */
  void add(String hole, double wear, Observation seen) {
    boolean otherEntry =
        parts.getOrDefault(hole, List.of()).stream()
            .anyMatch(p -> p.part() == part && p.wear() != wear);
    if (otherEntry) {
      part++;
    }
    List<PartObserved> all = new ArrayList<>(parts.getOrDefault(hole, List.of()));
    List<Observation> observations = new ArrayList<>();
    if (!all.isEmpty() && all.get(all.size() - 1).part() == part) {
      observations.addAll(all.remove(all.size() - 1).observations());
    }
    observations.add(seen);
    all.add(new PartObserved(part, wear, observations));
    parts.put(hole, List.copyOf(all));
    changes++;
  }

  /** Takes the last thing back that was seen in a hole; gives whether there was any. */
  boolean takeBack(String hole) {
    List<PartObserved> all = new ArrayList<>(of(hole));
    if (all.isEmpty()) {
      return false;
    }
    PartObserved last = all.remove(all.size() - 1);
    int kept = last.observations().size() - 1;
    if (kept > 0) {
      all.add(new PartObserved(last.part(), last.wear(), last.observations().subList(0, kept)));
    }
    parts.put(hole, List.copyOf(all));
    if (all.isEmpty()) {
      parts.remove(hole);
    }
    part = last.part();
    changes++;
    return true;
  }

  /** What comes now was seen on another part. */
  void nextPart() {
    boolean any = parts.values().stream().flatMap(List::stream).anyMatch(p -> p.part() == part);
    part += any ? 1 : 0;
    changes++;
  }

  /** Number of the part at hand, from 1. */
  int part() {
    return part;
  }

  /** What was seen in a hole, part by part. */
  List<PartObserved> of(String hole) {
    return parts.getOrDefault(hole, List.of());
  }

  /** All of it, by hole; never changes. */
  Map<String, List<PartObserved>> all() {
    return Collections.unmodifiableMap(new LinkedHashMap<>(parts));
  }

  /** Another program: nothing was seen of it yet. */
  void clear() {
    parts.clear();
    part = 1;
    changes++;
  }

  /** Grows with every change. */
  long changes() {
    return changes;
  }
}
