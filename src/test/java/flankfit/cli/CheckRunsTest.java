package flankfit.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

/** The command in this process: forms of its answer, the policy, many programs, and watching. */
class CheckRunsTest {
  private static final String GOOD = "G21 G90 G17 G54 F100. S900 M3\nG0 X0. Y0. Z5.\nM30\n";
  private static final String INCREMENTAL = GOOD.replace("M30", "G91\nM30");
  private static final String OPEN_ARC =
      "G21 G90 G17 G54 F100. S900 M3\nG0 X3. Y0. Z5.\nG3 X0. Y-3.1 I-3. J0.\nM30\n";
  private static final String POLICY =
      """
      [severity]
      MD07 = "error"

      [[accept]]
      code    = "MD07"
      program = "old-?.nc"
      line    = 4
      reason  = "the next program begins with G90"

      [[accept]]
      code   = "HZ02"
      reason = "the clamp is lower than the sheet says"
      """;

  @TempDir private Path folder;

  private static Run check(String... args) {
    return Run.of("check", args);
  }

  private String write(String name, String text) throws Exception {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  /** Programs with each kind of fault, one of them with a name that needs care. */
  private void jobs() throws Exception {
    write("flat.nc", GOOD);
    write("old-1.nc", INCREMENTAL);
    write("new.nc", INCREMENTAL);
    write("bö se&<50 %>.nc", OPEN_ARC);
    Path sample = Path.of("sample-programs");
    for (String end : List.of(".nc", ".setup.toml")) {
      Files.copy(sample.resolve("broken-wear-sign" + end), folder.resolve("wear" + end));
    }
  }

  @Test
  void policy_weighs_findings_otherwise_and_accepts_those_that_were_looked_at() throws Exception {
    jobs();
    String policy = write("shop.toml", POLICY);
    Run run = check(folder.toString(), "--policy", policy);
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out())
        .contains("[+] " + folder.resolve("old-1.nc") + ": 1 note; 1 accepted")
        .contains("[x] " + folder.resolve("new.nc") + ": 1 error")
        .contains("\n       1         1  error   MD07 incremental left on\n")
        .contains("5 programs, 2 errors, 0 warnings, 1 thread not good, 1 accepted\n")
        .contains("[[accept]] in line 10 accepts nothing: no HZ02 was found in *");
    JsonNode json =
        new ObjectMapper()
            .readTree(check(folder.toString(), "--policy", policy, "--format", "json").out());
    assertThat(JsonShape.faults("check", json)).isEmpty();
    assertThat(json.at("/totals/accepted").asInt()).isEqualTo(1);
    assertThat(json.at("/acceptedInVain")).hasSize(1);
    assertThat(json.findValuesAsText("reason")).contains("the next program begins with G90");
    assertThat(check(folder.resolve("old-1.nc").toString(), "--policy", policy).status()).isZero();
    Files.writeString(Path.of(policy), "[severity]\nMD07 = \"off\"\n");
    assertThat(check(folder.resolve("new.nc").toString(), "--policy", policy).out())
        .doesNotContain("MD07");
  }

  @Test
  void faults_of_a_policy_are_told_with_their_place() throws Exception {
    String program = write("flat.nc", GOOD);
    String policy =
        write(
            "shop.toml",
            """
            [severity]
            HZ99 = "off"
            RC05 = "warning"
            MD07 = "loud"
            [[accept]]
            code = "RC05"
            reason = "   "
            [[accept]]
            line = 0
            """);
    Run run = check(program, "--policy", policy);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().replaceAll("\\s+", " "))
        .contains("shop.toml:2:1: error SH02", "unknown key \"HZ99\"")
        .contains("shop.toml:3", "RC05 stops what is read or run there, so it stays an error")
        .contains("shop.toml:4", "no such word", "shop.toml:6", "mend it instead")
        .contains("shop.toml:7", "it must say why", "lacks the key \"code\"")
        .contains("lacks the key \"reason\"", "it must lie between 1 and");
    Run none = check(program, "--policy", folder.resolve("none.toml").toString());
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).contains("RQ01", "does not exist");
  }

  /** Schema of OASIS, SARIF 2.1.0, as a library carries it. */
  @Test
  void sarif_fits_the_published_schema() throws Exception {
    jobs();
    String policy = write("shop.toml", POLICY);
    Run run = check(folder.toString(), "--policy", policy, "--format", "sarif");
    assertThat(run.status()).isEqualTo(1);
    JsonNode log = new ObjectMapper().readTree(run.out());
    try (InputStream in = resource("/schema/sarif-schema-2.1.0.json")) {
      JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V7).getSchema(in);
      assertThat(schema.validate(log)).isEmpty();
      JsonNode spoilt = log.deepCopy();
      ((com.fasterxml.jackson.databind.node.ObjectNode) spoilt).put("version", "2.0");
      assertThat(schema.validate(spoilt)).as("the schema can refuse").isNotEmpty();
    }
    JsonNode results = log.at("/runs/0/results");
    JsonNode rules = log.at("/runs/0/tool/driver/rules");
    List<String> suppressed = new ArrayList<>();
    for (JsonNode result : results) {
      String rule = rules.get(result.path("ruleIndex").asInt()).path("id").asText();
      assertThat(rule).isEqualTo(result.path("ruleId").asText());
      if (result.has("suppressions")) {
        suppressed.add(rule);
      }
    }
    assertThat(suppressed).containsExactly("MD07");
    assertThat(results.findValuesAsText("ruleId")).contains("AR01", "MD07", "verdict");
    assertThat(results.findValuesAsText("uri"))
        .contains(folder.resolve("bö se&<50 %>.nc").toUri().toASCIIString());
    JsonNode arc =
        IntStream.range(0, results.size())
            .mapToObj(results::get)
            .filter(r -> r.path("ruleId").asText().equals("AR01"))
            .findFirst()
            .orElseThrow();
    assertThat(arc.at("/locations/0/physicalLocation/region/startLine").asInt()).isEqualTo(3);
  }

  private static InputStream resource(String name) {
    return CheckRunsTest.class.getResourceAsStream(name);
  }

  /** Schema junit-4.xsd, whose source and licence stand in it. */
  @Test
  void junit_xml_fits_the_published_schema() throws Exception {
    jobs();
    write("control.nc", "G21 (\u0007)\nM30\n");
    Run run = check(folder.toString(), "--format", "junit");
    assertThat(run.status()).isEqualTo(1);
    byte[] xml = run.out().getBytes(UTF_8);
    SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
    try (InputStream in = resource("junit-4.xsd")) {
      factory
          .newSchema(new StreamSource(in))
          .newValidator()
          .validate(new StreamSource(new ByteArrayInputStream(xml)));
    }
    Document report =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(xml));
    var all = report.getDocumentElement();
    assertThat(all.getElementsByTagName("testsuite").getLength()).isEqualTo(6);
    assertThat(Integer.parseInt(all.getAttribute("tests")))
        .isEqualTo(all.getElementsByTagName("testcase").getLength());
    assertThat(Integer.parseInt(all.getAttribute("failures")))
        .isEqualTo(all.getElementsByTagName("failure").getLength())
        .isPositive();
    assertThat(run.out()).contains("message=\"port A: M20x1.5-6H, GO refused\"");
  }

  @Test
  void one_on_which_the_tool_fails_does_not_stop_the_others() {
    List<Path> programs = IntStream.range(0, 40).mapToObj(i -> Path.of("p" + i + ".nc")).toList();
    List<CheckedProgram> checked =
        CheckRuns.of(
            programs,
            (file, progress) -> {
              if (file.endsWith("p7.nc")) {
                throw new IllegalStateException("a fault of its own");
              }
              return new CheckedProgram(file.toString(), true, List.of(), List.of(), 0);
            },
            share -> true);
    assertThat(checked)
        .extracting(CheckedProgram::file)
        .containsExactlyElementsOf(programs.stream().map(Path::toString).toList());
    assertThat(checked.get(7).status()).isEqualTo(3);
    assertThat(CheckText.of(checked, List.of(), Style.plain()))
        .contains("[x] p7.nc: not checked, Flankfit failed on it: ", "a fault of its own");
  }

  @Test
  void metal_that_no_sheet_states_is_told_and_not_passed_over() throws Exception {
    write("bare.nc", GOOD);
    write("plate.nc", GOOD.replace("M30", "G1 X5.\nM30"));
    write(
        "plate.setup.toml",
        "[stock]\nshape = \"block\"\nsize = [20.0, 20.0, 10.0]\nzero = [10.0, 10.0, 10.0]\n");
    Run run = check(folder.toString(), "--metal");
    assertThat(run.out())
        .contains("bare.nc: ", "; metal not cut", "metal cut of 1 program; not of 1, whose sheet")
        .containsPattern("plate.nc: (?!.*metal not cut)");
    assertThat(check(folder.toString()).out()).doesNotContain("metal");
    JsonNode answer =
        new ObjectMapper().readTree(check(folder.toString(), "--metal", "--format", "json").out());
    assertThat(JsonShape.faults("check", answer)).isEmpty();
    assertThat(answer.at("/programs/0/metal").asText()).isEqualTo("no stock");
    assertThat(answer.at("/programs/1/metal").asText()).isEqualTo("cut");
    assertThat(answer.at("/totals/metalCut").asInt()).isEqualTo(1);
    assertThat(answer.at("/totals/metalNotCut").asInt()).isEqualTo(1);
  }

  @Test
  void progress_of_several_pieces_only_grows_and_ends_whole() {
    List<Double> told = new ArrayList<>();
    SharedProgress all = new SharedProgress(2, told::add);
    SharedProgress.Piece first = all.piece();
    SharedProgress.Piece second = all.piece();
    first.goOn(0.5);
    first.goOn(0.1);
    second.goOn(1);
    second.goOn(0.3);
    first.goOn(1);
    assertThat(told).containsExactly(0.25, 0.25, 0.75, 0.75, 1.0);
  }

  @Test
  void other_endings_are_taken_when_named() throws Exception {
    write("a.TAP", GOOD);
    write("b.nc", GOOD);
    write("c.cnc", GOOD);
    Run run = check(folder.toString(), "--ending", "tap", "--ending", ".cnc");
    assertThat(run.out()).contains("a.TAP", "c.cnc", "2 programs").doesNotContain("b.nc");
    Run none = check(folder.toString(), "--ending", "mpf");
    assertThat(none.err()).contains("holds no program", "end in .mpf");
  }

  @Test
  void a_watch_tells_programs_whose_own_file_or_sheet_changed() throws Exception {
    List<Path> programs = List.of(Path.of(write("one.nc", GOOD)), Path.of(write("two.nc", GOOD)));
    CheckWatch watch = new CheckWatch();
    assertThat(watch.among(programs, Optional.empty())).isEqualTo(programs);
    assertThat(watch.among(programs, Optional.empty())).isEmpty();
    write("two.setup.toml", "title = \"Hub\"\n");
    assertThat(watch.among(programs, Optional.empty())).containsExactly(programs.get(1));
    Files.setLastModifiedTime(programs.get(0), FileTime.fromMillis(1));
    assertThat(watch.among(programs, Optional.empty())).containsExactly(programs.get(0));
    List<Path> more = List.of(programs.get(0), Path.of(write("three.nc", GOOD)));
    assertThat(watch.among(more, Optional.empty())).containsExactly(more.get(1));
  }

  @Test
  void watching_checks_again_until_it_is_interrupted() throws Exception {
    Path program = Path.of(write("one.nc", GOOD));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(out, true, UTF_8);
    Thread thread =
        new Thread(
            () -> Main.commandLine(stream, stream).execute("check", program.toString(), "--watch"));
    thread.start();
    await(out, "watching");
    Files.writeString(program, OPEN_ARC);
    await(out, "AR01");
    thread.interrupt();
    thread.join(10_000);
    assertThat(thread.isAlive()).isFalse();
    assertThat(check(program.toString(), "--watch", "--format", "json").status()).isEqualTo(2);
  }

  private static void await(ByteArrayOutputStream out, String words) throws Exception {
    long end = System.nanoTime() + 20_000_000_000L;
    while (!out.toString(UTF_8).contains(words)) {
      assertThat(System.nanoTime()).as(out.toString(UTF_8)).isLessThan(end);
      Thread.sleep(20);
    }
  }
}
