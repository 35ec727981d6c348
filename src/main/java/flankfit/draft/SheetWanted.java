package flankfit.draft;

import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a setup sheet is to say when there is only a drawing; lengths in mm.
 *
 * @param designation thread wanted, canonical
 * @param boss whether it is an external thread
 * @param places axes, X and Y each, [n][2]
 * @param blank diameter of hole or boss before the thread
 * @param depth depth of full thread
 * @param blankDepth depth of the hole or height of the boss; empty for through
 * @param thickness height of the stock
 * @param mill the thread mill
 * @param material material of the part; empty text when not said
 * @param unit unit of the sheet
 */
public record SheetWanted(
    String designation,
    boolean boss,
    List<List<Double>> places,
    double blank,
    double depth,
    Optional<Double> blankDepth,
    double thickness,
    MillWanted mill,
    String material,
    LengthUnit unit) {
  public SheetWanted {
    Objects.requireNonNull(designation, "designation");
    places = places.stream().map(List::copyOf).toList();
    Objects.requireNonNull(blankDepth, "blankDepth");
    Objects.requireNonNull(mill, "mill");
    Objects.requireNonNull(material, "material");
    Objects.requireNonNull(unit, "unit");
  }

  /** The same with hole or boss and stock of other depths (mm). */
  public SheetWanted deep(Optional<Double> otherDepth, double otherThickness) {
    return new SheetWanted(
        designation, boss, places, blank, depth, otherDepth, otherThickness, mill, material, unit);
  }

  /**
   * The mill; what is empty is left to the reader of sheets, which says what it takes.
   *
   * @param number tool number
   * @param leftHand whether it cuts turning counter-clockwise
   * @param diameter over the teeth (mm)
   * @param flutes number of flutes
   * @param rows number of rows
   * @param pitch distance of the rows (mm); for several rows
   * @param straight whether its flanks are true V; empty when not said
   * @param crestFlat width of the teeth's tips (mm)
   * @param tip from the lowest point to the middle of the first row (mm)
   * @param fluteLength length that cuts (mm)
   * @param neck neck above the flutes
   * @param material what it is made of
   */
  public record MillWanted(
      int number,
      boolean leftHand,
      double diameter,
      Optional<Integer> flutes,
      int rows,
      double pitch,
      Optional<Boolean> straight,
      Optional<Double> crestFlat,
      double tip,
      Optional<Double> fluteLength,
      Optional<Tool.Section> neck,
      String material) {
    public MillWanted {
      Objects.requireNonNull(flutes, "flutes");
      Objects.requireNonNull(straight, "straight");
      Objects.requireNonNull(crestFlat, "crestFlat");
      Objects.requireNonNull(fluteLength, "fluteLength");
      Objects.requireNonNull(neck, "neck");
      Objects.requireNonNull(material, "material");
    }
  }
}
