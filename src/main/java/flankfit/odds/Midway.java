package flankfit.odds;

import java.util.Objects;

/**
 * A gauge that stopped on its way where nothing in program and sheet makes one stop.
 *
 * @param part the part it was seen on
 * @param observation what was seen
 * @param whole turns that lie before it until it passes, a GO gauge, or must have stopped (1)
 * @param chance probability that something unknown narrows the thread (1)
 */
public record Midway(int part, Observation observation, double whole, double chance) {
  public Midway {
    Objects.requireNonNull(observation, "observation");
  }
}
