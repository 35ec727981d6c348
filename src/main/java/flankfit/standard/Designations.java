package flankfit.standard;

import java.util.Objects;

/**
 * Reads thread designations as the standards write them, and answers with everything the standard
 * says of the thread.
 *
 * <p>ISO metric: {@code M20x1.5-6H}, {@code M20-6H} with the coarse pitch, {@code M6x1-5H6H},
 * {@code M20xPh3P1.5-6H} with two starts. Unified: {@code 1/2-13 UNC-2B}, {@code #10-32 UNF-2B},
 * {@code .500-20 UNF-3B}; the series may be left out where size and threads per inch belong to one,
 * and a whole number without {@code #} is a gauge number where that diameter could take the pitch.
 * {@code -LH} at the end means left hand. The case of a metric class tells hole (H) from screw (h);
 * elsewhere case and blanks do not matter. A class left out is taken as the ordinary one for a
 * hole, and the first of the sources says so.
 */
public final class Designations {
  private Designations() {}

  /**
   * The thread that a designation asks for.
   *
   * @param text designation, such as {@code M20x1.5-6H}; at most 60 characters
   * @return the thread with limits, gauges and drill (mm, rad)
   * @throws InvalidDesignationException if no standard known here has such a thread; says what is
   *     wrong and what is nearest
   */
  public static ThreadSpec parse(String text) throws InvalidDesignationException {
    Objects.requireNonNull(text, "text");
    String uniform = DesignationText.uniform(text);
    if (DesignationText.beginsMetric(uniform)) {
      return MetricDesignation.parse(uniform);
    }
    if (DesignationText.beginsUnified(uniform)) {
      return UnifiedDesignation.parse(uniform);
    }
    throw new InvalidDesignationException(
        uniform + " is not a thread designation known here",
        "ISO metric threads begin with M and the diameter, Unified threads with the size",
        "write a designation such as M20x1.5-6H or 1/2-13 UNC-2B");
  }
}
