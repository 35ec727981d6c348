package flankfit.draft;

import java.util.Objects;

/**
 * One block of motion about a hole's axis, before it is said in words.
 *
 * @param kind how it moves
 * @param x end, from the axis (increments)
 * @param y end, from the axis (increments)
 * @param z end, of the tip (increments)
 * @param i centre of an arc, from its start (increments)
 * @param j centre of an arc, from its start (increments)
 * @param before words that stand before the coordinates, such as {@code G41}; may be empty
 * @param after words that stand after them, such as {@code D4}; may be empty
 * @param feed feed as a word's number; empty text to leave it in force
 * @param comment comment that stands above; empty for none
 */
record Leg(
    Kind kind,
    long x,
    long y,
    long z,
    long i,
    long j,
    String before,
    String after,
    String feed,
    String comment) {
  Leg {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(feed, "feed");
    Objects.requireNonNull(comment, "comment");
  }

  /** How a block moves. */
  enum Kind {
    RAPID("G0"),
    LINE("G1"),
    CLOCKWISE("G2"),
    ANTICLOCKWISE("G3");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word of a program. */
    String word() {
      return word;
    }

    /** The same seen in a mirror. */
    Kind mirrored() {
      return switch (this) {
        case RAPID -> RAPID;
        case LINE -> LINE;
        case CLOCKWISE -> ANTICLOCKWISE;
        case ANTICLOCKWISE -> CLOCKWISE;
      };
    }
  }

  static Leg rapid(long x, long y, long z) {
    return new Leg(Kind.RAPID, x, y, z, 0, 0, "", "", "", "");
  }

  static Leg line(long x, long y, long z, String feed) {
    return new Leg(Kind.LINE, x, y, z, 0, 0, "", "", feed, "");
  }

  static Leg arc(Kind kind, long x, long y, long z, long i, long j, String feed) {
    return new Leg(kind, x, y, z, i, j, "", "", feed, "");
  }

  /** The same with other words. */
  Leg with(String wordBefore, String wordAfter) {
    return new Leg(kind, x, y, z, i, j, wordBefore, wordAfter, feed, comment);
  }

  /** The same under a comment. */
  Leg under(String text) {
    return new Leg(kind, x, y, z, i, j, before, after, feed, text);
  }

  /** The same with Y the other way. */
  Leg mirrored() {
    return new Leg(kind.mirrored(), x, -y, z, i, -j, before, after, feed, comment);
  }

  boolean isArc() {
    return kind == Kind.CLOCKWISE || kind == Kind.ANTICLOCKWISE;
  }
}
