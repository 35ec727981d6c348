package flankfit.lesson;

import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Ways in plain words, as seen by one who stands before the machine: right is +X, back is +Y, up is
 * +Z.
 */
final class Sides {
  private static final double NOTHING = 1e-6;
  private static final String[] PLUS = {"right", "back", "up"};
  private static final String[] MINUS = {"left", "to the front", "down"};

  private Sides() {}

  /** A way (mm), such as {@code 1.5 right, 3 back and 0.2 up}; empty text for none. */
  static String way(Point way, LengthUnit unit) {
    List<String> parts = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      double d = way.axis(axis);
      if (Math.abs(d) > NOTHING) {
        parts.add(Numeral.plain(Math.abs(d), unit) + " " + (d > 0 ? PLUS : MINUS)[axis]);
      }
    }
    return joined(parts);
  }

  private static String joined(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  /** How far round (rad), such as {@code once round anticlockwise}. */
  static String round(double sweep, Plane plane) {
    double turns = Math.abs(sweep) / (2 * Math.PI);
    String sense = sweep > 0 ? " anticlockwise" : " clockwise";
    return share(turns) + sense + seen(plane);
  }

  private static String seen(Plane plane) {
    return switch (plane) {
      case XY -> "";
      case ZX -> ", seen from the back";
      case YZ -> ", seen from the right";
    };
  }

  private static String share(double turns) {
    if (Math.abs(turns - 1) < 1e-6) {
      return "once round";
    }
    if (Math.abs(turns - 2) < 1e-6) {
      return "twice round";
    }
    if (Math.abs(turns - Math.rint(turns)) < 1e-6) {
      return (int) Math.rint(turns) + " times round";
    }
    if (Math.abs(turns - 0.5) < 1e-6) {
      return "half round";
    }
    if (Math.abs(turns - 0.25) < 1e-6) {
      return "a quarter round";
    }
    if (Math.abs(turns - 0.75) < 1e-6) {
      return "three quarters round";
    }
    return Numeral.plain(turns * 360, LengthUnit.MILLIMETRE) + "° round";
  }
}
