package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Point;
import flankfit.setup.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is advised is keyed in, the whole program gauged again: the verdict is that promised. */
class HeldAdviceProperties {
  private static final int CASES = 10;

  /** Any way of milling the thread; the first cases take each way once. */
  private static Milled job(int number, Random random) {
    Milled job = new Milled();
    boolean boss = number % 4 == 3;
    if (boss) {
      job.thread = "M20x1.5-6g";
      job.boss = true;
      job.hole = 19.85;
      job.radii = new double[] {16.08};
      job.anticlockwise = false;
      job.rising = false;
      job.zStart = 0;
    } else {
      job.depth = number % 3 == 0 ? Optional.of(22.0) : Optional.empty();
      job.radii = number % 3 == 1 ? new double[] {2.8, 3} : new double[] {3};
      // deep enough for whole thread where the entry rises, barely so where it goes straight
      job.zStart = number % 2 == 0 ? -16.5 : -17.5;
      job.entryRiseShare = number % 2 == 0 ? -1 : 0.2 + 0.15 * random.nextDouble();
    }
    if (number % 5 == 2) {
      job.thread += "-LH";
      job.anticlockwise = !job.anticlockwise;
    }
    if (random.nextBoolean()) {
      job.rows = 1;
      job.turns = 14;
      job.arcs = 28;
      job.zStart = boss ? 0.75 : -18.75;
    }
    double side = boss ? 1 : -1;
    boolean contour = random.nextBoolean();
    job.geometry = contour ? 7 : 0;
    job.inwards = contour ? total -> side * (total - 7) : total -> side * total;
    job.wear = (boss ? -0.08 : -0.045) + 0.06 * random.nextDouble() - 0.03;
    if (number % 7 == 6) {
      job.metal = "steel 42CrMo4";
      job.shank = Optional.of(new Tool.Section(14, 60));
    }
    return job;
  }

  private static ThreadAnswer keyed(Milled job, double wear) {
    job.wear = wear;
    return job.judged();
  }

  @Test
  void keyed_in_and_gauged_again_the_verdict_is_the_promised_one() {
    Random random = new Random(20_261_128);
    int shifted = 0;
    for (int i = 0; i < CASES; i++) {
      Milled job = job(i, random);
      double now = job.wear;
      OffsetAdvice advice = job.only().offset().orElseThrow();
      String what = i + " " + job.thread + " from " + now + ": " + advice;
      OffsetAdvice.AsMoved moved = advice.asMoved().orElseThrow();
      shifted += Math.abs(moved.goShift().orElse(1)) > 0.001 ? 1 : 0;
      // A smaller pitch diameter is tight in a hole, a larger one on a boss.
      double tight = advice.increment() * Math.signum(advice.sensitivity()) * (job.boss ? 1 : -1);
      assertThat(moved.goShift()).as(what).isPresent();
      assertThat(moved.noGoShift()).as(what).isPresent();
      assertThat(go(keyed(job, advice.keyToGoLimit()))).as(what).isTrue();
      assertThat(go(keyed(job, advice.keyToGoLimit() + tight))).as(what).isFalse();
      assertThat(noGo(keyed(job, advice.keyToNoGoLimit()))).as(what).isTrue();
      assertThat(noGo(keyed(job, advice.keyToNoGoLimit() - tight))).as(what).isFalse();
      if (advice.hasWindow()) {
        for (double good :
            List.of(advice.keyToMiddle(), advice.keyToGoLimit(), advice.keyToNoGoLimit())) {
          assertThat(keyed(job, good).verdict()).as(what).isEqualTo(Verdict.GAUGES_GOOD);
        }
      }
      job.wear = advice.keyToMiddle();
      OffsetAdvice there = job.only().offset().orElseThrow();
      assertThat(there.keyToGoLimit()).as(what).isCloseTo(advice.keyToGoLimit(), within(1e-9));
      assertThat(there.keyToNoGoLimit()).as(what).isCloseTo(advice.keyToNoGoLimit(), within(1e-9));
    }
    assertThat(shifted).as("cases in which entry and exit cost something").isPositive();
  }

  private static boolean go(ThreadAnswer answer) {
    return answer.go().orElseThrow().enters();
  }

  private static boolean noGo(ThreadAnswer answer) {
    return answer.noGo().orElseThrow().stops();
  }

  @Test
  void a_thread_that_ends_too_early_has_no_entry_that_lets_go_in() {
    Milled job = new Milled();
    job.wear = -0.045;
    job.rows = 6;
    job.zStart = -8;
    OffsetAdvice advice = job.only().offset().orElseThrow();
    assertThat(advice.asMoved().orElseThrow().goShift()).isEmpty();
    assertThat(advice.hasWindow()).isFalse();
    assertThat(job.only().reason()).contains("no register entry");
  }

  @Test
  void holes_of_a_pattern_get_the_advice_that_each_gets_alone() {
    Milled job = new Milled();
    job.entryRiseShare = 0.25;
    List<Point> axes = List.of(new Point(0, 0, 0), new Point(-31.1, 17.3, 0));
    job.axes = axes;
    List<OffsetAdvice> together = new ArrayList<>();
    job.gauge().threads().forEach(t -> together.add(t.offset().orElseThrow()));
    for (int i = 0; i < axes.size(); i++) {
      job.axes = axes.subList(i, i + 1);
      OffsetAdvice alone = job.only().offset().orElseThrow();
      assertThat(together.get(i).keyToGoLimit()).isEqualTo(alone.keyToGoLimit());
      assertThat(together.get(i).keyToNoGoLimit()).isEqualTo(alone.keyToNoGoLimit());
      assertThat(together.get(i).keyToMiddle()).isEqualTo(alone.keyToMiddle());
    }
  }
}
