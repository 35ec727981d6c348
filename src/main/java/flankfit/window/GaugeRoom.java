package flankfit.window;

/**
 * Where things stand on the Gauge sheet, in window units from the window's upper left corner.
 *
 * @param left left edge of all
 * @param top upper edge of what stands below the words
 * @param bottom lower edge of it
 * @param dialRight column of the dial's scale; the ladder begins there
 * @param ladderRight right edge of ladder or section
 * @param depthLeft left edge of what is drawn on the depth rule
 * @param depthRight right edge of it; not above {@code depthLeft} where there is no room
 * @param scale window units a logical pixel (1)
 */
record GaugeRoom(
    float left,
    float top,
    float bottom,
    float dialRight,
    float ladderRight,
    float depthLeft,
    float depthRight,
    float scale) {
  /** Height of the words above (logical px). */
  static final float WORDS = 104;

  private static final float DIAL = 124;
  private static final float LEAST_WITH_DEPTH = 690;

  /** Width of a scene below which the ladder needs it all (logical px). */
  private static final float LEAST_WITH_DIAL = 460;

  /** Least height of a diagram (logical px). */
  private static final float LEAST_HEIGHT = 210;

  /**
   * The room of a window's scene.
   *
   * @param hasDial whether a dial stands left of the ladder
   * @param whole whether the ladder takes the room of what stands on the depth rule, too
   */
  static GaugeRoom of(Layout layout, boolean hasDial, boolean whole) {
    float s = layout.scale();
    float left = 28 * s;
    float right = layout.sceneWidth() - 16 * s;
    float top = layout.header() + WORDS * s;
    float bottom =
        Math.max(top + LEAST_HEIGHT * s, layout.header() + layout.sceneHeight() - 10 * s);
    boolean depth = !whole && layout.sceneWidth() >= LEAST_WITH_DEPTH * s;
    float wide = depth ? Math.max(256 * s, Math.min(470 * s, 0.4f * (right - left))) : 0;
    float ladder = depth ? right - wide - 18 * s : right;
    return new GaugeRoom(
        left,
        top,
        bottom,
        left + (hasDial && layout.sceneWidth() >= LEAST_WITH_DIAL * s ? DIAL * s : 0),
        ladder,
        ladder + 18 * s,
        depth ? right : ladder,
        s);
  }

  boolean hasDepth() {
    return depthRight > depthLeft;
  }

  /** Whether there is room for the dial beside the ladder; its keys work without. */
  boolean hasDial() {
    return dialRight > left;
  }

  float height() {
    return bottom - top;
  }

  /** Width of the ladder (logical px); wide enough to be drawn. */
  int ladderWidth() {
    return Math.max(hasDial() ? 310 : 300, Math.round((ladderRight - dialRight) / scale));
  }

  /** Height of the ladder (logical px). */
  int ladderHeight() {
    return Math.round(height() / scale);
  }
}
