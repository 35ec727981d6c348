package flankfit.solid;

/** Where metal ends on a segment; filled anew by each question, so that loops make no objects. */
public final class Crossing {
  /** Maker of the stock's own skin. */
  public static final int STOCK = -1;

  private double x;
  private double y;
  private double z;
  private double normalX;
  private double normalY;
  private double normalZ;
  private int maker = STOCK;

  /** Sets the place (mm). */
  public void place(double atX, double atY, double atZ) {
    x = atX;
    y = atY;
    z = atZ;
  }

  /** Sets the unit normal, out of the metal. */
  public void normal(double outX, double outY, double outZ) {
    normalX = outX;
    normalY = outY;
    normalZ = outZ;
  }

  /** Sets what made the surface here: index of a move, or {@link #STOCK}. */
  public void maker(int index) {
    maker = index;
  }

  /** Place (mm). */
  public double x() {
    return x;
  }

  /** Place (mm). */
  public double y() {
    return y;
  }

  /** Place (mm). */
  public double z() {
    return z;
  }

  /** Unit normal, out of the metal. */
  public double normalX() {
    return normalX;
  }

  /** Unit normal, out of the metal. */
  public double normalY() {
    return normalY;
  }

  /** Unit normal, out of the metal. */
  public double normalZ() {
    return normalZ;
  }

  /** Index of the move that made the surface here, or {@link #STOCK}. */
  public int maker() {
    return maker;
  }
}
