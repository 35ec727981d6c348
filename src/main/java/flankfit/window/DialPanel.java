package flankfit.window;

import flankfit.gauge.OffsetAdvice;
import flankfit.picture.Figures;
import flankfit.picture.LadderPicture;
import flankfit.picture.Ticks;
import flankfit.unit.LengthUnit;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import java.util.ArrayList;
import java.util.List;

/**
 * The wear dial: a scale of entries beside the ladder, on which each entry stands at the pitch
 * diameter that it makes. Its handle and the last rung go together; the hand may take either.
 */
final class DialPanel {
  private static final float TICK = 46;

  /** How near its handle a press takes it, in logical pixels. */
  private static final float NEAR = 22;

  private final ViewState state;
  private final ImVec2 size = new ImVec2();
  private final List<Mark> marks = new ArrayList<>();
  private double grabbed;
  private boolean absolute;

  /** A place on the scale with its words. */
  private record Mark(double row, String words, Kind kind) {}

  private enum Kind {
    HANDLE,
    SHEET,
    ADVISED
  }

  DialPanel(ViewState state) {
    this.state = state;
  }

  /** How entries and rows of the window belong together. */
  private record Scale(
      OffsetAdvice offset, double pitch, LadderPicture.Range range, GaugeRoom room) {
    double row(double entry) {
      double at = pitch + offset.sensitivity() * (entry - offset.now());
      return room.top() + range.rowOf(at, room.ladderHeight()) * room.scale();
    }

    double entry(double row) {
      double at = range.diameterAt((row - room.top()) / room.scale(), room.ladderHeight());
      return offset.now() + (at - pitch) / offset.sensitivity();
    }

    double top() {
      return room.top() + 24 * room.scale();
    }

    double bottom() {
      return room.bottom() - 52 * room.scale();
    }

    double within(double entry) {
      return Math.max(top(), Math.min(bottom(), row(entry)));
    }
  }

  /** Draws the dial and lets the hand turn it. */
  void draw(Paper paper, GaugeRoom room, LadderPicture.Range range) {
    var base = state.gauge().bench().base();
    var dial = state.gauge().bench().dial();
    if (base.isEmpty() || dial.isEmpty() || base.get().finished().isEmpty()) {
      return;
    }
    double pitch = base.get().finished().get().pitchSimple();
    Scale scale = new Scale(dial.get().offset(), pitch, range, room);
    hand(room, scale, dial.get());
    ImDrawList list = ImGui.getWindowDrawList();
    float s = paper.scale();
    float x = room.dialRight();
    int soft = PaperStyle.ink(paper.palette().softInk());
    list.addLine(x, (float) scale.top(), x, (float) scale.bottom(), soft, Math.max(1, s));
    mark(scale, dial.get());
    ImGui.pushFont(paper.style().small());
    ticks(list, scale, soft, x, s);
    LengthUnit unit = state.unit();
    String name = scale.offset().register() + " wear, " + unit.symbol();
    ImGui.calcTextSize(size, name);
    list.addText(x - 10 * s - size.x, room.top() + 4 * s, soft, name);
    ImGui.popFont();
    for (Mark mark : marks) {
      draw(list, paper, scale, mark, x);
    }
  }

  private void mark(Scale scale, Dial dial) {
    OffsetAdvice offset = dial.offset();
    LengthUnit unit = state.unit();
    marks.clear();
    String where = dial.isMoved() ? "dial " : "now ";
    marks.add(
        new Mark(
            scale.within(dial.entry()), where + Figures.length(dial.entry(), unit), Kind.HANDLE));
    if (dial.isMoved()) {
      marks.add(
          new Mark(
              scale.within(offset.now()),
              "sheet " + Figures.length(offset.now(), unit),
              Kind.SHEET));
    }
    if (offset.hasWindow() && offset.keyToMiddle() != dial.entry()) {
      marks.add(
          new Mark(
              scale.within(offset.keyToMiddle()),
              "key in " + Figures.length(offset.keyToMiddle(), unit),
              Kind.ADVISED));
    }
  }

  private void hand(GaugeRoom room, Scale scale, Dial dial) {
    ImGui.setCursorScreenPos(room.left() - 10 * room.scale(), room.top());
    ImGui.invisibleButton(
        "dial", Math.max(1, room.ladderRight() - room.left() + 10 * room.scale()), room.height());
    double row = ImGui.getIO().getMousePosY();
    if (ImGui.isItemActivated()) {
      double handle = scale.row(dial.entry());
      boolean onScale = ImGui.getIO().getMousePosX() < room.dialRight() + 12 * room.scale();
      absolute = onScale && Math.abs(row - handle) > NEAR * room.scale();
      grabbed = absolute ? 0 : row - handle;
      dial.begin();
      if (absolute) {
        dial.drag(scale.entry(row));
        state.gauge().bench().turned();
      }
    } else if (ImGui.isItemActive() && ImGui.isMouseDragging(0, 0)) {
      double before = dial.entry();
      dial.drag(scale.entry(row - grabbed));
      if (dial.entry() != before) {
        state.gauge().bench().turned();
      }
    }
    float wheel = ImGui.getIO().getMouseWheel();
    if (ImGui.isItemHovered() && wheel != 0) {
      state.gauge().step(wheel > 0 ? 1 : -1);
    }
  }

  private void ticks(ImDrawList list, Scale scale, int soft, float x, float s) {
    LengthUnit unit = state.unit();
    double perUnit = Math.abs(scale.row(unit.toMillimetres(1)) - scale.row(0));
    double step = Ticks.stepAtLeast(TICK * s / perUnit);
    int decimals = Ticks.decimals(step);
    double a = unit.fromMillimetres(scale.entry(scale.top()));
    double b = unit.fromMillimetres(scale.entry(scale.bottom()));
    for (long k = (long) Math.ceil(Math.min(a, b) / step - 1e-9);
        k * step <= Math.max(a, b) + 1e-9 * step;
        k++) {
      float y = (float) scale.row(unit.toMillimetres(k * step));
      list.addLine(x - 5 * s, y, x, y, soft, Math.max(1, s));
      if (marks.stream().noneMatch(m -> Math.abs(m.row() - y) < 15 * s)) {
        String figure = Figures.fixed(k * step, decimals);
        ImGui.calcTextSize(size, figure);
        list.addText(x - 10 * s - size.x, y - size.y / 2, soft, figure);
      }
    }
  }

  /** The handle stays where it is; other words make room for it. */
  private void draw(ImDrawList list, Paper paper, Scale scale, Mark mark, float x) {
    float s = paper.scale();
    double row = mark.row();
    double words = row;
    for (Mark other : marks) {
      double apart = words - other.row();
      if (other.kind().compareTo(mark.kind()) < 0 && Math.abs(apart) < 17 * s) {
        words = other.row() + (apart > 0 || other.row() < scale.top() + 20 * s ? 17 : -17) * s;
      }
    }
    float y = (float) row;
    boolean handle = mark.kind() == Kind.HANDLE;
    int ink = PaperStyle.ink(handle ? paper.palette().ink() : paper.palette().softInk());
    if (handle) {
      list.addTriangleFilled(x - 14 * s, y - 8 * s, x - 14 * s, y + 8 * s, x - s, y, ink);
      if (state.gauge().picture() == GaugeSide.Picture.LADDER) {
        list.addLine(x, y, x + 52 * s, y, PaperStyle.ink(paper.palette().ink(), 0.35), s);
      }
    } else if (mark.kind() == Kind.SHEET) {
      list.addTriangle(x - 12 * s, y - 6 * s, x - 12 * s, y + 6 * s, x - 2 * s, y, ink, 1.4f * s);
    } else {
      list.addQuad(
          x - 12 * s, y, x - 7 * s, y - 5 * s, x - 2 * s, y, x - 7 * s, y + 5 * s, ink, 1.4f * s);
    }
    ImGui.pushFont(handle ? paper.style().strong() : paper.style().small());
    ImGui.calcTextSize(size, mark.words());
    list.addText(x - 19 * s - size.x, (float) words - size.y / 2, ink, mark.words());
    ImGui.popFont();
  }
}
