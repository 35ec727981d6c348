package flankfit.odds;

import java.util.Objects;

/**
 * One input's part in how much the thread scatters.
 *
 * @param name what scatters
 * @param share its share of the variance of the least spare of all gauges, by total effect, all
 *     inputs together 1 (1)
 * @param alone what the variance would lose if this input alone were known, of the whole (1)
 */
public record Contributor(String name, double share, double alone) {
  public Contributor {
    Objects.requireNonNull(name, "name");
  }
}
