package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of expressions, loops and calls. */
class ControlFlowProperties {
  static LongStream seeds() {
    return LongStream.rangeClosed(1, 20);
  }

  /** A random expression over #1 to #4, which hold small numbers; nothing in it can fail. */
  private static String expression(Random random, int depth) {
    if (depth == 0 || random.nextInt(5) == 0) {
      return switch (random.nextInt(4)) {
        case 0 -> "#" + (1 + random.nextInt(4));
        case 1 -> "#[" + (1 + random.nextInt(2)) + "+2]";
        case 2 -> String.valueOf(random.nextInt(20));
        default -> random.nextInt(20) + "." + random.nextInt(1000);
      };
    }
    String a = expression(random, depth - 1);
    String b = expression(random, depth - 1);
    return switch (random.nextInt(10)) {
      case 0 -> a + " + " + b;
      case 1 -> a + "-" + b;
      case 2 -> a + "*" + b;
      case 3 -> "[" + a + "]/[1+ABS[" + b + "]]";
      case 4 -> a + " " + comparison(random) + " " + b;
      case 5 -> "SIN[" + a + "]*" + b;
      case 6 -> "SQRT[ABS[" + a + "]]";
      case 7 -> "ATAN[" + a + "]/[1+[" + b + "]**2]";
      case 8 -> "[" + a + "] MOD [1+ABS[" + b + "]]";
      default -> "-[" + a + "]+ROUND[" + b + "]";
    };
  }

  private static String comparison(Random random) {
    return new String[] {"EQ", "NE", "GT", "GE", "LT", "LE"}[random.nextInt(6)];
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void expression_agrees_with_a_slow_witness(long seed) {
    Random random = new Random(seed);
    double[] values = new double[5];
    StringBuilder assigned = new StringBuilder();
    for (int i = 1; i < 5; i++) {
      values[i] = (random.nextInt(2000) - 1000) / 64.0;
      assigned.append("#").append(i).append("=").append(values[i]).append("\n");
    }
    for (int i = 0; i < 40; i++) {
      String text = expression(random, 4);
      double expected = new ExpressionWitness(text, values).value();
      if (Math.abs(expected) < 90_000) {
        Interpretation result = Programs.run(assigned + "G0 Z9. X[" + text + "]\nM30\n");
        assertThat(result.complete()).as("%s: %s", text, result.findings()).isTrue();
        assertThat(result.tape().toX(1))
            .as(text)
            .isCloseTo(expected, within(1e-9 * Math.max(1, Math.abs(expected))));
      }
    }
  }

  private static String step(Random random, String x) {
    int radius = 1 + random.nextInt(9);
    return switch (random.nextInt(4)) {
      case 0 -> "G1 X" + x + " F" + (100 + random.nextInt(300)) + ".\n";
      case 1 -> "G91 G0 Z" + random.nextInt(5) + ". Y1.\nG90\n";
      case 2 -> "G91 G3 X" + 2 * radius + ". I" + radius + ". F200.\nG90\n";
      default -> "G1 Y" + random.nextInt(50) + ". F150.\n";
    };
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void loop_is_its_unrolled_body(long seed) {
    int times = 1 + new Random(seed).nextInt(6);
    StringBuilder unrolled = new StringBuilder();
    for (int i = 0; i < times; i++) {
      unrolled.append(body(seed, i + "."));
    }
    String looped =
        "#1=0\nWHILE [#1 LT " + times + "] DO2\n" + body(seed, "#1") + "#1=#1+1\nEND2\n";
    String jumping =
        "#1=0\nN5\n" + body(seed, "[#1]") + "#1=#1+1\nIF [#1 LT " + times + "] GOTO 5\n";
    var expected = Programs.run(unrolled + "M30\n");
    Programs.assertSame(expected.tape(), Programs.run(looped + "M30\n").tape());
    Programs.assertSame(expected.tape(), Programs.run(jumping + "M30\n").tape());
    assertThat(expected.tape().size()).isGreaterThan(1);
  }

  private static String body(long seed, String x) {
    Random random = new Random(seed * 31);
    StringBuilder body = new StringBuilder("G1 X" + x + " Y1. F100.\n");
    for (int i = 0; i < 6; i++) {
      body.append(step(random, x));
    }
    return body.toString();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void call_is_its_body_written_in_its_place(long seed) {
    int times = 1 + new Random(seed).nextInt(4);
    String written = body(seed, "3.").repeat(times) + "G1 X1. F90.\n";
    var expected = Programs.run(written + "M30\n");
    String plain = "M98 P7 L" + times + "\nG1 X1. F90.\nM30\nO7\n" + body(seed, "3.") + "M99\n";
    String macro =
        "#1=8.\nG65 P7 L" + times + " A3.\nG1 X1. F90.\nM30\nO7\n" + body(seed, "#1") + "M99\n";
    Programs.assertSame(expected.tape(), Programs.run(plain).tape());
    Programs.assertSame(expected.tape(), Programs.run(macro).tape());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void modal_call_is_a_call_after_every_motion(long seed) {
    Random random = new Random(seed);
    StringBuilder modal = new StringBuilder("G66 P7 A2.\n");
    StringBuilder written = new StringBuilder();
    for (int i = 0; i < 5; i++) {
      String move = "G0 X" + random.nextInt(90) + ". Y" + random.nextInt(90) + ".\n";
      modal.append(move).append("M8\n");
      written.append(move).append("G65 P7 A2.\nM8\n");
    }
    String end = "G67\nG0 X1.\nM30\nO7\nG91 G1 Z-#1 F100.\nG0 Z#1\nG90\nM99\n";
    Programs.assertSame(Programs.run(written + end).tape(), Programs.run(modal + end).tape());
  }
}
