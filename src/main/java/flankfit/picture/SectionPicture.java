package flankfit.picture;

import flankfit.gauge.ThreadAnswer;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.Flank;
import flankfit.sweep.Groove;
import flankfit.sweep.RegularThread;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * A section through the thread's axis: the metal, the basic profile, the GO gauge where it rests,
 * and beside it, at the same heights of radius, how far each flank departs from the basic one.
 */
public final class SectionPicture {
  private static final double LEFT = 96;
  private static final double TOP = 112;
  private static final double BOTTOM = 74;
  private static final double GAP = 110;

  /** Radial height of the frame in heights of the sharp V. */
  private static final double SHARPS = 1.15;

  private static final int COLUMNS = 720;
  private static final int ROWS = 160;

  private final ThreadAnswer thread;
  private final ThreadSpec spec;
  private final RegularThread surface;
  private final LengthUnit unit;
  private final Diagram diagram;
  private final DiagramRule along;
  private final DiagramRule out;
  private final double right;
  private final double bottom;

  private SectionPicture(
      ThreadAnswer thread,
      RegularThread surface,
      LengthUnit unit,
      int width,
      int height,
      Theme theme) {
    this.thread = thread;
    this.spec = thread.spec();
    this.surface = surface;
    this.unit = unit;
    diagram = new Diagram(width, height, theme, "Section of " + LadderPicture.headline(thread));
    bottom = height - BOTTOM;
    right = LEFT + (width - LEFT - GAP - 40) * 0.62;
    double sharp = spec.pitch() / 2 / Math.tan(spec.halfAngle());
    double middle = (spec.nominal() + spec.basicMinor()) / 4;
    // Depth and length share one scale, so that angles are true.
    double perPixel = SHARPS * sharp / (bottom - TOP);
    double reach = perPixel * (bottom - TOP) / 2;
    double half = perPixel * (right - LEFT) / 2;
    along = new DiagramRule(-half, half, LEFT, right);
    out = new DiagramRule(middle - reach, middle + reach, bottom, TOP);
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
    SectionPicture picture = new SectionPicture(thread, surface, unit, width, height, theme);
    picture.draw();
    return picture.diagram;
  }

  private void draw() {
    Theme.Palette palette = diagram.palette();
    LadderPicture.title(
        diagram,
        thread,
        "shaded: metal · thin line: basic profile · dashed: GO gauge, held central · lengths in "
            + LadderPicture.named(unit)
            + ", departures in µm");
    metal();
    basic();
    gauge();
    out.upright(diagram, LEFT, unit);
    along.level(diagram, bottom, unit);
    diagram.text(Face.SMALL, 28, TOP - 12, "radius", Align.LEFT, palette.softInk());
    diagram.text(
        Face.SMALL,
        right,
        bottom + 36,
        "along the axis, from the middle of a groove",
        Align.RIGHT,
        palette.softInk());
    departures();
  }

  private void metal() {
    Theme.Palette palette = diagram.palette();
    double[] x = new double[COLUMNS + 1];
    double[] wall = new double[COLUMNS + 1];
    double[] edge = new double[COLUMNS + 1];
    double[] line = new double[2 * (COLUMNS + 1)];
    double solid = surface.groove().isInternal() ? TOP : bottom;
    for (int i = 0; i <= COLUMNS; i++) {
      x[i] = LEFT + (right - LEFT) * i / COLUMNS;
      wall[i] = out.within(surface.surface(along.length(x[i])));
      edge[i] = solid;
      line[2 * i] = x[i];
      line[2 * i + 1] = wall[i];
    }
    diagram.fill(x, edge, wall, palette.stock(), 0.55);
    diagram.stroke(line, 2.2, 0, palette.ink());
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

  /** How far the wall stands out beyond the basic flank, over the radius. */
  private void departures() {
    Theme.Palette palette = diagram.palette();
    double left = right + GAP;
    double end = diagram.width() - 40;
    double[] up = departures(Flank.UP);
    double[] down = departures(Flank.DOWN);
    double[] range = GaugeMarks.range(thread);
    double low = Math.min(-0.005, into(range[0]));
    double high = Math.max(0.005, into(range[1]));
    if (!spec.internal()) {
      low = Math.min(-0.005, into(range[1]));
      high = Math.max(0.005, into(range[0]));
    }
    for (double[] side : new double[][] {up, down}) {
      for (double value : side) {
        low = Double.isNaN(value) ? low : Math.min(low, value);
        high = Double.isNaN(value) ? high : Math.max(high, value);
      }
    }
    double air = 0.06 * (high - low);
    // Micrometres on a scale of their own: its figures are thousandths of a millimetre.
    DiagramRule scale = new DiagramRule((low - air) * 1000, (high + air) * 1000, left, end);
    limits(scale);
    scale.level(diagram, bottom, LengthUnit.MILLIMETRE);
    double zero = scale.at(0);
    diagram.line(zero, TOP, zero, bottom, 1, palette.absolute());
    curve(up, scale, 2.4, 0, palette.ink());
    if (!surface.groove().isSymmetric()) {
      curve(down, scale, 2.4, 7, palette.softInk());
    }
    mark(spec.basicPitch() / 2, "basic pitch line", left, end);
    mark(spec.nominal() / 2, "basic major", left, end);
    mark(spec.basicMinor() / 2, "basic minor", left, end);
    diagram.text(
        Face.SMALL,
        end,
        bottom + 36,
        "flank, µm into the metal from the basic one, on the radius",
        Align.RIGHT,
        palette.softInk());
  }

  /** How far a pitch diameter (mm) stands into the metal from the basic one, on the radius. */
  private double into(double pitchDiameter) {
    return (spec.internal() ? 1 : -1) * (pitchDiameter - spec.basicPitch()) / 2;
  }

  /** The limits of the pitch diameter as a band and the gauges as lines, on the radius. */
  private void limits(DiagramRule scale) {
    Theme.Palette palette = diagram.palette();
    double a = scale.at(1000 * into(thread.limits().pitchMin()));
    double b = scale.at(1000 * into(thread.limits().pitchMax()));
    diagram.bar(
        Math.min(a, b), TOP, Math.abs(b - a), bottom - TOP, palette.absolute(), GaugeMarks.BAND);
    thread.go().ifPresent(go -> gaugeLine(scale, go.pitch(), "GO"));
    thread.noGo().ifPresent(noGo -> gaugeLine(scale, noGo.pitch(), "NO-GO"));
  }

  private void gaugeLine(DiagramRule scale, double pitch, String name) {
    Theme.Palette palette = diagram.palette();
    double x = scale.at(1000 * into(pitch));
    diagram.dashed(x, TOP, x, bottom, 1.4, 6, palette.incrementalText());
    diagram.text(Face.SMALL, x, TOP - 6, name, Align.MIDDLE, palette.ink());
  }

  private void mark(double radius, String name, double left, double end) {
    if (out.holds(radius)) {
      Theme.Palette palette = diagram.palette();
      double y = out.at(radius);
      diagram.line(left, y, end, y, 1, palette.rule());
      diagram.text(Face.SMALL, left - 8, y + 4, name, Align.RIGHT, palette.softInk());
    }
  }

  /** Departure square to the axis (mm), positive into the metal; NaN where there is no flank. */
  private double[] departures(Flank flank) {
    Groove groove = surface.groove();
    double slope = Math.tan(spec.halfAngle());
    double sign = spec.internal() ? 1 : -1;
    double[] values = new double[ROWS + 1];
    for (int i = 0; i <= ROWS; i++) {
      double radius = radius(i);
      double width = groove.halfWidth(radius, flank);
      double basic = spec.pitch() / 4 - sign * (radius - spec.basicPitch() / 2) * slope;
      boolean metal = sign * (radius - surface.crest()) >= 0;
      values[i] = metal && !Double.isNaN(width) ? (width - basic) / slope : Double.NaN;
    }
    return values;
  }

  private double radius(int i) {
    return out.length(bottom + (TOP - bottom) * i / ROWS);
  }

  private void curve(double[] values, DiagramRule scale, double thick, double dash, int colour) {
    List<Double> points = new ArrayList<>();
    for (int i = 0; i <= ROWS; i++) {
      if (!Double.isNaN(values[i])) {
        points.add(scale.at(values[i] * 1000));
        points.add(out.at(radius(i)));
      }
    }
    if (points.size() >= 4) {
      diagram.stroke(
          points.stream().mapToDouble(Double::doubleValue).toArray(), thick, dash, colour);
    }
  }
}
