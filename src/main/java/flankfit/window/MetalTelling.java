package flankfit.window;

import flankfit.finding.Finding;
import imgui.ImGui;
import imgui.flag.ImGuiCol;
import imgui.flag.ImGuiWindowFlags;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the Metal sheet shows, the work under way, and what touches, in the scene's upper left
 * corner. In a narrow scene it takes more rows; nothing of it is cut off.
 */
final class MetalTelling {
  private static final int MOST_TOUCHES = 3;

  /** Room left of the words for the rule of depth, and right of them (logical px). */
  private static final int LEFT = 86;

  private static final int RIGHT = 22;

  /** Room left and right of the words of a button (logical px). */
  private static final int BUTTON = 12;

  /** Height of a row, and of the room above and below a button's rows (logical px). */
  private static final int ROW = 17;

  private static final int AROUND = 8;

  private final ViewState state;
  private List<Row> rows = List.of();
  private float end;

  /** A text of some rows in one colour; a button where it leads to a line. */
  private record Row(List<String> texts, int colour, int line) {
    boolean isButton() {
      return line > 0;
    }

    float height() {
      return texts.size() * ROW + (isButton() ? AROUND : 0);
    }
  }

  MetalTelling(ViewState state) {
    this.state = state;
  }

  private MetalSide side() {
    return state.metal();
  }

  /** Where the words end, below the header (window units); for what stands below them. */
  float end() {
    return end;
  }

  /**
   * Draws it.
   *
   * @param seen the metal in the picture
   * @param exact whether walls of threads in it are the exact ones
   */
  void draw(Paper paper, Optional<MetalPicture> seen, boolean exact) {
    float s = paper.scale();
    Layout layout = paper.layout();
    ImGui.pushFont(paper.style().small());
    float room = Math.max(ROW * s, layout.sceneWidth() - (LEFT + RIGHT) * s);
    word(paper, seen, exact, room);
    float high = 3;
    for (Row row : rows) {
      high += row.height();
    }
    end = (4 + high) * s;
    ImGui.pushStyleColor(ImGuiCol.WindowBg, PaperStyle.ink(paper.palette().ground(), 0));
    Panels.begin(
        "metal-told",
        LEFT * s,
        layout.header() + 4 * s,
        room + RIGHT * s / 2,
        (high + 4) * s,
        ImGuiWindowFlags.NoBringToFrontOnFocus | ImGuiWindowFlags.NoBackground);
    float y = 3 * s;
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      plate(paper, row, y);
      ImGui.pushStyleColor(ImGuiCol.Text, row.colour());
      if (row.isButton()) {
        ImGui.setCursorPos(0, y);
        if (ImGui.button(String.join("\n", row.texts()) + "##touch" + i)) {
          state.toLine(row.line());
        }
      } else {
        for (int k = 0; k < row.texts().size(); k++) {
          ImGui.setCursorPos(6 * s, y + k * ROW * s);
          ImGui.textUnformatted(row.texts().get(k));
        }
      }
      ImGui.popStyleColor();
      y += row.height() * s;
    }
    ImGui.end();
    ImGui.popStyleColor();
    ImGui.popFont();
  }

  /** Paper below words that lie over the metal. */
  private static void plate(Paper paper, Row row, float y) {
    float s = paper.scale();
    float wide = 0;
    for (String text : row.texts()) {
      wide = Math.max(wide, Panels.width(text));
    }
    if (wide > 0) {
      float left = LEFT * s + 3 * s;
      float top = paper.layout().header() + 4 * s + y;
      ImGui.getWindowDrawList()
          .addRectFilled(
              left,
              top,
              left + wide + 6 * s,
              top + row.height() * s,
              PaperStyle.ink(paper.palette().ground(), 0.85));
    }
  }

  private void word(Paper paper, Optional<MetalPicture> seen, boolean exact, float room) {
    List<Row> now = new ArrayList<>();
    int soft = PaperStyle.ink(paper.palette().softInk());
    int ink = PaperStyle.ink(paper.palette().ink());
    MetalWords words = new MetalWords(state.unit());
    List<String> parts = seen.map(p -> words.shown(p, exact)).orElse(List.of());
    String together = String.join(" · ", parts);
    List<String> shown = new ArrayList<>();
    if (Panels.width(together) <= room) {
      shown.add(together);
    } else {
      parts.forEach(part -> shown.addAll(Panels.rows(part, room)));
    }
    if (!together.isEmpty()) {
      now.add(new Row(shown, soft, 0));
    }
    if (!side().progress().isEmpty()) {
      now.add(new Row(Panels.rows(side().progress(), room), ink, 0));
    }
    int alarm = PaperStyle.ink(paper.palette().alarm());
    side()
        .bench()
        .failure()
        .ifPresent(f -> now.add(new Row(Panels.rows("▲ " + f, room), alarm, 0)));
    touches(paper, room, now);
    rows = List.copyOf(now);
  }

  private void touches(Paper paper, float room, List<Row> now) {
    List<Finding> touching = side().touching();
    float within = room - BUTTON * paper.scale();
    for (Finding finding : touching.subList(0, Math.min(MOST_TOUCHES, touching.size()))) {
      int line = Math.max(0, finding.place().line());
      String text =
          FindingMarks.sign(finding.severity())
              + "  "
              + finding.code().name()
              + "  "
              + (line > 0 ? "line " + line + ": " : "")
              + finding.what();
      int colour = PaperStyle.ink(FindingMarks.ink(finding.severity(), paper.palette()));
      now.add(new Row(Panels.rows(text, within), colour, line));
    }
    int more = touching.size() - MOST_TOUCHES;
    if (more > 0) {
      String text = "and " + more + " more: flankfit metal tells all";
      now.add(new Row(Panels.rows(text, room), PaperStyle.ink(paper.palette().ink()), 0));
    }
  }
}
