package flankfit.trace;

import flankfit.motion.Point;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.OptionalDouble;

/** Numbers of one unit of length as a trace shows them. */
final class Numbers {
  private static final int MOST_DECIMALS = 6;

  private final LengthUnit unit;

  Numbers(LengthUnit unit) {
    this.unit = unit;
  }

  private int decimals() {
    return unit == LengthUnit.INCH ? 4 : 3;
  }

  /** A length (mm) with its unit; inches with millimetres beside them. */
  String length(double mm) {
    String shown = Lengths.print(mm, unit, decimals());
    return unit == LengthUnit.INCH
        ? shown + " = " + Lengths.print(mm, LengthUnit.MILLIMETRE, 3)
        : shown;
  }

  /** A length (mm) in the unit alone. */
  String brief(double mm) {
    return Lengths.print(mm, unit, decimals());
  }

  /** A length (mm) in the unit alone, without its symbol. */
  String bare(double mm) {
    String shown = brief(mm);
    return shown.substring(0, shown.indexOf(' '));
  }

  /** A point (mm), such as {@code X10.000 Y0.000 Z-5.000}. */
  String point(Point p) {
    return "X" + bare(p.x()) + " Y" + bare(p.y()) + " Z" + bare(p.z());
  }

  /** A feed (mm/min) with its unit. */
  String feed(double perMinute) {
    return Lengths.brief(perMinute, unit, 3) + "/min";
  }

  /** A spindle speed (1/min) with its unit. */
  static String speed(double perMinute) {
    return plain(perMinute) + " rev/min";
  }

  /** A number without unit. */
  static String plain(double number) {
    return Lengths.plain(number, MOST_DECIMALS);
  }

  /** The value of a variable. */
  static String variable(OptionalDouble value) {
    return value.isPresent() ? plain(value.getAsDouble()) : "vacant";
  }
}
