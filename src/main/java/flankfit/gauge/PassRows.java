package flankfit.gauge;

import java.util.ArrayList;
import java.util.List;

/**
 * The rows of a pass that stand in the metal.
 *
 * @param cut the pass
 * @param rows numbers of the rows, from the tip, from 0
 */
record PassRows(CutPass cut, List<Integer> rows) {
  PassRows {
    rows = List.copyOf(rows);
  }

  /** The rows of a pass whose grooves lie between two heights, part frame (mm). */
  static PassRows within(CutPass cut, double low, double high) {
    List<Integer> rows = new ArrayList<>();
    for (int row = 0; row < cut.teeth().rows(); row++) {
      double z = middle(cut, row);
      if (cut.rowPitch() == 0 || (z >= low && z <= high)) {
        rows.add(row);
      }
    }
    return new PassRows(cut, rows);
  }

  /** Mean height of a row's groove during the pass, part frame (mm). */
  static double middle(CutPass cut, int row) {
    double tip = (cut.pass().zLow() + cut.pass().zHigh()) / 2;
    return cut.lowestRow(tip) + row * cut.rowPitch();
  }

  int count() {
    return rows.size();
  }

  double height(int index) {
    return middle(cut, rows.get(index));
  }

  /** Distance of a row from the tip (mm). */
  double fromTip(int index) {
    return cut.teeth().tip() + rows.get(index) * cut.rowPitch();
  }

  /** A value that each row has, at a height; beyond the rows that of the last. */
  double at(double z, double[] values) {
    if (values.length == 1 || z <= height(0)) {
      return values[0];
    }
    for (int i = 1; i < values.length; i++) {
      if (z <= height(i)) {
        double share = (z - height(i - 1)) / (height(i) - height(i - 1));
        return values[i - 1] + share * (values[i] - values[i - 1]);
      }
    }
    return values[values.length - 1];
  }
}
