package flankfit.window;

import imgui.ImDrawList;
import imgui.ImGui;
import imgui.flag.ImGuiCol;
import imgui.flag.ImGuiWindowFlags;
import java.util.List;

/**
 * What went wrong: what, where, why, how to mend it; as high as that needs, and with a bar to
 * scroll where there is not so much room. The sheet below stays as it was.
 */
final class ProblemPanel {
  /** Room above, and below for the row that tells how it goes away (logical px). */
  private static final float ABOVE = 14;

  private static final float BELOW = 34;

  /** Height of an error without broken rows, until it is drawn (logical px). */
  private static final float USUAL = 84;

  private final ViewState state;
  private List<Problem> shown = List.of();
  private Layout shownIn = new Layout(1, 1, 1);
  private float needed;

  ProblemPanel(ViewState state) {
    this.state = state;
  }

  /** Whether a place (window units) lies in the panel. */
  boolean covers(Layout layout, double x, double y) {
    return !state.desk().problems().isEmpty()
        && x >= layout.problemsLeft()
        && x < layout.problemsLeft() + layout.problemsWidth()
        && y >= layout.problemsTop()
        && y < layout.problemsTop() + height(layout);
  }

  private float height(Layout layout) {
    return Math.min(needed + (ABOVE + BELOW) * layout.scale(), layout.problemsHeight());
  }

  void draw(Paper paper) {
    List<Problem> problems = state.desk().problems();
    if (!problems.equals(shown) || !paper.layout().equals(shownIn)) {
      shown = problems;
      shownIn = paper.layout();
      needed = problems.size() * USUAL * paper.scale();
    }
    if (problems.isEmpty()) {
      return;
    }
    float s = paper.scale();
    Layout layout = paper.layout();
    float width = layout.problemsWidth();
    float height = height(layout);
    float x = layout.problemsLeft();
    float y = layout.problemsTop();
    Panels.begin("problems", x, y, width, height, ImGuiWindowFlags.NoFocusOnAppearing);
    ImDrawList list = ImGui.getWindowDrawList();
    int alarm = PaperStyle.ink(paper.palette().alarm());
    list.addRect(x, y, x + width, y + height, alarm, 0, 0, 1.5f * s);
    list.addRectFilled(x, y, x + 5 * s, y + height, alarm);
    ImGui.setCursorPos(24 * s, ABOVE * s);
    ImGui.beginChild("all", width - 34 * s, height - (ABOVE + BELOW) * s);
    for (Problem problem : problems) {
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
    needed = ImGui.getCursorPosY();
    ImGui.endChild();
    ImGui.setCursorPos(24 * s, height - 24 * s);
    ImGui.pushFont(paper.style().small());
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(paper.palette().softInk()));
    String count = problems.size() > 1 ? problems.size() + " errors; " : "";
    ImGui.textUnformatted(count + "Esc takes this away; a mended file is read by itself");
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
