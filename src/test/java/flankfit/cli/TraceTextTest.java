package flankfit.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.trace.BlockNotes;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Traces of worked examples, word for word, and the shape of their JSON. */
class TraceTextTest {
  private static final Path FOLDER = Path.of("src/test/resources/flankfit/cli/trace");

  private static SourceText program(Path file) throws IOException {
    return SourceText.of(String.valueOf(file.getFileName()), Files.readAllBytes(file));
  }

  private static SetupSheet sheet(Path program) throws IOException {
    Path file = Path.of(program.toString().replace(".nc", ".setup.toml"));
    return Files.exists(file)
        ? SetupReader.read("sheet", Files.readString(file)).sheet().orElseThrow()
        : SetupSheet.empty();
  }

  private static String trace(Path file, Optional<Integer> from, Optional<Integer> to)
      throws Exception {
    SourceText program = program(file);
    StringWriter out = new StringWriter();
    TraceText text =
        new TraceText(
            TracedLines.of(true, from, to),
            BlockNotes.none(),
            program.file(),
            Style.plain(),
            new PrintWriter(out));
    text.finish(Interpreter.interpret(program, sheet(file), List.of(), text));
    return out.toString();
  }

  private static JsonNode json(Path file) throws Exception {
    SourceText program = program(file);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    TracedLines all = TracedLines.of(true, Optional.empty(), Optional.empty());
    try (TraceJson json = new TraceJson(all, BlockNotes.none(), program.file(), out)) {
      Interpretation done = Interpreter.interpret(program, sheet(file), List.of(), json);
      json.finish(done);
    }
    return new ObjectMapper().readTree(out.toString(UTF_8));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"compensation", "cycle", "loop", "subprogram", "arguments", "transforms", "stop"})
  void worked_example_is_traced_word_for_word(String name) throws Exception {
    String trace = trace(FOLDER.resolve(name + ".nc"), Optional.empty(), Optional.empty());
    Path kept = FOLDER.resolve(name + ".txt");
    if (System.getProperty("golden", "").equals("write")) {
      Files.writeString(kept, trace);
    }
    assertThat(trace).isEqualTo(Files.readString(kept));
    assertThat(trace.lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100).doesNotEndWith(" "));
  }

  static List<Path> programs() throws IOException {
    try (Stream<Path> examples = Files.list(FOLDER);
        Stream<Path> samples = Files.list(Path.of("sample-programs"))) {
      return Stream.concat(examples, samples)
          .filter(file -> file.toString().endsWith(".nc"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("programs")
  void json_keeps_the_shape_of_its_schema(Path file) throws Exception {
    JsonNode answer = json(file);
    assertThat(JsonShape.faults("trace", answer)).isEmpty();
    assertThat(answer.path("blocks").size()).isPositive();
  }

  @Test
  void lines_asked_for_are_shown_and_no_other() throws Exception {
    String trace = trace(FOLDER.resolve("subprogram.nc"), Optional.of(5), Optional.of(6));
    assertThat(trace).contains("line 5, block 5:  M98 P31 L2", "line 6, block 12:  M30");
    assertThat(trace).doesNotContain("line 4,", "line 8,");
  }

  private static final String HAZARD =
      "G21 G90 G54 G0 X0. Y0.\nZ5. (MSG, PORT A)\nG1 Z-1. F100.\nG0 X30. (100% RAPID)\nM30\n";

  private static final String STOCK =
      "units = \"mm\"\n[stock]\nshape = \"block\"\nsize = [80.0, 60.0, 30.0]\nzero = [40.0, 30.0, 30.0]\n";

  @Test
  void findings_of_rules_and_messages_stand_with_their_block() throws Exception {
    SourceText program = SourceText.of("p.nc", HAZARD.getBytes(UTF_8));
    SetupSheet sheet = SetupReader.read("s", STOCK).sheet().orElseThrow();
    Interpretation done = ProgramCheck.checked(Interpreter.interpret(program, sheet), sheet);
    BlockNotes notes = new BlockNotes(done.findings(), file -> program.lines());
    TracedLines all = TracedLines.of(true, Optional.empty(), Optional.empty());
    StringWriter out = new StringWriter();
    TraceText text = new TraceText(all, notes, "p.nc", Style.plain(), new PrintWriter(out));
    Interpreter.observe(program, sheet, List.of(), text);
    text.finish(done);
    String block = out.toString().split("line 4, block 4:", 2)[1].split("\n\n", 2)[0];
    assertThat(block).contains("(100% RAPID)").contains("error HZ02  line 4");
    assertThat(out.toString().split("HZ02", -1)).hasSize(2);
    assertThat(out.toString()).contains("  display   message         PORT A\n");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (TraceJson json = new TraceJson(all, notes, "p.nc", bytes)) {
      Interpreter.observe(program, sheet, List.of(), json);
      json.finish(done);
    }
    JsonNode answer = new ObjectMapper().readTree(bytes.toString(UTF_8));
    assertThat(JsonShape.faults("trace", answer)).isEmpty();
    assertThat(answer.at("/blocks/1/messages/0").asText()).isEqualTo("PORT A");
    assertThat(answer.at("/blocks/0").has("messages")).isFalse();
    assertThat(answer.at("/blocks/3/findings").findValuesAsText("code")).contains("HZ02");
    assertThat(answer.at("/findings").findValuesAsText("code")).doesNotContain("HZ02");
  }
}
