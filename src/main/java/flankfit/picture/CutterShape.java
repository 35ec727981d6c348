package flankfit.picture;

import flankfit.motion.Point;
import flankfit.picture.SurfaceStore.Part;
import flankfit.setup.Tool;
import flankfit.setup.Tool.Section;
import flankfit.setup.Tool.Teeth;
import java.util.ArrayList;
import java.util.List;

/**
 * A tool as a surface of revolution about its axis, the lowest point at zero. Only what the sheet
 * says is drawn: without a shank the body ends where the flutes end. Teeth are drawn with straight
 * flanks whatever their form; a picture shows where the rows are, not the last micrometre.
 */
final class CutterShape {
  private static final int ROUNDING = 12;

  /** Least radius that a tooth leaves, as a share of the cutter's radius (1). */
  private static final double CORE = 0.35;

  private final List<double[]> profile = new ArrayList<>();
  private final List<Double> rings = new ArrayList<>();
  private int cutting;

  /** The shape of a tool. */
  CutterShape(Tool tool) {
    if (tool.teeth().isPresent()) {
      rows(tool, tool.teeth().get());
    } else {
      tip(tool);
    }
    cutting = profile.size();
    above(tool);
  }

  /** Points of the outline from the tip upwards: height and radius (mm). */
  List<double[]> profile() {
    return List.copyOf(profile);
  }

  /** Top of the part that cuts (mm). */
  double cuttingTop() {
    return profile.get(cutting - 1)[0];
  }

  private void to(double height, double radius) {
    profile.add(new double[] {height, Math.max(0, radius)});
  }

  private double top() {
    return profile.isEmpty() ? 0 : profile.get(profile.size() - 1)[0];
  }

  private void rows(Tool tool, Teeth teeth) {
    double r = tool.radius();
    double pitch = teeth.pitch().orElse(0.0);
    double slope = Math.tan(teeth.halfAngle());
    double deepest = r * (1 - CORE);
    double meet = pitch > 0 ? (pitch - teeth.crestFlat()) / 2 / slope : deepest;
    double depth = Math.max(0, Math.min(meet, deepest));
    double half = teeth.crestFlat() / 2;
    double foot = half + depth * slope;
    double root = r - depth;
    to(0, 0);
    to(0, Math.min(root, r));
    for (int row = 0; row < teeth.rows(); row++) {
      double middle = teeth.tip() + row * pitch;
      to(Math.max(0, middle - foot), root);
      to(Math.max(0, middle - half), r);
      to(middle + half, r);
      to(middle + foot, root);
      rings.add(middle);
    }
    if (tool.fluteLength() > top()) {
      to(tool.fluteLength(), root);
    }
  }

  private void tip(Tool tool) {
    double r = tool.radius();
    to(0, 0);
    switch (tool.kind()) {
      case BALL_MILL -> corner(r, r);
      case BULL_NOSE_MILL -> corner(r, Math.min(tool.cornerRadius(), r));
      case DRILL, SPOT_DRILL, COUNTERSINK ->
          to(tool.pointAngle() < 3.1 ? r / Math.tan(tool.pointAngle() / 2) : 0, r);
      case FACE_MILL, END_MILL, REAMER, BORING_BAR, TAP, THREAD_MILL ->
          corner(r, tool.cornerRadius());
    }
    to(Math.max(tool.fluteLength(), top()), r);
  }

  private void corner(double r, double rounding) {
    double c = Math.max(0, Math.min(rounding, r));
    if (c == 0) {
      to(0, r);
      return;
    }
    for (int i = 0; i <= ROUNDING; i++) {
      double a = Math.PI / 2 * i / ROUNDING;
      to(c - c * StrictMath.cos(a), r - c + c * StrictMath.sin(a));
    }
  }

  private void above(Tool tool) {
    tool.neck()
        .ifPresent(
            neck -> {
              to(top(), neck.diameter() / 2);
              to(Math.max(top(), neck.length()), neck.diameter() / 2);
            });
    tool.shank().ifPresent(this::stack);
    tool.holder().ifPresent(this::stack);
    to(top(), 0);
  }

  private void stack(Section section) {
    to(top(), section.diameter() / 2);
    to(top() + section.length(), section.diameter() / 2);
  }

  /** Faces about the tip. */
  SurfaceStore faces() {
    SurfaceStore faces = new SurfaceStore(Point.ZERO);
    for (int i = 1; i < profile.size(); i++) {
      double[] a = profile.get(i - 1);
      double[] b = profile.get(i);
      faces.frustum(0, 0, a[0], a[1], b[0], b[1]);
      if (i == cutting - 1) {
        faces.end(Part.CUTTING_PART);
      }
    }
    faces.end(Part.SHANK);
    return faces;
  }

  /** Outline about the tip: both meridians in the XZ plane, and rings where the radius jumps. */
  LineStore edges(double radius) {
    LineStore edges = new LineStore(Point.ZERO);
    for (int side = -1; side <= 1; side += 2) {
      edges.moveTo(side * profile.get(0)[1], 0, profile.get(0)[0]);
      for (int i = 1; i < profile.size(); i++) {
        double[] p = profile.get(i);
        edges.lineTo(side * p[1], 0, p[0], 0, LineStyles.CUTTER_MERIDIAN);
      }
    }
    for (double height : rings) {
      ring(edges, height, radius, LineStyles.CUTTER_EDGE);
    }
    for (int i = 1; i < profile.size(); i++) {
      double[] a = profile.get(i - 1);
      double[] b = profile.get(i);
      boolean jump = i >= cutting - 1 || i == 1;
      if (jump && b[0] == a[0]) {
        // From above only the cutting part is drawn: a holder would cover the hole.
        int style = i > cutting ? LineStyles.CUTTER_MERIDIAN : LineStyles.CUTTER_EDGE;
        ring(edges, b[0], a[1], style);
        ring(edges, b[0], b[1], style);
      }
    }
    return edges;
  }

  private static void ring(LineStore edges, double height, double radius, int style) {
    if (radius > 0) {
      edges.circle(0, 0, height, radius, SurfaceStore.sides(radius), style);
    }
  }
}
