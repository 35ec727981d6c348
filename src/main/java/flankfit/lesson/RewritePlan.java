package flankfit.lesson;

import flankfit.control.BlockObserver;
import flankfit.control.BlockTrace;
import flankfit.control.BlockTrace.Outcome;
import flankfit.control.ControlState;
import flankfit.control.FlowStep;
import flankfit.control.WordMeaning;
import flankfit.control.WordTrace;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.lesson.ModeWordPlan.Executed;
import flankfit.motion.ModalState.Distance;
import flankfit.nc.Edit;
import flankfit.setup.ControlSwitches;
import flankfit.unit.LengthUnit;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Watches a program and works out which words have to be written otherwise in a mode. */
final class RewritePlan implements BlockObserver {
  private static final Pattern SLASHED = Pattern.compile("([Nn]\\s*\\d+\\s*)?/");

  private final String file;
  private final Distance mode;
  private final ControlSwitches.Reading reading;
  private final ProgramManner manner;
  private final StatedAxes axes = new StatedAxes();
  private final Map<Place, Integer> known = new HashMap<>();
  private final List<Site> sites = new ArrayList<>();
  private final List<Executed> executed = new ArrayList<>();
  private final TreeMap<Integer, String> kept = new TreeMap<>();

  /** How far the rewritten program stands from this one in program coordinates (mm). */
  private final double[] error = new double[3];

  private final boolean[] chained = new boolean[3];
  private final Deque<Distance> entered = new ArrayDeque<>();
  private double rounding;
  private double closing;

  /** Returns that keep their mode, found by a plan before, and those that this one finds. */
  private final Map<Integer, String> returnsKept;

  private final Map<Integer, String> moreReturns = new TreeMap<>();

  /**
   * A plan that has seen nothing yet.
   *
   * @param returnsKept why returns to a reference point keep their mode, by line
   */
  RewritePlan(
      String file,
      Distance mode,
      ControlSwitches.Reading reading,
      ProgramManner manner,
      Map<Integer, String> returnsKept) {
    this.returnsKept = returnsKept;
    this.file = file;
    this.mode = mode;
    this.reading = reading;
    this.manner = manner;
  }

  /** The edits of coordinates. */
  List<Edit> coordinates() {
    return sites.stream().flatMap(site -> site.edits().stream()).toList();
  }

  /** Plans the mode words. */
  ModeWordPlan modeWords() {
    return new ModeWordPlan(sites, executed);
  }

  /** Blocks that keep their mode, by line. */
  List<Rewriting.Kept> kept() {
    return kept.entrySet().stream()
        .map(entry -> new Rewriting.Kept(entry.getKey(), entry.getValue()))
        .toList();
  }

  /**
   * Returns that cannot be said in the mode after all, why, by line: another plan has to be made.
   */
  Map<Integer, String> moreReturns() {
    return moreReturns;
  }

  /** Greatest error of a programmed coordinate by rounding (mm). */
  double rounding() {
    return rounding;
  }

  /** Greatest error with which a chain of distances ends (mm). */
  double closing() {
    return closing;
  }

  /**
   * Refuses a program with blocks that were never executed and would mind the mode.
   *
   * @throws RefusedException for the first of them
   */
  void requireAllExecuted() {
    Set<Place> seen = new HashSet<>(known.keySet());
    for (Place place : manner.minding()) {
      if (!seen.contains(place)) {
        throw new RefusedException(
            place,
            "this block is not executed",
            "where it would lead cannot be proved",
            "take it out, or make the program reach it");
      }
    }
  }

  @Override
  public void begins(ControlState start) {
    // The first block tells all that is needed.
  }

  @Override
  public void ends(List<Finding> others) {
    for (int axis = 0; axis < 3; axis++) {
      close(axis);
    }
  }

  @Override
  public void block(BlockTrace block) {
    axes.enter(block);
    boolean minds = minds(block);
    boolean slashed = SLASHED.matcher(block.text()).lookingAt();
    if (slashed && (minds || manner.minding().contains(block.place()))) {
      throw new RefusedException(
          block.place(),
          "block delete may skip this block",
          "what follows it would lead elsewhere in one mode only",
          "take the slash away, or make two programs");
    }
    if (block.outcome() == Outcome.EXECUTED) {
      if (!block.place().file().equals(file)) {
        other(block, minds);
      } else {
        take(block);
      }
    }
    axes.leave(block);
  }

  private static boolean minds(BlockTrace block) {
    return block.words().stream()
        .anyMatch(w -> WordsInMode.isModeWord(w) || Retelling.dependsOnMode(w.meaning()));
  }

  private void other(BlockTrace block, boolean minds) {
    if (minds) {
      throw new RefusedException(
          block.place(),
          "the program goes on in another file",
          "one file is rewritten at a time",
          "put the subprogram into the program's file");
    }
  }

  private void take(BlockTrace block) {
    List<Edit> edits = new ArrayList<>();
    Optional<Distance> need = need(block, edits);
    returned(block);
    Site site = Site.of(block, edits);
    Integer index = known.get(block.place());
    if (index == null) {
      index = sites.size();
      known.put(block.place(), index);
      sites.add(site);
    } else if (!sites.get(index).edits().equals(site.edits())) {
      if (isReturn(block)) {
        moreReturns.put(
            block.place().line(), "it is executed several times, each time from elsewhere");
        return;
      }
      throw new RefusedException(
          block.place(),
          "this block is executed several times, and its " + mode.word() + " words would differ",
          "one text cannot say them all",
          "keep it in its mode, or write the passes out");
    }
    executed.add(new Executed(index, need));
  }

  /** The mode that a block is written in; fills in its coordinates. */
  private Optional<Distance> need(BlockTrace block, List<Edit> edits) {
    Telling telling = Retelling.of(block, mode, axes);
    if (telling instanceof Telling.Either) {
      return atBorder(block);
    }
    if (telling instanceof Telling.Unsayable no) {
      if (!no.positioning()) {
        throw new RefusedException(
            block.place(),
            "this block cannot be said in " + mode.word() + " words",
            no.why(),
            "write it out, or keep the program as it is");
      }
      return keep(block, no.why());
    }
    List<Telling.Changed> changed = ((Telling.Words) telling).changed();
    if (isReturn(block)) {
      Optional<String> why = keptReturn(block, changed);
      if (why.isPresent()) {
        return keep(block, why.get());
      }
    }
    if (changed.isEmpty()) {
      asWritten(block);
    }
    changed.forEach(word -> edits.add(edit(block, word)));
    return Optional.of(mode);
  }

  /** Whether a block goes to a reference point by way of another point. */
  private static boolean isReturn(BlockTrace block) {
    return block.words().stream().anyMatch(w -> isIntermediate(w.meaning()));
  }

  private static boolean isIntermediate(WordMeaning meaning) {
    return meaning == WordMeaning.INTERMEDIATE_POINT
        || meaning == WordMeaning.INTERMEDIATE_DISTANCE;
  }

  /**
   * Why a return keeps its mode. The point that it goes by can be said in either; where that takes
   * a rounded or a computed number, the words as they are say it better.
   */
  private Optional<String> keptReturn(BlockTrace block, List<Telling.Changed> changed) {
    int line = block.place().line();
    if (returnsKept.containsKey(line)) {
      return Optional.of(returnsKept.get(line));
    }
    LengthUnit unit = block.after().unit();
    for (Telling.Changed word : changed) {
      String text = block.words().get(word.word()).text();
      if (!WordsInMode.isNumber(block.words().get(word.word()))) {
        return Optional.of("the point that it goes by is computed by " + text);
      }
      double error = mode == Distance.INCREMENTAL ? this.error[word.axis()] : 0;
      BigDecimal written = Numeral.rounded(word.value() - error, unit, decimals(unit));
      double off = unit.toMillimetres(written.doubleValue()) + error - word.value();
      if (Math.abs(off) >= Numeral.NOTHING) {
        return Optional.of("the point that it goes by would have to be rounded");
      }
    }
    return Optional.empty();
  }

  /** On the axes of a return both programs come to the same point. */
  private void returned(BlockTrace block) {
    for (WordTrace word : block.words()) {
      if (isIntermediate(word.meaning())) {
        close(word.letter() - 'X');
        error[word.letter() - 'X'] = 0;
      }
    }
  }

  /**
   * The mode at a call, a return, a tool change or an end. Every call is made and left in the mode
   * asked for, so that one text of the subprogram serves all of them; tool changes and ends keep
   * G90 where it was in force.
   */
  private Optional<Distance> atBorder(BlockTrace block) {
    Distance own = block.after().distance();
    for (FlowStep step : block.steps()) {
      if (step instanceof FlowStep.Called called && called.time() == 1 && !called.modal()) {
        entered.push(own);
        return Optional.of(mode);
      }
      if (step instanceof FlowStep.Returned) {
        boolean alike = entered.isEmpty() || entered.pop() == own;
        return alike ? Optional.of(mode) : Optional.empty();
      }
    }
    return own == Distance.ABSOLUTE && endsSomething(block)
        ? Optional.of(Distance.ABSOLUTE)
        : Optional.empty();
  }

  /** Whether the mode in force counts for who comes after: tool change or end. */
  private static boolean endsSomething(BlockTrace block) {
    return block.words().stream()
        .filter(w -> w.meaning() == WordMeaning.MISCELLANEOUS)
        .mapToDouble(w -> w.value().orElse(-1))
        .anyMatch(code -> code == 2 || code == 6 || code == 30);
  }

  private Optional<Distance> keep(BlockTrace block, String why) {
    kept.putIfAbsent(block.place().line(), why);
    asWritten(block);
    return Optional.of(block.after().distance());
  }

  /** Coordinates as written bring the rewritten program back to where this one stands. */
  private void asWritten(BlockTrace block) {
    for (WordTrace word : block.words()) {
      if (word.meaning() == WordMeaning.END_POINT || word.meaning() == WordMeaning.HOLE_POSITION) {
        int axis = word.letter() - 'X';
        close(axis);
        error[axis] = 0;
      }
    }
  }

  private void close(int axis) {
    if (chained[axis]) {
      closing = Math.max(closing, Math.abs(error[axis]));
      chained[axis] = false;
    }
  }

  private Edit edit(BlockTrace block, Telling.Changed changed) {
    WordTrace word = block.words().get(changed.word());
    if (!WordsInMode.isNumber(word)) {
      throw new RefusedException(
          word.place(),
          word.text() + " is computed",
          "a number in its place would hold for this run only",
          "write the coordinate out first, or keep the program in its mode");
    }
    LengthUnit unit = block.after().unit();
    int decimals = decimals(unit);
    boolean position = isPosition(word.meaning());
    boolean counts = position || isIntermediate(word.meaning());
    double before = counts && mode == Distance.INCREMENTAL ? error[changed.axis()] : 0;
    BigDecimal written = Numeral.rounded(changed.value() - before, unit, decimals);
    double made = unit.toMillimetres(written.doubleValue()) + before - changed.value();
    double off = Math.abs(made) < Numeral.NOTHING ? 0 : made;
    rounding = Math.max(rounding, Math.abs(off));
    if (position) {
      error[changed.axis()] = off;
      chained[changed.axis()] = mode == Distance.INCREMENTAL;
    }
    return new Edit(
        word.place(), word.text().charAt(0) + manner.numeral(word.text(), reading).write(written));
  }

  private static boolean isPosition(WordMeaning meaning) {
    return meaning == WordMeaning.END_POINT
        || meaning == WordMeaning.DISTANCE
        || meaning == WordMeaning.HOLE_POSITION
        || meaning == WordMeaning.HOLE_DISTANCE;
  }

  private int decimals(LengthUnit unit) {
    return Math.max(Numeral.decimals(reading, unit), manner.decimals());
  }
}
