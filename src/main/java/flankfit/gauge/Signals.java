package flankfit.gauge;

import flankfit.standard.ThreadSpec;

/**
 * What is judged of a groove in one direction to see how the wall changes round the axis: the room
 * that it leaves the forms of gauges, and where its flanks stand.
 */
final class Signals {
  static final double[] NONE = new double[0];

  /** Rooms of GO and NO-GO on both flanks, of a crest and of a plain gauge. */
  private static final int ROOMS = 6;

  /** Share of the pitch that a gauge is too large from which no more need be known (1). */
  private static final double TIGHT = 0.15;

  /** The same for room that no gauge fills (1). */
  private static final double WIDE = 0.1;

  /** The same for marks in a flank (1). */
  private static final double MARK = 0.3;

  private Signals() {}

  /** Whether it counts that a value rises between directions, not only that it falls. */
  static boolean countsDeep(int k) {
    return k >= ROOMS;
  }

  /**
   * The values of each groove of a direction, the lowest first.
   *
   * @param field readings of one direction
   * @param lowest height from which grooves count (mm)
   * @param highest height up to which they count (mm)
   * @return one row for each groove, without values where it does not count; not numbers among them
   *     where nothing stands
   */
  static double[][] of(WallField field, double lowest, double highest) {
    FlankRoom go = new FlankRoom(field, ThreadGauge.go(field.spec()));
    FlankRoom noGo = new FlankRoom(field, ThreadGauge.noGo(field.spec()));
    double relieved = field.winding().turned(Mate.of(field.spec()).relievedRadius());
    double[][] signals = new double[field.size()][];
    for (int e = 0; e < field.size(); e++) {
      boolean counts = field.height(e) >= lowest && field.height(e) <= highest;
      signals[field.size() - 1 - e] = counts ? of(field, e, go, noGo, relieved) : NONE;
    }
    return signals;
  }

  private static double[] of(
      WallField field, int e, FlankRoom go, FlankRoom noGo, double relieved) {
    ThreadSpec spec = field.spec();
    int depths = field.depths();
    double[] values = new double[ROOMS + 2 * depths];
    double tan = field.winding().tan();
    double goes = tan * field.winding().turned(ThreadGauge.go(spec).pitchDiameter() / 2);
    double stops = tan * field.winding().turned(ThreadGauge.noGo(spec).pitchDiameter() / 2);
    double quarter = spec.pitch() / 4;
    values[0] = near(spec, go.of(e, true) - goes);
    values[1] = near(spec, go.of(e, false) - goes);
    values[2] = near(spec, noGo.of(e, true) - stops);
    values[3] = near(spec, noGo.of(e, false) - stops);
    double crest = field.winding().turned(ThreadGauge.go(spec).crestRadius());
    values[4] = near(spec, tan * (field.bottom(e) - crest));
    double minor = field.winding().turned(spec.basicMinor() / 2);
    values[5] = spec.internal() ? near(spec, tan * (field.ridge(e, true) - minor)) : Double.NaN;
    for (int step = 0; step < depths; step++) {
      double depth = field.depth(step);
      double taken = goes + quarter - depth * tan;
      for (int side = 0; side < 2; side++) {
        boolean up = side == 0;
        boolean stands = depth <= relieved && depth > field.ridge(e, up);
        values[ROOMS + side * depths + step] =
            stands ? marked(spec, field.flank(e, step, up) - taken) : Double.NaN;
      }
    }
    return values;
  }

  /** A flank's place, if it may be a mark that is told. */
  private static double marked(ThreadSpec spec, double room) {
    return room > -TIGHT * spec.pitch() && room < MARK * spec.pitch() ? room : Double.NaN;
  }

  /** A room, if it is one that decides anything: neither hopelessly tight nor far off. */
  private static double near(ThreadSpec spec, double room) {
    return room > -TIGHT * spec.pitch() && room < WIDE * spec.pitch() ? room : Double.NaN;
  }
}
