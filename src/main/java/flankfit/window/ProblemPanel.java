package flankfit.window;

import imgui.ImDrawList;
import imgui.ImGui;
import imgui.flag.ImGuiCol;
import imgui.flag.ImGuiWindowFlags;

/** What went wrong: what, where, why, how to mend it. The sheet below stays as it was. */
final class ProblemPanel {
  /** So many are told in full. */
  static final int MOST = 6;

  private final ViewState state;

  ProblemPanel(ViewState state) {
    this.state = state;
  }

  void draw(Paper paper) {
    var problems = state.desk().problems();
    if (problems.isEmpty()) {
      return;
    }
    float s = paper.scale();
    Layout layout = paper.layout();
    int shown = Math.min(MOST, problems.size());
    float width = layout.problemsWidth();
    float height = layout.problemsHeight(shown);
    float x = layout.problemsLeft();
    float y = layout.problemsTop();
    Panels.begin("problems", x, y, width, height, ImGuiWindowFlags.NoFocusOnAppearing);
    ImDrawList list = ImGui.getWindowDrawList();
    int alarm = PaperStyle.ink(paper.palette().alarm());
    list.addRect(x, y, x + width, y + height, alarm, 0, 0, 1.5f * s);
    list.addRectFilled(x, y, x + 5 * s, y + height, alarm);
    ImGui.setCursorPos(24 * s, 14 * s);
    ImGui.beginChild("all", width - 34 * s, height - 44 * s);
    for (int i = 0; i < shown; i++) {
      Problem problem = problems.get(i);
      ImGui.pushFont(paper.style().strong());
      ImGui.pushStyleColor(ImGuiCol.Text, alarm);
      Panels.wrapped("■ " + problem.what());
      ImGui.popStyleColor();
      ImGui.popFont();
      row(paper, "where", problem.where());
      row(paper, "why", problem.why());
      row(paper, "fix", problem.fix());
      ImGui.dummy(1, 8 * s);
    }
    ImGui.endChild();
    ImGui.setCursorPos(24 * s, height - 28 * s);
    ImGui.pushFont(paper.style().small());
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(paper.palette().softInk()));
    int more = problems.size() - shown;
    ImGui.textUnformatted(
        (more > 0 ? "and " + more + " more; " : "")
            + "Esc takes this away; a mended file is read by itself");
    ImGui.popStyleColor();
    ImGui.popFont();
    ImGui.end();
  }

  private static void row(Paper paper, String label, String text) {
    if (!text.isEmpty()) {
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(paper.palette().softInk()));
      ImGui.textUnformatted(label);
      ImGui.popStyleColor();
      ImGui.sameLine(64 * paper.scale());
      Panels.wrapped(text);
    }
  }
}
