package flankfit.window;

import flankfit.gauge.ThreadGauge;
import flankfit.gauge.Travel;
import java.util.Optional;

/** A gauge screwed in by hand: it goes as far as it would on the wall of the path as moved. */
final class Plug {
  /** Turns of one twist of the hand (1). */
  static final double TWIST = 0.25;

  private final ThreadGauge.Kind kind;
  private Optional<Travel> travel = Optional.empty();
  private double wanted;
  private boolean pushed;
  private double lead;

  Plug(ThreadGauge.Kind kind) {
    this.kind = kind;
  }

  ThreadGauge.Kind kind() {
    return kind;
  }

  /**
   * Takes another wall; a plug that cannot stand where it was comes out as far as it must.
   *
   * @param leadNow lead of the thread (mm)
   */
  void follow(Optional<Travel> now, double leadNow) {
    travel = now;
    lead = leadNow;
    wanted = Math.min(wanted, most());
    pushed = pushed && wanted >= most();
  }

  /** How it would go on the wall there is; empty while that is not known. */
  Optional<Travel> travel() {
    return travel;
  }

  private double most() {
    return travel.map(Travel::turns).orElse(0.0);
  }

  /** Turns it is in (1). */
  double turns() {
    return wanted;
  }

  /** Turns it in, or out for negative turns. */
  void twist(double turns) {
    if (travel.isEmpty()) {
      return;
    }
    double target = wanted + turns;
    pushed = turns > 0 && target >= most();
    wanted = Math.max(0, Math.min(most(), target));
  }

  /** Turns it in as far as it goes. */
  void toEnd() {
    twist(most() + TWIST);
  }

  /** Takes it out. */
  void out() {
    wanted = 0;
    pushed = false;
  }

  /** Whether it was turned on until it went no further. */
  boolean isAtEnd() {
    return pushed;
  }

  /** Height of its foremost thread (mm); not a number while no wall is known. */
  double front() {
    if (travel.isEmpty()) {
      return Double.NaN;
    }
    Travel t = travel.get();
    double left = (most() - wanted) * lead;
    return t.from() == Travel.From.MOUTH ? t.z() + left : t.z() - left;
  }
}
