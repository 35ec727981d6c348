package flankfit.control;

import java.util.Arrays;
import java.util.Optional;

/** Values by offset in a text; a look-up makes no garbage. */
final class OffsetMap<T> {
  private static final int FIRST_CAPACITY = 64;
  private static final int FREE = -1;

  private int[] keys = new int[FIRST_CAPACITY];
  private Object[] values = new Object[FIRST_CAPACITY];
  private int size;

  OffsetMap() {
    Arrays.fill(keys, FREE);
  }

  int size() {
    return size;
  }

  /** Puts a value; the first one at an offset stays. */
  void put(int offset, T value) {
    if (2 * (size + 1) > keys.length) {
      grow();
    }
    int slot = slot(offset);
    if (keys[slot] == FREE) {
      keys[slot] = offset;
      values[slot] = Optional.of(value);
      size++;
    }
  }

  /** The value at an offset. */
  @SuppressWarnings("unchecked") // only put fills the array, with optionals of T
  Optional<T> get(int offset) {
    int slot = slot(offset);
    return keys[slot] == FREE ? Optional.empty() : (Optional<T>) values[slot];
  }

  private int slot(int offset) {
    int mask = keys.length - 1;
    int slot = ((offset * 0x9E3779B1) >>> 7) & mask;
    while (keys[slot] != FREE && keys[slot] != offset) {
      slot = (slot + 1) & mask;
    }
    return slot;
  }

  private void grow() {
    int[] oldKeys = keys;
    Object[] oldValues = values;
    keys = new int[oldKeys.length * 2];
    values = new Object[keys.length];
    Arrays.fill(keys, FREE);
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldKeys[i] != FREE) {
        int slot = slot(oldKeys[i]);
        keys[slot] = oldKeys[i];
        values[slot] = oldValues[i];
      }
    }
  }
}
