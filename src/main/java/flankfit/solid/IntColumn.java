package flankfit.solid;

import java.util.Arrays;

/** Ints that grow. */
final class IntColumn {
  private int[] values = new int[64];
  private int size;

  void add(int value) {
    if (size == values.length) {
      values = Arrays.copyOf(values, Math.multiplyExact(size, 2));
    }
    values[size++] = value;
  }

  int size() {
    return size;
  }

  int get(int index) {
    return values[index];
  }

  void clear() {
    size = 0;
  }

  /** Keeps so many of the first. */
  void shorten(int count) {
    size = count;
  }

  /** All columns one after the other. */
  static int[] joined(IntColumn[] parts) {
    int total = 0;
    for (IntColumn part : parts) {
      total = Math.addExact(total, part.size);
    }
    int[] all = new int[total];
    int at = 0;
    for (IntColumn part : parts) {
      System.arraycopy(part.values, 0, all, at, part.size);
      at += part.size;
    }
    return all;
  }
}
