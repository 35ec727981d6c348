package flankfit.window;

import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadGauge;
import flankfit.picture.Colours;
import flankfit.picture.Figures;
import flankfit.picture.Theme;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiCol;

/** The pitch diameter at each place along the depth, against limits and gauges. */
final class SizeStrip {
  private final ViewState state;
  private final DepthFrame frame;
  private final ImVec2 size = new ImVec2();

  SizeStrip(ViewState state, DepthFrame frame) {
    this.state = state;
    this.frame = frame;
  }

  /** The pitch diameter along the depth, against limits and gauges. */
  void draw(
      ImDrawList list,
      Paper paper,
      ThreadSection sec,
      ThreadAnswer thread,
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
    endless(list, palette, sec, thread, zero, perMm);
    sec.shape().ifPresent(shape -> course(list, palette, shape, zero, perMm, left, right));
    list.popClipRect();
    ImGui.pushFont(paper.style().small());
    name(list, palette, "GO", (float) (zero + go * perMm), top - 20 * s);
    name(list, palette, "NO-GO", (float) (zero + noGo * perMm), top - 20 * s);
    name(list, palette, Figures.length(go, state.unit()), left + 22 * s, bottom + 6 * s);
    name(list, palette, Figures.length(noGo, state.unit()), right - 22 * s, bottom + 6 * s);
    ImGui.setCursorScreenPos(left, bottom + 22 * s);
    ImGui.beginChild("sizes words", Math.max(1, right - left + 8 * s), (DepthPanel.FOOT - 16) * s);
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
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
      ImDrawList list,
      Theme.Palette palette,
      ThreadSection sec,
      ThreadAnswer thread,
      double zero,
      double perMm) {
    thread
        .finished()
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
}
