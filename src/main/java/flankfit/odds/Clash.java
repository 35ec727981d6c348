package flankfit.odds;

import java.util.Objects;

/**
 * An observation that hardly agrees with the rest.
 *
 * @param part the part it was made on
 * @param observation the observation
 * @param with what it clashes with, in words
 * @param chance how likely it was, all else believed (1)
 */
public record Clash(int part, Observation observation, String with, double chance) {
  public Clash {
    Objects.requireNonNull(observation, "observation");
    Objects.requireNonNull(with, "with");
  }
}
