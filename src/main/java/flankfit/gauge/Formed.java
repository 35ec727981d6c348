package flankfit.gauge;

/**
 * The diameters of a thread that gauges feel (mm).
 *
 * @param simple simple pitch diameter, mean over the rows
 * @param felt simple pitch diameter where a NO-GO gauge must have stopped
 * @param flanks what flanks and the groove's corners leave for the GO gauge: its functional
 *     diameter while its crest cylinder goes in
 * @param crest what the GO gauge's crest cylinder leaves for it; infinite (of a boss: minus
 *     infinite) while there is play at the crest
 * @param ridge diameter of the ridge's crest: minor in a hole, major on a boss
 */
public record Formed(double simple, double felt, double flanks, double crest, double ridge) {
  /** Functional diameter with the GO gauge's full crest (mm). */
  public double functional(boolean internal) {
    return internal ? Math.min(flanks, crest) : Math.max(flanks, crest);
  }
}
