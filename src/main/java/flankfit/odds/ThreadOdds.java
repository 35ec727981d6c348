package flankfit.odds;

import flankfit.chance.QuasiRandom;
import flankfit.chance.Shares;
import flankfit.gauge.ThreadVariation;
import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.ToDoubleFunction;

/**
 * How likely the gauges are to pass when everything scatters together; the same seed gives the same
 * odds.
 *
 * @param draws number of draws
 * @param seed the seed
 * @param goEnters probability that the GO gauge enters (1)
 * @param noGoStops probability that the NO-GO gauge stops (1)
 * @param plainGood probability that the plain plugs pass (1); 1 where there are none
 * @param good probability that all of them pass (1)
 * @param pitchLow simple pitch diameter that one thread in forty falls below (mm)
 * @param pitchHigh simple pitch diameter that one thread in forty exceeds (mm)
 * @param contributors what scatters, by falling share
 * @param assumptions what the odds rest on
 */
public record ThreadOdds(
    int draws,
    long seed,
    double goEnters,
    double noGoStops,
    double plainGood,
    double good,
    double pitchLow,
    double pitchHigh,
    List<Contributor> contributors,
    List<String> assumptions) {
  /** Draws unless others are asked for. */
  public static final int DRAWS = 10_000;

  /** Seed unless another is asked for. */
  public static final long SEED = 1;

  /** Points of each sample for the shares: a power of two fills the cube best. */
  private static final int SHARE_POINTS = 2048;

  private static final double TAIL = 0.025;

  public ThreadOdds {
    contributors = List.copyOf(contributors);
    assumptions = List.copyOf(assumptions);
  }

  static ThreadOdds of(OddsModel model, int draws, long seed) {
    return of(model, draws, seed, Watch.NONE);
  }

  /**
   * The same before the eyes of somebody who waits.
   *
   * @throws CancellationException if the watch stopped it
   */
  static ThreadOdds of(OddsModel model, int draws, long seed, Watch watch) {
    Require.within("draws", draws, 1, 10_000_000);
    int go = 0;
    int noGo = 0;
    int plain = 0;
    int good = 0;
    double[] pitches = new double[draws];
    double[][] points = points(model, draws, seed);
    Pace pace = new Pace(watch, draws + (long) SHARE_POINTS * (model.dimension() + 2));
    for (int i = 0; i < draws; i++) {
      pace.step();
      OddsModel.Made made = model.made(points[i]);
      pitches[i] = made.at(0).simple();
      ThreadVariation.Spare spare = made.spare(0);
      go += spare.go() >= 0 ? 1 : 0;
      noGo += spare.noGo() >= 0 ? 1 : 0;
      plain += spare.plain() >= 0 ? 1 : 0;
      good += spare.least() >= 0 ? 1 : 0;
    }
    Arrays.sort(pitches);
    return new ThreadOdds(
        draws,
        seed,
        share(go, draws),
        share(noGo, draws),
        share(plain, draws),
        share(good, draws),
        pitches[(int) (TAIL * (draws - 1))],
        pitches[(int) Math.ceil((1 - TAIL) * (draws - 1))],
        contributors(model, seed, pace),
        model.inputs().assumptions());
  }

  static double[][] points(OddsModel model, int count, long seed) {
    // one coordinate at least, also when nothing scatters
    return QuasiRandom.points(count, Math.max(1, model.dimension()), seed);
  }

  private static double share(int count, int draws) {
    return (double) count / draws;
  }

  /** Tells the watch after every so many draws. */
  private static final class Pace {
    private static final int STRETCH = 128;

    private final Watch watch;
    private final long all;
    private long done;

    Pace(Watch watch, long all) {
      this.watch = watch;
      this.all = all;
    }

    void step() {
      if (done++ % STRETCH == 0 && !watch.goesOn(Math.min(1, (double) done / all))) {
        throw new CancellationException("nobody waits for the odds any more");
      }
    }
  }

  private static List<Contributor> contributors(OddsModel model, long seed, Pace pace) {
    int n = model.dimension();
    if (n == 0) {
      return List.of();
    }
    ToDoubleFunction<double[]> spare =
        point -> {
          pace.step();
          return model.made(point).spare(0).least();
        };
    List<Shares.Share> shares = Shares.of(spare, n, SHARE_POINTS, seed);
    double sum = shares.stream().mapToDouble(Shares.Share::total).sum();
    List<Contributor> contributors = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double share = sum > 0 ? shares.get(i).total() / sum : 0;
      double alone = Math.min(1, Math.max(0, shares.get(i).first()));
      contributors.add(new Contributor(model.list().get(i).kind().words(), share, alone));
    }
    contributors.sort(Comparator.comparingDouble(Contributor::share).reversed());
    return contributors;
  }
}
