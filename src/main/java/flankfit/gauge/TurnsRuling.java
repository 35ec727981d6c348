package flankfit.gauge;

import flankfit.gauge.Travel.End;
import flankfit.gauge.Travel.From;
import flankfit.gauge.Travel.Play;
import flankfit.standard.PlugGauges;
import flankfit.standard.ThreadSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * What the NO-GO gauge's turns mean by the rule of the thread's own system: not more than two by
 * hand from either end for ISO metric threads, not more than three complete ones for Unified.
 *
 * @param travels the gauge's way from the mouth, and from the far end where the rule asks for it
 * @param turns most turns that it goes (1)
 * @param allowed turns that the rule allows (1)
 * @param accepted whether the thread is accepted
 * @param isShort whether the thread has so few turns that gauge maker and buyer may need to agree
 *     on another rule
 * @see "ISO 1502, use of the NO-GO gauges, as printed in a gauge maker's instructions; ASME
 *     B1.2-1983, acceptance by NOT-GO gauges; for metric rings from memory of ISO 1502"
 */
public record TurnsRuling(
    List<Travel> travels, double turns, double allowed, boolean accepted, boolean isShort) {
  /** Turns allowed where a thread has no plugs of its own: rings (1). */
  private static final double METRIC = 2;

  private static final double UNIFIED = 3;

  /** Turns of a thread up to which the rule may not suit it (1). */
  private static final double SHORT_THREAD = 5;

  public TurnsRuling {
    travels = List.copyOf(travels);
  }

  /** Tries a NO-GO gauge, free to shift, by the rule of the wall's thread. */
  public static TurnsRuling of(WallField field, ThreadGauge noGo) {
    ThreadSpec spec = field.spec();
    boolean unified = spec.threadsPerInch().isPresent();
    List<Travel> travels = new ArrayList<>();
    travels.add(Travel.of(field, noGo, From.MOUTH, Play.FREE));
    if (!unified && field.isThrough()) {
      travels.add(Travel.of(field, noGo, From.FAR_END, Play.FREE));
    }
    double turns = travels.stream().mapToDouble(Travel::turns).max().orElseThrow();
    boolean stopped = travels.stream().allMatch(travel -> travel.end() == End.STOPPED);
    double allowed = allowed(spec);
    double all = (field.mouth() - field.farMouth()) / spec.lead();
    return new TurnsRuling(
        travels, turns, allowed, stopped && turns <= allowed, all <= SHORT_THREAD);
  }

  /** Turns that the rule of a thread's own system allows (1). */
  static double allowed(ThreadSpec spec) {
    boolean unified = spec.threadsPerInch().isPresent();
    return spec.gauges().map(PlugGauges::turnsAllowed).orElse(unified ? UNIFIED : METRIC);
  }
}
