package flankfit.unit;

/** A unit of length at the border; inside, every length is a millimetre. */
public enum LengthUnit {
  MILLIMETRE("mm", 1.0),
  INCH("in", 25.4);

  private final String symbol;
  private final double millimetres;

  LengthUnit(String symbol, double millimetres) {
    this.symbol = symbol;
    this.millimetres = millimetres;
  }

  /** The symbol after a number: {@code mm} or {@code in}. */
  public String symbol() {
    return symbol;
  }

  /** A length in this unit as millimetres (mm); 1 inch is 25.4 mm exactly. */
  public double toMillimetres(double value) {
    return value * millimetres;
  }

  /** A length of millimetres (mm) in this unit. */
  public double fromMillimetres(double value) {
    return value / millimetres;
  }
}
