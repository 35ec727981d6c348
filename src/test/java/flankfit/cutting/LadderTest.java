package flankfit.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.sweep.Flank;
import flankfit.sweep.HelicalGroove;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Tooth;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The ladder of an M16 x 2 with a 12 mm mill, e 2.000 in every pass, tip stiffness 15818.4 N/mm for
 * all rows: figures computed apart, mean-force model, good to half a percent of the force.
 */
class LadderTest {
  private static final double K = 15818.4;
  private static final double E = 2;
  private static final Tooth TOOTH = PolylineTooth.straight(6, 0.25, Math.PI / 6);
  private static final ForceLaw STEEL = ForceLaw.ofChip(2500, 0.25, 0.5);

  /** The metal that the deepest earlier pass left. */
  private static final Stock STOCK =
      new Stock() {
        @Override
        public Metal before(int step, int row, double[][] cutShort) {
          return step == 0 ? Metal.plain(7) : after(E - deepest(step, row, cutShort));
        }

        @Override
        public double standing(int step, int row, double[][] cutShort) {
          return step == 0 ? Double.POSITIVE_INFINITY : deepest(step, row, cutShort);
        }
      };

  private static double deepest(int step, int row, double[][] cutShort) {
    return Stream.of(Arrays.copyOf(cutShort, step)).mapToDouble(y -> y[row]).min().orElseThrow();
  }

  private static Metal after(double e) {
    HelicalGroove groove = new HelicalGroove(TOOTH, true, e, 2);
    int n = 60;
    double[] rho = new double[n + 1];
    double[] width = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      rho[i] = groove.bottom() + (7 - groove.bottom()) * i / n;
      width[i] = groove.halfWidth(rho[i], Flank.UP);
    }
    return new GrooveMetal(7, 2, rho, width, width);
  }

  private static double pitchDiameter(double cutShort) {
    RegularThread thread =
        new RegularThread(new HelicalGroove(TOOTH, true, E - cutShort, 2), 2, 6.5);
    return 2 * thread.radiusOfWidth(1);
  }

  private static List<Rung> climb(int rows, boolean climb, int passes, ForceLaw law) {
    double[][] compliance = new double[rows][rows];
    for (double[] row : compliance) {
      Arrays.fill(row, 1 / K);
    }
    Step step = new Step(RowCutTest.m16(climb), compliance);
    return Ladder.climb(Stream.generate(() -> step).limit(passes).toList(), STOCK, law);
  }

  @ParameterizedTest(name = "{0} rows, climb {1}, pass {2}")
  @CsvSource({
    "1, true, 1, 4.10, 64.8, 14.8050",
    "1, true, 2, 0.02, 0.4, 14.8128",
    "6, true, 1, 23.9, 378, 14.7668",
    "6, true, 2, 0.74, 11.7, 14.8114",
    "6, true, 3, 0.03, 0.4, 14.8128",
    "6, false, 1, -9.2, -145, 14.8305",
    "12, true, 1, 46.4, 734, 14.7235",
    "12, true, 2, 2.8, 44, 14.8075"
  })
  void rungs_are_those_of_the_worked_example(
      int rows, boolean climb, int pass, double micrometres, double force, double diameter) {
    Rung rung = climb(rows, climb, pass, STEEL).get(pass - 1);
    assertThat(rung.settled()).isTrue();
    double y = rung.meanCutShort();
    assertThat(1000 * y).isCloseTo(micrometres, within(0.01 * Math.abs(micrometres) + 0.03));
    assertThat(rung.total().away()).isCloseTo(force, within(0.01 * Math.abs(force) + 0.3));
    assertThat(pitchDiameter(y))
        .isCloseTo(diameter, within(1.01e-4 + 0.02e-3 * Math.abs(micrometres)));
  }

  @Test
  void a_spring_pass_cannot_bring_metal_back() {
    Rung second = climb(6, false, 2, STEEL).get(1);
    assertThat(second.total().away()).isCloseTo(0, within(1e-3));
    assertThat(second.meanCutShort()).isCloseTo(0, within(1e-6));
  }

  @Test
  void passes_follow_the_copying_of_errors() {
    List<Rung> rungs = climb(6, true, 3, STEEL);
    double first = rungs.get(0).meanCutShort();
    double second = rungs.get(1).meanCutShort();
    CopyingLaw law = new CopyingLaw(rungs.get(1).total().away() / (first - second), K, 0);
    assertThat(law.left(first, 1)).isCloseTo(second, within(1e-6));
    assertThat(rungs.get(2).meanCutShort()).isLessThan(1.5 * law.left(first, 2));
  }

  @Test
  void edge_force_and_least_chip_leave_more() {
    ForceLaw edged = new ForceLaw(2500, 0.25, 0.5, 40, 0.002);
    double kind = climb(6, true, 3, STEEL).get(2).meanCutShort();
    List<Rung> practice = climb(6, true, 4, edged);
    assertThat(practice.get(2).meanCutShort()).isBetween(kind + 0.0002, 0.01);
    // The fourth pass meets so little that its edge only rubs: it leaves what it found.
    assertThat(practice.get(3).rubs()).containsOnly(true);
    assertThat(practice.get(3).meanCutShort()).isEqualTo(practice.get(2).meanCutShort());
  }

  @Test
  void a_comb_bends_most_at_its_tip_and_leaves_a_taper() {
    Cantilever mill =
        new Cantilever(
            List.of(new Cantilever.Section(9.5, 30), new Cantilever.Section(12, 42)), 600_000, 0);
    double[][] compliance = new double[6][6];
    for (int k = 0; k < 6; k++) {
      for (int j = 0; j < 6; j++) {
        compliance[k][j] = mill.compliance(1 + 2 * k, 1 + 2 * j);
      }
    }
    Rung rung =
        Ladder.climb(List.of(new Step(RowCutTest.m16(true), compliance)), STOCK, STEEL).get(0);
    assertThat(rung.cutShort().get(0)).isGreaterThan(1.5 * rung.cutShort().get(5));
    // About 3.8 times 2.1 micrometres over 12 mm for each 100 N.
    assertThat(rung.cutShort().get(0) - rung.cutShort().get(5)).isBetween(0.004, 0.009);
  }
}
