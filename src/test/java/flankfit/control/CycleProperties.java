package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of drilling and boring cycles. */
class CycleProperties {
  private static final double EXACT = 1e-9;
  private static final String HEAD = "G21 G90 G17 G54 S900 M3 F100.\nG0 X0 Y0 Z";
  private static final String[] CYCLES = {
    "G73", "G76", "G81", "G82", "G83", "G84", "G85", "G86", "G88", "G89"
  };

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 25);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }

  private static Tape tape(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Interpretation result =
        Interpreter.interpret(SourceText.of("law.nc", bytes), SetupSheet.empty());
    assertThat(result.complete()).as("%s\n%s", result.findings(), text).isTrue();
    return result.tape();
  }

  /** One hole with numbers to three decimals. */
  private record Hole(String cycle, double initial, double clearance, double depth, double peck) {
    static Hole of(Random random) {
      String cycle = CYCLES[random.nextInt(CYCLES.length)];
      double clearance = random.nextInt(8000) / 1000.0 - 3;
      double depth = clearance - 1 - random.nextInt(20_000) / 1000.0;
      double initial = clearance + random.nextInt(9000) / 1000.0;
      return new Hole(cycle, initial, clearance, depth, 0.1 + random.nextInt(6000) / 1000.0);
    }

    String words() {
      return cycle
          + " Z"
          + number(depth)
          + " R"
          + number(clearance)
          + (cycle.equals("G73") || cycle.equals("G83") || cycle.equals("G76")
              ? " Q" + number(peck)
              : "");
    }

    String head() {
      return HEAD + number(initial) + "\n";
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void tool_goes_to_the_depth_and_never_below(long seed) {
    Hole hole = Hole.of(new Random(seed));
    for (String level : new String[] {"G98", "G99"}) {
      Tape tape = tape(hole.head() + level + " " + hole.words() + " X5. Y5.\nG80\nM30\n");
      double lowest = Double.MAX_VALUE;
      for (int i = 0; i < tape.size(); i++) {
        lowest = Math.min(lowest, tape.toZ(i));
      }
      assertThat(lowest).isCloseTo(hole.depth(), within(EXACT));
      double out = level.equals("G98") ? hole.initial() : hole.clearance();
      assertThat(tape.toZ(tape.size() - 1)).isCloseTo(out, within(EXACT));
      assertThat(tape.toX(tape.size() - 1)).isEqualTo(5);
    }
  }

  /** Whatever the cycle, a rapid never goes where no feed has been before. */
  @ParameterizedTest
  @MethodSource("seeds")
  void rapids_below_the_clearance_stay_where_the_tool_has_fed(long seed) {
    Hole hole = Hole.of(new Random(seed));
    Tape tape = tape(hole.head() + hole.words() + " X5. Y5.\nG80\nM30\n");
    double deepest = hole.clearance();
    for (int i = 0; i < tape.size(); i++) {
      if (tape.kind(i) == MoveKind.LINE) {
        deepest = Math.min(deepest, tape.toZ(i));
      } else {
        assertThat(tape.toZ(i)).isGreaterThan(deepest - EXACT);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void pecks_are_as_deep_as_told_and_as_many_as_needed(long seed) {
    Random random = new Random(seed);
    Hole hole = Hole.of(random);
    String words = hole.words().replaceFirst("G\\d+", random.nextBoolean() ? "G73" : "G83");
    words = words.replaceFirst(" Q.*", "") + " Q" + number(hole.peck());
    Tape tape = tape(hole.head() + words + "\nG80\nM30\n");
    int pecks = 0;
    double reached = hole.clearance();
    for (int i = 0; i < tape.size(); i++) {
      if (tape.kind(i) == MoveKind.LINE) {
        pecks++;
        assertThat(reached - tape.toZ(i)).isLessThan(hole.peck() + EXACT);
        reached = tape.toZ(i);
      }
    }
    double way = hole.clearance() - hole.depth();
    assertThat(pecks).isEqualTo((int) Math.ceil(way / hole.peck() - 1e-9));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void repeats_are_the_blocks_written_out(long seed) {
    Random random = new Random(seed);
    Hole hole = Hole.of(random);
    int n = 1 + random.nextInt(6);
    String step = "X" + number(random.nextInt(9000) / 1000.0) + " Y2.5";
    String first = hole.words() + "\nG91 ";
    String end = "\nG80 G90\nM30\n";
    Tape counted = tape(hole.head() + first + step + " L" + n + end);
    Tape written = tape(hole.head() + first + (step + "\n").repeat(n) + end);
    assertThat(counted.size()).isEqualTo(written.size());
    for (int i = 0; i < counted.size(); i++) {
      assertThat(counted.to(i).distance(written.to(i))).isLessThan(EXACT);
    }
  }

  /** R from the initial level, the depth from R, the place from where the tool stands. */
  @ParameterizedTest
  @MethodSource("seeds")
  void absolute_and_incremental_writing_make_one_hole(long seed) {
    Hole hole = Hole.of(new Random(seed));
    Tape absolute = tape(hole.head() + hole.words() + " X5. Y-3.\nG80\nM30\n");
    String distances =
        hole.words()
            .replaceFirst("Z[-.0-9]+", "Z" + number(hole.depth() - hole.clearance()))
            .replaceFirst("R[-.0-9]+", "R" + number(hole.clearance() - hole.initial()));
    Tape incremental = tape(hole.head() + "G91 " + distances + " X5. Y-3.\nG80 G90\nM30\n");
    assertThat(incremental.size()).isEqualTo(absolute.size());
    for (int i = 0; i < absolute.size(); i++) {
      assertThat(incremental.kind(i)).isEqualTo(absolute.kind(i));
      assertThat(incremental.to(i).distance(absolute.to(i))).isLessThan(EXACT);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void spindle_turns_after_the_hole_as_before(long seed) {
    Hole hole = Hole.of(new Random(seed));
    Tape tape = tape(hole.head() + hole.words() + "\nG80 G0 Z90.\nM30\n");
    assertThat(tape.state(tape.size() - 1).spindle()).isEqualTo(tape.state(0).spindle());
  }
}
