package flankfit.cli;

import flankfit.draft.DraftChoices;
import flankfit.motion.ModalState.Distance;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.Optional;
import picocli.CommandLine.Option;

/** How a draft is to be written, told as options. */
final class DraftWords {
  @Option(names = "--tool", paramLabel = "N", description = "number of the mill (default: 1)")
  private Optional<Integer> tool = Optional.empty();

  @Option(
      names = "--mode",
      paramLabel = "absolute|incremental",
      description = "words of the program (default: absolute)")
  private Distance mode = Distance.ABSOLUTE;

  @Option(
      names = "--entry",
      paramLabel = "straight|quarter|half",
      description = "how a pass enters and leaves the wall (default: half, on half a turn)")
  private DraftChoices.Entry entry = DraftChoices.Entry.HALF;

  @Option(
      names = "--cut",
      paramLabel = "climb|conventional",
      description = "how the teeth cut (default: climb)")
  private Cut cut = Cut.CLIMB;

  @Option(names = "--passes", paramLabel = "N", description = "passes, 1 to 9 (default: 1)")
  private int passes = 1;

  @Option(
      names = "--by",
      paramLabel = "wear|contour",
      description = {
        "wear: the path of the cutter's centre, D holds wear alone;",
        "contour: the wall of the thread, D holds the radius of the mill",
        "(default: as D in the sheet holds a radius or not; else wear)"
      })
  private Optional<DraftChoices.Path> path = Optional.empty();

  @Option(
      names = "--units",
      paramLabel = "mm|inch",
      description = {
        "unit of the program, and of lengths given without one (default: that of the sheet, or mm)"
      })
  private Optional<String> units = Optional.empty();

  @Option(
      names = "--subprogram",
      description = "puts the motion round a hole into a subprogram, called by M98")
  private boolean subprogram;

  @Option(
      names = "--program-number",
      paramLabel = "N",
      description = "number after O (default: 1001); a subprogram has the next")
  private int number = 1001;

  @Option(
      names = "--speed",
      paramLabel = "V",
      description = "cutting speed in m/min, instead of a careful one")
  private Optional<Double> speed = Optional.empty();

  @Option(
      names = "--tooth-feed",
      paramLabel = "MM",
      description = "feed of the edge for one tooth in mm, instead of a careful one")
  private Optional<Double> toothFeed = Optional.empty();

  @Option(
      names = "--most-rpm",
      paramLabel = "S",
      description = "greatest speed of the spindle (default: 8000)")
  private double mostRpm = 8000;

  /** Senses. */
  enum Cut {
    CLIMB,
    CONVENTIONAL
  }

  /** Number of the mill, if it was told. */
  Optional<Integer> tool() {
    return tool;
  }

  /**
   * The choices.
   *
   * @param mill number of the mill
   * @param usual unit unless another is told
   * @param usualPath what is programmed unless something else is told
   */
  DraftChoices choices(int mill, LengthUnit usual, DraftChoices.Path usualPath)
      throws RequestException {
    LengthUnit unit = units.isPresent() ? unit(units.get()) : usual;
    if (passes < 1 || passes > DraftChoices.MOST_PASSES) {
      throw DraftThread.wrong(
          "--passes " + passes,
          "1 to " + DraftChoices.MOST_PASSES + " are written",
          "the metal of a thread is taken in few passes");
    }
    try {
      return new DraftChoices(
          mill,
          mode,
          entry,
          cut == Cut.CLIMB,
          passes,
          path.orElse(usualPath),
          unit,
          subprogram,
          number,
          speed,
          toothFeed,
          mostRpm);
    } catch (IllegalArgumentException e) {
      throw DraftThread.wrong(String.valueOf(e.getMessage()), "no draft can have that", "");
    }
  }

  private static LengthUnit unit(String word) throws RequestException {
    return Lengths.unit(word)
        .orElseThrow(
            () ->
                DraftThread.wrong(
                    "--units " + word, "a program is in mm or inch", "write mm or inch"));
  }
}
