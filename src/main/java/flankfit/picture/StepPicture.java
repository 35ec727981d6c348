package flankfit.picture;

import flankfit.motion.ModalState.Distance;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.unit.LengthUnit;

/**
 * One step from above: its moves strong, the whole path pale, and the vector that its words mean:
 * from the zero to the end in absolute mode, from where the tool stood in incremental mode.
 */
public final class StepPicture {
  private StepPicture() {}

  /**
   * Draws it.
   *
   * @param tape the whole path
   * @param block number of the executed block
   * @param mode how its words were read
   * @param zero where its coordinates count from, part frame (mm)
   * @param begin where the tool was told to be, part frame (mm)
   * @param end where it is told to go, part frame (mm)
   * @param title what it shows
   * @param unit unit of the scales
   * @param width width (px), 200 or more
   * @param height height (px), 200 or more
   */
  public static Diagram of(
      Tape tape,
      int block,
      Distance mode,
      Point zero,
      Point begin,
      Point end,
      String title,
      LengthUnit unit,
      int width,
      int height) {
    Diagram diagram = new Diagram(width, height, Theme.LIGHT, title);
    PathRange range = PathRange.of(tape);
    PathPanel panel =
        new PathPanel(
            diagram, 0, 1, range.low(), range.high(), 52, 24, width - 64.0, height - 66.0);
    panel.ground(unit);
    panel.path(tape, 0, tape.size(), false);
    for (int move = 0; move < tape.size(); move++) {
      if (tape.block(move) == block) {
        panel.path(tape, move, move + 1, true);
      }
    }
    Theme.Palette palette = diagram.palette();
    if (mode == Distance.ABSOLUTE) {
      panel.arrow(zero, end, palette.absoluteText());
      panel.mark(zero, "zero", palette.ink());
    } else {
      panel.arrow(begin, end, palette.incrementalText());
      panel.mark(begin, "start", palette.ink());
    }
    panel.mark(end, "end", palette.ink());
    return diagram;
  }
}
