package flankfit.sweep;

/**
 * The part of one way past a line parallel to the axis during which the line lies within the
 * cutter. Ways count from where the cutter's axis is nearest; only their signs matter here.
 *
 * @param meeting how the axis draws away from the line
 * @param nearest least distance of the whole way (mm)
 * @param from way where the part begins; not beyond its end
 * @param to way where it ends
 * @param atFrom distance there (mm)
 * @param atTo distance there (mm)
 * @param rises whether the cutter rises with the way, rather than falls
 */
record Span(
    Meeting meeting,
    double nearest,
    double from,
    double to,
    double atFrom,
    double atTo,
    boolean rises) {
  /** Greatest height of a flank above the cutter's where the axis is nearest (mm). */
  double up(FlankShape shape) {
    return rises ? forwards(shape) : backwards(shape);
  }

  /** Greatest depth of a flank below it (mm). */
  double down(FlankShape shape) {
    return rises ? backwards(shape) : forwards(shape);
  }

  /** Greatest of rise and width; before the nearest place both grow, so the end is best. */
  private double forwards(FlankShape shape) {
    if (to <= 0) {
      return shape.width(atTo) - meeting.risen(atTo);
    }
    return shape.reach(meeting, Math.min(from > 0 ? atFrom : nearest, atTo), atTo);
  }

  private double backwards(FlankShape shape) {
    if (from >= 0) {
      return shape.width(atFrom) - meeting.risen(atFrom);
    }
    return shape.reach(meeting, Math.min(to < 0 ? atTo : nearest, atFrom), atFrom);
  }
}
