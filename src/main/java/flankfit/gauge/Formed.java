package flankfit.gauge;

import flankfit.standard.ThreadSpec;

/**
 * The diameters of a thread that gauges feel (mm).
 *
 * @param simple simple pitch diameter, mean over the rows
 * @param felt simple pitch diameter where a NO-GO gauge must have stopped
 * @param flanks what flanks and the groove's corners leave for the GO gauge: its functional
 *     diameter while its crest cylinder goes in
 * @param play play of the GO gauge's crest in the groove's bottom (mm on the radius); negative when
 *     the crest keeps it out
 * @param ridge diameter of the ridge's crest: minor in a hole, major on a boss
 */
public record Formed(double simple, double felt, double flanks, double play, double ridge) {
  /** Functional diameter with the GO gauge's full crest (mm). */
  public double functional(ThreadSpec spec) {
    if (play >= 0) {
      return flanks;
    }
    double byCrest = Mate.goPitch(spec) + (spec.internal() ? 2 : -2) * play;
    return spec.internal() ? Math.min(flanks, byCrest) : Math.max(flanks, byCrest);
  }
}
