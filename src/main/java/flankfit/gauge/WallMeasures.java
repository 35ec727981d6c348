package flankfit.gauge;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is measured on a real wall, over the whole turn and along the axis. Diameters are those of
 * the turns of full form.
 *
 * @param major greatest diameter, across the axis (mm)
 * @param minor least diameter, across the axis (mm)
 * @param pitch simple pitch diameter, across the axis, over all directions and heights (mm)
 * @param overBall pitch diameter that two best-size balls read, lead angle neglected (mm); in a
 *     hole only, empty where no ball rests on both flanks
 * @param levels the pitch diameter turn by turn from the mouth
 * @param functional functional diameter with the GO gauge's full crest
 * @param flanks functional diameter with the crest relieved
 * @param flankAngleUp half angle of the upper flank (rad), least squares over its middle 60 %
 * @param flankAngleDown half angle of the lower flank (rad)
 * @param leadError lead measured less the lead wanted (mm), least squares
 * @param leadSpread greatest axial error between any two places of the groove (mm)
 * @param taper change of the pitch diameter for a millimetre of height (1); above 0 it is larger at
 *     the mouth
 * @param roundness spread of the pitch line's radius over the directions about its own
 *     least-squares circle (mm)
 * @param axisX axis of the thread, least squares (mm)
 * @param axisY axis of the thread, least squares (mm)
 * @param bellMouth room on the diameter by which the first full turn, at its median, stands wider
 *     than the straight line through the others (mm); empty on a thread of less than three full
 *     turns
 * @param deepest deepest departure into the metal from the usual profile
 * @param ends turns and chamfer at both ends
 */
public record WallMeasures(
    double major,
    double minor,
    Spread pitch,
    Optional<Spread> overBall,
    List<Level> levels,
    Held functional,
    Held flanks,
    double flankAngleUp,
    double flankAngleDown,
    double leadError,
    double leadSpread,
    double taper,
    double roundness,
    double axisX,
    double axisY,
    OptionalDouble bellMouth,
    Departure deepest,
    Ends ends) {
  public WallMeasures {
    levels = List.copyOf(levels);
    Objects.requireNonNull(deepest, "deepest");
    Objects.requireNonNull(ends, "ends");
  }

  /**
   * A measure over many places.
   *
   * @param mean mean (mm)
   * @param least least (mm)
   * @param greatest greatest (mm)
   */
  public record Spread(double mean, double least, double greatest) {}

  /**
   * The pitch diameter over one turn.
   *
   * @param z middle of its heights (mm)
   * @param pitch pitch diameter over its directions (mm)
   */
  public record Level(double z, Spread pitch) {}

  /**
   * A functional diameter, by how the gauge is held; both are one where the thread is true.
   *
   * @param free gauge free to shift sideways
   * @param central gauge held central
   */
  public record Held(Functional free, Functional central) {}

  /**
   * Both ends of a thread.
   *
   * @param fullTurns turns of full form (1)
   * @param incompleteAtMouth turns from the first metal to the first of full form (1)
   * @param incompleteAtEnd turns from the last of full form to the last groove (1)
   * @param chamferDepth height from the face to where ridges are whole (mm)
   * @param chamferDiameter diameter of the chamfer at the face (mm)
   */
  public record Ends(
      double fullTurns,
      double incompleteAtMouth,
      double incompleteAtEnd,
      double chamferDepth,
      double chamferDiameter) {}

  /**
   * Measures a wall; empty when it has less than one turn of full form.
   *
   * @param field the wall, read once
   */
  public static Optional<WallMeasures> of(WallField field) {
    return of(field, Double.NEGATIVE_INFINITY);
  }

  /**
   * Measures a wall down to a height; empty when it has less than one turn of full form above.
   *
   * @param field the wall, read once
   * @param wantedBottom least height of grooves that count (mm)
   */
  public static Optional<WallMeasures> of(WallField field, double wantedBottom) {
    return WallMeasurer.measure(field, wantedBottom);
  }
}
