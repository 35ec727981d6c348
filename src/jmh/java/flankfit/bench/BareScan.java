package flankfit.bench;

/** The reference for interpreting: a bare loop over the bytes of a program. */
final class BareScan {
  private BareScan() {}

  /** Reads every byte and sums every number. */
  static double sum(byte[] bytes) {
    double sum = 0;
    int i = 0;
    while (i < bytes.length) {
      byte b = bytes[i];
      if (b >= 'A' && b <= 'Z') {
        i++;
        boolean negative = i < bytes.length && bytes[i] == '-';
        if (negative) {
          i++;
        }
        long digits = 0;
        double scale = 1;
        boolean point = false;
        while (i < bytes.length) {
          byte c = bytes[i];
          if (c == '.') {
            point = true;
          } else if (c >= '0' && c <= '9') {
            digits = digits * 10 + (c - '0');
            if (point) {
              scale *= 10;
            }
          } else {
            break;
          }
          i++;
        }
        double value = digits / scale;
        sum += negative ? -value : value;
      } else {
        i++;
      }
    }
    return sum;
  }
}
