package flankfit.picture;

import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadAnswer.PassAnswer;
import flankfit.gauge.ThreadAnswer.PassMeasures;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;

/**
 * The passes of a thread as rungs of its ladder: all marks first, then words where they cover none
 * of them.
 */
final class LadderRungs {
  /** Columns of a pass below which figures of passes would cover each other (px). */
  private static final double CROWDED = 62;

  /** Widest rung as if a pass had so many columns (px), and its half as a share of them (1). */
  private static final double MOST_COLUMNS = 210;

  private static final double HALF = 0.36;

  /** Least contrast of the earliest rung with the paper. */
  private static final double FAINTEST = 3.4;

  /** Half of the hollow mark with its line (px). */
  private static final double MARK = 12;

  /** Rows from one place for words to the next (px), and how many are tried. */
  private static final double STEP = 15;

  private static final int STEPS = 4;

  private final Diagram diagram;
  private final ThreadAnswer thread;
  private final LengthUnit unit;
  private final DiagramRule rule;
  private final GaugeMarks marks;
  private final boolean bare;
  private final Room room;

  /** Columns that belong to one pass (px). */
  private final double column;

  private final double half;
  private final RungNames naming;

  /** The rows and columns of the ladder (px). */
  record Room(double left, double top, double right, double bottom) {}

  /** A batch's bar: column, half of its caps, upper and lower end (px). */
  private record Bar(double x, double cap, double high, double low) {
    double left() {
      return x - cap;
    }
  }

  /**
   * The rungs of a ladder.
   *
   * @param bare whether the ladder stands in a window, without words round it
   */
  LadderRungs(
      Diagram diagram,
      ThreadAnswer thread,
      LengthUnit unit,
      DiagramRule rule,
      boolean bare,
      Room room) {
    this.diagram = diagram;
    this.thread = thread;
    this.unit = unit;
    this.rule = rule;
    this.bare = bare;
    this.room = room;
    marks = new GaugeMarks(diagram, thread, unit, bare);
    column = (room.right() - room.left()) / Math.max(1, thread.passes().size());
    half = Math.min(column, MOST_COLUMNS) * HALF;
    naming = RungNames.of(diagram, thread.passes(), column);
  }

  /** Draws all of them, with what a batch scatters beside the last one. */
  void draw(Optional<LadderPicture.Scatter> scatter) {
    List<PassAnswer> passes = thread.passes();
    int last = passes.size() - 1;
    for (int i = last; i >= 0; i--) {
      naming.name(diagram, passes.get(i), i, i == last, middle(i), room.bottom());
      mark(passes.get(i), i);
    }
    Optional<Bar> bar =
        last >= 0 && isSeen(passes.get(last)) ? scatter.map(s -> bar(s, last)) : Optional.empty();
    // The last pass first: its words matter most where room is scarce.
    for (int i = last; i >= 0; i--) {
      words(passes.get(i), i, i == last ? bar : Optional.empty());
      if (i == last && bar.isPresent()) {
        tell(scatter.orElseThrow(), bar.get());
      }
    }
  }

  private double middle(int index) {
    return room.left() + (index + 0.5) * column;
  }

  private boolean isSeen(PassAnswer pass) {
    return pass.after().filter(after -> rule.holds(after.pitch())).isPresent();
  }

  private boolean isLast(int index) {
    return index == thread.passes().size() - 1;
  }

  /** Earlier passes paler, the last in full ink. */
  private int shade(int index) {
    Theme.Palette palette = diagram.palette();
    double share = 0.62 * (thread.passes().size() - 1 - index) / Math.max(1, index + 1);
    int colour = Colours.mix(palette.ink(), palette.ground(), Math.min(0.62, share));
    for (double s = Math.min(0.62, share);
        Colours.contrast(colour, palette.ground()) < FAINTEST;
        s -= 0.02) {
      colour = Colours.mix(palette.ink(), palette.ground(), s);
    }
    return colour;
  }

  private int wordInk(int index) {
    return isLast(index) ? diagram.palette().ink() : diagram.palette().softInk();
  }

  private void mark(PassAnswer pass, int index) {
    if (pass.after().isEmpty()) {
      return;
    }
    PassMeasures after = pass.after().get();
    double x = middle(index);
    if (!rule.holds(after.pitch())) {
      arrow(after, x, isLast(index), wordInk(index));
      return;
    }
    int colour = shade(index);
    double y = rule.at(after.pitch());
    double yFunctional = rule.within(after.functional());
    diagram.line(x, y, x, yFunctional, 1.2, colour);
    diagram.line(x - half, y, x + half, y, isLast(index) ? 3 : 2, colour);
    marks.full(x, y, colour);
    diagram.keepFree(x - 1, Math.min(y, yFunctional), x + 1, Math.max(y, yFunctional));
    diagram.keepFree(x - half, y - 2, x + half, y + 2);
    diagram.keepFree(x - 5, y - 5, x + 5, y + 5);
    if (rule.holds(after.functional())) {
      marks.hollow(x, yFunctional, colour);
      diagram.keepFree(x - 10, yFunctional - 10, x + 10, yFunctional + 10);
    }
  }

  private boolean isAbove(PassMeasures after) {
    return after.pitch() > GaugeMarks.range(thread)[1];
  }

  /** A pass beyond the scale: an arrow at its end. */
  private void arrow(PassMeasures after, double x, boolean last, int colour) {
    double end = isAbove(after) ? room.top() + 3 : room.bottom() - 3;
    double way = isAbove(after) ? 1 : -1;
    diagram.line(x, end, x, end + 22 * way, last ? 3 : 2, colour);
    diagram.stroke(
        new double[] {x - 7, end + 8 * way, x, end, x + 7, end + 8 * way}, last ? 3 : 2, 0, colour);
    diagram.keepFree(x - 7, Math.min(end, end + 22 * way), x + 7, Math.max(end, end + 22 * way));
  }

  /** What a batch scatters, as an upright bar on the last rung, beside its marks. */
  private Bar bar(LadderPicture.Scatter batch, int index) {
    double cap = column < CROWDED ? 3 : 5;
    double x = middle(index) + Math.max(half - 8, MARK + 2 + cap);
    Bar bar = new Bar(x, cap, rule.within(batch.high()), rule.within(batch.low()));
    int ink = diagram.palette().ink();
    diagram.line(x, bar.low(), x, bar.high(), 1.6, ink);
    diagram.line(x - cap, bar.low(), x + cap, bar.low(), 1.6, ink);
    diagram.line(x - cap, bar.high(), x + cap, bar.high(), 1.6, ink);
    diagram.keepFree(x - cap, bar.high() - 1, x + cap, bar.low() + 1);
    return bar;
  }

  private void words(PassAnswer pass, int index, Optional<Bar> bar) {
    double x = middle(index);
    int colour = wordInk(index);
    boolean crowded = bare && column < CROWDED && !isLast(index);
    if (pass.after().isEmpty()) {
      oneOf(x, room.bottom() - 12, colour(), "no groove to measure yet", "no groove", "none");
    } else if (crowded) {
      return;
    } else if (isSeen(pass)) {
      figures(pass.after().get(), x, isLast(index) ? Face.STRONG : Face.BODY, colour, bar);
    } else {
      beyond(pass.after().get(), x, isLast(index) ? Face.STRONG : Face.BODY, colour);
    }
  }

  private int colour() {
    return diagram.palette().softInk();
  }

  /** Writes the first of some wordings that fits the columns of a pass and covers nothing. */
  private boolean oneOf(double x, double y, int colour, String... wordings) {
    for (String words : wordings) {
      if (diagram.width(Face.SMALL, words) <= column - 6
          && diagram.plate(Face.SMALL, x, y, words, Align.MIDDLE, colour)) {
        return true;
      }
    }
    return false;
  }

  /** Both diameters, on the far sides of the marks. */
  private void figures(PassMeasures after, double x, Face face, int colour, Optional<Bar> bar) {
    double y = rule.at(after.pitch());
    double yFunctional = rule.within(after.functional());
    boolean functionalBelow = after.functional() <= after.pitch();
    double above = Math.min(y, yFunctional) - 14;
    double below = Math.max(y, yFunctional) + 24;
    String pitch = Figures.length(after.pitch(), unit);
    String functional = Figures.length(after.functional(), unit);
    pitch(face, x, functionalBelow ? above : below, functionalBelow ? -1 : 1, pitch, colour, bar);
    double row = functionalBelow ? below : above;
    if (!oneOf(x, row, colour, "functional " + functional, functional) && bar.isPresent()) {
      // A batch's bar beside it: the figure gives way to the other side.
      double wide = diagram.width(Face.SMALL, functional);
      oneOf(bar.get().left() - 5 - wide / 2, row, colour, functional);
    }
  }

  /** The pitch diameter over or under its mark; beside it, or farther off, where that is taken. */
  private void pitch(
      Face face, double x, double row, int way, String words, int colour, Optional<Bar> bar) {
    if (diagram.plate(face, x, row, words, Align.MIDDLE, colour)) {
      return;
    }
    double wide = diagram.width(face, words);
    double end = bar.map(b -> b.left() - 5).orElse(room.right() - 3);
    double aside = Math.min(x, end - wide / 2);
    if (aside > x - wide / 2 && diagram.plate(face, aside, row, words, Align.MIDDLE, colour)) {
      return;
    }
    if (bar.isPresent()) {
      double beyond = way < 0 ? bar.get().high() - 8 : bar.get().low() + 18;
      if (diagram.plate(face, x, beyond, words, Align.MIDDLE, colour)) {
        return;
      }
    }
    double beside = rowBeside(row, way);
    if (diagram.plate(face, x + half + 6, beside, words, Align.LEFT, colour)) {
      return;
    }
    for (int i = 1; i <= STEPS; i++) {
      for (int side : new int[] {way, -way}) {
        if (diagram.plate(face, aside, row + side * i * STEP, words, Align.MIDDLE, colour)) {
          return;
        }
      }
    }
  }

  private static double rowBeside(double row, int way) {
    return way < 0 ? row + 19 : row - 19;
  }

  /**
   * The ends of a batch's bar in words: near it, and clear of limits and gauges where that goes.
   */
  private void tell(LadderPicture.Scatter batch, Bar bar) {
    String from = Figures.length(batch.low(), unit);
    String to = Figures.length(batch.high(), unit);
    String[] wordings = {"95 of 100: " + from + " to " + to, from + " to " + to};
    for (boolean clear : new boolean[] {true, false}) {
      // Bare figures far off would be read as something else's.
      if (tell(wordings[0], bar, clear, STEPS) || tell(wordings[1], bar, clear, 1)) {
        return;
      }
    }
  }

  private boolean tell(String words, Bar bar, boolean clear, int steps) {
    double reach = diagram.width(Face.SMALL, words) / 2;
    double least = room.left() + reach + 6;
    double most = room.right() - reach - 6;
    if (least > most) {
      return false;
    }
    double x = Math.max(least, Math.min(bar.x(), most));
    for (int i = 0; i <= steps; i++) {
      double[] rows = {bar.high() - 8 - i * STEP, bar.low() + 18 + i * STEP};
      for (double row : rows) {
        boolean within = row > room.top() + 8 && row < room.bottom() - 2;
        if (within
            && !(clear && isOnLine(row))
            && diagram.plate(Face.SMALL, x, row, words, Align.MIDDLE, diagram.palette().ink())) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether words on a row lie over a limit or a gauge. */
  private boolean isOnLine(double row) {
    TextBox box = TextBox.of(Face.SMALL, 0, row, 0, Align.MIDDLE);
    for (double value : GaugeMarks.lines(thread)) {
      double y = rule.within(value);
      if (y > box.top() - 2 && y < box.bottom() + 2) {
        return true;
      }
    }
    return false;
  }

  /** Figures of a pass beyond the scale, on the side where there is room. */
  private void beyond(PassMeasures after, double x, Face face, int colour) {
    boolean above = isAbove(after);
    double y = above ? room.top() + 43 : room.bottom() - 61;
    String pitch = Figures.length(after.pitch(), unit);
    diagram.plate(face, x, y, pitch, Align.MIDDLE, colour);
    String functional = Figures.length(after.functional(), unit);
    oneOf(x, y + 16, colour, "functional " + functional, functional);
    String off = above ? "above the scale" : "below the scale";
    oneOf(x, y + 31, colour, off, above ? "above" : "below");
  }
}
