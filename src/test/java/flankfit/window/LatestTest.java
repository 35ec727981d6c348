package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Questions answered beside: the latest one wins. */
@Timeout(value = 20, unit = TimeUnit.SECONDS)
class LatestTest {
  private final Semaphore woken = new Semaphore(0);

  private static void await(BooleanSupplier condition) {
    while (!condition.getAsBoolean()) {
      Thread.onSpinWait();
    }
  }

  @Test
  void those_that_wait_are_replaced_and_the_last_one_is_answered() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    List<Integer> worked = Collections.synchronizedList(new ArrayList<>());
    try (Latest<Integer, Integer> latest =
        new Latest<>(
            "test",
            0,
            (question, watch) -> {
              worked.add(question);
              begun.countDown();
              awaitUninterruptibly(goOn);
              return 10 * question;
            },
            woken::release)) {
      latest.ask(1);
      begun.await();
      for (int i = 2; i <= 9; i++) {
        latest.ask(i);
      }
      assertThat(latest.isGoing()).isTrue();
      assertThat(latest.told()).isEmpty();
      goOn.countDown();
      await(() -> latest.told(9).isPresent());
      assertThat(latest.told(9)).contains(90);
      assertThat(worked).containsExactly(1, 9);
      await(() -> !latest.isGoing());
      latest.ask(9);
      assertThat(latest.isGoing()).isFalse();
      woken.acquire(2);
    }
  }

  private static void awaitUninterruptibly(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void one_that_watches_stops_when_another_comes_or_nobody_waits() {
    try (Latest<Integer, Integer> latest =
        new Latest<>(
            "test",
            0,
            (question, watch) -> {
              while (question < 5) {
                if (!watch.goesOn(0.5)) {
                  throw new CancellationException();
                }
              }
              return question;
            },
            woken::release)) {
      latest.ask(1);
      await(() -> latest.share() == 0.5);
      latest.ask(7);
      await(() -> latest.told(7).isPresent());
      latest.ask(2);
      await(() -> latest.share() == 0.5);
      latest.stop();
      assertThat(latest.isGoing()).isFalse();
      assertThat(latest.told()).contains(new Latest.Told<>(7, 7));
    }
  }

  @Test
  void a_question_rests_before_it_is_begun_and_a_failure_is_told() {
    long begun = System.nanoTime();
    try (Latest<Integer, Integer> latest =
        new Latest<>("test", 60, (question, watch) -> 100 / question, woken::release)) {
      latest.ask(4);
      await(() -> latest.told(4).isPresent());
      assertThat(System.nanoTime() - begun).isGreaterThan(59_000_000);
      latest.ask(0);
      await(() -> latest.failure().isPresent());
      assertThat(latest.failure().orElseThrow()).contains("the tool failed").contains("zero");
      assertThat(latest.told()).contains(new Latest.Told<>(4, 25));
      latest.ask(5);
      await(() -> latest.told(5).isPresent());
      assertThat(latest.failure()).isEmpty();
    }
  }
}
