package flankfit.picture;

import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.OffsetAdvice.AsMoved;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadAnswer.PassAnswer;
import flankfit.gauge.ThreadAnswer.PassMeasures;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;

/**
 * The tolerance ladder: pitch diameter upwards, the limits as a band, the gauges as lines, each
 * pass as a rung in order of cutting, the D register as a second scale at the left.
 */
public final class LadderPicture {
  private static final double ABOVE = 24;
  private static final double BELOW = 52;

  /** Columns left of the scale in a ladder without a dial (px). */
  private static final double BARE_LEFT = 62;

  /** Share of the scale kept free above and below what it holds. */
  private static final double AIR = 0.16;

  /** How far the finished rung may stretch the scale, in heights of limits and gauges. */
  private static final double MOST_STRETCH = 2.5;

  private final ThreadAnswer thread;
  private final LengthUnit unit;
  private final Diagram diagram;
  private final boolean narrow;
  private final double left;
  private final double right;
  private final double top;
  private final double bottom;
  private final DiagramRule rule;
  private final GaugeMarks marks;
  private final Optional<Scatter> scatter;
  private final Optional<Range> bare;

  /**
   * Simple pitch diameters between which 95 of 100 threads of a batch lie.
   *
   * @param low one in forty lies below (mm)
   * @param high one in forty lies above (mm)
   */
  public record Scatter(double low, double high) {}

  /**
   * The pitch diameters that a bare ladder's scale runs between.
   *
   * @param low at its lower end (mm)
   * @param high at its upper end (mm)
   */
  public record Range(double low, double high) {
    /** What shows a thread with its limits and gauges. */
    public static Range of(ThreadAnswer thread) {
      double[] range = range(thread, Optional.empty());
      double air = AIR * (range[1] - range[0]);
      return new Range(range[0] - air, range[1] + air);
    }

    /** The row of a bare ladder of some height (px) at which a diameter (mm) stands. */
    public double rowOf(double diameter, double height) {
      return rule(height).at(diameter);
    }

    /** The diameter (mm) at a row of a bare ladder of some height (px). */
    public double diameterAt(double row, double height) {
      return rule(height).length(row);
    }

    private DiagramRule rule(double height) {
      return new DiagramRule(low, high, height - BELOW, ABOVE);
    }
  }

  private LadderPicture(
      ThreadAnswer thread,
      Optional<Scatter> scatter,
      LengthUnit unit,
      int width,
      int height,
      Theme theme,
      Optional<Range> bare) {
    this.bare = bare;
    this.thread = thread;
    this.scatter = scatter;
    this.unit = unit;
    diagram =
        new Diagram(
            width,
            height,
            theme,
            "Tolerance ladder of " + PictureFrame.headline(thread),
            thread.reason());
    narrow = width < PictureFrame.NARROW;
    PictureFrame frame = bare.isPresent() ? PictureFrame.bare(diagram) : frame(theme);
    double dial = narrow ? 68 : 74;
    double words = thread.offset().isEmpty() ? 84 : (narrow ? 84 : 134) + dial;
    left = bare.isPresent() ? BARE_LEFT : words;
    right = width - (bare.isPresent() ? GaugeMarks.BARE_ROOM : GaugeMarks.room(width));
    top = frame.top() + ABOVE;
    bottom = frame.foot() - BELOW;
    Range shown = bare.orElseGet(this::withAir);
    rule = new DiagramRule(shown.low(), shown.high(), bottom, top);
    marks = new GaugeMarks(diagram, thread, unit, bare.isPresent());
  }

  private Range withAir() {
    double[] range = range(thread, scatter);
    double air = AIR * (range[1] - range[0]);
    return new Range(range[0] - air, range[1] + air);
  }

  private PictureFrame frame(Theme theme) {
    String last = theme == Theme.DARK ? "brightest" : "darkest";
    return PictureFrame.of(
        diagram,
        thread,
        "Tolerance ladder: the pitch diameter after each pass, against limits and gauges",
        "full mark: simple pitch diameter · hollow mark: functional diameter, what the GO gauge"
            + " feels · band: limits of the pitch diameter · passes in order of cutting, the"
            + " last one "
            + last
            + thread
                .offset()
                .filter(OffsetAdvice::hasWindow)
                .map(offset -> " · key in: for the middle " + middle(offset))
                .orElse("")
            + (scatter.isPresent() ? " · upright bar: where 95 of 100 threads lie" : ""));
  }

  private static String middle(OffsetAdvice offset) {
    boolean between = offset.asMoved().map(AsMoved::middleBetweenGauges).orElse(false);
    return between ? "between the gauges" : "of the limits";
  }

  /**
   * The ladder of a thread.
   *
   * @param unit unit of the figures
   * @param width width (px), 600 to 8192
   * @param height height (px), 400 to 8192
   */
  public static Diagram of(
      ThreadAnswer thread, LengthUnit unit, int width, int height, Theme theme) {
    return of(thread, Optional.empty(), unit, width, height, theme);
  }

  /**
   * The ladder of a thread with what a batch of it scatters beside the last rung.
   *
   * @param scatter empty where odds are not known
   * @param unit unit of the figures
   * @param width width (px), 600 to 8192
   * @param height height (px), 400 to 8192
   */
  public static Diagram of(
      ThreadAnswer thread,
      Optional<Scatter> scatter,
      LengthUnit unit,
      int width,
      int height,
      Theme theme) {
    LadderPicture picture =
        new LadderPicture(thread, scatter, unit, width, height, theme, Optional.empty());
    picture.draw();
    return picture.diagram;
  }

  /**
   * The ladder alone, without words round it and without the register's scale, which stand beside
   * it in a window. Its scale is given, so that it stays while the thread changes.
   *
   * @param range the scale
   * @param unit unit of the figures
   * @param width width (px), 300 to 8192
   * @param height height (px), 200 to 8192
   */
  public static Diagram bare(
      ThreadAnswer thread,
      Optional<Scatter> scatter,
      Range range,
      LengthUnit unit,
      int width,
      int height,
      Theme theme) {
    LadderPicture picture =
        new LadderPicture(thread, scatter, unit, width, height, theme, Optional.of(range));
    picture.draw();
    return picture.diagram;
  }

  /** Limits and gauges, and what the last pass leaves if that is not too far away. */
  private static double[] range(ThreadAnswer thread, Optional<Scatter> scatter) {
    double[] range = GaugeMarks.range(thread);
    double low = range[0] - MOST_STRETCH * (range[1] - range[0]);
    double high = range[1] + MOST_STRETCH * (range[1] - range[0]);
    List<PassAnswer> passes = thread.passes();
    if (passes.isEmpty() || passes.get(passes.size() - 1).after().isEmpty()) {
      return range;
    }
    PassMeasures after = passes.get(passes.size() - 1).after().get();
    double[] ends = {
      after.pitch(),
      after.functional(),
      scatter.map(Scatter::low).orElse(after.pitch()),
      scatter.map(Scatter::high).orElse(after.pitch())
    };
    for (double value : ends) {
      if (value >= low && value <= high) {
        range[0] = Math.min(range[0], value);
        range[1] = Math.max(range[1], value);
      }
    }
    return range;
  }

  private void draw() {
    Theme.Palette palette = diagram.palette();
    marks.draw(rule, left, right, top, bottom);
    if (bare.isEmpty()) {
      thread.offset().ifPresent(this::dial);
    }
    rule.upright(diagram, left, unit);
    String heading = "pitch diameter" + PictureFrame.unit(unit);
    double at = thread.offset().isPresent() || bare.isPresent() ? left - 58 : PictureFrame.MARGIN;
    diagram.label(Face.SMALL, at, top - 12, heading, Align.LEFT, palette.softInk());
    new LadderRungs(
            diagram,
            thread,
            unit,
            rule,
            bare.isPresent(),
            new LadderRungs.Room(left, top, right, bottom))
        .draw(scatter);
  }

  /** The register as a scale: where the pitch diameter goes for each entry. */
  private void dial(OffsetAdvice offset) {
    Theme.Palette palette = diagram.palette();
    double x = narrow ? 84 : 134;
    double pitch = thread.finished().orElseThrow().pitchSimple();
    double slope = offset.sensitivity();
    double atBottom = offset.now() + (rule.length(bottom) - pitch) / slope;
    double atTop = offset.now() + (rule.length(top) - pitch) / slope;
    DiagramRule wear = new DiagramRule(atBottom, atTop, bottom, top);
    String register = offset.register() + " wear" + PictureFrame.unit(unit);
    diagram.label(Face.SMALL, x + 5, top - 12, register, Align.RIGHT, palette.softInk());
    double now = wear.at(offset.now());
    boolean seen = wear.holds(offset.now());
    if (seen) {
      pointer(x, now, "now ", offset.now(), 0);
    }
    boolean advised = offset.hasWindow() && offset.keyToMiddle() != offset.now();
    if (advised && wear.holds(offset.keyToMiddle())) {
      double key = wear.at(offset.keyToMiddle());
      double clear = narrow ? 15 : 18;
      double push = seen && Math.abs(key - now) < clear ? clear - Math.abs(key - now) : 0;
      pointer(x, key, "key in ", offset.keyToMiddle(), key < now ? -push : push);
    }
    wear.upright(diagram, x, unit);
  }

  /** A mark on the register's scale with its entry, pushed aside by some rows. */
  private void pointer(double x, double y, String word, double entry, double push) {
    Theme.Palette palette = diagram.palette();
    diagram.stroke(
        new double[] {x - 11, y - 5, x - 1, y, x - 11, y + 5, x - 11, y - 5},
        1.6,
        0,
        palette.ink());
    String figure = Figures.length(entry, unit);
    double row = y + push + 5;
    if (narrow
        || !diagram.label(Face.STRONG, x - 15, row, word + figure, Align.RIGHT, palette.ink())) {
      diagram.label(
          Face.SMALL,
          x - 15,
          row,
          word.strip().split(" ", 2)[0] + " " + figure,
          Align.RIGHT,
          palette.ink());
    }
  }
}
