package flankfit.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.setup.SetupReader;
import flankfit.setup.SheetReading;
import java.io.IOException;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The targets without the fuzzer: bytes of fixed seeds, so that each build tries a few. */
class FuzzTargetsProperties {
  static LongStream seeds() {
    return LongStream.rangeClosed(1, 25);
  }

  private static byte[] bytes(long seed) {
    Random random = new Random(seed);
    byte[] bytes = new byte[20 + random.nextInt(400)];
    random.nextBytes(bytes);
    return bytes;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void words_in_any_order_are_answered_well(long seed) throws IOException {
    Oracles.check(WordsText.of(bytes(seed)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void plausible_programs_are_answered_well(long seed) throws IOException {
    Oracles.check(ProgramText.of(bytes(seed)));
  }

  @Test
  void sheets_are_good_and_many_programs_move() {
    int moving = 0;
    for (long seed = 1; seed <= 40; seed++) {
      FuzzCase given = ProgramText.of(bytes(seed));
      SheetReading reading = SetupReader.read(Oracles.SHEET, given.sheet());
      assertThat(reading.sheet()).as("%s", reading.findings()).isPresent();
      Interpretation done =
          Interpreter.interpret(given.source(), reading.sheet().orElseThrow(), given.subprograms());
      moving += done.tape().size() > 10 ? 1 : 0;
    }
    assertThat(moving).isGreaterThan(12);
  }
}
