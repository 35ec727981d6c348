package flankfit.window;

import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.unit.LengthUnit;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiCol;

/** The sentence above everything, and the words that turn, fit and change the paper. */
final class HeaderPanel {
  private final ViewState state;
  private final ImVec2 size = new ImVec2();

  HeaderPanel(ViewState state) {
    this.state = state;
  }

  void draw(PaperStyle style, Layout layout, Theme.Palette palette) {
    float s = style.scale();
    String sentence = state.sentence();
    Panels.begin("header", 0, 0, layout.width(), layout.header());
    ImGui.pushFont(style.title());
    ImGui.calcTextSize(size, sentence);
    ImGui.popFont();
    boolean fits = size.x < layout.width() - 56 * s;
    ImGui.pushFont(fits ? style.title() : style.strong());
    ImGui.setCursorPos(28 * s, 14 * s);
    ImGui.textUnformatted(sentence);
    ImGui.popFont();
    ImGui.pushFont(style.small());
    ImGui.setCursorPos(22 * s, 47 * s);
    for (View view : View.values()) {
      int key = view == View.PLAN ? 1 : view == View.FRONT ? 2 : view == View.SIDE ? 3 : 4;
      boolean on = state.standing().isPresent() && state.standing().get() == view;
      if (word(palette, s, key + "  " + view.word(), on)) {
        state.look(view);
      }
    }
    ImGui.sameLine(0, 26 * s);
    if (word(palette, s, "F  whole part", false)) {
      state.fit(false);
    }
    if (word(palette, s, "C  cut", false)) {
      state.fit(true);
    }
    if (word(
        palette, s, state.theme() == Theme.LIGHT ? "T  dark paper" : "T  light paper", false)) {
      state.otherTheme();
    }
    if (word(palette, s, state.unit() == LengthUnit.INCH ? "U  mm" : "U  inch", false)) {
      state.otherUnit();
    }
    if (word(palette, s, "B  block", state.explains())) {
      state.toggleExplanation();
    }
    if (word(palette, s, "H  keys", state.help())) {
      state.toggleHelp();
    }
    if (state.isLoading()) {
      if (word(palette, s, "Esc  stop", false)) {
        state.stop();
      }
    } else if (word(palette, s, "R  read anew", false)) {
      state.reload();
    }
    String file = state.input().file();
    float wordsEnd = ImGui.getItemRectMaxX();
    ImGui.calcTextSize(size, file);
    float left = layout.width() - size.x - 24 * s;
    if (!file.equals(sentence) && left > wordsEnd + 12 * s) {
      ImGui.setCursorPos(left, 47 * s);
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
      ImGui.textUnformatted(file);
      ImGui.popStyleColor();
    }
    ImGui.popFont();
    ImDrawList list = ImGui.getWindowDrawList();
    Panels.rule(list, palette, 0, layout.header() - s, layout.width(), s);
    Loaded loaded = state.loaded();
    if (state.isLoading() && loaded.share() > 0) {
      float length = (float) (loaded.share() * layout.width());
      int ink = PaperStyle.ink(palette.ink());
      list.addRectFilled(0, layout.header() - 3 * s, length, layout.header(), ink);
    }
    ImGui.end();
  }

  private boolean word(Theme.Palette palette, float s, String text, boolean on) {
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(on ? palette.ink() : palette.softInk()));
    boolean pressed = ImGui.button(text);
    ImGui.popStyleColor();
    if (on) {
      float x = ImGui.getItemRectMinX() + 6 * s;
      float y = ImGui.getItemRectMaxY() - s;
      float end = ImGui.getItemRectMaxX() - 6 * s;
      ImGui.getWindowDrawList().addRectFilled(x, y, end, y + 2 * s, PaperStyle.ink(palette.ink()));
    }
    ImGui.sameLine(0, 4 * s);
    return pressed;
  }
}
