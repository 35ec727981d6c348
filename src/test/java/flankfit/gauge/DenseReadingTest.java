package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.setup.Tool.CutterForm;
import flankfit.sweep.Blank;
import flankfit.sweep.CutterPath;
import flankfit.sweep.Sweep;
import flankfit.sweep.SweptWall;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Walls read closer where they change fast tell what very many directions spread evenly tell, over
 * all kinds of path. The evenly spread ones know nothing of where it matters.
 */
class DenseReadingTest {
  /** A tenth of a micrometre. */
  private static final double SAME = 1e-4;

  /** Directions of the witness: 0.36° apart. */
  private static final int DENSE = 1000;

  /**
   * Shift from which a gauge leans aside in its first turn, held by one side only: that rows are
   * linear in the shift is then off by more than is compared here (mm).
   */
  private static final double LEANS = 0.15;

  /** A job and what is done to its path. */
  private record Kind(String name, Milled job, UnaryOperator<CutterPath> change) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Kind> kinds() {
    Map<String, Consumer<Milled>> usual = new LinkedHashMap<>();
    usual.put("straight entry and exit", job -> {});
    usual.put("half-turn entry with a quarter of the lead", job -> job.entryRiseShare = 0.25);
    usual.put("half-turn entry with half of the lead", job -> enter(job, 0.5, 0.5));
    usual.put("quarter-turn entry with its share of the lead", job -> enter(job, 0.25, 0.25));
    usual.put("flat quarter-turn entry", job -> enter(job, 0.25, 0));
    usual.put("full-turn entry on a spiral", job -> enter(job, 1, 1));
    usual.put("three-quarter-turn entry that rises too little", job -> enter(job, 0.75, 0.4));
    usual.put("single row of twelve turns", job -> lay(job, 1, 12));
    usual.put("more than a turn", job -> job.turns = 1.1);
    usual.put("lead too long", job -> job.lead = 1.507);
    usual.put("small mill", job -> mill(job, 8));
    usual.put("large mill", job -> mill(job, 17.5));
    usual.put("ground teeth", DenseReadingTest::ground);
    usual.put("two passes that do not meet", DenseReadingTest::twice);
    List<Kind> kinds = new ArrayList<>();
    usual.forEach((name, change) -> kinds.add(new Kind(name, job(change), path -> path)));
    kinds.add(new Kind("oval path", job(j -> {}), p -> p.stretched(0, 0, 1.0033, 0.9967)));
    kinds.add(new Kind("path off centre", job(j -> {}), p -> p.shifted(0.03, 0.04, 0)));
    for (BruteForceGaugeTest.Case c : BruteForceGaugeTest.cases()) {
      if (List.of("M20xPh3P1.5-6H", "M6x1-6g", "M64x6-6H", "M20x1.5-6H-LH").contains(c.thread())) {
        kinds.add(new Kind(c.toString(), BruteForceGaugeTest.job(c), path -> path));
      }
    }
    return kinds.stream();
  }

  private static Milled job(Consumer<Milled> change) {
    Milled job = new Milled();
    job.wear = -0.05;
    job.depth = Optional.of(20.0);
    change.accept(job);
    return job;
  }

  private static void enter(Milled job, double turns, double riseShare) {
    job.entryTurns = turns;
    job.entryRiseShare = riseShare;
    job.zStart = turns > 0.5 ? -18 : job.zStart;
  }

  private static void lay(Milled job, int rows, double turns) {
    job.rows = rows;
    job.turns = turns;
  }

  private static void mill(Milled job, double diameter) {
    job.mill = diameter;
    job.radii = new double[] {(20 - diameter) / 2};
  }

  private static void ground(Milled job) {
    job.form = new CutterForm.GroundFor("M20x1.5-6H", false);
    job.entryRiseShare = 0.25;
  }

  private static void twice(Milled job) {
    job.radii = new double[] {3, 3};
    job.stepZ = 0.03;
    job.rows = 8;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("kinds")
  void few_directions_tell_what_very_many_tell(Kind kind) {
    ThreadAnswer answer = kind.job().judged();
    SweptWall wall = changed((SweptWall) answer.real().orElseThrow().wall(), kind);
    boolean through = kind.job().depth.isEmpty();
    double[] ladder = DepthLadder.of(answer.spec());
    WallField few = WallField.sample(wall, answer.spec(), through, ladder);
    WallField many = WallField.sample(wall, answer.spec(), through, DENSE, ladder);
    assertThat(few.directions()).isLessThan(DENSE / 4);
    double wanted = -kind.job().threadDepth;
    sameMeasures(
        WallMeasures.of(few, wanted).orElseThrow(), WallMeasures.of(many, wanted).orElseThrow());
    sameWay(few, many, ThreadGauge.go(answer.spec()));
    sameWay(few, many, ThreadGauge.noGo(answer.spec()));
  }

  private static SweptWall changed(SweptWall wall, Kind kind) {
    List<Sweep> sweeps = new ArrayList<>();
    boolean same = true;
    for (Sweep sweep : wall.sweeps()) {
      CutterPath path = kind.change().apply(sweep.path());
      same &= path.equals(sweep.path());
      sweeps.add(new Sweep(sweep.cutter(), path, sweep.inward()));
    }
    SweptWall.Range range = new SweptWall.Range(wall.bottom(), wall.top());
    Blank blank = Blank.hole(kind.job().hole / 2, wall.bottom());
    return same ? wall : new SweptWall(wall.isInternal(), 0, 0, range, List.of(blank), sweeps);
  }

  private static void sameMeasures(WallMeasures few, WallMeasures many) {
    assertThat(few.pitch().mean()).isCloseTo(many.pitch().mean(), within(SAME));
    assertThat(few.pitch().least()).isCloseTo(many.pitch().least(), within(SAME));
    assertThat(few.pitch().greatest()).isCloseTo(many.pitch().greatest(), within(SAME));
    same(few.functional(), many.functional());
    same(few.flanks(), many.flanks());
    assertThat(few.roundness()).isCloseTo(many.roundness(), within(SAME));
    assertThat(few.deepest().depth()).isCloseTo(many.deepest().depth(), within(SAME));
  }

  private static void same(WallMeasures.Held few, WallMeasures.Held many) {
    assertThat(few.free().diameter()).isCloseTo(many.free().diameter(), within(SAME));
    assertThat(few.central().diameter()).isCloseTo(many.central().diameter(), within(SAME));
  }

  private static void sameWay(WallField few, WallField many, ThreadGauge gauge) {
    Travel one = Travel.of(few, gauge);
    Travel other = Travel.of(many, gauge);
    assertThat(one.end()).isEqualTo(other.end());
    if (Math.hypot(other.shiftX(), other.shiftY()) < LEANS) {
      // Where it stops depends on readings that dense ones have to within their own distance.
      double near = SAME + few.spec().lead() / DENSE / 10;
      assertThat(one.z()).isCloseTo(other.z(), within(near));
    }
  }
}
