package flankfit.setup;

import java.util.Objects;
import java.util.Optional;

/**
 * One hole or boss of the sheet; a pattern gives one each.
 *
 * @param name name of the hole; the members of a pattern carry a number, as in {@code port 2}
 * @param boss whether it is a boss with an external thread
 * @param x axis, part frame (mm)
 * @param y axis, part frame (mm)
 * @param top height of its mouth, part frame (mm)
 * @param diameter diameter before the thread is cut (mm)
 * @param depth depth below the top (mm); empty for through
 * @param bottomAngle point angle of the bottom (rad); π for flat
 * @param countersink countersink at the mouth
 * @param thread designation of the thread wanted, canonical
 * @param threadDepth depth of full thread wanted below the top (mm)
 * @param madeBy what makes the hole; empty when the sheet leaves it to the program's moves
 * @param diameterTolerance greatest less least diameter before the thread is cut (mm); empty when
 *     not stated
 * @param line line of the sheet, from 1; 0 when not from a sheet
 */
public record Hole(
    String name,
    boolean boss,
    double x,
    double y,
    double top,
    double diameter,
    Optional<Double> depth,
    double bottomAngle,
    Optional<Countersink> countersink,
    Optional<String> thread,
    Optional<Double> threadDepth,
    Optional<MadeBy> madeBy,
    Optional<Double> diameterTolerance,
    int line) {
  public Hole {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(madeBy, "madeBy");
    Objects.requireNonNull(diameterTolerance, "diameterTolerance");
  }

  /** A hole whose diameter has no tolerance stated. */
  public Hole(
      String name,
      boolean boss,
      double x,
      double y,
      double top,
      double diameter,
      Optional<Double> depth,
      double bottomAngle,
      Optional<Countersink> countersink,
      Optional<String> thread,
      Optional<Double> threadDepth,
      Optional<MadeBy> madeBy,
      int line) {
    this(
        name,
        boss,
        x,
        y,
        top,
        diameter,
        depth,
        bottomAngle,
        countersink,
        thread,
        threadDepth,
        madeBy,
        Optional.empty(),
        line);
  }

  /** A hole of which nothing says what makes it. */
  public Hole(
      String name,
      boolean boss,
      double x,
      double y,
      double top,
      double diameter,
      Optional<Double> depth,
      double bottomAngle,
      Optional<Countersink> countersink,
      Optional<String> thread,
      Optional<Double> threadDepth,
      int line) {
    this(
        name,
        boss,
        x,
        y,
        top,
        diameter,
        depth,
        bottomAngle,
        countersink,
        thread,
        threadDepth,
        Optional.empty(),
        line);
  }

  /** What makes a hole before its thread is milled. */
  public enum MadeBy {
    /** Moves of the program. */
    PROGRAM("program"),
    /** It is in the stock before the program starts. */
    STOCK("stock");

    private final String word;

    MadeBy(String word) {
      this.word = word;
    }

    /** The word in the sheet. */
    public String word() {
      return word;
    }
  }

  /**
   * A cone at the mouth of a hole.
   *
   * @param diameter diameter at the top (mm)
   * @param angle angle between opposite sides (rad)
   */
  public record Countersink(double diameter, double angle) {}
}
