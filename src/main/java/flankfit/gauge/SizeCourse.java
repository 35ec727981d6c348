package flankfit.gauge;

import flankfit.gauge.Travel.From;
import java.util.Arrays;
import java.util.function.Function;

/**
 * How large a gauge of a form may be to come so far into a thread: a course that only falls. A
 * gauge of any size stops where the course falls below its own; so one course tells the turns of
 * all sizes.
 */
public final class SizeCourse {
  private final double pitch;
  private double[] gone = new double[32];
  private double[] clearance = new double[32];
  private int count;
  private double blockedAt = Double.POSITIVE_INFINITY;

  private SizeCourse(double pitch) {
    this.pitch = pitch;
  }

  /** Forms of gauges. */
  enum Form {
    /** Flanks that grow behind a crest that stays; ends where the crest does not go. */
    FLANKS_BEHIND_CREST,
    /** Flanks alone. */
    FLANKS,
    /** A crest alone. */
    CREST
  }

  /**
   * The course of a thread gauge that is free to shift, from one end.
   *
   * @param wanted height at which the course is asked (mm): flanks may run out there
   */
  static SizeCourse of(WallField field, ThreadGauge gauge, Form form, From from, double wanted) {
    Rooms rooms = Rooms.onTheWay(field, gauge, form, wanted);
    return new Walk(
            field, rooms, at -> Rooms.of(at, gauge, form), form == Form.CREST, gauge.length(), from)
        .course();
  }

  /** The course of a plain plug between the ridges, pushed in from the mouth. */
  static SizeCourse ofPlain(WallField field, double diameter) {
    Rooms rooms = Rooms.plain(field, diameter);
    return new Walk(
            field,
            rooms,
            at -> Rooms.plain(at, diameter),
            true,
            Double.POSITIVE_INFINITY,
            From.MOUTH)
        .course();
  }

  /**
   * Diameter that the largest gauge to come so far has beyond the gauge itself (mm); below 0 the
   * gauge is too large. No more than one pitch.
   *
   * @param length way from the first metal on the pitch cylinder (mm)
   */
  public double upTo(double length) {
    int i = Arrays.binarySearch(gone, 0, count, length);
    int at = i >= 0 ? i : -i - 2;
    return at < 0 ? pitch : Math.min(pitch, clearance[at]);
  }

  /** This course as far as its crest goes, then that of the flanks alone; it must be blocked. */
  SizeCourse then(SizeCourse flanks) {
    SizeCourse both = new SizeCourse(pitch);
    for (int i = 0; i < count && gone[i] < blockedAt; i++) {
      both.add(gone[i], clearance[i]);
    }
    both.add(blockedAt, flanks.upTo(blockedAt));
    for (int i = 0; i < flanks.count; i++) {
      if (flanks.gone[i] >= blockedAt) {
        both.add(flanks.gone[i], flanks.clearance[i]);
      }
    }
    return both;
  }

  boolean isBlocked() {
    return blockedAt < Double.POSITIVE_INFINITY;
  }

  /** Way after which the crest meets metal (mm); infinite when it never does. */
  double blockedAt() {
    return blockedAt;
  }

  /** Adds a place; the course never rises again. */
  private void add(double at, double value) {
    if (count > 0 && value >= clearance[count - 1]) {
      return;
    }
    if (count > 0 && gone[count - 1] >= at) {
      clearance[count - 1] = value;
      return;
    }
    if (count == gone.length) {
      gone = Arrays.copyOf(gone, 2 * count);
      clearance = Arrays.copyOf(clearance, 2 * count);
    }
    gone[count] = at;
    clearance[count++] = value;
  }

  /** The gauge on its way, made as large as goes at every step; see {@link Travelling}. */
  private static final class Walk {
    private final WallField field;
    private final Rooms rooms;
    private final Function<WallField, Rooms> roomsOf;
    private final LargestGauge largest;
    private final double length;
    private final From from;
    private double tightest = Double.POSITIVE_INFINITY;
    private int rear;

    Walk(
        WallField field,
        Rooms rooms,
        Function<WallField, Rooms> roomsOf,
        boolean crestGrows,
        double length,
        From from) {
      this.field = field;
      this.rooms = rooms;
      this.roomsOf = roomsOf;
      this.largest = new LargestGauge(rooms, true, crestGrows);
      this.length = length;
      this.from = from;
    }

    SizeCourse course() {
      SizeCourse course = new SizeCourse(rooms.winding().pitch());
      for (int step = 0; step < rooms.size(); step++) {
        int element = element(step);
        while (Math.abs(rooms.height(element(rear)) - rooms.height(element)) > length) {
          rear++;
        }
        if (!largest.isBrokenBy(element)) {
          continue;
        }
        boolean stands = stands(step);
        if ((!stands || largest.height() < tightest) && !rooms.isRead(element)) {
          // what is only thought to lie there is read before it counts
          rooms.put(element, roomsOf.apply(field.at(rooms.height(element))));
          largest.clear();
          stands = stands(step);
        }
        if (!stands) {
          course.blockedAt = gone(element);
          course.add(course.blockedAt, -rooms.winding().pitch());
          return course;
        }
        if (largest.height() < tightest) {
          tightest = largest.height();
          course.add(gone(element), clearance(tightest));
        }
      }
      return course;
    }

    /** Makes it as large as goes; what its last thread has left holds it no longer. */
    private boolean stands(int step) {
      boolean stands = fit(step);
      boolean tighter = !stands || largest.height() < tightest;
      if (tighter && largest.touchesOutside(lowest(step), highest(step))) {
        largest.clear();
        stands = fit(step);
      }
      return stands;
    }

    private double clearance(double height) {
      return 2 * (height - rooms.pitchHeight()) / rooms.winding().tan();
    }

    private boolean fit(int step) {
      return largest.fit(lowest(step), highest(step));
    }

    private double gone(int element) {
      double z = rooms.height(element);
      return from == From.MOUTH ? field.mouth() - z : z - field.farMouth();
    }

    private int element(int step) {
      return from == From.MOUTH ? step : rooms.size() - 1 - step;
    }

    private int lowest(int step) {
      return Math.min(element(rear), element(step));
    }

    private int highest(int step) {
      return Math.max(element(rear), element(step));
    }
  }
}
