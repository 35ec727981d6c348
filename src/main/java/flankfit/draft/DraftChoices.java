package flankfit.draft;

import flankfit.motion.ModalState.Distance;
import flankfit.unit.LengthUnit;
import flankfit.unit.Require;
import java.util.Objects;
import java.util.Optional;

/**
 * How a program is to be written; what it cuts stands in the setup sheet.
 *
 * @param tool number of the thread mill in the sheet, and of its registers
 * @param mode absolute or incremental words
 * @param entry how each pass enters and leaves the wall
 * @param climb whether the teeth cut from thick to thin
 * @param passes number of passes at growing depth, 1 to 9
 * @param path what the programmed path is
 * @param unit unit of the words
 * @param subprogram whether the motion round a hole stands in a subprogram
 * @param number program number, 1 to 9998; the subprogram has the next
 * @param speed cutting speed (m/min); empty to take it from the table
 * @param toothFeed feed of the edge for one tooth (mm); empty to take it from the table
 * @param mostRpm greatest speed of the spindle (1/min)
 */
public record DraftChoices(
    int tool,
    Distance mode,
    Entry entry,
    boolean climb,
    int passes,
    Path path,
    LengthUnit unit,
    boolean subprogram,
    int number,
    Optional<Double> speed,
    Optional<Double> toothFeed,
    double mostRpm) {
  /** More passes than this are no help. */
  public static final int MOST_PASSES = 9;

  private static final int GREATEST_NUMBER = 9998;

  public DraftChoices {
    Require.within("tool", tool, 1, 99_999_999);
    Require.within("passes", passes, 1, MOST_PASSES);
    Require.within("number", number, 1, GREATEST_NUMBER);
    Require.positive("mostRpm", mostRpm);
    Objects.requireNonNull(mode, "mode");
    Objects.requireNonNull(entry, "entry");
    Objects.requireNonNull(path, "path");
    Objects.requireNonNull(unit, "unit");
    speed.ifPresent(v -> Require.positive("speed", v));
    toothFeed.ifPresent(v -> Require.positive("toothFeed", v));
  }

  /** How a pass enters and leaves the wall. */
  public enum Entry {
    /** On a straight line: square to a hole's wall, along the tangent of a boss. */
    STRAIGHT(0),
    /** On a quarter of a circle that touches the path. */
    QUARTER(Math.PI / 2),
    /** On half a circle that touches the path. */
    HALF(Math.PI);

    private final double sweep;

    Entry(double sweep) {
      this.sweep = sweep;
    }

    /** Sweep of the arc (rad); 0 for none. */
    public double sweep() {
      return sweep;
    }
  }

  /** What the programmed path is. */
  public enum Path {
    /** The path of the cutter's centre; D holds wear alone. */
    WEAR,
    /** The wall of the thread; D holds the radius of the mill. */
    CONTOUR
  }
}
