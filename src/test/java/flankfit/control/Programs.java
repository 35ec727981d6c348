package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;

/** Runs short programs and tells where they went. */
final class Programs {
  static final String HEAD = "G21 G90 G17 G54 G40 G49 G80 S1000 M3 F200.\nG0 X0 Y0 Z5.\n";

  private Programs() {}

  static Interpretation run(String text) {
    return run(text, "");
  }

  /** A program after the usual head, with the short line of a sheet. */
  static Interpretation run(String text, String sheet, SourceText... subprograms) {
    return Interpreter.interpret(
        source("program.nc", HEAD + text), ExampleSheet.of(sheet), List.of(subprograms));
  }

  static SourceText source(String name, String text) {
    return SourceText.of(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Ends of the moves after the head, as X of each. */
  static List<Double> xs(Interpretation result) {
    Tape tape = result.tape();
    return IntStream.range(1, tape.size()).mapToObj(tape::toX).toList();
  }

  /** Findings as CODE@line, without what every such program gives. */
  static List<String> codes(Interpretation result) {
    return result.findings().stream()
        .filter(f -> !f.code().name().startsWith("AS"))
        .filter(f -> f.code() != Code.OF02 && f.code() != Code.RD22)
        .map(f -> f.code() + "@" + f.place().line())
        .toList();
  }

  static void assertSame(Tape a, Tape b) {
    assertThat(b.size()).isEqualTo(a.size());
    for (int i = 0; i < a.size(); i++) {
      assertThat(b.kind(i)).isEqualTo(a.kind(i));
      assertThat(b.to(i).distance(a.to(i))).isCloseTo(0, within(1e-9));
      assertThat(b.state(i)).isEqualTo(a.state(i));
    }
  }
}
