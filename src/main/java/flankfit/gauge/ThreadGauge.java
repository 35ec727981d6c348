package flankfit.gauge;

import flankfit.standard.ThreadSpec;
import flankfit.unit.Require;
import java.util.Objects;

/**
 * A thread gauge that is screwed on: a plug for a hole, a ring for a boss. Its flanks are straight
 * from root to crest; beyond it is cleared.
 *
 * @param kind what it is for
 * @param pitchDiameter its pitch diameter (mm)
 * @param crestRadius radius where its ridges end (mm)
 * @param rootRadius radius where its flanks begin (mm)
 * @param length length of its thread (mm), above 0
 * @param source where form and length come from
 */
public record ThreadGauge(
    Kind kind,
    double pitchDiameter,
    double crestRadius,
    double rootRadius,
    double length,
    String source) {
  /** Least number of threads of a GO gauge, and number of threads of a NO-GO gauge (1). */
  private static final int GO_THREADS = 8;

  private static final int NO_GO_THREADS = 3;

  /** Height of a metric NO-GO gauge's flank on each side of the pitch line, share of the pitch. */
  private static final double METRIC_SHORT = 0.1;

  private static final String GO_SOURCE =
      "full form; thread one nominal diameter long and at least 8 pitches: common practice, no"
          + " source";
  private static final String METRIC_SOURCE =
      "flanks cut to 0.1 P on each side of the pitch line and three threads: from memory of ISO"
          + " 1502";
  private static final String UNIFIED_SOURCE =
      "flanks cut to H/4 on each side of the pitch line: from memory of ASME B1.2-1983; three"
          + " threads: common practice, no source";

  /** What a gauge is for. */
  public enum Kind {
    GO("GO"),
    NO_GO("NO-GO");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word people see. */
    public String word() {
      return word;
    }
  }

  public ThreadGauge {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(source, "source");
    Require.positive("pitchDiameter", pitchDiameter);
    Require.positive("crestRadius", crestRadius);
    Require.positive("rootRadius", rootRadius);
    Require.positive("length", length);
  }

  /** The GO gauge of a thread, in the condition that the thread's gauges are in. */
  public static ThreadGauge go(ThreadSpec spec) {
    Mate mate = Mate.of(spec);
    return go(spec, mate.crestRadius());
  }

  /** The GO gauge with its crest relieved, so that flanks alone decide. */
  static ThreadGauge goRelieved(ThreadSpec spec) {
    return go(spec, Mate.of(spec).relievedRadius());
  }

  private static ThreadGauge go(ThreadSpec spec, double crest) {
    Mate mate = Mate.of(spec);
    double length = Math.max(spec.nominal(), GO_THREADS * spec.pitch());
    return new ThreadGauge(
        Kind.GO, mate.pitchDiameter(), crest, mate.rootRadius(), length, GO_SOURCE);
  }

  /** The NO-GO gauge of a thread, in the condition that the thread's gauges are in. */
  public static ThreadGauge noGo(ThreadSpec spec) {
    double pitch = Mate.noGoPitch(spec);
    double flank = spec.internal() ? shortFlank(spec) : -shortFlank(spec);
    return new ThreadGauge(
        Kind.NO_GO,
        pitch,
        pitch / 2 + flank,
        pitch / 2 - flank,
        Math.max(NO_GO_THREADS * spec.pitch(), spec.lead()),
        isUnified(spec) ? UNIFIED_SOURCE : METRIC_SOURCE);
  }

  /** Height of a NO-GO gauge's flanks on each side of the pitch line (mm). */
  static double shortFlank(ThreadSpec spec) {
    double quarterHeight = spec.pitch() / (8 * Math.tan(spec.halfAngle()));
    return isUnified(spec) ? quarterHeight : METRIC_SHORT * spec.pitch();
  }

  private static boolean isUnified(ThreadSpec spec) {
    return spec.threadsPerInch().isPresent();
  }

  /** The same gauge with another pitch diameter, its crest where it was (mm). */
  public ThreadGauge withPitchDiameter(double diameter) {
    return new ThreadGauge(kind, diameter, crestRadius, rootRadius, length, source);
  }

  /** The same gauge with a thread of another length (mm). */
  public ThreadGauge withLength(double other) {
    return new ThreadGauge(kind, pitchDiameter, crestRadius, rootRadius, other, source);
  }
}
