package flankfit.gauge;

import flankfit.gauge.Travel.End;
import flankfit.unit.Require;
import flankfit.unit.Tolerance;
import java.util.Arrays;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/**
 * How far a plain plug goes between the crests of a hole's ridges, or a plain ring over those of a
 * boss, pushed straight from the mouth and free to shift sideways.
 *
 * @param diameter diameter of the gauge (mm)
 * @param z height that its front reaches (mm)
 * @param end how it ends
 * @param theta direction in which it is stopped (rad); empty when nothing stops it
 * @param clearance diameter of the largest gauge that would have come as far, less its own, signed
 *     so that below 0 is too tight (mm)
 */
public record PlainTravel(
    double diameter, double z, End end, OptionalDouble theta, double clearance) {
  public PlainTravel {
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(theta, "theta");
  }

  /**
   * Pushes a plain gauge on.
   *
   * @param field the wall, read once
   * @param diameter diameter of the gauge (mm), above 0
   */
  public static PlainTravel of(WallField field, double diameter) {
    Rooms rooms = Rooms.plain(field, Require.positive("diameter", diameter));
    LargestGauge largest = new LargestGauge(rooms, true, true);
    double slack = Tolerance.MODEL.value() * rooms.winding().tan() / 2;
    for (int e = 0; e < rooms.size(); e++) {
      if (largest.isBrokenBy(e)) {
        largest.fit(0, e);
        if (isTooLarge(rooms, largest, slack) && !rooms.isRead(e)) {
          // what is only thought to lie there is read before it stops the gauge
          rooms.put(e, Rooms.plain(field.at(rooms.height(e)), diameter));
          largest.clear();
          largest.fit(0, e);
        }
        if (isTooLarge(rooms, largest, slack)) {
          return stopped(field, diameter, rooms, e, slack);
        }
      }
    }
    End end = field.isThrough() ? End.THROUGH : End.ON_FLOOR;
    return new PlainTravel(
        diameter, field.bottom(), end, OptionalDouble.empty(), clearance(rooms, largest));
  }

  private static boolean isTooLarge(Rooms rooms, LargestGauge largest, double slack) {
    return largest.height() < rooms.pitchHeight() - slack;
  }

  /** Finds where a gauge stops that does not stand in all elements up to one. */
  private static PlainTravel stopped(
      WallField field, double diameter, Rooms rooms, int e, double slack) {
    LargestGauge largest = new LargestGauge(rooms, true, true);
    largest.fit(0, e);
    double below = largest.height() - rooms.pitchHeight() + slack;
    double last = e > 0 ? rooms.height(e - 1) : rooms.height(e);
    DoubleSupplier room =
        () -> {
          largest.clear();
          largest.fit(0, e - 1);
          return largest.height() - rooms.pitchHeight() + slack;
        };
    double above = room.getAsDouble();
    StopSearch search = new StopSearch(field, rooms, at -> Rooms.plain(at, diameter), room);
    double reached = search.between(last, above, rooms.height(e), below);
    largest.clear();
    largest.fit(0, search.isFound() ? e - 1 : e);
    int touched = Arrays.stream(largest.contacts(0)).max().orElse(e * LargestGauge.KINDS);
    double z = Math.min(field.top(), reached + rooms.winding().pitch() / 2);
    OptionalDouble theta = OptionalDouble.of(rooms.theta(touched / LargestGauge.KINDS));
    return new PlainTravel(diameter, z, End.STOPPED, theta, clearance(rooms, largest));
  }

  private static double clearance(Rooms rooms, LargestGauge largest) {
    return 2 * (largest.height() - rooms.pitchHeight()) / rooms.winding().tan();
  }
}
