package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import java.util.function.DoubleToIntFunction;

/** What shades and hues of a wall stand for, as two bars beside it. */
final class WallKey {
  private static final double WIDE = 20;
  private static final double MOST_HIGH = 220;
  private static final int STEPS = 60;

  private final Diagram diagram;
  private final double x;
  private final double top;
  private final double middle;
  private final double high;

  /**
   * An empty key.
   *
   * @param x first column (px)
   * @param top first row (px)
   * @param bottom last row (px)
   */
  WallKey(Diagram diagram, double x, double top, double bottom) {
    this.diagram = diagram;
    this.x = x;
    this.top = top + 4;
    middle = (top + bottom) / 2 + 14;
    high = Math.min(MOST_HIGH, (bottom - top) / 2 - 40);
  }

  /**
   * The departure: upper bar.
   *
   * @param full departure at full hue (µm)
   * @param more whether the wall departs further
   * @param hue colour of a share of it, -1 to 1
   */
  void departure(double full, boolean more, DoubleToIntFunction hue) {
    int[] cells = new int[STEPS];
    for (int i = 0; i < STEPS; i++) {
      cells[i] = hue.applyAsInt(1 - 2.0 * (i + 0.5) / STEPS);
    }
    double first = heading("departure, µm", top);
    bar(cells, first);
    String most = Figures.plain(full, full < 10 ? 1 : 0);
    String over = more ? "beyond " : "";
    figure(first + 10, over + "+" + most);
    soft(first + 25, "deeper");
    figure(first + high / 2 + 4, "0");
    soft(first + high - 15, "metal left");
    figure(first + high, over + "−" + most);
  }

  /** Words in place of the upper bar. */
  void noDeparture(double none) {
    double y = heading("departure", top) + 10;
    String words = "nowhere above " + Figures.plain(none, 1) + " µm";
    double room = diagram.width() - x - 8;
    for (String line : Paragraph.wrap(diagram, Face.SMALL, words, room)) {
      diagram.label(Face.SMALL, x, y, line, Align.LEFT, diagram.palette().ink());
      y += 15;
    }
  }

  /**
   * The depth: lower bar.
   *
   * @param deepest depth of the groove (µm)
   */
  void depth(double deepest) {
    Theme.Palette palette = diagram.palette();
    int[] cells = new int[STEPS];
    for (int i = 0; i < STEPS; i++) {
      cells[i] = Colours.mix(palette.stock(), palette.ground(), (i + 0.5) / STEPS);
    }
    double first = heading("depth, µm", middle);
    bar(cells, first);
    figure(first + 10, "0");
    soft(first + 25, "crest");
    soft(first + high - 15, "root");
    figure(first + high, Figures.fixed(deepest, 0));
  }

  private double heading(String words, double y) {
    diagram.label(Face.SMALL, x, y + 8, words, Align.LEFT, diagram.palette().ink());
    return y + 16;
  }

  private void bar(int[] cells, double first) {
    diagram.raster(x, first, WIDE, high, 1, cells);
    int edge = diagram.palette().softInk();
    diagram.stroke(
        new double[] {x, first, x + WIDE, first, x + WIDE, first + high, x, first + high, x, first},
        1,
        0,
        edge);
  }

  private void figure(double y, String words) {
    diagram.label(Face.SMALL, x + WIDE + 7, y, words, Align.LEFT, diagram.palette().ink());
  }

  private void soft(double y, String words) {
    diagram.label(Face.SMALL, x + WIDE + 7, y, words, Align.LEFT, diagram.palette().softInk());
  }
}
