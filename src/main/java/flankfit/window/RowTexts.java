package flankfit.window;

import java.util.List;

/** The lines in sight and their numbers as text; made once, not for each frame. */
final class RowTexts {
  private static final int KEPT = 256;

  private final int[] indices = new int[KEPT];
  private final String[] kept = new String[KEPT];
  private final String[] numbers = new String[KEPT];
  private List<String> lines = List.of();

  RowTexts() {
    take(lines);
  }

  /** Takes other lines. */
  void take(List<String> others) {
    lines = others;
    java.util.Arrays.fill(indices, -1);
  }

  /** A line (index from 0). */
  String line(int index) {
    return kept[slot(index)];
  }

  /** The number of a line (index from 0). */
  String number(int index) {
    return numbers[slot(index)];
  }

  private int slot(int index) {
    int slot = index % KEPT;
    if (indices[slot] != index) {
      indices[slot] = index;
      kept[slot] = lines.get(index);
      numbers[slot] = Integer.toString(index + 1);
    }
    return slot;
  }
}
