package flankfit.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.VariedThreads;
import flankfit.setup.Scatter;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is seen in one hole of a pattern counts for those cut alike. */
class AlikeThreadsTest {
  private static final double WEAR = -0.03;

  private final GaugeAnswer gauged = VariedThreads.pattern(WEAR, "M20x1.5-5H");

  private static PartObserved part(int number, String seen) {
    return new PartObserved(number, WEAR, List.of(Observation.of(seen, LengthUnit.MILLIMETRE)));
  }

  private OddsAnswer answer(Map<String, List<PartObserved>> parts) {
    return OddsAnswers.of("valve.nc", gauged, SetupSheet.empty(), OddsRequest.of(parts));
  }

  private static double key(OddsAnswer answer, String hole) {
    return answer.advice(hole).orElseThrow().key().orElseThrow().wear();
  }

  @Test
  void the_other_hole_gets_the_same_advice_and_another_thread_gets_none() {
    OddsAnswer answer = answer(Map.of("port 1", List.of(part(1, "go=stops"))));
    assertThat(key(answer, "port 2")).isCloseTo(key(answer, "port 1"), within(0.0011));
    assertThat(answer.advice("port 2").orElseThrow().observed()).isEmpty();
    assertThat(answer.advice("port 3")).isEmpty();
    assertThat(answer.assumptions())
        .anyMatch(told -> told.contains("port 1 counts for port 2, too"))
        .anyMatch(told -> told.contains("port 1 does not count for port 3"));
  }

  /** One mill, but the machine's circles are others in each hole, so that two holes tell more. */
  @Test
  void seen_in_two_holes_tells_more_than_seen_twice_in_one() {
    Map<String, List<PartObserved>> both = new LinkedHashMap<>();
    both.put("port 1", List.of(part(1, "pitch=19.13±0.004")));
    both.put("port 2", List.of(part(1, "pitch=19.14±0.004")));
    OddsAnswer answer = answer(both);
    ThreadAnswer first = gauged.threads().get(0);
    PartObserved twice =
        new PartObserved(
            1,
            WEAR,
            List.of(
                Observation.of("pitch=19.13±0.004", LengthUnit.MILLIMETRE),
                Observation.of("pitch=19.14±0.004", LengthUnit.MILLIMETRE)));
    Scatter scatter = SetupSheet.empty().scatter();
    GaugingAdvice alone =
        Odds.of(first, scatter, ThreadOdds.SEED).orElseThrow().advice(List.of(twice));
    Estimate one = answer.advice("port 1").orElseThrow().pitch();
    Estimate other = answer.advice("port 2").orElseThrow().pitch();
    assertThat(other.value()).isCloseTo(one.value(), within(1e-6));
    assertThat(other.deviation()).isCloseTo(one.deviation(), within(1e-6));
    assertThat(one.value()).isCloseTo(alone.pitch().value(), within(1e-3));
    assertThat(one.deviation()).isLessThan(0.95 * alone.pitch().deviation());
    assertThat(answer.advice("port 3")).isEmpty();
  }
}
