package flankfit.draft;

import flankfit.motion.ModalState.Distance;
import java.util.List;

/** Says legs in absolute or incremental words. */
final class LegWords {
  private final Grid grid;
  private final boolean absolute;
  private long x;
  private long y;
  private long z;

  /**
   * Begins where the tool stands.
   *
   * @param x place, program frame (increments)
   * @param y place, program frame (increments)
   * @param z place, program frame (increments)
   */
  LegWords(Grid grid, Distance mode, long x, long y, long z) {
    this.grid = grid;
    this.absolute = mode == Distance.ABSOLUTE;
    this.x = x;
    this.y = y;
    this.z = z;
  }

  /**
   * Says legs about an axis.
   *
   * @param axis place of the axis, program frame (increments), [2]
   */
  void write(List<Leg> legs, long[] axis, Blocks blocks) {
    for (Leg leg : legs) {
      if (!leg.comment().isEmpty()) {
        blocks.comment(leg.comment());
      }
      blocks.block(words(leg, leg.x() + axis[0], leg.y() + axis[1]));
    }
  }

  private String words(Leg leg, long toX, long toY) {
    StringBuilder text = new StringBuilder(leg.kind().word());
    add(text, leg.before());
    add(text, leg.after());
    boolean inPlane = toX != x || toY != y;
    axis(text, 'X', x, toX, inPlane);
    axis(text, 'Y', y, toY, inPlane);
    axis(text, 'Z', z, leg.z(), false);
    if (leg.isArc()) {
      centre(text, 'I', leg.i());
      centre(text, 'J', leg.j());
    }
    add(text, leg.feed().isEmpty() ? "" : "F" + leg.feed());
    x = toX;
    y = toY;
    z = leg.z();
    return text.toString();
  }

  private static void add(StringBuilder text, String words) {
    if (!words.isEmpty()) {
      text.append(' ').append(words);
    }
  }

  /** An absolute end in the plane is said in full; a distance of nothing is left out. */
  private void axis(StringBuilder text, char letter, long from, long to, boolean always) {
    if (to != from || (absolute && always)) {
      text.append(' ').append(letter).append(grid.word(absolute ? to : to - from));
    }
  }

  private void centre(StringBuilder text, char letter, long distance) {
    if (distance != 0) {
      text.append(' ').append(letter).append(grid.word(distance));
    }
  }
}
