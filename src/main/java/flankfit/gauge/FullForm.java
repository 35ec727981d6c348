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

  /** Share of the pitch by which flanks at the ends may stand nearer than the others (1). */
  private static final double RUN_OUT = 0.002;

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
    this.usualBottom = median(Arrays.stream(grooves).mapToDouble(field::bottom).toArray());
    this.usualRidge =
        median(
            Arrays.stream(grooves)
                .mapToDouble(e -> Math.max(field.ridge(e, true), field.ridge(e, false)))
                .toArray());
    this.elements = withoutRunOut(Arrays.stream(grooves).filter(this::isFull).toArray());
  }

  /**
   * Leaves out where the flanks of the first and last groove are not yet cut to the full: the
   * cutter passes there once only. That is less than a quarter of a turn.
   */
  private int[] withoutRunOut(int[] full) {
    int most = field.directions() * field.spec().starts() / 4;
    if (full.length <= 2 * most) {
      return full;
    }
    PitchLine line = new PitchLine(field, full);
    int from = 0;
    while (from < most && isTight(line, from)) {
      from++;
    }
    int to = full.length;
    while (full.length - to < most && isTight(line, to - 1)) {
      to--;
    }
    return Arrays.copyOfRange(full, from, to);
  }

  private boolean isTight(PitchLine line, int i) {
    return line.depthOff(i) < -RUN_OUT * field.spec().pitch();
  }

  private double width(int e) {
    double depth = field.pitchLine();
    return field.flankAt(e, depth, true) + field.flankAt(e, depth, false);
  }

  private boolean isFull(int e) {
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
