package flankfit.gauge;

import flankfit.gauge.Travel.End;
import flankfit.unit.Require;
import flankfit.unit.Tolerance;
import java.util.Objects;
import java.util.OptionalDouble;

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
    for (int e = 0; e < field.size(); e++) {
      if (largest.isBrokenBy(e)) {
        largest.fit(0, e);
        if (largest.height() < rooms.pitchHeight() - slack) {
          double z = Math.min(field.top(), field.height(e) + rooms.winding().pitch() / 2);
          OptionalDouble theta = OptionalDouble.of(field.theta(e));
          return new PlainTravel(diameter, z, End.STOPPED, theta, clearance(rooms, largest));
        }
      }
    }
    End end = field.isThrough() ? End.THROUGH : End.ON_FLOOR;
    return new PlainTravel(
        diameter, field.bottom(), end, OptionalDouble.empty(), clearance(rooms, largest));
  }

  private static double clearance(Rooms rooms, LargestGauge largest) {
    return 2 * (largest.height() - rooms.pitchHeight()) / rooms.winding().tan();
  }
}
