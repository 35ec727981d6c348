package flankfit.metal;

/** The cells that were asked for need more memory than there is. */
public final class TooFineException extends Exception {
  private static final long serialVersionUID = 1;

  private final double asked;
  private final double fits;
  private final long memory;

  TooFineException(double asked, double fits, long memory) {
    super(
        "cells of "
            + asked
            + " mm need more than "
            + memory / (1 << 20)
            + " MiB; cells of "
            + fits
            + " mm fit");
    this.asked = asked;
    this.fits = fits;
    this.memory = memory;
  }

  /** Side of the cells that were asked for (mm). */
  public double asked() {
    return asked;
  }

  /** Side of cells that fit (mm). */
  public double fits() {
    return fits;
  }

  /** Memory there is (bytes). */
  public long memory() {
    return memory;
  }
}
