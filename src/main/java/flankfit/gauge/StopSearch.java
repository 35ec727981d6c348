package flankfit.gauge;

import java.util.function.DoubleSupplier;
import java.util.function.Function;

/**
 * Finds the very height at which a gauge stops between two readings of a wall, by reading there
 * anew. What stands in the way from one moment to the next, such as a ridge cut off by the face, is
 * met at its edge; what draws nearer little by little is met where the gauge just has its size.
 */
final class StopSearch {
  /** Height to which a stop is found (mm). */
  private static final double NEAR = 1e-5;

  /** Room along the axis that counts as none (mm). */
  private static final double NO_ROOM = 1e-8;

  /** Share of a bracket that a guess is kept off its ends (1). */
  private static final double ASIDE = 0.02;

  private static final int MOST_READS = 40;

  private final WallField field;
  private final Rooms rooms;
  private final Function<WallField, Rooms> roomsOf;
  private final DoubleSupplier room;

  private double stands;
  private double stops;
  private boolean found;

  /**
   * A search.
   *
   * @param rooms takes the places read on the way
   * @param roomsOf the room that the gauge finds in other readings
   * @param room by how much the largest gauge that stands in all that was taken in is larger, as a
   *     pitch depth times tan α (mm); below 0 where the gauge does not stand; not a number where
   *     none of its kind does
   */
  StopSearch(
      WallField field, Rooms rooms, Function<WallField, Rooms> roomsOf, DoubleSupplier room) {
    this.field = field;
    this.rooms = rooms;
    this.roomsOf = roomsOf;
    this.room = room;
  }

  /**
   * Searches between a height at which the gauge stands and one at which it does not (mm), and
   * leaves in the rooms what was read of what the gauge meets where it stops.
   *
   * @param roomAbove room at the height where it stands (mm)
   * @param roomBelow room at the other (mm), or not a number
   * @return the height reached
   */
  double between(double from, double roomAbove, double to, double roomBelow) {
    stands = from;
    stops = to;
    Rooms atStop = null;
    double above = roomAbove;
    double below = roomBelow;
    for (int i = 0; i < MOST_READS && Math.abs(stops - stands) > NEAR; i++) {
      double share = above / (above - below);
      boolean guess = i % 3 < 2 && share > 0 && share < 1;
      double at = guess ? Math.min(1 - ASIDE, Math.max(ASIDE, share)) : 0.5;
      double z = stands + at * (stops - stands);
      Rooms there = roomsOf.apply(field.at(z));
      int before = rooms.extras();
      rooms.take(there);
      double left = room.getAsDouble();
      if (left >= 0) {
        stands = z;
        above = left;
      } else {
        rooms.leave(before);
        atStop = there;
        stops = z;
        below = left;
      }
      if (Math.abs(left) < NO_ROOM) {
        stands = z;
        break;
      }
    }
    found = atStop != null;
    if (found) {
      rooms.take(atStop);
    }
    return stands;
  }

  /** Whether it is among what was read that the gauge does not stand; else it is where it began. */
  boolean isFound() {
    return found;
  }
}
