package flankfit.picture;

/** Coordinates one after the other (mm), never changed: of points, ends of lines, corners. */
public final class Coordinates {
  /** None at all. */
  public static final Coordinates NONE = new Coordinates();

  private final double[] values;

  /** Coordinates x, y, z of one point after the other (mm). */
  public Coordinates(double... values) {
    this.values = values.clone();
  }

  /** How many there are: three a point. */
  public int size() {
    return values.length;
  }

  /** One of them (mm). */
  public double at(int index) {
    return values[index];
  }
}
