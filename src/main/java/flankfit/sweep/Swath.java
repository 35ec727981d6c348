package flankfit.sweep;

/** What of a cutter moves alike: rows of one form on one path, or a cylinder of its body. */
final class Swath {
  private final double outside;
  private final FlankShape up;
  private final FlankShape down;
  private final double[] heights;

  /**
   * Some rows.
   *
   * @param outside radius (mm)
   * @param up upper flank of each row
   * @param down lower flank
   * @param heights heights of the rows' middles above the tool's lowest point (mm), rising
   */
  Swath(double outside, FlankShape up, FlankShape down, double[] heights) {
    this.outside = outside;
    this.up = up;
    this.down = down;
    this.heights = heights.clone();
  }

  /** A cylinder. */
  static Swath of(Cutter.Section section) {
    double half = (section.to() - section.from()) / 2;
    double[] radius = {section.radius(), 0};
    double[] width = {half, half};
    ToothSide side = new ToothSide(radius, width);
    return new Swath(section.radius(), side, side, new double[] {section.from() + half});
  }

  double outside() {
    return outside;
  }

  /** Heights of the rows' middles above the tool's lowest point (mm), rising. */
  double[] heights() {
    return heights;
  }

  FlankShape up() {
    return up;
  }

  FlankShape down() {
    return down;
  }

  /**
   * Adds the stretch that one span opens for a row at the tip, when the tip's height at its nearest
   * is z.
   */
  void open(Span span, double z, Openings out) {
    out.add(z - span.down(down), z + span.up(up));
  }

  /**
   * Adds what a row at the tip opens while the distance from the line stays and the tip goes up or
   * down.
   */
  void open(double distance, double zLow, double zHigh, Openings out) {
    out.add(zLow - down.width(distance), zHigh + up.width(distance));
  }

  /** Whether a tip between two heights can open anything between bottom and top (mm). */
  boolean touches(double zLow, double zHigh, double bottom, double top) {
    double highest = zHigh + heights[heights.length - 1] + up.width(0);
    double lowest = zLow + heights[0] - down.width(0);
    return highest >= bottom && lowest <= top;
  }
}
