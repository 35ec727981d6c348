package flankfit.odds;

import java.util.List;

/**
 * What was seen on one part.
 *
 * @param part number of the part; only differences count
 * @param wear wear entry of the register when it was cut (mm, as entered); 0 without a register
 * @param observations what was seen
 */
public record PartObserved(int part, double wear, List<Observation> observations) {
  public PartObserved {
    observations = List.copyOf(observations);
  }
}
