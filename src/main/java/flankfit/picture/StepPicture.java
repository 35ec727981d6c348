package flankfit.picture;

import flankfit.lesson.Step;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.Tape;

/**
 * One step, from above, or from the front or the right where it is seen better there: its moves
 * strong, the whole path pale, and the vector that its words mean: from the zero to the end in
 * absolute mode, from where the tool stood in incremental mode.
 */
public final class StepPicture {
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
            24,
            width - 64.0,
            height - 66.0);
    panel.ground(step.unit());
    panel.path(tape, 0, tape.size(), false);
    for (int move = 0; move < tape.size(); move++) {
      if (tape.block(move) == step.block()) {
        panel.path(tape, move, move + 1, true);
      }
    }
    step.onPart().ifPresent(at -> vector(panel, step, at, diagram.palette()));
    return diagram;
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
