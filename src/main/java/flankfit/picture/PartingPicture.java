package flankfit.picture;

import flankfit.motion.Tape;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;

/** Two paths beside each other, from above and from the front: as written, and without a word. */
public final class PartingPicture {
  private static final double SIDE = 70;
  private static final double BETWEEN = 62;

  private PartingPicture() {}

  /**
   * Draws them.
   *
   * @param right the path as written
   * @param wrong the path without the word
   * @param headline what was left out
   * @param reason what that does
   * @param unit unit of the scales
   * @param width width (px), 600 or more
   * @param height height (px), 400 or more
   */
  public static Diagram of(
      Tape right,
      Tape wrong,
      String headline,
      String reason,
      LengthUnit unit,
      int width,
      int height,
      Theme theme) {
    Diagram diagram = new Diagram(width, height, theme, headline, reason);
    PictureFrame frame =
        new PictureFrame(
            diagram,
            "lesson: as written, and with a word forgotten",
            false,
            headline,
            reason,
            "Blue: absolute moves. Orange with dark edges: incremental moves. Dashed: rapids. Both"
                + " at one scale; rapids beyond are cut off.");
    PathRange range = PathRange.of(right, wrong);
    double wide = (width - 2 * SIDE - BETWEEN - 20) / 2;
    double first = frame.top() + 36;
    double tall = (frame.foot() - first - 44 - BETWEEN) / 2;
    for (int column = 0; column < 2; column++) {
      Tape tape = column == 0 ? right : wrong;
      double x = SIDE + column * (wide + BETWEEN + 20);
      diagram.text(
          Face.STRONG,
          x + wide,
          first - 6,
          column == 0 ? "as written" : "word forgotten",
          Align.RIGHT,
          diagram.palette().ink());
      for (int row = 0; row < 2; row++) {
        PathPanel panel =
            new PathPanel(
                diagram,
                0,
                row == 0 ? 1 : 2,
                range.low(),
                range.high(),
                x,
                first + row * (tall + BETWEEN),
                wide,
                tall);
        panel.ground(unit);
        panel.path(tape, 0, tape.size(), true);
      }
    }
    return diagram;
  }
}
