package flankfit.gauge;

import flankfit.setup.SetupSheet.GaugeCondition;
import flankfit.standard.GaugeLimits;
import flankfit.standard.PlugGauges;
import flankfit.standard.ThreadSpec;
import java.util.Optional;

/** Plug gauges in the condition that the sheet says: wear makes both plugs smaller. */
final class GaugesInUse {
  private GaugesInUse() {}

  /**
   * The thread with its plug gauges worn as said; unchanged when they are new, or their standard
   * gives no limits of wear.
   */
  static ThreadSpec of(ThreadSpec spec, GaugeCondition condition) {
    double share = share(condition);
    Optional<GaugeLimits> limits = spec.gauges().flatMap(PlugGauges::limits);
    if (condition == GaugeCondition.NEW || limits.isEmpty()) {
      return spec;
    }
    return with(spec, worn(spec.gauges().orElseThrow(), limits.get(), share));
  }

  private static double share(GaugeCondition condition) {
    return switch (condition) {
      case NEW -> 0;
      case MIDDLE -> 0.5;
      case WORN -> 1;
    };
  }

  /** What is taken of the plugs of a thread, one sentence. */
  static String assumed(ThreadSpec spec, GaugeCondition condition) {
    Optional<GaugeLimits> limits = spec.gauges().flatMap(PlugGauges::limits);
    if (condition == GaugeCondition.NEW || limits.isEmpty()) {
      return "gauges of "
          + spec.designation()
          + " are taken as new, at the middle of their own tolerance";
    }
    String worn = condition == GaugeCondition.WORN ? "to" : "half way to";
    return "plugs of "
        + spec.designation()
        + " are taken as worn "
        + worn
        + " their limit"
        + (limits.get().noGoPitchWear().isEmpty() ? ", NO-GO as new: no limit is known" : "");
  }

  private static PlugGauges worn(PlugGauges gauges, GaugeLimits limits, double share) {
    double go = limits.goPitchWear();
    double noGo = limits.noGoPitchWear().orElse(gauges.noGoPitch());
    return new PlugGauges(
        gauges.goPitch() + share * (go - gauges.goPitch()),
        gauges.goMajorMin(),
        gauges.noGoPitch() + share * (noGo - gauges.noGoPitch()),
        gauges.noGoMajorMax(),
        gauges.turnsAllowed(),
        gauges.plainGo(),
        gauges.plainNoGo(),
        gauges.rule(),
        gauges.limits());
  }

  private static ThreadSpec with(ThreadSpec spec, PlugGauges gauges) {
    return new ThreadSpec(
        spec.designation(),
        spec.form(),
        spec.series(),
        spec.nominal(),
        spec.pitch(),
        spec.threadsPerInch(),
        spec.starts(),
        spec.halfAngle(),
        spec.threadClass(),
        spec.internal(),
        spec.leftHand(),
        spec.basicPitch(),
        spec.basicMinor(),
        spec.limits(),
        Optional.of(gauges),
        spec.drill(),
        spec.sources());
  }
}
