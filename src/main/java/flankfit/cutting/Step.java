package flankfit.cutting;

import flankfit.unit.Require;
import java.util.Objects;

/** One pass of a ladder: how a row cuts when nothing bends, and how the rows push each other. */
public final class Step {
  private static final double MOST_OF_ROOM = 0.9;

  private final RowCut cut;
  private final double[][] compliance;

  /**
   * Makes the pass.
   *
   * @param cut a row on the programmed path
   * @param compliance shift of row k for one newton on row j (mm/N), [rows in metal][rows in metal]
   * @throws IllegalArgumentException if the compliance is not square
   */
  public Step(RowCut cut, double[][] compliance) {
    this.cut = Objects.requireNonNull(cut, "cut");
    this.compliance = new double[compliance.length][];
    for (int k = 0; k < compliance.length; k++) {
      Require.within("columns", compliance[k].length, compliance.length, compliance.length);
      this.compliance[k] = compliance[k].clone();
    }
  }

  /** A row on the programmed path. */
  public RowCut cut() {
    return cut;
  }

  /** Number of rows in the metal. */
  public int rows() {
    return compliance.length;
  }

  /** Shift of a row for one newton on another (mm/N). */
  double compliance(int row, int loaded) {
    return compliance[row][loaded];
  }

  /** A shift no larger than the path allows (mm): the mill stays off the axis, and off a boss. */
  double limited(double cutShort) {
    double room = cut.pathRadius() - (cut.internal() ? 0 : cut.edge().outside());
    double most = MOST_OF_ROOM * room;
    return cut.internal() ? Math.min(cutShort, most) : Math.max(cutShort, -most);
  }

  /** The path of the row pushed off it (mm): nearer to a hole's axis, farther from a boss's. */
  public RowCut pushed(double cutShort) {
    double outwards = cut.internal() ? -1 : 1;
    return cut.onPath(cut.pathRadius() + outwards * cutShort);
  }
}
