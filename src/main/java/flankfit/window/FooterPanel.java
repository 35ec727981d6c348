package flankfit.window;

import flankfit.picture.Theme;
import imgui.ImGui;
import imgui.flag.ImGuiCol;

/** The first caution below everything; the help holds them all. */
final class FooterPanel {
  private final String caution;

  FooterPanel(ViewState state) {
    var cautions = state.input().cautions();
    caution =
        cautions.isEmpty()
            ? ""
            : cautions.get(0) + (cautions.size() > 1 ? "   (H shows all cautions)" : "");
  }

  void draw(PaperStyle style, Layout layout, Theme.Palette palette) {
    float s = style.scale();
    float y = layout.height() - layout.footer();
    Panels.begin("footer", 0, y, layout.width(), layout.footer());
    Panels.rule(ImGui.getWindowDrawList(), palette, 0, y, layout.width(), s);
    ImGui.pushFont(style.small());
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
    ImGui.setCursorPos(28 * s, 8 * s);
    ImGui.textUnformatted(caution);
    ImGui.popStyleColor();
    ImGui.popFont();
    ImGui.end();
  }
}
