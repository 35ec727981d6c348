package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.nc.SourceText;
import flankfit.setup.ControlSwitches;
import flankfit.setup.Offsets.Register;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever bytes come in, there is an answer and no exception. */
class StrangeTextTest {
  private static final String[] PIECES = {
    "#1",
    "#",
    "WHILE[",
    "WHILE[#1LT3]DO1",
    "M99",
    "P1",
    "SIN[",
    "MOD",
    "G65",
    "G66",
    "GOTO1",
    "N1",
    "G0",
    "G1",
    "G2",
    "G3",
    "G4",
    "G17",
    "G18",
    "G19",
    "G20",
    "G21",
    "G28",
    "G30",
    "G40",
    "G41",
    "G42",
    "G43",
    "G44",
    "G49",
    "G52",
    "G53",
    "G54",
    "G55",
    "G54.1",
    "G59.1",
    "G80",
    "G81",
    "G90",
    "G91",
    "G90.1",
    "G91.1",
    "G92",
    "G92.1",
    "G92.2",
    "G92.3",
    "G93",
    "G94",
    "G95",
    "G50.1",
    "M0",
    "M2",
    "M3",
    "M4",
    "M5",
    "M6",
    "M7",
    "M8",
    "M9",
    "M19",
    "M30",
    "M98",
    "X",
    "Y",
    "Z",
    "I",
    "J",
    "K",
    "R",
    "F",
    "S",
    "T",
    "D",
    "H",
    "P",
    "L",
    "Q",
    "A",
    "N",
    "O",
    "%",
    "/",
    "(",
    ")",
    ";",
    "#",
    "[",
    "]",
    "=",
    ",C",
    ":",
    "IF",
    "GOTO",
    "DO1",
    "END1",
    "1",
    "2",
    "10",
    "0.5",
    "-5.",
    ".",
    "-",
    " ",
    " ",
    " ",
    "\n",
    "\n",
    "\n",
    "\r",
    "\t",
    "é",
    "−",
    "X10.",
    "Y5.",
    "Z-1.",
    "I5.",
    "R7."
  };

  private static Interpretation run(byte[] bytes, SetupSheet sheet) {
    return Interpreter.interpret(SourceText.of("strange.nc", bytes), sheet);
  }

  private static Interpretation run(String text) {
    return run(text.getBytes(StandardCharsets.UTF_8), SetupSheet.empty());
  }

  private static void consistent(Interpretation result) {
    assertThat(result.complete()).isEqualTo(result.stoppedAt().isEmpty());
    for (Finding finding : result.findings()) {
      assertThat(finding.what()).isNotBlank();
      assertThat(finding.place().file()).isEqualTo("strange.nc");
    }
    for (int i = 0; i < result.tape().size(); i++) {
      assertThat(Double.isFinite(result.tape().length(i))).isTrue();
    }
    if (!result.complete()) {
      assertThat(result.findings())
          .anyMatch(f -> f.severity() == Severity.ERROR && f.code().equals(stopCode(result)));
    }
  }

  private static Code stopCode(Interpretation result) {
    return result.stoppedAt().orElseThrow().code();
  }

  @Test
  void random_bytes_are_answered() {
    Random random = new Random(20261125);
    for (int i = 0; i < 500; i++) {
      byte[] bytes = new byte[random.nextInt(200)];
      random.nextBytes(bytes);
      consistent(run(bytes, SetupSheet.empty()));
    }
  }

  @Test
  void random_words_are_answered() {
    Random random = new Random(59);
    SetupSheet plain = ExampleSheet.of("D1 = { geometry = 0.0 }, H1 = { geometry = 100.0 }");
    SetupSheet counting = plain.withOffsets(plain.offsets().withRadius(2, new Register(3, 0)));
    for (int i = 0; i < 1000; i++) {
      StringBuilder text = new StringBuilder();
      int pieces = random.nextInt(60);
      for (int k = 0; k < pieces; k++) {
        text.append(PIECES[random.nextInt(PIECES.length)]);
      }
      byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
      consistent(run(bytes, i % 2 == 0 ? plain : counting));
    }
  }

  /** Programs that mostly run: whole blocks in random order. */
  @Test
  void random_blocks_are_answered() {
    Random random = new Random(7);
    SetupSheet sheet =
        ExampleSheet.of(
            "D1 = { geometry = 1.0 }, H1 = { geometry = 100.0 }, loop-limit = 50, block-limit = 5000");
    String[] blocks = {
      "G0 X5. Y5.",
      "N1 #1=#1+1",
      "IF [#1 LT 9] GOTO 1",
      "WHILE [#2 LT 5] DO1",
      "#2=#2+1",
      "END1",
      "G1 X#1 Y[#2*2] F100.",
      "M98 P7 L2",
      "G65 P7 A2.",
      "G66 P7",
      "G67",
      "O7",
      "M99",
      "GOTO 1",
      "G1 Z-1. F100.",
      "G3 I5.",
      "G2 X10. R7.",
      "G91",
      "G90",
      "G41 D1 X3.",
      "G40 X0",
      "G40",
      "G43 H1 Z5.",
      "G49",
      "T1 M6",
      "M5",
      "S500 M3",
      "G4 P500",
      "G28 Z0",
      "G91 G28 Z0",
      "G54",
      "G55",
      "G52 X1.",
      "G92 X2.",
      "G92.1",
      "G20",
      "G21",
      "G17",
      "G18",
      "G19",
      "G93",
      "G94 F50.",
      "G95 F.1",
      "G53 Z0",
      "X1. Y2.",
      "Z3.",
      "G1 X4. Y4.",
      "G80",
      "G81 Z-5. R2.",
      "G99 G83 X3. Z-5. R2. Q1.5",
      "G98 G84 Z-5. R1. P100",
      "G76 Z-3. R1. Q.2",
      "G87 Z-3. R-9. I.2",
      "X7. L3",
      "G68 X1. Y1. R20.",
      "G69",
      "G51.1 X0",
      "G50.1",
      "G51 P2.",
      "G51 I2. J3. K1.",
      "G50",
      "G10 L12 P1 R2.",
      "G10 L11 P1 R.5",
      "(note)",
      "N10"
    };
    for (int i = 0; i < 500; i++) {
      StringBuilder text = new StringBuilder("G21 G90 G17 G54 F100. S100 M3\n");
      for (int k = 0; k < 30; k++) {
        text.append(blocks[random.nextInt(blocks.length)]).append('\n');
      }
      consistent(run(text.append("M30\n").toString().getBytes(StandardCharsets.UTF_8), sheet));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "\u0000\u0000", "G0\u0001\u0002\u0003 X5.", "\uFEFF"})
  void empty_or_binary_text_is_refused(String text) {
    refused(text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void wide_encodings_are_refused() {
    refused("G0 X5.\nM30\n".getBytes(StandardCharsets.UTF_16));
    refused("G0 X5.\nM30\n".getBytes(StandardCharsets.UTF_16LE));
    refused(new byte[] {0, 0, (byte) 0xFE, (byte) 0xFF, 0, 0, 0, 'G'});
  }

  private static void refused(byte[] bytes) {
    Interpretation result = run(bytes, SetupSheet.empty());
    assertThat(result.stoppedAt()).contains(new Stop(1, Code.RD01));
    assertThat(result.findings()).extracting(Finding::code).containsExactly(Code.RD01);
    assertThat(result.tape().size()).isZero();
    assertThat(result.blocks()).isZero();
  }

  @Test
  void same_text_gives_the_same_answer() {
    String text = Example.load("ex-06").program();
    Interpretation one = run(text);
    Interpretation two = run(text);
    assertThat(one.findings()).isEqualTo(two.findings());
    assertThat(one.assumptions()).isEqualTo(two.assumptions());
  }

  @Test
  void assumptions_of_sheet_and_control_stand_together() {
    SetupSheet sheet = ExampleSheet.of("rapid-path = \"dog-leg\"");
    byte[] text =
        "G21 G90 G54 G17 F100. S500 M3\nG0 X10. Y5. Z2.\nG1 Z-1 M30\n"
            .getBytes(StandardCharsets.UTF_8);
    List<String> all = run(text, sheet).assumptions();
    assertThat(all)
        .contains("rapid-path = dog-leg", "corner rounding and acceleration are not modelled")
        .contains("numbers without a point are read as whole units")
        .doesNotContain("rapids are drawn straight");
    assertThat(run(text, SetupSheet.empty()).assumptions()).contains("rapids are drawn straight");
    assertThat(sheet.control()).isNotEqualTo(ControlSwitches.defaults());
  }
}
