package flankfit.window;

import flankfit.picture.Theme;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiCol;

/**
 * The first caution below everything, and what was done last; the page of keys holds all cautions.
 */
final class FooterPanel {
  private final ViewState state;
  private final String caution;
  private final ImVec2 size = new ImVec2();

  FooterPanel(ViewState state) {
    this.state = state;
    var cautions = state.input().cautions();
    caution =
        cautions.isEmpty()
            ? ""
            : cautions.get(0) + (cautions.size() > 1 ? "   (? shows all cautions)" : "");
  }

  void draw(PaperStyle style, Layout layout, Theme.Palette palette) {
    float s = style.scale();
    float y = layout.height() - layout.footer();
    Panels.begin("footer", 0, y, layout.width(), layout.footer());
    Panels.rule(ImGui.getWindowDrawList(), palette, 0, y, layout.width(), s);
    ImGui.pushFont(style.small());
    String notice = state.desk().notice();
    ImGui.calcTextSize(size, notice);
    float left = Math.max(28 * s, layout.width() - size.x - 24 * s);
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
    ImGui.pushClipRect(0, y, notice.isEmpty() ? layout.width() : left - 20 * s, y + 40 * s, true);
    ImGui.setCursorPos(28 * s, 8 * s);
    ImGui.textUnformatted(caution);
    ImGui.popClipRect();
    ImGui.popStyleColor();
    ImGui.setCursorPos(left, 8 * s);
    ImGui.textUnformatted(notice);
    ImGui.popFont();
    ImGui.end();
  }
}
