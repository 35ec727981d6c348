package flankfit.picture;

import flankfit.gauge.RegisterSweep;
import flankfit.gauge.RegisterSweep.Step;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Verdict;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Pitch diameters and verdicts of one thread against the wear entry of a register. */
public final class SweepPicture {
  private static final double LEFT = 84;
  private static final double BELOW = 108;
  private static final double AIR = 0.12;

  /** Runs of good entries that the headline tells. */
  private static final int MOST_RUNS = 3;

  private final RegisterSweep sweep;
  private final ThreadAnswer thread;
  private final LengthUnit unit;
  private final Diagram diagram;
  private final List<Step> steps;
  private final DiagramRule across;
  private final DiagramRule up;
  private final String register;
  private final double top;
  private final double bottom;
  private final double right;

  private SweepPicture(
      RegisterSweep sweep,
      ThreadAnswer thread,
      LengthUnit unit,
      int width,
      int height,
      Theme theme) {
    this.sweep = sweep;
    this.thread = thread;
    this.unit = unit;
    steps = sweep.steps();
    register = "D" + sweep.register();
    String words = window();
    diagram =
        new Diagram(
            width,
            height,
            theme,
            register + " wear against pitch diameter of " + thread.designation(),
            thread.designation() + " in " + thread.hole() + ": " + words);
    PictureFrame frame =
        new PictureFrame(
            diagram,
            "Wear sweep: pitch diameter and verdict for each entry of " + register,
            steps.stream().anyMatch(this::isGood),
            thread.designation() + " in " + thread.hole() + ": " + words,
            "the entry now, "
                + Figures.lengthWithUnit(sweep.now(), unit)
                + ", gives: "
                + thread.verdict().words(),
            "full marks: simple pitch diameter · hollow marks: functional diameter, what the GO"
                + " gauge feels · band: limits of the pitch diameter");
    right = width - GaugeMarks.room(width);
    top = frame.top() + 24;
    bottom = frame.foot() - BELOW;
    double first = steps.get(0).wear();
    double last = steps.get(steps.size() - 1).wear();
    double half = first == last ? 0.001 : 0.03 * (last - first);
    across = new DiagramRule(first - half, last + half, LEFT, right);
    up = upRule();
  }

  /**
   * The chart of a sweep.
   *
   * @param sweep at least one step
   * @param thread the thread as the sheet's entry gives it
   * @param unit unit of the figures
   * @param width width (px), 600 to 8192
   * @param height height (px), 400 to 8192
   */
  public static Diagram of(
      RegisterSweep sweep,
      ThreadAnswer thread,
      LengthUnit unit,
      int width,
      int height,
      Theme theme) {
    SweepPicture picture = new SweepPicture(sweep, thread, unit, width, height, theme);
    picture.draw();
    return picture.diagram;
  }

  private DiagramRule upRule() {
    double[] range = GaugeMarks.range(thread);
    for (Step step : steps) {
      Optional<ThreadAnswer> here = step.thread(thread.hole());
      for (OptionalDouble value :
          List.of(value(here, SweepPicture::simple), value(here, SweepPicture::functional))) {
        if (value.isPresent()) {
          range[0] = Math.min(range[0], value.getAsDouble());
          range[1] = Math.max(range[1], value.getAsDouble());
        }
      }
    }
    double air = AIR * (range[1] - range[0]);
    return new DiagramRule(range[0] - air, range[1] + air, bottom, top);
  }

  private static double simple(ThreadAnswer answer) {
    return answer.finished().map(m -> m.pitchSimple()).orElse(Double.NaN);
  }

  private static double functional(ThreadAnswer answer) {
    return answer.finished().map(m -> m.functional()).orElse(Double.NaN);
  }

  private static OptionalDouble value(
      Optional<ThreadAnswer> answer, ToDoubleFunction<ThreadAnswer> what) {
    double value = answer.map(what::applyAsDouble).orElse(Double.NaN);
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  private void draw() {
    Theme.Palette palette = diagram.palette();
    GaugeMarks marks = new GaugeMarks(diagram, thread, unit);
    marks.draw(up, LEFT, right, top, bottom);
    up.upright(diagram, LEFT, unit);
    across.level(diagram, bottom, unit);
    String suffix = PictureFrame.unit(unit);
    diagram.text(
        Face.SMALL,
        PictureFrame.MARGIN,
        top - 12,
        "pitch diameter" + suffix,
        Align.LEFT,
        palette.softInk());
    diagram.text(
        Face.SMALL,
        right,
        bottom + 36,
        register + " wear entry" + suffix,
        Align.RIGHT,
        palette.softInk());
    curve(SweepPicture::functional, 1.6, 0, palette.softInk(), marks, false);
    curve(SweepPicture::simple, 2.6, 0, palette.ink(), marks, true);
    now();
    verdicts();
    name(SweepPicture::simple, "simple pitch diameter", -1);
    name(SweepPicture::functional, "functional diameter", 1);
  }

  /** A curve's name near it, above or below, wherever it covers no other. */
  private void name(ToDoubleFunction<ThreadAnswer> what, String name, int side) {
    for (double share : new double[] {0.75, 0.6, 0.45, 0.3, 0.9}) {
      Step step = steps.get((int) Math.round(share * (steps.size() - 1)));
      OptionalDouble value = value(step.thread(thread.hole()), what);
      if (value.isEmpty()) {
        continue;
      }
      double x = across.at(step.wear());
      double y = up.at(value.getAsDouble());
      // Above what falls stands the space at the right, below it that at the left.
      Align align = side < 0 == isFalling() ? Align.LEFT : Align.RIGHT;
      double aside = align == Align.LEFT ? 6 : -6;
      double wide = diagram.width(Face.SMALL, name) * (align == Align.LEFT ? 1 : -1);
      boolean inside = x + aside + wide < right && x + aside + wide > LEFT;
      double row = y + (side < 0 ? -14 : 26);
      if (inside
          && row > top + 12
          && row < bottom - 6
          && diagram.plate(Face.SMALL, x + aside, row, name, align, diagram.palette().ink())) {
        return;
      }
    }
  }

  private boolean isFalling() {
    OptionalDouble first = value(steps.get(0).thread(thread.hole()), SweepPicture::simple);
    OptionalDouble last =
        value(steps.get(steps.size() - 1).thread(thread.hole()), SweepPicture::simple);
    return first.isEmpty() || last.isEmpty() || first.getAsDouble() >= last.getAsDouble();
  }

  /** Which entries of the sweep are good, in words: a run of them for each "from … to". */
  private String window() {
    List<String> runs = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      if (!isGood(steps.get(i))) {
        continue;
      }
      int end = i;
      while (end + 1 < steps.size() && isGood(steps.get(end + 1))) {
        end++;
      }
      String first = Figures.length(steps.get(i).wear(), unit);
      runs.add(
          end == i
              ? "at " + first
              : "from " + first + " to " + Figures.length(steps.get(end).wear(), unit));
      i = end;
    }
    if (runs.size() > MOST_RUNS) {
      int more = runs.size() - MOST_RUNS;
      runs.subList(MOST_RUNS, runs.size()).clear();
      runs.add(more + " times more");
    }
    return runs.isEmpty()
        ? "none of the entries tried makes all gauges good"
        : "gauges good "
            + String.join(" and ", runs)
            + " "
            + unit.symbol()
            + " of "
            + register
            + " wear";
  }

  private boolean isGood(Step step) {
    return step.thread(thread.hole()).map(t -> t.verdict() == Verdict.GAUGES_GOOD).orElse(false);
  }

  private void curve(
      ToDoubleFunction<ThreadAnswer> what,
      double thick,
      double dash,
      int colour,
      GaugeMarks marks,
      boolean full) {
    List<Double> points = new ArrayList<>();
    double apart = steps.size() > 1 ? (right - LEFT) / steps.size() : right - LEFT;
    for (Step step : steps) {
      OptionalDouble value = value(step.thread(thread.hole()), what);
      if (value.isEmpty()) {
        stroke(points, thick, dash, colour);
        points.clear();
        continue;
      }
      double x = across.at(step.wear());
      double y = up.at(value.getAsDouble());
      points.add(x);
      points.add(y);
      if (apart >= 22) {
        if (full) {
          marks.full(x, y, colour);
        } else {
          marks.hollow(x, y, colour);
        }
      }
    }
    stroke(points, thick, dash, colour);
  }

  private void stroke(List<Double> points, double thick, double dash, int colour) {
    if (points.size() >= 4) {
      diagram.stroke(
          points.stream().mapToDouble(Double::doubleValue).toArray(), thick, dash, colour);
    }
  }

  private void now() {
    if (!across.holds(sweep.now())) {
      return;
    }
    Theme.Palette palette = diagram.palette();
    double x = across.at(sweep.now());
    diagram.dashed(x, top, x, bottom, 1, 3, palette.ink());
    diagram.plate(Face.SMALL, x + 6, top + 14, "now", Align.LEFT, palette.ink());
  }

  /** A strip of verdicts below the scale: a shape and a word for each run of like ones. */
  private void verdicts() {
    double row = bottom + 50;
    List<Tag> narrow = new ArrayList<>();
    for (int i = 0; i < steps.size(); ) {
      String words = words(steps.get(i));
      int end = i;
      while (end + 1 < steps.size() && words(steps.get(end + 1)).equals(words)) {
        end++;
      }
      if (!run(i, end, words, row)) {
        narrow.add(new Tag((edge(i - 1, i) + edge(end, end + 1)) / 2, words));
      }
      i = end + 1;
    }
    // From the right, so that the line to a lower word passes left of those above it.
    for (int i = narrow.size() - 1; i >= 0; i--) {
      tag(narrow.get(i), row + 26);
    }
  }

  /** Words of a run too narrow for them, and its middle (px). */
  private record Tag(double x, String words) {}

  /** Words below the strip with a line to their run, if those of its neighbours leave room. */
  private void tag(Tag tag, double under) {
    int ink = diagram.palette().ink();
    boolean fits = tag.x() - 4 + diagram.width(Face.SMALL, tag.words()) < right;
    double x = fits ? tag.x() - 4 : tag.x() + 4;
    for (double row : new double[] {under + 17, under + 32}) {
      if (diagram.label(Face.SMALL, x, row, tag.words(), fits ? Align.LEFT : Align.RIGHT, ink)) {
        diagram.line(tag.x(), under, tag.x(), row - 11, 1, diagram.palette().softInk());
        return;
      }
    }
  }

  /** Draws one run of like verdicts; tells whether its words fit in. */
  private boolean run(int first, int last, String words, double row) {
    Theme.Palette palette = diagram.palette();
    double left = edge(first - 1, first);
    double end = edge(last, last + 1);
    boolean good = isGood(steps.get(first));
    diagram.bar(
        left + 1,
        row,
        Math.max(0.5, end - left - 2),
        26,
        good ? palette.absolute() : palette.alarm(),
        good ? 0.30 : 0.16);
    String shape = good ? "■ " : "▲ ";
    double middle = (left + end) / 2;
    boolean fits = diagram.width(Face.SMALL, shape + words) < end - left - 6;
    if (fits) {
      diagram.text(Face.SMALL, middle, row + 17, shape + words, Align.MIDDLE, palette.ink());
    } else if (end - left > 14) {
      diagram.label(Face.SMALL, middle, row + 17, shape.strip(), Align.MIDDLE, palette.ink());
    }
    return fits;
  }

  /** The column between two steps; the end of the scale beyond the first or last. */
  private double edge(int before, int after) {
    if (before < 0) {
      return LEFT;
    }
    if (after >= steps.size()) {
      return right;
    }
    return across.at((steps.get(before).wear() + steps.get(after).wear()) / 2);
  }

  private String words(Step step) {
    return step.thread(thread.hole()).map(t -> t.verdict().words()).orElse("the program stops");
  }
}
