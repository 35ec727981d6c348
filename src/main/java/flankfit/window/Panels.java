package flankfit.window;

import flankfit.picture.Theme;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiWindowFlags;
import java.util.List;

/** What all panels have in common: a fixed place, no frame, hair lines between. */
final class Panels {
  private static final int FIXED =
      ImGuiWindowFlags.NoDecoration
          | ImGuiWindowFlags.NoMove
          | ImGuiWindowFlags.NoSavedSettings
          | ImGuiWindowFlags.NoNav;

  private Panels() {}

  /** Begins a panel at a fixed place; {@code ImGui.end()} ends it. */
  static void begin(String name, float x, float y, float width, float height) {
    begin(name, x, y, width, height, ImGuiWindowFlags.NoBringToFrontOnFocus);
  }

  static void begin(String name, float x, float y, float width, float height, int more) {
    ImGui.setNextWindowPos(x, y);
    ImGui.setNextWindowSize(width, height);
    ImGui.begin(name, FIXED | more);
  }

  /**
   * Text as it is, wrapped at blanks; a word wider than the room, such as a long path, where the
   * room ends. The library's own function takes a percent sign for a place to put a value, and
   * breaks a number at its point.
   */
  static void wrapped(String text) {
    wrapped(text, ImGui.getContentRegionAvailX());
  }

  /** The same in a given width (window units). */
  static void wrapped(String text, float room) {
    float x = ImGui.getCursorPosX();
    for (String row : rows(text, room)) {
      ImGui.setCursorPosX(x);
      ImGui.textUnformatted(row);
    }
  }

  /** The rows of a text in a given width (window units), in the font in use. */
  static List<String> rows(String text, float room) {
    return Rows.of(text, words -> width(words) <= room);
  }

  /** Width of a text in the font in use (window units). */
  static float width(String words) {
    ImVec2 size = new ImVec2();
    ImGui.calcTextSize(size, words);
    return size.x;
  }

  /** A level hair line. */
  static void rule(
      ImDrawList list, Theme.Palette palette, float x, float y, float width, float thick) {
    list.addRectFilled(x, y, x + width, y + thick, PaperStyle.ink(palette.rule()));
  }
}
