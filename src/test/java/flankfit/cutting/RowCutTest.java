package flankfit.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.sweep.HelicalGroove;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.RegularThread;
import flankfit.unit.Angles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Chip and force of one row against worked examples: M16 x 2 with a 12 mm mill in a 14 mm bore and
 * M20 x 1.5 with a 14 mm mill in 18.5 mm, computed apart with a dense grid, good to half a percent.
 */
class RowCutTest {
  private static final double HALF = Math.PI / 6;
  private static final double EXAMPLE = 0.005;

  static RowCut m16(boolean climb) {
    EdgeLine edge = EdgeLine.straight(6, 0.25, HALF, 1);
    return new RowCut(true, climb, 2, 2 / Angles.TURN, edge, 0.03, 4);
  }

  static RowCut m20(boolean climb) {
    EdgeLine edge = EdgeLine.straight(7, 0.1875, HALF, 0.75);
    return new RowCut(true, climb, 3, 1.5 / Angles.TURN, edge, 0.05, 4);
  }

  private static final ForceLaw STEEL = ForceLaw.ofChip(2500, 0.25, 0.5);
  private static final ForceLaw IRON = ForceLaw.ofChip(1190, 0.25, 0.4);

  @Test
  void volume_of_a_tooth_is_that_of_the_thread_it_leaves() {
    double m16 = m16(true).force(Metal.plain(7), STEEL).volume();
    double m20 = m20(true).force(Metal.plain(9.25), IRON).volume();
    assertThat(m16).isCloseTo(0.09886, within(5e-6));
    assertThat(m20).isCloseTo(0.07670, within(5e-6));
    assertThat(m16).isCloseTo(ofSurface(6, 0.25, 2, 2, 7, 0.03), within(2e-5));
    assertThat(m20).isCloseTo(ofSurface(7, 0.1875, 3, 1.5, 9.25, 0.05), within(2e-5));
  }

  /** f/e times the integral of half the difference of squares over one pitch. */
  private static double ofSurface(
      double radius, double crest, double e, double pitch, double bore, double feed) {
    HelicalGroove groove =
        new HelicalGroove(PolylineTooth.straight(radius, crest, HALF), true, e, pitch);
    RegularThread thread = new RegularThread(groove, pitch, bore);
    int steps = 2000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double rho = thread.surface((i + 0.5) / steps * pitch - pitch / 2);
      sum += (rho * rho - bore * bore) / 2 * pitch / steps;
    }
    return feed / e * sum;
  }

  @Test
  void without_the_rise_of_the_helix_the_volume_is_smaller() {
    RowCut flat = new RowCut(true, true, 2, 0, EdgeLine.straight(6, 0.25, HALF, 1), 0.03, 4);
    assertThat(flat.force(Metal.plain(7), STEEL).volume()).isCloseTo(0.0916, within(1e-4));
  }

  @ParameterizedTest(name = "{0} climb {1}")
  @CsvSource({
    "m16,true,86.3,65.1",
    "m16,false,86.3,-23.7",
    "m20,true,25.6,16.1",
    "m20,false,25.6,-5.0"
  })
  void mean_forces_are_those_of_the_examples(
      String name, boolean climb, double cutting, double away) {
    boolean first = name.equals("m16");
    RowCut cut = first ? m16(climb) : m20(climb);
    RowForce force = cut.force(Metal.plain(first ? 7 : 9.25), first ? STEEL : IRON);
    assertThat(force.cutting()).isCloseTo(cutting, within(EXAMPLE * cutting));
    assertThat(force.away()).isCloseTo(away, within(EXAMPLE * cutting));
  }

  @Test
  void peak_of_one_tooth_is_that_of_the_example() {
    assertThat(m16(true).peak(Metal.plain(7), STEEL)).isCloseTo(147, within(2.0));
  }

  @Test
  void a_left_hand_rise_feels_the_same() {
    RowCut up = m16(true);
    RowCut down = new RowCut(true, true, 2, -up.risePerRadian(), up.edge(), up.feedPerTooth(), 4);
    RowForce a = up.force(Metal.plain(7), STEEL);
    RowForce b = down.force(Metal.plain(7), STEEL);
    assertThat(b.away()).isCloseTo(a.away(), within(1e-9));
    assertThat(b.volume()).isCloseTo(a.volume(), within(1e-12));
  }

  @Test
  void a_boss_gives_less_engagement_than_a_hole_of_its_size() {
    EdgeLine edge = EdgeLine.straight(10, 0.375, HALF, 0.75);
    RowCut outside = new RowCut(false, true, 19.2, 1.5 / Angles.TURN, edge, 0.05, 4);
    RowForce force = outside.force(Metal.plain(10), STEEL);
    assertThat(force.volume()).isPositive();
    assertThat(force.angle()).isLessThan(0.5);
    assertThat(force.away()).isPositive();
  }
}
