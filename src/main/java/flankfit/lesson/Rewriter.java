package flankfit.lesson;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.control.Stop;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.lesson.SameMotion.Difference;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.Tape;
import flankfit.nc.Edit;
import flankfit.nc.SourceText;
import flankfit.setup.ControlSwitches;
import flankfit.setup.SetupSheet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Rewrites a program in the other distance mode: X, Y, Z, the levels of cycles, G90 and G91 change,
 * every other byte stays. Words of a position that only the machine knows keep their mode.
 *
 * <p>Both programs are executed with one sheet. Held are: as many moves, of one kind, line, block
 * and state; each end and each programmed end within {@link #EXACT} on every axis, and {@link
 * #TIMES} times the rounding more where rounding was needed; centre, radii and length of sweep of
 * arcs within {@link #ARCS}, and twice that rounding more.
 */
public final class Rewriter {
  /** How near every end stays where nothing had to be rounded (mm). */
  public static final double EXACT = 1e-9;

  /** How near centres, radii and sweeps of arcs stay (mm), as near as the control itself is. */
  public static final double ARCS = 1e-6;

  /** What a rounded coordinate may become by compensation and transforms (1). */
  public static final double TIMES = 4;

  private Rewriter() {}

  /**
   * Rewrites a program.
   *
   * @param program its text
   * @param setup the sheet that it is executed with
   * @param subprograms texts of further files
   * @param mode the mode wanted
   */
  public static Rewriting rewrite(
      SourceText program, SetupSheet setup, List<SourceText> subprograms, Distance mode) {
    try {
      return proved(program, setup, subprograms, mode, Map.of());
    } catch (RefusedException no) {
      return no.refused();
    }
  }

  private static Rewriting proved(
      SourceText program,
      SetupSheet setup,
      List<SourceText> subprograms,
      Distance mode,
      Map<Integer, String> returnsKept) {
    ControlSwitches.Reading reading = setup.control().reading();
    ProgramManner manner = ProgramManner.of(program, reading);
    RewritePlan plan = new RewritePlan(program.file(), mode, reading, manner, returnsKept);
    Interpretation before = Interpreter.interpret(program, setup, subprograms, plan);
    requireComplete(before);
    if (!plan.moreReturns().isEmpty()) {
      return proved(program, setup, subprograms, mode, with(returnsKept, plan.moreReturns()));
    }
    plan.requireAllExecuted();
    List<Edit> edits = new ArrayList<>(plan.coordinates());
    edits.addAll(plan.modeWords().edits(program::line));
    List<Edit> joined = joined(edits);
    SourceText text = program.edited(joined);
    Interpretation after = Interpreter.replay(text, setup, subprograms);
    Map<Integer, String> low = lowReturns(before, after);
    if (!returnsKept.keySet().containsAll(low.keySet())) {
      return proved(program, setup, subprograms, mode, with(returnsKept, low));
    }
    double rounding = plan.rounding();
    Difference difference =
        SameMotion.of(
            before.tape(), after.tape(), EXACT + TIMES * rounding, ARCS + 2 * TIMES * rounding);
    requireSame(program.file(), before, after, difference);
    return new Rewriting.Done(
        text,
        (int) joined.stream().map(edit -> edit.place().line()).distinct().count(),
        plan.kept(),
        Math.max(Numeral.decimals(reading, before.unit()), manner.decimals()),
        rounding,
        plan.closing(),
        difference.greatest(),
        before.tape().size(),
        raised(before, after));
  }

  private static Map<Integer, String> with(Map<Integer, String> some, Map<Integer, String> more) {
    Map<Integer, String> all = new TreeMap<>(some);
    all.putAll(more);
    return all;
  }

  /** Returns that name a level near the part in absolute words, which reads as going down there. */
  private static Map<Integer, String> lowReturns(Interpretation before, Interpretation after) {
    Set<Integer> lowBefore = lines(before);
    Map<Integer, String> low = new TreeMap<>();
    for (int line : lines(after)) {
      if (!lowBefore.contains(line)) {
        low.put(line, "in absolute words it would name a level below the clearance plane");
      }
    }
    return low;
  }

  private static Set<Integer> lines(Interpretation done) {
    return done.findings().stream()
        .filter(finding -> finding.code() == Code.OF11)
        .map(finding -> finding.place().line())
        .collect(Collectors.toSet());
  }

  private static void requireComplete(Interpretation done) {
    Optional<Stop> stop = done.stoppedAt();
    if (stop.isPresent()) {
      throw new RefusedException(
          line(done.file(), stop.get().line()),
          "the program stops here by " + stop.get().code().name(),
          "what follows cannot be proved",
          "mend it first: flankfit motion tells what is wrong");
    }
  }

  private static Place line(String file, int line) {
    return new Place(file, line, 0, 0);
  }

  private static void requireSame(
      String file, Interpretation before, Interpretation after, Difference difference) {
    if (difference.departs().isEmpty() && after.complete()) {
      return;
    }
    Tape tape = before.tape();
    int move = difference.departs().orElse(tape.size());
    int line =
        move < tape.size()
            ? tape.line(move)
            : after.stoppedAt().map(Stop::line).orElse(tape.size() == 0 ? 0 : tape.line(move - 1));
    throw new RefusedException(
        line(file, line),
        "rewritten, the program would move otherwise here",
        after
            .stoppedAt()
            .map(stop -> "it would stop by " + stop.code().name())
            .orElse("something in it depends on the mode that cannot be said in the other one"),
        "keep the program in its mode");
  }

  private static List<Finding> raised(Interpretation before, Interpretation after) {
    Set<Code> known = EnumSet.noneOf(Code.class);
    before.findings().forEach(finding -> known.add(finding.code()));
    return after.findings().stream().filter(f -> !known.contains(f.code())).toList();
  }

  /** An edit that is put in before another one and that one become one. */
  private static List<Edit> joined(List<Edit> edits) {
    Map<Place, Edit> byPlace = new TreeMap<>();
    for (Edit edit : edits) {
      Place at = new Place(edit.place().file(), edit.place().line(), edit.place().column(), 0);
      byPlace.merge(at, edit, Rewriter::join);
    }
    return List.copyOf(byPlace.values());
  }

  private static Edit join(Edit a, Edit b) {
    boolean first = a.place().length() == 0;
    Edit inserted = first ? a : b;
    Edit replaced = first ? b : a;
    return new Edit(replaced.place(), inserted.text() + replaced.text());
  }
}
