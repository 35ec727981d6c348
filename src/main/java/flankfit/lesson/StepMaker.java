package flankfit.lesson;

import flankfit.control.BlockTrace;
import flankfit.control.BlockTrace.Outcome;
import flankfit.control.ToldWay;
import flankfit.finding.Place;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.setup.ControlSwitches;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes steps of blocks. Every block of a run has to be entered and left in order. */
final class StepMaker {
  private static final int MOST_UNFOLDED = 40;
  private static final double SAME = 1e-9;

  private final WordsInMode words;
  private final StatedAxes stated = new StatedAxes();
  private Optional<Place> modeSince = Optional.empty();

  StepMaker(ControlSwitches.Reading reading) {
    words = new WordsInMode(reading);
  }

  /** A block begins. */
  void enter(BlockTrace block) {
    stated.enter(block);
    block.words().stream()
        .filter(WordsInMode::isModeWord)
        .reduce((first, last) -> last)
        .ifPresent(word -> modeSince = Optional.of(word.place()));
  }

  /** A block has moved. */
  void leave(BlockTrace block) {
    stated.leave(block);
  }

  /** The block entered in both tellings, word by word. */
  Told told(BlockTrace block) {
    Step step = step(block);
    Telling absolute = Retelling.of(block, Distance.ABSOLUTE, stated);
    Telling incremental = Retelling.of(block, Distance.INCREMENTAL, stated);
    List<String> first = list(block, step, Distance.ABSOLUTE, absolute);
    List<String> second = list(block, step, Distance.INCREMENTAL, incremental);
    return new Told(
        step,
        wording(block, Distance.ABSOLUTE, absolute, first, second),
        wording(block, Distance.INCREMENTAL, incremental, second, first),
        modeSince);
  }

  private List<String> list(BlockTrace block, Step step, Distance mode, Telling telling) {
    boolean said =
        mode == Distance.ABSOLUTE ? step.absolute().isPresent() : step.incremental().isPresent();
    return said ? words.list(block, mode, telling) : List.of();
  }

  private static Wording wording(
      BlockTrace block, Distance mode, Telling telling, List<String> own, List<String> other) {
    boolean added = block.after().distance() == mode && WordsInMode.addsModeWord(block, telling);
    List<Wording.Word> all = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      boolean differs = own.size() == other.size() && !own.get(i).equals(other.get(i));
      all.add(new Wording.Word(own.get(i), differs, added && i == 0));
    }
    return new Wording(all, unsayable(telling).orElse(""));
  }

  /** The step of the block entered. */
  Step step(BlockTrace block) {
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
