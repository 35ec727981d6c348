package flankfit.cutting;

/**
 * What one row of all teeth feels in a steady turn; forces are means over a turn of the cutter.
 *
 * @param volume metal that one tooth takes (mm³)
 * @param cutting cutting force, summed over the teeth in cut (N)
 * @param away force on the mill away from the wall (N); negative when it is pulled in
 * @param along force on the mill along its feed (N)
 * @param greatestChip thickest chip (mm)
 * @param angle angle from the thinnest to the last metal on the crest (rad)
 */
public record RowForce(
    double volume, double cutting, double away, double along, double greatestChip, double angle) {
  /** No metal met. */
  public static final RowForce NONE = new RowForce(0, 0, 0, 0, 0, 0);

  RowForce times(double share) {
    return new RowForce(
        volume * share, cutting * share, away * share, along * share, greatestChip, angle);
  }

  RowForce plus(RowForce other) {
    return new RowForce(
        volume + other.volume,
        cutting + other.cutting,
        away + other.away,
        along + other.along,
        Math.max(greatestChip, other.greatestChip),
        Math.max(angle, other.angle));
  }
}
