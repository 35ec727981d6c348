package flankfit.gauge;

import flankfit.standard.ThreadSpec;
import java.util.Arrays;

/**
 * The depths at which a wall is looked at: from where the flanks of the GO gauge end to its crest,
 * finer beside the crest, with every depth at which a form of gauge ends.
 */
final class DepthLadder {
  /** Steps on a flank, as a share of the pitch: it is nearly straight (1). */
  private static final double FLANK_STEP = 1.0 / 20;

  /** Steps beside the crest, where the corner of a groove is round, as a share of the pitch (1). */
  private static final double CORNER_STEP = 1.0 / 60;

  private DepthLadder() {}

  /** Depths in rising order (mm). */
  static double[] of(ThreadSpec spec) {
    Winding winding = Winding.of(spec);
    Mate mate = Mate.of(spec);
    double pitchLine = winding.turned(spec.basicPitch() / 2);
    double relieved = winding.turned(mate.relievedRadius());
    double crest = winding.turned(mate.crestRadius());
    double short1 = ThreadGauge.shortFlank(spec);
    double[] marks = {
      winding.turned(mate.rootRadius()),
      pitchLine - short1,
      pitchLine,
      pitchLine + short1,
      relieved,
      crest
    };
    Arrays.sort(marks);
    double[] depths = new double[1000];
    int count = 0;
    depths[count++] = marks[0];
    for (int m = 1; m < marks.length; m++) {
      double share = marks[m] > relieved ? CORNER_STEP : FLANK_STEP;
      int steps = (int) Math.ceil((marks[m] - marks[m - 1]) / (share * spec.pitch()));
      for (int i = 1; i < steps; i++) {
        depths[count++] = marks[m - 1] + (marks[m] - marks[m - 1]) * i / steps;
      }
      if (steps > 0) {
        depths[count++] = marks[m];
      }
    }
    return Arrays.copyOf(depths, count);
  }
}
