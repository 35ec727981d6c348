package flankfit.odds;

import flankfit.gauge.Deviation;
import flankfit.gauge.Formed;
import flankfit.gauge.ThreadVariation;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * The diameters of a thread over all its deviations, fast enough for many thousand draws. Held as
 * {@link Surface}s; within half a micrometre of the exact measures inside its ranges.
 */
final class Response {
  private static final int CUTTER = 0;
  private static final int CREST = 1;
  private static final int BENDING = 2;
  private static final int HOLE = 3;

  /** Times that the range of depths is cut by a fifth until all of it can be measured. */
  private static final int MOST_CUTS = 40;

  private static final double CUT = 0.8;

  private final ThreadVariation variation;
  private final double sign;
  private final double cotangent;
  private final double blank;
  private final double bendingRange;
  private final ThreadVariation.Reaches lessBent;
  private final ThreadVariation.Reaches moreBent;
  private final Surface simple;
  private final Surface felt;
  private final Surface flanks;
  private final Surface play;
  private final Surface ridge;

  private Response(ThreadVariation variation, Ranges ranges, double low, double high) {
    this.variation = variation;
    this.sign = variation.spec().internal() ? 1 : -1;
    this.cotangent = 1 / Math.tan(variation.spec().halfAngle());
    this.blank = variation.hole().diameter();
    this.bendingRange = variation.bends() ? ranges.bending() : 0;
    this.lessBent = variation.reaches(1 - bendingRange);
    this.moreBent = variation.reaches(1 + bendingRange);
    Cache cache = new Cache(ranges);
    this.simple =
        cache
            .surface(low, high, Formed::simple, ThreadVariation.Reaches::mean)
            .and(
                CREST,
                ranges.crest(),
                x -> simple(new Deviation(x, 0, -ranges.crest(), 1, 0)),
                x -> simple(new Deviation(x, 0, ranges.crest(), 1, 0)));
    this.felt =
        cache
            .surface(low, high, Formed::felt, ThreadVariation.Reaches::felt)
            .and(
                CREST,
                ranges.crest(),
                x -> felt(new Deviation(x, 0, -ranges.crest(), 1, 0)),
                x -> felt(new Deviation(x, 0, ranges.crest(), 1, 0)));
    this.flanks =
        cache
            .surface(low, high, Formed::flanks, ThreadVariation.Reaches::tight)
            .and(
                HOLE,
                ranges.hole(),
                x -> flanks(new Deviation(x, 0, 0, 1, -ranges.hole())),
                x -> flanks(new Deviation(x, 0, 0, 1, ranges.hole())));
    this.play = cache.alone(low, high, Formed::play);
    this.ridge = cache.alone(low, high, Formed::ridge);
  }

  /**
   * The response of a thread; empty when the thread cannot be measured as it is.
   *
   * @param ranges how far it reaches; the depth is cut short where nothing can be measured
   */
  static Optional<Response> of(ThreadVariation variation, Ranges ranges) {
    if (!measurable(variation, ranges, 0)) {
      return Optional.empty();
    }
    double low = -Math.min(ranges.shallow(), variation.room(true));
    double high = Math.min(ranges.deep(), variation.room(false));
    for (int i = 0; i < MOST_CUTS && !measurable(variation, ranges, low); i++) {
      low *= CUT;
    }
    for (int i = 0; i < MOST_CUTS && !measurable(variation, ranges, high); i++) {
      high *= CUT;
    }
    return Optional.of(new Response(variation, ranges, low, high));
  }

  /** Whether all corners at a depth can be measured. */
  private static boolean measurable(ThreadVariation variation, Ranges r, double depth) {
    for (double side : new double[] {-1, 1}) {
      boolean all =
          variation
                  .formed(new Deviation(depth - side * r.cutter(), side * r.cutter(), 0, 1, 0))
                  .isPresent()
              && variation.formed(new Deviation(depth, 0, side * r.crest(), 1, 0)).isPresent()
              && variation.formed(new Deviation(depth, 0, 0, 1, side * r.hole())).isPresent()
              && variation
                  .formed(new Deviation(depth, 0, 0, 1 + side * r.bending(), 0))
                  .isPresent();
      if (!all) {
        return false;
      }
    }
    return true;
  }

  private Formed exact(Deviation deviation) {
    return variation
        .formed(deviation)
        .orElseThrow(() -> new IllegalArgumentException("not measurable: " + deviation));
  }

  private double simple(Deviation deviation) {
    return exact(deviation).simple();
  }

  private double felt(Deviation deviation) {
    return exact(deviation).felt();
  }

  private double flanks(Deviation deviation) {
    return exact(deviation).flanks();
  }

  /** Makes surfaces with what mill and bending change. */
  private final class Cache {
    private final Ranges ranges;

    Cache(Ranges ranges) {
      this.ranges = ranges;
    }

    Surface alone(double low, double high, ToDoubleFunction<Formed> which) {
      return new Surface(low, high, x -> which.applyAsDouble(exact(Deviation.none().deeper(x))));
    }

    Surface surface(
        double low,
        double high,
        ToDoubleFunction<Formed> which,
        ToDoubleFunction<ThreadVariation.Reaches> reach) {
      return alone(low, high, which)
          .and(CUTTER, ranges.cutter(), cutter(which, -1), cutter(which, 1))
          .and(
              BENDING,
              bendingRange,
              bent(which, -1, reach.applyAsDouble(lessBent)),
              bent(which, 1, reach.applyAsDouble(moreBent)));
    }

    private DoubleUnaryOperator cutter(ToDoubleFunction<Formed> which, int side) {
      double more = side * ranges.cutter();
      return x -> which.applyAsDouble(exact(new Deviation(x - more, more, 0, 1, 0)));
    }

    private DoubleUnaryOperator bent(ToDoubleFunction<Formed> which, int side, double reach) {
      double times = 1 + side * bendingRange;
      return x -> which.applyAsDouble(exact(new Deviation(x - reach, 0, 0, times, 0)));
    }
  }

  /** The diameters with a deviation; beyond the ranges they go on as straight lines. */
  Formed at(Deviation d) {
    double[] deviations = {d.cutter(), d.crest(), d.bending() - 1, d.hole()};
    double depth = d.depth() + d.cutter();
    double tight = depth + reach(d, lessBent.tight(), moreBent.tight());
    double mean = depth + reach(d, lessBent.mean(), moreBent.mean());
    double noGo = depth + reach(d, lessBent.felt(), moreBent.felt());
    return new Formed(
        simple.at(mean, deviations),
        felt.at(noGo, deviations),
        flanks.at(tight, deviations) + sign * d.crest() * cotangent,
        play.at(tight, deviations),
        ridge(mean, d.hole()));
  }

  /** Change of the reach by bending alone, a parabola through three values (mm). */
  private double reach(Deviation d, double less, double more) {
    if (bendingRange == 0) {
      return 0;
    }
    double t = (d.bending() - 1) / bendingRange;
    return t / 2 * (more - less + t * (less + more));
  }

  /** The ridge is the hole's wall unless flanks meet before it. */
  private double ridge(double depth, double hole) {
    double wall = blank + 2 * hole;
    double now = ridge.at(depth, new double[] {0, 0, 0, 0});
    boolean sharp = sign * (now - blank) > 1e-9;
    return sharp ? sign * Math.max(sign * now, sign * wall) : wall;
  }

  /** Least depth that was measured (mm). */
  double shallowest() {
    return simple.low();
  }

  /** Greatest depth that was measured (mm). */
  double deepest() {
    return simple.high();
  }

  ThreadVariation variation() {
    return variation;
  }
}
