package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Passes of a loop run at one go, stopped anywhere, against the same blocks one after the other.
 */
class LoopRunProperties {
  private static final String HEAD =
      "O10\nG21 G17 G90 G94 G54 G40 G49 G80\nS900 M3\nG0 X0. Y0. Z5.\nG1 Z1. F200.\n";

  private static final String[] BEFORE = {
    "",
    "",
    "",
    "G91\n",
    "G20 F9.\n",
    "G68 X0 Y0 R30.\n",
    "G52 X1.5 Y-2.\n",
    "G42 D1 X1. Y1.\n",
    "G0\n",
    "G2 X1. Y1. R5.\n",
    "G66 P50 A1.\n",
    "G93\n",
    "#5=[1/8]\n",
    "G51 X0 Y0 Z0 P2.\n"
  };

  private static final String[] BODY = {
    "X[#1*0.25] Y[#1*0.5]",
    "Y[#2-#1] X#1",
    "X[#1*#1/7.] Z[0-#1*0.01]",
    "Z[COS[#1*3.]]",
    "X[SQRT[4.-#1]]",
    "X[ROUND[#1*1.37]] Y[FIX[#1/2]]",
    "X[1./[#1-4.]]",
    "X[#1*9000.]",
    "X#7",
    "X[#7+1.]",
    "Y#[1]",
    "X[#5001+0.5]",
    "X[ASIN[#1/5.]]",
    "X[#1 MOD 3.] Y[#1 MOD [#1-3.]]",
    "X[#1 AND 3.] Y[[#1/2.] OR 1.]",
    "X[[#1 EQ 3.]*5.+#1] Y[#1 NE 2.]",
    "X#1 X#2",
    "X#1 F[100.+#1]",
    "X#1 Y2.5",
    "N77 X[#1+0.123]",
    "/X[#1*3.]",
    "G0 X#1",
    "G1 X[#1] Y[#1*#1]",
    "#2=#1*3.",
    "#2=#2+#1",
    "#7=#1/2.",
    "#[#1]=5.",
    "#120=#120+1.",
    "#120=#1",
    "#3=#1 #4=#3",
    "#3=[#1-5.]/[#1-5.]",
    "#0=5.",
    "#200=5.",
    "IF [#1 EQ 4] THEN #2=8.",
    "IF [#1 GT 5] GOTO 900",
    "(only words)",
    "X5. Y#1",
    "X[#1.",
    "M98 P50",
    "G65 P50 A#1",
    "G4 P0.5",
    "X-#1 Y[-#1+2.]"
  };

  private static final String[] CONDITIONS = {
    "#1 LT 9",
    "#1 LE 8",
    "9 GT #1",
    "#1 NE 7",
    "#7 NE #0",
    "#1 LT #7",
    "#1/[#1-6.] LT 9",
    "#1 LT 2000"
  };

  private static final String LIMITS = "loop-limit = 2500, block-limit = 9000";

  private static final String[] SHEETS = {
    LIMITS,
    LIMITS,
    "loop-limit = 5, block-limit = 9000",
    "block-limit = 37",
    LIMITS + ", move-limit = 12",
    LIMITS + ", input-rounding = least-increment",
    LIMITS + ", block-delete = true",
    LIMITS + ", D1 = { geometry = 0.5 }, G54 = [1.5, -2.25, 10.125]",
    LIMITS + ", least-increment-mm = 0.01"
  };

  private static String loop(Random random, int number, boolean nest) {
    StringBuilder text = new StringBuilder();
    String count = number == 1 ? "#1" : "#" + (10 + number);
    String condition =
        number == 1 ? CONDITIONS[random.nextInt(CONDITIONS.length)] : count + " LT 3";
    text.append(count).append("=0\n");
    text.append("WHILE [").append(condition).append("] DO").append(number).append('\n');
    int blocks = 1 + random.nextInt(4);
    for (int i = 0; i < blocks; i++) {
      int odds = random.nextInt(3) == 0 ? BODY.length : 6;
      text.append(BODY[random.nextInt(odds)]).append('\n');
    }
    if (nest) {
      text.append(loop(random, number + 1, random.nextInt(3) == 0 && number < 2));
    }
    text.append(count).append('=').append(count).append("+1\nEND").append(number).append('\n');
    return text.toString();
  }

  private static String program(Random random) {
    return HEAD
        + BEFORE[random.nextInt(BEFORE.length)]
        + loop(random, 1, random.nextInt(4) == 0)
        + (random.nextInt(3) == 0 ? loop(random, 1, false) : "")
        + "N900 G0 Z9.\nM30\nO50\n"
        + (random.nextBoolean() ? loop(random, 1, false) : "X[#1+1.]\n")
        + "M99\n";
  }

  private static void compare(String text, SetupSheet sheet) {
    SourceText source = SourceText.of("loop.nc", text.getBytes(StandardCharsets.US_ASCII));
    ProgramRun ordinary = new ProgramRun(source, sheet, List.of(), Optional.empty(), false, false);
    ordinary.advanceToEnd();
    InterpreterRun run = Interpreter.start(source, sheet, List.of());
    int blocks = 1 + text.length() % 7;
    while (run.advance(blocks)) {
      blocks += 3;
    }
    PlainRunProperties.assertSame(text, ordinary.result(), run.result().orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void run_alike_at_one_go_and_block_by_block(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 250; i++) {
      String text = program(random);
      compare(text, ExampleSheet.of(SHEETS[random.nextInt(SHEETS.length)]));
    }
  }

  @Test
  void every_kind_of_block_alone_with_every_condition() {
    for (String body : BODY) {
      for (String condition : CONDITIONS) {
        String loop = "#1=0\nWHILE [" + condition + "] DO1\n" + body + "\n#1=#1+1\nEND1\n";
        compare(HEAD + "#2=1.\n" + loop + "N900 M30\nO50\nM99\n", ExampleSheet.of(LIMITS));
      }
    }
  }

  @Test
  void a_loop_of_points_and_assignments_is_run_at_one_go() {
    String text = HEAD + "#1=0\nWHILE [#1 LT 50] DO1\nX#1\n#1=#1+1\nEND1\nM30\n";
    SourceText source = SourceText.of("loop.nc", text.getBytes(StandardCharsets.US_ASCII));
    ProgramRun run =
        new ProgramRun(source, SetupSheet.empty(), List.of(), Optional.empty(), false, true);
    run.advance(16);
    assertThat(run.blocks()).as("as many as asked for").isBetween(15, 16);
    ProgramRun whole =
        new ProgramRun(source, SetupSheet.empty(), List.of(), Optional.empty(), false, true);
    whole.advanceToEnd();
    assertThat(whole.result().tape().size()).isEqualTo(2 + 49);
  }
}
