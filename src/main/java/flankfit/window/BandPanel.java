package flankfit.window;

import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.picture.Colours;
import flankfit.picture.Figures;
import flankfit.picture.Theme;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import java.util.OptionalInt;

/** Time as a band below the scene: feed thick, rapids thin, a mark for each finding. */
final class BandPanel {
  private final ViewState state;
  private final ListingPanel listing;
  private FindingMarks marks;
  private double[] findingTimes = {};
  private long shownChange = -1;
  private long shownContents = -1;
  private final ImVec2 size = new ImVec2();
  private String clock = "";

  BandPanel(ViewState state, ListingPanel listing) {
    this.state = state;
    this.listing = listing;
    marks = listing.marks();
  }

  private void follow() {
    if (shownContents == state.contents()) {
      return;
    }
    shownContents = state.contents();
    shownChange = -1;
    marks = listing.marks();
    findingTimes = new double[marks.all().size()];
    for (int i = 0; i < findingTimes.length; i++) {
      Finding finding = marks.all().get(i);
      findingTimes[i] = timeOf(finding.place().line());
    }
  }

  /** When a line's move ends (s): the end of all for a line after the last; -1 for no line. */
  private double timeOf(int line) {
    if (line == 0) {
      return -1;
    }
    OptionalInt move = state.steps().ofLine(line);
    return move.isPresent() ? state.steps().until(move.getAsInt()) : state.steps().seconds();
  }

  void draw(PaperStyle style, Layout layout, Theme.Palette palette) {
    follow();
    float s = style.scale();
    float top = layout.header() + layout.sceneHeight();
    Panels.begin("band", 0, top, layout.sceneWidth(), layout.band());
    double whole = state.steps().seconds();
    if (state.position() < 0 || whole <= 0) {
      ImGui.end();
      return;
    }
    float left = 74 * s;
    word(whole);
    ImGui.pushFont(style.small());
    ImGui.calcTextSize(size, clock);
    ImGui.popFont();
    float room = layout.sceneWidth() - left - Math.max(120 * s, size.x + 28 * s);
    float middle = top + 18 * s;
    ImGui.setCursorPos(left, 6 * s);
    ImGui.invisibleButton("time", Math.max(1, room), 26 * s);
    if (ImGui.isItemActive()) {
      double share = (ImGui.getIO().getMousePosX() - left) / room;
      state.toShareOfTime(Math.max(0, Math.min(1, share)));
    }
    ImDrawList list = ImGui.getWindowDrawList();
    columns(list, palette, s, left, room, middle, whole);
    for (int i = 0; i < findingTimes.length; i++) {
      if (findingTimes[i] >= 0) {
        mark(list, palette, s, left + (float) (findingTimes[i] / whole) * room, middle, i);
      }
    }
    float x = left + (float) (state.steps().until(state.position()) / whole) * room;
    list.addRectFilled(
        x - s, middle - 11 * s, x + s, middle + 7 * s, PaperStyle.ink(palette.ink()));
    ImGui.pushFont(style.small());
    list.addText(left + room + 14 * s, middle - 8 * s, PaperStyle.ink(palette.softInk()), clock);
    list.addText(26 * s, middle - 8 * s, PaperStyle.ink(palette.softInk()), "time");
    ImGui.popFont();
    ImGui.end();
  }

  /** A square for an error, a triangle for a warning, a point for a note. */
  private void mark(
      ImDrawList list, Theme.Palette palette, float s, float x, float middle, int finding) {
    Severity severity = marks.all().get(finding).severity();
    int ink = PaperStyle.ink(FindingMarks.ink(severity, palette));
    float y = middle + 10 * s;
    switch (severity) {
      case ERROR -> list.addRectFilled(x - 4 * s, y - 4 * s, x + 4 * s, y + 4 * s, ink);
      case WARNING ->
          list.addTriangleFilled(x, y - 4 * s, x - 4 * s, y + 3 * s, x + 4 * s, y + 3 * s, ink);
      case NOTE -> list.addCircleFilled(x, y, 2 * s, ink);
    }
  }

  /** One look at the tape a column, equal neighbours drawn as one bar. */
  private void columns(
      ImDrawList list,
      Theme.Palette palette,
      float s,
      float left,
      float room,
      float middle,
      double whole) {
    int count = (int) room;
    int begun = 0;
    int kind = kind(0, whole, count);
    for (int i = 1; i <= count; i++) {
      int next = i < count ? kind(i, whole, count) : -1;
      if (next != kind) {
        boolean rapid = (kind & 1) != 0;
        int hue = (kind & 2) == 0 ? palette.absolute() : palette.incremental();
        float half = (rapid ? 1 : 4) * s;
        int ink = PaperStyle.ink(Colours.mix(hue, palette.ground(), (kind & 4) == 0 ? 0 : 0.6));
        list.addRectFilled(left + begun, middle - half, left + i, middle + half, ink);
        begun = i;
        kind = next;
      }
    }
  }

  /** Bit 0 rapid, bit 1 incremental, bit 2 beyond the position. */
  private int kind(int column, double whole, int count) {
    Tape tape = state.input().tape();
    int move = state.steps().at((column + 0.5) / count * whole);
    int bits = tape.kind(move) == MoveKind.RAPID ? 1 : 0;
    bits |= tape.state(move).distance() == Distance.INCREMENTAL ? 2 : 0;
    return bits | (move > state.position() ? 4 : 0);
  }

  private void word(double whole) {
    if (shownChange != state.positionChanges()) {
      shownChange = state.positionChanges();
      clock =
          Figures.fixed(state.steps().until(state.position()), 1)
              + " of "
              + Figures.fixed(whole, 1)
              + " s";
    }
  }

  /** How many marks the band carries. */
  int marked() {
    return marks.all().size();
  }
}
