package flankfit.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of arcs in all planes, both senses, several turns, spirals and helices. */
class TapeProperties {
  private static final int CASES = 300;
  private static final List<Plane> PLANES = List.of(Plane.values());
  private static final int SAMPLES = 20_000;

  @Test
  void a_move_ends_bit_for_bit_where_it_was_told_to() {
    Random random = new Random(1);
    double[] p = new double[3];
    for (int i = 0; i < CASES; i++) {
      Tape tape = Tapes.anyArc(random);
      tape.pointAt(0, 0, p);
      assertThat(p).containsExactly(tape.fromX(0), tape.fromY(0), tape.fromZ(0));
      tape.pointAt(0, 1, p);
      assertThat(p).containsExactly(tape.toX(0), tape.toY(0), tape.toZ(0));
    }
  }

  @Test
  void a_point_of_an_arc_lies_on_its_spiral_and_in_proportion_on_its_normal() {
    Random random = new Random(2);
    double[] p = new double[3];
    for (int i = 0; i < CASES; i++) {
      Tape tape = Tapes.anyArc(random);
      double share = random.nextDouble();
      tape.pointAt(0, share, p);
      Plane plane = tape.state(0).plane();
      double radius = tape.radius(0) + share * (tape.endRadius(0) - tape.radius(0));
      assertThat(Math.hypot(p[plane.u()] - tape.centreU(0), p[plane.v()] - tape.centreV(0)))
          .isCloseTo(radius, within(1e-10));
      assertThat(p[plane.n()]).isCloseTo(1.25 + share * tape.rise(0), within(1e-12));
    }
  }

  @Test
  void the_box_agrees_with_dense_sampling() {
    Random random = new Random(3);
    for (int i = 0; i < CASES / 3; i++) {
      Tape tape = Tapes.anyArc(random);
      Extents box = tape.extents();
      Extents sampled = sampled(tape);
      // Between two samples a path strays from its chord by no more than this.
      double step = Math.abs(tape.sweep(0)) / SAMPLES;
      double radius = Math.max(tape.radius(0), tape.endRadius(0));
      double slack = radius * step * step + 1e-9;
      for (int axis = 0; axis < 3; axis++) {
        String as = "case " + i + ", axis " + axis;
        assertThat(box.min().axis(axis)).as(as).isCloseTo(sampled.min().axis(axis), within(slack));
        assertThat(box.max().axis(axis)).as(as).isCloseTo(sampled.max().axis(axis), within(slack));
      }
    }
  }

  private static Extents sampled(Tape tape) {
    double[] p = new double[3];
    double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    for (int s = 0; s <= SAMPLES; s++) {
      tape.pointAt(0, (double) s / SAMPLES, p);
      for (int k = 0; k < 3; k++) {
        low[k] = Math.min(low[k], p[k]);
        high[k] = Math.max(high[k], p[k]);
      }
    }
    return new Extents(new Point(low[0], low[1], low[2]), new Point(high[0], high[1], high[2]));
  }

  @Test
  void the_length_of_a_circular_helix_agrees_with_many_chords() {
    Random random = new Random(4);
    for (int i = 0; i < CASES / 10; i++) {
      double radius = 0.1 + 20 * random.nextDouble();
      double sweep = 12 * random.nextDouble() + 0.1;
      Tape tape = Tapes.arc(PLANES.get(i % 3), 1, 2, radius, radius, random.nextDouble(), sweep, 3);
      double[] p = new double[3];
      double sum = 0;
      Point before = tape.from(0);
      for (int s = 1; s <= SAMPLES; s++) {
        tape.pointAt(0, (double) s / SAMPLES, p);
        Point at = new Point(p[0], p[1], p[2]);
        sum += before.distance(at);
        before = at;
      }
      assertThat(tape.length(0)).isCloseTo(sum, within(1e-6 * sum));
    }
  }

  @Test
  void chords_stay_within_the_tolerance_and_one_fewer_would_not() {
    Random random = new Random(5);
    for (int i = 0; i < 20 * CASES; i++) {
      double radius = Math.pow(10, 4 * random.nextDouble() - 2);
      double sweep = (random.nextBoolean() ? 1 : -1) * 25 * random.nextDouble();
      double tolerance = Math.pow(10, -4 * random.nextDouble() - 1);
      int count = Chords.count(radius, sweep, tolerance);
      assertThat(deviation(radius, sweep, count)).isLessThanOrEqualTo(tolerance * (1 + 1e-9));
      if (count > 1 && radius > tolerance) {
        assertThat(deviation(radius, sweep, count - 1)).isGreaterThan(tolerance * (1 - 1e-9));
      }
    }
  }

  /** Greatest distance from a circle's arc to its chords, each under a turn (mm). */
  private static double deviation(double radius, double sweep, int count) {
    double half = Math.abs(sweep) / count / 2;
    return half >= Math.PI ? 2 * radius : radius * (1 - Math.cos(half));
  }

  @Test
  void the_chords_of_a_helix_stay_within_the_tolerance_of_the_path() {
    Random random = new Random(6);
    double tolerance = 0.002;
    double[] p = new double[3];
    for (int i = 0; i < CASES / 5; i++) {
      double radius = 0.5 + 20 * random.nextDouble();
      Plane plane = PLANES.get(i % 3);
      Tape tape = Tapes.arc(plane, 3, 4, radius, radius, 1, -7 * random.nextDouble() - 0.1, 1.5);
      int count = Chords.count(tape, 0, tolerance);
      double[] ends = new double[3 * count + 2];
      assertThat(Chords.write(tape, 0, count, ends, 1)).isEqualTo(3 * count + 1);
      assertThat(new Point(ends[3 * count - 2], ends[3 * count - 1], ends[3 * count]))
          .isEqualTo(tape.to(0));
      Point before = tape.from(0);
      for (int c = 0; c < count; c++) {
        Point after = new Point(ends[3 * c + 1], ends[3 * c + 2], ends[3 * c + 3]);
        tape.pointAt(0, (c + 0.5) / count, p);
        Point middle = new Extents(min(before, after), max(before, after)).middle();
        assertThat(middle.distance(new Point(p[0], p[1], p[2])))
            .isLessThanOrEqualTo(tolerance * (1 + 1e-9));
        before = after;
      }
    }
  }

  @Test
  void the_ends_of_chords_are_the_points_of_the_path() {
    Random random = new Random(7);
    double[] p = new double[3];
    for (int i = 0; i < CASES / 5; i++) {
      double radius = Math.pow(10, 5 * random.nextDouble() - 1);
      double endRadius = radius * (0.9 + 0.2 * random.nextDouble());
      double sweep = 40 * random.nextDouble() - 20;
      Tape tape = Tapes.arc(PLANES.get(i % 3), 3, 4, radius, endRadius, 1, sweep, 1.5);
      int count = 1 + random.nextInt(2000);
      double[] ends = new double[3 * count];
      Chords.write(tape, 0, count, ends, 0);
      for (int c = 0; c < count; c++) {
        tape.pointAt(0, (c + 1.0) / count, p);
        Point end = new Point(ends[3 * c], ends[3 * c + 1], ends[3 * c + 2]);
        assertThat(end.distance(new Point(p[0], p[1], p[2]))).isLessThan(3e-14 * (radius + 5));
      }
    }
  }

  private static Point min(Point a, Point b) {
    return new Point(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z()));
  }

  private static Point max(Point a, Point b) {
    return new Point(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()), Math.max(a.z(), b.z()));
  }

  @Test
  void straight_moves_are_one_chord_dwells_none() {
    TapeBuilder builder = Tapes.builder();
    builder.straight(MoveKind.LINE, 1, 0, 0, 1, 1, Tapes.STATE);
    builder.straight(MoveKind.RAPID, 2, 0, 0, 1, 1, Tapes.STATE);
    builder.dwell(1, 1, 1, Tapes.STATE);
    Tape tape = builder.build();
    assertThat(Chords.count(tape, 0, 0.01)).isEqualTo(1);
    assertThat(Chords.count(tape, 1, 0.01)).isEqualTo(1);
    assertThat(Chords.count(tape, 2, 0.01)).isZero();
    double[] ends = new double[6];
    assertThat(Chords.write(tape, 0, 2, ends, 0)).isEqualTo(6);
    assertThat(ends).containsExactly(0.5, 0, 0, 1, 0, 0);
  }
}
