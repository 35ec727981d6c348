package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Loads without a window. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class LoaderTest {
  private final List<Loader> opened = new ArrayList<>();
  private final CountDownLatch mayJudge = new CountDownLatch(1);
  private final AtomicInteger reads = new AtomicInteger();
  private volatile String program = lines(3);
  private volatile boolean missing;

  /** A program of so many blocks that make a move. */
  static String lines(int blocks) {
    StringBuilder text = new StringBuilder("G21 G17 G40 G90 G94\nG1 Z0. F500.\n");
    for (int i = 1; i <= blocks; i++) {
      text.append('X').append(i % 100).append(".\n");
    }
    return text.append("M30\n").toString();
  }

  private Loader loader(boolean judgesAtOnce) {
    Loader loader =
        new Loader(
            new ProgramSource() {
              @Override
              public String file() {
                return "p.nc";
              }

              @Override
              public Text read() throws UnreadableProgramException {
                reads.incrementAndGet();
                if (missing) {
                  throw new UnreadableProgramException("program p.nc does not exist");
                }
                byte[] bytes = program.getBytes(StandardCharsets.UTF_8);
                return new Text(
                    SourceText.of("p.nc", bytes), SetupSheet.empty(), List.of(), Map.of());
              }

              @Override
              public Judgement judge(Text text, Interpretation checked) {
                if (!judgesAtOnce) {
                  await(mayJudge);
                }
                return new Judgement(checked.findings(), "judged after " + checked.blocks());
              }
            },
            SetupSheet.empty(),
            List.of("a caution"));
    opened.add(loader);
    return loader;
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @AfterEach
  void close() {
    mayJudge.countDown();
    opened.forEach(Loader::close);
  }

  private static Loaded await(Loader loader, Predicate<Loaded> condition)
      throws InterruptedException {
    while (!condition.test(loader.latest())) {
      Thread.sleep(1);
    }
    return loader.latest();
  }

  private static Loaded end(Loader loader) throws InterruptedException {
    return await(loader, now -> !now.stage().isGoing());
  }

  @Test
  void before_anything_is_read_there_is_an_empty_program() {
    Loaded nothing = loader(true).latest();
    assertThat(nothing.stage()).isEqualTo(Stage.READING);
    assertThat(nothing.input().tape().size()).isZero();
    assertThat(nothing.input().cautions()).containsExactly("a caution");
    assertThat(nothing.whole()).isFalse();
  }

  @Test
  void the_end_is_what_executing_at_once_gives() throws InterruptedException {
    program = lines(30_000);
    Loader loader = loader(true);
    loader.begin();
    Loaded done = end(loader);
    SourceText text = SourceText.of("p.nc", program.getBytes(StandardCharsets.UTF_8));
    Interpretation once =
        ProgramCheck.checked(Interpreter.interpret(text, SetupSheet.empty()), SetupSheet.empty());
    assertThat(done.stage()).isEqualTo(Stage.DONE);
    assertThat(done.whole()).isTrue();
    assertThat(done.blocks()).isEqualTo(once.blocks());
    assertThat(done.input().findings()).isEqualTo(once.findings());
    assertThat(done.input().headline()).isEqualTo("judged after " + once.blocks());
    assertThat(done.input().programLines()).isEqualTo(text.lines());
    assertThat(done.input().tape().size()).isEqualTo(once.tape().size());
    assertThat(done.steps().seconds()).isEqualTo(new Steps(once.tape()).seconds());
    assertThat(done.scene().bounds()).isEqualTo(Loaded.of(done.input()).scene().bounds());
  }

  @Test
  void moves_are_only_added_and_the_first_are_there_before_the_end() throws InterruptedException {
    program = lines(1_500_000);
    Loader loader = loader(true);
    List<Loaded> seen = new ArrayList<>();
    loader.wakes(() -> seen.add(loader.latest()));
    loader.begin();
    end(loader);
    List<Loaded> early = seen.stream().filter(s -> s.stage() == Stage.EXECUTING).toList();
    assertThat(early).isNotEmpty();
    assertThat(early.get(0).input().tape().size()).isBetween(1, 512);
    assertThat(early.get(0).whole()).isFalse();
    assertThat(early.get(0).input().programLines()).hasSizeBetween(1000, 100_000);
    int moves = 0;
    seen.removeIf(s -> s.stage() == Stage.READING);
    for (Loaded s : seen) {
      assertThat(s.beginning()).isEqualTo(2);
      assertThat(s.input().tape().size()).isGreaterThanOrEqualTo(moves);
      moves = s.input().tape().size();
    }
    assertThat(seen).extracting(Loaded::stage).isSorted();
  }

  @Test
  void what_was_stopped_stays_incomplete_whatever_its_thread_still_does() throws Exception {
    Loader loader = loader(false);
    loader.begin();
    await(loader, now -> now.stage() == Stage.GAUGING);
    loader.stop();
    Loaded stopped = loader.latest();
    assertThat(stopped.stage()).isEqualTo(Stage.STOPPED);
    assertThat(stopped.told()).isEqualTo("stopped: the path is whole and checked, but not gauged");
    mayJudge.countDown();
    Thread.sleep(150);
    assertThat(loader.latest()).isSameAs(stopped);
    loader.stop();
    assertThat(loader.latest()).isSameAs(stopped);
  }

  @Test
  void a_stopped_execution_keeps_its_moves_and_says_how_far_it_came() throws Exception {
    program = "#1=0\nWHILE[#1LT9000000]DO1\nG91 G1 X0.001 F100.\n#1=#1+1\nEND1\nM30\n";
    Loader loader = loader(true);
    loader.begin();
    await(loader, now -> now.input().tape().size() > 1000);
    loader.stop();
    Loaded stopped = loader.latest();
    assertThat(stopped.whole()).isFalse();
    assertThat(stopped.input().tape().size()).isGreaterThan(1000);
    assertThat(stopped.told()).startsWith("incomplete: stopped after ").contains(" blocks");
  }

  @Test
  void a_replaced_load_never_comes_over_the_newer_one() throws Exception {
    Loader loader = loader(false);
    loader.begin();
    await(loader, now -> now.stage() == Stage.GAUGING);
    program = lines(7);
    loader.begin();
    mayJudge.countDown();
    Loaded done = end(loader);
    Thread.sleep(150);
    assertThat(loader.latest()).isSameAs(done);
    assertThat(done.input().headline()).isEqualTo("judged after 10");
    assertThat(done.beginning()).isEqualTo(3);
    assertThat(reads).hasValue(2);
  }

  @Test
  void a_program_that_cannot_be_read_again_leaves_what_was_there() throws Exception {
    Loader loader = loader(true);
    loader.begin();
    Loaded first = end(loader);
    missing = true;
    loader.begin();
    Loaded failed = await(loader, now -> now.stage() == Stage.FAILED);
    assertThat(failed.told()).isEqualTo("not read: program p.nc does not exist");
    assertThat(failed.input()).isSameAs(first.input());
    assertThat(LoadWords.sentence(failed)).isEqualTo(failed.told());
  }

  @Test
  void a_file_that_is_no_program_text_is_told_as_unreadable_until_it_is_mended() throws Exception {
    Loader loader = loader(true);
    for (String text : List.of("", "G1 X1." + "\u0001".repeat(40))) {
      program = text;
      loader.begin();
      Loaded failed =
          await(loader, now -> now.stage() == Stage.FAILED && now.problems().size() == 1);
      assertThat(LoadWords.sentence(failed)).isEqualTo("not read: the file is not program text");
      Problem problem = failed.problems().get(0);
      assertThat(problem.what()).isEqualTo("RD01  the file is not program text");
      assertThat(problem.where()).startsWith("p.nc");
      assertThat(problem.why()).contains(text.isEmpty() ? "empty" : "control characters");
      assertThat(problem.fix())
          .isEqualTo(
              text.isEmpty()
                  ? "write the program into it, or name the file that holds it"
                  : "save it as plain text");
      program = lines(3);
      loader.begin();
      assertThat(await(loader, now -> now.stage() == Stage.DONE).problems()).isEmpty();
    }
  }

  @Test
  void a_text_that_was_read_already_is_not_read_again() throws Exception {
    Loader loader = loader(true);
    byte[] bytes = lines(4).getBytes(StandardCharsets.UTF_8);
    loader.begin(
        Optional.of(
            new ProgramSource.Text(
                SourceText.of("p.nc", bytes), SetupSheet.empty(), List.of(), Map.of())));
    assertThat(end(loader).blocks()).isEqualTo(7);
    assertThat(reads).hasValue(0);
  }

  @Test
  void a_program_that_begins_elsewhere_drops_the_moves_before() throws Exception {
    program = lines(20_000).replace("M30\n", "") + "%\nG21 G90\nG1 X5. F100.\nM30\n%\n";
    Loader loader = loader(true);
    loader.begin();
    Loaded done = end(loader);
    SourceText text = SourceText.of("p.nc", program.getBytes(StandardCharsets.UTF_8));
    assertThat(done.input().tape().size())
        .isEqualTo(Interpreter.interpret(text, SetupSheet.empty()).tape().size());
    assertThat(done.steps().seconds()).isEqualTo(new Steps(done.input().tape()).seconds());
  }

  @Test
  void stages_are_told_in_words() throws Exception {
    program = lines(40);
    Loader loader = loader(true);
    loader.begin();
    Loaded done = end(loader);
    assertThat(LoadWords.sentence(done.at(Stage.READING, -1))).isEqualTo("reading p.nc");
    assertThat(LoadWords.sentence(done.at(Stage.EXECUTING, 0.259)))
        .isEqualTo("executing p.nc: 43 blocks, 25 % of the text");
    assertThat(LoadWords.sentence(done.at(Stage.EXECUTING, 1)))
        .isEqualTo("executing p.nc: 43 blocks");
    assertThat(LoadWords.sentence(done.at(Stage.CHECKING, 0.5)))
        .isEqualTo("checking 41 moves, 50 %");
    assertThat(LoadWords.sentence(done)).isEqualTo("judged after 43");
    assertThat(LoadWords.count(1_234_567, "block")).isEqualTo("1 234 567 blocks");
    assertThat(LoadWords.count(1, "block")).isEqualTo("1 block");
  }

  @Test
  void first_moves_of_a_large_text_come_from_its_beginning_alone() throws Exception {
    Loader loader = loader(true);
    byte[] bytes = lines(200_000).getBytes(StandardCharsets.UTF_8);
    SourceText text = SourceText.of("p.nc", bytes);
    List<Loaded> seen = new ArrayList<>();
    loader.wakes(() -> seen.add(loader.latest()));
    loader.begin(
        Optional.of(new ProgramSource.Text(text, SetupSheet.empty(), List.of(), Map.of())));
    Loaded done = end(loader);
    Loaded first = seen.get(0);
    assertThat(first.beginning()).isEqualTo(2);
    assertThat(first.stage()).isEqualTo(Stage.EXECUTING);
    assertThat(first.input().tape().size()).isBetween(400, 512);
    assertThat(first.input().programLines()).hasSizeLessThan(70_000);
    assertThat(LoadWords.sentence(first)).isEqualTo("executing p.nc: 512 blocks");
    assertThat(done.beginning()).isEqualTo(3);
    for (int move = 0; move < first.input().tape().size(); move++) {
      assertThat(first.input().tape().to(move)).isEqualTo(done.input().tape().to(move));
    }
    assertThat(done.input().programLines()).hasSize(200_003);
  }

  @Test
  void a_beginning_that_comes_to_an_end_early_is_not_shown() throws Exception {
    Loader loader = loader(true);
    String jump = "G21 G90\nGOTO 9\n" + "(REMARK)\n".repeat(20_000) + "N9 G1 X5. F100.\nM30\n";
    SourceText text = SourceText.of("p.nc", jump.getBytes(StandardCharsets.UTF_8));
    loader.begin(
        Optional.of(new ProgramSource.Text(text, SetupSheet.empty(), List.of(), Map.of())));
    Loaded done = end(loader);
    assertThat(done.beginning()).isEqualTo(2);
    assertThat(done.stage()).isEqualTo(Stage.DONE);
    assertThat(done.input().tape().size()).isEqualTo(1);
  }
}
