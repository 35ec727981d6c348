package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Published examples of G81. */
class CyclesPublishedTest {
  /** Sums of printed decimals. */
  private static final double PRINTED = 1e-9;

  private static Tape tape(String program) {
    String text = "G21 G17 G54 S1000 M3\nG0 X1. Y2. Z3. F10.\n" + program + "\nG80 G90\nM30\n";
    return Interpreter.interpret(
            SourceText.of("published.nc", text.getBytes(StandardCharsets.UTF_8)),
            SetupSheet.empty())
        .tape();
  }

  @ParameterizedTest(name = "{0} move {2}")
  @CsvFileSource(resources = "cycles-published.csv", useHeadersInDisplayName = true)
  void moves_are_those_printed(
      String name, String program, int move, String kind, double x, double y, double z) {
    Tape tape = tape(program);
    assertThat(tape.kind(move).word()).isEqualTo(kind);
    List<Double> end = List.of(tape.toX(move), tape.toY(move), tape.toZ(move));
    assertThat(end.get(0)).as(name).isCloseTo(x, within(PRINTED));
    assertThat(end.get(1)).as(name).isCloseTo(y, within(PRINTED));
    assertThat(end.get(2)).as(name).isCloseTo(z, within(PRINTED));
  }
}
