package flankfit.window;

import flankfit.picture.Camera;
import flankfit.picture.Figures;
import flankfit.picture.Theme;
import flankfit.unit.LengthUnit;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;

/** The hair line under the pointer wherever Z runs upright, with the depth it lies at. */
final class DepthLine {
  private final ViewState state;
  private final ImVec2 size = new ImVec2();
  private double shownDepth = Double.NaN;
  private LengthUnit shownUnit = LengthUnit.MILLIMETRE;
  private String label = "";

  DepthLine(ViewState state) {
    this.state = state;
  }

  /**
   * Draws the line.
   *
   * @param x pointer (window units)
   * @param y pointer, downwards (window units)
   * @param pixels pixels a window unit (1)
   */
  void draw(
      PaperStyle style, Layout layout, Theme.Palette palette, double x, double y, float pixels) {
    Camera camera = state.viewpoint().camera();
    if (!camera.showsDepth()
        || !layout.inScene(x, y)
        || state.desk().over() != Desk.Over.NOTHING
        || state.desk().isWelcome()) {
      return;
    }
    float s = style.scale();
    word(DepthScale.of(state, layout, pixels).depthAt(y));
    ImDrawList list = ImGui.getBackgroundDrawList();
    float at = (float) y;
    list.addRectFilled(
        66 * s,
        at,
        layout.sceneWidth() - 14 * s,
        at + Math.max(1, s),
        PaperStyle.ink(palette.ink(), 0.55));
    ImGui.pushFont(style.strong());
    ImGui.calcTextSize(size, label);
    float left = 66 * s - size.x - 6 * s;
    list.addRectFilled(0, at - 10 * s, 66 * s, at + 11 * s, PaperStyle.ink(palette.ground(), 0.92));
    list.addText(Math.max(2, left), at - size.y / 2, PaperStyle.ink(palette.ink()), label);
    ImGui.popFont();
  }

  private void word(double depth) {
    if (depth != shownDepth || shownUnit != state.unit()) {
      shownDepth = depth;
      shownUnit = state.unit();
      label = Figures.fixed(shownUnit.fromMillimetres(depth), shownUnit == LengthUnit.INCH ? 3 : 2);
    }
  }
}
