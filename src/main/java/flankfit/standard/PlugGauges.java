package flankfit.standard;

import flankfit.unit.Require;
import java.util.Objects;
import java.util.Optional;

/**
 * Plug gauges for an internal thread (mm), as new at the middle of their own tolerance.
 *
 * @param goPitch pitch diameter of the GO thread plug (mm)
 * @param goMajorMin least major diameter of the GO thread plug (mm)
 * @param noGoPitch pitch diameter of the NO-GO thread plug (mm)
 * @param noGoMajorMax greatest major diameter of the NO-GO thread plug (mm)
 * @param turnsAllowed turns the NO-GO plug may enter and the thread still be accepted (1)
 * @param plainGo diameter of the plain GO plug (mm): least minor diameter of the thread
 * @param plainNoGo diameter of the plain NO-GO plug (mm): greatest minor diameter of the thread
 * @param rule where the turns rule and the sizes come from, and how sure that is
 * @param limits limits of the new thread plugs and of their wear; empty for gauges of one size
 */
public record PlugGauges(
    double goPitch,
    double goMajorMin,
    double noGoPitch,
    double noGoMajorMax,
    double turnsAllowed,
    double plainGo,
    double plainNoGo,
    String rule,
    Optional<GaugeLimits> limits) {
  public PlugGauges {
    Objects.requireNonNull(rule, "rule");
    Objects.requireNonNull(limits, "limits");
  }

  /** Gauges of one known size each, without limits of their own. */
  public PlugGauges(
      double goPitch,
      double goMajorMin,
      double noGoPitch,
      double noGoMajorMax,
      double turnsAllowed,
      double plainGo,
      double plainNoGo,
      String rule) {
    this(
        goPitch,
        goMajorMin,
        noGoPitch,
        noGoMajorMax,
        turnsAllowed,
        plainGo,
        plainNoGo,
        rule,
        Optional.empty());
  }

  /** Gauges at the middle of the given limits; plain plugs at the minor-diameter limits (mm). */
  static PlugGauges within(
      GaugeLimits limits, double turnsAllowed, double plainGo, double plainNoGo, String rule) {
    return new PlugGauges(
        (limits.goPitchMin() + limits.goPitchMax()) / 2,
        limits.goMajorMin(),
        (limits.noGoPitchMin() + limits.noGoPitchMax()) / 2,
        limits.noGoMajorMax(),
        turnsAllowed,
        plainGo,
        plainNoGo,
        rule,
        Optional.of(limits));
  }

  /**
   * Whether a thread is accepted that the NO-GO plug enters by some turns before it stops, as the
   * thread's own standard rules.
   *
   * @param turns turns that the plug enters (1), not below 0
   */
  public boolean acceptsNoGoTurns(double turns) {
    Require.notNegative("turns", turns);
    return turns <= turnsAllowed;
  }
}
