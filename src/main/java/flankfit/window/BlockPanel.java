package flankfit.window;

import flankfit.control.BlockTrace;
import flankfit.finding.Finding;
import flankfit.picture.Theme;
import flankfit.trace.BlockNotes;
import flankfit.trace.TraceRow;
import flankfit.trace.TraceRows;
import flankfit.unit.LengthUnit;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.flag.ImGuiCol;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the block at the position meant, word by word, and the blocks without moves before it. */
final class BlockPanel {
  private static final int MOST_BEFORE = 50;
  private static final int LABEL = 118;

  /** Blocks from which on it is told how many were executed. */
  private static final int SHOWN_FROM = 10_000;

  private final ViewState state;
  private ToldBlocks told;
  private long toldBeginning;
  private List<Shown> shown = List.of();
  private long shownChange = -1;
  private LengthUnit shownUnit = LengthUnit.MILLIMETRE;
  private BlockNotes notes = BlockNotes.none();
  private long shownContents = -1;
  private boolean waiting;
  private int shownReached;

  /** A block with its rows. */
  private record Shown(String where, String text, List<TraceRow> rows, List<Finding> findings) {}

  BlockPanel(ViewState state) {
    this.state = state;
    begin();
  }

  private void begin() {
    toldBeginning = state.loaded().beginning();
    told = new ToldBlocks(state.input().replay());
    shownChange = -1;
  }

  /** Whether the block at the position is still being got. */
  boolean isWaiting() {
    return state.explains() && waiting;
  }

  /** Whether what is waited for has come, or has come nearer. */
  boolean hasCome() {
    return isWaiting()
        && state.position() >= 0
        && (told.reached() / SHOWN_FROM != shownReached || !told.isComing(number()));
  }

  private int number() {
    return state.input().tape().block(state.position());
  }

  void draw(PaperStyle style, Layout layout, Theme.Palette palette) {
    if (!state.explains() || state.position() < 0) {
      return;
    }
    follow();
    float s = style.scale();
    float x = layout.sceneWidth();
    float y = layout.header() + layout.listingHeight();
    Panels.begin("block", x, y, layout.panel(), layout.stateHeight());
    ImDrawList list = ImGui.getWindowDrawList();
    Panels.rule(list, palette, x + 20 * s, y, layout.panel() - 40 * s, s);
    ImGui.setCursorPos(20 * s, 10 * s);
    ImGui.beginChild("meaning", layout.panel() - 24 * s, layout.stateHeight() - 14 * s);
    if (shown.isEmpty()) {
      soft(palette, waiting ? gettingIt() : "nothing is told of it");
    }
    for (int i = 0; i < shown.size(); i++) {
      if (i == 1) {
        ImGui.dummy(1, 4 * s);
        soft(palette, "before it, without a move");
      }
      block(shown.get(i), style, palette, s);
    }
    ImGui.endChild();
    ImGui.end();
  }

  private String gettingIt() {
    int reached = told.reached();
    shownReached = reached / SHOWN_FROM;
    return "executing the program once more"
        + (reached < SHOWN_FROM ? " …" : ": " + LoadWords.count(reached, "block"));
  }

  /** Words the block anew when the position or the unit changed, or when it has come. */
  private void follow() {
    if (toldBeginning != state.loaded().beginning()) {
      begin();
    }
    if (shownContents != state.contents()) {
      shownContents = state.contents();
      String file = state.input().file();
      List<String> lines = state.input().programLines();
      notes =
          new BlockNotes(state.input().findings(), name -> name.equals(file) ? lines : List.of());
      shownChange = -1;
    }
    boolean same = shownChange == state.positionChanges() && shownUnit == state.unit();
    if (same && !waiting) {
      return;
    }
    shownChange = state.positionChanges();
    shownUnit = state.unit();
    int number = number();
    Optional<BlockTrace> block = told.block(number);
    waiting = block.isEmpty() && told.isComing(number);
    if (waiting) {
      return;
    }
    List<Shown> all = new ArrayList<>();
    block.ifPresent(b -> all.add(shown(b)));
    for (int n = number - 1; n > 0 && all.size() <= MOST_BEFORE && !told.isComing(n); n--) {
      Optional<BlockTrace> before = told.block(n);
      if (before.isEmpty() || before.get().moves().size() > 0) {
        break;
      }
      all.add(shown(before.get()));
    }
    shown = List.copyOf(all);
  }

  private Shown shown(BlockTrace block) {
    String where = "line " + block.place().line() + ", block " + block.number();
    Optional<BlockTrace> before =
        block.number() < 2 ? Optional.empty() : told.block(block.number() - 1);
    boolean beforeIsKnown = block.number() < 2 || before.isPresent();
    List<String> messages = beforeIsKnown ? notes.messages(block, before) : List.of();
    List<Finding> findings = new ArrayList<>(block.findings());
    findings.addAll(notes.further(block));
    return new Shown(where, block.text(), TraceRows.of(block, state.unit(), messages), findings);
  }

  private static void soft(Theme.Palette palette, String text) {
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
    Panels.wrapped(text);
    ImGui.popStyleColor();
  }

  private static void block(Shown block, PaperStyle style, Theme.Palette palette, float s) {
    ImGui.pushFont(style.small());
    soft(palette, block.where());
    ImGui.popFont();
    ImGui.pushFont(style.listing());
    Panels.wrapped(block.text());
    ImGui.popFont();
    ImGui.pushFont(style.small());
    Optional<TraceRow.Kind> last = Optional.empty();
    for (TraceRow row : block.rows()) {
      if (last.isPresent() && last.get() != row.kind()) {
        ImGui.dummy(1, 2 * s);
      }
      last = Optional.of(row.kind());
      soft(palette, row.label());
      ImGui.sameLine(LABEL * s);
      Panels.wrapped(row.value().isEmpty() ? row.text() : row.text() + ", " + row.value());
    }
    for (Finding finding : block.findings()) {
      ImGui.dummy(1, 2 * s);
      int ink = FindingMarks.ink(finding.severity(), palette);
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(ink));
      ImGui.textUnformatted(FindingMarks.sign(finding.severity()));
      ImGui.sameLine(LABEL * s);
      Panels.wrapped(finding.code().name() + "  " + finding.what());
      ImGui.popStyleColor();
    }
    ImGui.popFont();
    ImGui.dummy(1, 4 * s);
  }
}
