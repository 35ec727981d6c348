package flankfit.window;

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
import java.util.List;

/**
 * Time as a band below the scene: feed thick, rapids thin, a mark for each finding, and below it
 * the operations as lengths with their names.
 */
final class BandPanel {
  private final ViewState state;
  private Survey survey = Survey.NONE;
  private long shownChange = -1;
  private long shownContents = -1;
  private final ImVec2 size = new ImVec2();
  private String clock = "";
  private List<String> labels = List.of();
  private int shownTimes;
  private boolean shownPlaying;

  BandPanel(ViewState state) {
    this.state = state;
  }

  private void follow() {
    if (shownContents != state.contents()) {
      shownContents = state.contents();
      shownChange = -1;
      survey = state.loaded().survey();
      labels = survey.operations().all().stream().map(Operation::label).toList();
    }
  }

  void draw(PaperStyle style, Layout layout, Theme.Palette palette) {
    follow();
    if (layout.band() == 0) {
      return;
    }
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
    float room = layout.sceneWidth() - left - Math.max(150 * s, size.x + 28 * s);
    float middle = top + 18 * s;
    ImGui.setCursorPos(left, 6 * s);
    ImGui.invisibleButton("time", Math.max(1, room), 44 * s);
    if (ImGui.isItemActive()) {
      double share = (ImGui.getIO().getMousePosX() - left) / room;
      state.toShareOfTime(Math.max(0, Math.min(1, share)));
    }
    ImDrawList list = ImGui.getWindowDrawList();
    columns(list, palette, s, left, room, middle, whole);
    ImGui.pushFont(style.small());
    operations(list, palette, s, left, room, top + 34 * s, whole);
    ImGui.popFont();
    for (int i = 0; i < survey.marks().all().size(); i++) {
      int move = survey.findingMove(i);
      if (move >= 0 && move < state.course().tape().size()) {
        float at = (float) (state.steps().until(move) / whole);
        mark(list, palette, s, left + at * room, middle, i);
      }
    }
    float x = left + (float) (state.course().seconds() / whole) * room;
    // It ends on the lines of the operations, whose names stand below them.
    list.addRectFilled(x - s, middle - 11 * s, x + s, top + 36 * s, PaperStyle.ink(palette.ink()));
    ImGui.pushFont(style.small());
    list.addText(left + room + 14 * s, middle - 8 * s, PaperStyle.ink(palette.softInk()), clock);
    list.addText(26 * s, middle - 8 * s, PaperStyle.ink(palette.softInk()), "time");
    ImGui.popFont();
    ImGui.end();
  }

  /** A length and a name for each operation that has room; the one at the position in full ink. */
  private void operations(
      ImDrawList list,
      Theme.Palette palette,
      float s,
      float left,
      float room,
      float top,
      double whole) {
    List<Operation> all = survey.operations().all();
    float free = left;
    for (int i = 0; i < all.size(); i++) {
      Operation operation = all.get(i);
      if (operation.kind() == Operation.Kind.TRAVEL
          || operation.last() >= state.course().tape().size()) {
        continue;
      }
      float from = left + (float) (state.steps().begun(operation.first()) / whole) * room;
      float to = left + (float) (state.steps().until(operation.last()) / whole) * room;
      if (to < free) {
        continue;
      }
      boolean here = state.position() >= operation.first() && state.position() <= operation.last();
      int ink = PaperStyle.ink(here ? palette.ink() : palette.softInk());
      float end = Math.max(from + s, to - 2 * s);
      list.addRectFilled(Math.max(free, from), top, end, top + (here ? 2 : 1) * s, ink);
      String label = labels.get(i);
      ImGui.calcTextSize(size, label);
      if (size.x < to - from - 8 * s) {
        list.addText(from + 4 * s, top + 2 * s, ink, label);
      }
      free = end + s;
    }
  }

  /** A square for an error, a triangle for a warning, a point for a note. */
  private void mark(
      ImDrawList list, Theme.Palette palette, float s, float x, float middle, int finding) {
    Severity severity = survey.marks().all().get(finding).severity();
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
    Playback playback = state.player().playback();
    if (shownChange != state.positionChanges()
        || shownTimes != playback.times()
        || shownPlaying != playback.isPlaying()) {
      shownChange = state.positionChanges();
      shownTimes = playback.times();
      shownPlaying = playback.isPlaying();
      clock =
          Figures.fixed(state.course().seconds(), 1)
              + " of "
              + Figures.fixed(whole, 1)
              + " s"
              + (shownPlaying || shownTimes > 1 ? "  ×" + shownTimes : "");
    }
  }
}
