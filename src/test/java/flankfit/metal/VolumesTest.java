package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.setup.Hole;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/**
 * Volumes against closed forms of solid geometry: prism, cylinder, cone, ball, and Pappus' theorem
 * for bodies of revolution (derived here; no table).
 */
class VolumesTest {
  /** A tenth of a percent of what was taken away. */
  private static final double SHARE = 1e-3;

  /** Volume taken away at three sizes of cells must fall in with this order at least. */
  private static final double ORDER = 1.8;

  /** Below this share of the volume errors are noise of where the lattice lies. */
  private static final double SMALL = 2e-5;

  private static void holds(Supplier<Job> job, double expected, double cell) {
    double[] error = new double[3];
    for (int i = 0; i < 3; i++) {
      Metal metal = job.get().metal(cell * (1 << (2 - i)));
      int end = metal.cuts().tape().size();
      double removed = metal.removed().stream().mapToDouble(Removed::volume).sum();
      assertThat(removed).isCloseTo(metal.volume(0) - metal.volume(end), within(1e-6));
      error[i] = Math.abs(removed / expected - 1);
    }
    assertThat(error[2]).isLessThan(SHARE);
    double order = Math.log(error[0] / error[2]) / Math.log(4);
    if (error[2] > SMALL) {
      assertThat(order).as("order").isGreaterThan(ORDER);
    }
  }

  private static Job block() {
    return new Job().block(-20, -15, -20, 20, 15, 0);
  }

  private static Tool endMill(double diameter) {
    return SampleTools.tool(1, Tool.Kind.END_MILL, diameter, 30);
  }

  @Test
  void whole_block() {
    Job job = block().take(endMill(10)).line(100, 100, 100);
    assertThat(job.metal(0.5).volume(0)).isCloseTo(40.0 * 30 * 20, within(1e-3 * 24000));
  }

  @Test
  void cylinder_and_tube() {
    Job round = new Job().stock(Stock.Shape.CYLINDER, -10, -10, 0, 10, 10, 15, 0);
    Job tube = new Job().stock(Stock.Shape.TUBE, -10, -10, 0, 10, 10, 15, 12);
    assertThat(round.take(endMill(10)).metal(0.3).volume(0) / (Math.PI * 100 * 15))
        .isCloseTo(1, within(SHARE));
    assertThat(tube.take(endMill(10)).metal(0.3).volume(0) / (Math.PI * (100 - 36) * 15))
        .isCloseTo(1, within(SHARE));
  }

  @Test
  void drilled_hole_with_its_point() {
    double r = 4.25;
    double point = Math.toRadians(118);
    double cone = r / Math.tan(point / 2);
    Tool drill = SampleTools.tool(1, Tool.Kind.DRILL, 2 * r, 40, point, 0, Optional.empty());
    double expected = Math.PI * r * r * (12 - cone) + Math.PI * r * r * cone / 3;
    holds(() -> block().take(drill).rapid(2, 1, 5).line(2, 1, -12), expected, 0.15);
  }

  @Test
  void countersink_above_a_hole() {
    Tool drill = SampleTools.tool(1, Tool.Kind.DRILL, 6, 40, 2, 0, Optional.empty());
    Tool sink =
        SampleTools.tool(2, Tool.Kind.COUNTERSINK, 12, 10, Math.PI / 2, 0, Optional.empty());
    double depth = 4.5 - 3;
    // A frustum from 3 to 4.5 mm radius less the hole.
    double frustum = Math.PI * depth / 3 * (9 + 4.5 * 4.5 + 3 * 4.5);
    double expected = Math.PI * 9 * 20 + frustum - Math.PI * 9 * depth;
    holds(
        () ->
            block()
                .take(drill)
                .rapid(1, 2, 5)
                .line(1, 2, -25)
                .rapid(1, 2, 5)
                .take(sink)
                .line(1, 2, -4.5),
        expected,
        0.1);
  }

  @Test
  void slot_with_round_ends() {
    double expected = 5 * (Math.PI * 9 + 12 * 6);
    holds(
        () -> block().take(endMill(6)).rapid(-5, -3, 5).line(-5, -3, -5).line(7, -3, -5),
        expected,
        0.1);
  }

  @Test
  void groove_of_a_full_circle_by_a_ball() {
    Tool ball = SampleTools.tool(1, Tool.Kind.BALL_MILL, 6, 20, Math.PI, 3, Optional.empty());
    // Half a disc turned about the axis, at the ball's depth of a radius: Pappus.
    double expected = 2 * Math.PI * 8 * (Math.PI * 9 / 2);
    holds(
        () -> block().take(ball).rapid(9, 1, 5).line(9, 1, -3).arc(1, 1, 2 * Math.PI, -3),
        expected,
        0.1);
  }

  @Test
  void pocket_by_a_ball() {
    Tool ball = SampleTools.tool(1, Tool.Kind.BALL_MILL, 8, 20, Math.PI, 4, Optional.empty());
    double expected = Math.PI * 16 * (6 - 4) + 2 * Math.PI * 64 / 3 + 8 * (8 * 2 + Math.PI * 8);
    holds(() -> block().take(ball).rapid(-4, 0, 5).line(-4, 0, -6).line(4, 0, -6), expected, 0.15);
  }

  @Test
  void hole_of_the_stock_with_flat_bottom_and_countersink() {
    Hole hole =
        new Hole(
            "port",
            false,
            1,
            2,
            0,
            8,
            Optional.of(12.0),
            Math.PI,
            Optional.of(new Hole.Countersink(12, Math.PI / 2)),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Hole.MadeBy.STOCK),
            0);
    double frustum = Math.PI * 2 / 3 * (16 + 36 + 24) - Math.PI * 16 * 2;
    double expected = 24000 - Math.PI * 16 * 12 - frustum;
    Job job = block().hole(hole).take(endMill(10));
    assertThat(job.metal(0.15).volume(0)).isCloseTo(expected, within(SHARE * (24000 - expected)));
  }

  @Test
  void bosses_of_the_stock_stand_free_above_a_shoulder() {
    Job job = block().hole(Bosses.ofStock(-9, 1, 8, 11)).hole(Bosses.ofStock(8, -2, 12, 12));
    // Round the bosses, so that only air is met.
    job.take(endMill(6)).rapid(-1.5, 12, 4).line(-1.5, 12, -10);
    job.line(-1.5, -12, -10).line(18, -12, -10);
    Metal metal = job.metal(0.15);
    double expected = 40.0 * 30 * 8 + Math.PI * (16 + 36) * 12;
    assertThat(metal.volume(0)).isCloseTo(expected, within(SHARE * expected));
    assertThat(metal.volume(metal.cuts().tape().size())).isEqualTo(metal.volume(0));
    assertThat(metal.isMetal(-9, 1, -1, 0)).isTrue();
    assertThat(metal.isMetal(0, 0, -1, 0)).isFalse();
    assertThat(metal.isMetal(0, 0, -13, 0)).isTrue();
    double[] normal = new double[3];
    metal.stock().normal(-5, 1, -6, normal);
    assertThat(normal).containsExactly(1, 0, 0);
    metal.stock().normal(0, 0, -12, normal);
    assertThat(normal).containsExactly(0, 0, 1);
    metal.stock().normal(20, 3, -15, normal);
    assertThat(normal).containsExactly(1, 0, 0);
  }
}
