package flankfit.window;

import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadGauge;
import flankfit.gauge.Travel;
import flankfit.picture.Colours;
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
  private static final float FOOT = 74;
  private static final float GAP = 12;
  private static final float LEAST_STRIP = 84;

  /** Scale from which on limits of size are told apart in the section (px a mm). */
  private static final double FINE = 55;

  private final ViewState state;
  private final DepthFrame frame = new DepthFrame();
  private final ImVec2 size = new ImVec2();
  private Optional<ThreadSection> section = Optional.empty();
  private Optional<ThreadAnswer> shownThread = Optional.empty();
  private Optional<WallShape> shownShape = Optional.empty();

  DepthPanel(ViewState state) {
    this.state = state;
  }

  private void follow() {
    Bench bench = state.gauge().bench();
    Bench.Shown shown = bench.shown();
    Optional<WallShape> shape =
        shown.isWhole() && bench.realEntry() == shown.entry() ? bench.shape() : Optional.empty();
    boolean same = is(shown.thread(), shownThread) && is(shape, shownShape);
    if (same) {
      return;
    }
    shownThread = shown.thread();
    shownShape = shape;
    section =
        shown
            .thread()
            .flatMap(t -> bench.real().flatMap(r -> ThreadSection.of(t, r, hole(t), partBottom(), shape)));
  }

  private static <T> boolean is(Optional<T> a, Optional<T> b) {
    return a.isPresent() == b.isPresent() && (a.isEmpty() || a.get() == b.get());
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
      sizes(list, paper, sec, third, room.depthRight(), top, bottom);
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
    ThreadGauge gauge =
        plug.kind() == ThreadGauge.Kind.GO
            ? ThreadGauge.go(sec.spec())
            : ThreadGauge.noGo(sec.spec());
    Side side = new Side(sec, left, wide, frame.perMm());
    list.pushClipRect(left, top, left + wide, bottom, true);
    metal(list, palette, side, top, bottom);
    gauge(list, palette, side, gauge, plug, top, bottom);
    profiles(list, palette, side, top, bottom);
    wall(list, palette, side, top, bottom);
    contacts(list, palette, side, plug);
    list.popClipRect();
    String name = plug.kind().word() + (sec.spec().internal() ? " plug" : " ring");
    ImGui.pushFont(paper.style().strong());
    list.addText(left, top - 22 * s, PaperStyle.ink(palette.ink()), name);
    ImGui.popFont();
    clock(list, palette, plug, left + wide - 12 * s, top - 13 * s, s);
    hand(plug, sec, left, wide, top, bottom);
    words(paper, plug, left, wide, bottom);
  }

  /** Where radii stand in a column: metal of a hole at the right, of a boss at the left. */
  private record Side(ThreadSection sec, float left, float wide, double perMm) {
    float x(double radius) {
      double from = radius - sec.spec().basicPitch() / 2;
      return (float) (left + 0.52 * wide + from * perMm);
    }

    boolean internal() {
      return sec.spec().internal();
    }

    float metalFrom(double radius) {
      return internal() ? x(radius) : left;
    }

    float metalTo(double radius) {
      return internal() ? left + wide : x(radius);
    }
  }

  private void metal(ImDrawList list, Theme.Palette palette, Side side, float top, float bottom) {
    int ink = PaperStyle.ink(palette.stock(), 0.55);
    float first = (float) Math.max(top, frame.row(side.sec().mouth()));
    for (float y = first; y < bottom; y++) {
      double z = frame.height(y + 0.5);
      if (z < side.sec().end()) {
        if (side.sec().hasFloor()) {
          list.addRectFilled(side.left(), y, side.left() + side.wide(), bottom, ink);
        }
        return;
      }
      double radius = side.sec().wall(z);
      list.addRectFilled(side.metalFrom(radius), y, side.metalTo(radius), y + 1, ink);
    }
  }

  private void wall(ImDrawList list, Theme.Palette palette, Side side, float top, float bottom) {
    int ink = PaperStyle.ink(palette.ink());
    double mouth = side.sec().mouth();
    float first = (float) Math.max(top, frame.row(mouth));
    float last = (float) Math.min(bottom, frame.row(side.sec().end()));
    float x = side.x(side.sec().wall(frame.height(first)));
    for (float y = first + 1; y <= last; y++) {
      float next = side.x(side.sec().wall(frame.height(y)));
      list.addLine(x, y - 1, next, y, ink, 1.6f);
      x = next;
    }
    float row = (float) frame.row(mouth);
    double at = side.sec().wall(mouth);
    list.addLine(side.metalFrom(at), row, side.metalTo(at), row, ink, 1.6f);
    float end = (float) frame.row(side.sec().end());
    double foot = side.sec().wall(side.sec().end());
    boolean hollow = side.internal() == side.sec().hasFloor();
    float inner = hollow ? side.left() : side.x(foot);
    float outer = hollow ? side.x(foot) : side.left() + side.wide();
    list.addLine(inner, end, outer, end, ink, 1.6f);
  }

  private void gauge(
      ImDrawList list,
      Theme.Palette palette,
      Side side,
      ThreadGauge gauge,
      Plug plug,
      float top,
      float bottom) {
    double front = plug.front();
    if (Double.isNaN(front)) {
      return;
    }
    int steel = PaperStyle.ink(palette.steel(), 0.9);
    int edge = PaperStyle.ink(palette.steelEdge());
    double sign = side.internal() ? 1 : -1;
    double neck = gauge.rootRadius() - sign * 0.25 * side.sec().spec().pitch();
    float lowest = (float) Math.min(bottom, frame.row(front));
    float before = 0;
    for (float y = top; y < lowest; y++) {
      double z = frame.height(y + 0.5);
      boolean threaded = z <= front + gauge.length();
      double radius = threaded ? side.sec().gauge(gauge, z) : neck;
      float from = side.internal() ? side.left() : side.x(radius);
      float to = side.internal() ? side.x(radius) : side.left() + side.wide();
      list.addRectFilled(from, y, to, y + 1, steel);
      float x = side.x(radius);
      if (y > top) {
        list.addLine(before, y - 0.5f, x, y + 0.5f, edge, 1.2f);
      }
      before = x;
    }
    double at = side.sec().gauge(gauge, front);
    float row = (float) frame.row(front);
    float inner = side.internal() ? side.left() : side.x(at);
    float outer = side.internal() ? side.x(at) : side.left() + side.wide();
    list.addLine(inner, row, outer, row, edge, 1.4f);
  }

  /** The basic profile; with enough room for them also the flanks of both gauges. */
  private void profiles(
      ImDrawList list, Theme.Palette palette, Side side, float top, float bottom) {
    int basic = PaperStyle.ink(palette.absolute(), 0.85);
    ThreadSection sec = side.sec();
    float first = (float) Math.max(top, frame.row(sec.mouth()));
    float last = (float) Math.min(bottom, frame.row(sec.zBottom() - sec.spec().pitch() / 2));
    for (float y = first + 1; y <= last; y++) {
      float before = side.x(sec.basic(frame.height(y - 1)));
      list.addLine(before, y - 1, side.x(sec.basic(frame.height(y))), y, basic, 1);
    }
    if (frame.perMm() < FINE) {
      return;
    }
    ThreadGauge go = ThreadGauge.go(sec.spec());
    ThreadGauge noGo = ThreadGauge.noGo(sec.spec());
    int ink = PaperStyle.ink(palette.incrementalText());
    for (float y = first + 1; y <= last; y++) {
      double low = frame.height(y - 1);
      double z = frame.height(y);
      if ((int) y % 8 < 4) {
        list.addLine(side.x(sec.gauge(go, low)), y - 1, side.x(sec.gauge(go, z)), y, ink, 1.2f);
      }
      if ((int) y % 4 < 2) {
        list.addLine(
            side.x(sec.gauge(noGo, low)), y - 1, side.x(sec.gauge(noGo, z)), y, ink, 1.2f);
      }
    }
  }

  /** Where a gauge touches at its end, as far as that lies near this section. */
  private void contacts(ImDrawList list, Theme.Palette palette, Side side, Plug plug) {
    if (!plug.isAtEnd() || plug.travel().isEmpty()) {
      return;
    }
    int alarm = PaperStyle.ink(palette.alarm());
    for (Travel.Contact contact : plug.travel().get().contacts()) {
      float y = (float) frame.row(contact.z());
      float x = side.x(side.sec().wall(contact.z()));
      list.addCircle(x, y, 6, alarm, 0, 1.8f);
      list.addLine(side.left(), y, x - 8, y, PaperStyle.ink(palette.alarm(), 0.5), 1);
    }
  }

  /** How far round the hand has turned. */
  private void clock(
      ImDrawList list, Theme.Palette palette, Plug plug, float x, float y, float s) {
    int ink = PaperStyle.ink(palette.softInk());
    double angle = 2 * Math.PI * plug.turns();
    boolean right = shownThread.map(ThreadAnswer::rightHand).orElse(true);
    float dx = (float) ((right ? 1 : -1) * 7 * s * Math.sin(angle));
    float dy = (float) (-7 * s * Math.cos(angle));
    list.addCircle(x, y, 8 * s, ink, 0, s);
    list.addLine(x, y, x + dx, y + dy, PaperStyle.ink(palette.ink()), 1.8f * s);
  }

  private void hand(
      Plug plug, ThreadSection sec, float left, float wide, float top, float bottom) {
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

  /** The pitch diameter along the depth, against limits and gauges. */
  private void sizes(
      ImDrawList list,
      Paper paper,
      ThreadSection sec,
      float left,
      float right,
      float top,
      float bottom) {
    Theme.Palette palette = paper.palette();
    float s = paper.scale();
    var limits = sec.spec().limits();
    double go = ThreadGauge.go(sec.spec()).pitchDiameter();
    double noGo = ThreadGauge.noGo(sec.spec()).pitchDiameter();
    double low = Math.min(Math.min(limits.pitchMin(), limits.pitchMax()), Math.min(go, noGo));
    double high = Math.max(Math.max(limits.pitchMin(), limits.pitchMax()), Math.max(go, noGo));
    double air = 0.3 * (high - low);
    double perMm = (right - left) / (high - low + 2 * air);
    double zero = left - (low - air) * perMm;
    list.pushClipRect(left, top, right, bottom, true);
    float a = (float) (zero + limits.pitchMin() * perMm);
    float b = (float) (zero + limits.pitchMax() * perMm);
    int mouth = (int) Math.max(top, frame.row(sec.mouth()));
    float end = (float) Math.min(bottom, frame.row(sec.end()));
    list.addRectFilled(
        Math.min(a, b), mouth, Math.max(a, b), end, PaperStyle.ink(palette.absolute(), 0.16));
    dashes(list, (float) (zero + go * perMm), mouth, end, PaperStyle.ink(palette.ink()), s);
    dashes(list, (float) (zero + noGo * perMm), mouth, end, PaperStyle.ink(palette.ink()), s);
    endless(list, palette, sec, zero, perMm);
    sec.shape().ifPresent(shape -> course(list, palette, shape, zero, perMm, left, right));
    list.popClipRect();
    ImGui.pushFont(paper.style().small());
    name(list, palette, "GO", (float) (zero + go * perMm), top - 20 * s);
    name(list, palette, "NO-GO", (float) (zero + noGo * perMm), top - 20 * s);
    name(list, palette, Figures.length(go, state.unit()), left + 22 * s, bottom + 6 * s);
    name(list, palette, Figures.length(noGo, state.unit()), right - 22 * s, bottom + 6 * s);
    ImGui.setCursorScreenPos(left, bottom + 22 * s);
    ImGui.beginChild("sizes words", Math.max(1, right - left + 8 * s), (FOOT - 16) * s);
    ImGui.pushStyleColor(imgui.flag.ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
    Panels.wrapped(
        sec.isAsMoved() ? "pitch Ø along the depth" : "pitch Ø, endless helix: computing…");
    ImGui.popStyleColor();
    ImGui.endChild();
    ImGui.popFont();
  }

  private void name(ImDrawList list, Theme.Palette palette, String words, float x, float y) {
    ImGui.calcTextSize(size, words);
    list.addText(x - size.x / 2, y, PaperStyle.ink(palette.softInk()), words);
  }

  private static void dashes(ImDrawList list, float x, float top, float end, int ink, float s) {
    for (float y = top; y < end; y += 10 * s) {
      list.addLine(x, y, x, Math.min(end, y + 5 * s), ink, 1.3f * s);
    }
  }

  private void endless(
      ImDrawList list, Theme.Palette palette, ThreadSection sec, double zero, double perMm) {
    shownThread
        .flatMap(ThreadAnswer::finished)
        .ifPresent(
            m -> {
              float x = (float) (zero + m.pitchSimple() * perMm);
              int ink = PaperStyle.ink(palette.ink(), sec.isAsMoved() ? 0.35 : 1);
              float from = (float) frame.row(Math.min(sec.mouth(), sec.zTop()));
              list.addLine(x, from, x, (float) frame.row(sec.zBottom()), ink, 1.6f);
            });
  }

  private void course(
      ImDrawList list,
      Theme.Palette palette,
      WallShape shape,
      double zero,
      double perMm,
      float left,
      float right) {
    int ink = PaperStyle.ink(Colours.mix(palette.ink(), palette.ground(), 0.05));
    for (int i = 0; i < shape.places(); i++) {
      float x = (float) Math.max(left + 1, Math.min(right - 3, zero + shape.pitch(i) * perMm));
      float y = (float) frame.row(shape.placeZ(i));
      list.addRectFilled(x - 1, y - 1, x + 1.4f, y + 1, ink);
    }
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
    list.addRectFilled(x - 2 * s, top, x - 2 * s + 1, bottom, PaperStyle.ink(paper.palette().rule()));
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
        left, at, room.depthRight(), at + Math.max(1, s), PaperStyle.ink(paper.palette().ink(), 0.55));
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
    list.addText(left - 8 * s - size.x, at - size.y / 2, PaperStyle.ink(paper.palette().ink()), label);
    ImGui.popFont();
  }
}
