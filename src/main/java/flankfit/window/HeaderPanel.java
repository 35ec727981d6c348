package flankfit.window;

import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.unit.LengthUnit;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiCol;
import java.util.List;

/** The sentence above everything, the sheets, and the words that are wanted most. */
final class HeaderPanel {
  private final ViewState state;
  private final List<SheetName> sheets;
  private final ImVec2 size = new ImVec2();
  private float room;

  HeaderPanel(ViewState state, List<SheetName> sheets) {
    this.state = state;
    this.sheets = List.copyOf(sheets);
  }

  void draw(PaperStyle style, Layout layout, Theme.Palette palette) {
    float s = style.scale();
    String sentence = state.sentence();
    room = layout.width() - 24 * s;
    Panels.begin("header", 0, 0, layout.width(), layout.header());
    ImGui.pushFont(style.title());
    ImGui.calcTextSize(size, sentence);
    ImGui.popFont();
    boolean fits = size.x < layout.width() - 56 * s;
    ImGui.pushFont(fits ? style.title() : style.strong());
    ImGui.setCursorPos(28 * s, 14 * s);
    ImGui.textUnformatted(sentence);
    ImGui.popFont();
    ImGui.pushFont(style.small());
    ImGui.setCursorPos(22 * s, 47 * s);
    words(palette, s);
    float wordsEnd = ImGui.getItemRectMaxX();
    file(layout, palette, s, wordsEnd);
    ImGui.popFont();
    ImDrawList list = ImGui.getWindowDrawList();
    Panels.rule(list, palette, 0, layout.header() - s, layout.width(), s);
    Loaded loaded = state.loaded();
    if (state.isLoading() && loaded.share() > 0) {
      float length = (float) (loaded.share() * layout.width());
      int ink = PaperStyle.ink(palette.ink());
      list.addRectFilled(0, layout.header() - 3 * s, length, layout.header(), ink);
    }
    ImGui.end();
  }

  /** Those without which nothing is found come first: a narrow window leaves the last ones out. */
  private void words(Theme.Palette palette, float s) {
    for (SheetName sheet : sheets) {
      if (word(palette, s, sheet.word(), state.sheet() == sheet)) {
        state.sheet(sheet);
      }
    }
    ImGui.sameLine(0, 22 * s);
    if (state.sheet() == SheetName.GAUGE) {
      ofGauge(palette, s);
    } else {
      views(palette, s);
    }
    ImGui.sameLine(0, 22 * s);
    if (word(palette, s, "/  find an action", false)) {
      state.desk().palette();
    }
    if (word(palette, s, "?  keys", state.help())) {
      state.toggleHelp();
    }
    ImGui.sameLine(0, 22 * s);
    if (state.sheet() == SheetName.LESSON) {
      ofLesson(palette, s);
    } else if (state.sheet() == SheetName.METAL) {
      ofMetal(palette, s);
    } else if (state.sheet() != SheetName.GAUGE) {
      ofMotion(palette, s);
    }
    if (word(palette, s, state.unit() == LengthUnit.INCH ? "U  mm" : "U  inch", false)) {
      state.otherUnit();
    }
    if (state.sheet() == SheetName.MOTION && word(palette, s, "B  meaning", state.explains())) {
      state.toggleExplanation();
    }
    ImGui.sameLine(0, 22 * s);
    if (state.isLoading()) {
      if (word(palette, s, "Esc  stop", false)) {
        state.stop();
      }
    }
    if (word(palette, s, "Ctrl+O  samples, recent", state.desk().isWelcome())) {
      state.desk().toggleWelcome();
    }
  }

  private void views(Theme.Palette palette, float s) {
    for (View view : View.values()) {
      boolean on =
          state.viewpoint().standing().isPresent() && state.viewpoint().standing().get() == view;
      if (word(palette, s, name(view), on)) {
        state.viewpoint().look(view);
      }
    }
    boolean hasWall = state.sheet() == SheetName.MOTION;
    if (hasWall && word(palette, s, "5  wall", state.viewpoint().isUnrolled())) {
      state.viewpoint().unroll();
    }
  }

  private void ofMotion(Theme.Palette palette, float s) {
    if (word(palette, s, "F  whole", false)) {
      state.viewpoint().fit(false);
    }
    if (word(palette, s, "C  cut", false)) {
      state.viewpoint().fit(true);
    }
    if (word(palette, s, "M  measure", state.selection().isMeasuring())) {
      state.toggleMeasuring();
    }
  }

  private void ofLesson(Theme.Palette palette, float s) {
    LessonSide lesson = state.lesson();
    if (word(palette, s, "A  ask me first", lesson.asks())) {
      lesson.toggleAsking();
    }
    if (word(palette, s, "S  one telling", lesson.shown() != LessonSide.Shown.BOTH)) {
      lesson.otherShown();
    }
    if (word(palette, s, "W  what if left out", lesson.isForgetting())) {
      lesson.toggleForgetting();
    }
    if (word(palette, s, "Z  zoom to it", false)) {
      state.viewpoint().fitBlock();
    }
  }

  private void ofMetal(Theme.Palette palette, float s) {
    MetalSide metal = state.metal();
    for (int axis = 0; axis < 3; axis++) {
      String words = (axis == 0 ? "open  " : "") + Sections.name(axis);
      if (word(palette, s, words, metal.sections().isOn(axis))) {
        metal.toggleSection(axis);
      }
    }
    if (word(palette, s, "D  close", false)) {
      metal.close(state.viewpoint());
    }
    if (word(palette, s, "S  through", metal.seesThrough())) {
      metal.toggleSeeThrough();
    }
    if (word(palette, s, "K  by tool", metal.isByTool())) {
      metal.toggleByTool();
    }
    if (word(palette, s, "F  whole", false)) {
      state.viewpoint().fit(false);
    }
  }

  private void ofGauge(Theme.Palette palette, float s) {
    GaugeSide gauge = state.gauge();
    if (word(palette, s, "↑ ↓  dial", false)) {
      gauge.step(1);
    }
    if (word(palette, s, "D  type it", false)) {
      gauge.askForEntry();
    }
    if (word(palette, s, "G  GO in", false)) {
      gauge.twist(gauge.bench().go(), Plug.TWIST);
    }
    if (word(palette, s, "N  NO-GO in", false)) {
      gauge.twist(gauge.bench().noGo(), Plug.TWIST);
    }
    if (word(palette, s, "O  a gauge said", false)) {
      gauge.askForSeen();
    }
    boolean section = gauge.picture() == GaugeSide.Picture.SECTION;
    if (word(palette, s, section ? "S  ladder" : "S  section", false)) {
      gauge.otherPicture();
    }
  }

  private static String name(View view) {
    return switch (view) {
      case PLAN -> "1  plan";
      case FRONT -> "2  front";
      case SIDE -> "3  side";
      case ISO -> "4  free";
    };
  }

  private void file(Layout layout, Theme.Palette palette, float s, float wordsEnd) {
    String whole = state.input().file();
    String file = whole.substring(Math.max(whole.lastIndexOf('/'), whole.lastIndexOf('\\')) + 1);
    ImGui.calcTextSize(size, file);
    float left = layout.width() - size.x - 24 * s;
    if (!whole.equals(state.sentence()) && left > wordsEnd + 12 * s) {
      ImGui.setCursorPos(left, 47 * s);
      ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(palette.softInk()));
      ImGui.textUnformatted(file);
      ImGui.popStyleColor();
    }
  }

  /** A word to click; one that has no room is left out, the palette has it. */
  private boolean word(Theme.Palette palette, float s, String text, boolean on) {
    ImGui.calcTextSize(size, text);
    if (ImGui.getCursorPosX() + size.x + 12 * s > room) {
      return false;
    }
    ImGui.pushStyleColor(ImGuiCol.Text, PaperStyle.ink(on ? palette.ink() : palette.softInk()));
    boolean pressed = ImGui.button(text);
    ImGui.popStyleColor();
    if (on) {
      float x = ImGui.getItemRectMinX() + 6 * s;
      float y = ImGui.getItemRectMaxY() - s;
      float end = ImGui.getItemRectMaxX() - 6 * s;
      ImGui.getWindowDrawList().addRectFilled(x, y, end, y + 2 * s, PaperStyle.ink(palette.ink()));
    }
    ImGui.sameLine(0, 2 * s);
    return pressed;
  }
}
