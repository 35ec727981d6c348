package flankfit.picture;

import flankfit.motion.ModalState.Distance;

/** The table of line styles: number, colour and width of each, by theme and content scale. */
final class LineStyles {
  /** Size of the table; the shaders count on it. */
  static final int COUNT = 32;

  static final int FEED = 0;
  static final int RAPID = 8;
  static final int PROGRAMMED = 16;
  static final int STOCK_EDGE = 24;
  static final int HOLE_EDGE = 25;
  static final int THREAD_EDGE = 26;
  static final int CUTTER_EDGE = 27;
  static final int KEEP_OUT_EDGE = 28;
  static final int CUTTER_MERIDIAN = 29;
  static final int BODY_CREASE = 30;
  static final int SECTION_EDGE = 31;

  /** Levels of paleness of earlier passes; 0 is the last pass. */
  static final int LEVELS = 4;

  /** How far each level fades towards the paper (1). */
  private static final double[] PALENESS = {0, 0.30, 0.45, 0.58};

  /** How far the lines of a pass fade towards the paper (1) that so many passes follow. */
  static double paleness(int following) {
    return PALENESS[Math.min(following, LEVELS - 1)];
  }

  private final float[] colours = new float[4 * COUNT];
  private final float[] thinColours = new float[4 * COUNT];
  private final float[] tickColours = new float[4 * COUNT];
  private final float[] shapes = new float[4 * COUNT];

  /** The table for a theme. */
  LineStyles(Theme theme, double contentScale) {
    Theme.Palette p = theme.palette();
    boolean cased = theme == Theme.LIGHT;
    for (Distance mode : Distance.values()) {
      int hue = mode == Distance.ABSOLUTE ? p.absolute() : p.incremental();
      int thin = mode == Distance.ABSOLUTE ? p.absoluteText() : p.incrementalText();
      double casing = cased && mode == Distance.INCREMENTAL ? 0.9 : 0;
      for (int level = 0; level < LEVELS; level++) {
        double pale = PALENESS[level];
        set(path(FEED, mode, level), Colours.mix(hue, p.ground(), pale), 1.5, contentScale);
        shapes[4 * path(FEED, mode, level) + 2] = (float) (level == 0 ? casing * contentScale : 0);
        set(path(RAPID, mode, level), Colours.mix(thin, p.ground(), pale), 0.65, contentScale);
        shapes[4 * path(RAPID, mode, level) + 1] = 1;
        set(path(PROGRAMMED, mode, level), Colours.mix(thin, p.ground(), pale), 0.5, contentScale);
      }
    }
    for (int path = 0; path < STOCK_EDGE; path++) {
      int c = Colours.rgb(colours, 4 * path);
      Colours.put(Colours.mix(c, p.ink(), 0.5), 1, tickColours, 4 * path);
      shapes[4 * path + 3] = 1;
    }
    System.arraycopy(colours, 0, thinColours, 0, colours.length);
    for (int level = 0; level < LEVELS; level++) {
      int rapid = 4 * path(RAPID, Distance.INCREMENTAL, level);
      int feed = 4 * path(FEED, Distance.INCREMENTAL, level);
      System.arraycopy(colours, rapid, thinColours, feed, 4);
    }
    set(STOCK_EDGE, p.stockEdge(), 0.5, contentScale);
    set(HOLE_EDGE, p.stockEdge(), 0.7, contentScale);
    set(THREAD_EDGE, Colours.mix(p.stockEdge(), p.ground(), 0.25), 0.5, contentScale);
    set(CUTTER_EDGE, p.steelEdge(), 0.6, contentScale);
    set(CUTTER_MERIDIAN, p.steelEdge(), 0.6, contentScale);
    set(KEEP_OUT_EDGE, p.alarm(), 0.6, contentScale);
    set(BODY_CREASE, 0x33383C, 0.45, contentScale);
    set(SECTION_EDGE, p.ink(), 0.8, contentScale);
  }

  /** The style of a path. */
  static int path(int kind, Distance mode, int level) {
    return kind + (mode == Distance.INCREMENTAL ? LEVELS : 0) + level;
  }

  private void set(int style, int colour, double halfWidth, double contentScale) {
    Colours.put(colour, 1, colours, 4 * style);
    shapes[4 * style] = (float) (halfWidth * contentScale);
  }

  /** Colour of each style: red, green, blue, alpha. */
  float[] colours() {
    return colours;
  }

  /** Colour of each style for lines of one pixel, which have no casing. */
  float[] thinColours() {
    return thinColours;
  }

  /** Colour of direction marks on a line of each style. */
  float[] tickColours() {
    return tickColours;
  }

  /** Shows or hides the outline of the cutter that only an eye from the side sees. */
  void meridians(boolean seen) {
    shapes[4 * CUTTER_MERIDIAN] = seen ? shapes[4 * CUTTER_EDGE] : 0;
  }

  /** Shape of each style: half width (px), 1 if dashed, casing (px), 1 if it fades. */
  float[] shapes() {
    return shapes;
  }
}
