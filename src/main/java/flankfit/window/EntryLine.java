package flankfit.window;

import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;

/** Draws a line that is typed in, with its caret. */
final class EntryLine {
  private EntryLine() {}

  /**
   * Draws it in the present letters.
   *
   * @param empty shown while nothing is typed
   */
  static void draw(ImDrawList list, Paper paper, float x, float y, TextEntry entry, String empty) {
    float s = paper.scale();
    String text = entry.text();
    ImVec2 size = new ImVec2();
    ImGui.calcTextSize(size, text.substring(0, entry.caret()));
    float caret = x + size.x + s;
    ImGui.calcTextSize(size, "X");
    int ink = PaperStyle.ink(paper.palette().ink());
    if (text.isEmpty()) {
      list.addText(x + 6 * s, y, PaperStyle.ink(paper.palette().softInk()), empty);
    } else {
      list.addText(x, y, ink, text);
    }
    list.addRectFilled(caret, y - s, caret + Math.max(1, 1.5f * s), y + size.y + s, ink);
  }
}
