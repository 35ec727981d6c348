package flankfit.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A rapid into stock against a witness that samples the tool's disc: what is told is there, and
 * what is wider than a few cells is told.
 */
class CutPlanProperties {
  private static final int PROGRAMS = 60;
  private static final double RADIUS = 4;

  /** Cells of the 60 x 40 stock are 0.163 mm wide; metal that deep inside the disc must be seen. */
  private static final double SEEN = 0.5;

  private static final String SHEET =
      """
      [stock]
      shape = "block"
      size = [60.0, 40.0, 20.0]
      zero = [0.0, 0.0, 20.0]
      [[hole]]
      name = "port"
      at = [30.0, 20.0]
      diameter = 9.0
      depth = 15.0
      [[tool]]
      number = 1
      kind = "end mill"
      diameter = 8.0
      [offsets]
      H1 = { geometry = 80.0 }
      """;

  /** A straight cut at a depth. */
  private record Cut(double x0, double y0, double x1, double y1, double z) {
    double distance(double x, double y) {
      double wayX = x1 - x0;
      double wayY = y1 - y0;
      double along = ((x - x0) * wayX + (y - y0) * wayY) / (wayX * wayX + wayY * wayY);
      double share = Math.max(0, Math.min(1, along));
      return Math.hypot(x0 + share * wayX - x, y0 + share * wayY - y);
    }
  }

  /** How far inside the metal left at a height the best point of the tool's disc lies (mm). */
  private static double inMetal(List<Cut> cuts, double x, double y, double z) {
    double most = Double.NEGATIVE_INFINITY;
    for (int ring = 0; ring <= 40; ring++) {
      for (int spoke = 0; spoke < 90; spoke++) {
        double r = RADIUS * ring / 40;
        double px = x + r * Math.cos(spoke * Math.PI / 45);
        double py = y + r * Math.sin(spoke * Math.PI / 45);
        double inside = Math.min(Math.min(px, 60 - px), Math.min(py, 40 - py));
        inside = Math.min(inside, Math.hypot(px - 30, py - 20) - 4.5);
        inside = Math.min(inside, RADIUS - r);
        for (Cut cut : cuts) {
          if (cut.z() <= z) {
            inside = Math.min(inside, cut.distance(px, py) - RADIUS);
          }
        }
        most = Math.max(most, inside);
      }
    }
    return most;
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13})
  void what_is_told_is_metal_and_wide_metal_is_told(long seed) {
    Random random = new Random(seed);
    int told = 0;
    int untold = 0;
    for (int i = 0; i < PROGRAMS; i++) {
      List<Cut> cuts = new ArrayList<>();
      StringBuilder program =
          new StringBuilder("G21 G90 G17 G54\nT1 M6\nS3000 M3 F300.\nG0 X-90. Y-90.\nG43 H1 Z9.\n");
      int slots = random.nextInt(14);
      for (int k = 0; k < slots; k++) {
        Cut cut =
            new Cut(
                random.nextInt(70) - 5,
                random.nextInt(50) - 5,
                random.nextInt(70) - 5,
                random.nextInt(50) - 5.5,
                -1 - random.nextInt(6));
        cuts.add(cut);
        program.append(
            line(
                "G0 X%s Y%s\nG1 Z%s\nX%s Y%s\nG0 Z9.\n",
                cut.x0(), cut.y0(), cut.z(), cut.x1(), cut.y1()));
      }
      double x = random.nextInt(70) - 5;
      double y = random.nextInt(50) - 5;
      double z = -1 - random.nextInt(6);
      program.append(line("G0 X%s Y%s\nZ%s\nZ9.\nM30\n", x, y, z));
      List<String> codes = Checked.of(program.toString(), SHEET).codes();
      double inside = inMetal(cuts, x, y, z);
      boolean found = codes.stream().anyMatch(code -> code.startsWith("HZ01"));
      told += found ? 1 : 0;
      untold += found ? 0 : 1;
      if (found) {
        assertThat(inside).as("%s", program).isGreaterThan(-0.15);
      } else {
        assertThat(inside).as("%s", program).isLessThan(SEEN);
      }
    }
    assertThat(told).isGreaterThan(5);
    assertThat(untold).isGreaterThan(5);
  }

  private static String line(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
