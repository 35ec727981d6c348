package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Extents;
import flankfit.setup.Tool;
import flankfit.solid.Crossing;
import flankfit.solid.Solid;
import flankfit.solid.SurfaceCells;
import java.util.HashSet;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Laws of the metal on random jobs. */
class MetalProperties {
  private static Job random(Random random, double dx, double dy, double dz) {
    Job job = new Job(dx, dy, dz).block(-8, -7, -9, 9, 8, 0);
    double[] at = {0, 0, 4};
    job.take(tool(1, random)).rapid(0, 0, 4);
    for (int i = 0; i < 8; i++) {
      if (i == 4) {
        job.rapid(at[0], at[1], 4).take(tool(2, random));
      }
      double x = 14 * random.nextDouble() - 7;
      double y = 14 * random.nextDouble() - 7;
      double z = -6 * random.nextDouble();
      if (random.nextInt(3) == 0) {
        job.arc(at[0] + x / 5, at[1] + y / 5, 7 * random.nextDouble() - 3.5, z);
      } else {
        job.line(x, y, random.nextBoolean() ? z : at[2]);
        at[0] = x;
        at[1] = y;
        at[2] = z;
      }
    }
    return job;
  }

  private static Tool tool(int number, Random random) {
    Tool any = SampleTools.any(random).tool();
    return SampleTools.tool(
        number,
        any.kind(),
        any.diameter(),
        any.fluteLength(),
        any.pointAngle(),
        any.cornerRadius(),
        any.teeth());
  }

  @Test
  void signs_are_those_of_the_stock_less_the_cuts_and_sizes_are_bounds() {
    for (int seed = 0; seed < 4; seed++) {
      Random random = new Random(seed);
      Metal metal = random(random, 0, 0, 0).metal(0.3);
      int end = metal.cuts().tape().size();
      SweptCut cut = new SweptCut();
      for (int i = 0; i < 400; i++) {
        int k = random.nextInt(end + 1);
        double x = -8.5 + 18 * random.nextDouble();
        double y = -7.5 + 16 * random.nextDouble();
        double z = -9.5 + 10 * random.nextDouble();
        double least = -metal.stock().distance(x, y, z);
        for (int m = 0; m < k; m++) {
          if (metal.cuts().removes(m)) {
            metal.cuts().load(m, cut);
            least = Math.min(least, cut.distance(x, y, z));
          }
        }
        double value = metal.at(k).value(x, y, z);
        assertThat(value < 0).as("seed %s point %s", seed, i).isEqualTo(least > 0);
        if (least > 0) {
          assertThat(-value).isCloseTo(least, within(1e-8));
        } else {
          assertThat(value).isLessThanOrEqualTo(-least + 1e-9);
        }
      }
    }
  }

  @Test
  void crossings_lie_where_metal_ends_and_normals_point_into_the_air() {
    for (int seed = 10; seed < 12; seed++) {
      Random random = new Random(seed);
      Metal metal = random(random, 0, 0, 0).metal(0.3);
      Solid solid = metal.at(metal.cuts().tape().size());
      SurfaceCells cells = solid.cells();
      Crossing crossing = new Crossing();
      int seen = 0;
      for (int i = 0; i < cells.count() && seen < 1500; i += 7) {
        int x = cells.x(i);
        int y = cells.y(i);
        int z = cells.z(i);
        int axis = random.nextInt(3);
        int s = cells.size(i);
        int x1 = x + (axis == 0 ? s : 0);
        int y1 = y + (axis == 1 ? s : 0);
        int z1 = z + (axis == 2 ? s : 0);
        boolean low = cells.metal(x, y, z);
        if (low != cells.metal(x1, y1, z1)) {
          seen++;
          double[] a = place(cells, low ? x : x1, low ? y : y1, low ? z : z1);
          double[] b = place(cells, low ? x1 : x, low ? y1 : y, low ? z1 : z);
          assertThat(solid.value(a[0], a[1], a[2])).isLessThanOrEqualTo(0);
          assertThat(solid.value(b[0], b[1], b[2])).isGreaterThan(0);
          solid.crossing(a[0], a[1], a[2], b[0], b[1], b[2], crossing);
          check(solid, crossing, a, b);
        }
      }
      assertThat(seen).isGreaterThan(300);
    }
  }

  private static double[] place(SurfaceCells cells, int x, int y, int z) {
    return new double[] {
      cells.originX() + x * cells.cell(),
      cells.originY() + y * cells.cell(),
      cells.originZ() + z * cells.cell()
    };
  }

  private static void check(Solid solid, Crossing c, double[] a, double[] b) {
    double length = Math.hypot(Math.hypot(b[0] - a[0], b[1] - a[1]), b[2] - a[2]);
    double ux = (b[0] - a[0]) / length;
    double uy = (b[1] - a[1]) / length;
    double uz = (b[2] - a[2]) / length;
    double e = 2e-9;
    assertThat(solid.value(c.x() - e * ux, c.y() - e * uy, c.z() - e * uz)).isLessThan(0);
    assertThat(solid.value(c.x() + e * ux, c.y() + e * uy, c.z() + e * uz)).isGreaterThan(0);
    double n = Math.hypot(Math.hypot(c.normalX(), c.normalY()), c.normalZ());
    assertThat(n).isCloseTo(1, within(1e-9));
    // From metal to air the way leads outwards, never inwards.
    assertThat(ux * c.normalX() + uy * c.normalY() + uz * c.normalZ()).isGreaterThan(-1e-6);
  }

  @Test
  void all_cells_with_surface_are_listed_with_neighbours_that_differ_by_one_level() {
    for (int seed = 20; seed < 23; seed++) {
      Metal metal = random(new Random(seed), 0, 0, 0).metal(0.25);
      SurfaceCells cells = metal.at(metal.cuts().tape().size()).cells();
      Set<String> listed = new HashSet<>();
      for (int i = 0; i < cells.count(); i++) {
        assertThat(listed.add(key(cells.x(i), cells.y(i), cells.z(i), cells.size(i)))).isTrue();
      }
      int mixed = 0;
      for (int i = 0; i < cells.count(); i++) {
        int cell = i;
        long metalCorners = IntStream.range(0, 8).filter(c -> corner(cells, cell, c)).count();
        if (metalCorners != 0 && metalCorners != 8) {
          mixed++;
          neighbours(cells, listed, i, metal.stock().box());
        }
      }
      assertThat(mixed).isGreaterThan(500);
    }
  }

  private static boolean corner(SurfaceCells cells, int i, int c) {
    int s = cells.size(i);
    return cells.metal(
        cells.x(i) + (c & 1) * s, cells.y(i) + (c >> 1 & 1) * s, cells.z(i) + (c >> 2) * s);
  }

  /** On every side lies a cell of the same, twice or half the size. */
  private static void neighbours(SurfaceCells cells, Set<String> listed, int i, Extents box) {
    int s = cells.size(i);
    for (int d = 0; d < 27; d++) {
      int x = cells.x(i) + (d % 3 - 1) * s;
      int y = cells.y(i) + (d / 3 % 3 - 1) * s;
      int z = cells.z(i) + (d / 9 - 1) * s;
      double[] low = place(cells, x, y, z);
      double[] high = place(cells, x + s, y + s, z + s);
      boolean beside = false;
      for (int axis = 0; axis < 3; axis++) {
        beside |= high[axis] < box.min().axis(axis) || low[axis] > box.max().axis(axis);
      }
      if (beside) {
        continue;
      }
      int two = 2 * s;
      int half = s / 2;
      boolean found =
          listed.contains(key(x, y, z, s))
              || listed.contains(
                  key(
                      Math.floorDiv(x, two) * two,
                      Math.floorDiv(y, two) * two,
                      Math.floorDiv(z, two) * two,
                      two));
      // Of smaller ones the nearest corner touches.
      int hx = d % 3 == 0 ? x + half : x;
      int hy = d / 3 % 3 == 0 ? y + half : y;
      int hz = d / 9 == 0 ? z + half : z;
      assertThat(found || listed.contains(key(hx, hy, hz, half)))
          .as("side %s of %s", d, key(cells.x(i), cells.y(i), cells.z(i), s))
          .isTrue();
    }
  }

  private static String key(int x, int y, int z, int size) {
    return x + " " + y + " " + z + " " + size;
  }

  @Test
  void a_shifted_job_leaves_the_same_volume() {
    for (int seed = 30; seed < 33; seed++) {
      Metal here = random(new Random(seed), 0, 0, 0).metal(0.25);
      Metal there = random(new Random(seed), 31.25, -64.5, 12.75).metal(0.25);
      int end = here.cuts().tape().size();
      assertThat(there.volume(end) / here.volume(end)).isCloseTo(1, within(1e-9));
    }
  }

  /** A quarter turn about Z takes x to y; a mirrored job has x turned round. */
  private static Job turned(Random random, boolean quarter, boolean mirrored) {
    Job job = new Job();
    double[] a = at(-8, -7, quarter, mirrored);
    double[] b = at(9, 8, quarter, mirrored);
    job.block(
        Math.min(a[0], b[0]),
        Math.min(a[1], b[1]),
        -9,
        Math.max(a[0], b[0]),
        Math.max(a[1], b[1]),
        0);
    double[] from = at(-5, 3, quarter, mirrored);
    job.take(tool(1, random)).rapid(from[0], from[1], 4).line(from[0], from[1], -3);
    for (int i = 0; i < 5; i++) {
      double[] to =
          at(14 * random.nextDouble() - 7, 12 * random.nextDouble() - 6, quarter, mirrored);
      double z = -5 * random.nextDouble();
      double turn = 5 * random.nextDouble() - 2.5;
      if (i % 2 == 0) {
        job.line(to[0], to[1], z);
      } else {
        job.arc(to[0] / 2, to[1] / 2, mirrored ? -turn : turn, z);
      }
    }
    return job;
  }

  private static double[] at(double x, double y, boolean quarter, boolean mirrored) {
    double u = mirrored ? -x : x;
    return quarter ? new double[] {-y, u} : new double[] {u, y};
  }

  @Test
  void a_turned_and_a_mirrored_job_leave_the_same_volume() {
    for (int seed = 40; seed < 44; seed++) {
      Metal here = turned(new Random(seed), false, false).metal(0.3);
      Metal turned = turned(new Random(seed), true, false).metal(0.3);
      Metal mirrored = turned(new Random(seed), false, true).metal(0.3);
      int end = here.cuts().tape().size();
      double removed = here.volume(0) - here.volume(end);
      assertThat(removed).isGreaterThan(20);
      // The lattice stands elsewhere in the turned job, so that only its own errors are left.
      assertThat((turned.volume(0) - turned.volume(end)) / removed).isCloseTo(1, within(1e-3));
      assertThat((mirrored.volume(0) - mirrored.volume(end)) / removed).isCloseTo(1, within(1e-3));
    }
  }

  @Test
  void the_work_for_a_move_does_not_grow_with_the_stock() {
    Tool mill = SampleTools.tool(1, Tool.Kind.END_MILL, 3, 10, Math.PI, 0, Optional.empty());
    long[] bricks = new long[2];
    for (int i = 0; i < 2; i++) {
      double wide = i == 0 ? 20 : 160;
      Job job = new Job().block(-wide, -wide, -20, wide, wide, 0).take(mill);
      Metal metal = job.rapid(-8, 0, 5).line(-8, 0, -2).line(8, 1, -2).metal(0.05);
      int end = metal.cuts().tape().size();
      metal.at(end).cells();
      bricks[i] = metal.bricksMade();
      metal.at(0).cells();
      bricks[i] -= metal.bricksMade() - bricks[i];
    }
    assertThat((double) bricks[1] / bricks[0]).isBetween(0.5, 1.5);
  }
}
