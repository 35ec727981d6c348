package flankfit.unit;

/** Angles at the border are degrees, inside radians. */
public final class Angles {
  /** A whole turn (rad). */
  public static final double TURN = 2 * Math.PI;

  private Angles() {}

  /** Degrees as radians (rad). */
  public static double toRadians(double degrees) {
    return degrees / 180 * Math.PI;
  }

  /** Radians (rad) as degrees. */
  public static double toDegrees(double radians) {
    return radians / Math.PI * 180;
  }

  /** The same direction in [0, 2π) (rad). */
  public static double normalised(double radians) {
    double rest = radians % TURN;
    double positive = rest < 0 ? rest + TURN : rest;
    return positive >= TURN ? 0 : positive;
  }
}
