package flankfit.window;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.Interpretation;
import flankfit.nc.SourceText;
import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A real window that loads, driven by keys of the display. */
class LoadingWindowTest {
  /** More passes than anybody waits for. */
  private static final String ENDLESS =
      "G21 G90\n#1=0\nWHILE[#1LT9000000]DO1\nG1 X[#1*0.001] Y[SIN[#1]] F100.\n#1=#1+1\nEND1\nM30\n";

  private static final SetupSheet PATIENT =
      SetupReader.read("s", "[control]\nloop-limit = 1000000000\nblock-limit = 1000000000\n")
          .sheet()
          .orElseThrow();

  private static final long PATIENCE = 30_000;

  @TempDir Path folder;
  private final CountDownLatch mayJudge = new CountDownLatch(1);
  private volatile String program = ENDLESS;
  private volatile Seen seen = new Seen(0, Stage.READING, 0, "", false, 0);

  /** What the last frame showed. */
  private record Seen(
      long frames, Stage stage, int moves, String sentence, boolean position, int findings) {}

  private final ProgramSource source =
      new ProgramSource() {
        @Override
        public String file() {
          return "p.nc";
        }

        @Override
        public Text read() {
          SourceText text = SourceText.of("p.nc", program.getBytes(UTF_8));
          return new Text(text, PATIENT, List.of(), Map.of());
        }

        @Override
        public Judgement judge(Text text, Interpretation checked) {
          try {
            mayJudge.await();
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
          return new Judgement(checked.findings(), "judged");
        }
      };

  @BeforeEach
  void needs_a_display_and_a_hand() {
    Xdotool.needed();
  }

  @Test
  @Timeout(value = 120, unit = TimeUnit.SECONDS)
  void first_moves_are_seen_before_the_end_and_keys_stop_and_begin_anew() throws Exception {
    Path file = folder.resolve("window.properties");
    new Preferences(900, 620, View.ISO, Theme.LIGHT, Optional.empty()).write(file);
    AtomicReference<ViewState> shown = new AtomicReference<>();
    CompletableFuture<Void> hand = CompletableFuture.runAsync(this::script);
    // A window that waits for events draws no frame: it must be told from outside.
    CompletableFuture<Void> closed = hand.whenComplete((done, failure) -> shown.get().quit());
    try (Loader loader = new Loader(source, SetupSheet.empty(), List.of())) {
      MotionWindow.open(
          loader,
          file,
          (state, loop) -> {
            shown.set(state);
            if (loop.frames() == 1) {
              loader.begin();
            }
            seen =
                new Seen(
                    loop.frames(),
                    state.loaded().stage(),
                    state.input().tape().size(),
                    state.sentence(),
                    state.position() >= 0,
                    state.input().findings().size());
          });
    }
    closed.get(10, TimeUnit.SECONDS);
  }

  private void script() {
    Seen first = await("a frame with a move", s -> s.position);
    assertThat(first.stage).isEqualTo(Stage.EXECUTING);
    assertThat(first.sentence).startsWith("executing p.nc: ").contains(" blocks");
    Seen more = await("more moves", s -> s.moves > first.moves);
    assertThat(more.stage).isEqualTo(Stage.EXECUTING);
    Xdotool.focus();
    Xdotool.run("key", "Escape");
    Seen stopped = await("the stop", s -> s.stage == Stage.STOPPED);
    assertThat(stopped.sentence).startsWith("incomplete: stopped after ");
    assertThat(stopped.moves).isPositive();

    program = "G21 G90 G54\nG1 X3. F100.\nX4.\nM30\n";
    Xdotool.run("key", "r");
    Seen gauging = await("the gauging of the other text", s -> s.stage == Stage.GAUGING);
    assertThat(gauging.sentence).isEqualTo("gauging the threads");
    assertThat(gauging.moves).isEqualTo(2);
    Xdotool.run("key", "Escape");
    await("the stop of the gauging", s -> s.stage == Stage.STOPPED);
    program = "G21 G90 G54\nG1 X3. F100.\nX4.\nX5.\nM30\n";
    Xdotool.run("key", "r");
    await("the gauging of the last text", s -> s.stage == Stage.GAUGING && s.moves == 3);
    mayJudge.countDown();
    Seen done = await("the end", s -> s.stage == Stage.DONE);
    assertThat(done.sentence).isEqualTo("judged");
    assertThat(done.moves).isEqualTo(3);
    List<Stage> after = new ArrayList<>();
    Xdotool.run("key", "End");
    after.add(await("another frame", s -> s.frames > done.frames).stage);
    assertThat(after).containsExactly(Stage.DONE);
    Xdotool.run("key", "q");
  }

  private Seen await(String what, Predicate<Seen> condition) {
    long end = System.nanoTime() + PATIENCE * 1_000_000;
    while (true) {
      Seen now = seen;
      if (condition.test(now)) {
        return now;
      }
      if (System.nanoTime() > end) {
        throw new AssertionError("waited in vain for " + what + "; last seen: " + now);
      }
      Xdotool.pause(10);
    }
  }
}
