package flankfit.standard;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A thread as a designation asks for it, with everything its standard says of it (mm, rad).
 *
 * @param designation canonical text, such as {@code M20x1.5-6H}
 * @param form {@code ISO metric} or {@code Unified}
 * @param series {@code coarse}, {@code fine}, {@code UNC}, {@code UNF}…; empty text when it has
 *     none
 * @param nominal basic major diameter (mm)
 * @param pitch axial distance from thread to thread (mm)
 * @param threadsPerInch threads per inch (1), for Unified threads
 * @param starts number of starts (1)
 * @param halfAngle half the angle between the flanks (rad)
 * @param threadClass tolerance class, such as {@code 6H} or {@code 2B}
 * @param internal whether it is a hole's thread
 * @param leftHand whether it is a left-hand thread
 * @param basicPitch basic pitch diameter, exact (mm)
 * @param basicMinor basic minor diameter of the internal thread, exact (mm)
 * @param limits limits of size (mm)
 * @param gauges plug gauges, for internal threads
 * @param drill suggested drill, for internal threads
 * @param sources standard, clause and table behind the figures, and what is from memory
 */
public record ThreadSpec(
    String designation,
    String form,
    String series,
    double nominal,
    double pitch,
    OptionalDouble threadsPerInch,
    int starts,
    double halfAngle,
    String threadClass,
    boolean internal,
    boolean leftHand,
    double basicPitch,
    double basicMinor,
    Limits limits,
    Optional<PlugGauges> gauges,
    Optional<Drill> drill,
    List<String> sources) {
  public ThreadSpec {
    Objects.requireNonNull(designation, "designation");
    Objects.requireNonNull(limits, "limits");
    sources = List.copyOf(sources);
  }

  /** Travel along the axis in one turn (mm). */
  public double lead() {
    return pitch * starts;
  }

  /** Lead angle at the basic pitch diameter (rad). */
  public double leadAngle() {
    return Math.atan(lead() / (Math.PI * basicPitch));
  }
}
