package flankfit.window;

import flankfit.gauge.ThreadAnswer;
import flankfit.picture.Diagram;
import flankfit.picture.LadderPicture;
import flankfit.picture.LiveDiagram;
import flankfit.picture.SectionPicture;
import flankfit.picture.Theme;
import flankfit.unit.LengthUnit;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiCol;
import java.util.List;
import java.util.Optional;

/**
 * How it will fit: the tolerance ladder with the wear dial beside it, both gauges in the thread on
 * the depth rule, and the verdict in words above.
 */
final class GaugeSheet implements Sheet {
  private static final int LEAST_SECTION = 420;

  private final ViewState state;
  private final DialPanel dial;
  private final DepthPanel depth;
  private final ImVec2 size = new ImVec2();
  private LiveDiagram ink;
  private Optional<Diagram> diagram = Optional.empty();
  private Optional<Drawn> drawn = Optional.empty();
  private Optional<LadderPicture.Range> range = Optional.empty();
  private Optional<ThreadAnswer> rangeOf = Optional.empty();

  /** What a diagram was made of. */
  private record Drawn(
      ThreadAnswer thread,
      boolean ladder,
      Optional<LadderPicture.Scatter> scatter,
      LengthUnit unit,
      int width,
      int height,
      Theme theme) {}

  /**
   * Prepares shaders and letters with the current context.
   *
   * @param contentScale pixels a logical pixel (1)
   */
  GaugeSheet(ViewState state, double contentScale) {
    this.state = state;
    dial = new DialPanel(state);
    depth = new DepthPanel(state);
    ink = new LiveDiagram(contentScale);
  }

  @Override
  public SheetName name() {
    return SheetName.GAUGE;
  }

  private Bench bench() {
    return state.gauge().bench();
  }

  private GaugeRoom room(Layout layout) {
    return GaugeRoom.of(layout, state.gauge().hasDial(), isSection());
  }

  /** The section needs all the room there is: its two axes have one scale. */
  private boolean isSection() {
    return state.gauge().picture() == GaugeSide.Picture.SECTION
        && bench().shown().thread().flatMap(ThreadAnswer::surface).isPresent();
  }

  /** The scale of the ladder: that of the thread as the sheet has it, so that it stands still. */
  private Optional<LadderPicture.Range> range() {
    Optional<ThreadAnswer> base = bench().base();
    if (!base.equals(rangeOf)) {
      rangeOf = base;
      range = base.map(LadderPicture.Range::of);
    }
    return range;
  }

  @Override
  public void picture(Paper paper, int below) {
    GaugeRoom room = room(paper.layout());
    Optional<ThreadAnswer> thread = bench().shown().thread();
    if (thread.isEmpty() || range().isEmpty()) {
      return;
    }
    make(room, thread.get());
    float sceneEnd = paper.layout().header() + paper.layout().sceneHeight();
    int x = Math.round(room.dialRight() * paper.pixels());
    int y = below + Math.round((sceneEnd - room.bottom()) * paper.pixels());
    diagram.ifPresent(d -> ink.draw(d, x, y));
  }

  private void make(GaugeRoom room, ThreadAnswer thread) {
    boolean section = isSection();
    int width = room.ladderWidth();
    if (section) {
      width = Math.max(LEAST_SECTION, width);
    }
    Drawn wanted =
        new Drawn(
            thread,
            !section,
            section ? Optional.empty() : scatter(),
            state.unit(),
            width,
            room.ladderHeight(),
            state.theme());
    if (drawn.isPresent() && drawn.get().equals(wanted)) {
      return;
    }
    drawn = Optional.of(wanted);
    diagram =
        Optional.of(
            section
                ? SectionPicture.bare(
                    thread,
                    thread.surface().orElseThrow(),
                    wanted.unit(),
                    wanted.width(),
                    wanted.height(),
                    wanted.theme())
                : LadderPicture.bare(
                    thread,
                    wanted.scatter(),
                    range().orElseThrow(),
                    wanted.unit(),
                    wanted.width(),
                    wanted.height(),
                    wanted.theme()));
  }

  /** What a batch scatters, if it was reckoned for the entry that is shown. */
  private Optional<LadderPicture.Scatter> scatter() {
    return bench().hasOdds() && bench().shown().isCurrent()
        ? bench().odds().map(o -> new LadderPicture.Scatter(o.pitchLow(), o.pitchHigh()))
        : Optional.empty();
  }

  @Override
  public void words(Paper paper) {
    Layout layout = paper.layout();
    ImGui.pushStyleColor(ImGuiCol.WindowBg, PaperStyle.ink(paper.palette().ground(), 0));
    Panels.begin("gauge", 0, layout.header(), layout.sceneWidth(), layout.sceneHeight());
    GaugeRoom room = room(layout);
    if (bench().base().isEmpty()) {
      LackWords.draw(
          paper, MissingThread.heading(state.loaded()), MissingThread.of(state.loaded()));
    } else {
      sentences(paper);
      if (room.hasDial()) {
        range().ifPresent(r -> dial.draw(paper, room, r));
      }
      if (bench().shown().thread().isEmpty()) {
        stopped(paper, room);
      }
      depth.draw(paper, room);
    }
    ImGui.end();
    ImGui.popStyleColor();
  }

  private void stopped(Paper paper, GaugeRoom room) {
    ImGui.getWindowDrawList()
        .addText(
            room.dialRight() + 40 * paper.scale(),
            room.top() + 60 * paper.scale(),
            PaperStyle.ink(paper.palette().alarm()),
            "▲ with this entry the program stops, or cuts no such thread");
  }

  private void sentences(Paper paper) {
    float s = paper.scale();
    Bench.Shown shown = bench().shown();
    GaugeWords words = new GaugeWords(state.unit());
    ImDrawList list = ImGui.getWindowDrawList();
    float top = paper.layout().header() + 12 * s;
    holes(paper, top);
    if (shown.thread().isEmpty()) {
      return;
    }
    ThreadAnswer thread = shown.thread().get();
    int ink =
        PaperStyle.ink(GaugeWords.isGood(thread) ? paper.palette().ink() : paper.palette().alarm());
    ImGui.pushFont(paper.style().title());
    list.addText(28 * s, top + 22 * s, ink, GaugeWords.verdict(thread));
    ImGui.popFont();
    because(paper, list, top, words.because(thread));
    ImGui.pushFont(paper.style().small());
    String failure = bench().failure().map(f -> " · ▲ " + f).orElse("");
    list.addText(
        28 * s,
        top + 70 * s,
        PaperStyle.ink(paper.palette().softInk()),
        words.entry(bench()) + failure);
    ImGui.popFont();
  }

  /** In one row, or in two small ones where that is too wide. */
  private void because(Paper paper, ImDrawList list, float top, String text) {
    float s = paper.scale();
    int ink = PaperStyle.ink(paper.palette().ink());
    ImGui.pushFont(paper.style().body());
    ImGui.calcTextSize(size, text);
    boolean fits = size.x < paper.layout().sceneWidth() - 40 * s;
    if (fits) {
      list.addText(28 * s, top + 48 * s, ink, text);
    }
    ImGui.popFont();
    if (!fits) {
      ImGui.pushFont(paper.style().small());
      float y = top + 43 * s;
      for (String row : text.split(" · ", 2)) {
        list.addText(28 * s, y, ink, row);
        y += 14 * s;
      }
      ImGui.popFont();
    }
  }

  /** The holes to choose among; the one in hand underlined. */
  private void holes(Paper paper, float top) {
    float s = paper.scale();
    List<ThreadAnswer> threads = bench().threads();
    String held = bench().base().map(ThreadAnswer::hole).orElse("");
    ImGui.pushFont(paper.style().small());
    ImGui.setCursorScreenPos(22 * s, top - 5 * s);
    float room = paper.layout().sceneWidth() - 120 * s;
    for (ThreadAnswer thread : threads) {
      ImGui.calcTextSize(size, thread.hole());
      if (ImGui.getCursorPosX() + size.x > room) {
        ImGui.textUnformatted("…  Tab goes on");
        break;
      }
      boolean on = thread.hole().equals(held);
      ImGui.pushStyleColor(
          ImGuiCol.Text, PaperStyle.ink(on ? paper.palette().ink() : paper.palette().softInk()));
      if (ImGui.button(thread.hole()) && !on) {
        bench().pick(thread.hole());
      }
      ImGui.popStyleColor();
      if (on) {
        float x = ImGui.getItemRectMinX() + 6 * s;
        float y = ImGui.getItemRectMaxY() - 2 * s;
        ImGui.getWindowDrawList()
            .addRectFilled(
                x,
                y,
                ImGui.getItemRectMaxX() - 6 * s,
                y + 2 * s,
                PaperStyle.ink(paper.palette().ink()));
      }
      ImGui.sameLine(0, 2 * s);
    }
    ImGui.popFont();
  }

  @Override
  public boolean isUnfinished() {
    return false;
  }

  @Override
  public Optional<Pick> pick(double column, double row) {
    return Optional.empty();
  }

  @Override
  public void rescale(double contentScale) {
    ink.close();
    ink = new LiveDiagram(contentScale);
    drawn = Optional.empty();
  }

  @Override
  public void close() {
    ink.close();
  }
}
