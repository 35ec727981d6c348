package flankfit.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Deviation;
import flankfit.gauge.Formed;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadVariation;
import flankfit.gauge.VariedThreads;
import flankfit.standard.ThreadSpec;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The fast response against the exact measures at random deviations. */
class ResponseProperties {
  /** Half a micrometre (mm). */
  private static final double NEAR = 5e-4;

  private static final int DRAWS = 250;

  private static Map<String, ThreadAnswer> threads() {
    Map<String, ThreadAnswer> threads = new TreeMap<>();
    threads.put("straight", VariedThreads.straight(0));
    threads.put("straight, crest decides", VariedThreads.straight(0.02));
    threads.put("straight and bent", VariedThreads.straightAndBent(-0.02));
    threads.put("ground and bent", VariedThreads.groundAndBent(-0.045));
    threads.put("boss", VariedThreads.boss(0));
    return threads;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "straight",
        "straight, crest decides",
        "straight and bent",
        "ground and bent",
        "boss"
      })
  void stays_within_half_a_micrometre(String name) {
    ThreadVariation variation = threads().get(name).variation().orElseThrow();
    Ranges ranges = new Ranges(0.15, 0.15, 0.012, 0.008, 0.5, 0.03);
    Response response = Response.of(variation, ranges).orElseThrow();
    ThreadSpec spec = variation.spec();
    Random random = new Random(20261128);
    for (int i = 0; i < DRAWS; i++) {
      Deviation d =
          new Deviation(
              spread(random, 0.13),
              spread(random, 0.012),
              spread(random, 0.008),
              // bending is solved anew for each: a few values suffice
              1 + 0.1 * (random.nextInt(11) - 5),
              spread(random, 0.03));
      Formed exact = variation.formed(d).orElseThrow();
      Formed fast = response.at(d);
      String at = name + " " + d;
      assertThat(fast.simple()).as(at).isCloseTo(exact.simple(), within(NEAR));
      assertThat(fast.felt()).as(at).isCloseTo(exact.felt(), within(NEAR));
      assertThat(fast.functional(spec)).as(at).isCloseTo(exact.functional(spec), within(NEAR));
      assertThat(fast.ridge()).as(at).isCloseTo(exact.ridge(), within(NEAR));
    }
  }

  private static double spread(Random random, double half) {
    return half * (2 * random.nextDouble() - 1);
  }
}
