package flankfit.solid;

import java.util.Arrays;

/** Doubles that grow. */
final class DoubleColumn {
  private double[] values = new double[64];
  private int size;

  void add(double value) {
    if (size == values.length) {
      values = Arrays.copyOf(values, Math.multiplyExact(size, 2));
    }
    values[size++] = value;
  }

  void add(double x, double y, double z) {
    add(x);
    add(y);
    add(z);
  }

  int size() {
    return size;
  }

  void clear() {
    size = 0;
  }

  /** Keeps so many of the first. */
  void shorten(int count) {
    size = count;
  }

  double get(int index) {
    return values[index];
  }

  double[] toArray() {
    return Arrays.copyOf(values, size);
  }

  /** All columns one after the other. */
  static double[] joined(DoubleColumn[] parts) {
    int total = 0;
    for (DoubleColumn part : parts) {
      total = Math.addExact(total, part.size);
    }
    double[] all = new double[total];
    int at = 0;
    for (DoubleColumn part : parts) {
      System.arraycopy(part.values, 0, all, at, part.size);
      at += part.size;
    }
    return all;
  }
}
