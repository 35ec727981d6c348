package flankfit.window;

import imgui.ImGui;
import imgui.flag.ImGuiCol;
import java.util.List;

/** Draws in place of a picture what is lacking for it, and what to write. */
final class LackWords {
  private LackWords() {}

  /** Draws into the panel under way, which fills the scene. */
  static void draw(Paper paper, String heading, List<MissingThread.Lack> lacks) {
    float s = paper.scale();
    float width = Math.min(620 * s, paper.layout().sceneWidth() - 60 * s);
    ImGui.setCursorPos(40 * s, 60 * s);
    ImGui.beginChild("missing", width, paper.layout().sceneHeight() - 80 * s);
    ImGui.pushFont(paper.style().title());
    Panels.wrapped(heading);
    ImGui.popFont();
    ImGui.dummy(1, 10 * s);
    for (MissingThread.Lack lack : lacks) {
      ImGui.pushFont(paper.style().strong());
      Panels.wrapped(lack.what());
      ImGui.popFont();
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(paper.palette().softInk()));
      Panels.wrapped(lack.fix());
      ImGui.popStyleColor();
      if (!lack.example().isEmpty()) {
        ImGui.pushFont(paper.style().listing());
        lack.example().lines().forEach(ImGui::textUnformatted);
        ImGui.popFont();
      }
      ImGui.dummy(1, 10 * s);
    }
    ImGui.endChild();
  }
}
