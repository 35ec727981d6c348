package flankfit.control;

import flankfit.motion.ModalState.Compensation;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.setup.Offsets;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Everything that stays in force from block to block, as said, before it shows in a move.
 *
 * @param motion motion function 0 to 3
 * @param distance how axis words are read
 * @param centre how centre words are read
 * @param plane plane of arcs
 * @param unit unit of the program's numbers
 * @param feedMode 93, 94 or 95
 * @param feed F as it counts: mm/min, mm for a revolution, or 1/min; empty when none is given
 * @param spindle whether and which way the spindle turns
 * @param speed spindle speed last commanded (1/min)
 * @param mist whether mist is on
 * @param flood whether flood is on
 * @param tool tool in the spindle; 0 for none
 * @param selectedTool tool selected last; 0 for none
 * @param lengthMode 43, 44 or 49
 * @param lengthRegister number of the H register in use; 0 for none
 * @param side side of compensation last said
 * @param radius radius in use while a side is said (mm), signed as in the register; else 0
 * @param radiusRegister number of the D register last named; 0 for none
 * @param workOffset name of the work offset
 * @param workZero where its zero lies, the common offset included, part frame (mm)
 * @param localShift shift by G52 (mm)
 * @param shift shift by G92 in force (mm)
 * @param mirror where each of X, Y, Z is mirrored (mm); empty for an axis that is not
 * @param scale scaling, if on
 * @param rotation rotation, if on
 * @param cycle cycle, if on
 * @param returnsToClearance whether holes end at the R level, G99
 * @param modalCall program that motions call, if G66 is on
 * @param registers the H and D registers as they stand
 */
public record ControlState(
    int motion,
    Distance distance,
    Distance centre,
    Plane plane,
    LengthUnit unit,
    int feedMode,
    OptionalDouble feed,
    Spindle spindle,
    double speed,
    boolean mist,
    boolean flood,
    int tool,
    int selectedTool,
    int lengthMode,
    int lengthRegister,
    Compensation side,
    double radius,
    int radiusRegister,
    String workOffset,
    Point workZero,
    Point localShift,
    Point shift,
    List<OptionalDouble> mirror,
    Optional<Scale> scale,
    Optional<Rotation> rotation,
    Optional<Cycle> cycle,
    boolean returnsToClearance,
    OptionalInt modalCall,
    Offsets registers) {
  public ControlState {
    Objects.requireNonNull(distance, "distance");
    Objects.requireNonNull(centre, "centre");
    Objects.requireNonNull(plane, "plane");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(feed, "feed");
    Objects.requireNonNull(spindle, "spindle");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(workOffset, "workOffset");
    Objects.requireNonNull(workZero, "workZero");
    Objects.requireNonNull(localShift, "localShift");
    Objects.requireNonNull(shift, "shift");
    mirror = List.copyOf(mirror);
    Objects.requireNonNull(scale, "scale");
    Objects.requireNonNull(rotation, "rotation");
    Objects.requireNonNull(cycle, "cycle");
    Objects.requireNonNull(modalCall, "modalCall");
    Objects.requireNonNull(registers, "registers");
  }

  /**
   * Scaling about a point.
   *
   * @param centre the point that stays, program coordinates (mm)
   * @param x factor along X (1)
   * @param y factor along Y (1)
   * @param z factor along Z (1)
   */
  public record Scale(Point centre, double x, double y, double z) {
    public Scale {
      Objects.requireNonNull(centre, "centre");
    }
  }

  /**
   * Rotation about a point.
   *
   * @param plane plane of the rotation
   * @param centreU the point that stays, on the plane's first axis, program coordinates (mm)
   * @param centreV the same on the second axis (mm)
   * @param degrees angle, anticlockwise (degrees)
   */
  public record Rotation(Plane plane, double centreU, double centreV, double degrees) {
    public Rotation {
      Objects.requireNonNull(plane, "plane");
    }
  }

  /**
   * A drilling or boring cycle with its data. Levels are program coordinates along the plane's
   * normal.
   *
   * @param function such as {@code G81}
   * @param initial height at which the run began, part frame (mm)
   * @param clearance R level (mm), if said
   * @param depth depth (mm), if said
   * @param peck Q (mm), if said
   * @param seconds dwell (s); 0 for none
   * @param shiftX shift out of the bore along X (mm)
   * @param shiftY shift out of the bore along Y (mm)
   */
  public record Cycle(
      String function,
      double initial,
      OptionalDouble clearance,
      OptionalDouble depth,
      OptionalDouble peck,
      double seconds,
      double shiftX,
      double shiftY) {
    public Cycle {
      Objects.requireNonNull(function, "function");
      Objects.requireNonNull(clearance, "clearance");
      Objects.requireNonNull(depth, "depth");
      Objects.requireNonNull(peck, "peck");
    }
  }
}
