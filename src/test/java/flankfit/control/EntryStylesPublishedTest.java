package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tool-centre path and part contour give one motion, whatever the wear (mm). */
class EntryStylesPublishedTest {
  private static final double PRINTED = 1e-4;

  private static final Map<String, List<String>> CENTRE =
      Map.of(
          "straight",
          List.of("G0 X0 Y0 Z5.", "G41 D4 X3. Y0 F180.", "G3 I-3. Z-12.5", "G1 G40 X0 Y0"),
          "quarter",
          List.of(
              "G0 X0 Y0 Z5.",
              "G41 D4 X1.5 Y-1.5 F180.",
              "G3 X3. Y0 Z-13.625 J1.5",
              "I-3. Z-12.125",
              "X1.5 Y1.5 Z-11.75 I-1.5",
              "G1 G40 X0 Y0"),
          "half",
          List.of(
              "G0 X0 Y1. Z5.",
              "G41 D4 X0 Y0 F180.",
              "G3 X3. Y0 Z-13.25 I1.5",
              "I-3. Z-11.75",
              "X0 Y0 Z-11. I-1.5",
              "G1 G40 X0 Y1."));

  private static final Map<String, List<String>> WALL =
      Map.of(
          "straight",
          List.of("G0 X0 Y0 Z5.", "G41 D4 X10. Y0 F180.", "G3 I-10. Z-12.5", "G1 G40 X0 Y0"),
          "quarter",
          List.of(
              "G0 X0 Y0 Z5.",
              "G41 D4 X1.5 Y-8.5 F180.",
              "G3 X10. Y0 Z-13.625 J8.5",
              "I-10. Z-12.125",
              "X1.5 Y8.5 Z-11.75 I-8.5",
              "G1 G40 X0 Y0"),
          "half",
          List.of(
              "G0 X0 Y1. Z5.",
              "G41 D4 X-7. Y0 F180.",
              "G3 X10. Y0 Z-13.25 I8.5",
              "I-10. Z-11.75",
              "X-7. Y0 Z-11. I-8.5",
              "G1 G40 X0 Y1."));

  static Stream<String> rows() {
    return Example.text("entry-styles.csv").lines().filter(row -> !row.startsWith("#"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void blocks_end_where_the_table_says(String row) {
    List<String> cell = List.of(row.split(";", -1));
    boolean centre = cell.get(1).equals("tool centre");
    List<String> blocks = (centre ? CENTRE : WALL).get(cell.get(0));
    String text =
        "G21 G90 G17 G54 G40\nT4 M6\nS3200 M3\n"
            + blocks.get(0)
            + "\nG1 Z-14. F1000.\n"
            + String.join("\n", blocks.subList(1, blocks.size()))
            + "\nM30\n";
    String sheet =
        String.format(
            Locale.ROOT,
            "tool 4: thread mill, diameter 14; D4 = { geometry = %.3f }",
            Double.parseDouble(cell.get(2)));
    Interpretation result =
        Interpreter.interpret(
            SourceText.of("entry.nc", text.getBytes(StandardCharsets.UTF_8)),
            ExampleSheet.of(sheet));
    assertThat(result.findings())
        .anyMatch(f -> f.code() == Code.RC16 && f.what().contains(cell.get(1)));
    List<String> ends = Example.words(cell.get(3));
    Tape tape = result.tape();
    assertThat(tape.size()).isEqualTo(2 + ends.size());
    for (int i = 0; i < ends.size(); i++) {
      String[] xyz = ends.get(i).split(",", -1);
      assertThat(tape.toX(2 + i)).isCloseTo(Double.parseDouble(xyz[0]), within(PRINTED));
      assertThat(tape.toY(2 + i)).isCloseTo(Double.parseDouble(xyz[1]), within(PRINTED));
      assertThat(tape.toZ(2 + i)).isCloseTo(Double.parseDouble(xyz[2]), within(PRINTED));
    }
    checkTurn(tape, Double.parseDouble(cell.get(4)));
  }

  private static void checkTurn(Tape tape, double radius) {
    for (int i = 0; i < tape.size(); i++) {
      if (tape.kind(i) == MoveKind.ARC && Math.abs(tape.sweep(i)) > 6) {
        assertThat(tape.radius(i)).isCloseTo(radius, within(PRINTED));
        return;
      }
    }
    throw new AssertionError("no full turn on the tape");
  }
}
