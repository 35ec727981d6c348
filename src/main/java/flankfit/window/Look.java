package flankfit.window;

import flankfit.picture.Theme;
import flankfit.unit.LengthUnit;

/** How things look: paper, unit, size of letters, whether anything glides. */
final class Look {
  /** Sizes of letters and of all that goes with them, against the display's own (1). */
  private static final double[] SIZES = {0.8, 0.9, 1, 1.15, 1.3, 1.5, 1.75, 2};

  private static final int PLAIN = 2;

  private Theme theme;
  private LengthUnit unit;
  private int size = PLAIN;
  private boolean still;

  Look(Theme theme, LengthUnit unit, double textSize, boolean still) {
    this.theme = theme;
    this.unit = unit;
    this.still = still;
    for (int i = 0; i < SIZES.length; i++) {
      size = SIZES[i] == textSize ? i : size;
    }
  }

  Theme theme() {
    return theme;
  }

  void otherTheme() {
    theme = theme.other();
  }

  LengthUnit unit() {
    return unit;
  }

  void unit(LengthUnit wanted) {
    unit = wanted;
  }

  void otherUnit() {
    unit = unit == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
  }

  /** Size of letters against the display's own (1). */
  double textSize() {
    return SIZES[size];
  }

  /** Larger letters by steps, smaller for negative ones. */
  void larger(int steps) {
    size = Math.max(0, Math.min(SIZES.length - 1, size + steps));
  }

  void plainSize() {
    size = PLAIN;
  }

  /** Whether the cutter goes block by block in place of gliding. */
  boolean isStill() {
    return still;
  }

  void otherStill() {
    still = !still;
  }
}
