package flankfit.lesson;

import flankfit.control.BlockObserver;
import flankfit.control.BlockTrace;
import flankfit.control.BlockTrace.Outcome;
import flankfit.control.ControlState;
import flankfit.control.ToldWay;
import flankfit.finding.Finding;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The steps of a lesson, taken down while the program is executed. A block that is executed several
 * times is told once, with the number of further times.
 */
public final class Steps implements BlockObserver {
  /** Steps that are told at most; nobody reads more, and memory is not endless. */
  public static final int MOST = 20_000;

  private static final int MOST_UNFOLDED = 40;
  private static final double SAME = 1e-9;

  private final Predicate<BlockTrace> shown;
  private final WordsInMode words;
  private final StatedAxes stated = new StatedAxes();
  private final List<Step> steps = new ArrayList<>();
  private final Map<String, Integer> told = new HashMap<>();
  private int left;

  /**
   * Waits for the first block.
   *
   * @param sheet the setup sheet that the program is executed with
   * @param shown which blocks are told; asked for every block in order
   */
  public Steps(SetupSheet sheet, Predicate<BlockTrace> shown) {
    this.shown = shown;
    words = new WordsInMode(sheet.control().reading());
  }

  /** The steps so far, in the order in which blocks were first executed. */
  public List<Step> all() {
    return List.copyOf(steps);
  }

  /** How many blocks are not told because there are more than {@link #MOST}. */
  public int left() {
    return left;
  }

  @Override
  public void begins(ControlState start) {
    // Every step carries the state that it needs.
  }

  @Override
  public void ends(List<Finding> others) {
    // Findings are told by whoever executes the program with its rules.
  }

  @Override
  public void block(BlockTrace block) {
    stated.enter(block);
    if (shown.test(block)) {
      take(block);
    }
    stated.leave(block);
  }

  private void take(BlockTrace block) {
    String key = block.place().file() + ':' + block.place().line() + ':' + block.place().column();
    Integer before = told.get(key);
    if (before != null) {
      steps.set(before, steps.get(before).repeated(block.way().way(), block.way().end()));
    } else if (steps.size() < MOST) {
      told.put(key, steps.size());
      steps.add(step(block));
    } else {
      left++;
    }
  }

  private Step step(BlockTrace block) {
    Optional<ArcStep> arc = ArcStep.of(block);
    boolean ran = block.outcome() == Outcome.EXECUTED || block.outcome() == Outcome.STOPPED;
    Telling absolute = Retelling.of(block, Distance.ABSOLUTE, stated);
    Telling incremental = Retelling.of(block, Distance.INCREMENTAL, stated);
    return new Step(
        block.outcome(),
        block.number(),
        block.place(),
        block.text(),
        block.level(),
        block.after().distance(),
        block.after().unit(),
        block.after().workOffset(),
        block.way().begin(),
        block.way().end(),
        block.way().way(),
        arc,
        ran ? said(block, Distance.ABSOLUTE, absolute) : Optional.empty(),
        ran ? said(block, Distance.INCREMENTAL, incremental) : Optional.empty(),
        unsayable(absolute).or(() -> unsayable(incremental)),
        Sentence.of(block, arc),
        compensatedEnd(block),
        unfolds(block),
        notes(block),
        ran && (Sentence.tellsMotion(block) || block.moves().size() > 0),
        onPart(block.way()),
        Optional.empty());
  }

  private static Optional<Step.OnPart> onPart(ToldWay way) {
    if (way.frame().transformed()) {
      return Optional.empty();
    }
    Point origin = way.frame().origin();
    Point zero = new Point(-origin.x(), -origin.y(), -origin.z());
    return Optional.of(new Step.OnPart(zero, way.from(), way.to()));
  }

  private Optional<String> said(BlockTrace block, Distance mode, Telling telling) {
    return telling instanceof Telling.Unsayable || block.words().isEmpty()
        ? Optional.empty()
        : Optional.of(words.of(block, mode, telling));
  }

  private static Optional<String> unsayable(Telling telling) {
    return telling instanceof Telling.Unsayable no ? Optional.of(no.why()) : Optional.empty();
  }

  /** Where the last move of a block leads, if compensation leads it elsewhere than told. */
  private static Optional<Point> compensatedEnd(BlockTrace block) {
    Tape moves = block.moves();
    int last = moves.size() - 1;
    if (last < 0 || moves.to(last).distance(moves.programmedTo(last)) < SAME) {
      return Optional.empty();
    }
    return Optional.of(block.way().frame().coordinates(moves.to(last)));
  }

  private static List<String> unfolds(BlockTrace block) {
    Tape moves = block.moves();
    if (moves.size() < 2) {
      return List.of();
    }
    List<String> all = new ArrayList<>();
    LengthUnit unit = block.after().unit();
    for (int i = 0; i < moves.size() && i < MOST_UNFOLDED; i++) {
      String kind = (moves.inserted(i) ? "corner " : "") + moves.kind(i).word();
      all.add(
          moves.kind(i) == MoveKind.DWELL
              ? kind + " " + Numeral.plain(moves.seconds(i), LengthUnit.MILLIMETRE) + " s"
              : kind + " to " + Numeral.plain(block.way().frame().coordinates(moves.to(i)), unit));
    }
    if (moves.size() > MOST_UNFOLDED) {
      all.add("and " + (moves.size() - MOST_UNFOLDED) + " moves more");
    }
    return all;
  }

  private List<String> notes(BlockTrace block) {
    List<String> notes = new ArrayList<>();
    if (!block.before().workOffset().equals(block.after().workOffset())) {
      notes.add("coordinates count from the zero of " + block.after().workOffset() + " now");
    }
    if (block.way().frame().transformed()) {
      notes.add(
          "numbers are those of the program; scale, rotation or mirror turns them on the part");
    }
    for (int axis = 0; axis < 3; axis++) {
      if (Retelling.names(block, axis) && !stated.has(axis) && isDistance(block)) {
        notes.add(
            "the distance in "
                + (char) ('X' + axis)
                + " counts from where the machine or its operator left the tool");
      }
    }
    return notes;
  }

  private static boolean isDistance(BlockTrace block) {
    return block.after().distance() == Distance.INCREMENTAL;
  }
}
