package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import flankfit.finding.Code;
import flankfit.finding.Severity;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.VariedThreads;
import flankfit.odds.GaugingAdvice;
import flankfit.odds.Observation;
import flankfit.odds.Odds;
import flankfit.odds.PartObserved;
import flankfit.setup.Scatter;
import flankfit.unit.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log of a batch: read as written, never rewritten, refused when it is another's. */
class PartLogTest {
  private static final String PROGRAM = "folder/hub.nc";

  private static ThreadAnswer thread;
  private static GaugeAnswer gauged;
  private static GaugingAdvice advice;

  @TempDir private Path folder;

  @BeforeAll
  static void gauge() {
    thread = VariedThreads.straight(-0.03);
    gauged = new GaugeAnswer(List.of(thread), List.of(), List.of());
    advice = Odds.of(thread, Scatter.unknown(), 1).orElseThrow().advice(List.of(part(1)));
  }

  private static PartObserved part(int number) {
    List<Observation> seen =
        Stream.of("go=stops:3", "pitch=19.12±0.004", "no-go=turns:0.5")
            .map(text -> Observation.of(text, LengthUnit.MILLIMETRE))
            .toList();
    return new PartObserved(number, -0.03, seen);
  }

  private Path file() {
    return folder.resolve("hub.parts.jsonl");
  }

  private PartLog read() throws RequestException {
    return PartLog.read(file(), PROGRAM, gauged);
  }

  private void add(int number, Optional<String> date) throws RequestException {
    read().add(List.of(new PartLog.Line(thread, part(number), date, advice)));
  }

  @Test
  void what_is_written_is_read_again() throws Exception {
    assertThat(read().next()).isEqualTo(1);
    add(1, Optional.empty());
    add(7, Optional.of("2026-11-28"));
    PartLog log = read();
    assertThat(log.of("port 1")).containsExactly(part(1), part(7));
    assertThat(log.of("port 2")).isEmpty();
    assertThat(log.next()).isEqualTo(8);
    assertThat(log.findings()).isEmpty();
    assertThat(log.assumptions()).isEmpty();
    List<String> lines = Files.readAllLines(file());
    assertThat(lines).hasSize(2);
    assertThat(lines.get(0)).doesNotContain("date").contains("\"program\":\"hub.nc\"");
    assertThat(lines.get(1)).contains("\"date\":\"2026-11-28\"");
    for (String line : lines) {
      assertThat(JsonShape.faults("part", new ObjectMapper().readTree(line))).isEmpty();
    }
  }

  @Test
  void a_torn_last_line_is_told_skipped_and_left_as_it_is() throws Exception {
    add(1, Optional.empty());
    append("{\"schema\":\"flankfit/pa");
    String before = Files.readString(file());
    PartLog log = read();
    assertThat(log.of("port 1")).containsExactly(part(1));
    assertThat(log.findings()).isEmpty();
    assertThat(log.assumptions()).hasSize(1);
    assertThat(log.assumptions().get(0)).contains("last line of the log, 2, is torn");
    add(2, Optional.empty());
    assertThat(Files.readString(file())).startsWith(before + "\n{");
    PartLog after = read();
    assertThat(after.of("port 1")).containsExactly(part(1), part(2));
    assertThat(after.findings()).extracting(f -> f.place().line()).containsExactly(2);
  }

  @Test
  void a_line_that_cannot_be_read_is_a_warning_with_its_number() throws Exception {
    for (String bad :
        List.of(
            "no json",
            "{}",
            "[1]",
            "{\"schema\":\"flankfit/part/9\"}",
            "{\"schema\":\"flankfit/part/1\",\"part\":0,\"wear\":0}",
            "{\"schema\":\"flankfit/part/1\",\"part\":1,\"wear\":0,\"observed\":[\"go=up\"]}")) {
      Files.deleteIfExists(file());
      append(bad + "\n\n");
      add(1, Optional.empty());
      PartLog log = read();
      assertThat(log.findings()).as(bad).hasSize(1);
      assertThat(log.findings().get(0).code()).isEqualTo(Code.RQ07);
      assertThat(log.findings().get(0).severity()).isEqualTo(Severity.WARNING);
      assertThat(log.findings().get(0).place().line()).isEqualTo(1);
      assertThat(log.of("port 1")).containsExactly(part(1));
    }
  }

  @Test
  void another_program_hole_thread_or_register_is_refused() throws Exception {
    add(1, Optional.empty());
    String good = Files.readString(file());
    for (String[] change :
        new String[][] {
          {"hub.nc", "valve.nc"}, {"port 1", "port 9"}, {"M20x1.5-6H", "M20x1-6H"}, {"D4", "D5"}
        }) {
      String other = good.replace(change[0], change[1]);
      Files.writeString(file(), other);
      assertThatThrownBy(this::read)
          .as(change[0])
          .isInstanceOfSatisfying(
              RequestException.class,
              e -> {
                assertThat(e.findings().get(0).code()).isEqualTo(Code.RQ07);
                assertThat(e.findings().get(0).what()).contains(change[1]);
              });
      assertThat(Files.readString(file())).isEqualTo(other);
    }
  }

  @Test
  void a_log_that_is_no_text_is_told() throws Exception {
    Files.write(file(), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 10});
    assertThatThrownBy(this::read).isInstanceOf(RequestException.class);
  }

  private void append(String text) throws IOException {
    Files.writeString(file(), text, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
  }
}
