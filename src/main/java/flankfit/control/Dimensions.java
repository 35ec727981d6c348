package flankfit.control;

import flankfit.finding.Code;
import flankfit.nc.Block;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.NumberReading;
import flankfit.unit.LengthUnit;

/** Turns dimension words into millimetres: unit, point, rounding. Reports RD13, RD16, WD11. */
final class Dimensions {
  private static final double LARGEST = 100000;
  private static final int FEW_DIGITS = 3;
  private static final double DIVISIBLE = 1e-6;

  private final ControlSwitches.Reading reading;
  private final Modes modes;
  private final Report report;
  private final double perMillimetre;
  private final double perInch;
  private final int coarseMillimetre;
  private final int coarseInch;

  Dimensions(ControlSwitches.Reading reading, Modes modes, Report report) {
    this.reading = reading;
    this.modes = modes;
    this.report = report;
    perMillimetre = perUnit(reading, LengthUnit.MILLIMETRE);
    perInch = perUnit(reading, LengthUnit.INCH);
    coarseMillimetre = coarseDecimals(perMillimetre);
    coarseInch = coarseDecimals(perInch);
  }

  /** Least increments of the active unit in one unit of length: 1000 for mm, 10 000 for inch. */
  double perUnit() {
    return modes.unit() == LengthUnit.INCH ? perInch : perMillimetre;
  }

  private static double perUnit(ControlSwitches.Reading reading, LengthUnit unit) {
    double exact = 1 / unit.fromMillimetres(reading.leastIncrement(unit));
    return Math.abs(exact - Math.rint(exact)) < DIVISIBLE ? Math.rint(exact) : exact;
  }

  /**
   * The most decimals with which no number of the active unit is finer than a least increment; -1
   * where even whole numbers may be.
   */
  int coarseDecimals() {
    return modes.unit() == LengthUnit.INCH ? coarseInch : coarseMillimetre;
  }

  private static int coarseDecimals(double perUnit) {
    double counts = perUnit;
    if (counts != Math.rint(counts)) {
      return -1;
    }
    int decimals = 0;
    while (counts >= 10 && counts % 10 == 0) {
      counts /= 10;
      decimals++;
    }
    return decimals;
  }

  /** Least increment of the active unit (mm). */
  double leastIncrement() {
    return reading.leastIncrement(modes.unit());
  }

  /** A dimension word in millimetres, without findings. */
  double understood(Block block, int word) {
    double value = block.value(word);
    boolean counts = !block.hadPoint(word) && reading.numbers() == NumberReading.LEAST_INCREMENT;
    return modes.unit().toMillimetres(rounded(counts ? value / perUnit() : value));
  }

  private double rounded(double value) {
    if (!reading.roundToLeastIncrement()) {
      return value;
    }
    double counts = value * perUnit();
    return Math.copySign(Math.floor(Math.abs(counts) + 0.5), counts) / perUnit();
  }

  /** A dimension word in millimetres. */
  double millimetres(Block block, int word) {
    double value = block.value(word);
    if (!block.hadPoint(word) && reading.numbers() == NumberReading.LEAST_INCREMENT) {
      value = value / perUnit();
      counted(block, word, value);
    } else if (block.decimals(word) > coarseDecimals()) {
      finer(block, word, value);
    }
    double mm = modes.unit().toMillimetres(rounded(value));
    if (isTooLarge(mm)) {
      report.add(
          Code.WD11,
          word,
          block.text(word) + " is out of range ±100000 mm",
          "no machine is that large",
          "correct it");
    }
    return mm;
  }

  /** Whether no machine reaches there. */
  static boolean isTooLarge(double mm) {
    return Math.abs(mm) > LARGEST;
  }

  static boolean isTooLarge(double x, double y, double z) {
    return isTooLarge(x) || isTooLarge(y) || isTooLarge(z);
  }

  /** Whether a number is finer than the least increment, of which so many make a unit. */
  static boolean isFiner(double number, double perUnit) {
    double counts = number * perUnit;
    double off = Math.abs(counts - Math.rint(counts));
    return off > DIVISIBLE && off > DIVISIBLE * 1e-6 * Math.abs(counts);
  }

  private void counted(Block block, int word, double value) {
    if (value != 0 && block.digits(word) <= FEW_DIGITS && !report.counted(Code.RD16)) {
      String unit = modes.unit().symbol();
      report.add(
          Code.RD16,
          word,
          block.text(word) + " is " + Wording.number(value) + " " + unit + " here",
          "no point: counted in least increments",
          "write a point if " + Wording.number(block.value(word)) + " " + unit + " was meant");
    }
  }

  private void finer(Block block, int word, double value) {
    if (isFiner(value, perUnit()) && !report.counted(Code.RD13)) {
      report.add(
          Code.RD13,
          word,
          block.text(word)
              + " is finer than "
              + Wording.number(1 / perUnit())
              + " "
              + modes.unit().symbol(),
          "a control rounds it or refuses it",
          "round it");
    }
  }
}
