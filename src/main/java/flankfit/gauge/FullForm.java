package flankfit.gauge;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The elements of a wall where the thread has its full form: the groove as deep as most are, both
 * ridges as high as most are, both flanks there at the pitch line and cut to the full.
 */
final class FullForm {
  /** Share of the pitch by which bottom and ridges may stand short of the usual ones (1). */
  private static final double SHORT = 0.05;

  /** How much nearer than the others flanks at the ends may stand (mm). */
  private static final double RUN_OUT = 2e-5;

  private final WallField field;
  private final int[] elements;
  private final double usualRidge;
  private final double usualBottom;

  FullForm(WallField field) {
    this.field = field;
    int[] grooves =
        IntStream.range(0, field.size())
            .filter(e -> Double.isFinite(width(e)) && Double.isFinite(field.bottom(e)))
            .toArray();
    int[] even = Arrays.stream(grooves).filter(field::isEven).toArray();
    this.usualBottom = median(Arrays.stream(even).mapToDouble(field::bottom).toArray());
    this.usualRidge =
        median(
            Arrays.stream(even)
                .mapToDouble(e -> Math.max(field.ridge(e, true), field.ridge(e, false)))
                .toArray());
    this.elements = withoutRunOut(Arrays.stream(grooves).filter(this::isFull).toArray());
  }

  /**
   * Leaves out where the flanks of the first and last groove are not yet cut to the full: the
   * cutter passes there once only. That is a quarter of a turn at most, and ends where the flanks
   * are as far as the others, so that it does not hang on where exactly a reading is.
   */
  private int[] withoutRunOut(int[] full) {
    double quarter = field.spec().lead() / 4;
    int last = full.length - 1;
    if (field.turns(full) < 0.5
        || field.height(full[0]) - field.height(full[last]) <= 2 * quarter) {
      return full;
    }
    PitchLine line = new PitchLine(field, full);
    double highest = field.height(full[0]) - quarter;
    double lowest = field.height(full[last]) + quarter;
    int from = 0;
    while (field.height(full[from]) > highest && line.depthOff(from) < -RUN_OUT) {
      from++;
    }
    int to = last;
    while (field.height(full[to]) < lowest && line.depthOff(to) < -RUN_OUT) {
      to--;
    }
    return Arrays.copyOfRange(full, from, to + 1);
  }

  private double width(int e) {
    double depth = field.pitchLine();
    return field.flankAt(e, depth, true) + field.flankAt(e, depth, false);
  }

  /** The same of an element of another reading of the wall. */
  boolean isWhole(WallField other, int e) {
    double depth = other.pitchLine();
    double width = other.flankAt(e, depth, true) + other.flankAt(e, depth, false);
    return Double.isFinite(width) && Double.isFinite(other.bottom(e)) && isFull(other, e);
  }

  private boolean isFull(int e) {
    return isFull(field, e);
  }

  private boolean isFull(WallField field, int e) {
    double slack = SHORT * field.spec().pitch();
    double ridge = Math.max(field.ridge(e, true), field.ridge(e, false));
    return field.bottom(e) >= usualBottom - slack && ridge <= usualRidge + slack;
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return values.length == 0 ? Double.NaN : values[values.length / 2];
  }

  /** Elements of full form, from above downwards. */
  int[] elements() {
    return elements;
  }

  /** Depth to which most ridges reach (mm). */
  double usualRidge() {
    return usualRidge;
  }

  /** Height of the lowest place where there is any groove (mm); the mouth when there is none. */
  double lowestGroove() {
    double shallow = usualRidge + 2 * SHORT * field.spec().pitch();
    for (int e = field.size() - 1; e >= 0; e--) {
      if (Double.isFinite(field.bottom(e)) && field.bottom(e) > shallow) {
        return field.height(e);
      }
    }
    return field.mouth();
  }
}
