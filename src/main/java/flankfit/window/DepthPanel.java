package flankfit.window;

import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadGauge;
import flankfit.picture.Figures;
import flankfit.picture.Theme;
import flankfit.picture.Ticks;
import flankfit.setup.Hole;
import flankfit.setup.Stock;
import flankfit.unit.LengthUnit;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import java.util.Optional;

/**
 * What stands on the depth rule: the section of the thread with the GO gauge in it, the same with
 * the NO-GO gauge, and the pitch diameter along the depth. A hair line runs through all of them.
 */
final class DepthPanel {
  private static final float RULE = 58;
  private static final float HEAD = 26;
  static final float FOOT = 74;
  private static final float GAP = 12;
  private static final float LEAST_STRIP = 84;

  private final ViewState state;
  private final DepthFrame frame = new DepthFrame();
  private final GaugeColumn columns = new GaugeColumn(frame);
  private final SizeStrip strip;
  private final ImVec2 size = new ImVec2();
  private Optional<ThreadSection> section = Optional.empty();
  private Optional<ThreadAnswer> shownThread = Optional.empty();
  private Optional<WallShape> shownShape = Optional.empty();

  DepthPanel(ViewState state) {
    this.state = state;
    strip = new SizeStrip(state, frame);
  }

  private void follow() {
    Bench bench = state.gauge().bench();
    Bench.Shown shown = bench.shown();
    Optional<WallShape> shape =
        shown.isWhole() && bench.realEntry() == shown.entry() ? bench.shape() : Optional.empty();
    boolean same = shown.thread().equals(shownThread) && shape.equals(shownShape);
    if (same) {
      return;
    }
    shownThread = shown.thread();
    shownShape = shape;
    section =
        shown
            .thread()
            .flatMap(
                t ->
                    bench
                        .real()
                        .flatMap(r -> ThreadSection.of(t, r, hole(t), partBottom(), shape)));
  }

  private Optional<Hole> hole(ThreadAnswer thread) {
    return state.input().setup().holes().stream()
        .filter(h -> h.name().equals(thread.hole()))
        .findFirst();
  }

  private Optional<Double> partBottom() {
    return state.input().setup().stock().map(Stock::bottom);
  }

  void draw(Paper paper, GaugeRoom room) {
    follow();
    if (!room.hasDepth()) {
      return;
    }
    float s = paper.scale();
    float top = room.top() + HEAD * s;
    float bottom = room.bottom() - FOOT * s;
    ImDrawList list = ImGui.getWindowDrawList();
    if (section.isEmpty()) {
      list.addText(
          room.depthLeft(),
          top,
          PaperStyle.ink(paper.palette().softInk()),
          "no wall to try gauges in");
      return;
    }
    ThreadSection sec = section.get();
    frame.follow(
        shownThread.map(ThreadAnswer::hole).orElse(""),
        Math.max(sec.end(), sec.zBottom() - sec.spec().pitch()),
        sec.mouth(),
        top,
        bottom);
    float left = room.depthLeft() + RULE * s;
    float room3 = room.depthRight() - left - 2 * GAP * s;
    boolean hasStrip = room3 / 3 >= LEAST_STRIP * s;
    float wide = hasStrip ? room3 / 3 : (room3 + GAP * s) / 2;
    column(list, paper, sec, state.gauge().bench().go(), left, wide, top, bottom);
    float second = left + wide + GAP * s;
    column(list, paper, sec, state.gauge().bench().noGo(), second, wide, top, bottom);
    float third = second + wide + GAP * s;
    if (hasStrip) {
      shownThread.ifPresent(
          t -> strip.draw(list, paper, sec, t, third, room.depthRight(), top, bottom));
    }
    rule(list, paper, left, top, bottom);
    ImGui.setCursorScreenPos(room.depthLeft(), top);
    ImGui.invisibleButton("rule", RULE * s, bottom - top);
    zoomed(true);
    if (hasStrip) {
      ImGui.setCursorScreenPos(third, top);
      ImGui.invisibleButton("sizes", Math.max(1, room.depthRight() - third), bottom - top);
      zoomed(true);
    }
    hair(list, paper, room, left, top, bottom);
  }

  private void zoomed(boolean pans) {
    float wheel = ImGui.getIO().getMouseWheel();
    if (ImGui.isItemHovered() && wheel != 0) {
      frame.zoom(wheel, ImGui.getIO().getMousePosY());
    }
    if (pans && ImGui.isItemActive()) {
      frame.pan(ImGui.getIO().getMouseDeltaY());
    }
  }

  /** Shows the whole thread again. */
  void fit() {
    frame.fit();
  }

  private void column(
      ImDrawList list,
      Paper paper,
      ThreadSection sec,
      Plug plug,
      float left,
      float wide,
      float top,
      float bottom) {
    float s = paper.scale();
    Theme.Palette palette = paper.palette();
    columns.draw(list, palette, sec, plug, left, wide, top, bottom);
    String name = plug.kind().word() + (sec.spec().internal() ? " plug" : " ring");
    ImGui.pushFont(paper.style().strong());
    list.addText(left, top - 22 * s, PaperStyle.ink(palette.ink()), name);
    ImGui.calcTextSize(size, name);
    ImGui.popFont();
    // In a narrow column the clock moves into the gap beside it rather than over the name.
    float clock = Math.max(left + wide - 12 * s, left + size.x + 11 * s);
    clock(list, palette, plug, clock, top - 13 * s, s);
    hand(plug, sec, left, wide, top, bottom);
    words(paper, plug, left, wide, bottom);
  }

  /** How far round the hand has turned. */
  private void clock(ImDrawList list, Theme.Palette palette, Plug plug, float x, float y, float s) {
    int ink = PaperStyle.ink(palette.softInk());
    double angle = 2 * Math.PI * plug.turns();
    boolean right = shownThread.map(ThreadAnswer::rightHand).orElse(true);
    float dx = (float) ((right ? 1 : -1) * 7 * s * Math.sin(angle));
    float dy = (float) (-7 * s * Math.cos(angle));
    list.addCircle(x, y, 8 * s, ink, 0, s);
    list.addLine(x, y, x + dx, y + dy, PaperStyle.ink(palette.ink()), 1.8f * s);
  }

  private void hand(Plug plug, ThreadSection sec, float left, float wide, float top, float bottom) {
    ImGui.setCursorScreenPos(left, top);
    ImGui.invisibleButton(plug.kind().word(), Math.max(1, wide), Math.max(1, bottom - top));
    double perTurn = sec.spec().lead() * frame.perMm();
    float moved = ImGui.getIO().getMouseDeltaY();
    if (ImGui.isItemActive() && moved != 0) {
      state.gauge().twist(plug, moved / perTurn);
    }
    float wheel = ImGui.getIO().getMouseWheel();
    if (ImGui.isItemHovered() && wheel != 0) {
      if (ImGui.getIO().getKeyCtrl()) {
        frame.zoom(wheel, ImGui.getIO().getMousePosY());
      } else {
        state.gauge().twist(plug, wheel < 0 ? Plug.TWIST : -Plug.TWIST);
      }
    }
  }

  private void words(Paper paper, Plug plug, float left, float wide, float bottom) {
    float s = paper.scale();
    GaugeWords words = new GaugeWords(state.unit());
    String text =
        shownThread.map(t -> words.plug(plug, t, state.gauge().bench().real())).orElse("");
    boolean key = plug.turns() == 0 && !plug.isAtEnd();
    String letter = plug.kind() == ThreadGauge.Kind.GO ? "G" : "N";
    ImGui.pushFont(paper.style().small());
    ImGui.setCursorScreenPos(left, bottom + 8 * s);
    ImGui.beginChild("words " + letter, Math.max(1, wide + GAP * s - 4 * s), FOOT * s);
    Panels.wrapped(key ? text + "; " + letter + " turns it in" : text);
    ImGui.endChild();
    ImGui.popFont();
  }

  private void rule(ImDrawList list, Paper paper, float x, float top, float bottom) {
    float s = paper.scale();
    LengthUnit unit = state.unit();
    double zero = frame.row(state.scene().top());
    double perUnit = unit.toMillimetres(1) * frame.perMm();
    double step = Ticks.stepAtLeast(45 * s / perUnit);
    int decimals = Ticks.decimals(step);
    int soft = PaperStyle.ink(paper.palette().softInk());
    ImGui.pushFont(paper.style().small());
    for (long i = (long) Math.ceil((zero - bottom) / perUnit / step);
        i <= (long) Math.floor((zero - top) / perUnit / step);
        i++) {
      float y = (float) Math.rint(zero - i * step * perUnit);
      list.addRectFilled(x - 7 * s, y, x - 2 * s, y + 1, soft);
      String label = Figures.fixed(i * step, decimals);
      ImGui.calcTextSize(size, label);
      int ink = i == 0 ? PaperStyle.ink(paper.palette().ink()) : soft;
      list.addText(x - 11 * s - size.x, y - size.y / 2, ink, label);
    }
    String name = unit == LengthUnit.INCH ? "depth in" : "depth mm";
    ImGui.calcTextSize(size, name);
    list.addText(x - 8 * s - size.x, top - 20 * s, soft, name);
    ImGui.popFont();
    list.addRectFilled(
        x - 2 * s, top, x - 2 * s + 1, bottom, PaperStyle.ink(paper.palette().rule()));
  }

  private void hair(
      ImDrawList list, Paper paper, GaugeRoom room, float left, float top, float bottom) {
    double y = paper.row();
    boolean over =
        paper.column() >= room.depthLeft()
            && paper.column() < room.depthRight()
            && y >= top
            && y < bottom
            && state.desk().over() == Desk.Over.NOTHING;
    if (!over) {
      return;
    }
    float s = paper.scale();
    float at = (float) y;
    list.addRectFilled(
        left,
        at,
        room.depthRight(),
        at + Math.max(1, s),
        PaperStyle.ink(paper.palette().ink(), 0.55));
    double depth = frame.height(y) - state.scene().top();
    LengthUnit unit = state.unit();
    String label = Figures.fixed(unit.fromMillimetres(depth), unit == LengthUnit.INCH ? 3 : 2);
    ImGui.pushFont(paper.style().strong());
    ImGui.calcTextSize(size, label);
    list.addRectFilled(
        room.depthLeft(),
        at - 10 * s,
        left - 3 * s,
        at + 11 * s,
        PaperStyle.ink(paper.palette().ground(), 0.92));
    list.addText(
        left - 8 * s - size.x, at - size.y / 2, PaperStyle.ink(paper.palette().ink()), label);
    ImGui.popFont();
  }
}
