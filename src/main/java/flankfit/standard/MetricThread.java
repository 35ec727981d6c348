package flankfit.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One ISO metric thread with its figures put together.
 *
 * @param d basic major diameter (µm)
 * @param P pitch (µm)
 * @param starts number of starts (1)
 * @param threadClass tolerance class
 * @param leftHand whether it is a left-hand thread
 */
record MetricThread(long d, long P, int starts, MetricClass threadClass, boolean leftHand) {
  /**
   * Everything the standards say of the thread.
   *
   * @param text canonical designation
   * @param notes what the reading of the designation has to say, first among the sources
   */
  ThreadSpec toSpec(String text, List<String> notes) {
    StepLimits limits = MetricLimits.of(d, P, threadClass);
    boolean internal = threadClass.internal();
    double nominal = d / 1000.0;
    double pitch = P / 1000.0;
    Optional<PlugGauges> gauges = internal ? MetricGauges.of(limits, P) : Optional.empty();
    Optional<Drill> drill =
        internal ? Drills.metric(nominal, pitch, limits.toLimits()) : Optional.empty();
    return new ThreadSpec(
        text,
        "ISO metric",
        MetricSeries.word(d, P),
        nominal,
        pitch,
        OptionalDouble.empty(),
        starts,
        BasicProfile.HALF_ANGLE,
        threadClass.text(),
        internal,
        leftHand,
        BasicProfile.pitchDiameter(nominal, pitch),
        BasicProfile.minorDiameter(nominal, pitch),
        limits.toLimits(),
        gauges,
        drill,
        sources(notes, gauges.isPresent(), drill.isPresent()));
  }

  private List<String> sources(List<String> notes, boolean hasGauges, boolean hasDrill) {
    List<String> sources = new ArrayList<>(notes);
    sources.add("basic profile: ISO 68-1; basic sizes: ISO 724");
    sources.add(
        "limits of size: ISO 965-1, formulas and rounding of clause 13, deviations of table 1;"
            + " which grades a pitch has is from memory of tables 3 to 6");
    if (threadClass.position() == 'f') {
      sources.add("deviation f: from memory of ISO 965-1 table 1");
    }
    if (MetricSeries.word(d, P).isEmpty()) {
      sources.add(
          "special: ISO 261 as known here, up to 100 mm, has no such pair of diameter and pitch;"
              + " the limits follow from the formulas of ISO 965-1 all the same");
    }
    if (threadClass.internal()) {
      sources.add(
          hasGauges
              ? "gauges: ISO 1502; gauge limits: check against the standard"
              : "gauges: none, ISO 1502 as known here ends at a pitch-diameter tolerance of 0.67 mm");
      sources.add(Drills.source(hasDrill));
    } else {
      sources.add("greatest minor diameter: that of the basic profile less the deviation");
    }
    return sources;
  }
}
