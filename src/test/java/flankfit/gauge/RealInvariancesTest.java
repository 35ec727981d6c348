package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Travel.Play;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.Point;
import flankfit.setup.Tool;
import flankfit.sweep.Blank;
import flankfit.sweep.CutterPath;
import flankfit.sweep.Sweep;
import flankfit.sweep.SweptWall;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The answer on the path as moved does not depend on how the part lies or is written. */
class RealInvariancesTest {
  private static final double DIRECTION = Angles.TURN / WallField.DIRECTIONS;

  /** A kind of defect, to be made anew for each change. */
  private enum Defect {
    NONE,
    TWICE,
    WRONG_LEAD,
    TAPER,
    OFF_CENTRE,
    SHORT;

    /** Off centre, readings across lie between directions that are not the same there (mm). */
    double near() {
      return this == OFF_CENTRE ? 3e-5 : 2e-6;
    }

    Milled job() {
      Milled job = new Milled();
      job.wear = -0.05;
      job.depth = Optional.of(20.0);
      switch (this) {
        case TWICE -> {
          job.radii = new double[] {3, 3};
          job.stepZ = 0.03;
          job.rows = 8;
        }
        case WRONG_LEAD -> {
          job.rows = 1;
          job.turns = 12;
          job.lead = 1.507;
        }
        case TAPER -> {
          job.metal = "steel C45";
          job.neck = Optional.of(new Tool.Section(11, 25));
          job.shank = Optional.of(new Tool.Section(14, 15));
        }
        case OFF_CENTRE -> {
          job.axes = List.of(new Point(0.03, -0.04, 0));
          job.holesAt = List.of(Point.ZERO);
        }
        case SHORT -> {
          job.rows = 7;
          job.zStart = -9;
        }
        default -> {}
      }
      return job;
    }
  }

  static Stream<Defect> defects() {
    return Stream.of(Defect.values());
  }

  private static RealAnswer real(Milled job) {
    return job.judged().real().orElseThrow();
  }

  private static void same(RealAnswer one, RealAnswer other, double near) {
    assertThat(other.go().end()).isEqualTo(one.go().end());
    assertThat(other.go().turns()).isCloseTo(one.go().turns(), within(near));
    assertThat(other.go().z()).isCloseTo(one.go().z(), within(near));
    assertThat(other.noGo().turns()).isCloseTo(one.noGo().turns(), within(near));
    assertThat(other.noGo().accepted()).isEqualTo(one.noGo().accepted());
    assertThat(other.reachesWanted()).isEqualTo(one.reachesWanted());
    PlainRuling plain = one.plain().orElseThrow();
    PlainRuling otherPlain = other.plain().orElseThrow();
    assertThat(otherPlain.go().clearance()).isCloseTo(plain.go().clearance(), within(near));
    assertThat(otherPlain.noGo().z()).isCloseTo(plain.noGo().z(), within(near));
    assertThat(other.depth().orElseThrow().reads())
        .isCloseTo(one.depth().orElseThrow().reads(), within(near));
    WallMeasures a = one.measures().orElseThrow();
    WallMeasures b = other.measures().orElseThrow();
    assertThat(b.pitch().mean()).isCloseTo(a.pitch().mean(), within(near));
    assertThat(b.pitch().least()).isCloseTo(a.pitch().least(), within(near));
    assertThat(b.pitch().greatest()).isCloseTo(a.pitch().greatest(), within(near));
    assertThat(b.functional().free().diameter())
        .isCloseTo(a.functional().free().diameter(), within(near));
    assertThat(b.flanks().central().diameter())
        .isCloseTo(a.flanks().central().diameter(), within(near));
    assertThat(b.taper()).isCloseTo(a.taper(), within(near));
    assertThat(b.roundness()).isCloseTo(a.roundness(), within(near));
    assertThat(b.leadError()).isCloseTo(a.leadError(), within(near));
    assertThat(b.deepest().depth()).isCloseTo(a.deepest().depth(), within(near));
    assertThat(b.ends().fullTurns()).isCloseTo(a.ends().fullTurns(), within(near));
  }

  private static void turn(Milled job, double angle) {
    job.firstAngle = angle;
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    job.axes =
        job.axes.stream()
            .map(p -> new Point(p.x() * cos - p.y() * sin, p.x() * sin + p.y() * cos, 0))
            .toList();
  }

  private static double apart(double one, double other) {
    return Math.abs(Math.IEEEremainder(one - other, Angles.TURN));
  }

  @ParameterizedTest
  @MethodSource("defects")
  void turned_about_the_axis(Defect defect) {
    RealAnswer usual = real(defect.job());
    double angle = 48 * DIRECTION;
    Milled stepped = defect.job();
    turn(stepped, angle);
    RealAnswer onDirections = real(stepped);
    same(usual, onDirections, defect.near());
    if (usual.measures().orElseThrow().deepest().depth() > 0.002) {
      double before = usual.measures().orElseThrow().deepest().theta();
      double after = onDirections.measures().orElseThrow().deepest().theta();
      assertThat(apart(after, before + angle)).isLessThan(1e-6);
    }
    // Between the directions that are read, what is local is met a little elsewhere.
    Milled turned = defect.job();
    turn(turned, 1.2345);
    RealAnswer there = real(turned);
    assertThat(there.go().turns()).isCloseTo(usual.go().turns(), within(0.03));
    assertThat(there.noGo().turns()).isCloseTo(usual.noGo().turns(), within(0.03));
    assertThat(there.measures().orElseThrow().pitch().mean())
        .isCloseTo(usual.measures().orElseThrow().pitch().mean(), within(2e-4));
  }

  @ParameterizedTest
  @MethodSource("defects")
  void mirrored(Defect defect) {
    Milled mirrored = defect.job();
    mirrored.thread = "M20x1.5-6H-LH";
    mirrored.anticlockwise = false;
    // A mirrored mill turns the other way.
    mirrored.spindle = Spindle.COUNTER_CLOCKWISE;
    mirrored.axes = mirrored.axes.stream().map(p -> new Point(p.x(), -p.y(), 0)).toList();
    same(real(defect.job()), real(mirrored), defect.near());
  }

  @ParameterizedTest
  @MethodSource("defects")
  void told_in_inches(Defect defect) {
    Milled inches = defect.job();
    inches.unit = LengthUnit.INCH;
    RealAnswer there = real(inches);
    RealAnswer here = real(defect.job());
    same(here, there, 0);
    assertThat(there.go()).isEqualTo(here.go());
    assertThat(there.measures()).isEqualTo(here.measures());
  }

  @ParameterizedTest
  @MethodSource("defects")
  void turns_cut_in_several_arcs(Defect defect) {
    Milled split = defect.job();
    split.arcs = 6 * (int) split.turns;
    same(real(defect.job()), real(split), 2e-6);
  }

  /** A quarter of a turn is a whole number of directions; long and short axis change places. */
  @Test
  void an_oval_path_turned_a_quarter() {
    Milled job = Defect.NONE.job();
    WallMeasures usual = oval(job, 1.0033, 0.9967);
    job.firstAngle = Angles.TURN / 4;
    WallMeasures turned = oval(job, 0.9967, 1.0033);
    assertThat(usual.roundness()).isCloseTo(3.05 * 0.0066, within(0.002));
    assertThat(turned.roundness()).isCloseTo(usual.roundness(), within(2e-6));
    assertThat(turned.pitch().mean()).isCloseTo(usual.pitch().mean(), within(2e-6));
    assertThat(turned.pitch().least()).isCloseTo(usual.pitch().least(), within(2e-6));
    assertThat(turned.pitch().greatest()).isCloseTo(usual.pitch().greatest(), within(2e-6));
    assertThat(turned.functional().free().diameter())
        .isCloseTo(usual.functional().free().diameter(), within(2e-6));
    assertThat(turned.functional().central().diameter())
        .isCloseTo(usual.functional().central().diameter(), within(2e-6));
  }

  private static WallMeasures oval(Milled job, double longer, double shorter) {
    ThreadAnswer answer = job.judged();
    SweptWall round = (SweptWall) answer.real().orElseThrow().wall();
    List<Sweep> sweeps = new ArrayList<>();
    for (Sweep sweep : round.sweeps()) {
      CutterPath path = sweep.path().stretched(0, 0, longer, shorter);
      sweeps.add(new Sweep(sweep.cutter(), path, sweep.inward()));
    }
    SweptWall wall =
        new SweptWall(
            true,
            0,
            0,
            new SweptWall.Range(round.bottom(), round.top()),
            List.of(Blank.hole(job.hole / 2, round.bottom())),
            sweeps);
    WallField field = WallField.sample(wall, answer.spec(), false, DepthLadder.of(answer.spec()));
    return WallMeasures.of(field, -job.threadDepth).orElseThrow();
  }

  static List<BruteForceGaugeTest.Case> someCases() {
    List<BruteForceGaugeTest.Case> all = BruteForceGaugeTest.cases();
    return IntStream.range(0, all.size())
        .filter(i -> i % 5 == 0 || all.get(i).spec().starts() > 1)
        .mapToObj(all::get)
        .toList();
  }

  /** Grid and helix agree to 0.05 micrometres where both apply: away from both ends. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("someCases")
  void middle_of_the_wall_as_moved_is_the_endless_helix(BruteForceGaugeTest.Case c) {
    Milled job = BruteForceGaugeTest.job(c);
    ThreadAnswer answer = job.judged();
    Measures endless = answer.finished().orElseThrow();
    RealAnswer real = answer.real().orElseThrow();
    List<WallMeasures.Level> levels = real.measures().orElseThrow().levels();
    double pitch = levels.get(levels.size() / 2).pitch().mean();
    assertThat(pitch).isCloseTo(endless.pitchSimple(), within(5e-5));
    double[] ladder = DepthLadder.ofKinked(c.spec());
    WallField field = WallField.sample(real.wall(), c.spec(), true, 24, ladder);
    double low = -4.5 * c.spec().pitch();
    double high = -2.4 * c.spec().pitch();
    // Between depths a kink of a measured tooth may hide a little more.
    double near = c.teeth().equals("lopsided") ? 1e-4 : 5e-5;
    assertThat(Functional.full(field, Play.CENTRAL, low, high).diameter())
        .isCloseTo(endless.functional(), within(near));
  }

  @Test
  void bosses_of_every_kind_have_finite_measures() {
    // These jobs come in from above the boss and cut a ridge away up to the face: such a flank is
    // free and no departure.
    for (BruteForceGaugeTest.Case c : BruteForceGaugeTest.cases()) {
      if (!c.spec().internal()) {
        ThreadAnswer answer = BruteForceGaugeTest.job(c).judged();
        WallMeasures measured = answer.real().orElseThrow().measures().orElseThrow();
        assertThat(measured.deepest().depth()).as("%s", c).isFinite().isNotNegative();
        assertThat(measured.flankAngleUp()).isCloseTo(measured.flankAngleDown(), within(0.03));
        assertThat(measured.pitch().mean())
            .isCloseTo(answer.finished().orElseThrow().pitchSimple(), within(0.01));
      }
    }
  }

  @Test
  void the_defects_are_there() {
    assertThat(real(Defect.WRONG_LEAD.job()).measures().orElseThrow().leadError())
        .isCloseTo(0.007, within(1e-4));
    assertThat(Math.abs(real(Defect.TAPER.job()).measures().orElseThrow().taper()))
        .isGreaterThan(2e-5);
    assertThat(real(Defect.SHORT.job()).reachesWanted()).isFalse();
  }
}
