package flankfit.gauge;

import flankfit.gauge.WallMeasures.Ends;
import flankfit.sweep.Wall;

/** How a thread begins at the mouth and ends below. */
final class ThreadEnds {
  /** Share of the pitch by which a ridge may stand short of the usual ones and be whole (1). */
  private static final double WHOLE = 0.02;

  private ThreadEnds() {}

  static Ends of(WallField field, FullForm form, int[] elements) {
    double lead = field.spec().lead();
    double first = field.height(elements[0]);
    double last = field.height(elements[elements.length - 1]);
    double end = Math.max(form.lowestGroove(), field.farMouth());
    return new Ends(
        (first - last) / lead + field.share(elements[0]) / field.spec().starts(),
        Math.max(0, (field.mouth() - first) / lead),
        Math.max(0, (last - end) / lead),
        chamferDepth(field, form.usualRidge() + WHOLE * field.spec().pitch()),
        faceDiameter(field));
  }

  private static double chamferDepth(WallField field, double depth) {
    Wall wall = field.wall();
    double highest = wall.bottom();
    for (int i = 0; i < field.directions(); i++) {
      double theta = field.angle(i);
      double radius = field.winding().turned(depth);
      WallLine line = WallLine.read(wall, field.isThrough(), theta, radius);
      double metal = line.low(line.count() - 1);
      highest = Double.isFinite(metal) ? Math.max(highest, metal) : highest;
    }
    return wall.top() - highest;
  }

  /** Least diameter at the face of a hole, greatest of a boss: grooves that meet the face apart. */
  private static double faceDiameter(WallField field) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < field.directions(); i++) {
      least = Math.min(least, field.face(i));
    }
    return 2 * field.winding().turned(least);
  }
}
