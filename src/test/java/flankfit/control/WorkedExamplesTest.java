package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.unit.Angles;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The worked examples of the language: every move and every finding they list. */
class WorkedExamplesTest {
  /** Figures of the examples are rounded to 1e-6. */
  private static final double PRINTED = 2e-6;

  private static final int LAST = 59;

  /** Examples whose path needs an offset of the tool. */
  private static final Set<Integer> COMPENSATED =
      Set.of(28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39, 40, 55, 57);

  /** Rules on threads and hazards that look at the finished tape, not at the blocks. */
  private static final Set<String> RULES_ON_THE_TAPE = Set.of("TH02", "HZ02", "HZ03", "HZ06");

  private static String name(int number) {
    return String.format(Locale.ROOT, "ex-%02d", number);
  }

  static Stream<String> modelled() {
    return IntStream.rangeClosed(1, LAST)
        .filter(number -> !COMPENSATED.contains(number))
        .mapToObj(WorkedExamplesTest::name);
  }

  static Stream<String> compensated() {
    return COMPENSATED.stream().sorted().map(WorkedExamplesTest::name);
  }

  @ParameterizedTest
  @MethodSource("modelled")
  void example_gives_its_moves_and_findings(String name) {
    check(Example.load(name));
  }

  static void check(Example example) {
    Interpretation result = run(example);
    List<String> found = new ArrayList<>();
    result.findings().forEach(f -> found.add(f.code() + "@" + f.place().line()));
    result.findings().forEach(f -> found.add(f.code().toString()));
    List<String> must =
        example.must().stream()
            .filter(code -> !RULES_ON_THE_TAPE.contains(code.substring(0, 4)))
            .toList();
    assertThat(found).as(example.title()).containsAll(must);
    if (!example.mustNot().isEmpty()) {
      assertThat(found).as(example.title()).doesNotContainAnyElementsOf(example.mustNot());
    }
    assertThat(result.complete()).as("runs to its end").isEqualTo(!example.stops());
    Tape tape = result.tape();
    List<String> moves = example.moves();
    assertThat(tape.size())
        .as("moves of %s: %s", example.title(), lines(tape))
        .isEqualTo(moves.size());
    for (int i = 0; i < moves.size(); i++) {
      checkRow(tape, i, moves.get(i));
    }
  }

  private static List<String> lines(Tape tape) {
    return IntStream.range(0, tape.size())
        .mapToObj(i -> tape.line(i) + " " + tape.kind(i).word() + " " + tape.to(i))
        .toList();
  }

  private static Interpretation run(Example example) {
    SourceText text =
        SourceText.of(example.name(), example.program().getBytes(StandardCharsets.UTF_8));
    return Interpreter.interpret(text, ExampleSheet.of(example.sheet()));
  }

  private static void checkRow(Tape tape, int i, String row) {
    List<String> cell = Example.words(row);
    assertThat(tape.line(i)).as(row).isEqualTo(Integer.parseInt(cell.get(0)));
    assertThat(tape.kind(i).word()).as(row).isEqualTo(cell.get(1));
    near(tape.toX(i), cell.get(2), row);
    near(tape.toY(i), cell.get(3), row);
    near(tape.toZ(i), cell.get(4), row);
    if (tape.kind(i) == MoveKind.ARC) {
      checkArc(tape, i, cell, row);
    }
    if (tape.kind(i) == MoveKind.DWELL) {
      near(tape.seconds(i), cell.get(12).replace("s", ""), row);
    } else {
      near(tape.length(i), cell.get(12), row);
    }
    if (!cell.get(13).equals("-")) {
      near(tape.state(i).feed(), cell.get(13), row);
    }
    String spindle =
        switch (tape.state(i).spindle()) {
          case OFF -> "off";
          case CLOCKWISE -> "cw";
          case COUNTER_CLOCKWISE -> "ccw";
        };
    assertThat(spindle).as(row).isEqualTo(cell.get(14));
    assertThat(tape.state(i).compensation().word()).as(row).isEqualTo(cell.get(15));
  }

  private static void checkArc(Tape tape, int i, List<String> cell, String row) {
    Plane plane = tape.state(i).plane();
    assertThat(plane.name()).as(row).isEqualTo(cell.get(5));
    double[] centre = {tape.fromX(i), tape.fromY(i), tape.fromZ(i)};
    centre[plane.u()] = tape.centreU(i);
    centre[plane.v()] = tape.centreV(i);
    for (int axis = 0; axis < 3; axis++) {
      near(centre[axis], cell.get(6 + axis), row);
    }
    near(tape.radius(i), cell.get(9), row);
    near(Angles.toDegrees(tape.sweep(i)), cell.get(10), row);
    near(tape.rise(i), cell.get(11), row);
  }

  private static void near(double value, String expected, String row) {
    assertThat(value).as(row).isCloseTo(Double.parseDouble(expected), within(PRINTED));
  }
}
