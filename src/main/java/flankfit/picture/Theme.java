package flankfit.picture;

/**
 * Paper by day and by night. Hues tell the distance mode: absolute blue {@code #0072B2},
 * incremental orange {@code #E69F00}, both of a published colour-blind-safe set. On light paper the
 * orange has too little contrast alone, so thick lines get a dark casing there and hairlines {@code
 * #B36B00}; on dark paper the blue is lightened to {@code #56B4E9} of the same set.
 *
 * @see "M. Okabe, K. Ito, Color Universal Design, 2008; WCAG 2.2, 1.4.3 and 1.4.11"
 */
public enum Theme {
  LIGHT("light"),
  DARK("dark");

  private final String word;

  Theme(String word) {
    this.word = word;
  }

  /** The word people and settings see. */
  public String word() {
    return word;
  }

  /** The colours. */
  public Palette palette() {
    return this == LIGHT ? Palette.BY_DAY : Palette.BY_NIGHT;
  }

  /** The other one. */
  public Theme other() {
    return this == LIGHT ? DARK : LIGHT;
  }

  /**
   * Colours as 0xRRGGBB.
   *
   * @param ground the paper
   * @param shade a faintly darker paper for panels and marked rows
   * @param ink text and outlines
   * @param softInk secondary text; at least 4.5 : 1 on the ground
   * @param rule hair lines that only divide
   * @param absolute lines of absolute moves
   * @param absoluteText text and hairlines in that hue
   * @param incremental lines of incremental moves
   * @param incrementalText text and hairlines in that hue
   * @param casing edge of incremental lines
   * @param stock body of the stock
   * @param stockEdge edges of the stock
   * @param holeWall walls of holes
   * @param steel cutter
   * @param steelEdge outline of the cutter
   * @param alarm what is wrong, always with a word and a shape
   */
  public record Palette(
      int ground,
      int shade,
      int ink,
      int softInk,
      int rule,
      int absolute,
      int absoluteText,
      int incremental,
      int incrementalText,
      int casing,
      int stock,
      int stockEdge,
      int holeWall,
      int steel,
      int steelEdge,
      int alarm) {
    private static final Palette BY_DAY =
        new Palette(
            0xFBFAF5, 0xF2EFE6, 0x23272B, 0x5C6064, 0xDDD8CA, 0x0072B2, 0x0072B2, 0xE69F00,
            0xB36B00, 0x5E3A00, 0xB9AF98, 0x857C68, 0xA89D84, 0xA9B0B5, 0x4B5359, 0xA63A00);
    private static final Palette BY_NIGHT =
        new Palette(
            0x1B1D1F, 0x25282B, 0xECE9E1, 0xABAEAF, 0x3A3E42, 0x56B4E9, 0x56B4E9, 0xE69F00,
            0xE69F00, 0x1B1D1F, 0x8C8672, 0x8F8A7C, 0x6A6556, 0x6C757B, 0x22262A, 0xFF9A6B);
  }
}
