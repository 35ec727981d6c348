package flankfit.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Heights of the helix at which the ends of a wall begin to show a gauge a groove's bottom, the
 * ridge below it and the ridge above it: just within the wall.
 */
final class EndEdges {
  /** Distance within the edge at which a place is read (mm). */
  private static final double WITHIN = 1e-6;

  private static final int MOST_READS = 12;

  private EndEdges() {}

  /** The heights at both ends, or at the mouth where the other is closed (mm). */
  static List<Double> of(WallField field, ThreadGauge gauge) {
    List<Double> found = new ArrayList<>();
    double crest = field.winding().turned(gauge.crestRadius());
    add(field, crest, field.top(), -WITHIN, found);
    if (field.isThrough()) {
      add(field, crest, field.bottom(), WITHIN, found);
    }
    return found;
  }

  private static void add(
      WallField field, double crest, double end, double within, List<Double> found) {
    found.add(end + within);
    edge(field, crest, end, within, true).ifPresent(found::add);
    edge(field, crest, end, within, false).ifPresent(found::add);
  }

  /**
   * Follows the flank at the crest's depth out to the end. From a height of the helix the flank
   * says at which height it would meet the end if it went on as it stands.
   */
  private static OptionalDouble edge(
      WallField field, double crest, double end, double within, boolean up) {
    double sense = up ? 1 : -1;
    int first = outermost(field, crest, end, up);
    if (first < 0) {
      return OptionalDouble.empty();
    }
    double inside = field.height(first);
    double at = end + within - sense * field.flankAt(first, crest, up);
    for (int i = 0; i < MOST_READS && Math.abs(at - inside) > 2 * WITHIN; i++) {
      double flank = field.flankOn(at, crest, up);
      if (Double.isFinite(flank)) {
        inside = at;
        at = end + within - sense * flank;
      } else {
        at = (inside + at) / 2;
      }
    }
    return OptionalDouble.of(inside);
  }

  /** The element that has the flank at a depth and lies nearest to an end, or beyond it. */
  private static int outermost(WallField field, double depth, double end, boolean up) {
    boolean fromTop = end == field.top();
    for (int i = 0; i < field.size(); i++) {
      int e = fromTop ? i : field.size() - 1 - i;
      if (Double.isFinite(field.flankAt(e, depth, up))) {
        return e;
      }
    }
    return -1;
  }
}
