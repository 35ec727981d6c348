package flankfit.window;

import flankfit.picture.Theme;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.flag.ImGuiCol;
import imgui.flag.ImGuiWindowFlags;

/** All keys and all cautions, laid over the window. */
final class HelpPanel {
  private static final String[][] KEYS = {
    {"→  n", "next block"},
    {"←  p", "block before"},
    {"Home  End", "first block, last block"},
    {"Page ↑  ↓", "twenty lines back, on"},
    {"click a line", "go to the block it makes"},
    {"drag the band", "go to a time"},
    {"1  2  3  4", "plan, front, side, iso"},
    {"drag", "turn the part"},
    {"shift + drag", "shift the paper; the middle button does the same"},
    {"wheel", "zoom at the pointer"},
    {"F", "show the whole part"},
    {"C", "show what is cut, closely"},
    {"B", "what the block meant, word by word, or the state"},
    {"U", "millimetres or inches"},
    {"T", "light or dark paper"},
    {"R", "read the program anew"},
    {"H  F1", "this page"},
    {"Esc", "stop what is under way, else close"},
    {"Q", "close"},
  };

  private final ViewState state;

  HelpPanel(ViewState state) {
    this.state = state;
  }

  void draw(PaperStyle style, Layout layout, Theme.Palette palette) {
    if (!state.help()) {
      return;
    }
    float s = style.scale();
    float width = Math.min(620 * s, layout.width() - 40 * s);
    float height =
        Math.min((462 + 20 * state.input().cautions().size()) * s, layout.height() - 40 * s);
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
    ImGui.dummy(1, 2 * s);
    for (String[] key : KEYS) {
      ImGui.textUnformatted(key[0]);
      ImGui.sameLine(150 * s);
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
      ImGui.textUnformatted(key[1]);
      ImGui.popStyleColor();
    }
    ImGui.dummy(1, 6 * s);
    ImGui.pushFont(style.small());
    for (String caution : state.input().cautions()) {
      Panels.wrapped(caution);
    }
    ImGui.popFont();
    ImGui.endChild();
    ImGui.end();
  }
}
