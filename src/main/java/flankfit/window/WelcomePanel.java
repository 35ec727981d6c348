package flankfit.window;

import imgui.ImDrawList;
import imgui.ImGui;
import imgui.flag.ImGuiCol;
import imgui.flag.ImGuiWindowFlags;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What to begin with: the samples and the programs opened before, in one list. */
final class WelcomePanel {
  private final ViewState state;
  private List<Row> rows = List.of();
  private List<Path> shownRecent = List.of();
  private boolean made;

  /** A program to open. */
  private record Row(String name, String words, Runnable opens) {}

  WelcomePanel(ViewState state) {
    this.state = state;
  }

  private void follow() {
    List<Path> recent = state.recent();
    if (made && recent.equals(shownRecent)) {
      return;
    }
    made = true;
    shownRecent = recent;
    List<Row> all = new ArrayList<>();
    for (Path file : recent) {
      Path folder = file.getParent();
      all.add(
          new Row(
              String.valueOf(file.getFileName()),
              folder == null ? "" : folder.toString(),
              () -> state.opening().open(file)));
    }
    for (Samples.Sample sample : Samples.all()) {
      all.add(new Row(sample.name(), sample.words(), () -> state.opening().open(sample)));
    }
    rows = List.copyOf(all);
  }

  /** Number of programs to choose from. */
  int count() {
    follow();
    return rows.size();
  }

  /** Opens the row that is chosen. */
  void run() {
    follow();
    int chosen = state.desk().chosen();
    if (chosen < rows.size()) {
      rows.get(chosen).opens().run();
    }
  }

  void draw(Paper paper) {
    if (!state.desk().isWelcome()) {
      return;
    }
    follow();
    float s = paper.scale();
    Layout layout = paper.layout();
    float y = layout.header();
    float height = layout.height() - y - layout.footer();
    Panels.begin("welcome", 0, y, layout.width(), height, ImGuiWindowFlags.NoFocusOnAppearing);
    float left = Math.max(28 * s, layout.width() / 2 - 420 * s);
    ImGui.setCursorPos(left, 18 * s);
    ImGui.beginChild("programs", layout.width() - 2 * left + 8 * s, height - 24 * s);
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(paper.palette().softInk()));
    Panels.wrapped(
        "Drop a milling program here, or choose one with ↑ ↓ and Enter, or by a click. Its setup sheet"
            + " NAME.setup.toml beside it is found by itself.");
    ImGui.popStyleColor();
    int recent = shownRecent.size();
    ImDrawList list = ImGui.getWindowDrawList();
    for (int i = 0; i < rows.size(); i++) {
      if (i == 0 && recent > 0) {
        heading(paper, "opened before");
      } else if (i == recent) {
        heading(paper, "samples");
      }
      row(list, paper, i);
    }
    ImGui.endChild();
    ImGui.end();
  }

  private static void heading(Paper paper, String words) {
    ImGui.dummy(1, 8 * paper.scale());
    ImGui.pushFont(paper.style().strong());
    ImGui.textUnformatted(words);
    ImGui.popFont();
  }

  private void row(ImDrawList list, Paper paper, int index) {
    float s = paper.scale();
    Row row = rows.get(index);
    boolean chosen = state.desk().chosen() == index;
    float x = ImGui.getCursorScreenPosX();
    float y = ImGui.getCursorScreenPosY();
    float width = ImGui.getContentRegionAvailX();
    ImGui.pushID(index);
    boolean clicked = ImGui.invisibleButton("program", Math.max(1, width), 27 * s);
    ImGui.popID();
    if (chosen || ImGui.isItemHovered()) {
      list.addRectFilled(x, y, x + width, y + 27 * s, PaperStyle.ink(paper.palette().shade()));
    }
    if (chosen) {
      list.addRectFilled(x, y, x + 3 * s, y + 27 * s, PaperStyle.ink(paper.palette().ink()));
    }
    list.addText(x + 12 * s, y + 5 * s, PaperStyle.ink(paper.palette().ink()), row.name());
    list.addText(x + 250 * s, y + 5 * s, PaperStyle.ink(paper.palette().softInk()), row.words());
    if (clicked) {
      row.opens().run();
    }
  }
}
