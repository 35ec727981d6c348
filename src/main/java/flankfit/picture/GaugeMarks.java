package flankfit.picture;

import flankfit.gauge.ThreadAnswer;
import flankfit.unit.LengthUnit;
import java.util.Arrays;

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
  private final boolean brief;

  GaugeMarks(Diagram diagram, ThreadAnswer thread, LengthUnit unit) {
    this(diagram, thread, unit, false);
  }

  /**
   * @param brief whether names are as short as they can be
   */
  GaugeMarks(Diagram diagram, ThreadAnswer thread, LengthUnit unit, boolean brief) {
    this.brief = brief;
    this.diagram = diagram;
    this.thread = thread;
    this.unit = unit;
  }

  /** Columns (px) that the names at the right take in a ladder that stands in a window. */
  static final double BARE_ROOM = 118;

  /** Columns (px) that the names at the right take. */
  static double room(int width) {
    return width < PictureFrame.NARROW ? 158 : 300;
  }

  /** Diameters (mm) at which lines are drawn: limits, and gauges where there are any. */
  static double[] lines(ThreadAnswer thread) {
    double low = thread.limits().pitchMin();
    double high = thread.limits().pitchMax();
    return new double[] {
      low,
      high,
      thread.go().map(ThreadAnswer.Go::pitch).orElse(low),
      thread.noGo().map(ThreadAnswer.NoGo::pitch).orElse(high)
    };
  }

  /** Diameters (mm) that a scale should hold: limits and gauges. */
  static double[] range(ThreadAnswer thread) {
    double[] lines = lines(thread);
    return new double[] {
      Arrays.stream(lines).min().orElseThrow(), Arrays.stream(lines).max().orElseThrow()
    };
  }

  /**
   * The band of the limits and the lines of the gauges over some columns, named at the right.
   *
   * @param top first row that names may take (px)
   * @param bottom last row (px)
   */
  void draw(DiagramRule rule, double left, double right, double top, double bottom) {
    Theme.Palette palette = diagram.palette();
    double high = rule.within(thread.limits().pitchMax());
    double low = rule.within(thread.limits().pitchMin());
    diagram.bar(left, high, right - left, low - high, palette.absolute(), BAND);
    diagram.line(left, high, right, high, 1, palette.absolute());
    diagram.line(left, low, right, low, 1, palette.absolute());
    boolean inside = thread.internal();
    String kind = brief ? "" : inside ? " plug" : " ring";
    boolean narrow = brief || diagram.width() < PictureFrame.NARROW;
    SideNames names = new SideNames(diagram, right, narrow);
    limit(names, high, brief ? "most" : "greatest", thread.limits().pitchMax());
    limit(names, low, "least", thread.limits().pitchMin());
    thread
        .go()
        .ifPresent(
            go ->
                gauge(
                    names,
                    rule,
                    new double[] {left, right},
                    "GO" + kind,
                    go.pitch(),
                    "enters when the hollow mark lies " + (inside ? "above" : "below")));
    thread
        .noGo()
        .ifPresent(
            noGo ->
                gauge(
                    names,
                    rule,
                    new double[] {left, right},
                    "NO-GO" + kind,
                    noGo.pitch(),
                    "stops when the full mark lies " + (inside ? "below" : "above")));
    names.draw(top, bottom);
  }

  private void limit(SideNames names, double y, String which, double value) {
    names.add(
        y,
        which + " pitch diameter  " + Figures.lengthWithUnit(value, unit),
        which + "  " + Figures.length(value, unit),
        "");
  }

  private void gauge(
      SideNames names,
      DiagramRule rule,
      double[] columns,
      String name,
      double pitch,
      String sentence) {
    double y = rule.within(pitch);
    diagram.dashed(columns[0], y, columns[1], y, 1.6, 7, diagram.palette().ink());
    names.add(
        y,
        name + "  " + Figures.lengthWithUnit(pitch, unit),
        name + "  " + Figures.length(pitch, unit),
        sentence);
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
