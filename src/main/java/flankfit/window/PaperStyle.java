package flankfit.window;

import flankfit.picture.BundledFont;
import flankfit.picture.Colours;
import flankfit.picture.Theme;
import imgui.ImFont;
import imgui.ImFontAtlas;
import imgui.ImFontConfig;
import imgui.ImGui;
import imgui.ImGuiStyle;
import imgui.flag.ImGuiCol;

/** Letters and colours of the panels: ink on paper, no frames, no gloss. */
final class PaperStyle {
  private final float scale;
  private ImFont small;
  private ImFont body;
  private ImFont strong;
  private ImFont title;
  private ImFont listing;
  private ImFont words;

  /**
   * Prepares letters for a scale.
   *
   * @param scale window units a logical pixel (1)
   * @param pixels pixels a window unit (1)
   * @param ranges characters that the letters hold
   */
  PaperStyle(float scale, float pixels, GlyphRanges ranges) {
    this.scale = scale;
    ImFontAtlas atlas = ImGui.getIO().getFonts();
    atlas.clear();
    float raster = scale * pixels;
    small = font(atlas, BundledFont.TEXT, 13 * raster, ranges);
    body = font(atlas, BundledFont.TEXT, 15 * raster, ranges);
    strong = font(atlas, BundledFont.STRONG, 15 * raster, ranges);
    title = font(atlas, BundledFont.STRONG, 20 * raster, ranges);
    listing = font(atlas, BundledFont.LISTING, 13.5f * raster, ranges);
    words = font(atlas, BundledFont.LISTING, 23 * raster, ranges);
    ImGui.getIO().setFontGlobalScale(1 / pixels);
    ImGui.getIO().setFontDefault(body);
  }

  private static ImFont font(ImFontAtlas atlas, BundledFont font, float size, GlyphRanges ranges) {
    ImFontConfig config = new ImFontConfig();
    // Not owned: the atlas copies the bytes at once, for the array may move.
    config.setFontDataOwnedByAtlas(false);
    ranges.giveTo(config);
    config.setOversampleH(2);
    config.setOversampleV(1);
    ImFont made = atlas.addFontFromMemoryTTF(font.bytes(), Math.round(size * 2) / 2f, config);
    config.destroy();
    return made;
  }

  float scale() {
    return scale;
  }

  ImFont small() {
    return small;
  }

  ImFont body() {
    return body;
  }

  ImFont strong() {
    return strong;
  }

  ImFont title() {
    return title;
  }

  ImFont listing() {
    return listing;
  }

  /** Words of a program to be read from the back of a room. */
  ImFont words() {
    return words;
  }

  /** A colour 0xRRGGBB as the panels' draw lists want it. */
  static int ink(int colour) {
    return ink(colour, 1);
  }

  /** The same, see-through. */
  static int ink(int colour, double alpha) {
    int red = colour >> 16 & 0xFF;
    int green = colour >> 8 & 0xFF;
    int blue = colour & 0xFF;
    return (int) Math.round(alpha * 255) << 24 | blue << 16 | green << 8 | red;
  }

  /** Sets all colours and distances for a theme. */
  void apply(Theme theme) {
    Theme.Palette p = theme.palette();
    ImGuiStyle style = ImGui.getStyle();
    style.setWindowPadding(0, 0);
    style.setWindowBorderSize(0);
    style.setWindowRounding(0);
    style.setWindowMinSize(1, 1);
    style.setChildBorderSize(0);
    style.setFramePadding(6 * scale, 3 * scale);
    style.setFrameRounding(0);
    style.setFrameBorderSize(0);
    style.setItemSpacing(8 * scale, 4 * scale);
    style.setScrollbarSize(11 * scale);
    style.setScrollbarRounding(0);
    int clear = ink(p.ground(), 0);
    style.setColor(ImGuiCol.Text, ink(p.ink()));
    style.setColor(ImGuiCol.TextDisabled, ink(p.softInk()));
    style.setColor(ImGuiCol.WindowBg, ink(p.ground()));
    style.setColor(ImGuiCol.ChildBg, clear);
    style.setColor(ImGuiCol.Border, ink(p.rule()));
    style.setColor(ImGuiCol.Button, clear);
    style.setColor(ImGuiCol.ButtonHovered, ink(p.shade()));
    style.setColor(ImGuiCol.ButtonActive, ink(p.rule()));
    style.setColor(ImGuiCol.Header, clear);
    style.setColor(ImGuiCol.HeaderHovered, ink(p.shade()));
    style.setColor(ImGuiCol.HeaderActive, ink(p.rule()));
    style.setColor(ImGuiCol.ScrollbarBg, clear);
    style.setColor(ImGuiCol.ScrollbarGrab, ink(p.rule()));
    style.setColor(ImGuiCol.ScrollbarGrabHovered, ink(Colours.mix(p.rule(), p.ink(), 0.3)));
    style.setColor(ImGuiCol.ScrollbarGrabActive, ink(Colours.mix(p.rule(), p.ink(), 0.5)));
    style.setColor(ImGuiCol.NavHighlight, clear);
  }
}
