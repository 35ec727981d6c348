package flankfit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadGauging;
import flankfit.gauge.Verdict;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.Offsets;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * From text to verdict: where the hole lies, how the entry is turned, which hand, which unit, which
 * words and which way of compensating say the same motion must not change what the gauges say.
 */
class VerdictProperties {
  private static final int CASES = 30;

  /** Words of ten decimals leave less than this of the diameter (mm). */
  private static final double SAME = 1e-6;

  /** One way of saying the thread: everything but the motion relative to the hole's axis. */
  private record Telling(
      double x,
      double y,
      double turned,
      boolean mirrored,
      LengthUnit unit,
      boolean incremental,
      boolean contour,
      double wear) {}

  @Test
  void verdict_and_measures_do_not_depend_on_how_the_motion_is_told() {
    Random random = new Random(20_261_125);
    for (int i = 0; i < CASES; i++) {
      double wear = -0.12 + 0.2 * random.nextDouble();
      Telling plain = new Telling(0, 0, 0, false, LengthUnit.MILLIMETRE, false, false, wear);
      Telling other =
          new Telling(
              60 * random.nextDouble() - 30,
              40 * random.nextDouble() - 20,
              2 * Math.PI * random.nextDouble(),
              random.nextBoolean(),
              random.nextBoolean() ? LengthUnit.INCH : LengthUnit.MILLIMETRE,
              random.nextBoolean(),
              random.nextBoolean(),
              wear);
      ThreadAnswer expected = gauge(plain);
      ThreadAnswer actual = gauge(other);
      assertThat(actual.verdict()).as("%s", other).isEqualTo(expected.verdict());
      assertThat(actual.rightHand()).as("%s", other).isEqualTo(!other.mirrored());
      assertThat(actual.finished().orElseThrow().pitchSimple())
          .as("%s", other)
          .isCloseTo(expected.finished().orElseThrow().pitchSimple(), within(SAME));
      assertThat(actual.finished().orElseThrow().functional())
          .as("%s", other)
          .isCloseTo(expected.finished().orElseThrow().functional(), within(SAME));
      assertThat(actual.offset().orElseThrow().toMiddle())
          .as("%s", other)
          .isCloseTo(expected.offset().orElseThrow().toMiddle(), within(1e-5));
    }
  }

  @Test
  void all_three_answers_of_the_thread_plugs_occur() {
    assertThat(List.of(-0.12, -0.05, 0.05))
        .extracting(
            w ->
                gauge(new Telling(0, 0, 0, false, LengthUnit.MILLIMETRE, false, false, w))
                    .verdict())
        .containsExactly(Verdict.NO_GO_ENTERS, Verdict.GAUGES_GOOD, Verdict.GO_REFUSED);
  }

  private static ThreadAnswer gauge(Telling telling) {
    SetupSheet sheet = sheet(telling);
    SourceText text =
        SourceText.of("told.nc", new Program(telling).text().getBytes(StandardCharsets.US_ASCII));
    Interpretation done = Interpreter.replay(text, sheet, List.of());
    assertThat(done.complete()).as("%s", done.findings()).isTrue();
    GaugeAnswer answer =
        ThreadGauging.gauge(
            new GaugeRequest(
                "told.nc", done.tape(), sheet, offsets -> replay(text, sheet, offsets)));
    assertThat(answer.threads()).as("%s %s", telling, answer.findings()).hasSize(1);
    return answer.threads().get(0);
  }

  private static Optional<Tape> replay(SourceText text, SetupSheet sheet, Offsets offsets) {
    Interpretation again = Interpreter.replay(text, sheet.withOffsets(offsets), List.of());
    return again.complete() ? Optional.of(again.tape()) : Optional.empty();
  }

  private static SetupSheet sheet(Telling t) {
    String text =
        String.format(
            Locale.ROOT,
            """
            units = "mm"
            [work-offsets]
            G54 = [0.0, 0.0, 0.0]
            [[hole]]
            name = "port"
            at = [%.12f, %.12f]
            top = 0.0
            diameter = 18.5
            depth = 22.0
            thread = "M20x1.5-6H%s"
            thread-depth = 16.0
            [[tool]]
            number = 4
            kind = "thread mill"
            diameter = 14.0
            rows = 12
            pitch = 1.5
            form = "straight"
            crest-flat = 0.15
            tip = 0.5
            flute-length = 18.0
            [offsets]
            H4 = { geometry = 120.0 }
            D4 = { geometry = %.12f, wear = %.12f }
            """,
            t.x(),
            t.y(),
            t.mirrored() ? "-LH" : "",
            t.contour() ? 7.0 : 0.0,
            t.wear());
    return SetupReader.read("told.setup.toml", text).sheet().orElseThrow();
  }

  /** Writes the words: straight entry, one and a half turns, straight exit. */
  private static final class Program {
    private final Telling t;
    private final List<String> blocks = new ArrayList<>();
    private double x;
    private double y;
    private double z;

    Program(Telling t) {
      this.t = t;
    }

    String text() {
      double radius = t.contour() ? 10 : 3;
      blocks.add(t.unit() == LengthUnit.INCH ? "G20" : "G21");
      blocks.add("G17 G40 G49 G80 G90 G94 G54 S2000 M3 T4 M6");
      blocks.add("M3");
      blocks.add("G43 H4");
      point("G0", 0, 0, 5, "");
      point("G1", 0, 0, -17, "F" + number(800));
      blocks.add(t.incremental() ? "G91" : "G90");
      point("G1 " + (t.mirrored() ? "G42" : "G41") + " D4", radius, 0, -17, "F" + number(200));
      String arc = t.mirrored() ? "G2" : "G3";
      point(arc, radius, 0, -15.5, centre(radius, 0));
      point(arc, -radius, 0, -14.75, centre(radius, 0));
      point("G1 G40", 0, 0, -14.75, "");
      blocks.add("G90");
      point("G0", 0, 0, 50, "");
      blocks.add("M30");
      return String.join("\n", blocks) + "\n";
    }

    private String centre(double fromU, double fromV) {
      double[] from = place(fromU, fromV);
      return "I" + number(t.x() - from[0]) + " J" + number(t.y() - from[1]);
    }

    private void point(String head, double u, double v, double toZ, String tail) {
      double[] to = place(u, v);
      boolean distances = blocks.lastIndexOf("G91") > blocks.lastIndexOf("G90");
      double baseX = distances ? x : 0;
      double baseY = distances ? y : 0;
      double baseZ = distances ? z : 0;
      blocks.add(
          head
              + " X"
              + number(to[0] - baseX)
              + " Y"
              + number(to[1] - baseY)
              + " Z"
              + number(toZ - baseZ)
              + " "
              + tail);
      x = to[0];
      y = to[1];
      z = toZ;
    }

    private double[] place(double u, double v) {
      double c = Math.cos(t.turned());
      double s = Math.sin(t.turned());
      double px = c * u - s * v;
      double py = s * u + c * v;
      return new double[] {t.x() + (t.mirrored() ? -px : px), t.y() + py};
    }

    private String number(double millimetres) {
      return String.format(Locale.ROOT, "%.10f", t.unit().fromMillimetres(millimetres));
    }
  }
}
