package flankfit.window;

import flankfit.picture.Theme;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.flag.ImGuiCol;
import imgui.flag.ImGuiWindowFlags;
import java.util.List;

/** All keys and all cautions, laid over the window in two columns. */
final class HelpPanel {
  private final ViewState state;
  private final List<KeyTable.Row> rows;

  HelpPanel(ViewState state, Actions actions) {
    this.state = state;
    rows = KeyTable.rows(actions);
  }

  void draw(PaperStyle style, Layout layout, Theme.Palette palette) {
    if (!state.help()) {
      return;
    }
    float s = style.scale();
    float width = Math.min(1080 * s, layout.width() - 40 * s);
    boolean wide = width >= 900 * s;
    int half = wide ? (rows.size() + 1) / 2 : rows.size();
    float wanted = (90 + 23 * half + 24 * state.input().cautions().size()) * s;
    float height = Math.min(wanted, layout.height() - 40 * s);
    float x = (layout.width() - width) / 2;
    float y = (layout.height() - height) / 2;
    ImGui.setNextWindowFocus();
    Panels.begin("help", x, y, width, height, ImGuiWindowFlags.NoFocusOnAppearing);
    ImDrawList list = ImGui.getWindowDrawList();
    list.addRect(x, y, x + width, y + height, PaperStyle.ink(palette.softInk()));
    ImGui.setCursorPos(28 * s, 20 * s);
    ImGui.beginChild("keys", width - 40 * s, height - 36 * s);
    ImGui.pushFont(style.title());
    ImGui.textUnformatted("Keys");
    ImGui.popFont();
    float top = ImGui.getCursorPosY() + 4 * s;
    float column = (width - 56 * s) / 2;
    for (int i = 0; i < rows.size(); i++) {
      KeyTable.Row row = rows.get(i);
      float left = i < half ? 0 : column;
      ImGui.setCursorPos(left, top + (i % half) * 23 * s);
      ImGui.textUnformatted(row.keys());
      ImGui.sameLine(left + 150 * s);
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
      ImGui.textUnformatted(row.words());
      ImGui.popStyleColor();
    }
    ImGui.setCursorPos(0, top + half * 23 * s + 8 * s);
    ImGui.pushFont(style.small());
    for (String caution : state.input().cautions()) {
      Panels.wrapped(caution);
    }
    ImGui.popFont();
    ImGui.endChild();
    ImGui.end();
  }
}
