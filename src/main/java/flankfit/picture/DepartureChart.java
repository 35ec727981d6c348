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
 * How far the flanks of a thread stand into the metal from the basic ones, over the radius: beside
 * a section, at the same heights, but magnified across, with limits and gauges.
 */
final class DepartureChart {
  private static final int ROWS = 160;

  /** Least departure that the scale reaches to, either way (mm). */
  private static final double LEAST = 0.005;

  private static final double MICROMETRES = 1000;

  private final Diagram diagram;
  private final ThreadAnswer thread;
  private final ThreadSpec spec;
  private final RegularThread surface;
  private final DiagramRule out;
  private final double left;
  private final double end;
  private double top;
  private double bottom;

  /**
   * A chart to draw.
   *
   * @param out the section's scale of radii
   * @param left first column (px)
   * @param end last column (px)
   */
  DepartureChart(
      Diagram diagram,
      ThreadAnswer thread,
      RegularThread surface,
      DiagramRule out,
      double left,
      double end) {
    this.diagram = diagram;
    this.thread = thread;
    this.spec = thread.spec();
    this.surface = surface;
    this.out = out;
    this.left = left;
    this.end = end;
  }

  /**
   * Draws it.
   *
   * @param firstRow upper edge (px)
   * @param lastRow lower edge (px)
   * @param perMicrometre scale of the section (px)
   */
  void draw(double firstRow, double lastRow, double perMicrometre) {
    top = firstRow;
    bottom = lastRow;
    Theme.Palette palette = diagram.palette();
    double[] up = departures(Flank.UP);
    double[] down = departures(Flank.DOWN);
    DiagramRule scale = scale(up, down);
    limits(scale);
    double zero = scale.at(0);
    diagram.line(zero, top, zero, bottom, 1.2, palette.absolute());
    mark(spec.basicPitch() / 2, "basic pitch line");
    mark(spec.nominal() / 2, "basic major");
    mark(spec.basicMinor() / 2, "basic minor");
    boolean alike = surface.groove().isSymmetric();
    if (!alike) {
      curve(down, scale, 7, palette.ink());
      name(down, scale, "lower flank", 0.3);
    }
    curve(up, scale, 0, palette.ink());
    name(up, scale, alike ? "both flanks" : "upper flank", 0.7);
    gaugeNames(scale);
    // Its figures are micrometres, whatever the unit of the section.
    scale.level(diagram, bottom, LengthUnit.MILLIMETRE);
    caption(Math.abs(scale.at(1) - zero) / perMicrometre);
  }

  private void caption(double times) {
    String words =
        "flank into the metal from the basic one, µm on the radius; magnified "
            + Figures.plain(times, times < 3 ? 1 : 0)
            + " times";
    double row = bottom + 36;
    for (String line : Paragraph.wrap(diagram, Face.SMALL, words, end - left + 90)) {
      diagram.label(Face.SMALL, end, row, line, Align.RIGHT, diagram.palette().softInk());
      row += 15;
    }
  }

  private DiagramRule scale(double[] up, double[] down) {
    double[] range = GaugeMarks.range(thread);
    double low = Math.min(-LEAST, Math.min(into(range[0]), into(range[1])));
    double high = Math.max(LEAST, Math.max(into(range[0]), into(range[1])));
    for (double[] side : new double[][] {up, down}) {
      for (double value : side) {
        low = Double.isNaN(value) ? low : Math.min(low, value);
        high = Double.isNaN(value) ? high : Math.max(high, value);
      }
    }
    double air = 0.06 * (high - low);
    return new DiagramRule((low - air) * MICROMETRES, (high + air) * MICROMETRES, left, end);
  }

  /** How far a pitch diameter (mm) stands into the metal from the basic one, on the radius. */
  private double into(double pitchDiameter) {
    return (spec.internal() ? 1 : -1) * (pitchDiameter - spec.basicPitch()) / 2;
  }

  /** The limits of the pitch diameter as a band and the gauges as lines. */
  private void limits(DiagramRule scale) {
    Theme.Palette palette = diagram.palette();
    double a = scale.at(MICROMETRES * into(thread.limits().pitchMin()));
    double b = scale.at(MICROMETRES * into(thread.limits().pitchMax()));
    double x = Math.min(a, b);
    diagram.bar(x, top, Math.abs(b - a), bottom - top, palette.absolute(), GaugeMarks.BAND);
    thread.go().ifPresent(go -> gaugeLine(scale, go.pitch()));
    thread.noGo().ifPresent(noGo -> gaugeLine(scale, noGo.pitch()));
  }

  private void gaugeLine(DiagramRule scale, double pitch) {
    double x = scale.at(MICROMETRES * into(pitch));
    diagram.dashed(x, top, x, bottom, 1.6, 6, diagram.palette().incrementalText());
  }

  private void gaugeNames(DiagramRule scale) {
    Theme.Palette palette = diagram.palette();
    thread.go().ifPresent(go -> gaugeName(scale, go.pitch(), "GO"));
    thread.noGo().ifPresent(noGo -> gaugeName(scale, noGo.pitch(), "NO-GO"));
    double a = scale.at(MICROMETRES * into(thread.limits().pitchMin()));
    double b = scale.at(MICROMETRES * into(thread.limits().pitchMax()));
    if (Math.abs(b - a) > diagram.width(Face.SMALL, "limits") + 24) {
      diagram.label(Face.SMALL, (a + b) / 2, bottom - 9, "limits", Align.MIDDLE, palette.ink());
    }
  }

  private void gaugeName(DiagramRule scale, double pitch, String name) {
    double x = scale.at(MICROMETRES * into(pitch));
    int ink = diagram.palette().ink();
    double half = diagram.width(Face.SMALL, name) / 2;
    double kept = Math.min(x, diagram.width() - 4 - half);
    if (!diagram.label(Face.SMALL, kept, top - 6, name, Align.MIDDLE, ink)) {
      diagram.label(Face.SMALL, kept, top - 21, name, Align.MIDDLE, ink);
    }
  }

  private void mark(double radius, String name) {
    if (out.holds(radius)) {
      Theme.Palette palette = diagram.palette();
      double y = out.at(radius);
      diagram.dashed(left, y, end, y, 1, 2, palette.softInk());
      diagram.label(Face.SMALL, left - 6, y + 4, name, Align.RIGHT, palette.softInk());
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
    return out.length(bottom + (top - bottom) * i / ROWS);
  }

  private void curve(double[] values, DiagramRule scale, double dash, int colour) {
    List<Double> points = new ArrayList<>();
    for (int i = 0; i <= ROWS; i++) {
      if (!Double.isNaN(values[i])) {
        points.add(scale.at(values[i] * MICROMETRES));
        points.add(out.at(radius(i)));
      }
    }
    if (points.size() >= 4) {
      double[] flat = points.stream().mapToDouble(Double::doubleValue).toArray();
      diagram.stroke(flat, 2.4, dash, colour);
    }
  }

  /** A curve's name beside it, on the side where there is room. */
  private void name(double[] values, DiagramRule scale, String name, double share) {
    List<Integer> there = new ArrayList<>();
    for (int i = 0; i <= ROWS; i++) {
      if (!Double.isNaN(values[i])) {
        there.add(i);
      }
    }
    if (there.isEmpty()) {
      return;
    }
    int i = there.get((int) (share * (there.size() - 1)));
    double x = scale.at(values[i] * MICROMETRES);
    double y = out.at(radius(i)) + 4;
    boolean wide = x + 14 + diagram.width(Face.STRONG, name) < end;
    Face face = wide ? Face.STRONG : Face.SMALL;
    boolean atRight = x + 14 + diagram.width(face, name) < end;
    diagram.plate(
        face,
        atRight ? x + 10 : x - 10,
        y,
        name,
        atRight ? Align.LEFT : Align.RIGHT,
        diagram.palette().ink());
  }
}
