package flankfit.picture;

import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadAnswer.PassAnswer;
import flankfit.gauge.ThreadAnswer.PassMeasures;
import flankfit.gauge.Verdict;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * The tolerance ladder: pitch diameter upwards, the limits as a band, the gauges as lines, each
 * pass as a rung in order of cutting, the D register as a second scale.
 */
public final class LadderPicture {
  private static final double LEFT = 96;
  private static final double RIGHT = 318;
  private static final double TOP = 118;
  private static final double BOTTOM = 118;

  /** Share of the tolerance kept free above and below limits and gauges. */
  private static final double AIR = 0.45;

  private final ThreadAnswer thread;
  private final LengthUnit unit;
  private final Diagram diagram;
  private final double right;
  private final double bottom;
  private final DiagramRule rule;

  private LadderPicture(ThreadAnswer thread, LengthUnit unit, int width, int height, Theme theme) {
    this.thread = thread;
    this.unit = unit;
    diagram = new Diagram(width, height, theme, "Tolerance ladder of " + headline(thread));
    right = width - RIGHT;
    bottom = height - BOTTOM;
    double[] range = GaugeMarks.range(thread);
    double air = AIR * (range[1] - range[0]);
    rule = new DiagramRule(range[0] - air, range[1] + air, bottom, TOP);
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
    LadderPicture picture = new LadderPicture(thread, unit, width, height, theme);
    picture.draw();
    return picture.diagram;
  }

  /** Thread, hole and verdict in words. */
  static String headline(ThreadAnswer thread) {
    return thread.designation() + " in " + thread.hole() + ": " + thread.verdict().words();
  }

  /** A unit in a sentence. */
  static String named(LengthUnit unit) {
    return unit == LengthUnit.INCH ? "inches" : "mm";
  }

  /** Title, reason and the word under both that says what the picture is. */
  static void title(Diagram diagram, ThreadAnswer thread, String below) {
    Theme.Palette palette = diagram.palette();
    boolean good = thread.verdict() == Verdict.GAUGES_GOOD;
    String mark = good ? "■ " : "▲ ";
    int colour = good ? palette.ink() : palette.alarm();
    diagram.text(Face.TITLE, 28, 36, mark + headline(thread), Align.LEFT, colour);
    List<String> lines = Paragraph.wrap(thread.reason(), Face.BODY, diagram.width() - 56);
    for (int i = 0; i < Math.min(2, lines.size()); i++) {
      diagram.text(Face.BODY, 28, 59 + 18 * i, lines.get(i), Align.LEFT, palette.ink());
    }
    diagram.text(Face.SMALL, 28, diagram.height() - 16, below, Align.LEFT, palette.softInk());
  }

  private void draw() {
    Theme.Palette palette = diagram.palette();
    title(
        diagram,
        thread,
        "full mark: simple pitch diameter · hollow mark: functional diameter, what the GO gauge"
            + " feels · lengths in "
            + named(unit));
    GaugeMarks marks = new GaugeMarks(diagram, thread, unit);
    marks.draw(rule, LEFT, right);
    rule.upright(diagram, LEFT, unit);
    diagram.text(Face.SMALL, 28, TOP - 14, "pitch diameter", Align.LEFT, palette.softInk());
    List<PassAnswer> passes = thread.passes();
    double dial = thread.offset().isPresent() ? 104 : 0;
    double room = right - dial - LEFT;
    double column = room / Math.max(1, passes.size());
    for (int i = 0; i < passes.size(); i++) {
      rung(marks, passes.get(i), i, LEFT + (i + 0.5) * column, Math.min(column, 210) * 0.36);
    }
    thread.offset().ifPresent(offset -> dial(offset, right - 56));
  }

  private void rung(GaugeMarks marks, PassAnswer pass, int index, double x, double half) {
    Theme.Palette palette = diagram.palette();
    boolean last = index == thread.passes().size() - 1;
    int colour = last ? palette.ink() : palette.softInk();
    String name = pass.role().word() + " pass";
    diagram.text(last ? Face.STRONG : Face.BODY, x, bottom + 26, name, Align.MIDDLE, colour);
    diagram.text(
        Face.SMALL, x, bottom + 43, "line " + pass.line(), Align.MIDDLE, palette.softInk());
    if (pass.after().isEmpty()) {
      diagram.text(
          Face.SMALL, x, bottom + 60, "no groove to measure yet", Align.MIDDLE, palette.softInk());
      return;
    }
    PassMeasures after = pass.after().get();
    double y = rule.within(after.pitch());
    double yFunctional = rule.within(after.functional());
    diagram.line(x, y, x, yFunctional, 1.2, colour);
    diagram.line(x - half, y, x + half, y, last ? 3 : 2, colour);
    if (rule.holds(after.pitch())) {
      marks.full(x, y, colour);
    } else {
      beyond(x, after.pitch() > GaugeMarks.range(thread)[1], colour);
    }
    if (rule.holds(after.functional())) {
      marks.hollow(x, yFunctional, colour);
    }
    if (rule.holds(after.pitch())) {
      values(after, x, half, y, yFunctional, colour);
    } else {
      farValues(after, x, y, colour);
    }
  }

  /** Figures of a rung beyond the scale, on the side where there is room. */
  private void farValues(PassMeasures after, double x, double y, int colour) {
    boolean above = y < (TOP + bottom) / 2;
    String pitch = Figures.length(after.pitch(), unit);
    String functional = "functional " + Figures.length(after.functional(), unit);
    diagram.text(Face.STRONG, x, y + (above ? 32 : -40), pitch, Align.MIDDLE, colour);
    diagram.text(Face.SMALL, x, y + (above ? 50 : -22), functional, Align.MIDDLE, colour);
  }

  /** An arrow at the end of the scale for what lies beyond it. */
  private void beyond(double x, boolean above, int colour) {
    double y = above ? TOP : bottom;
    double way = above ? -1 : 1;
    diagram.stroke(
        new double[] {x - 7, y - 7 * way, x, y + way, x + 7, y - 7 * way}, 2.4, 0, colour);
  }

  private void values(
      PassMeasures after, double x, double half, double y, double yFunctional, int colour) {
    String pitch = Figures.length(after.pitch(), unit);
    String functional = Figures.length(after.functional(), unit);
    double up = after.pitch() >= after.functional() ? -1 : 1;
    diagram.text(Face.STRONG, x + half, y + (up < 0 ? -7 : 18), pitch, Align.RIGHT, colour);
    if (Math.abs(y - yFunctional) > 16 && rule.holds(after.functional())) {
      diagram.text(Face.SMALL, x + 14, yFunctional + 4, functional, Align.LEFT, colour);
    } else {
      diagram.text(
          Face.SMALL,
          x + half,
          y + (up < 0 ? 26 : -17),
          "functional " + functional,
          Align.RIGHT,
          colour);
    }
  }

  /** The register as a scale: where the pitch diameter goes for each entry. */
  private void dial(OffsetAdvice offset, double x) {
    Theme.Palette palette = diagram.palette();
    double pitch = thread.finished().orElseThrow().pitchSimple();
    double slope = offset.sensitivity();
    double atBottom = offset.now() + (rule.length(bottom) - pitch) / slope;
    double atTop = offset.now() + (rule.length(TOP) - pitch) / slope;
    new DiagramRule(atBottom, atTop, bottom, TOP).upright(diagram, x, unit);
    diagram.text(
        Face.SMALL, x, TOP - 14, offset.register() + " wear", Align.MIDDLE, palette.softInk());
    double now = rule.within(pitch);
    diagram.stroke(
        new double[] {x + 3, now, x + 13, now - 6, x + 13, now + 6, x + 3, now},
        2,
        0,
        palette.ink());
    diagram.text(Face.SMALL, x + 17, now + 4, "now", Align.LEFT, palette.ink());
  }

  /** Lines of text that fit a width. */
  private static final class Paragraph {
    static List<String> wrap(String text, Face face, double width) {
      Letters letters = new Letters();
      List<String> lines = new ArrayList<>();
      StringBuilder line = new StringBuilder();
      for (String word : text.strip().split(" ", -1)) {
        String longer = line.isEmpty() ? word : line + " " + word;
        if (!line.isEmpty() && letters.width(face, longer) > width) {
          lines.add(line.toString());
          line.setLength(0);
          line.append(word);
        } else {
          line.setLength(0);
          line.append(longer);
        }
      }
      lines.add(line.toString());
      return lines;
    }
  }
}
