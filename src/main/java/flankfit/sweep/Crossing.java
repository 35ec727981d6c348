package flankfit.sweep;

/**
 * A line parallel to the cutter's axis as a cutter on a straight path passes it.
 *
 * @param nearest least distance of the cutter's axis from the line (mm), not below 0
 * @param slope rise for one length of way across (1), not below 0
 */
record Crossing(double nearest, double slope) implements Meeting {
  @Override
  public double risen(double distance) {
    double square = (distance - nearest) * (distance + nearest);
    return slope * Math.sqrt(Math.max(0, square));
  }

  @Override
  public double contact(double tangent) {
    double ratio = slope / tangent;
    return ratio < 1 ? nearest / Math.sqrt((1 - ratio) * (1 + ratio)) : Double.NaN;
  }
}
