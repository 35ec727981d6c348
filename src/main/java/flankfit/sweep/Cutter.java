package flankfit.sweep;

import flankfit.setup.Tool;
import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A thread mill as the body that it is while it spins: rows of teeth, and above them cylinders that
 * do not cut but take away metal too when they are driven into it.
 *
 * @param tooth form of each row
 * @param rows number of rows, from 1
 * @param rowPitch axial distance from row to row (mm); not used for one row
 * @param lowestRow height of the middle of the lowest row above the tool's lowest point (mm)
 * @param rowReach axial distance from a row's middle beyond which its teeth do not reach (mm),
 *     above 0; infinite when the form says it all
 * @param body cylinders above the teeth
 */
public record Cutter(
    Tooth tooth, int rows, double rowPitch, double lowestRow, double rowReach, List<Section> body) {
  public Cutter {
    Objects.requireNonNull(tooth, "tooth");
    Require.within("rows", rows, 1, 1000);
    Require.notNegative("rowPitch", rowPitch);
    Require.finite("lowestRow", lowestRow);
    if (!(rowReach > 0)) {
      throw new IllegalArgumentException("rowReach must be above 0: " + rowReach);
    }
    body = List.copyOf(body);
  }

  /** A cutter of one row at its lowest point, without anything above. */
  public static Cutter single(Tooth tooth) {
    return new Cutter(tooth, 1, 0, 0, Double.POSITIVE_INFINITY, List.of());
  }

  /**
   * A cylinder of the tool.
   *
   * @param name what it is called, such as {@code neck}
   * @param radius radius (mm), above 0
   * @param from lower end above the tool's lowest point (mm)
   * @param to upper end (mm), above the lower one
   */
  public record Section(String name, double radius, double from, double to) {
    public Section {
      Objects.requireNonNull(name, "name");
      Require.positive("radius", radius);
      Require.finite("from", from);
      Require.positive("length", to - from);
    }
  }

  /**
   * The cutter of a tool. A row reaches one pitch to either side where the pitch is known, else to
   * the neck's or shank's radius.
   *
   * @param tooth form of its teeth
   * @throws IllegalArgumentException if the tool has no teeth
   */
  public static Cutter of(Tool tool, Tooth tooth) {
    Tool.Teeth teeth =
        tool.teeth()
            .orElseThrow(() -> new IllegalArgumentException("tool has no teeth: " + tool.number()));
    double pitch = teeth.pitch().orElse(0.0);
    List<Section> body = new ArrayList<>();
    double height = tool.fluteLength();
    height = add(body, "neck", tool.neck(), height, true);
    height = add(body, "shank", tool.shank(), height, false);
    add(body, "holder", tool.holder(), height, false);
    double reach = pitch > 0 ? pitch : widthAtBody(tooth, body);
    return new Cutter(tooth, teeth.rows(), pitch, teeth.tip(), reach, body);
  }

  /** A neck's length counts from the tip, that of shank and holder from where they begin. */
  private static double add(
      List<Section> body,
      String name,
      Optional<Tool.Section> section,
      double from,
      boolean fromTip) {
    if (section.isEmpty()) {
      return from;
    }
    double length = section.get().length();
    double to = fromTip ? length : from + length;
    if (to <= from) {
      return from;
    }
    body.add(new Section(name, section.get().diameter() / 2, from, to));
    return to;
  }

  private static double widthAtBody(Tooth tooth, List<Section> body) {
    if (body.isEmpty() || body.get(0).radius() >= tooth.outsideRadius()) {
      return Double.POSITIVE_INFINITY;
    }
    double radius = body.get(0).radius();
    return Math.max(tooth.halfWidth(radius, Flank.UP), tooth.halfWidth(radius, Flank.DOWN));
  }

  /** Height of the middle of a row, counted from 0 at the lowest, above the lowest point (mm). */
  public double height(int row) {
    return lowestRow + row * rowPitch;
  }
}
