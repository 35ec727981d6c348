package flankfit.nc;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;

/**
 * Reads one number from bytes: signs, digits, a point, blanks between them. The value is exactly
 * rounded: up to 15 digits and 22 decimals both the digits and the power of ten are exact doubles,
 * so one division rounds once.
 */
final class NumberReader {
  private static final double[] POWERS = new double[23];

  static {
    double power = 1;
    for (int i = 0; i < POWERS.length; i++) {
      POWERS[i] = power;
      power *= 10;
    }
  }

  static final int MOST_DIGITS = 15;

  private final byte[] bytes;
  private final int limit;
  private int end;
  private int signs;
  private int digits;
  private int decimals;
  private double value;
  private boolean blankInside;
  private String reason = "";

  NumberReader(byte[] bytes, int limit) {
    this.bytes = bytes;
    this.limit = limit;
  }

  /**
   * Reads a number.
   *
   * @param from offset after the letter
   * @return whether there is one; if not, {@link #end} stands where it was expected
   */
  boolean read(int from) {
    int at = skipBlanks(from);
    boolean negative = false;
    signs = 0;
    reason = "";
    blankInside = false;
    while (at < limit && (bytes[at] == '-' || bytes[at] == '+')) {
      negative ^= bytes[at] == '-';
      signs++;
      at = skipBlanks(at + 1);
    }
    scan(at, negative);
    if (digits == 0) {
      end = decimals == 0 ? end : at;
      return false;
    }
    if (signs > 1) {
      reason = "it has two signs";
    }
    return true;
  }

  /**
   * Digits over a power of ten: both exact, so the quotient is rounded once.
   *
   * @param decimals 0 to 22
   */
  static double rounded(long mantissa, int decimals) {
    return mantissa / POWERS[decimals];
  }

  private int skipBlanks(int from) {
    int at = from;
    while (at < limit && Characters.isBlank(bytes[at])) {
      at++;
    }
    return at;
  }

  private void scan(int from, boolean negative) {
    int p = from;
    long mantissa = 0;
    int significant = 0;
    int count = 0;
    int fraction = -1;
    int last = from;
    while (p < limit) {
      int c = bytes[p];
      if (Characters.isDigit(c)) {
        count++;
        if (significant > 0 || c != '0') {
          significant++;
          mantissa = significant <= MOST_DIGITS ? mantissa * 10 + (c - '0') : mantissa;
        }
        fraction += fraction >= 0 ? 1 : 0;
        last = ++p;
      } else if (c == '.' && fraction < 0) {
        fraction = 0;
        last = ++p;
      } else if (Characters.isBlank(c) && last > from) {
        int next = skipBlanks(p);
        if (!continues(next, count, fraction)) {
          break;
        }
        blankInside = true;
        p = next;
      } else {
        break;
      }
    }
    end = last;
    digits = count;
    decimals = fraction;
    double size =
        significant <= MOST_DIGITS && fraction < POWERS.length
            ? rounded(mantissa, Math.max(0, fraction))
            : slowly(from, last);
    value = negative ? -size : size;
  }

  /** Whether a number goes on after a blank: between two digits, or between a digit and a point. */
  private boolean continues(int next, int count, int fraction) {
    if (next >= limit || count == 0) {
      return false;
    }
    return Characters.isDigit(bytes[next]) || (bytes[next] == '.' && fraction < 0);
  }

  private double slowly(int from, int to) {
    StringBuilder plain = new StringBuilder();
    for (char c : new String(bytes, from, to - from, StandardCharsets.ISO_8859_1).toCharArray()) {
      if (c == '.' || Characters.isDigit(c)) {
        plain.append(c);
      }
    }
    if (plain.toString().equals(".")) {
      return 0;
    }
    BigDecimal exact = new BigDecimal(plain.toString()).stripTrailingZeros();
    if (exact.precision() > MOST_DIGITS || exact.precision() - exact.scale() > MOST_DIGITS) {
      reason = "it has more than " + MOST_DIGITS + " digits";
      return 0;
    }
    return exact.doubleValue();
  }

  /** Offset after the number. */
  int end() {
    return end;
  }

  double value() {
    return value;
  }

  /** Digits as typed, leading zeros included. */
  int digits() {
    return digits;
  }

  /** Digits after the point; -1 without a point. */
  int decimals() {
    return decimals;
  }

  boolean signed() {
    return signs > 0;
  }

  boolean blankInside() {
    return blankInside;
  }

  /** Why it is no number; empty text when it is one. */
  String reason() {
    return reason;
  }
}
