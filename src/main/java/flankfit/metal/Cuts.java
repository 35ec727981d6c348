package flankfit.metal;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.Tool;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Which moves of a tape take metal away, and with what. Every move of a spinning tool does that the
 * sheet knows, rapids included, whichever way the spindle turns; dwells and a tool that stands
 * still do not.
 */
public final class Cuts {
  private final Tape tape;
  private final List<Optional<ToolBody>> bodies;
  private final boolean[] spinning;
  private final double[] cells;
  private final Map<Integer, String> unknown;

  private Cuts(Tape tape, List<Optional<ToolBody>> bodies, Map<Integer, String> unknown) {
    this.tape = tape;
    this.bodies = bodies;
    this.unknown = unknown;
    this.spinning = new boolean[bodies.size()];
    this.cells = new double[bodies.size()];
    for (int i = 0; i < spinning.length; i++) {
      spinning[i] =
          bodies.get(i).isPresent() && tape.states().get(i).spindle() != ModalState.Spindle.OFF;
      cells[i] = bodies.get(i).map(ToolBody::cell).orElse(0.0);
    }
  }

  /** The cuts of a tape's tools. */
  static Cuts of(Tape tape, Function<Integer, Optional<Tool>> tools) {
    Map<Integer, Optional<ToolBody>> known = new HashMap<>();
    Map<Integer, String> unknown = new TreeMap<>();
    List<Optional<ToolBody>> bodies = new ArrayList<>();
    for (ModalState state : tape.states()) {
      bodies.add(
          known.computeIfAbsent(
              state.tool(), number -> body(number, tools.apply(number), unknown)));
    }
    return new Cuts(tape, bodies, unknown);
  }

  private static Optional<ToolBody> body(
      int number, Optional<Tool> tool, Map<Integer, String> unknown) {
    if (tool.isEmpty()) {
      if (number != 0) {
        unknown.put(number, "it is not in the sheet");
      }
      return Optional.empty();
    }
    try {
      return Optional.of(ToolBody.of(tool.get()));
    } catch (IllegalArgumentException e) {
      unknown.put(number, e.getMessage());
      return Optional.empty();
    }
  }

  /** The tape. */
  public Tape tape() {
    return tape;
  }

  /** Tools whose moves take nothing away since their form is not known, with the reason. */
  public Map<Integer, String> unknown() {
    return unknown;
  }

  /** The tool of a move; empty when the sheet does not know it. */
  public Optional<ToolBody> body(int move) {
    return bodies.get(tape.stateIndex(move));
  }

  /** Whether a move takes away the metal it passes over. */
  public boolean removes(int move) {
    return spinning[tape.stateIndex(move)] && tape.kind(move) != MoveKind.DWELL;
  }

  /** Side of the cells that show what a move leaves (mm). */
  double cell(int move) {
    return cells[tape.stateIndex(move)];
  }

  /** The cutting part with which a move removes metal. */
  Profile cutting(int move) {
    return bodies.get(tape.stateIndex(move)).orElseThrow().cutting();
  }

  /** Takes a move that removes metal into a volume. */
  void load(int move, SweptCut cut) {
    cut.load(tape, move, cutting(move));
  }
}
