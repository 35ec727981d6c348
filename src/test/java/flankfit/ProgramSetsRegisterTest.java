package flankfit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadGauging;
import flankfit.gauge.WearTrial;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.Offsets;
import flankfit.setup.RadiusSetting;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Register advice for a program that enters its D register itself: the block is to be changed. */
class ProgramSetsRegisterTest {
  private static final String SAMPLE = "sample-programs/filter-housing-m20";
  private static final SetupSheet SHEET =
      SetupReader.read("sheet.toml", stiff(text(".setup.toml"))).sheet().orElseThrow();
  private static final double SOLVED = 1e-6;

  /** Without the metal nothing bends, so that entries can be solved to the end. */
  private static String stiff(String sheet) {
    return sheet.replaceAll("(?m)^\\[workpiece\\]\\R.*\\R", "");
  }

  private static String text(String ending) {
    try {
      return Files.readString(Path.of(SAMPLE + ending));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The advice when these blocks stand before the first cut. */
  private static OffsetAdvice advice(String... blocks) {
    return gauge(blocks).offset().orElseThrow();
  }

  private static ThreadAnswer gauge(String... blocks) {
    return gauged(text(".nc").replace("N50 ", String.join("\n", blocks) + "\nN50 "));
  }

  private static ThreadAnswer gauged(String program) {
    return ThreadGauging.gauge(request(program)).threads().get(0);
  }

  private static GaugeRequest request(String program) {
    SourceText source = SourceText.of("set.nc", program.getBytes(StandardCharsets.US_ASCII));
    Interpretation done = Interpreter.interpret(source, SHEET);
    assertThat(done.complete()).as("%s", done.findings()).isTrue();
    return new GaugeRequest(
        "set.nc", done.tape(), SHEET, done.radiusSettings(), offsets -> replay(source, offsets));
  }

  private static Optional<Tape> replay(SourceText source, Offsets offsets) {
    Interpretation again = Interpreter.interpret(source, SHEET.withOffsets(offsets));
    return again.complete() ? Optional.of(again.tape()) : Optional.empty();
  }

  @Test
  void wear_that_the_program_enters_is_to_be_changed_there() {
    OffsetAdvice plain = advice();
    OffsetAdvice advice = advice("G10 L13 P4 R-.02");
    assertThat(plain.setBy()).isEmpty();
    RadiusSetting setting = advice.setBy().orElseThrow();
    assertThat(setting.word()).isEqualTo("R-.02");
    assertThat(setting.place().line()).isEqualTo(8);
    assertThat(advice.now()).isEqualTo(-0.02);
    assertThat(advice.sensitivity()).isCloseTo(plain.sensitivity(), within(1e-3));
    assertThat(advice.toMiddle()).isCloseTo(plain.toMiddle(), within(SOLVED));
  }

  @Test
  void value_that_is_advised_puts_the_thread_in_the_middle() {
    OffsetAdvice advice = advice("G10 L13 P4 R-.1");
    ThreadAnswer mended = gauge(String.format(Locale.ROOT, "G10 L13 P4 R%.9f", advice.toMiddle()));
    double middle = (mended.spec().limits().pitchMin() + mended.spec().limits().pitchMax()) / 2;
    assertThat(mended.finished().orElseThrow().pitchSimple()).isCloseTo(middle, within(SOLVED));
  }

  @Test
  void last_block_that_enters_it_counts() {
    OffsetAdvice advice = advice("G10 L13 P4 R.3", "G10 L13 P4 R-.03", "G10 L13 P5 R.1");
    assertThat(advice.setBy().orElseThrow().word()).isEqualTo("R-.03");
    assertThat(advice.toMiddle()).isCloseTo(advice().toMiddle(), within(SOLVED));
  }

  @Test
  void change_while_compensation_is_on_waits_for_the_next_start() {
    String late = text(".nc").replace("N200 ", "G90 G10 L13 P4 R.1\nG91\nN200 ");
    OffsetAdvice advice = gauged(late).offset().orElseThrow();
    assertThat(advice.setBy()).isEmpty();
    assertThat(advice.now()).isEqualTo(-0.045);
    assertThat(advice.toMiddle()).isCloseTo(advice().toMiddle(), within(SOLVED));
  }

  @Test
  void wear_that_the_program_adds_to_stays_with_the_operator() {
    OffsetAdvice advice = advice("G91 G10 L13 P4 R.01", "G90");
    assertThat(advice.setBy()).isEmpty();
    assertThat(advice.now()).isEqualTo(-0.045);
    assertThat(advice.toMiddle()).isCloseTo(advice().toMiddle() - 0.01, within(SOLVED));
  }

  @Test
  void geometry_that_the_program_enters_is_told_and_wear_stays_with_the_operator() {
    OffsetAdvice advice = advice("G10 L12 P4 R.02");
    assertThat(advice.setBy()).isEmpty();
    assertThat(advice.geometry()).isEqualTo(0.02);
    assertThat(advice.toMiddle()).isCloseTo(advice().toMiddle() - 0.02, within(SOLVED));
  }

  @Test
  void trials_of_such_a_program_are_the_program_with_another_value() {
    String program = text(".nc").replace("N50 ", "G10 L13 P4 R-.02\nN50 ");
    GaugeRequest request = request(program);
    ThreadAnswer thread = ThreadGauging.gauge(request).threads().get(0);
    ThreadAnswer tried = WearTrial.of(request, thread).orElseThrow().whole(-0.05).orElseThrow();
    ThreadAnswer written = gauge("G10 L13 P4 R-.05");
    assertThat(tried.finished().orElseThrow().pitchSimple())
        .isCloseTo(written.finished().orElseThrow().pitchSimple(), within(1e-9));
    assertThat(tried.real().orElseThrow().words()).isEqualTo(written.real().orElseThrow().words());
    OffsetAdvice offset = tried.offset().orElseThrow();
    assertThat(offset.now()).isEqualTo(-0.05);
    assertThat(offset.keyToGoLimit()).isEqualTo(written.offset().orElseThrow().keyToGoLimit());
    assertThat(offset.keyToNoGoLimit()).isEqualTo(written.offset().orElseThrow().keyToNoGoLimit());
  }
}
