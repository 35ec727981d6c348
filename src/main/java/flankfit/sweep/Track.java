package flankfit.sweep;

import java.util.List;
import java.util.Optional;

/** What moves alike along the legs of its path, those that pass the wall by left out. */
final class Track {
  private final Swath swath;
  private final Leg[] legs;
  private final double[] x;
  private final double[] y;
  private final double[] square;

  private Track(Swath swath, List<Leg> legs) {
    this.swath = swath;
    this.legs = legs.toArray(new Leg[0]);
    this.x = new double[this.legs.length];
    this.y = new double[this.legs.length];
    this.square = new double[this.legs.length];
    for (int i = 0; i < this.legs.length; i++) {
      double[] disc = this.legs[i].disc();
      double reach = disc[2] + swath.outside() + 2 * Leg.ON;
      x[i] = disc[0];
      y[i] = disc[1];
      square[i] = reach * reach;
    }
  }

  /** The track between two heights (mm); empty when nothing passes there. */
  static Optional<Track> of(Swath swath, List<Leg> path, double bottom, double top) {
    List<Leg> near =
        path.stream().filter(leg -> swath.touches(leg.zLow(), leg.zHigh(), bottom, top)).toList();
    return near.isEmpty() ? Optional.empty() : Optional.of(new Track(swath, near));
  }

  /**
   * Adds the stretches of a line parallel to the axis that are opened; place as of a leg. All rows
   * open the same, so what the legs open is joined before it is told for each row: a curve of many
   * short legs opens one stretch as it passes.
   */
  void open(double px, double py, Openings out) {
    Openings ofOne = new Openings(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    openOne(px, py, ofOne);
    double[] ends = new double[2 * ofOne.size()];
    int count = ofOne.joined(ends);
    for (double height : swath.heights()) {
      for (int i = 0; i < count; i++) {
        out.add(ends[2 * i] + height, ends[2 * i + 1] + height);
      }
    }
  }

  private void openOne(double px, double py, Openings out) {
    for (int i = 0; i < legs.length; i++) {
      double dx = px - x[i];
      double dy = py - y[i];
      if (dx * dx + dy * dy <= square[i]) {
        legs[i].open(px, py, swath, out);
      }
    }
  }

  /** The greatest radius it reaches from the wall's axis, or the least (mm). */
  double deepest(boolean internal) {
    double deepest = internal ? 0 : Double.POSITIVE_INFINITY;
    for (Leg leg : legs) {
      deepest =
          internal
              ? Math.max(deepest, leg.farthest() + swath.outside())
              : Math.min(deepest, leg.nearest() - swath.outside());
    }
    return deepest;
  }
}
