package flankfit.check;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The same motion is found fault with in the same places however it is written: with another
 * origin, in inches, in distances.
 */
class RulesProperties {
  private static final int MOVES = 40;
  private static final int PROGRAMS = 12;

  /** One block: where to, whether at rapid, and what to do with the spindle before. */
  private record Step(double x, double y, double z, boolean rapid, String spindle) {}

  private static List<Step> steps(Random random) {
    List<Step> steps = new ArrayList<>();
    double[] at = {0, 0, 90};
    for (int i = 0; i < MOVES; i++) {
      if (random.nextInt(3) > 0) {
        at[0] = thousandths(-25 + 110 * random.nextDouble());
        at[1] = thousandths(-25 + 90 * random.nextDouble());
      }
      if (random.nextInt(3) > 0) {
        at[2] = thousandths(-24 + 40 * random.nextDouble() * random.nextDouble());
      }
      String spindle = random.nextInt(8) == 0 ? List.of("M3", "M4", "M5").get(i % 3) : "";
      steps.add(new Step(at[0], at[1], at[2], random.nextBoolean(), spindle));
    }
    return steps;
  }

  private static double thousandths(double value) {
    return Math.rint(value * 1000) / 1000;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.9f", value);
  }

  /** The program in a unit, in coordinates or distances. */
  private static String program(List<Step> steps, LengthUnit unit, boolean distances) {
    StringBuilder out = new StringBuilder();
    out.append(unit == LengthUnit.INCH ? "G20" : "G21")
        .append(" G17 G40 G94 G54\nT1 M6\nS900 M3\n");
    out.append(distances ? "G91" : "G90").append(" F").append(number(unit.fromMillimetres(300)));
    out.append("\n");
    double[] before = {0, 0, 100};
    for (Step step : steps) {
      double[] to = {step.x(), step.y(), step.z()};
      out.append(step.rapid() ? "G0" : "G1");
      for (int axis = 0; axis < 3; axis++) {
        double value = distances ? to[axis] - before[axis] : to[axis];
        out.append(" ").append("XYZ".charAt(axis)).append(number(unit.fromMillimetres(value)));
      }
      out.append("\n").append(step.spindle()).append("\n");
      before = to;
    }
    return out.append("G90\nM30\n").toString();
  }

  /** The sheet with everything moved by a vector (mm). */
  private static String sheet(double dx, double dy, double dz) {
    return """
    [control]
    start = [%s, %s, %s]
    [work-offsets]
    G54 = [%s, %s, %s]
    [stock]
    shape = "block"
    size = [60.0, 40.0, 20.0]
    zero = [%s, %s, %s]
    [[keep-out]]
    name = "jaw"
    min = [%s, %s, %s]
    max = [%s, %s, %s]
    [[hole]]
    name = "port"
    at = [%s, %s]
    top = %s
    diameter = 24.0
    depth = 15.0
    [[tool]]
    number = 1
    kind = "end mill"
    diameter = 10.0
    """
        .formatted(
            dx, dy, 100 + dz, dx, dy, dz, -dx, -dy, 20 - dz, dx, 40 + dy, dz - 20, 60 + dx, 50 + dy,
            dz - 3, 30 + dx, 20 + dy, dz);
  }

  private static List<String> found(String program, String sheet) {
    return Checked.of(program, sheet).findings().stream()
        .map(f -> f.code() + " " + f.severity() + " " + f.place().line())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void place_unit_and_distance_mode_change_nothing(long seed) {
    Random random = new Random(seed);
    int faults = 0;
    for (int i = 0; i < PROGRAMS; i++) {
      List<Step> steps = steps(random);
      String plain = program(steps, LengthUnit.MILLIMETRE, false);
      List<String> expected = found(plain, sheet(0, 0, 0));
      faults += expected.size();
      assertThat(found(plain, sheet(12.5, -37.25, 8.125))).as(plain).isEqualTo(expected);
      assertThat(found(program(steps, LengthUnit.INCH, false), sheet(0, 0, 0)))
          .as(plain)
          .isEqualTo(expected);
      assertThat(found(program(steps, LengthUnit.MILLIMETRE, true), sheet(0, 0, 0)))
          .as(plain)
          .isEqualTo(expected);
    }
    assertThat(faults).isGreaterThan(PROGRAMS);
  }
}
