package flankfit.odds;

import flankfit.finding.Finding;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What chance says of the threads.
 *
 * @param odds by name of the hole, where they were asked for and can be reckoned
 * @param advice by name of the hole, where something was seen
 * @param assumptions what both rest on, each sentence once
 * @param findings observations that clash, registers beyond their limit
 */
public record OddsAnswer(
    Map<String, ThreadOdds> odds,
    Map<String, GaugingAdvice> advice,
    List<String> assumptions,
    List<Finding> findings) {
  public OddsAnswer {
    odds = Collections.unmodifiableMap(new LinkedHashMap<>(odds));
    advice = Collections.unmodifiableMap(new LinkedHashMap<>(advice));
    assumptions = List.copyOf(assumptions);
    findings = List.copyOf(findings);
  }

  /** The odds of a hole's thread. */
  public Optional<ThreadOdds> odds(String hole) {
    return Optional.ofNullable(odds.get(hole));
  }

  /** The advice for a hole's thread. */
  public Optional<GaugingAdvice> advice(String hole) {
    return Optional.ofNullable(advice.get(hole));
  }
}
