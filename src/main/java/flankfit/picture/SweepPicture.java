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
  private static final double LEFT = 96;
  private static final double RIGHT = 318;
  private static final double TOP = 118;
  private static final double BOTTOM = 150;
  private static final double AIR = 0.12;

  private final RegisterSweep sweep;
  private final ThreadAnswer thread;
  private final LengthUnit unit;
  private final Diagram diagram;
  private final List<Step> steps;
  private final DiagramRule across;
  private final DiagramRule up;
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
    diagram =
        new Diagram(
            width,
            height,
            theme,
            "D" + sweep.register() + " wear against pitch diameter of " + thread.designation());
    right = width - RIGHT;
    bottom = height - BOTTOM;
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
    return new DiagramRule(range[0] - air, range[1] + air, bottom, TOP);
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
    String register = "D" + sweep.register();
    String head = thread.designation() + " in " + thread.hole() + ": " + register + " wear";
    diagram.text(Face.TITLE, 28, 36, head, Align.LEFT, palette.ink());
    diagram.text(Face.BODY, 28, 59, window(register), Align.LEFT, palette.ink());
    GaugeMarks marks = new GaugeMarks(diagram, thread, unit);
    marks.draw(up, LEFT, right);
    up.upright(diagram, LEFT, unit);
    across.level(diagram, bottom, unit);
    diagram.text(Face.SMALL, 28, TOP - 14, "pitch diameter", Align.LEFT, palette.softInk());
    diagram.text(
        Face.SMALL, right, bottom + 36, register + " wear entry", Align.RIGHT, palette.softInk());
    curve(SweepPicture::functional, 1.6, 0, palette.softInk(), marks, false);
    curve(SweepPicture::simple, 2.6, 0, palette.ink(), marks, true);
    now();
    verdicts();
    diagram.text(
        Face.SMALL,
        28,
        diagram.height() - 16,
        "thick line, full marks: simple pitch diameter · thin line, hollow marks: functional"
            + " diameter · lengths in "
            + LadderPicture.named(unit),
        Align.LEFT,
        palette.softInk());
  }

  /** Which entries of the sweep are good, in words. */
  private String window(String register) {
    double first = Double.NaN;
    double last = Double.NaN;
    for (Step step : steps) {
      if (isGood(step)) {
        first = Double.isNaN(first) ? step.wear() : first;
        last = step.wear();
      }
    }
    if (Double.isNaN(first)) {
      return "none of these entries makes all gauges good";
    }
    return "all gauges are good from "
        + Figures.length(first, unit)
        + " to "
        + Figures.lengthWithUnit(last, unit)
        + " of "
        + register
        + " wear; the sheet has "
        + Figures.lengthWithUnit(sweep.now(), unit);
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
    diagram.dashed(x, TOP, x, bottom, 1, 3, palette.ink());
    diagram.text(Face.SMALL, x + 6, TOP + 14, "now", Align.LEFT, palette.ink());
  }

  /** A strip of verdicts below the scale: a shape and a word for each run of like ones. */
  private void verdicts() {
    double top = bottom + 52;
    for (int i = 0; i < steps.size(); ) {
      String words = words(steps.get(i));
      int end = i;
      while (end + 1 < steps.size() && words(steps.get(end + 1)).equals(words)) {
        end++;
      }
      run(i, end, words, top);
      i = end + 1;
    }
  }

  private void run(int first, int last, String words, double top) {
    Theme.Palette palette = diagram.palette();
    double left = edge(first - 1, first);
    double end = edge(last, last + 1);
    boolean good = isGood(steps.get(first));
    diagram.bar(
        left + 1,
        top,
        end - left - 2,
        26,
        good ? palette.absolute() : palette.alarm(),
        good ? 0.30 : 0.16);
    String shape = good ? "■ " : "▲ ";
    Letters letters = new Letters();
    double middle = (left + end) / 2;
    if (letters.width(Face.SMALL, shape + words) < end - left - 6) {
      diagram.text(Face.SMALL, middle, top + 17, shape + words, Align.MIDDLE, palette.ink());
    } else if (end - left > 14) {
      diagram.text(Face.SMALL, middle, top + 17, shape.strip(), Align.MIDDLE, palette.ink());
    }
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
