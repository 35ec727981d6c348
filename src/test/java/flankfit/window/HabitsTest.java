package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.Interpretation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept from one time to the next, and what files do meanwhile. */
class HabitsTest {
  @TempDir Path folder;

  @Test
  void recent_files_come_last_first_once_each_and_not_too_many() throws Exception {
    Path list = folder.resolve("deep").resolve("recent.txt");
    RecentFiles files = RecentFiles.read(list);
    assertThat(files.all()).isEmpty();
    IntStream.range(0, 20).forEach(i -> files.opened(folder.resolve("p" + i + ".nc")));
    assertThat(files.opened(folder.resolve("p15.nc"))).isTrue();
    assertThat(files.opened(folder.resolve("x/../p15.nc"))).isFalse();
    files.write();
    List<Path> read = RecentFiles.read(list).all();
    assertThat(read).hasSize(RecentFiles.MOST).doesNotHaveDuplicates();
    assertThat(read.get(0)).isEqualTo(folder.resolve("p15.nc"));
    assertThat(read.get(1)).isEqualTo(folder.resolve("p19.nc"));
    try (var all = Files.list(list.getParent())) {
      assertThat(all).containsExactly(list);
    }
  }

  @Test
  void a_broken_list_counts_as_none() throws Exception {
    Path list = folder.resolve("recent.txt");
    Files.write(list, new byte[] {(byte) 0xFF, (byte) 0xFE, 0, 10, 65});
    assertThat(RecentFiles.read(list).all()).isEmpty();
  }

  @Test
  void a_change_is_told_once_when_it_stands_still() throws Exception {
    Path file = Files.writeString(folder.resolve("p.nc"), "G0 X1.");
    Path sheet = folder.resolve("p.setup.toml");
    Watch watch = new Watch(() -> List.of(file, sheet), () -> {});
    assertThat(watch.look()).isFalse();
    assertThat(watch.look()).isFalse();
    Files.writeString(file, "G0 X12.");
    assertThat(watch.look()).as("still being written").isFalse();
    assertThat(watch.look()).isTrue();
    assertThat(watch.look()).isFalse();
    Files.delete(file);
    assertThat(watch.look()).isFalse();
    assertThat(watch.look()).as("gone: no change").isFalse();
    Files.writeString(file, "G0 X123.");
    assertThat(watch.look()).isFalse();
    assertThat(watch.look()).as("saved by moving").isTrue();
    Files.writeString(sheet, "units = \"mm\"");
    assertThat(watch.look()).isFalse();
    assertThat(watch.look()).as("a sheet that was not there").isTrue();
    watch.close();
  }

  @Test
  void a_change_is_told_within_a_third_of_a_second() throws Exception {
    Path file = Files.writeString(folder.resolve("p.nc"), "G0 X1.");
    CountDownLatch told = new CountDownLatch(1);
    try (Watch watch = new Watch(() -> List.of(file), told::countDown)) {
      watch.start();
      Thread.sleep(350);
      long begun = System.nanoTime();
      Files.writeString(file, "G0 X12.");
      assertThat(told.await(20, TimeUnit.SECONDS)).isTrue();
      // Two looks, 60 ms apart each; the bound leaves room for a loaded machine.
      assertThat(System.nanoTime() - begun).isLessThan(1_500_000_000L);
    }
  }

  /** A program in a file, judged by nobody. */
  private static ProgramSource plain(Path file) {
    return new ProgramSource() {
      @Override
      public String file() {
        return file.toString();
      }

      @Override
      public Text read() throws UnreadableProgramException {
        try {
          byte[] bytes = Files.readAllBytes(file);
          var text = flankfit.nc.SourceText.of(file.toString(), bytes);
          return new Text(text, flankfit.setup.SetupSheet.empty(), List.of(), Map.of());
        } catch (IOException e) {
          throw new UnreadableProgramException(e.toString());
        }
      }

      @Override
      public Judgement judge(Text text, Interpretation checked) {
        return new Judgement(checked.findings(), "");
      }
    };
  }

  @Test
  void samples_come_from_the_jar_and_an_edited_copy_stays() throws Exception {
    Samples samples = new Samples(folder.resolve("samples"));
    for (Samples.Sample sample : Samples.all()) {
      samples.source(sample, HabitsTest::plain).read();
      Path copy = samples.file(sample);
      Path original = Path.of("sample-programs").resolve(sample.name() + ".nc");
      assertThat(copy).hasSameBinaryContentAs(original);
      assertThat(copy.resolveSibling(sample.name() + ".setup.toml")).isRegularFile();
    }
    Path edited = samples.file(Samples.all().get(0));
    Files.writeString(edited, "M30\n", StandardCharsets.UTF_8);
    samples.source(Samples.all().get(0), HabitsTest::plain).read();
    assertThat(edited).hasContent("M30\n");
    try (var programs = Files.list(Path.of("sample-programs"))) {
      assertThat(programs.filter(p -> p.toString().endsWith(".nc"))).hasSize(Samples.all().size());
    }
  }

  @Test
  void a_search_finds_all_lines_in_order_and_goes_round() throws Exception {
    CountDownLatch woken = new CountDownLatch(1);
    Search search = new Search(woken::countDown);
    List<String> lines = List.of("g1 x1", "G3 I1", "M30", "N3 g3", "G3");
    search.look("G3", lines);
    assertThat(woken.await(20, TimeUnit.SECONDS)).isTrue();
    assertThat(search.count()).isEqualTo(3);
    search.from(3);
    assertThat(search.current()).isEqualTo(4);
    assertThat(search.ordinal()).isEqualTo(2);
    assertThat(search.next(true)).hasValue(5);
    assertThat(search.next(true)).hasValue(2);
    assertThat(search.next(false)).hasValue(5);
    assertThat(search.holds(4)).isTrue();
    assertThat(search.holds(3)).isFalse();
    search.clear();
    assertThat(search.isOn()).isFalse();
    assertThat(search.next(true)).isEmpty();
  }
}
