package flankfit.metal;

import flankfit.setup.Tool;
import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A tool as the body that it is while it spins, all of it surfaces of revolution about the tool's
 * axis, heights counted from its lowest point.
 *
 * @param tool the tool of the sheet
 * @param cutting the part that cuts
 * @param above neck, shank and holder, upwards: they only touch
 * @param cell side of the cells that show what this tool leaves (mm)
 */
public record ToolBody(Tool tool, Profile cutting, List<Part> above, double cell) {
  /** Cells over the radius of a smooth tool. */
  private static final double CELLS_A_RADIUS = 60;

  private static final double CELLS_A_FACE_MILL = 30;
  private static final double CELLS_A_PITCH = 50;
  private static final double CELLS_A_CORNER = 15;

  public ToolBody {
    Objects.requireNonNull(tool, "tool");
    Objects.requireNonNull(cutting, "cutting");
    above = List.copyOf(above);
    Require.positive("cell", cell);
  }

  /**
   * A part that does not cut.
   *
   * @param name neck, shank or holder
   * @param profile its form
   */
  public record Part(String name, Profile profile) {}

  /**
   * The body of a tool of the sheet. A boring bar counts as the circle of its tip, a tap as a
   * cylinder on whose radius its teeth and gaps are equally wide: its thread is not modelled.
   *
   * @throws IllegalArgumentException if no tool can have these sizes; says why
   */
  public static ToolBody of(Tool tool) {
    return new ToolBody(tool, cutting(tool), above(tool), cell(tool));
  }

  /** Whether the cutting part is a plain cylinder. */
  boolean isCylinder() {
    return switch (tool.kind()) {
      case FACE_MILL, END_MILL, REAMER, BORING_BAR, TAP -> true;
      case BALL_MILL, BULL_NOSE_MILL, DRILL, SPOT_DRILL, COUNTERSINK, THREAD_MILL -> false;
    };
  }

  /** Whether the cutting part is a convex body: all but rows of teeth. */
  boolean isConvex() {
    return tool.kind() != Tool.Kind.THREAD_MILL;
  }

  private static Profile cutting(Tool tool) {
    double radius = tool.radius();
    double top = tool.fluteLength();
    return switch (tool.kind()) {
      case FACE_MILL, END_MILL, REAMER, BORING_BAR -> Profile.cylinder(radius, 0, top);
      case BALL_MILL -> rounded(radius, radius, top);
      case BULL_NOSE_MILL -> rounded(radius, tool.cornerRadius(), top);
      case DRILL, SPOT_DRILL, COUNTERSINK -> pointed(radius, tool.pointAngle(), top);
      case TAP -> Profile.cylinder(tapRadius(tool), 0, top);
      case THREAD_MILL ->
          SheetTeeth.of(
              tool,
              tool.teeth()
                  .orElseThrow(
                      () -> new IllegalArgumentException("tool has no teeth: " + tool.number())));
    };
  }

  private static Profile rounded(double radius, double corner, double top) {
    double flat = radius - corner;
    double end = Math.min(corner, top);
    double reached =
        flat + Math.sqrt(Math.max(0, corner * corner - (corner - end) * (corner - end)));
    return new Profile.Builder(0)
        .arc(end, flat, reached, corner, flat, corner)
        .line(top, radius, radius)
        .build();
  }

  private static Profile pointed(double radius, double angle, double top) {
    double height = angle >= Math.PI ? 0 : radius / Math.tan(angle / 2);
    double end = Math.min(height, top);
    return new Profile.Builder(0)
        .line(end, 0, height > 0 ? radius * end / height : radius)
        .line(top, radius, radius)
        .build();
  }

  private static double tapRadius(Tool tool) {
    return tool.teeth()
        .filter(teeth -> teeth.pitch().isPresent())
        .map(teeth -> tool.radius() - tapDepth(teeth))
        .filter(radius -> radius > 0)
        .orElse(tool.radius());
  }

  /** How far below its outside a tap's tooth is half a pitch wide (mm). */
  private static double tapDepth(Tool.Teeth teeth) {
    double wider = teeth.pitch().orElseThrow() / 4 - teeth.crestFlat() / 2;
    return Math.max(0, wider / Math.tan(teeth.halfAngle()));
  }

  /** A neck's length counts from the tip, that of shank and holder from where they begin. */
  private static List<Part> above(Tool tool) {
    List<Part> parts = new ArrayList<>();
    double height = tool.fluteLength();
    if (tool.neck().isPresent() && tool.neck().get().length() > height) {
      Tool.Section neck = tool.neck().get();
      parts.add(new Part("neck", Profile.cylinder(neck.diameter() / 2, height, neck.length())));
      height = neck.length();
    }
    if (tool.shank().isPresent()) {
      height = add(parts, "shank", tool.shank().get(), height);
    }
    if (tool.holder().isPresent()) {
      add(parts, "holder", tool.holder().get(), height);
    }
    return parts;
  }

  private static double add(List<Part> parts, String name, Tool.Section section, double from) {
    double to = from + section.length();
    parts.add(new Part(name, Profile.cylinder(section.diameter() / 2, from, to)));
    return to;
  }

  private static double cell(Tool tool) {
    double radius = tool.radius();
    double smooth = radius / CELLS_A_RADIUS;
    return switch (tool.kind()) {
      case FACE_MILL -> radius / CELLS_A_FACE_MILL;
      case END_MILL, BALL_MILL, DRILL, SPOT_DRILL, COUNTERSINK, REAMER, BORING_BAR, TAP -> smooth;
      case BULL_NOSE_MILL ->
          tool.cornerRadius() > 0
              ? Math.max(smooth / 4, Math.min(smooth, tool.cornerRadius() / CELLS_A_CORNER))
              : smooth;
      case THREAD_MILL ->
          tool.teeth()
              .flatMap(Tool.Teeth::pitch)
              .map(pitch -> Math.min(smooth, pitch / CELLS_A_PITCH))
              .orElse(smooth / 4);
    };
  }
}
