package flankfit.solid;

/**
 * Metal cut by a plane: closed loops with metal to the left, and the triangles that fill them.
 * Loops round metal run counter-clockwise seen against the normal, loops round holes clockwise.
 */
public final class Section {
  private final SectionPlane plane;
  private final double[] outline;
  private final int[] makers;
  private final int[] starts;
  private final int[] fill;
  private final int unfilled;

  Section(
      SectionPlane plane, double[] outline, int[] makers, int[] starts, int[] fill, int unfilled) {
    this.plane = plane;
    this.outline = outline;
    this.makers = makers;
    this.starts = starts;
    this.fill = fill;
    this.unfilled = unfilled;
  }

  /** Cuts a body whose surface is known already. */
  public static Section of(Mesh mesh, Solid solid, SectionPlane plane) {
    Outline outline = new OutlineTracer(mesh, solid, plane).trace();
    Cap cap = Cap.of(outline);
    return new Section(
        plane,
        outline.places(),
        outline.makers(),
        outline.starts(),
        cap.triangles(),
        cap.unfilled());
  }

  /** The plane. */
  public SectionPlane plane() {
    return plane;
  }

  /** Number of loops. */
  public int loopCount() {
    return starts.length - 1;
  }

  /** First point of a loop; that of the next loop ends it. */
  public int start(int loop) {
    return starts[loop];
  }

  /** Number of points of all loops. */
  public int pointCount() {
    return makers.length;
  }

  /** Coordinate of a point to the right on the plane (mm). */
  public double right(int point) {
    return outline[2 * point];
  }

  /** Coordinate of a point upward on the plane (mm). */
  public double up(int point) {
    return outline[2 * point + 1];
  }

  /** Maker of the piece from a point to the next of its loop. */
  public int maker(int point) {
    return makers[point];
  }

  /** Number of triangles of the fill. */
  public int triangleCount() {
    return fill.length / 3;
  }

  /** Point at a corner 0, 1, 2 of a triangle, counter-clockwise seen against the normal. */
  public int corner(int triangle, int corner) {
    return fill[3 * triangle + corner];
  }

  /** Number of hole loops that lie in no loop round metal; they are too small to be trusted. */
  public int unfilled() {
    return unfilled;
  }

  /** Area of metal in the plane (mm²). */
  public double area() {
    double area = 0;
    for (int loop = 0; loop < loopCount(); loop++) {
      area += Cap.area(outline, starts[loop], starts[loop + 1]);
    }
    return area;
  }
}
