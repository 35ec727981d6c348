package flankfit.window;

import flankfit.picture.Theme;
import imgui.ImGui;
import imgui.ImVec2;

/**
 * Which lines are in sight, by whole rows: a scroll position in pixels loses its last digits with a
 * million lines.
 */
final class ListingScroll {
  private static final float NOTCH = 3;
  private static final float LEAST_THUMB = 18;

  private final ImVec2 corner = new ImVec2();
  private int first;
  private float turned;

  /** The first line in sight (index from 0). */
  int first() {
    return first;
  }

  /** Brings a line into sight if it is not, with some before it. */
  void show(int line, int rows) {
    if (line < first + 1 || line > first + rows - 3) {
      first = Math.max(0, line - (int) (rows * 0.4f));
    }
  }

  /**
   * Draws the bar at the right of the present child window; takes wheel and hand.
   *
   * @param x its left edge in the child
   * @param width its width
   * @param height height of the child
   * @param lines number of lines
   * @param rows rows in sight
   */
  void draw(float x, float width, float height, int lines, int rows, Theme.Palette palette) {
    int last = Math.max(0, lines - rows);
    ImGui.setCursorPos(x, 0);
    ImGui.getCursorScreenPos(corner);
    if (last > 0) {
      float thumb = Math.max(LEAST_THUMB, height * rows / lines);
      ImGui.invisibleButton("scroll", width, Math.max(1, height));
      boolean held = ImGui.isItemActive();
      if (held) {
        float at = (ImGui.getIO().getMousePosY() - corner.y - thumb / 2) / (height - thumb);
        first = Math.round(Math.max(0, Math.min(1, at)) * last);
      }
      float top = corner.y + (height - thumb) * Math.min(first, last) / last;
      int ink = PaperStyle.ink(held || ImGui.isItemHovered() ? palette.softInk() : palette.rule());
      float inset = width * 0.3f;
      ImGui.getWindowDrawList()
          .addRectFilled(corner.x + inset, top, corner.x + width, top + thumb, ink);
    }
    if (ImGui.isWindowHovered()) {
      turned += NOTCH * ImGui.getIO().getMouseWheel();
      int whole = (int) turned;
      turned -= whole;
      first -= whole;
    }
    first = Math.max(0, Math.min(last, first));
  }
}
