package flankfit.gauge;

import flankfit.gauge.Fit.DecidedBy;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far a gauge goes when it is screwed on by hand: turned along the thread's helix from one end,
 * free to turn a little more or less, and free to shift sideways or held central, upright at all
 * times.
 *
 * @param gauge the gauge
 * @param from end where it is put on
 * @param play whether it may shift sideways
 * @param turns turns it goes from the first metal on the pitch cylinder (1); all there are when it
 *     is not stopped
 * @param z height that its foremost thread reaches (mm)
 * @param end how the travel ends
 * @param contacts what it touches where it stops, foremost first; what it touches at its tightest
 *     place when nothing stops it
 * @param clearance pitch diameter of the largest gauge of the form that would have come as far,
 *     less its own, signed so that below 0 is too tight (mm); empty when nothing was touched
 * @param shiftX sideways shift where it stops or is tightest (mm)
 * @param shiftY sideways shift where it stops or is tightest (mm)
 */
public record Travel(
    ThreadGauge gauge,
    From from,
    Play play,
    double turns,
    double z,
    End end,
    List<Contact> contacts,
    OptionalDouble clearance,
    double shiftX,
    double shiftY) {
  public Travel {
    Objects.requireNonNull(gauge, "gauge");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(clearance, "clearance");
    contacts = List.copyOf(contacts);
  }

  /** Ends where a gauge is put on. */
  public enum From {
    MOUTH,
    FAR_END
  }

  /** How a gauge is held. */
  public enum Play {
    /** Free to shift sideways, as by hand. */
    FREE,
    /** Held central to the thread's axis. */
    CENTRAL
  }

  /** How a travel ends. */
  public enum End {
    /** The gauge is too large for what comes next. */
    STOPPED,
    /** The gauge comes out at the other end. */
    THROUGH,
    /** The gauge stands on the end of the wall. */
    ON_FLOOR
  }

  /**
   * A place where the gauge touches.
   *
   * @param by part of the gauge: its crest, or the flank of the groove that it touches
   * @param theta direction (rad)
   * @param turn turns below the first metal on the pitch cylinder, on the way of travel (1)
   * @param z height of the gauge's ridge there (mm)
   */
  public record Contact(DecidedBy by, double theta, double turn, double z) {}

  /**
   * Screws a gauge on from the mouth, free to shift sideways.
   *
   * @param field the wall, read once
   */
  public static Travel of(WallField field, ThreadGauge gauge) {
    return of(field, gauge, From.MOUTH, Play.FREE);
  }

  /**
   * Screws a gauge on.
   *
   * @param field the wall, read once
   * @throws IllegalArgumentException if it is put on at the far end of a blind hole
   */
  public static Travel of(WallField field, ThreadGauge gauge, From from, Play play) {
    if (from == From.FAR_END && !field.isThrough()) {
      throw new IllegalArgumentException("from must be MOUTH: the far end is not open");
    }
    return new Travelling(field, gauge, from, play).travel();
  }

  /** What stopped the gauge; empty when nothing did. */
  public Optional<Contact> stoppedOn() {
    return end == End.STOPPED ? contacts.stream().findFirst() : Optional.empty();
  }

  /**
   * Whether the gauge has passed a height (mm).
   *
   * @param height height that its foremost thread must reach
   */
  public boolean reaches(double height) {
    return end == End.THROUGH || (from == From.MOUTH ? z <= height : z >= height);
  }
}
