package flankfit.setup;

import java.util.Objects;
import java.util.Optional;

/**
 * How the machine's circles and the cutting forces scatter; what is empty was not stated, and the
 * odds take something usual for it and say so.
 *
 * @param circleRadius greatest less least radius of small circles that should be alike (mm)
 * @param roundness greatest less least radius within one circle (mm), the circular deviation of a
 *     circular test
 * @param force share by which forces may be off either way (1), in [0, 1)
 */
public record Scatter(
    Optional<Double> circleRadius, Optional<Double> roundness, Optional<Double> force) {
  public Scatter {
    Objects.requireNonNull(circleRadius, "circleRadius");
    Objects.requireNonNull(roundness, "roundness");
    Objects.requireNonNull(force, "force");
  }

  /** Nothing is stated. */
  public static Scatter unknown() {
    return new Scatter(Optional.empty(), Optional.empty(), Optional.empty());
  }
}
