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

  /** How many times closer the steps are where flanks of a measured tooth have kinks (1). */
  private static final int KINKED = 40;

  private DepthLadder() {}

  /** Depths in rising order (mm). */
  static double[] of(ThreadSpec spec) {
    return of(spec, 1);
  }

  /** Depths for flanks that need not be smooth (mm). */
  static double[] ofKinked(ThreadSpec spec) {
    return of(spec, KINKED);
  }

  /**
   * A ladder with closer steps.
   *
   * @param finer how many times closer, at least 1
   */
  static double[] of(ThreadSpec spec, int finer) {
    Winding winding = Winding.of(spec);
    Mate mate = Mate.of(spec);
    double pitchLine = winding.turned(spec.basicPitch() / 2);
    double relieved = winding.turned(mate.relievedRadius());
    double crest = winding.turned(mate.crestRadius());
    ThreadGauge noGo = ThreadGauge.noGo(spec);
    double[] marks = {
      winding.turned(mate.rootRadius()),
      winding.turned(noGo.rootRadius()),
      pitchLine,
      winding.turned(noGo.crestRadius()),
      relieved,
      crest
    };
    Arrays.sort(marks);
    double[] depths = new double[1000 * finer];
    int count = 0;
    depths[count++] = marks[0];
    for (int m = 1; m < marks.length; m++) {
      double share = marks[m] > relieved ? CORNER_STEP : FLANK_STEP;
      int steps = (int) Math.ceil((marks[m] - marks[m - 1]) / (share * spec.pitch()) * finer);
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
