package flankfit.window;

import flankfit.odds.Observation;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.flag.ImGuiCol;
import imgui.flag.ImGuiWindowFlags;

/** Over the Gauge sheet: a line in which a wear entry is typed, or what a gauge said. */
final class SeenPanel {
  private static final float ROW = 26;

  private final ViewState state;

  SeenPanel(ViewState state) {
    this.state = state;
  }

  void draw(Paper paper) {
    Desk.Over over = state.desk().over();
    if (over == Desk.Over.WEAR) {
      wear(paper);
    } else if (over == Desk.Over.SEEN) {
      seen(paper);
    }
  }

  private ImDrawList begin(Paper paper, float height) {
    float s = paper.scale();
    float width = Math.min(560 * s, paper.layout().width() - 40 * s);
    float x = (paper.layout().width() - width) / 2;
    float y = 120 * s;
    ImGui.setNextWindowFocus();
    Panels.begin("entry", x, y, width, height, ImGuiWindowFlags.NoFocusOnAppearing);
    ImDrawList list = ImGui.getWindowDrawList();
    list.addRect(
        x, y, x + width, y + height, PaperStyle.ink(paper.palette().softInk()), 0, 0, 1.2f * s);
    return list;
  }

  private void wear(Paper paper) {
    float s = paper.scale();
    ImDrawList list = begin(paper, 86 * s);
    String register =
        state.gauge().bench().dial().map(d -> d.offset().register()).orElse("register");
    line(list, paper, register + " wear, " + state.unit().symbol(), "such as -0.012 or -0.0005 in");
    hint(paper, 56 * s, "Enter turns the dial there; the sheet stays as it is until Ctrl+S");
    ImGui.end();
  }

  private void line(ImDrawList list, Paper paper, String name, String empty) {
    float s = paper.scale();
    float x = ImGui.getWindowPosX();
    float y = ImGui.getWindowPosY();
    list.addText(x + 20 * s, y + 16 * s, PaperStyle.ink(paper.palette().softInk()), name);
    EntryLine.draw(list, paper, x + 150 * s, y + 16 * s, state.desk().entry(), empty);
    Panels.rule(list, paper.palette(), x + 14 * s, y + 44 * s, ImGui.getWindowWidth() - 28 * s, s);
  }

  private void hint(Paper paper, float row, String words) {
    ImGui.pushFont(paper.style().small());
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(paper.palette().softInk()));
    ImGui.setCursorPos(20 * paper.scale(), row);
    ImGui.beginChild("hint", ImGui.getWindowWidth() - 40 * paper.scale(), 44 * paper.scale());
    Panels.wrapped(words);
    ImGui.endChild();
    ImGui.popStyleColor();
    ImGui.popFont();
  }

  private void seen(Paper paper) {
    float s = paper.scale();
    Problem complaint = state.gauge().said().complaint();
    boolean wrong = !complaint.what().isEmpty();
    int rows = Said.CHOICES.size();
    ImDrawList list = begin(paper, (58 + rows * ROW + 56 + (wrong ? 92 : 0)) * s);
    line(list, paper, "a gauge said", "pick below, or type what was seen");
    float x = ImGui.getWindowPosX();
    float y = ImGui.getWindowPosY() + 52 * s;
    float width = ImGui.getWindowWidth();
    int chosen = Math.min(rows - 1, state.desk().chosen());
    boolean empty = state.desk().entry().text().isBlank();
    for (int i = 0; i < rows; i++) {
      ImGui.setCursorScreenPos(x + 8 * s, y + i * ROW * s);
      boolean clicked = ImGui.invisibleButton("choice" + i, width - 16 * s, ROW * s);
      boolean on = empty && i == chosen;
      if (on || ImGui.isItemHovered()) {
        list.addRectFilled(
            x + 8 * s,
            y + i * ROW * s,
            x + width - 8 * s,
            y + (i + 1) * ROW * s,
            PaperStyle.ink(paper.palette().shade()));
      }
      if (on) {
        list.addRectFilled(
            x + 8 * s,
            y + i * ROW * s,
            x + 11 * s,
            y + (i + 1) * ROW * s,
            PaperStyle.ink(paper.palette().ink()));
      }
      Said.Choice choice = Said.CHOICES.get(i);
      int soft = PaperStyle.ink(paper.palette().softInk());
      list.addText(
          x + 20 * s, y + (i * ROW + 4) * s, PaperStyle.ink(paper.palette().ink()), choice.words());
      list.addText(x + 300 * s, y + (i * ROW + 4) * s, soft, choice.typed());
      if (clicked) {
        state.gauge().seen("", i);
      }
    }
    hint(paper, (60 + rows * ROW) * s, "or type: " + Observation.FORMS);
    if (wrong) {
      complaint(paper, complaint, (106 + rows * ROW) * s);
    }
    ImGui.end();
  }

  private void complaint(Paper paper, Problem complaint, float row) {
    float s = paper.scale();
    ImGui.setCursorPos(20 * s, row);
    ImGui.beginChild("complaint", ImGui.getWindowWidth() - 40 * s, 92 * s);
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(paper.palette().alarm()));
    Panels.wrapped("■ " + complaint.what());
    ImGui.popStyleColor();
    Panels.wrapped("why  " + complaint.why());
    ImGui.endChild();
  }
}
