package flankfit.fuzz;

/**
 * Choices taken from bytes, one after the other, so that a changed byte changes one choice. When
 * the bytes are used up every choice is the first.
 */
final class Choices {
  private final byte[] bytes;
  private int at;

  Choices(byte[] bytes) {
    this.bytes = bytes;
  }

  /** Whether all bytes are used up. */
  boolean isEmpty() {
    return at >= bytes.length;
  }

  private int next() {
    return isEmpty() ? 0 : bytes[at++] & 0xFF;
  }

  /** A whole number from 0 to below a bound. */
  int below(int bound) {
    int value = bound <= 256 ? next() : next() << 8 | next();
    return value % bound;
  }

  /** A whole number between two, both included. */
  int between(int least, int most) {
    return least + below(most - least + 1);
  }

  /** True once in so many times; false when the bytes are used up. */
  boolean oneIn(int times) {
    return !isEmpty() && below(times) == times - 1;
  }

  /** One of several words. */
  String of(String... words) {
    return words[below(words.length)];
  }
}
