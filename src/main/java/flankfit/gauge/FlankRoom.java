package flankfit.gauge;

/**
 * How far the flanks of a wall leave room for those of a gauge: the least, over the cylinders that
 * both reach, of the flank's distance from the helix and the depth times tan α.
 */
final class FlankRoom {
  private final WallField field;
  private final double tan;
  private final double root;
  private final double crest;

  FlankRoom(WallField field, ThreadGauge gauge) {
    this.field = field;
    this.tan = field.winding().tan();
    this.root = field.winding().turned(gauge.rootRadius());
    this.crest = field.winding().turned(gauge.crestRadius());
  }

  /** Room at an element on one flank, less a quarter of the pitch (mm); infinite where free. */
  double of(int e, boolean up) {
    double ridge = field.ridge(e, up);
    double least = Double.POSITIVE_INFINITY;
    double low = Math.max(root, ridge);
    for (int step = 0; step < field.depths(); step++) {
      double depth = field.depth(step);
      if (depth >= low && depth <= crest) {
        least = lesser(least, field.flank(e, step, up), depth);
      }
    }
    if (crest >= low) {
      least = lesser(least, field.flankAt(e, crest, up), crest);
    }
    if (ridge >= root && ridge <= crest) {
      least = lesser(least, field.atRidge(e, up), ridge);
    } else if (ridge < root) {
      least = lesser(least, field.flankAt(e, root, up), root);
    }
    double bottom = field.bottom(e);
    if (bottom >= low && bottom <= crest) {
      least = lesser(least, field.atBottom(e, up), bottom);
    }
    return least - field.winding().pitch() / 4;
  }

  /** The lesser of a room and that on one cylinder, which may not be a number. */
  private double lesser(double least, double flank, double depth) {
    double room = flank + depth * tan;
    return room < least ? room : least;
  }
}
