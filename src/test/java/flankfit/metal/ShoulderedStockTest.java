package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.setup.Stock;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A block with two round bosses above a shoulder; elementary geometry. */
class ShoulderedStockTest {
  private static final double CLOSE = 1e-12;
  private static final double SHOULDER = -4;

  private final StockBody stock =
      ShoulderedStock.of(
          SheetStock.of(
              new Stock(
                  Stock.Shape.BLOCK, new Extents(new Point(-10, -8, -12), new Point(10, 8, 0)), 0),
              Optional.empty(),
              List.of()),
          List.of(Bosses.ofStock(-4, 0, 6, -SHOULDER), Bosses.ofStock(5, 0, 4, 2)));

  /** By the definition alone. */
  private static boolean isMetal(double x, double y, double z) {
    boolean inBlock = Math.abs(x) < 10 && Math.abs(y) < 8 && z > -12 && z < 0;
    boolean inBoss = Math.hypot(x + 4, y) < 3 || Math.hypot(x - 5, y) < 2;
    return inBlock && (z < SHOULDER || inBoss);
  }

  @Test
  void sign_is_exact_and_a_ball_of_that_size_holds_only_its_like() {
    Random random = new Random(20);
    for (int i = 0; i < 4000; i++) {
      double x = random.nextDouble(-12, 12);
      double y = random.nextDouble(-10, 10);
      double z = random.nextDouble(-14, 2);
      double distance = stock.distance(x, y, z);
      assertThat(distance < 0).isEqualTo(isMetal(x, y, z));
      for (int n = 0; n < 8; n++) {
        double a = random.nextDouble(0, 2 * Math.PI);
        double up = random.nextDouble(-1, 1);
        double r = 0.999999 * Math.abs(distance);
        double level = r * Math.sqrt(1 - up * up);
        boolean there = isMetal(x + level * Math.cos(a), y + level * Math.sin(a), z + r * up);
        assertThat(there).isEqualTo(distance < 0);
      }
    }
  }

  @Test
  void the_deepest_boss_says_where_the_shoulder_lies() {
    assertThat(stock.distance(5, 5, -4.5)).isCloseTo(-0.5, within(CLOSE));
    assertThat(stock.distance(5, 5, -3)).isCloseTo(1, within(CLOSE));
  }

  private void assertNormal(double x, double y, double z, double nx, double ny, double nz) {
    double[] normal = new double[3];
    stock.normal(x, y, z, normal);
    assertThat(normal[0]).isCloseTo(nx, within(CLOSE));
    assertThat(normal[1]).isCloseTo(ny, within(CLOSE));
    assertThat(normal[2]).isCloseTo(nz, within(CLOSE));
  }

  @Test
  void directions_point_out_of_the_metal() {
    assertNormal(-4, 0, 0, 0, 0, 1);
    assertNormal(0, 5, SHOULDER, 0, 0, 1);
    assertNormal(-4 - 1.8, 2.4, -1, -0.6, 0.8, 0);
    assertNormal(7, 0, -3, 1, 0, 0);
    assertNormal(10, 0, -6, 1, 0, 0);
    assertNormal(0, 0, -12, 0, 0, -1);
  }

  private static double[] box(double x, double y, double z, double half) {
    double[] corners = new double[24];
    for (int i = 0; i < 8; i++) {
      corners[3 * i] = x + ((i & 1) == 0 ? -half : half);
      corners[3 * i + 1] = y + ((i & 2) == 0 ? -half : half);
      corners[3 * i + 2] = z + ((i & 4) == 0 ? -half : half);
    }
    return corners;
  }

  @Test
  void a_box_is_outside_only_if_it_stands_beside_all_bosses_above_the_shoulder() {
    assertThat(stock.isOutside(box(0.5, 5, -2, 1.9), 8)).isTrue();
    assertThat(stock.isOutside(box(0.5, 5, -2.5, 1.9), 8)).isFalse();
    // Between the bosses, 4 mm of air across: one box just fits, one is a little too wide.
    assertThat(stock.isOutside(box(1, 0, -2, 1.9999), 8)).isTrue();
    assertThat(stock.isOutside(box(1, 0, -1.9, 2.0001), 8)).isFalse();
    assertThat(stock.isOutside(box(-4, 0, -2, 0.5), 8)).isFalse();
  }
}
