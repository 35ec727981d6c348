package flankfit.motion;

/** The kinds of moves on a tape. */
public enum MoveKind {
  RAPID(0, "rapid"),
  LINE(1, "line"),
  ARC(2, "arc"),
  DWELL(3, "dwell");

  private final int bits;
  private final String word;

  MoveKind(int bits, String word) {
    this.bits = bits;
    this.word = word;
  }

  /** The word people and JSON see. */
  public String word() {
    return word;
  }

  /** Two bits that stand for the kind on a tape. */
  int bits() {
    return bits;
  }

  /** The kind that two bits stand for. */
  static MoveKind ofBits(int bits) {
    return switch (bits) {
      case 0 -> RAPID;
      case 1 -> LINE;
      case 2 -> ARC;
      case 3 -> DWELL;
      default -> throw new IllegalArgumentException("bits must lie between 0 and 3: " + bits);
    };
  }
}
