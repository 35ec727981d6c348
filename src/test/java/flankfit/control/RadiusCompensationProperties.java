package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of compensated paths on seeded contours. */
class RadiusCompensationProperties {
  private static final double NEAR = 1e-6;
  private static final int CONTOURS = 10_200;
  private static final int SAMPLES = 7;
  private static final List<Plane> PLANES = List.of(Plane.XY, Plane.ZX, Plane.YZ);

  @Test
  void tool_touches_its_own_block_and_comes_nearer_to_none() {
    int judged = 0;
    for (int seed = 0; seed < CONTOURS; seed++) {
      Random random = new Random(seed);
      double rho = Math.exp(random.nextDouble() * 5 - 3);
      double sigma = random.nextBoolean() ? rho : -rho;
      Plane plane = PLANES.get(seed % 3);
      RandomPath path = RandomPath.of(random, rho, 2 + random.nextInt(6), seed % 4 == 0);
      if (seed % 7 == 0) {
        path = path.reversed();
      }
      double away = seed % 7 == 0 ? -2 * rho : 2 * rho;
      Contour contour = path.contour(plane, sigma, path.ends(away));
      Contour.Run run = contour.run();
      assertThat(run.compensation().stopped()).as("seed %d", seed).isFalse();
      if (!comesNearItself(contour, rho)) {
        assertDistances(contour, run.tape(), rho, seed);
        judged++;
      }
      TapeChecks.assertContinuous(run.tape());
    }
    assertThat(judged).isGreaterThanOrEqualTo(10_000);
  }

  private static boolean comesNearItself(Contour contour, double rho) {
    List<ProgrammedMove> moves = contour.moves;
    for (int a = 1; a < moves.size() - 1; a++) {
      for (int b = a + 2; b < moves.size() - 1; b++) {
        for (int i = 0; i <= SAMPLES; i++) {
          double[] p = pointOf(moves.get(a), (double) i / SAMPLES);
          if (DistanceWitness.fromElement(moves.get(b), p[0], p[1]) < 2 * rho) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static double[] pointOf(ProgrammedMove m, double share) {
    int iu = m.state().plane().u();
    int iv = m.state().plane().v();
    if (m.isArc()) {
      double a = Math.atan2(m.from(iv) - m.centreV(), m.from(iu) - m.centreU());
      double at = a + share * m.sweep();
      return new double[] {
        m.centreU() + m.radius() * Math.cos(at), m.centreV() + m.radius() * Math.sin(at)
      };
    }
    return new double[] {
      m.from(iu) + share * (m.to(iu) - m.from(iu)), m.from(iv) + share * (m.to(iv) - m.from(iv))
    };
  }

  private static void assertDistances(Contour contour, Tape tape, double rho, int seed) {
    double[] p = new double[3];
    int lastLine = contour.moves.size();
    for (int i = 0; i < tape.size(); i++) {
      if (tape.line(i) == 1 || tape.line(i) == lastLine) {
        continue;
      }
      ProgrammedMove own = contour.moves.get(tape.line(i) - 1);
      int u = contour.plane.u();
      int v = contour.plane.v();
      for (int k = 0; k <= SAMPLES; k++) {
        tape.pointAt(i, (double) k / SAMPLES, p);
        double touching =
            tape.inserted(i)
                ? Math.hypot(p[u] - own.from(u), p[v] - own.from(v))
                : DistanceWitness.fromElement(own, p[u], p[v]);
        if (Math.abs(touching - rho) > NEAR) {
          assertThat(touching).as("seed %d, move %d", seed, i).isCloseTo(rho, within(NEAR));
        }
        for (int e = 1; e < lastLine - 1; e++) {
          double distance = DistanceWitness.fromElement(contour.moves.get(e), p[u], p[v]);
          if (distance < rho - NEAR) {
            assertThat(distance)
                .as("seed %d, move %d, element %d", seed, i, e)
                .isGreaterThanOrEqualTo(rho - NEAR);
          }
        }
      }
      if (!tape.inserted(i)) {
        int n = contour.plane.n();
        assertThat(tape.to(i).axis(n)).as("seed %d, move %d", seed, i).isEqualTo(own.to(n));
      }
    }
  }

  @Test
  void mitred_corners_keep_the_tool_off_every_element() {
    for (int seed = 0; seed < 1000; seed++) {
      Random random = new Random(seed);
      double rho = 0.1 + 5 * random.nextDouble();
      double sigma = random.nextBoolean() ? rho : -rho;
      RandomPath path = RandomPath.of(random, rho, 5, true);
      Contour contour = path.contour(Plane.XY, sigma, path.ends(2 * rho));
      Tape tape = contour.run(Contour.mitre()).tape();
      double[] p = new double[3];
      for (int i = 0; i < tape.size() - 1; i++) {
        for (int k = 0; k <= SAMPLES && tape.line(i) > 1; k++) {
          tape.pointAt(i, (double) k / SAMPLES, p);
          for (int e = 1; e < contour.moves.size() - 1; e++) {
            double distance = DistanceWitness.fromElement(contour.moves.get(e), p[0], p[1]);
            if (distance < rho - NEAR) {
              assertThat(distance).as("seed %d", seed).isGreaterThanOrEqualTo(rho - NEAR);
            }
          }
        }
      }
      assertThat(tape.kind(tape.size() - 1)).isEqualTo(MoveKind.LINE);
    }
  }

  @Test
  void mirror_swaps_left_and_right() {
    for (int seed = 0; seed < 500; seed++) {
      RandomPath path = RandomPath.of(new Random(seed), 1.5, 5, false);
      RandomPath mirrored = path.mirrored();
      Tape a = path.contour(Plane.XY, 1.5, path.ends(3)).run().tape();
      Tape b = mirrored.contour(Plane.XY, -1.5, mirrored.ends(3)).run().tape();
      assertThat(b.size()).isEqualTo(a.size());
      for (int i = 0; i < a.size(); i++) {
        assertThat(b.kind(i)).isEqualTo(a.kind(i));
        assertThat(b.toX(i)).isCloseTo(a.toX(i), within(NEAR));
        assertThat(b.toY(i)).isCloseTo(-a.toY(i), within(NEAR));
        if (a.kind(i) == MoveKind.ARC) {
          assertThat(b.sweep(i)).isCloseTo(-a.sweep(i), within(NEAR));
        }
      }
    }
  }

  @Test
  void turning_and_shifting_the_path_turns_and_shifts_the_tool() {
    for (int seed = 0; seed < 500; seed++) {
      Random random = new Random(seed);
      RandomPath path = RandomPath.of(random, 1.5, 5, false);
      double angle = 2 * Math.PI * random.nextDouble();
      double du = 50 * random.nextDouble();
      double dv = -50 * random.nextDouble();
      double[][] ends = path.ends(3);
      double[][] turnedEnds = {
        RandomPath.rotate(ends[0][0], ends[0][1], 0, angle, du, dv),
        RandomPath.rotate(ends[1][0], ends[1][1], 0, angle, du, dv)
      };
      Tape a = path.contour(Plane.XY, -1.5, ends).run().tape();
      Tape b = path.turned(angle, du, dv).contour(Plane.XY, -1.5, turnedEnds).run().tape();
      assertThat(b.size()).as("seed %d", seed).isEqualTo(a.size());
      for (int i = 0; i < a.size(); i++) {
        double[] p = RandomPath.rotate(a.toX(i), a.toY(i), 0, angle, du, dv);
        assertThat(b.toX(i)).as("seed %d", seed).isCloseTo(p[0], within(NEAR));
        assertThat(b.toY(i)).as("seed %d", seed).isCloseTo(p[1], within(NEAR));
      }
    }
  }

  @Test
  void other_side_of_the_reversed_path_is_the_same_locus() {
    for (int seed = 0; seed < 500; seed++) {
      Random random = new Random(seed);
      RandomPath path = RandomPath.of(random, 1.5, 5, false);
      RandomPath back = path.reversed();
      double sigma = random.nextBoolean() ? 1.5 : -1.5;
      Contour.Run a = path.contour(Plane.XY, sigma, path.ends(3)).run();
      Contour.Run b = back.contour(Plane.XY, -sigma, back.ends(-3)).run();
      assertThat(b.count(Code.RC06)).as("seed %d", seed).isEqualTo(a.count(Code.RC06));
      if (a.count(Code.RC06) == 0) {
        assertThat(b.tape().size()).isEqualTo(a.tape().size());
        assertWithin(a.tape(), b.tape(), seed);
        assertWithin(b.tape(), a.tape(), seed);
      }
    }
  }

  private static void assertWithin(Tape inner, Tape outer, int seed) {
    double[] p = new double[3];
    for (int i = 1; i < inner.size() - 1; i++) {
      for (int k = 0; k <= SAMPLES; k++) {
        inner.pointAt(i, (double) k / SAMPLES, p);
        double least = Double.POSITIVE_INFINITY;
        for (int j = 1; j < outer.size() - 1; j++) {
          least = Math.min(least, fromMove(outer, j, p));
        }
        if (least >= NEAR) {
          assertThat(least).as("seed %d, move %d", seed, i).isLessThan(NEAR);
        }
      }
    }
  }

  private static double fromMove(Tape t, int j, double[] p) {
    if (t.kind(j) == MoveKind.ARC) {
      return DistanceWitness.fromArc(
          t.fromX(j),
          t.fromY(j),
          t.toX(j),
          t.toY(j),
          t.centreU(j),
          t.centreV(j),
          t.sweep(j),
          p[0],
          p[1]);
    }
    return DistanceWitness.fromLine(t.fromX(j), t.fromY(j), t.toX(j), t.toY(j), p[0], p[1]);
  }

  @Test
  void tangent_paths_rounded_to_a_thousandth_still_fit() {
    for (int seed = 0; seed < 2000; seed++) {
      Random random = new Random(seed);
      double rho = 0.5 + 10 * random.nextDouble();
      double sigma = random.nextBoolean() ? rho : -rho;
      RandomPath path = RandomPath.tangent(random, rho, 6).rounded(1000);
      Contour.Run run = path.contour(Plane.XY, sigma, path.ends(2 * rho)).run();
      assertThat(run.findings()).as("seed %d", seed).isEmpty();
      TapeChecks.assertContinuous(run.tape());
    }
  }

  @Test
  void offset_of_zero_passes_every_bit() {
    for (int seed = 0; seed < 500; seed++) {
      Plane plane = PLANES.get(seed % 3);
      RandomPath path = RandomPath.of(new Random(seed), 1.5, 6, false);
      Contour contour = path.contour(plane, 0, path.ends(3));
      Contour.Run run = contour.run();
      assertThat(run.findings()).isEmpty();
      assertThat(run.tape().size()).isEqualTo(contour.moves.size());
      for (int i = 0; i < contour.moves.size(); i++) {
        assertSameBits(run.tape(), i, contour.moves.get(i));
      }
    }
  }

  private static void assertSameBits(Tape tape, int i, ProgrammedMove m) {
    assertThat(tape.toX(i)).isEqualTo(m.toX());
    assertThat(tape.toY(i)).isEqualTo(m.toY());
    assertThat(tape.toZ(i)).isEqualTo(m.toZ());
    assertThat(tape.kind(i)).isEqualTo(m.kind());
    if (m.isArc()) {
      assertThat(tape.centreU(i)).isEqualTo(m.centreU());
      assertThat(tape.centreV(i)).isEqualTo(m.centreV());
      assertThat(tape.radius(i)).isEqualTo(m.radius());
      assertThat(tape.endRadius(i)).isEqualTo(m.endRadius());
      assertThat(tape.sweep(i)).isEqualTo(m.sweep());
    }
  }
}
