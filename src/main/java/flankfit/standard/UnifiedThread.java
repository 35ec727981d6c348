package flankfit.standard;

import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One Unified thread with its figures put together.
 *
 * @param size basic major diameter
 * @param n threads per inch (1)
 * @param series series
 * @param threadClass tolerance class
 * @param leftHand whether it is a left-hand thread
 */
record UnifiedThread(
    InchSize size, double n, UnifiedSeries series, UnifiedClass threadClass, boolean leftHand) {
  /** Size and threads per inch, such as {@code 1/2-13}. */
  static String text(InchSize size, double n) {
    return size.text() + "-" + Rounding.text(n);
  }

  /**
   * Everything the standards say of the thread.
   *
   * @param notes what the reading of the designation has to say, first among the sources
   */
  ThreadSpec toSpec(List<String> notes) {
    StepLimits limits = UnifiedLimits.of(size, n, series, threadClass);
    boolean internal = threadClass.internal();
    double nominal = LengthUnit.INCH.toMillimetres(size.inches());
    double pitch = LengthUnit.INCH.toMillimetres(1) / n;
    Optional<PlugGauges> gauges = internal ? UnifiedGauges.of(limits, size, n) : Optional.empty();
    Optional<Drill> drill =
        internal ? Drills.unified(nominal, pitch, limits.toLimits()) : Optional.empty();
    return new ThreadSpec(
        text(size, n) + " " + series + "-" + threadClass.text() + (leftHand ? "-LH" : ""),
        "Unified",
        series.name(),
        nominal,
        pitch,
        OptionalDouble.of(n),
        1,
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
    sources.add("basic profile: ASME B1.1 paragraph 2, as ISO 68-1");
    sources.add(
        "limits of size: ASME B1.1-2003, formulas of paragraphs 5.1, 5.8.1 and 5.8.2, rounded as"
            + " its tables");
    if (series == UnifiedSeries.UN) {
      sources.add("which sizes the constant-pitch series have is from memory of ASME B1.1");
    }
    if (threadClass.loose() && !looseTabulated()) {
      sources.add(
          "class "
              + threadClass.text()
              + ": from memory, ASME B1.1 tabulates it for UNC and UNF from 1/4 in up only;"
              + " the limits follow from its formulas all the same");
    }
    if (threadClass.internal()) {
      sources.add(
          hasGauges
              ? "gauges: ASME B1.2, X tolerances; gauge limits: check against the standard"
              : "gauges: none, the X tolerances known here end at 4 in and 4 threads per inch");
      sources.add(Drills.source(hasDrill));
    } else {
      sources.add("greatest minor diameter: that of the basic profile less the allowance");
    }
    return sources;
  }

  private boolean looseTabulated() {
    boolean coarseOrFine = series == UnifiedSeries.UNC || series == UnifiedSeries.UNF;
    return coarseOrFine && size.inches() >= 0.25;
  }
}
