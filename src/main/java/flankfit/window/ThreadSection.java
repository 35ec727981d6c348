package flankfit.window;

import flankfit.gauge.RealAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadGauge;
import flankfit.setup.Hole;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.GroovePhase;
import flankfit.sweep.RegularThread;
import java.util.Optional;

/**
 * The section through a thread's axis in the direction of +X: radius of the wall, of the basic
 * profile and of gauges at every height. Profiles of the endless helix are sampled once.
 */
final class ThreadSection {
  private static final int SAMPLES = 512;

  private final ThreadAnswer thread;
  private final ThreadSpec spec;
  private final GroovePhase phase;
  private final Optional<WallShape> shape;
  private final double[] profile = new double[SAMPLES + 1];
  private final double blank;
  private final double mouth;
  private final double end;
  private final boolean floor;

  private ThreadSection(
      ThreadAnswer thread,
      RegularThread surface,
      RealAnswer real,
      Optional<Hole> hole,
      Optional<Double> partBottom,
      Optional<WallShape> shape) {
    this.thread = thread;
    this.shape = shape;
    spec = thread.spec();
    phase = real.phase();
    blank = surface.blankRadius();
    mouth = hole.map(Hole::top).orElse(real.wall().top());
    floor = hole.flatMap(h -> h.depth()).isPresent();
    end =
        hole.flatMap(h -> h.depth().map(d -> h.top() - d))
            .or(() -> partBottom)
            .orElse(Math.min(real.wall().bottom(), thread.zBottom() - spec.pitch()));
    for (int i = 0; i <= SAMPLES; i++) {
      profile[i] = surface.surface(phase.spacing() * i / SAMPLES);
    }
  }

  /**
   * The section of a thread.
   *
   * @param real what tells where its grooves lie
   * @param partBottom height of the part's lower face (mm)
   * @param shape its wall as moved; empty for that of an endless helix
   */
  static Optional<ThreadSection> of(
      ThreadAnswer thread,
      RealAnswer real,
      Optional<Hole> hole,
      Optional<Double> partBottom,
      Optional<WallShape> shape) {
    return thread.surface().map(s -> new ThreadSection(thread, s, real, hole, partBottom, shape));
  }

  /** Height of the mouth (mm). */
  double mouth() {
    return mouth;
  }

  /** Height at which the hole ends (mm). */
  double end() {
    return end;
  }

  /** Whether it ends at a floor, not in the open. */
  boolean hasFloor() {
    return floor;
  }

  /** Whether the wall is that of the path as moved. */
  boolean isAsMoved() {
    return shape.isPresent();
  }

  Optional<WallShape> shape() {
    return shape;
  }

  /** Radius of the wall at a height (mm). */
  double wall(double z) {
    if (shape.isPresent()) {
      return asMoved(shape.get(), z);
    }
    if (z > thread.zTop() + spec.pitch() / 2 || z < thread.zBottom() - spec.pitch() / 2) {
      return blank;
    }
    double turns = (z - phase.middle(0, 0)) / phase.spacing();
    double at = (turns - Math.floor(turns)) * SAMPLES;
    int low = (int) Math.min(SAMPLES - 1, at);
    return profile[low] + (at - low) * (profile[low + 1] - profile[low]);
  }

  private double asMoved(WallShape s, double z) {
    int last = s.heights() - 1;
    double share = (z - s.z(0)) / (s.z(last) - s.z(0));
    if (share < 0) {
      return blank;
    }
    double at = Math.min(1, share) * last;
    int low = (int) Math.min(last - 1, at);
    return s.radius(low) + (at - low) * (s.radius(low + 1) - s.radius(low));
  }

  /** How far a height lies from the middle of the nearest groove (mm). */
  private double fromMiddle(double z) {
    return Math.abs(z - phase.middle(phase.nearest(z, 0), 0));
  }

  /**
   * Radius of a V profile of some pitch diameter at a height, cut off at two radii (mm).
   *
   * @param deep where it is cut off at its deep end: the crest of a gauge
   * @param shallow where it is cut off at the other: its root
   */
  double profile(double z, double pitchDiameter, double deep, double shallow) {
    double sign = spec.internal() ? 1 : -1;
    double flank =
        pitchDiameter / 2 + sign * (spec.pitch() / 4 - fromMiddle(z)) / Math.tan(spec.halfAngle());
    return Math.max(Math.min(deep, shallow), Math.min(Math.max(deep, shallow), flank));
  }

  /** Radius of the basic profile at a height (mm). */
  double basic(double z) {
    double deep = (spec.internal() ? spec.nominal() : spec.basicMinor()) / 2;
    double shallow = (spec.internal() ? spec.basicMinor() : spec.nominal()) / 2;
    return profile(z, spec.basicPitch(), deep, shallow);
  }

  /** Radius of a gauge at a height within its thread (mm). */
  double gauge(ThreadGauge gauge, double z) {
    return profile(z, gauge.pitchDiameter(), gauge.crestRadius(), gauge.rootRadius());
  }

  ThreadSpec spec() {
    return spec;
  }

  /** Height of the middle of the highest groove (mm). */
  double zTop() {
    return thread.zTop();
  }

  /** Height of the middle of the lowest groove (mm). */
  double zBottom() {
    return thread.zBottom();
  }
}
