package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.setup.Tool.CutterForm;
import flankfit.standard.ThreadSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is told of a whole job, from the tape on, against a witness that only asks whether points
 * lie within a cutter at very many places of its path: M3 to M64, #6 to 2 in, mills of 0.4 to 0.9
 * of the thread.
 */
class BruteForceGaugeTest {
  /** What answers may be off (mm): a fifth of a micrometre. */
  private static final double SAME = 2e-4;

  private static final double[] SHARES = {0.4, 0.5, 0.6, 0.7, 0.8, 0.9};

  private static final int CYLINDERS = 16;

  private static final String[] THREADS = {
    "M3x0.5-6H",
    "M4x0.7-6H",
    "M5x0.8-6H",
    "M6x1-6H",
    "M8x1.25-6H",
    "M8x1-6H",
    "M10x1.5-6H",
    "M12x1.75-6H",
    "M12x1.25-6H",
    "M16x2-6H",
    "M16x1.5-6H",
    "M20x2.5-6H",
    "M20x1.5-6H-LH",
    "M24x3-6H",
    "M24x1.5-6H",
    "M30x3.5-6H",
    "M30x2-6H",
    "M36x4-6H",
    "M42x4.5-6H",
    "M48x3-6H",
    "M56x5.5-6H",
    "M64x6-6H",
    "M64x4-6H",
    "M20xPh3P1.5-6H",
    "#6-32 UNC-2B",
    "#8-32 UNC-2B",
    "#10-24 UNC-2B",
    "1/4-20 UNC-2B",
    "5/16-18 UNC-2B",
    "3/8-24 UNF-2B",
    "1/2-13 UNC-2B",
    "5/8-11 UNC-2B",
    "3/4-16 UNF-2B",
    "1-12 UNF-2B",
    "1 1/4-7 UNC-2B",
    "1 1/2-6 UNC-2B",
    "2-4.5 UNC-2B",
    "M6x1-6g",
    "M20x1.5-6g",
    "M36x4-6g",
    "1/2-13 UNC-2A",
    "1-8 UNC-2A"
  };

  /** One job: mill as a share of the thread, kind of teeth, room beyond the basic size. */
  record Case(String thread, double share, String teeth, double beyond) {
    ThreadSpec spec() {
      return TurnedWall.spec(thread);
    }

    double mill() {
      double limit = spec().internal() ? spec().basicMinor() - 0.02 : Double.POSITIVE_INFINITY;
      return Math.min(share * spec().nominal(), limit);
    }

    double baseRadius() {
      return spec().lead() / (2 * Math.PI) / Math.tan(spec().halfAngle());
    }

    double crest() {
      return spec().internal() ? spec().pitch() / 8 : spec().pitch() / 4;
    }

    double path() {
      return spec().internal()
          ? (spec().nominal() - mill()) / 2 + beyond
          : (spec().basicMinor() + mill()) / 2 - beyond - 0.04 * spec().pitch();
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT, "%s, %.3f of it, %s", thread, mill() / spec().nominal(), teeth);
    }
  }

  static List<Case> cases() {
    Random random = new Random(20261128);
    List<Case> cases = new ArrayList<>();
    for (int i = 0; i < THREADS.length; i++) {
      for (int k = 0; k < 2 - i % 2; k++) {
        double share = SHARES[(i + 3 * k) % SHARES.length];
        String teeth =
            new String[] {"straight", "lopsided", "straight", "ground"}[(i + k + i / 4) % 4];
        double pitch = TurnedWall.spec(THREADS[i]).pitch();
        double beyond = (0.005 + 0.02 * random.nextDouble()) * pitch;
        Case drawn = new Case(THREADS[i], share, teeth, beyond);
        // No tooth leaves true flanks where the path is smaller than the helicoid's base circle.
        boolean possible = drawn.path() - beyond > drawn.baseRadius() || !teeth.equals("ground");
        cases.add(possible ? drawn : new Case(THREADS[i], share, "straight", beyond));
      }
    }
    return cases;
  }

  @Test
  void mills_reach_nine_tenths_of_the_thread() {
    assertThat(cases()).hasSizeGreaterThanOrEqualTo(30);
    assertThat(cases().stream().filter(c -> c.mill() > 0.895 * c.spec().nominal()).count())
        .isGreaterThanOrEqualTo(4);
    assertThat(cases().stream().filter(c -> c.mill() < 0.401 * c.spec().nominal()).count())
        .isGreaterThanOrEqualTo(4);
  }

  static Milled job(Case c) {
    ThreadSpec spec = c.spec();
    Milled job = new Milled();
    job.thread = c.thread();
    job.boss = !spec.internal();
    job.hole = spec.internal() ? spec.basicMinor() + 0.02 : spec.nominal() - 0.02;
    job.mill = c.mill();
    job.crest = c.crest();
    job.rowPitch = spec.pitch();
    job.rows = 9;
    job.lead = spec.lead();
    job.radii = new double[] {c.path()};
    job.zStart = -8 * spec.pitch() - 0.5;
    job.threadDepth = 5 * spec.pitch();
    job.anticlockwise = !spec.leftHand();
    if (c.teeth().equals("ground")) {
      job.form = new CutterForm.GroundFor(c.thread(), false);
    } else if (c.teeth().equals("lopsided")) {
      job.form = new CutterForm.Measured(lopsided(c));
    }
    return job;
  }

  /** Height over the tooth's middle and radius, uneven in both flanks. */
  private static List<List<Double>> lopsided(Case c) {
    double p = c.spec().pitch();
    double r = c.mill() / 2;
    double half = c.crest() / 2;
    return List.of(
        List.of(-0.60 * p, r - 0.93 * p),
        List.of(-half - 0.20 * p, r - 0.34 * p),
        List.of(-half - 0.01 * p, r - 0.005 * p),
        List.of(-half + 0.02 * p, r),
        List.of(half, r),
        List.of(half + 0.22 * p, r - 0.39 * p),
        List.of(0.60 * p, r - 0.91 * p));
  }

  private static DoubleUnaryOperator profile(Case c) {
    double outside = c.mill() / 2;
    double cot = 1 / Math.tan(c.spec().halfAngle());
    double half = c.crest() / 2;
    return switch (c.teeth()) {
      case "straight" -> s -> Math.min(outside, outside - (Math.abs(s) - half) * cot);
      case "ground" -> ground(c);
      default -> between(lopsided(c));
    };
  }

  private static DoubleUnaryOperator between(List<List<Double>> rows) {
    double[] s = rows.stream().mapToDouble(row -> row.get(0)).toArray();
    double[] r = rows.stream().mapToDouble(row -> row.get(1)).toArray();
    return at -> {
      for (int i = 1; i < s.length; i++) {
        if (at <= s[i] && at >= s[i - 1]) {
          return r[i - 1] + (r[i] - r[i - 1]) * (at - s[i - 1]) / (s[i] - s[i - 1]);
        }
      }
      return -1;
    };
  }

  /**
   * The tooth that leaves straight flanks, by its definition: at each height as large as the wanted
   * groove lets it be wherever it stands. Read from a table.
   */
  private static DoubleUnaryOperator ground(Case c) {
    ThreadSpec spec = c.spec();
    double p = spec.lead() / (2 * Math.PI);
    double tan = Math.tan(spec.halfAngle());
    double sign = spec.internal() ? 1 : -1;
    double bottom = spec.internal() ? spec.nominal() / 2 : spec.basicMinor() / 2;
    double path = spec.internal() ? bottom - c.mill() / 2 : bottom + c.mill() / 2;
    double outside = c.mill() / 2;
    int n = 1500;
    double most = 0.62 * spec.pitch();
    double[] radius = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      double s = most * i / n;
      DoubleUnaryOperator room =
          phi -> {
            double z = Math.abs(s + p * phi);
            double flank = spec.basicPitch() / 2 + sign * (spec.pitch() / 4 - z) / tan;
            double rho = sign * Math.min(sign * flank, sign * (bottom + sign));
            return Math.sqrt(path * path + rho * rho - 2 * path * rho * Math.cos(phi));
          };
      radius[i] = least(room);
    }
    return at -> {
      double x = Math.abs(at) / most * n;
      int i = (int) x;
      return i >= n ? -1 : Math.min(outside, radius[i] + (radius[i + 1] - radius[i]) * (x - i));
    };
  }

  private static double least(DoubleUnaryOperator f) {
    double from = -1.6;
    double to = 1.6;
    double least = Double.POSITIVE_INFINITY;
    for (int refined = 0; refined < 4; refined++) {
      double step = (to - from) / 120;
      double at = from;
      for (int i = 0; i <= 120; i++) {
        double here = f.applyAsDouble(from + step * i);
        if (here < least) {
          least = here;
          at = from + step * i;
        }
      }
      from = at - step;
      to = at + step;
    }
    return least;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void measures_are_those_of_very_many_places_of_the_cutter(Case c) {
    ThreadSpec spec = c.spec();
    Measures measured = job(c).endless().finished().orElseThrow();
    MembershipGroove witness =
        new MembershipGroove(
            spec.internal(), profile(c), c.path(), spec.lead() / (2 * Math.PI), spec.pitch());
    double sign = spec.internal() ? 1 : -1;
    double bottom = c.path() + sign * c.mill() / 2;
    double blank = job(c).hole / 2;
    double tan = Math.tan(spec.halfAngle());
    assertThat(witness.pitchDiameter(blank, bottom))
        .as("simple pitch diameter")
        .isCloseTo(measured.pitchSimple(), within(SAME));
    Mate plug = Mate.of(spec);
    double root = sign * Math.max(sign * blank, sign * plug.rootRadius());
    double[] onFlanks = witness.rooms(root, plug.relievedRadius(), tan, CYLINDERS);
    double flanks = witness.plug(onFlanks, tan);
    assertThat(flanks).as("flanks").isCloseTo(measured.functionalFlank(), within(SAME));
    assertThat(sign * (bottom - plug.crestRadius())).isPositive();
    double[] beside = witness.rooms(plug.relievedRadius(), plug.crestRadius(), tan, CYLINDERS);
    double[] all = {Math.min(onFlanks[0], beside[0]), Math.min(onFlanks[1], beside[1])};
    assertThat(witness.plug(all, tan))
        .as("full form")
        .isCloseTo(measured.functional(), within(SAME));
  }
}
