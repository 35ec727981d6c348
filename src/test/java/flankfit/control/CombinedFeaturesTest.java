package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Functions that meet: calls after cycles, positions in a turned frame. */
class CombinedFeaturesTest {
  private static Interpretation run(String blocks) {
    String text = "G21 G90 G17 G54 G40 S900 M3 F100.\nG0 X0. Y0. Z10.\n" + blocks;
    return Interpreter.interpret(
        SourceText.of("met.nc", text.getBytes(StandardCharsets.US_ASCII)), SetupSheet.empty());
  }

  @Test
  void a_modal_call_is_made_after_every_hole_of_a_cycle() {
    Interpretation counted =
        run(
            """
            #100=0
            G66 P7
            G81 X5. Z-3. R2.
            X9.
            G80
            G67
            G1 X[20.+#100]
            M30
            O7
            #100=#100+1
            M99
            """);
    assertThat(counted.complete()).as("%s", counted.findings()).isTrue();
    Tape tape = counted.tape();
    assertThat(tape.toX(tape.size() - 1)).isCloseTo(22, within(1e-9));
  }

  @Test
  void the_present_position_is_told_in_the_turned_frame() {
    Interpretation done =
        run(
            """
            G68 X0. Y0. R90.
            G1 X10. Y4.
            #100=#5041
            #101=#5042
            G69
            G1 X#100 Y#101
            M30
            """);
    assertThat(done.complete()).as("%s", done.findings()).isTrue();
    Tape tape = done.tape();
    int last = tape.size() - 1;
    assertThat(tape.toX(last - 1)).isCloseTo(-4, within(1e-9));
    assertThat(tape.toY(last - 1)).isCloseTo(10, within(1e-9));
    assertThat(tape.toX(last)).isCloseTo(10, within(1e-9));
    assertThat(tape.toY(last)).isCloseTo(4, within(1e-9));
  }
}
