package flankfit.gauge;

import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the passes of a tape and puts those together that cut one thread. */
final class GroupedPasses {
  private final SetupSheet setup;
  private final HoleMatcher holes;

  GroupedPasses(SetupSheet setup, HoleMatcher holes) {
    this.setup = setup;
    this.holes = holes;
  }

  /** All passes of a tape that may cut threads. */
  PassFinder.Result find(Tape tape) {
    return PassFinder.find(tape, this::mayCutThreads);
  }

  /** A mill the sheet does not know may be a thread mill: that is told when it cuts a thread. */
  private boolean mayCutThreads(int number) {
    return setup.tool(number).map(tool -> tool.kind() == Tool.Kind.THREAD_MILL).orElse(true);
  }

  /** Passes about one axis in one hole; an outside and an inside thread may share an axis. */
  List<List<Pass>> groups(List<Pass> passes) {
    List<List<Pass>> groups = new ArrayList<>();
    for (List<Pass> axis : PassFinder.byAxis(passes)) {
      Map<String, List<Pass>> byHole = new LinkedHashMap<>();
      for (Pass pass : axis) {
        String name = holeOf(pass).map(Hole::name).orElse("");
        byHole.computeIfAbsent(name, key -> new ArrayList<>()).add(pass);
      }
      byHole.values().forEach(group -> groups.add(ofKnownTools(group)));
    }
    return groups;
  }

  /** A mill the sheet does not know may have bored the hole; it counts only when alone. */
  private List<Pass> ofKnownTools(List<Pass> group) {
    List<Pass> known =
        group.stream().filter(pass -> setup.tool(pass.state().tool()).isPresent()).toList();
    return known.isEmpty() ? group : known;
  }

  /** The hole that a pass runs in. */
  Optional<Hole> holeOf(Pass pass) {
    double outside = setup.tool(pass.state().tool()).map(Tool::radius).orElse(0.0);
    return holes.match(pass, outside);
  }
}
