package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Plain blocks executed at once, of a text looked over as it is read and stopped anywhere, against
 * the same blocks one after the other, of a text looked over before.
 */
class PlainRunProperties {
  private static final String[] HEADS = {
    "%\nG21 G17 G40 G49 G80 G90 G94\nG54 G0 X0. Y0. S9000 M3\nZ5.\nG1 Z0. F2500.\n",
    "G20 G17 G90 G94 G54\nS900 M3\nG0 X1. Y.5 Z2.\nX2. Y1. Z1.5\nG1 X0 Y0 Z0 F20.\n",
    "O12 (valve block)\nG21G17G90G54\nG0X1.Y2.Z3.\nG1Z5.F100\n",
    "G1 X1. Y2. Z3. F300.\n",
    "N1 G21 G90 G17 G54 S500 M3\nN2 T1 M6\nN3 G0 X1. Y1. Z9.\nN4 G43 H1 Z5.\nN5 G1 X2. F90.\n",
    "G21 G90 G54 S1 M3 F250.\nG0 X0 Y0 Z3.\nX1. Y2.\nG91\nG1 X1. Y1. Z-1.\n",
    ""
  };
  private static final String[] TAILS = {
    "G0 Z50.\nM30\n%\n", "M30\n", "M30", "M5\nM2\n\n  \n", "", "X5.\n%", "G90\nM30\nX1.\n", "M99\n"
  };

  /** Blocks that are not plain, or nearly, or change what plain ones mean. */
  private static final String[] ODD = {
    "G0 X1. Y1. Z5.",
    "G0 Z-3.",
    "G1",
    "G01 X5. Y5.",
    "G1 F300.",
    "F800",
    "F0",
    "F-5.",
    "F.5",
    "F999999.",
    "F100.5 X1.",
    "X5",
    "X0 Y0",
    "X-0 Y-0.",
    "X+5.",
    "X5.12345",
    "X.5",
    "X-.5Y-.25",
    "X.",
    "X",
    "X5..",
    "X5.5.5",
    "X5,5",
    "X--5.",
    "X 5. Y 6.",
    "X5 . Y6.",
    "X5. 5",
    "X5.\tY6.",
    "X5. Y6. ",
    "  X5.",
    "x5.Y6.",
    "X5.Y6.X7.",
    "X99999.9",
    "X100000.1",
    "X123456.12345",
    "X1234567.1",
    "X12345678.",
    "X123456789.5",
    "X0.123456789",
    "X1.1234567",
    "X12.12345678",
    "X12.123456789012",
    "X1.12345678901234567",
    "X12345.123456",
    "XO.5",
    "X1O.",
    "GO X1.",
    "G1.0 X5.",
    "G10 X5.",
    "G001X5.Y5.",
    "G1 G1 X5.",
    "G0 G1 X5.",
    "G1 G90 X5.",
    "N5 X5.",
    "N777 X5.25",
    "N777",
    "N12345678 X1.5",
    "N123456789 X1.5",
    "N2.5 X1.5",
    "N-2 X1.5",
    "X1.5 N3",
    "/X5.Y6.",
    "/2 X5.",
    "X5. (side)",
    "(nothing but words)",
    "X5. (open",
    "X5. ; X6.",
    ";",
    "",
    "   ",
    "G91",
    "G90",
    "G91 X1. Y1.",
    "G2 X5. Y5. R20.",
    "G3 I5.",
    "X5. I1.",
    "X5. R1.",
    "A0 X5.",
    "B5. X5.",
    "G4 P1.",
    "G81 X5. Y5. Z-5. R1. F50.",
    "G80",
    "G41 D1 X5. Y5.",
    "G40 X1. Y9.",
    "G43 H1 Z5.",
    "G49 Z5.",
    "G93",
    "G94",
    "G95 F.1",
    "G20",
    "G21",
    "G54",
    "G55",
    "G52 X1.",
    "G92 X0",
    "G53 G0 Z0",
    "G28 Z5.",
    "G68 X0 Y0 R30.",
    "G69",
    "G51.1 X0",
    "G50.1 X0",
    "G66 P1 X1.",
    "G67",
    "M3",
    "M5",
    "M3 S500",
    "T2 M6",
    "M0",
    "M30",
    "O77",
    "#1=5",
    "X#1 Y[#1+2.]",
    "GOTO 888",
    "N888",
    "%",
    " %",
    "X5.%",
    "(100 % of it)",
    "%\nX1.\n%",
    "%\nO5\nG21 G90 G54 S500 M3\nG1 X1. Y1. F200.\nX2.5\n%\n%",
    "\u0001\u0001\u0001\u0001\u0001\u0001\u0001\u0001",
    "X5.\u00e9",
    "X5.\u0001",
    "\u0000X5.",
    "X5.\u0000",
    "S500",
    "X5. S500",
    "Z-5.",
    "Z99.",
    "X1.2345Y2.3456Z-3.4567",
    "P5",
    "E5.",
    "X5.,C1."
  };

  private static final SetupSheet[] SHEETS = {
    SetupSheet.empty(),
    ExampleSheet.of("number-reading = least-increment"),
    ExampleSheet.of("input-rounding = least-increment, stock block 60 x 40 x 20"),
    ExampleSheet.of("G54 = [1.5, -2.25, 10.125], start = [1.0, 2.0, 30.0], rapid-path = dog-leg"),
    ExampleSheet.of("block-limit = 23, semicolon = end-of-block, block-delete = true"),
    ExampleSheet.of("H1 = { geometry = 99.5 }, D1 = { geometry = 0.5 }, tool-change = t-alone"),
  };

  private static String plain(Random random, int style) {
    StringBuilder block = new StringBuilder();
    if (style == 1) {
      block
          .append('N')
          .append(100 + random.nextInt(100_000))
          .append(random.nextBoolean() ? " " : "");
    }
    if (random.nextInt(12) == 0) {
      block.append(random.nextInt(4) == 0 ? "G0" : "G1").append(style == 2 ? " " : "");
    }
    int axes = random.nextInt(9) == 0 ? random.nextInt(8) : 7;
    for (int axis = 0; axis < 3; axis++) {
      if ((axes & 1 << axis) != 0) {
        int decimals = random.nextInt(8) == 0 ? random.nextInt(6) : 3;
        double value = random.nextGaussian() * (random.nextInt(9) == 0 ? 900 : 9);
        String number = String.format(Locale.ROOT, "%." + decimals + "f", value);
        block.append((char) ('X' + axis)).append(number);
        block.append(decimals == 0 ? "." : "").append(style == 2 ? " " : "");
      }
    }
    if (random.nextInt(15) == 0) {
      block.append('F').append(100 + random.nextInt(900)).append(random.nextBoolean() ? "." : "");
    }
    return block.toString();
  }

  private static String program(Random random, int odds) {
    StringBuilder text = new StringBuilder(HEADS[random.nextInt(HEADS.length)]);
    int style = random.nextInt(3);
    int count = random.nextInt(60);
    for (int i = 0; i < count; i++) {
      boolean odd = odds > 0 && random.nextInt(odds) == 0;
      text.append(odd ? ODD[random.nextInt(ODD.length)] : plain(random, style)).append('\n');
    }
    text.append(TAILS[random.nextInt(TAILS.length)]);
    int ends = random.nextInt(6);
    String done = text.toString();
    return ends == 0 ? done.replace("\n", "\r\n") : ends == 1 ? done.replace('\n', '\r') : done;
  }

  private static void compare(String text, SetupSheet sheet) {
    SourceText source = SourceText.of("run.nc", text.getBytes(StandardCharsets.ISO_8859_1));
    ProgramRun ordinary = new ProgramRun(source, sheet, List.of(), Optional.empty(), false, false);
    ordinary.advance(Integer.MAX_VALUE);
    InterpreterRun run = Interpreter.start(source, sheet, List.of());
    int blocks = 1 + text.length() % 7;
    while (run.advance(blocks)) {
      assertThat(run.progress()).isBetween(0.0, 1.0);
      blocks += 3;
    }
    assertSame(text, ordinary.result(), run.result().orElseThrow());
  }

  static void assertSame(String text, Interpretation slow, Interpretation fast) {
    assertThat(fast.findings()).as(text).isEqualTo(slow.findings());
    assertThat(fast.assumptions()).as(text).isEqualTo(slow.assumptions());
    assertThat(fast.stoppedAt()).as(text).isEqualTo(slow.stoppedAt());
    assertThat(fast.complete()).as(text).isEqualTo(slow.complete());
    assertThat(fast.blocks()).as(text).isEqualTo(slow.blocks());
    assertThat(fast.unit()).as(text).isEqualTo(slow.unit());
    assertThat(rows(fast.tape())).as(text).isEqualTo(rows(slow.tape()));
    assertThat(fast.tape().states()).as(text).isEqualTo(slow.tape().states());
  }

  /** Every number of a tape to the last bit. */
  private static String rows(Tape tape) {
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < tape.size(); i++) {
      rows.append(tape.kind(i)).append(' ').append(tape.line(i)).append(' ').append(tape.block(i));
      rows.append(' ').append(tape.stateIndex(i));
      for (double value : new double[] {tape.toX(i), tape.toY(i), tape.toZ(i)}) {
        rows.append(' ').append(Double.doubleToRawLongBits(value));
      }
      if (tape.kind(i) == MoveKind.ARC) {
        rows.append(' ').append(tape.centreU(i)).append(' ').append(tape.sweep(i));
      }
      rows.append(' ').append(tape.programmedTo(i)).append('\n');
    }
    return rows.toString();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 2, 5, 20, 60})
  void a_program_gives_the_same_moves_and_findings_either_way(int odds) {
    Random random = new Random(odds);
    for (int round = 0; round < 600; round++) {
      compare(program(random, odds), SHEETS[random.nextInt(SHEETS.length)]);
    }
  }

  @Test
  void every_odd_block_within_a_run_is_left_to_the_ordinary_way() {
    Random random = new Random(1);
    for (String odd : ODD) {
      for (String head : HEADS) {
        for (String before : new String[] {"X1. Y2. Z-3.;X2. Y3.;", "X1.5;Y-2.5F300.;"}) {
          String after = plain(random, 0) + "\n" + plain(random, 2) + "\n";
          String tail = TAILS[random.nextInt(TAILS.length)];
          compare(head + before.replace(';', '\n') + odd + "\n" + after + tail, SHEETS[0]);
        }
      }
    }
  }

  @Test
  void every_line_end_and_cut_gives_the_same() {
    String text = HEADS[0] + "X1.5Y2.25Z-3.125\nX1.Y2.Z3.F500.\nG0X1.\nG1Y5.\nN9X2.\n";
    for (int length = 0; length <= text.length(); length++) {
      String cut = text.substring(0, length);
      compare(cut, SHEETS[0]);
      compare(cut.replace("\n", "\r\n"), SHEETS[0]);
      compare(cut.replace('\n', '\r'), SHEETS[0]);
      compare(cut + "\u001a", SHEETS[0]);
    }
  }

  @Test
  void findings_beyond_the_limit_of_a_code_are_counted_alike() {
    Random random = new Random(2);
    StringBuilder text = new StringBuilder(HEADS[0]);
    for (int i = 0; i < 400; i++) {
      text.append(String.format(Locale.ROOT, "X%.4fY%.5f\n", random.nextDouble() * 9, i * 0.12345));
      text.append(random.nextInt(9) == 0 ? "X5\n" : "");
    }
    compare(text + TAILS[0], SHEETS[0]);
  }

  @Test
  void a_line_longer_than_usual_is_told_of() {
    for (int blanks = 230; blanks < 270; blanks++) {
      compare(HEADS[0] + "X1. Y2.\nX3." + " ".repeat(blanks) + "Y4.\nX5.\n" + TAILS[0], SHEETS[0]);
    }
  }
}
