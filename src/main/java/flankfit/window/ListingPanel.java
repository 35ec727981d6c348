package flankfit.window;

import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.Tape;
import flankfit.picture.Theme;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiCol;
import imgui.flag.ImGuiWindowFlags;
import java.util.List;
import java.util.Optional;

/** The program as lines of text, findings marked beside their lines and told in full below. */
final class ListingPanel {
  private static final int ROW = 21;

  private final ViewState state;
  private final RowTexts texts = new RowTexts();
  private final ListingScroll scroll = new ListingScroll();
  private final ImVec2 size = new ImVec2();
  private FindingMarks marks = Survey.NONE.marks();
  private List<String> lines = List.of();
  private List<Finding> byWeight = List.of();
  private String[] summaries = {};
  private PaperStyle style;
  private Theme.Palette palette;
  private float width;
  private long shownChange = -1;
  private long shownContents = -1;
  private float shownHeight;
  private int shownFound;
  private final SearchLine search;

  ListingPanel(ViewState state) {
    this.state = state;
    search = new SearchLine(state);
    take();
  }

  private void take() {
    if (shownContents == state.contents()) {
      return;
    }
    shownContents = state.contents();
    marks = state.loaded().survey().marks();
    byWeight = marks.byWeight();
    summaries = byWeight.stream().map(this::summary).toArray(String[]::new);
    lines = state.input().programLines();
    texts.take(lines);
  }

  private String summary(Finding finding) {
    int line = marks.lineOf(finding);
    return FindingMarks.sign(finding.severity())
        + (line == 0 ? "  " : "  line " + line + "  ")
        + finding.what();
  }

  void draw(Paper paper) {
    take();
    style = paper.style();
    palette = paper.palette();
    Layout layout = paper.layout();
    float s = style.scale();
    float x = layout.sceneWidth();
    width = layout.panel();
    Panels.begin("program", x, layout.header(), width, layout.listingHeight());
    float searchHeight = search.height(paper);
    float height = linesHeight(layout, searchHeight);
    float told = layout.listingHeight() - height - 8 * s - searchHeight;
    search.draw(paper, x, layout.header());
    ImGui.setCursorPos(0, 8 * s + searchHeight);
    int flags = ImGuiWindowFlags.NoScrollbar | ImGuiWindowFlags.NoScrollWithMouse;
    ImGui.beginChild("lines", width, height, false, flags);
    int rows = Math.max(1, Math.round(height / (int) (ROW * s)));
    follow(height, rows);
    ImGui.pushFont(style.listing());
    for (int i = 0; i < rows && scroll.first() + i < lines.size(); i++) {
      ImGui.setCursorPos(0, i * (int) (ROW * s));
      row(scroll.first() + i);
    }
    ImGui.popFont();
    scroll.draw(width - 11 * s, 11 * s, height, lines.size(), rows, palette);
    ImGui.endChild();
    Panels.rule(
        ImGui.getWindowDrawList(),
        palette,
        x + 20 * s,
        layout.header() + layout.listingHeight() - told,
        width - 40 * s,
        s);
    ImGui.setCursorPos(20 * s, layout.listingHeight() - told + 8 * s);
    ImGui.beginChild("told", width - 40 * s, told - 10 * s);
    tell(s);
    ImGui.endChild();
    ImGui.end();
  }

  /** Room for the lines: whole rows only, the rest goes to what is told below. */
  private float linesHeight(Layout layout, float searchHeight) {
    float row = (int) (ROW * style.scale());
    float room = layout.listingHeight() - toldHeight(layout) - 8 * style.scale() - searchHeight;
    return Math.max(1, (int) (room / row)) * row;
  }

  private float toldHeight(Layout layout) {
    boolean here = !marks.at(state.line()).isEmpty();
    float wanted = (here ? 148 : 36 + 22 * Math.min(3, marks.all().size())) * style.scale();
    return Math.min(wanted, layout.listingHeight() * 0.5f);
  }

  /**
   * Keeps the current line in sight after a step or in less room, and leaves the hand alone
   * otherwise.
   */
  private void follow(float height, int rows) {
    int found = state.search().isOn() ? state.search().current() : 0;
    if (found != shownFound) {
      shownFound = found;
      if (found > 0) {
        scroll.show(found - 1, rows);
        return;
      }
    }
    if (shownChange == state.positionChanges() && shownHeight == height) {
      return;
    }
    shownChange = state.positionChanges();
    shownHeight = height;
    scroll.show(state.line() - 1, rows);
  }

  private void row(int index) {
    float s = style.scale();
    float x = ImGui.getCursorScreenPosX();
    float y = ImGui.getCursorScreenPosY();
    float height = (int) (ROW * s);
    ImDrawList list = ImGui.getWindowDrawList();
    boolean current = index + 1 == state.line();
    ImGui.pushID(index);
    if (ImGui.invisibleButton("line", width - 14 * s, height)) {
      state.toLine(index + 1);
    }
    ImGui.popID();
    if (current || ImGui.isItemHovered()) {
      list.addRectFilled(x, y, x + width, y + height, PaperStyle.ink(palette.shade()));
    }
    if (state.search().isOn() && state.search().holds(index + 1)) {
      boolean stands = index + 1 == state.search().current();
      float line = (stands ? 2 : 1) * s;
      int ink = PaperStyle.ink(stands ? palette.ink() : palette.softInk());
      list.addRect(x + 18 * s, y, x + width - 16 * s, y + height - s, ink, 0, 0, line);
    }
    if (current) {
      list.addRectFilled(x + 12 * s, y, x + 16 * s, y + height, PaperStyle.ink(hue()));
    }
    String number = texts.number(index);
    ImGui.calcTextSize(size, number);
    float begin = Math.max(58 * s, 20 * s + size.x);
    list.addText(x + begin - size.x, y + 2 * s, PaperStyle.ink(palette.softInk()), number);
    list.addText(x + begin + 14 * s, y + 2 * s, PaperStyle.ink(palette.ink()), texts.line(index));
    Optional<Severity> gravest = marks.gravest(index + 1);
    if (gravest.isPresent()) {
      String mark = FindingMarks.sign(gravest.get());
      ImGui.calcTextSize(size, mark);
      float left = x + width - size.x - 24 * s;
      int ground = current ? palette.shade() : palette.ground();
      list.addRectFilled(left - 8 * s, y, x + width, y + height, PaperStyle.ink(ground));
      list.addText(left, y + 2 * s, PaperStyle.ink(FindingMarks.ink(gravest.get(), palette)), mark);
    }
  }

  private int hue() {
    Tape tape = state.input().tape();
    boolean absolute = tape.state(state.position()).distance() == Distance.ABSOLUTE;
    return absolute ? palette.absolute() : palette.incremental();
  }

  private String summary() {
    return switch (state.loaded().stage()) {
      case NOTHING -> "no program yet";
      case READING, EXECUTING -> "findings come when all is executed";
      case CHECKING, GAUGING -> "so far " + marks.summary();
      case DONE -> marks.summary();
      case STOPPED, FAILED ->
          marks.all().isEmpty() ? "nothing was checked" : "not all was checked: " + marks.summary();
    };
  }

  private void tell(float s) {
    List<Finding> here = marks.at(state.line());
    if (here.isEmpty()) {
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
      ImGui.textUnformatted(summary());
      ImGui.popStyleColor();
      ImGui.pushFont(style.small());
      for (int i = 0; i < byWeight.size(); i++) {
        Finding finding = byWeight.get(i);
        ImGui.pushID(i);
        int ink = FindingMarks.ink(finding.severity(), palette);
        ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(ink));
        if (ImGui.selectable(summaries[i]) && marks.lineOf(finding) > 0) {
          state.toLine(marks.lineOf(finding));
        }
        ImGui.popStyleColor();
        ImGui.popID();
      }
      ImGui.popFont();
      return;
    }
    for (Finding finding : here) {
      int ink = FindingMarks.ink(finding.severity(), palette);
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(ink));
      ImGui.pushFont(style.strong());
      Panels.wrapped(FindingMarks.sign(finding.severity()) + " " + finding.code().name());
      ImGui.popFont();
      ImGui.popStyleColor();
      Panels.wrapped(finding.what());
      ImGui.pushFont(style.small());
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
      told("why", finding.why(), s);
      told("fix", finding.fix(), s);
      ImGui.popStyleColor();
      ImGui.popFont();
    }
  }

  private static void told(String label, String text, float s) {
    if (!text.isEmpty()) {
      ImGui.textUnformatted(label);
      ImGui.sameLine(34 * s);
      Panels.wrapped(text);
    }
  }
}
