package flankfit.window;

import flankfit.picture.Theme;
import imgui.ImDrawList;
import imgui.ImGui;
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

  /** A level hair line. */
  static void rule(
      ImDrawList list, Theme.Palette palette, float x, float y, float width, float thick) {
    list.addRectFilled(x, y, x + width, y + thick, PaperStyle.ink(palette.rule()));
  }
}
