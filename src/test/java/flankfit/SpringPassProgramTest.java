package flankfit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.gauge.BendingAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadAnswer.PassAnswer;
import flankfit.gauge.ThreadAnswer.Role;
import flankfit.gauge.ThreadGauging;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.Offsets;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A fact of the trade, from the program's text to the gauge's answer. Common practice, no source: a
 * 5/16-18 thread in aluminium roughed 0.004 in under size on the radius, then finished and sprung
 * at size; the spring pass moves the thread by tenths of a thousandth of an inch, not by
 * thousandths.
 */
class SpringPassProgramTest {
  private static final double INCH = 25.4;
  private static final double THOUSANDTH = 0.001;

  private static final String SHEET =
      """
      units = "inch"
      title = "Bicycle hub, axle end"

      [control]
      power-up-units = "inch"

      [work-offsets]
      G54 = [0.0, 0.0, 0.0]

      [[hole]]
      name         = "axle"
      at           = [0.0, 0.0]
      top          = 0.0
      diameter     = 0.257
      depth        = "through"
      made-by      = "stock"
      thread       = "5/16-18 UNC-2B"
      thread-depth = 0.35

      [stock]
      shape = "block"
      size  = [1.0, 1.0, 0.40]
      zero  = [0.5, 0.5, 0.40]

      [[tool]]
      number        = 3
      kind          = "thread mill"
      hand          = "right"
      diameter      = 0.2325
      flutes        = 3
      rows          = 1
      flank-angle   = 60.0
      form          = "straight"
      crest-flat    = 0.0069
      tip           = 0.03
      flute-length  = 0.08
      neck          = { diameter = 0.155, reach = 0.78 }
      shank         = { diameter = 0.25, length = 0.35 }
      holder        = { diameter = 1.0, length = 2.0 }
      material      = "carbide"

      [offsets]
      H3 = { geometry = 3.0, wear = 0.0 }

      [workpiece]
      material = "aluminium, wrought"
      """;

  private static void pass(StringBuilder program, double radius) {
    program.append("G1 X0. Y0. F20.\nG1 Z-.43\n");
    program.append(String.format(Locale.ROOT, "G1 X%.4f Y0. F6.%n", radius));
    for (int turn = 1; turn <= 8; turn++) {
      program.append(
          String.format(
              Locale.ROOT, "G3 X%.4f Y0. Z%.6f I%.4f J0.%n", radius, -0.43 + turn / 18.0, -radius));
    }
    program.append("G1 X0. Y0. F20.\n");
  }

  private static String program(double... radii) {
    StringBuilder program = new StringBuilder();
    program.append("%\nO20 (AXLE END)\nG20 G17 G40 G49 G80 G90 G94\nT3 M6\n");
    program.append("G54 G0 X0. Y0. S5000 M3\nG43 H3 Z.2\nG1 Z-.43 F20.\n");
    for (double radius : radii) {
      pass(program, radius);
    }
    return program.append("G0 Z2.\nM5\nM30\n%\n").toString();
  }

  private static ThreadAnswer gauged(double... radii) {
    SetupSheet sheet = SetupReader.read("axle.setup.toml", SHEET).sheet().orElseThrow();
    SourceText source =
        SourceText.of("axle.nc", program(radii).getBytes(StandardCharsets.US_ASCII));
    Interpretation done = Interpreter.interpret(source, sheet);
    assertThat(done.complete()).as("%s", done.findings()).isTrue();
    GaugeRequest request =
        new GaugeRequest(
            "axle.nc",
            done.tape(),
            sheet,
            done.radiusSettings(),
            offsets -> replay(source, sheet, offsets));
    List<ThreadAnswer> threads = ThreadGauging.gauge(request).threads();
    assertThat(threads).hasSize(1);
    return threads.get(0);
  }

  private static Optional<Tape> replay(SourceText source, SetupSheet sheet, Offsets offsets) {
    Interpretation again = Interpreter.interpret(source, sheet.withOffsets(offsets));
    return again.complete() ? Optional.of(again.tape()) : Optional.empty();
  }

  private static double pitch(PassAnswer pass) {
    return pass.after().orElseThrow().pitch() / INCH;
  }

  private static double realPitch(ThreadAnswer thread) {
    return thread.real().orElseThrow().measures().orElseThrow().pitch().mean() / INCH;
  }

  @Test
  void spring_pass_moves_the_thread_by_tenths_of_a_thousandth() {
    ThreadAnswer thread = gauged(0.036, 0.040, 0.040);
    List<PassAnswer> passes = thread.passes();
    assertThat(passes)
        .extracting(PassAnswer::role)
        .containsExactly(Role.ROUGH, Role.FINISH, Role.SPRING);
    double finish = pitch(passes.get(1)) - pitch(passes.get(0));
    double spring = pitch(passes.get(2)) - pitch(passes.get(1));
    // The rough pass stands 0.004 in under on the radius; the pitch diameter less than twice that.
    assertThat(finish).isBetween(6 * THOUSANDTH, 9 * THOUSANDTH);
    assertThat(spring).isBetween(0.02 * THOUSANDTH, 0.95 * THOUSANDTH);
    // On the path as moved it is the same.
    double moved = realPitch(thread) - realPitch(gauged(0.036, 0.040));
    assertThat(moved).isCloseTo(spring, within(0.03 * THOUSANDTH));
    assertThat(moved).isBetween(0.02 * THOUSANDTH, 0.95 * THOUSANDTH);
  }

  @Test
  void a_second_spring_pass_moves_it_by_much_less_than_the_first() {
    BendingAnswer bending = gauged(0.036, 0.040, 0.040).bending().orElseThrow();
    double first = gauged(0.036, 0.040).bending().orElseThrow().springGain() / INCH;
    assertThat(bending.springGain() / INCH).isBetween(0.0, 0.3 * first);
    assertThat(first).isBetween(0.02 * THOUSANDTH, 0.95 * THOUSANDTH);
  }

  @Test
  void with_edge_force_as_in_practice_the_first_spring_pass_gives_tenths() {
    BendingAnswer bending = gauged(0.036, 0.040).bending().orElseThrow();
    assertThat(bending.springGainPractice() / INCH)
        .isBetween(0.1 * THOUSANDTH, 0.95 * THOUSANDTH)
        .isGreaterThan(bending.springGain() / INCH);
  }
}
