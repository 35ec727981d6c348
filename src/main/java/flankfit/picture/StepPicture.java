package flankfit.picture;

import flankfit.lesson.Step;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.Tape;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import java.util.List;

/**
 * One step, from above, or from the front or the right where it is seen better there: its moves
 * strong, the whole path pale, and the vector that its words mean: from the zero to the end in
 * absolute mode, from where the tool stood in incremental mode.
 */
public final class StepPicture {
  private static final double EDGE = 14;
  private static final double HEAD_LINE = 26;
  private static final double LINE = 19;
  private static final int SENTENCE_LINES = 3;

  private StepPicture() {}

  /**
   * Draws it.
   *
   * @param tape the whole path
   * @param step the step; its vector is drawn where its numbers stand for themselves on the part
   * @param title what it shows
   * @param width width (px), 200 or more
   * @param height height (px), 200 or more
   */
  public static Diagram of(Tape tape, Step step, String title, int width, int height) {
    Diagram diagram = new Diagram(width, height, Theme.LIGHT, title);
    draw(diagram, tape, step, 0);
    return diagram;
  }

  /**
   * Draws it with its block and its plain sentence above, for who sees nothing else.
   *
   * @param width width (px), 300 or more
   * @param height height (px), 300 or more
   */
  public static Diagram told(Tape tape, Step step, int width, int height) {
    Diagram diagram = new Diagram(width, height, Theme.LIGHT, step.text().strip());
    Theme.Palette palette = diagram.palette();
    boolean absolute = step.mode() == Distance.ABSOLUTE;
    int hue = absolute ? palette.absoluteText() : palette.incrementalText();
    String block = "line " + step.place().line() + "   " + step.text().strip();
    List<String> head = Paragraph.wrap(diagram, Face.STRONG, block, width - 2 * EDGE);
    diagram.text(Face.STRONG, EDGE, HEAD_LINE, head.get(0), Align.LEFT, palette.ink());
    String mode = absolute ? "absolute: " : "incremental: ";
    List<String> plain = Paragraph.wrap(diagram, Face.BODY, mode + step.plain(), width - 2 * EDGE);
    for (int i = 0; i < Math.min(SENTENCE_LINES, plain.size()); i++) {
      double row = HEAD_LINE + (i + 1) * LINE;
      diagram.text(Face.BODY, EDGE, row, plain.get(i), Align.LEFT, hue);
    }
    draw(diagram, tape, step, HEAD_LINE + SENTENCE_LINES * LINE);
    return diagram;
  }

  private static void draw(Diagram diagram, Tape tape, Step step, double top) {
    int width = diagram.width();
    int height = diagram.height();
    PathRange range = PathRange.of(tape).withProgrammed(tape);
    Side view = view(step);
    PathPanel panel =
        new PathPanel(
            diagram,
            view == Side.RIGHT ? 1 : 0,
            view == Side.PLAN ? 1 : 2,
            range.low(),
            range.high(),
            52,
            top + 24,
            width - 64.0,
            height - 66.0 - top);
    panel.ground(step.unit());
    panel.path(tape, 0, tape.size(), false);
    for (int move = 0; move < tape.size(); move++) {
      if (tape.block(move) == step.block()) {
        panel.path(tape, move, move + 1, true);
      }
    }
    step.onPart().ifPresent(at -> vector(panel, step, at, diagram.palette()));
  }

  private static void vector(PathPanel panel, Step step, Step.OnPart at, Theme.Palette palette) {
    if (step.mode() == Distance.ABSOLUTE) {
      panel.arrow(at.zero(), at.end(), palette.absoluteText());
      panel.mark(at.zero(), "zero", palette.ink());
    } else {
      panel.arrow(at.begin(), at.end(), palette.incrementalText());
      panel.mark(at.begin(), "start", palette.ink());
    }
    panel.mark(at.end(), "end", palette.ink());
  }

  /** From where the picture of a step is seen. */
  private enum Side {
    PLAN,
    FRONT,
    RIGHT
  }

  private static Side view(Step step) {
    if (step.arc().isPresent()) {
      return switch (step.arc().get().plane()) {
        case XY -> Side.PLAN;
        case ZX -> Side.FRONT;
        case YZ -> Side.RIGHT;
      };
    }
    boolean upright = Math.hypot(step.move().x(), step.move().y()) < 1e-6;
    return upright ? Side.FRONT : Side.PLAN;
  }
}
