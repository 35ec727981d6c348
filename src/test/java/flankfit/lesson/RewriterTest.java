package flankfit.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.control.ExampleSheet;
import flankfit.control.Interpreter;
import flankfit.finding.Severity;
import flankfit.motion.ModalState.Distance;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where words change and where not, and what is refused. */
class RewriterTest {
  private static final String HEAD = "G21 G90 G17 G54 F200. S1000 M3\nG0 X0. Y0. Z5.\n";

  private static Rewriting rewrite(String text, String sheet, Distance mode) {
    return Rewriter.rewrite(Lessons.source(text), ExampleSheet.of(sheet), List.of(), mode);
  }

  private static String incremental(String text) {
    return done(rewrite(text, "", Distance.INCREMENTAL));
  }

  private static String absolute(String text) {
    return done(rewrite(text, "", Distance.ABSOLUTE));
  }

  private static String done(Rewriting answer) {
    assertThat(answer).isInstanceOf(Rewriting.Done.class);
    return new String(((Rewriting.Done) answer).text().toBytes(), StandardCharsets.UTF_8);
  }

  private static Rewriting.Refused refused(String text, Distance mode) {
    Rewriting answer = rewrite(text, "", mode);
    assertThat(answer).isInstanceOf(Rewriting.Refused.class);
    return (Rewriting.Refused) answer;
  }

  /**
   * The entry by a quarter circle of the worked example (M20x1.5, one turn of lead 1.5, path radius
   * 3, entry radius 1.5), absolute as it stands there; its increments worked out by hand.
   */
  @Test
  void worked_entry_by_a_quarter_circle() {
    String text =
        """
        G21 G90 G17 G54 S1000 M3
        G0 X0 Y0 Z5.
        G1 Z-14. F1000.
        G41 D4 X1.5 Y-1.5 F180.
        G3 X3. Y0 Z-13.625 J1.5
        I-3. Z-12.125
        X1.5 Y1.5 Z-11.75 I-1.5
        G1 G40 X0 Y0
        M30
        """;
    String expected =
        """
        G21 G90 G17 G54 S1000 M3
        G0 X0 Y0 Z5.
        G91 G1 Z-19. F1000.
        G41 D4 X1.5 Y-1.5 F180.
        G3 X1.5 Y1.5 Z0.375 J1.5
        I-3. Z1.5
        X-1.5 Y1.5 Z0.375 I-1.5
        G1 G40 X-1.5 Y-1.5
        G90 M30
        """;
    assertThat(incremental(text)).isEqualTo(expected);
    assertThat(absolute(expected))
        .isEqualTo(text.replace("Y0 Z-13", "Y0. Z-13").replace("X0 Y0\nM30", "X0. Y0.\nG90 M30"));
  }

  @Test
  void every_other_byte_stays() {
    byte[] text =
        (HEAD + "( PORT \u00e9 ) n10g1x10.y-.5(TO\tHERE) ; AND\r\n\r\n  x12.   y 3.\r\nM30\r\n%")
            .getBytes(StandardCharsets.ISO_8859_1);
    Rewriting answer =
        Rewriter.rewrite(
            SourceText.of("l.nc", text), SetupSheet.empty(), List.of(), Distance.INCREMENTAL);
    assertThat(answer).isInstanceOf(Rewriting.Done.class);
    assertThat(new String(((Rewriting.Done) answer).text().toBytes(), StandardCharsets.ISO_8859_1))
        .isEqualTo(
            HEAD
                + "( PORT \u00e9 ) n10g91g1x10.y-.5(TO\tHERE) ; AND\r\n\r\n  x2.   y3.5\r\n"
                + "G90 M30\r\n%");
  }

  @Test
  void machine_coordinates_returns_and_first_points_keep_their_mode() {
    Rewriting answer =
        rewrite(
            HEAD + "X1.\nG53 G0 Z-1.\nZ5.\nX2.\nG91 G28 Z0.\nG90\nM30\n",
            "machine-zero = [0, 0, 300]",
            Distance.INCREMENTAL);
    assertThat(done(answer))
        .isEqualTo(HEAD + "G91 X1.\nG90 G53 G0 Z-1.\nZ5.\nG91 X1.\nG91 G28 Z0.\nG90\nM30\n");
    assertThat(((Rewriting.Done) answer).kept())
        .extracting(Rewriting.Kept::line)
        .containsExactly(2, 4, 5);
  }

  /**
   * A return by way of a point says the same in either mode: from Z50, Z0 in distances is Z50 in
   * coordinates, and the reference point is reached alike (worked out by hand).
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "G0 Z50.\\nG91 G28 Z0. | G0 Z50.\\nG28 Z50.",
        "G0 Z50.\\nG91 G28 Z10. | G0 Z50.\\nG28 Z60.",
        "G0 X7. Y-3. Z50.\\nG91 G28 X0 Y0 Z0 | G0 X7. Y-3. Z50.\\nG28 X7. Y-3. Z50.",
        "G0 Z50.\\nG91 G30 Z0. | G0 Z50.\\nG30 Z50."
      })
  void return_by_way_of_a_point_is_said_in_either_mode(String distances, String coordinates) {
    String sheet = "reference-point = [0, 0, 300]\nreference-point-2 = [0, 0, 250]";
    String in = HEAD + distances.replace("\\n", "\n") + "\nG90\nM30\n";
    Rewriting answer = rewrite(in, sheet, Distance.ABSOLUTE);
    assertThat(done(answer)).isEqualTo(HEAD + coordinates.replace("\\n", "\n") + "\nG90\nM30\n");
    assertThat(((Rewriting.Done) answer).kept()).isEmpty();
    assertThat(((Rewriting.Done) answer).raised())
        .allMatch(finding -> finding.severity() == Severity.NOTE);
    assertThat(((Rewriting.Done) answer).difference()).isZero();
    Rewriting back = rewrite(done(answer), sheet, Distance.INCREMENTAL);
    String number = distances.replaceAll("^.*\\\\n", "").replaceAll("(?<=[XYZ]0)(?= |$)", ".");
    assertThat(done(back)).contains(number.replace("G91 ", ""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Z-1.\\nG91 G28 Z0.\\nG90\\nM30 | 4 | below the clearance plane",
        "G91 G28 X0.\\nG28 X0.\\nG90\\nM30 | 4 | is not said by a coordinate",
        "#1=0\\nG0 Z50.\\nG91 G28 Z#1\\nG90\\nM30 | 5 | is computed by Z#1",
        "Z50.\\nM98 P7\\nG90 Z60.\\nM98 P7\\nG90 M30\\nO7\\nG91 G28 Z0.\\nM99 | 9 | several times",
        "G20\\nG0 Z2.0001\\nG21\\nG91 G28 Z0.\\nG90\\nM30 | 6 | would have to be rounded"
      })
  void return_that_coordinates_say_badly_keeps_its_mode_with_the_reason(
      String body, int line, String why) {
    String sheet = "reference-point = [10, 0, 300]";
    Rewriting answer = rewrite(HEAD + body.replace("\\n", "\n") + "\n", sheet, Distance.ABSOLUTE);
    assertThat(answer).as("%s", answer).isInstanceOf(Rewriting.Done.class);
    Rewriting.Done kept = (Rewriting.Done) answer;
    assertThat(kept.kept())
        .as("%s", done(answer))
        .anySatisfy(
            k -> {
              assertThat(k.line()).isEqualTo(line);
              assertThat(k.why()).contains(why);
            });
    assertThat(kept.difference()).isLessThanOrEqualTo(Rewriter.EXACT + 4 * kept.rounding());
    assertThat(kept.raised()).filteredOn(f -> f.code().name().equals("OF11")).isEmpty();
  }

  /** G91 at the first Z after a tool change is MD08; the first Z itself is no cause for it here. */
  @Test
  void findings_that_only_the_new_text_raises_are_told() {
    Rewriting.Done quiet =
        (Rewriting.Done) rewrite(HEAD + "G1 X1.\nM30\n", "", Distance.INCREMENTAL);
    assertThat(quiet.raised()).isEmpty();
    String change = HEAD + "T1 M6\nG1 X1.\nZ4.\nM30\n";
    Rewriting.Done loud = (Rewriting.Done) rewrite(change, "", Distance.INCREMENTAL);
    assertThat(loud.raised()).extracting(f -> f.code().name()).containsExactly("MD08");
  }

  @Test
  void mode_word_that_says_nothing_new_goes_and_one_alone_in_its_block_is_turned() {
    assertThat(absolute(HEAD + "G91 X1.\nY1.\nG90 X5.\nG91\nX1.\nM30\n"))
        .isEqualTo(HEAD + "X1.\nY1.\nG90 X5.\nG90\nX6.\nM30\n");
  }

  @Test
  void subprogram_in_one_mode_serves_all_its_calls() {
    String text = HEAD + "M98 P7\nG90 X10. Y0.\nM98 P7\nM30\nO7\nG91 G1 X1.\nY1.\nG90\nM99\n";
    assertThat(incremental(text))
        .isEqualTo(HEAD + "G91 M98 P7\nX9. Y-1.\nM98 P7\nG90 M30\nO7\nG91 G1 X1.\nY1.\nG91\nM99\n");
    assertThat(refused(text, Distance.ABSOLUTE).what()).contains("executed several times");
    assertThat(refused(text, Distance.ABSOLUTE).place().line()).isEqualTo(8);
  }

  @Test
  void cycle_in_distances_counts_from_initial_level_and_r() {
    assertThat(incremental(HEAD + "G99 G81 X5. Y0. Z-8. R2.\nX9.\nG80\nM30\n"))
        .isEqualTo(HEAD + "G91 G99 G81 X5. Y0. Z-10. R-3.\nX4.\nG80\nG90 M30\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "#1=4\\nG1 X[#1*2]\\nM30\\n | 4 | is computed",
        "/G1 X4.\\nM30\\n | 3 | block delete",
        "G1 X1.\\nGOTO 9\\nX5.\\nN9 M30\\n | 5 | not executed",
        "G10 L12 P4 R1.\\nM30\\n | 3 | cannot be said in incremental words",
        "G68 X0 Y0 R30.\\nM30\\n | 3 | cannot be said in incremental words",
        "G81 X5. Z-3. R2. L3\\nG80\\nM30\\n | 3 | cannot be said in incremental words",
        "G3 X10. I2.\\nM30\\n | 3 | stops here by AR01",
        "#1=0\\nWHILE[#1LT3]DO1\\nG1 X1.\\n#1=#1+1\\nEND1\\nM30\\n | 5 | executed several times"
      })
  void what_cannot_be_said_or_proved_is_refused_with_its_line(String body, int line, String what) {
    Rewriting.Refused no = refused(HEAD + body.replace("\\n", "\n"), Distance.INCREMENTAL);
    assertThat(no.place().line()).isEqualTo(line);
    assertThat(no.what()).contains(what);
    assertThat(no.why()).isNotEmpty();
    assertThat(no.fix()).isNotEmpty();
  }

  /**
   * After a change from inch to millimetre the tool stands at 2.54 mm times odd decimals, so that
   * distances in millimetres have to be rounded: 0.0001 in is 0.00254 mm. By hand: it stands at
   * 0.3937 in = 9.99998 mm; the distances to 11, 12 and 13 mm are 1.00002, then 1 and 1.
   */
  @Test
  void rounding_is_told_and_never_adds_up() {
    Rewriting answer =
        rewrite(
            "G20 G90 G17 G54 S1000 M3\nG0 X.3937 Y0. Z1.\nG21\nG1 X11. F200.\nX12.\nX13.\nM30\n",
            "",
            Distance.INCREMENTAL);
    Rewriting.Done done = (Rewriting.Done) answer;
    assertThat(done.decimals()).isEqualTo(4);
    assertThat(done(answer)).contains("G91 G1 X1. F200.\nX1.\nX1.\n");
    assertThat(done.rounding()).isCloseTo(0.00002, within(1e-9));
    assertThat(done.closing()).isCloseTo(0.00002, within(1e-9));
    assertThat(done.rounding()).isLessThanOrEqualTo(0.0005);
  }

  @Test
  void chain_of_rounded_distances_stays_within_half_an_increment() {
    StringBuilder text = new StringBuilder("G20 G90 G17 G54\nG0 X.3937 Y.1111 Z1.\nG91\n");
    for (int i = 0; i < 50; i++) {
      text.append("G20\nX.0001\nG21\nX.001\n");
    }
    Rewriting answer = rewrite(text + "G90\nM30\n", "", Distance.ABSOLUTE);
    assertThat(answer).isInstanceOf(Rewriting.Done.class);
    // Half of the greater least increment, 0.0001 in.
    assertThat(((Rewriting.Done) answer).rounding()).isBetween(1e-4, 0.5 * 0.00254);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "filter-housing-m20",
        "valve-block-half-13",
        "hub-axle-m16-left",
        "valve-manifold-four-m12"
      })
  void samples_are_rewritten_both_ways(String name) throws Exception {
    Path file = Path.of("sample-programs", name + ".nc");
    SetupSheet sheet =
        SetupReader.read("s", Files.readString(Path.of("sample-programs", name + ".setup.toml")))
            .sheet()
            .orElseThrow();
    SourceText text = SourceText.of(name, Files.readAllBytes(file));
    for (Distance mode : Distance.values()) {
      Rewriting answer = Rewriter.rewrite(text, sheet, List.of(), mode);
      assertThat(answer).as("%s", answer).isInstanceOf(Rewriting.Done.class);
      assertThat(((Rewriting.Done) answer).difference()).isLessThanOrEqualTo(1e-9);
      assertThat(
              Interpreter.interpret(((Rewriting.Done) answer).text(), sheet).findings().stream()
                  .filter(f -> f.code().name().equals("MD07")))
          .isEmpty();
    }
  }
}
