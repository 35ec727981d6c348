package flankfit.window;

import flankfit.gauge.ThreadGauge;
import flankfit.gauge.Travel;
import flankfit.picture.Theme;
import imgui.ImDrawList;

/** One section through the thread with a gauge in it, on the depth rule. */
final class GaugeColumn {
  /** Scale from which on limits of size are told apart (window units a mm). */
  private static final double FINE = 55;

  private final DepthFrame frame;

  GaugeColumn(DepthFrame frame) {
    this.frame = frame;
  }

  /** Draws it between two columns and two rows. */
  void draw(
      ImDrawList list,
      Theme.Palette palette,
      ThreadSection sec,
      Plug plug,
      float left,
      float wide,
      float top,
      float bottom) {
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
        list.addLine(side.x(sec.gauge(noGo, low)), y - 1, side.x(sec.gauge(noGo, z)), y, ink, 1.2f);
      }
    }
  }

  /** Height where metal is touched (mm): a ridge's flanks lie beside its middle. */
  private static double touched(Travel.Contact contact, ThreadSection sec) {
    double quarter = sec.spec().pitch() / 4;
    double z =
        switch (contact.by()) {
          case FLANK_UP -> contact.z() + quarter;
          case FLANK_DOWN -> contact.z() - quarter;
          default -> contact.z();
        };
    return Math.max(sec.end(), Math.min(sec.mouth(), z));
  }

  /** Where a gauge touches at its end, as far as that lies near this section. */
  private void contacts(ImDrawList list, Theme.Palette palette, Side side, Plug plug) {
    if (!plug.isAtEnd() || plug.travel().isEmpty()) {
      return;
    }
    int alarm = PaperStyle.ink(palette.alarm());
    for (Travel.Contact contact : plug.travel().get().contacts()) {
      double z = touched(contact, side.sec());
      float y = (float) frame.row(z);
      float x = side.x(side.sec().wall(z));
      list.addCircle(x, y, 6, alarm, 0, 1.8f);
      list.addLine(side.left(), y, x - 8, y, PaperStyle.ink(palette.alarm(), 0.5), 1);
    }
  }
}
