package flankfit.window;

import flankfit.picture.Theme;
import imgui.ImDrawList;
import imgui.ImGui;
import imgui.ImVec2;
import imgui.flag.ImGuiWindowFlags;

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
   * Text as it is, wrapped at blanks alone. The library's own function takes a percent sign for a
   * place to put a value, and breaks a number at its point.
   */
  static void wrapped(String text) {
    wrapped(text, ImGui.getContentRegionAvailX());
  }

  /** The same in a given width (window units). */
  static void wrapped(String text, float room) {
    float x = ImGui.getCursorPosX();
    ImVec2 size = new ImVec2();
    String rest = text;
    while (true) {
      int end = fitting(rest, room, size);
      ImGui.setCursorPosX(x);
      ImGui.textUnformatted(rest.substring(0, end));
      if (end == rest.length()) {
        return;
      }
      rest = rest.substring(end + 1);
    }
  }

  /** Where to end a row: at the last blank that fits, or the first one if none does. */
  private static int fitting(String text, float room, ImVec2 size) {
    ImGui.calcTextSize(size, text);
    if (size.x <= room) {
      return text.length();
    }
    int end = text.indexOf(' ');
    while (end >= 0) {
      int next = text.indexOf(' ', end + 1);
      ImGui.calcTextSize(size, text.substring(0, next < 0 ? text.length() : next));
      if (next < 0 || size.x > room) {
        return end;
      }
      end = next;
    }
    return text.length();
  }

  /** A level hair line. */
  static void rule(
      ImDrawList list, Theme.Palette palette, float x, float y, float width, float thick) {
    list.addRectFilled(x, y, x + width, y + thick, PaperStyle.ink(palette.rule()));
  }
}
