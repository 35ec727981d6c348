package flankfit.odds;

import flankfit.gauge.Deviation;
import flankfit.gauge.Formed;
import flankfit.gauge.ThreadVariation;
import flankfit.gauge.ThreadVariation.Spare;
import flankfit.gauge.Ways;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;

/**
 * What the path as moved takes from the gauges' room on the endless helix: entry mark, lead error,
 * incomplete turns, rows that bend unlike, a hole that ends too soon. It hangs mainly on the path
 * itself, so it is read from the wall at a few depths and at one other bending, and added to the
 * endless helix of every draw.
 */
final class MovedResponse {
  /** Nearness within which a gauge still goes, as where plugs are screwed in (mm). */
  private static final double SLACK = 1e-6;

  /** Depths read on both sides: parts of one register entry scatter within (mm). */
  private static final double NEARBY = 0.006;

  private final ThreadVariation thread;
  private final List<Read> byDepth;
  private final Optional<Read> bent;

  /** Gauges of all sizes on one wall beside the endless helix of the same deviation. */
  private record Read(Deviation deviation, Ways ways, Spare spare, double flanks, double crest) {
    /** Whether the crest of the GO gauge passes, so that its flanks can be asked. */
    boolean isFree() {
      return ways.crestGoes() > ways.wanted();
    }
  }

  private MovedResponse(ThreadVariation thread, List<Read> byDepth, Optional<Read> bent) {
    this.thread = thread;
    this.byDepth = List.copyOf(byDepth);
    this.bent = bent;
  }

  /**
   * Reads the walls of a thread about the register's entry; empty when that was not asked for, or a
   * wall cannot be had.
   *
   * @param free depth at which the GO gauge's crest is likely to go (mm), above 0
   * @param bending departure from what bending was reckoned (1), not below 0
   */
  static Optional<MovedResponse> of(ThreadVariation thread, double free, double bending) {
    if (!thread.isMoved()) {
      return Optional.empty();
    }
    Deviation none = Deviation.none();
    List<Deviation> first =
        new ArrayList<>(List.of(none, none.deeper(-NEARBY), none.deeper(NEARBY)));
    if (thread.bends() && bending > 0) {
      // Both are known from here on: what reckons bending is not asked by several at once.
      thread.reaches(1 + bending);
      first.add(new Deviation(0, 0, 0, 1 + bending, 0));
    }
    List<Optional<Read>> read = all(thread, first);
    Optional<Read> now = read.get(0);
    if (now.isEmpty()) {
      return Optional.empty();
    }
    List<Read> byDepth = read.subList(0, 3).stream().flatMap(Optional::stream).toList();
    Optional<Read> bent = read.size() > 3 ? read.get(3) : Optional.empty();
    MovedResponse about = new MovedResponse(thread, sorted(byDepth), bent);
    return Optional.of(now.get().isFree() ? about : about.and(List.of(free / 2, free)));
  }

  /** Reads several walls at once: much of it goes on by one thread alone. */
  private static List<Optional<Read>> all(ThreadVariation thread, List<Deviation> deviations) {
    return deviations.parallelStream().map(deviation -> read(thread, deviation)).toList();
  }

  private static List<Read> sorted(List<Read> byDepth) {
    return byDepth.stream().sorted(Comparator.comparingDouble(r -> r.deviation().depth())).toList();
  }

  /** The same with other depths (mm) read, too, as far as that can be. */
  MovedResponse and(List<Double> depths) {
    List<Deviation> others =
        depths.stream()
            .filter(depth -> byDepth.stream().noneMatch(r -> isNear(r, depth)))
            .map(depth -> Deviation.none().deeper(depth))
            .toList();
    List<Read> both = new ArrayList<>(byDepth);
    all(thread, others).forEach(r -> r.ifPresent(both::add));
    return new MovedResponse(thread, sorted(both), bent);
  }

  private static boolean isNear(Read read, double depth) {
    return Math.abs(read.deviation().depth() - depth) < NEARBY / 2;
  }

  private static Optional<Read> read(ThreadVariation thread, Deviation deviation) {
    Optional<Formed> formed = thread.formed(deviation);
    return formed.flatMap(
        f ->
            thread
                .ways(deviation)
                .map(
                    w ->
                        new Read(
                            deviation,
                            w,
                            thread.spare(f.functional(thread.spec()), f.felt(), f.ridge()),
                            thread.spare(f.flanks(), f.felt(), f.ridge()).go(),
                            2 * f.play())));
  }

  /** Way that the GO gauge has to go from the first metal (mm). */
  double wanted() {
    return now().ways().wanted();
  }

  private Read now() {
    return byDepth.stream().filter(r -> r.deviation().depth() == 0).findFirst().orElseThrow();
  }

  /** What one gauge has less on the path as moved, over the path's depth and by bending. */
  static final class Loss {
    private final double[] depth;
    private final double[] less;
    private final double perBending;

    /**
     * @param depth depths, rising (mm)
     * @param less what is added at each (mm on the diameter), mostly below 0
     * @param perBending change for bending once more as reckoned (mm)
     */
    private Loss(double[] depth, double[] less, double perBending) {
      this.depth = depth;
      this.less = less;
      this.perBending = perBending;
    }

    /** What is added at a depth of the path (mm), for bending so many times as reckoned (1). */
    double at(double path, double bending) {
      int last = depth.length - 1;
      double byDepth;
      if (path <= depth[0]) {
        byDepth = less[0];
      } else if (path >= depth[last]) {
        byDepth = less[last];
      } else {
        int i = 0;
        while (depth[i + 1] < path) {
          i++;
        }
        double share = (path - depth[i]) / (depth[i + 1] - depth[i]);
        byDepth = less[i] + share * (less[i + 1] - less[i]);
      }
      return byDepth + perBending * (bending - 1);
    }
  }

  /** Losses of the GO gauge: of its flanks while its crest goes, and of its crest. */
  record GoLoss(Loss flanks, Loss crest) {}

  /**
   * Losses of the GO gauge on its way.
   *
   * @param length way that it goes from the first metal (mm)
   */
  GoLoss go(double length) {
    List<Read> free = byDepth.stream().filter(Read::isFree).toList();
    List<Read> goes = byDepth.stream().filter(r -> r.crest() >= 0).toList();
    return new GoLoss(
        loss(free, (r, w) -> w.flanks().upTo(length) + SLACK - r.flanks()),
        loss(goes, (r, w) -> w.crest().upTo(length) + SLACK - r.crest()));
  }

  /** Loss of what a NO-GO gauge is stopped by, within the turns allowed from every end. */
  Loss noGo() {
    return loss(byDepth, (r, w) -> -w.noGoRuns() - SLACK - r.spare().noGo());
  }

  /**
   * The same on its way from the mouth.
   *
   * @param length way that it goes from the first metal (mm)
   */
  Loss noGo(double length) {
    return loss(byDepth, (r, w) -> -w.noGo().upTo(length) - SLACK - r.spare().noGo());
  }

  /**
   * @param some reads to be used; all when there are none
   */
  private Loss loss(List<Read> some, ToDoubleBiFunction<Read, Ways> less) {
    List<Read> used = some.isEmpty() ? byDepth : some;
    double perBending =
        bent.filter(b -> used.contains(now()))
            .map(
                b ->
                    (less.applyAsDouble(b, b.ways()) - less.applyAsDouble(now(), now().ways()))
                        / (b.deviation().bending() - 1))
            .orElse(0.0);
    return new Loss(
        used.stream().mapToDouble(r -> r.deviation().depth()).toArray(),
        used.stream().mapToDouble(r -> less.applyAsDouble(r, r.ways())).toArray(),
        perBending);
  }

  /** What plain plugs have less on the path as moved (mm on the diameter), not above 0. */
  double plain() {
    double moved = now().ways().plainSpare();
    return Double.isInfinite(moved) ? 0 : Math.min(0, moved - now().spare().plain());
  }
}
