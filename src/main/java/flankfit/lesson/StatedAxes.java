package flankfit.lesson;

import flankfit.control.BlockTrace;
import flankfit.control.ProgramFrame;
import flankfit.control.ToldWay;
import flankfit.control.WordMeaning;
import flankfit.control.WordTrace;
import java.util.Optional;

/**
 * On which axes the program itself has said where the tool stands, by a coordinate in the frame in
 * force. On the others that depends on the machine or on what the operator entered, so that a
 * distance can be no coordinate there, and a coordinate no distance. To be told every block in
 * order.
 */
final class StatedAxes {
  private final boolean[] stated = new boolean[3];
  private Optional<ProgramFrame> frame = Optional.empty();

  /** A block is about to move in its frame; to be called before anything is asked about it. */
  void enter(BlockTrace block) {
    ProgramFrame now = block.way().frame();
    for (int axis = 0; axis < 3; axis++) {
      stated[axis] &= frame.isPresent() && now.placesAlike(axis, frame.get());
    }
    frame = Optional.of(now);
  }

  /** Whether the program has said where the tool stands on an axis, 0 (X), 1 (Y) or 2 (Z). */
  boolean has(int axis) {
    return stated[axis];
  }

  /** A block has moved. */
  void leave(BlockTrace block) {
    boolean[] named = new boolean[3];
    boolean distances = false;
    for (WordTrace word : block.words()) {
      int axis = word.letter() - 'X';
      boolean point =
          word.meaning() == WordMeaning.END_POINT
              || word.meaning() == WordMeaning.HOLE_POSITION
              || word.meaning() == WordMeaning.PRESENT_POINT;
      if (point && axis >= 0 && axis < 3) {
        named[axis] = true;
      }
      distances |=
          word.meaning() == WordMeaning.DISTANCE
              || word.meaning() == WordMeaning.HOLE_DISTANCE
              || word.meaning() == WordMeaning.DEPTH
              || word.meaning() == WordMeaning.DEPTH_FROM_CLEARANCE;
    }
    boolean anyNamed = named[0] || named[1] || named[2];
    for (int axis = 0; axis < 3; axis++) {
      boolean elsewhere = !anyNamed && !distances && isMoved(block.way(), axis);
      stated[axis] = named[axis] || (stated[axis] && !elsewhere);
    }
  }

  private static boolean isMoved(ToldWay way, int axis) {
    return way.from().axis(axis) != way.to().axis(axis);
  }
}
