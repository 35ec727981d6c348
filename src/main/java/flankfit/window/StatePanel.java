package flankfit.window;

import flankfit.picture.Theme;
import imgui.ImDrawList;
import imgui.ImGui;
import java.util.List;

/** The control's state at the position: words and numbers in two columns, positions below. */
final class StatePanel {
  private final ViewState state;
  private long shownChange = -1;
  private long shownContents = -1;
  private String where = "";

  StatePanel(ViewState state) {
    this.state = state;
  }

  void draw(PaperStyle style, Layout layout, Theme.Palette palette) {
    if (state.explains() && state.position() >= 0) {
      return;
    }
    float s = style.scale();
    float x = layout.sceneWidth();
    float y = layout.header() + layout.listingHeight();
    Panels.begin("state", x, y, layout.panel(), layout.stateHeight());
    ImDrawList list = ImGui.getWindowDrawList();
    Panels.rule(list, palette, x + 20 * s, y, layout.panel() - 40 * s, s);
    if (state.position() < 0) {
      list.addText(x + 20 * s, y + 12 * s, PaperStyle.ink(palette.softInk()), noMove());
      ImGui.end();
      return;
    }
    word();
    int ink = PaperStyle.ink(palette.ink());
    int soft = PaperStyle.ink(palette.softInk());
    ImGui.pushFont(style.strong());
    list.addText(x + 20 * s, y + 10 * s, ink, where);
    ImGui.popFont();
    ImGui.pushFont(style.small());
    List<StateWords.Row> rows = state.course().stateRows();
    int half = rows.size() / 2;
    for (int i = 0; i < rows.size(); i++) {
      boolean wide = i < half || i == 2 * half;
      float left = x + 20 * s + (wide ? 0 : layout.panel() - 158 * s);
      float top = y + 36 * s + (i == 2 * half ? half : i % half) * 22 * s;
      list.addText(left, top, soft, rows.get(i).label());
      list.addText(left + (wide ? 86 : 58) * s, top, ink, rows.get(i).value());
    }
    ImGui.popFont();
    List<StateWords.Row> positions = state.course().positionRows();
    for (int i = 0; i < positions.size(); i++) {
      float top = y + 36 * s + ((half + 1) * 22 + 6 + i * 22) * s;
      ImGui.pushFont(style.small());
      list.addText(x + 20 * s, top, soft, positions.get(i).label());
      ImGui.popFont();
      ImGui.pushFont(style.listing());
      list.addText(x + 106 * s, top - s, ink, positions.get(i).value());
      ImGui.popFont();
    }
    ImGui.end();
  }

  private String noMove() {
    return state.isLoading()
        ? "no move yet"
        : state.loaded().whole() ? "the program makes no move" : "no move was executed";
  }

  private void word() {
    if (shownChange != state.positionChanges() || shownContents != state.contents()) {
      shownChange = state.positionChanges();
      shownContents = state.contents();
      var tape = state.input().tape();
      int last = tape.block(tape.size() - 1);
      where =
          "line "
              + LoadWords.number(state.line())
              + ", block "
              + LoadWords.number(tape.block(state.position()))
              + " of "
              + LoadWords.number(last)
              + (state.loaded().whole() ? "" : " so far");
    }
  }
}
