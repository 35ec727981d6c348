package flankfit.lesson;

import flankfit.control.BlockTrace.Outcome;
import flankfit.finding.Place;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.Point;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One block as a lesson tells it: the first time that it was executed, and how often it was again.
 *
 * @param outcome whether it was executed
 * @param block number of the executed block; 0 when it was not
 * @param place where it stands
 * @param text the block as written
 * @param level how many calls deep it stands
 * @param mode how its axis words were read
 * @param unit unit of its numbers
 * @param zero name of the zero that its coordinates count from, such as {@code G54}
 * @param begin where the program had told the tool to be, program coordinates (mm)
 * @param end where it now tells it to be, program coordinates (mm)
 * @param move the way between them, program distances (mm)
 * @param arc the arc, if it is one
 * @param absolute its words in absolute mode; empty if they cannot be said
 * @param incremental its words in incremental mode; empty if they cannot be said
 * @param unsayable why one of them cannot be said
 * @param plain the step in a sentence
 * @param compensatedEnd where compensation really leads the tool, program coordinates (mm), when
 *     that is elsewhere
 * @param unfolds the single moves, when one line makes several
 * @param notes what else is to be known
 * @param moves whether it tells the tool to move
 * @param onPart the same points on the part; empty where scale, rotation or mirror is on
 * @param again the further times it was executed
 */
public record Step(
    Outcome outcome,
    int block,
    Place place,
    String text,
    int level,
    Distance mode,
    LengthUnit unit,
    String zero,
    Point begin,
    Point end,
    Point move,
    Optional<ArcStep> arc,
    Optional<String> absolute,
    Optional<String> incremental,
    Optional<String> unsayable,
    String plain,
    Optional<Point> compensatedEnd,
    List<String> unfolds,
    List<String> notes,
    boolean moves,
    Optional<OnPart> onPart,
    Optional<Again> again) {
  /**
   * Where a step lies on the part.
   *
   * @param zero where its coordinates count from, part frame (mm)
   * @param begin where the tool was told to be, part frame (mm)
   * @param end where it is told to be now, part frame (mm)
   */
  public record OnPart(Point zero, Point begin, Point end) {
    public OnPart {
      Objects.requireNonNull(zero, "zero");
      Objects.requireNonNull(begin, "begin");
      Objects.requireNonNull(end, "end");
    }
  }

  /**
   * The further times that a block was executed.
   *
   * @param times how often after the first time
   * @param alike whether every time it went the same way as the first time
   * @param lastEnd where it told the tool to be the last time, program coordinates (mm)
   */
  public record Again(int times, boolean alike, Point lastEnd) {
    public Again {
      Objects.requireNonNull(lastEnd, "lastEnd");
    }
  }

  public Step {
    Objects.requireNonNull(outcome, "outcome");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(mode, "mode");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(zero, "zero");
    Objects.requireNonNull(begin, "begin");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(move, "move");
    Objects.requireNonNull(arc, "arc");
    Objects.requireNonNull(absolute, "absolute");
    Objects.requireNonNull(incremental, "incremental");
    Objects.requireNonNull(unsayable, "unsayable");
    Objects.requireNonNull(plain, "plain");
    Objects.requireNonNull(compensatedEnd, "compensatedEnd");
    unfolds = List.copyOf(unfolds);
    notes = List.copyOf(notes);
    Objects.requireNonNull(onPart, "onPart");
    Objects.requireNonNull(again, "again");
  }

  /** Whether the line makes one move as told; corners that compensation puts in do not count. */
  public boolean unfoldedAsOne() {
    return unfolds.stream().filter(move -> !move.startsWith("corner")).count() <= 1;
  }

  /** The motion function that makes its move. */
  String motionWord() {
    return arc.map(round -> round.sweep() > 0 ? "G3" : "G2").orElse("G1");
  }

  /** The same, executed again. */
  Step repeated(Point way, Point lastEnd) {
    boolean like = move.distance(way) < 1e-6;
    Again more =
        again
            .map(a -> new Again(a.times() + 1, a.alike() && like, lastEnd))
            .orElse(new Again(1, like, lastEnd));
    return new Step(
        outcome,
        block,
        place,
        text,
        level,
        mode,
        unit,
        zero,
        begin,
        end,
        move,
        arc,
        absolute,
        incremental,
        unsayable,
        plain,
        compensatedEnd,
        unfolds,
        notes,
        moves,
        onPart,
        Optional.of(more));
  }
}
