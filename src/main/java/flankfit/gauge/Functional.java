package flankfit.gauge;

import flankfit.gauge.Fit.DecidedBy;
import flankfit.gauge.Travel.Play;
import java.util.Objects;

/**
 * The functional diameter of a stretch of a wall: pitch diameter of the largest perfect plug thread
 * of a form, or smallest ring, that stands in all of it at once.
 *
 * @param diameter pitch diameter (mm)
 * @param decidedBy what touches first; flank-up when both flanks are alike
 * @param shiftX sideways shift at which the largest gauge stands (mm)
 * @param shiftY sideways shift at which the largest gauge stands (mm)
 */
public record Functional(double diameter, DecidedBy decidedBy, double shiftX, double shiftY) {
  /** Loss by the crest from which it is said to decide (mm): the last figure told. */
  private static final double CREST_FIRST = 1e-4;

  public Functional {
    Objects.requireNonNull(decidedBy, "decidedBy");
  }

  /**
   * The largest gauge with a full crest: the crest stays at its radius while the pitch diameter
   * grows; where even that crest does not pass, it gives way together with the pitch diameter.
   *
   * @param low least height of grooves engaged (mm)
   * @param high greatest height of grooves engaged (mm)
   * @throws IllegalArgumentException if no groove lies between the heights
   */
  static Functional full(WallField field, Play play, double low, double high) {
    Functional flanks = flanks(field, play, low, high);
    Rooms rooms = Rooms.of(field, ThreadGauge.go(field.spec()));
    LargestGauge largest = new LargestGauge(rooms, play == Play.FREE, false);
    int first = first(rooms, high);
    int last = last(rooms, low);
    boolean crest = false;
    if (!largest.fit(first, last)) {
      largest = new LargestGauge(rooms, play == Play.FREE, true);
      largest.fit(first, last);
      crest = true;
    }
    double diameter = rooms.diameter(largest.height());
    crest |= rooms.winding().sign() * (flanks.diameter - diameter) > CREST_FIRST;
    return of(rooms, largest, crest ? DecidedBy.CREST : flanks.decidedBy);
  }

  /** The largest gauge with its crest relieved, so that flanks alone decide. */
  static Functional flanks(WallField field, Play play, double low, double high) {
    Rooms rooms = Rooms.flanksOnly(field, ThreadGauge.goRelieved(field.spec()));
    LargestGauge largest = new LargestGauge(rooms, play == Play.FREE, false);
    largest.fit(first(rooms, high), last(rooms, low));
    return of(rooms, largest, rooms.decidedBy(largest));
  }

  private static Functional of(Rooms rooms, LargestGauge largest, DecidedBy by) {
    double scale = rooms.winding().sign() / rooms.winding().tan();
    return new Functional(
        rooms.diameter(largest.height()), by, scale * largest.shift(0), scale * largest.shift(1));
  }

  private static int first(Rooms rooms, double high) {
    int e = 0;
    while (e < rooms.size() && rooms.height(e) > high) {
      e++;
    }
    if (e == rooms.size()) {
      throw new IllegalArgumentException("no groove lies below " + high);
    }
    return e;
  }

  private static int last(Rooms rooms, double low) {
    int e = rooms.size() - 1;
    while (e >= 0 && rooms.height(e) < low) {
      e--;
    }
    if (e < 0) {
      throw new IllegalArgumentException("no groove lies above " + low);
    }
    return e;
  }
}
