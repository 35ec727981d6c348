package flankfit.picture;

import flankfit.gauge.ThreadAnswer;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.RegularThread;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A section through the thread's axis: the metal, the basic profile, the limits, the GO gauge where
 * it rests, and beside it, at the same heights of radius, how far each flank departs from the basic
 * one.
 */
public final class SectionPicture {
  private static final double LEFT = 84;
  private static final double BELOW = 62;
  private static final double GAP = 112;
  private static final double END = 40;

  /** Radial height of the frame in heights of the sharp V. */
  private static final double SHARPS = 1.15;

  /** Least length of the frame in pitches. */
  private static final double PITCHES = 1.02;

  private static final int COLUMNS = 720;

  /** Least length of the scale bar (px). */
  private static final double LEAST_BAR = 36;

  private final ThreadAnswer thread;
  private final ThreadSpec spec;
  private final RegularThread surface;
  private final LengthUnit unit;
  private final Diagram diagram;
  private final DiagramRule along;
  private final DiagramRule out;
  private final double top;
  private final double right;
  private final double bottom;

  private SectionPicture(
      ThreadAnswer thread,
      RegularThread surface,
      LengthUnit unit,
      int width,
      int height,
      Theme theme,
      boolean bare) {
    this.thread = thread;
    this.spec = thread.spec();
    this.surface = surface;
    this.unit = unit;
    diagram =
        new Diagram(
            width, height, theme, "Section of " + PictureFrame.headline(thread), thread.reason());
    PictureFrame frame = bare ? PictureFrame.bare(diagram) : frame();
    top = frame.top() + 34;
    bottom = frame.foot() - BELOW;
    right = LEFT + (width - LEFT - GAP - END) * 0.62;
    double sharp = spec.pitch() / 2 / Math.tan(spec.halfAngle());
    double middle = (spec.nominal() + spec.basicMinor()) / 4;
    // Depth and length share one scale, so that angles are true; a whole groove fits either way.
    double perPixel =
        Math.max(SHARPS * sharp / (bottom - top), PITCHES * spec.pitch() / (right - LEFT));
    double reach = perPixel * (bottom - top) / 2;
    double half = perPixel * (right - LEFT) / 2;
    along = new DiagramRule(-half, half, LEFT, right);
    out = new DiagramRule(middle - reach, middle + reach, bottom, top);
  }

  private PictureFrame frame() {
    return PictureFrame.of(
        diagram,
        thread,
        "Section through the thread's axis, and how far its flanks stand from the basic ones",
        "shaded: metal · thin line: basic profile · dashed: GO "
            + gaugeWord()
            + ", held central · band: where the flank may lie by the limits");
  }

  /**
   * The section of a thread.
   *
   * @param surface its surface
   * @param unit unit of the figures
   * @param width width (px), 600 to 8192
   * @param height height (px), 400 to 8192
   */
  public static Diagram of(
      ThreadAnswer thread,
      RegularThread surface,
      LengthUnit unit,
      int width,
      int height,
      Theme theme) {
    SectionPicture picture = new SectionPicture(thread, surface, unit, width, height, theme, false);
    picture.draw();
    return picture.diagram;
  }

  /**
   * The section alone, without words round it, for a window.
   *
   * @param surface its surface
   * @param unit unit of the figures
   * @param width width (px), 400 to 8192
   * @param height height (px), 200 to 8192
   */
  public static Diagram bare(
      ThreadAnswer thread,
      RegularThread surface,
      LengthUnit unit,
      int width,
      int height,
      Theme theme) {
    SectionPicture picture = new SectionPicture(thread, surface, unit, width, height, theme, true);
    picture.draw();
    return picture.diagram;
  }

  private String gaugeWord() {
    return spec.internal() ? "plug" : "ring";
  }

  private void draw() {
    Theme.Palette palette = diagram.palette();
    double[] wall = metal();
    limits(-1);
    limits(1);
    diagram.stroke(wall, 2.2, 0, palette.ink());
    basic();
    gauge();
    out.upright(diagram, LEFT, unit);
    along.level(diagram, bottom, unit);
    String suffix = PictureFrame.unit(unit);
    diagram.text(
        Face.SMALL,
        PictureFrame.MARGIN,
        top - 14,
        "radius" + suffix,
        Align.LEFT,
        palette.softInk());
    double row = bottom + 36;
    String caption = "along the axis, from the middle of a groove" + suffix;
    for (String line : Paragraph.wrap(diagram, Face.SMALL, caption, right - LEFT)) {
      diagram.label(Face.SMALL, LEFT, row, line, Align.LEFT, palette.softInk());
      row += 15;
    }
    names();
    scaleBar();
    double ends = diagram.width() - END;
    new DepartureChart(diagram, thread, surface, out, right + GAP, ends)
        .draw(top, bottom, Math.abs(along.at(0.001) - along.at(0)));
  }

  /** Names beside what they name, where there is room. */
  private void names() {
    Theme.Palette palette = diagram.palette();
    boolean inside = spec.internal();
    double low = inside ? spec.basicMinor() / 2 : surface.groove().bottom();
    double high = inside ? surface.groove().bottom() : spec.nominal() / 2;
    double metalRow = inside ? (top + out.within(high)) / 2 : (bottom + out.within(low)) / 2;
    double middle = along.at(0);
    diagram.plate(Face.BODY, middle, metalRow + 5, "metal", Align.MIDDLE, palette.ink());
    double share = inside ? 0.18 : 0.82;
    pointed("GO " + gaugeWord(), low + share * (high - low), goPitch(), 1);
    pointed("basic profile", low + 0.5 * (high - low), spec.basicPitch(), -1);
  }

  private double goPitch() {
    return thread.go().map(ThreadAnswer.Go::pitch).orElse(spec.basicPitch());
  }

  /** A name in the groove with a line to the flank of a pitch diameter, if there is one. */
  private void pointed(String name, double radius, double pitch, int side) {
    if (name.startsWith("GO") && thread.go().isEmpty()) {
      return;
    }
    Theme.Palette palette = diagram.palette();
    double flank = along.at(side * halfWidth(radius, pitch));
    double middle = along.at(0);
    double y = out.at(radius);
    double wide = diagram.width(Face.SMALL, name);
    double from = middle + side * wide / 2;
    // The other name stands at another height: each may take the whole groove.
    if (side * (flank - from) > 14
        && diagram.plate(Face.SMALL, middle, y + 4, name, Align.MIDDLE, palette.ink())) {
      diagram.line(from + side * 5, y, flank, y, 1, palette.softInk());
    }
  }

  /** A bar of a round number of micrometres, where there is no metal. */
  private void scaleBar() {
    Theme.Palette palette = diagram.palette();
    double perMicrometre = Math.abs(along.at(0.001) - along.at(0));
    double length = Ticks.stepAtLeast(LEAST_BAR / perMicrometre);
    double y = spec.internal() ? bottom - 16 : top + 30;
    double x = LEFT + 18;
    double end = x + length * perMicrometre;
    diagram.line(x, y, end, y, 2, palette.ink());
    diagram.line(x, y - 4, x, y + 4, 2, palette.ink());
    diagram.line(end, y - 4, end, y + 4, 2, palette.ink());
    String words = Figures.plain(length, 0) + " µm";
    diagram.plate(Face.SMALL, end + 8, y + 4, words, Align.LEFT, palette.ink());
  }

  /** Half the axial width of a groove of some pitch diameter with the wanted flanks (mm). */
  private double halfWidth(double radius, double pitchDiameter) {
    double sign = spec.internal() ? 1 : -1;
    return spec.pitch() / 4 - sign * (radius - pitchDiameter / 2) * Math.tan(spec.halfAngle());
  }

  /** Between the flanks of both limits, from the basic minor to the basic major diameter. */
  private void limits(int side) {
    double[][] corners = new double[4][];
    int i = 0;
    for (double radius : new double[] {spec.basicMinor() / 2, spec.nominal() / 2}) {
      for (double pitch : new double[] {thread.limits().pitchMin(), thread.limits().pitchMax()}) {
        corners[i++] = new double[] {along.at(side * halfWidth(radius, pitch)), out.within(radius)};
      }
    }
    // A parallelogram with level edges: each edge runs between its two corners.
    double[] x = {corners[0][0], corners[1][0], corners[2][0], corners[3][0]};
    Arrays.sort(x);
    double[] upper = new double[4];
    double[] lower = new double[4];
    for (int k = 0; k < 4; k++) {
      double a = onFlank(corners[0], corners[2], x[k]);
      double b = onFlank(corners[1], corners[3], x[k]);
      upper[k] = Math.min(a, b);
      lower[k] = Math.max(a, b);
    }
    if (x[0] >= LEFT && x[3] <= right) {
      diagram.fill(x, upper, lower, diagram.palette().absolute(), 2 * GaugeMarks.BAND);
    }
  }

  /** The row at which a flank stands over a column, kept between its ends. */
  private static double onFlank(double[] one, double[] other, double x) {
    double share = (x - one[0]) / (other[0] - one[0]);
    return one[1] + Math.max(0, Math.min(1, share)) * (other[1] - one[1]);
  }

  /** The metal; its edge is drawn later, above what else is shaded. */
  private double[] metal() {
    Theme.Palette palette = diagram.palette();
    double[] x = new double[COLUMNS + 1];
    double[] wall = new double[COLUMNS + 1];
    double[] edge = new double[COLUMNS + 1];
    double[] line = new double[2 * (COLUMNS + 1)];
    double solid = surface.groove().isInternal() ? top : bottom;
    for (int i = 0; i <= COLUMNS; i++) {
      x[i] = LEFT + (right - LEFT) * i / COLUMNS;
      wall[i] = out.within(surface.surface(along.length(x[i])));
      edge[i] = solid;
      line[2 * i] = x[i];
      line[2 * i + 1] = wall[i];
    }
    diagram.fill(x, edge, wall, palette.stock(), 0.55);
    return line;
  }

  /** The basic profile, its corners at the basic diameters. */
  private void basic() {
    double quarter = spec.pitch() / 4;
    double toMajor = (spec.nominal() - spec.basicPitch()) / 2 * Math.tan(spec.halfAngle());
    double toMinor = (spec.basicPitch() - spec.basicMinor()) / 2 * Math.tan(spec.halfAngle());
    boolean inside = spec.internal();
    double deepHalf = quarter - (inside ? toMajor : toMinor);
    double shallowHalf = quarter + (inside ? toMinor : toMajor);
    double deep = (inside ? spec.nominal() : spec.basicMinor()) / 2;
    double shallow = (inside ? spec.basicMinor() : spec.nominal()) / 2;
    profile(deepHalf, shallowHalf, deep, shallow, 0, 1.1, 0, diagram.palette().absolute());
  }

  /** The GO gauge, central in the groove. */
  private void gauge() {
    if (thread.go().isEmpty() || thread.finished().isEmpty()) {
      return;
    }
    double pitch = thread.go().get().pitch();
    double quarter = spec.pitch() / 4;
    double crest = crestOfGauge();
    double root = (spec.internal() ? spec.basicMinor() : spec.nominal()) / 2;
    double slope = Math.tan(spec.halfAngle());
    double sign = spec.internal() ? 1 : -1;
    double deepHalf = Math.max(0, quarter - sign * (crest - pitch / 2) * slope);
    double shallowHalf = quarter + sign * (pitch / 2 - root) * slope;
    profile(deepHalf, shallowHalf, crest, root, 0, 1.6, 6, diagram.palette().incrementalText());
  }

  private double crestOfGauge() {
    if (!spec.internal()) {
      return spec.basicMinor() / 2;
    }
    return spec.gauges()
            .map(g -> g.goMajorMin())
            .orElse(spec.limits().majorMin().orElse(spec.nominal()))
        / 2;
  }

  private void profile(
      double deepHalf,
      double shallowHalf,
      double deep,
      double shallow,
      double shift,
      double thick,
      double dash,
      int colour) {
    List<Double> points = new ArrayList<>();
    for (int k = -2; k <= 2; k++) {
      double middle = k * spec.pitch() + shift;
      add(points, middle - shallowHalf, shallow);
      add(points, middle - deepHalf, deep);
      add(points, middle + deepHalf, deep);
      add(points, middle + shallowHalf, shallow);
    }
    double[] clipped = clipped(points);
    if (clipped.length >= 4) {
      diagram.stroke(clipped, thick, dash, colour);
    }
  }

  private void add(List<Double> points, double z, double radius) {
    points.add(along.at(z));
    points.add(out.within(radius));
  }

  /** The part of a line, by rising columns, within the section's frame. */
  private double[] clipped(List<Double> points) {
    List<Double> kept = new ArrayList<>();
    for (int i = 0; i + 3 < points.size(); i += 2) {
      double x0 = points.get(i);
      double x1 = points.get(i + 2);
      if (x1 < LEFT || x0 > right) {
        continue;
      }
      double from = Math.max(0, (LEFT - x0) / Math.max(1e-9, x1 - x0));
      double to = Math.min(1, (right - x0) / Math.max(1e-9, x1 - x0));
      piece(points, i, from, kept);
      piece(points, i, to, kept);
    }
    return kept.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static void piece(List<Double> points, int i, double share, List<Double> kept) {
    kept.add(points.get(i) + share * (points.get(i + 2) - points.get(i)));
    kept.add(points.get(i + 1) + share * (points.get(i + 3) - points.get(i + 1)));
  }
}
