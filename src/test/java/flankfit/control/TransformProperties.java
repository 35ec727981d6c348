package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.ModalState.Compensation;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A program under mirror, scale or rotation makes the path that it makes without, mirrored, scaled
 * or rotated as geometry.
 */
class TransformProperties {
  private static final double LINE = 1e-9;

  /** Centres of arcs by radius follow their rounded ends no better than this. */
  private static final double ARC = 1e-6;

  private static final double[] SHIFT = {11.5, -7.25, 3};
  private static final SetupSheet SHEET =
      ExampleSheet.of("G54 = [4.5, 2.25, -1.5], D1 = { geometry = 1.5 }");
  private static final double[] ZERO = {16, -5, 1.5};

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 12);
  }

  static Stream<Arguments> planesAndSeeds() {
    return Stream.of(Plane.values())
        .flatMap(plane -> LongStream.rangeClosed(1, 6).mapToObj(s -> Arguments.of(plane, s)));
  }

  private record Axis(boolean mirrored, double mirrorAt, double scaleAt) {}

  /** What is done to a point of the program frame. */
  private record Geometry(List<Axis> axes, double factor, Turn turn) {
    double[] of(double[] p) {
      double[] q = new double[3];
      for (int i = 0; i < 3; i++) {
        Axis axis = axes.get(i);
        q[i] = axis.mirrored() ? 2 * axis.mirrorAt() - p[i] : p[i];
        q[i] = axis.scaleAt() + factor * (q[i] - axis.scaleAt());
      }
      return turn.of(q);
    }

    boolean flips(Plane plane) {
      return axes.get(plane.u()).mirrored() != axes.get(plane.v()).mirrored();
    }
  }

  private record Turn(Plane plane, double u, double v, double degrees) {
    double[] of(double[] p) {
      double[] q = p.clone();
      double c = Math.cos(Math.toRadians(degrees));
      double s = Math.sin(Math.toRadians(degrees));
      double du = p[plane.u()] - u;
      double dv = p[plane.v()] - v;
      q[plane.u()] = u + c * du - s * dv;
      q[plane.v()] = v + s * du + c * dv;
      return q;
    }
  }

  private static final List<Axis> PLAIN = Collections.nCopies(3, new Axis(false, 0, 0));

  private static Geometry identity(Plane plane) {
    return new Geometry(PLAIN, 1, new Turn(plane, 0, 0, 0));
  }

  private static Geometry rotation(Random random, Plane plane) {
    int quarter = random.nextInt(4);
    double angle = random.nextBoolean() ? quarter * 90 : random.nextInt(7200) / 10.0 - 360;
    Turn turn = new Turn(plane, random.nextInt(40) - 20, random.nextInt(40) - 20, angle);
    return new Geometry(PLAIN, 1, turn);
  }

  private static Geometry mirror(Random random, Plane plane, int axes) {
    List<Axis> mirrored = new ArrayList<>();
    int one = random.nextInt(axes);
    for (int i = 0; i < 3; i++) {
      mirrored.add(new Axis(i == one || (i < axes && random.nextBoolean()), random.nextInt(20), 0));
    }
    return new Geometry(mirrored, 1, new Turn(plane, 0, 0, 0));
  }

  private static Geometry scaled(Random random, Geometry other) {
    List<Axis> axes =
        other.axes().stream()
            .map(a -> new Axis(a.mirrored(), a.mirrorAt(), random.nextInt(20)))
            .toList();
    return new Geometry(axes, (1 + random.nextInt(30)) / 8.0, other.turn());
  }

  /** The words that say a geometry, each in its block. */
  private static String words(Geometry g) {
    StringBuilder text = new StringBuilder();
    if (g.axes().stream().anyMatch(Axis::mirrored)) {
      text.append("G51.1");
      for (int axis = 0; axis < 3; axis++) {
        Axis a = g.axes().get(axis);
        text.append(a.mirrored() ? word(axis, a.mirrorAt()) : "");
      }
      text.append("\n");
    }
    if (g.factor() != 1) {
      text.append("G51");
      for (int axis = 0; axis < 3; axis++) {
        text.append(word(axis, g.axes().get(axis).scaleAt()));
      }
      text.append(" P").append(number(g.factor())).append("\n");
    }
    Turn turn = g.turn();
    if (turn.degrees() != 0) {
      Plane plane = turn.plane();
      text.append("G68").append(word(plane.u(), turn.u())).append(word(plane.v(), turn.v()));
      text.append(" R").append(number(turn.degrees())).append("\n");
    }
    return text.toString();
  }

  private static String word(int axis, double value) {
    return " " + (char) ('X' + axis) + number(value);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.4f", value);
  }

  private static String head(Plane plane, Geometry g) {
    String words = words(g);
    String function = plane == Plane.XY ? "G17" : plane == Plane.ZX ? "G18" : "G19";
    String shift = "G52" + word(0, SHIFT[0]) + word(1, SHIFT[1]) + word(2, SHIFT[2]) + "\n";
    return "G21 G90 G40 G54 S1000 M3 F200.\n" + function + "\n" + shift + words;
  }

  /** Lines, rapids, arcs by centre and by radius, helices, in absolute and incremental mode. */
  private static String path(Random random, Plane plane) {
    StringBuilder text = new StringBuilder("G0 X0 Y0 Z0\n");
    for (int i = 0; i < 30; i++) {
      int motion = random.nextInt(5);
      if (motion < 2) {
        text.append(random.nextBoolean() ? "G90 G" : "G91 G").append(motion);
        for (int axis = 0; axis < 3; axis++) {
          double reach = random.nextInt(80_000) / 1000.0 - 40;
          text.append(random.nextInt(4) > 0 ? word(axis, reach) : "");
        }
      } else {
        arc(text, random, plane, motion);
      }
      text.append("\n");
    }
    return text.append("G90\nG50.1\nG50\nG69\nM30\n").toString();
  }

  private static void arc(StringBuilder text, Random random, Plane plane, int motion) {
    double r = 1 + random.nextInt(9_000) / 1000.0;
    text.append("G91 G").append(random.nextBoolean() ? 2 : 3);
    text.append(word(plane.u(), r)).append(word(plane.v(), r));
    text.append(word(plane.n(), random.nextInt(2000) / 1000.0 - 1));
    if (motion == 2) {
      text.append(" R").append(random.nextBoolean() ? "" : "-").append(number(r));
    } else {
      text.append(" ").append((char) ('I' + plane.u())).append(number(r));
      text.append(" ").append((char) ('I' + plane.v())).append("0");
    }
  }

  private static Tape tape(String text) {
    return tape(text, SHEET);
  }

  private static Tape tape(String text, SetupSheet sheet) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    SourceText source = SourceText.of("law.nc", bytes);
    Interpretation result = Interpreter.replay(source, sheet, List.of());
    assertThat(result.complete()).as("%s\n%s\n%s", result.stoppedAt(), result, text).isTrue();
    return result.tape();
  }

  private static double[] mapped(Geometry g, double x, double y, double z) {
    double[] p = {x - ZERO[0], y - ZERO[1], z - ZERO[2]};
    double[] q = g.of(p);
    return new double[] {q[0] + ZERO[0], q[1] + ZERO[1], q[2] + ZERO[2]};
  }

  /** Every move but the first, which comes from where the tool stood before. */
  private static void same(Tape plain, Tape under, Geometry g, double tolerance) {
    assertThat(under.size()).isEqualTo(plain.size());
    for (int i = 0; i < plain.size(); i++) {
      assertThat(under.kind(i)).isEqualTo(plain.kind(i));
      double[] end = mapped(g, plain.toX(i), plain.toY(i), plain.toZ(i));
      assertThat(under.toX(i)).as("move %d", i).isCloseTo(end[0], within(tolerance));
      assertThat(under.toY(i)).as("move %d", i).isCloseTo(end[1], within(tolerance));
      assertThat(under.toZ(i)).as("move %d", i).isCloseTo(end[2], within(tolerance));
      if (plain.kind(i) == MoveKind.ARC) {
        sameArc(plain, under, g, i);
      }
      assertThat(under.state(i).compensation())
          .isEqualTo(side(plain.state(i).compensation(), g.flips(plain.state(i).plane())));
    }
    TapeChecks.assertContinuous(under);
  }

  private static Compensation side(Compensation side, boolean flipped) {
    if (!flipped || side == Compensation.OFF) {
      return side;
    }
    return side == Compensation.LEFT ? Compensation.RIGHT : Compensation.LEFT;
  }

  private static void sameArc(Tape plain, Tape under, Geometry g, int i) {
    Plane plane = plain.state(i).plane();
    double[] c = new double[3];
    c[plane.u()] = plain.centreU(i);
    c[plane.v()] = plain.centreV(i);
    double[] centre = mapped(g, c[0], c[1], c[2]);
    assertThat(under.centreU(i)).isCloseTo(centre[plane.u()], within(ARC));
    assertThat(under.centreV(i)).isCloseTo(centre[plane.v()], within(ARC));
    assertThat(under.radius(i)).isCloseTo(plain.radius(i) * g.factor(), within(ARC));
    double sense = g.flips(plane) ? -1 : 1;
    assertThat(under.sweep(i) * plain.radius(i))
        .isCloseTo(sense * plain.sweep(i) * plain.radius(i), within(ARC));
  }

  private static void law(String body, Plane plane, Geometry g, double tolerance) {
    same(tape(head(plane, identity(plane)) + body), tape(head(plane, g) + body), g, tolerance);
  }

  @ParameterizedTest
  @MethodSource("planesAndSeeds")
  void rotation_turns_the_path(Plane plane, long seed) {
    Random random = new Random(seed);
    law(path(random, plane), plane, rotation(random, plane), LINE);
  }

  @ParameterizedTest
  @MethodSource("planesAndSeeds")
  void mirror_mirrors_the_path_and_its_turns(Plane plane, long seed) {
    Random random = new Random(seed);
    law(path(random, plane), plane, mirror(random, plane, 3), LINE);
  }

  @ParameterizedTest
  @MethodSource("planesAndSeeds")
  void scale_stretches_the_path(Plane plane, long seed) {
    Random random = new Random(seed);
    law(path(random, plane), plane, scaled(random, identity(plane)), LINE);
  }

  @ParameterizedTest
  @MethodSource("planesAndSeeds")
  void mirror_scale_and_rotation_act_in_this_order(Plane plane, long seed) {
    Random random = new Random(seed);
    Geometry mirror = mirror(random, plane, 3);
    Geometry both = new Geometry(mirror.axes(), 1, rotation(random, plane).turn());
    law(path(random, plane), plane, scaled(random, both), LINE);
  }

  /** A work offset by G10 in machine coordinates is the same one entered in the sheet. */
  @ParameterizedTest
  @MethodSource("planesAndSeeds")
  void offset_set_by_the_program_commutes_with_every_transform(Plane plane, long seed) {
    Random random = new Random(seed);
    Geometry mirror = mirror(random, plane, 3);
    Geometry all = scaled(random, new Geometry(mirror.axes(), 1, rotation(random, plane).turn()));
    String text = head(plane, all) + path(random, plane);
    String set = text.replace("G54 S", "G54\nG10 L2 P1 X304.5 Y202.25 Z-251.5\nS");
    SetupSheet bare = ExampleSheet.of("machine-zero = [-300.0, -200.0, 250.0]");
    same(tape(text), tape(set, bare), identity(plane), LINE);
  }

  /** A closed contour with inside and outside corners and arcs. */
  private static final String CONTOUR =
      """
      G0 X-20. Y-20. Z5.
      G1 Z-3.
      G41 D1 X-12. Y-8.
      Y6.
      G2 X-6. Y12. I6.
      G1 X3. Y9.
      G3 X9. Y3. J-6.
      G1 X15. Y14.
      X18. Y-8.
      X-12.
      X-20.
      G40 X-30. Y-20.
      G0 Z20.
      G50.1
      G69
      M30
      """;

  @ParameterizedTest
  @MethodSource("seeds")
  void compensated_contour_follows_rotation_and_mirror(long seed) {
    Random random = new Random(seed);
    String body = seed % 2 == 0 ? CONTOUR : CONTOUR.replace("G41", "G42");
    law(body, Plane.XY, rotation(random, Plane.XY), ARC);
    law(body, Plane.XY, mirror(random, Plane.XY, 3), ARC);
  }

  /** Rows and single holes; the shift of bores follows the spindle and is no part of this law. */
  private static String holes(Random random) {
    StringBuilder text = new StringBuilder("G0 X0 Y0 Z20.\n");
    String[] cycles = {
      "G81", "G82 P200", "G83 Q1.5", "G73 Q2.", "G84", "G85", "G86 P100", "G88", "G89"
    };
    for (int i = 0; i < 8; i++) {
      String cycle = cycles[random.nextInt(cycles.length)];
      text.append(random.nextBoolean() ? "G98 " : "G99 ").append(cycle);
      text.append(word(0, random.nextInt(60) - 30));
      text.append(random.nextBoolean() ? word(1, random.nextInt(60) - 30) : "");
      text.append(" Z-").append(1 + random.nextInt(9)).append(". R").append(1 + random.nextInt(4));
      text.append(".\nG91 X").append(random.nextInt(9)).append(". Y3. L3\nG90 Y1.\n");
    }
    return text.append("G80\nG50.1\nG69\nG0 Z50.\nM30\n").toString();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void holes_of_cycles_follow_rotation_and_mirror(long seed) {
    Random random = new Random(seed);
    String body = holes(random).replace("G50.1\nG69\nG0 Z50.\n", "");
    Geometry turned = rotation(random, Plane.XY);
    law(body, Plane.XY, turned, LINE);
    Geometry mirror = mirror(random, Plane.XY, seed % 3 == 0 ? 3 : 2);
    Geometry flat = new Geometry(mirror.axes(), 1, turned.turn());
    law(body, Plane.XY, flat, LINE);
  }
}
