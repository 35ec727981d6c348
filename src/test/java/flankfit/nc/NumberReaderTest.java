package flankfit.nc;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers from bytes, exactly rounded. */
class NumberReaderTest {
  private static NumberReader reader(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    NumberReader reader = new NumberReader(bytes, bytes.length);
    reader.read(0);
    return reader;
  }

  @ParameterizedTest
  @CsvSource({
    "1,1",
    "-1,-1",
    "+2.5,2.5",
    ".5,0.5",
    "-.5,-0.5",
    "5.,5",
    "0001.250,1.25",
    "1 0.,10",
    "0.1,0.1",
    "123456789012345,123456789012345",
    "0.000000000000001,1e-15",
    "'- 3',-3",
    "0.00000000000000000000000000012,1.2e-28",
    "1.2500000000000000000000,1.25"
  })
  void number_is_read(String text, double value) {
    NumberReader reader = reader(text);
    assertThat(reader.reason()).isEmpty();
    assertThat(reader.value()).isEqualTo(value);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-", ".", "-.", " ", "X"})
  void nothing_is_no_number(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    assertThat(new NumberReader(bytes, bytes.length).read(0)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"1234567890123456", "1.234567890123456", "--1", "+-1", "1000000000000000"})
  void too_much_is_no_number(String text) {
    assertThat(reader(text).reason()).isNotEmpty();
  }

  @Test
  void random_decimals_are_rounded_as_exact_arithmetic_rounds() {
    Random random = new Random(15);
    for (int i = 0; i < 20_000; i++) {
      long digits = Math.floorMod(random.nextLong(), 1_000_000_000_000_000L);
      int scale = random.nextInt(16);
      BigDecimal exact = BigDecimal.valueOf(digits, scale);
      assertThat(reader(exact.toPlainString()).value()).isEqualTo(exact.doubleValue());
    }
  }

  @Test
  void point_digits_and_blanks_are_told() {
    NumberReader reader = reader("00 2.500 ");
    assertThat(reader.blankInside()).isTrue();
    assertThat(reader.digits()).isEqualTo(6);
    assertThat(reader.decimals()).isEqualTo(3);
    assertThat(reader.end()).isEqualTo(8);
    assertThat(reader("25").decimals()).isEqualTo(-1);
  }
}
