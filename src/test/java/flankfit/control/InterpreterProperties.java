package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws that hold between two ways of writing one program. */
class InterpreterProperties {
  private static final double EXACT = 1e-9;

  /** Half circles by a rounded centre agree no better than that rounding. */
  private static final double ARC = 1e-6;

  private static final String HEAD = "G17 G90 G54 S1000 M3 F200.\n";

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 15);
  }

  /** One step: motion function 0 to 3, end, and for arcs the centre offset. */
  private record Step(int motion, int x, int y, int z, int centre) {
    int end(int axis) {
      return axis == 0 ? x : axis == 1 ? y : z;
    }
  }

  /** Coordinates are whole counts of 0.001; arcs are multiples of a quarter. */
  private static List<Step> steps(long seed) {
    Random random = new Random(seed);
    List<Step> steps = new ArrayList<>();
    int[] at = {0, 0, 0};
    for (int i = 0; i < 40; i++) {
      int motion = random.nextInt(4);
      int[] end = {at[0], at[1], at[2]};
      int centre = 0;
      if (motion < 2) {
        for (int axis = 0; axis < 3; axis++) {
          end[axis] = random.nextInt(80_000) - 40_000;
        }
      } else {
        int r = 1 + random.nextInt(9_000);
        centre = r;
        int turn = random.nextInt(3);
        end[0] = at[0] + (turn == 0 ? 2 * r : turn == 1 ? r : 0);
        end[1] = at[1] + (turn == 1 ? r : 0);
        end[2] = at[2] + random.nextInt(2_000) - 1_000;
      }
      steps.add(new Step(motion, end[0], end[1], end[2], centre));
      at = end;
    }
    return steps;
  }

  private static String number(long counts, int decimals) {
    String plain = BigDecimal.valueOf(counts, decimals).toPlainString();
    return plain.contains(".") ? plain : plain + ".";
  }

  private static String absolute(List<Step> steps, String head) {
    StringBuilder text = new StringBuilder(head);
    for (Step s : steps) {
      text.append("G").append(s.motion());
      for (int axis = 0; axis < 3; axis++) {
        text.append(" ").append((char) ('X' + axis)).append(number(s.end(axis), 3));
      }
      centre(text, s, 3, 1);
    }
    return text.append("M30\n").toString();
  }

  private static void centre(StringBuilder text, Step s, int decimals, int factor) {
    if (s.motion() >= 2) {
      text.append(" I").append(number((long) s.centre() * factor, decimals));
      text.append(" J0");
    }
    text.append("\n");
  }

  private static String incremental(List<Step> steps) {
    StringBuilder text = new StringBuilder("G21 " + HEAD + "G0 X0 Y0 Z0\nG91\n");
    int[] at = {0, 0, 0};
    for (Step s : steps) {
      text.append("G").append(s.motion());
      for (int axis = 0; axis < 3; axis++) {
        long step = (long) s.end(axis) - at[axis];
        text.append(" ").append((char) ('X' + axis)).append(number(step, 3));
      }
      centre(text, s, 3, 1);
      at = new int[] {s.x(), s.y(), s.z()};
    }
    return text.append("G90\nM30\n").toString();
  }

  private static Tape tape(String text) {
    return tape(text, SetupSheet.empty());
  }

  private static Tape tape(String text, SetupSheet sheet) {
    Interpretation result =
        Interpreter.interpret(
            SourceText.of("law.nc", text.getBytes(StandardCharsets.UTF_8)), sheet);
    assertThat(result.complete()).as("%s\n%s", result.stoppedAt(), text).isTrue();
    return result.tape();
  }

  private static void same(Tape a, Tape b, Point shift, double tolerance) {
    assertThat(b.size()).isEqualTo(a.size());
    for (int i = 0; i < a.size(); i++) {
      assertThat(b.kind(i)).isEqualTo(a.kind(i));
      assertThat(b.toX(i)).isCloseTo(a.toX(i) + shift.x(), within(tolerance));
      assertThat(b.toY(i)).isCloseTo(a.toY(i) + shift.y(), within(tolerance));
      assertThat(b.toZ(i)).isCloseTo(a.toZ(i) + shift.z(), within(tolerance));
      if (a.kind(i) == MoveKind.ARC) {
        assertThat(b.centreU(i)).isCloseTo(a.centreU(i) + shift.x(), within(tolerance));
        assertThat(b.centreV(i)).isCloseTo(a.centreV(i) + shift.y(), within(tolerance));
        assertThat(b.sweep(i) * a.radius(i)).isCloseTo(a.sweep(i) * a.radius(i), within(ARC));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void absolute_and_incremental_writing_give_one_path(long seed) {
    List<Step> steps = steps(seed);
    Tape absolute = tape(absolute(steps, "G21 " + HEAD + "G0 X0 Y0 Z0\n"));
    same(absolute, tape(incremental(steps)), Point.ZERO, EXACT);
  }

  /** 0.001 inch is 0.0254 mm: the same counts, times 254, with one decimal more. */
  @ParameterizedTest
  @MethodSource("seeds")
  void inch_and_metric_writing_give_one_path(long seed) {
    List<Step> steps = steps(seed);
    StringBuilder metric = new StringBuilder("G21 " + HEAD + "G0 X0 Y0 Z0\n");
    for (Step s : steps) {
      metric.append("G").append(s.motion());
      for (int axis = 0; axis < 3; axis++) {
        long counts = s.end(axis) * 254L;
        metric.append(" ").append((char) ('X' + axis)).append(number(counts, 4));
      }
      centre(metric, s, 4, 254);
    }
    Tape inch = tape(absolute(steps, "G20 " + HEAD + "G0 X0 Y0 Z0\n"));
    same(tape(metric.append("M30\n").toString()), inch, Point.ZERO, EXACT);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void work_offset_moves_the_whole_path(long seed) {
    Random random = new Random(seed);
    Point shift =
        new Point(random.nextInt(100), random.nextInt(100) / 8.0, random.nextInt(100) / 16.0);
    String text = absolute(steps(seed), "G21 " + HEAD + "G0 X0 Y0 Z0\n");
    String sheet =
        String.format(Locale.ROOT, "G54 = [%f, %f, %f]", shift.x(), shift.y(), shift.z());
    same(tape(text), tape(text, ExampleSheet.of(sheet)), shift, EXACT);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void local_shift_moves_the_whole_path(long seed) {
    Random random = new Random(seed);
    int x = random.nextInt(100);
    int y = random.nextInt(100);
    String text = absolute(steps(seed), "G21 " + HEAD + "G0 X0 Y0 Z0\n");
    String shifted = text.replace("G54", "G54\nG52 X" + x + " Y" + y + ".\nG94");
    same(tape(text), tape(shifted), new Point(x, y, 0), EXACT);
  }

  /** Quarters to three quarters about a random centre, by centre and by radius. */
  @ParameterizedTest
  @MethodSource("seeds")
  void centre_and_radius_writing_give_one_arc(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 20; i++) {
      double r = 1 + random.nextInt(50);
      double degrees = 20 + random.nextInt(120) + (random.nextBoolean() ? 180 : 0);
      boolean ccw = random.nextBoolean();
      double angle = Math.toRadians(degrees) * (ccw ? 1 : -1);
      double endX = r * Math.cos(angle);
      double endY = r * Math.sin(angle);
      String start = "G21 " + HEAD + String.format(Locale.ROOT, "G0 X%.9f Y0 Z0\n", r);
      String arc = String.format(Locale.ROOT, "G%d X%.9f Y%.9f", ccw ? 3 : 2, endX, endY);
      double sign = degrees > 180 ? -1 : 1;
      Tape byCentre = tape(start + arc + String.format(Locale.ROOT, " I%.9f\nM30\n", -r));
      Tape byRadius = tape(start + arc + String.format(Locale.ROOT, " R%.9f\nM30\n", sign * r));
      assertThat(byRadius.sweep(1)).isCloseTo(byCentre.sweep(1), within(1e-6));
      assertThat(byRadius.centreU(1)).isCloseTo(0, within(ARC));
      assertThat(byRadius.centreV(1)).isCloseTo(0, within(ARC));
      assertThat(byRadius.toX(1)).isEqualTo(byCentre.toX(1));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void path_is_continuous_and_turns_stay_on_their_circle(long seed) {
    Tape tape = tape(absolute(steps(seed), "G21 " + HEAD + "G0 X0 Y0 Z0\n"));
    double[] p = new double[3];
    for (int i = 0; i < tape.size(); i++) {
      tape.pointAt(i, 0.9999999999, p);
      assertThat(tape.to(i).distance(new Point(p[0], p[1], p[2]))).isLessThan(ARC);
    }
  }
}
