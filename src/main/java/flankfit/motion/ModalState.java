package flankfit.motion;

import flankfit.unit.LengthUnit;
import java.util.Objects;

/**
 * The state of the control during a move. A tape keeps each distinct state once.
 *
 * @param distance how axis words were read
 * @param plane plane of arcs
 * @param compensation radius compensation as it stands on the part
 * @param compensationOffset radius in use (mm), signed as in the register; 0 when off
 * @param radiusRegister number of the D register last named; 0 for none
 * @param lengthRegister number of the H register in use; 0 for none
 * @param unit unit of the program's numbers
 * @param workOffset name of the work offset, such as {@code G54}
 * @param tool number of the tool in the spindle; 0 for none
 * @param feed feed along the path (mm/min); 0 when none has been given
 * @param spindle whether and which way the spindle turns
 * @param rpm spindle speed last commanded (1/min)
 * @param coolant whether coolant is on
 */
public record ModalState(
    Distance distance,
    Plane plane,
    Compensation compensation,
    double compensationOffset,
    int radiusRegister,
    int lengthRegister,
    LengthUnit unit,
    String workOffset,
    int tool,
    double feed,
    Spindle spindle,
    double rpm,
    boolean coolant) {

  public ModalState {
    Objects.requireNonNull(distance, "distance");
    Objects.requireNonNull(plane, "plane");
    Objects.requireNonNull(compensation, "compensation");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(workOffset, "workOffset");
    Objects.requireNonNull(spindle, "spindle");
  }

  /** A state with nothing commanded: absolute, XY, everything off. */
  public static ModalState initial(LengthUnit unit) {
    return new ModalState(
        Distance.ABSOLUTE,
        Plane.XY,
        Compensation.OFF,
        0,
        0,
        0,
        unit,
        "G54",
        0,
        0,
        Spindle.OFF,
        0,
        false);
  }

  /** How axis words are read. */
  public enum Distance {
    ABSOLUTE("absolute"),
    INCREMENTAL("incremental");

    private final String word;

    Distance(String word) {
      this.word = word;
    }

    /** The word people and JSON see. */
    public String word() {
      return word;
    }
  }

  /** On which side of the direction of motion the tool runs. */
  public enum Compensation {
    OFF("off"),
    LEFT("left"),
    RIGHT("right");

    private final String word;

    Compensation(String word) {
      this.word = word;
    }

    /** The word people and JSON see. */
    public String word() {
      return word;
    }
  }

  /** Which way the spindle turns. */
  public enum Spindle {
    OFF("off"),
    CLOCKWISE("clockwise"),
    COUNTER_CLOCKWISE("counter-clockwise");

    private final String word;

    Spindle(String word) {
      this.word = word;
    }

    /** The word people and JSON see. */
    public String word() {
      return word;
    }
  }
}
