package flankfit.control;

import flankfit.nc.Expression.Step;
import flankfit.unit.Angles;

/** The functions of expressions; angles in degrees. Not a number outside the domain. */
final class Functions {
  /** Beyond 1 by this much an argument of ASIN and ACOS is only rounded (1). */
  private static final double ROUNDED = 1e-9;

  private Functions() {}

  /**
   * A function of one number.
   *
   * @param fixDown whether FIX goes down and FUP goes up also below zero
   */
  static double of(Step function, double x, boolean fixDown) {
    return switch (function) {
      case SIN -> sine(x);
      case COS -> sine(x + 90);
      case TAN -> tangent(x);
      case ASIN -> Angles.toDegrees(StrictMath.asin(unit(x)));
      case ACOS -> Angles.toDegrees(StrictMath.acos(unit(x)));
      case ATAN -> Angles.toDegrees(StrictMath.atan(x));
      case SQRT -> StrictMath.sqrt(x);
      case ABS -> Math.abs(x);
      case ROUND -> round(x);
      case FIX -> fixDown || x > 0 ? Math.floor(x) : Math.ceil(x);
      case FUP -> fixDown || x > 0 ? Math.ceil(x) : Math.floor(x);
      case LN -> x > 0 ? StrictMath.log(x) : Double.NaN;
      case EXP -> StrictMath.exp(x);
      default -> Double.NaN;
    };
  }

  /** Angle of the direction (x, y), above -180 and up to 180 degrees. */
  static double angle(double y, double x) {
    if (x == 0 && y == 0) {
      return Double.NaN;
    }
    double degrees = Angles.toDegrees(StrictMath.atan2(y, x));
    return degrees <= -180 ? 180 : degrees;
  }

  static double power(double base, double exponent) {
    return StrictMath.pow(base, exponent);
  }

  /** Exact at every quarter turn: what is left of it is taken before the conversion. */
  private static double sine(double degrees) {
    double rest = Math.IEEEremainder(degrees, 90);
    int quarter = (int) Math.floorMod((long) Math.rint((degrees - rest) / 90), 4L);
    double angle = Angles.toRadians(rest);
    return switch (quarter) {
      case 0 -> StrictMath.sin(angle);
      case 1 -> StrictMath.cos(angle);
      case 2 -> -StrictMath.sin(angle);
      default -> -StrictMath.cos(angle);
    };
  }

  private static double tangent(double degrees) {
    double cosine = sine(degrees + 90);
    return cosine == 0 ? Double.NaN : sine(degrees) / cosine;
  }

  private static double unit(double x) {
    return Math.abs(x) > 1 && Math.abs(x) <= 1 + ROUNDED ? Math.signum(x) : x;
  }

  private static double round(double x) {
    double size = Math.abs(x);
    double below = Math.floor(size);
    return Math.copySign(size - below >= 0.5 ? below + 1 : below, x);
  }
}
