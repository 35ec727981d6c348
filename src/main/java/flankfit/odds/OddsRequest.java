package flankfit.odds;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is asked about chance.
 *
 * @param odds whether the odds of each thread are asked for
 * @param draws number of draws, from 1
 * @param seed any number; the same gives the same answer
 * @param parts what was seen on parts, by name of the hole
 */
public record OddsRequest(
    boolean odds, int draws, long seed, Map<String, List<PartObserved>> parts) {
  public OddsRequest {
    parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
  }

  /** Only what observations make believe. */
  public static OddsRequest of(Map<String, List<PartObserved>> parts) {
    return new OddsRequest(false, ThreadOdds.DRAWS, ThreadOdds.SEED, parts);
  }
}
