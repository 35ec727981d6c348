package flankfit.picture;

import flankfit.gauge.ThreadAnswer;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What every picture of pitch diameters shows the same way: the limits as a band, the gauges as
 * lines that a diameter must lie above or below.
 */
final class GaugeMarks {
  /** How strongly the band of the limits covers the paper. */
  static final double BAND = 0.16;

  private final ThreadAnswer thread;
  private final LengthUnit unit;
  private final Diagram diagram;

  GaugeMarks(Diagram diagram, ThreadAnswer thread, LengthUnit unit) {
    this.diagram = diagram;
    this.thread = thread;
    this.unit = unit;
  }

  /** Diameters (mm) that a scale should hold: limits and gauges. */
  static double[] range(ThreadAnswer thread) {
    double low = thread.limits().pitchMin();
    double high = thread.limits().pitchMax();
    double go = thread.go().map(ThreadAnswer.Go::pitch).orElse(low);
    double noGo = thread.noGo().map(ThreadAnswer.NoGo::pitch).orElse(high);
    return new double[] {
      Math.min(Math.min(low, high), Math.min(go, noGo)),
      Math.max(Math.max(low, high), Math.max(go, noGo))
    };
  }

  /** The band of the limits and the lines of the gauges over some columns, named at the right. */
  void draw(DiagramRule rule, double left, double right) {
    Theme.Palette palette = diagram.palette();
    double top = rule.within(thread.limits().pitchMax());
    double bottom = rule.within(thread.limits().pitchMin());
    diagram.bar(left, top, right - left, bottom - top, palette.absolute(), BAND);
    boolean inside = thread.internal();
    String kind = inside ? "plug" : "ring";
    Side side = new Side(right + 12);
    side.add(rule.at(thread.limits().pitchMax()), "greatest pitch diameter", limit(true), "");
    side.add(rule.at(thread.limits().pitchMin()), "least pitch diameter", limit(false), "");
    thread
        .go()
        .ifPresent(
            go -> {
              gaugeLine(rule, go.pitch(), left, right);
              side.add(
                  rule.at(go.pitch()),
                  "GO " + kind,
                  Figures.lengthWithUnit(go.pitch(), unit),
                  "enters when the hollow mark lies " + (inside ? "above" : "below"));
            });
    thread
        .noGo()
        .ifPresent(
            noGo -> {
              gaugeLine(rule, noGo.pitch(), left, right);
              side.add(
                  rule.at(noGo.pitch()),
                  "NO-GO " + kind,
                  Figures.lengthWithUnit(noGo.pitch(), unit),
                  "stops when the full mark lies " + (inside ? "below" : "above"));
            });
    side.draw();
  }

  private String limit(boolean greatest) {
    double value = greatest ? thread.limits().pitchMax() : thread.limits().pitchMin();
    return Figures.lengthWithUnit(value, unit);
  }

  private void gaugeLine(DiagramRule rule, double pitch, double left, double right) {
    if (rule.holds(pitch)) {
      double y = rule.at(pitch);
      diagram.dashed(left, y, right, y, 1.6, 7, diagram.palette().ink());
    }
  }

  /** Names beside the right end, pushed apart so that none covers another. */
  private final class Side {
    private static final double ROW = 36;

    private final double x;
    private final List<Label> labels = new ArrayList<>();

    Side(double x) {
      this.x = x;
    }

    private record Label(double y, String name, String value, String rule) {}

    void add(double y, String name, String value, String rule) {
      labels.add(new Label(y, name, value, rule));
    }

    void draw() {
      labels.sort(Comparator.comparingDouble(Label::y));
      double[] at = new double[labels.size()];
      for (int i = 0; i < at.length; i++) {
        at[i] = i == 0 ? labels.get(i).y() : Math.max(labels.get(i).y(), at[i - 1] + ROW);
      }
      // Share the push between both directions: labels stay near what they name.
      double over = 0;
      for (int i = 0; i < at.length; i++) {
        over = Math.max(over, at[i] - labels.get(i).y());
      }
      for (int i = 0; i < at.length; i++) {
        label(labels.get(i), at[i] - over / 2);
      }
    }

    private void label(Label label, double y) {
      Theme.Palette palette = diagram.palette();
      diagram.line(x - 10, label.y(), x + 8, y, 1, palette.softInk());
      diagram.text(
          Face.STRONG,
          x + 14,
          y + 1,
          label.name() + "  " + label.value(),
          Align.LEFT,
          palette.ink());
      diagram.text(Face.SMALL, x + 14, y + 16, label.rule(), Align.LEFT, palette.softInk());
    }
  }

  /** A full mark: what is measured as simple pitch diameter. */
  void full(double x, double y, int colour) {
    diagram.bar(x - 4.5, y - 4.5, 9, 9, colour, 1);
  }

  /** A hollow mark: the functional diameter. */
  void hollow(double x, double y, int colour) {
    diagram.stroke(
        new double[] {x, y - 11, x + 11, y, x, y + 11, x - 11, y, x, y - 11}, 2, 0, colour);
  }
}
