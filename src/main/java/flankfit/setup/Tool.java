package flankfit.setup;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One tool of the sheet.
 *
 * @param number tool number, from 1
 * @param kind what it is
 * @param leftHand whether it cuts turning counter-clockwise (M4)
 * @param diameter over the teeth (mm)
 * @param flutes number of flutes
 * @param teeth rows, for thread mills and taps
 * @param pointAngle point angle of drills and countersinks (rad); π for flat
 * @param cornerRadius corner radius (mm); 0 for sharp
 * @param fluteLength length that cuts, from the tip (mm)
 * @param neck narrow part above the flutes
 * @param shank shank above that
 * @param holder holder above that
 * @param diameterTolerance half-width is not meant: greatest minus least diameter (mm); 0 unknown
 * @param runout total indicator reading (mm)
 * @param material text of the sheet
 * @param holderCompliance how far holder, spindle and clamp yield for one newton at the tool
 *     (mm/N); empty when not measured
 * @param stated which deviations the sheet states, for the odds
 * @param line line of the sheet, from 1; 0 when not from a sheet
 */
public record Tool(
    int number,
    Kind kind,
    boolean leftHand,
    double diameter,
    int flutes,
    Optional<Teeth> teeth,
    double pointAngle,
    double cornerRadius,
    double fluteLength,
    Optional<Section> neck,
    Optional<Section> shank,
    Optional<Section> holder,
    double diameterTolerance,
    double runout,
    String material,
    Optional<Double> holderCompliance,
    Stated stated,
    int line) {
  public Tool {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(holderCompliance, "holderCompliance");
    Objects.requireNonNull(stated, "stated");
  }

  /** A tool whose deviations count as not stated where they are 0. */
  public Tool(
      int number,
      Kind kind,
      boolean leftHand,
      double diameter,
      int flutes,
      Optional<Teeth> teeth,
      double pointAngle,
      double cornerRadius,
      double fluteLength,
      Optional<Section> neck,
      Optional<Section> shank,
      Optional<Section> holder,
      double diameterTolerance,
      double runout,
      String material,
      Optional<Double> holderCompliance,
      int line) {
    this(
        number,
        kind,
        leftHand,
        diameter,
        flutes,
        teeth,
        pointAngle,
        cornerRadius,
        fluteLength,
        neck,
        shank,
        holder,
        diameterTolerance,
        runout,
        material,
        holderCompliance,
        new Stated(
            diameterTolerance > 0 ? Optional.of(diameterTolerance) : Optional.empty(),
            runout > 0 ? Optional.of(runout) : Optional.empty(),
            Optional.empty()),
        line);
  }

  /** A tool whose holder was not measured. */
  public Tool(
      int number,
      Kind kind,
      boolean leftHand,
      double diameter,
      int flutes,
      Optional<Teeth> teeth,
      double pointAngle,
      double cornerRadius,
      double fluteLength,
      Optional<Section> neck,
      Optional<Section> shank,
      Optional<Section> holder,
      double diameterTolerance,
      double runout,
      String material,
      int line) {
    this(
        number,
        kind,
        leftHand,
        diameter,
        flutes,
        teeth,
        pointAngle,
        cornerRadius,
        fluteLength,
        neck,
        shank,
        holder,
        diameterTolerance,
        runout,
        material,
        Optional.empty(),
        line);
  }

  /**
   * Deviations that the sheet states; a stated 0 is a measured one.
   *
   * @param diameterTolerance greatest less least diameter over the teeth (mm)
   * @param runout total indicator reading (mm)
   * @param crestTolerance greatest less least width of a tooth's tip (mm)
   */
  public record Stated(
      Optional<Double> diameterTolerance,
      Optional<Double> runout,
      Optional<Double> crestTolerance) {
    public Stated {
      Objects.requireNonNull(diameterTolerance, "diameterTolerance");
      Objects.requireNonNull(runout, "runout");
      Objects.requireNonNull(crestTolerance, "crestTolerance");
    }
  }

  /** Radius over the teeth (mm). */
  public double radius() {
    return diameter / 2;
  }

  /** The kinds of tools, by their names in the sheet. */
  public enum Kind {
    FACE_MILL("face mill"),
    END_MILL("end mill"),
    BALL_MILL("ball mill"),
    BULL_NOSE_MILL("bull-nose mill"),
    DRILL("drill"),
    SPOT_DRILL("spot drill"),
    COUNTERSINK("countersink"),
    REAMER("reamer"),
    BORING_BAR("boring bar"),
    TAP("tap"),
    THREAD_MILL("thread mill");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The name in the sheet. */
    public String word() {
      return word;
    }
  }

  /**
   * Teeth of a thread mill or tap.
   *
   * @param rows number of rows, from 1
   * @param pitch axial distance of the rows (mm); empty for a single-row cutter that states none
   * @param halfAngle half the angle between the flanks (rad)
   * @param crestFlat width of a tooth's tip (mm); for a ground form, of the form's basis
   * @param form how the flanks are shaped
   * @param tip height of the middle of the lowest row above the tool's lowest point (mm)
   */
  public record Teeth(
      int rows,
      Optional<Double> pitch,
      double halfAngle,
      double crestFlat,
      CutterForm form,
      double tip) {}

  /** How the flanks of a thread mill's teeth are shaped. */
  public sealed interface CutterForm {
    /** True V flanks as drawn. */
    record Straight() implements CutterForm {}

    /**
     * Flanks corrected so that this thread comes out with its basic form on the nominal path.
     *
     * @param designation thread the mill is ground for, canonical
     * @param assumed whether the sheet left the form out and this was assumed
     */
    record GroundFor(String designation, boolean assumed) implements CutterForm {}

    /**
     * A measured profile.
     *
     * @param profile rows of axial distance from the tooth's middle and radius (mm), [n][2], by
     *     rising axial distance; a half profile begins at 0
     */
    record Measured(List<List<Double>> profile) implements CutterForm {
      public Measured {
        profile = profile.stream().map(List::copyOf).toList();
      }
    }
  }

  /**
   * A cylinder of the tool above the flutes.
   *
   * @param diameter diameter (mm)
   * @param length length, or reach from the tip for a neck (mm)
   */
  public record Section(double diameter, double length) {}
}
