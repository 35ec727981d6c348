package flankfit.window;

import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiWindowFlags;
import java.util.List;

/** The palette: a line to type in, and below it what can be had done. */
final class PalettePanel {
  private static final int MOST_ROWS = 14;

  private final ViewState state;
  private final Palette palette;
  private final ImVec2 size = new ImVec2();
  private int first;

  PalettePanel(ViewState state, Palette palette) {
    this.state = state;
    this.palette = palette;
  }

  void draw(Paper paper) {
    if (state.desk().over() != Desk.Over.PALETTE) {
      return;
    }
    float s = paper.scale();
    Layout layout = paper.layout();
    List<Palette.Entry> entries = palette.entries();
    float row = 25 * s;
    int rows = (int) Math.min(MOST_ROWS, Math.max(3, (layout.height() - 180 * s) / row));
    float width = Math.min(620 * s, layout.width() - 40 * s);
    float height = 54 * s + rows * row + 10 * s;
    float x = (layout.width() - width) / 2;
    float y = 64 * s;
    ImGui.setNextWindowFocus();
    Panels.begin("palette", x, y, width, height, ImGuiWindowFlags.NoFocusOnAppearing);
    ImDrawList list = ImGui.getWindowDrawList();
    list.addRect(x, y, x + width, y + height, PaperStyle.ink(paper.palette().softInk()));
    EntryLine.draw(
        list,
        paper,
        x + 20 * s,
        y + 14 * s,
        state.desk().entry(),
        "type an action, a file, a line");
    Panels.rule(list, paper.palette(), x + 14 * s, y + 44 * s, width - 28 * s, s);
    int chosen = Math.min(state.desk().chosen(), entries.size() - 1);
    first = Math.max(Math.min(first, chosen), chosen - rows + 1);
    first = Math.max(0, first);
    if (entries.isEmpty()) {
      list.addText(
          x + 20 * s, y + 56 * s, PaperStyle.ink(paper.palette().softInk()), "nothing fits");
    }
    for (int i = 0; i < rows && first + i < entries.size(); i++) {
      row(list, paper, x, y + 50 * s + i * row, width, entries.get(first + i), first + i, chosen);
    }
    ImGui.end();
  }

  private void row(
      ImDrawList list,
      Paper paper,
      float x,
      float y,
      float width,
      Palette.Entry entry,
      int index,
      int chosen) {
    float s = paper.scale();
    ImGui.setCursorScreenPos(x + 8 * s, y);
    ImGui.pushID(index);
    boolean clicked = ImGui.invisibleButton("entry", width - 16 * s, 25 * s);
    ImGui.popID();
    if (index == chosen || ImGui.isItemHovered()) {
      list.addRectFilled(
          x + 8 * s, y, x + width - 8 * s, y + 25 * s, PaperStyle.ink(paper.palette().shade()));
    }
    if (index == chosen) {
      list.addRectFilled(
          x + 8 * s, y, x + 11 * s, y + 25 * s, PaperStyle.ink(paper.palette().ink()));
    }
    ImGui.calcTextSize(size, entry.key());
    float keyLeft = x + width - 20 * s - size.x;
    list.pushClipRect(x, y, keyLeft - 10 * s, y + 25 * s, true);
    list.addText(x + 20 * s, y + 4 * s, PaperStyle.ink(paper.palette().ink()), entry.words());
    list.popClipRect();
    list.addText(keyLeft, y + 4 * s, PaperStyle.ink(paper.palette().softInk()), entry.key());
    if (clicked) {
      palette.run(index);
    }
  }
}
