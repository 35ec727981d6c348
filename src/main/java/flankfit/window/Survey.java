package flankfit.window;

import flankfit.finding.Finding;
import flankfit.motion.Tape;
import java.util.Arrays;
import java.util.List;

/**
 * What the window looks up in a whole program: operations, boxes of its moves, and where findings
 * lie. Made on the loader's thread, never changed after.
 */
final class Survey {
  /** Of nothing. */
  static final Survey NONE =
      new Survey(Operations.NONE, MoveBoxes.NONE, new FindingMarks(List.of(), ""), new int[0]);

  private final Operations operations;
  private final MoveBoxes boxes;
  private final FindingMarks marks;
  private final int[] findingMoves;

  private Survey(Operations operations, MoveBoxes boxes, FindingMarks marks, int[] findingMoves) {
    this.operations = operations;
    this.boxes = boxes;
    this.marks = marks;
    this.findingMoves = findingMoves;
  }

  /** Of a program of which all is known. */
  static Survey of(WindowInput input, Steps steps) {
    return new Survey(
            Operations.of(input.tape(), input.setup()),
            MoveBoxes.of(input.tape()),
            NONE.marks,
            NONE.findingMoves)
        .with(input, steps);
  }

  /** The same with the findings of an input for the same tape. */
  Survey with(WindowInput input, Steps steps) {
    FindingMarks others = new FindingMarks(input.findings(), input.file());
    return new Survey(operations, boxes, others, places(others, input.tape(), steps));
  }

  /** What the program does one after the other. */
  Operations operations() {
    return operations;
  }

  /** Boxes round its moves. */
  MoveBoxes boxes() {
    return boxes;
  }

  /** Its findings. */
  FindingMarks marks() {
    return marks;
  }

  /**
   * For each of the findings by place the last move of the block it points at; of all for a line
   * behind the last that moves; -1 for no line.
   */
  int findingMove(int finding) {
    return findingMoves[finding];
  }

  /** Moves at which findings lie. */
  int[] findingMoves() {
    return findingMoves.clone();
  }

  /** One look at the tape for all findings, however its lines jump. */
  private static int[] places(FindingMarks marks, Tape tape, Steps steps) {
    List<Finding> findings = marks.all();
    int[] moves = new int[findings.size()];
    Arrays.fill(moves, -1);
    if (tape.size() == 0) {
      return moves;
    }
    int last = 0;
    for (Finding finding : findings) {
      last = Math.max(last, marks.lineOf(finding));
    }
    int[] firstOfLine = new int[last + 1];
    Arrays.fill(firstOfLine, -1);
    for (int move = tape.size() - 1; move >= 0; move--) {
      int line = tape.line(move);
      if (line >= 0 && line <= last) {
        firstOfLine[line] = move;
      }
    }
    for (int i = 0; i < moves.length; i++) {
      int line = marks.lineOf(findings.get(i));
      if (line > 0) {
        moves[i] =
            firstOfLine[line] >= 0
                ? steps.endOfBlock(firstOfLine[line])
                : steps.ofLine(line).orElse(tape.size() - 1);
      }
    }
    return moves;
  }
}
