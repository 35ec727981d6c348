package flankfit.gauge;

import flankfit.setup.Hole;
import flankfit.standard.ThreadSpec;
import java.util.Optional;

/**
 * The thread of one hole or boss with all passes that cut it.
 *
 * @param hole hole or boss of the sheet
 * @param spec thread wanted there
 * @param model passes and teeth
 * @param partBottom height of the part's bottom, part frame (mm); empty without a stock
 * @param text words lengths in the program's unit
 * @param bending how the passes are pushed off their paths; empty for a stiff mill
 */
record FoundThread(
    Hole hole,
    ThreadSpec spec,
    ThreadModel model,
    Optional<Double> partBottom,
    Text text,
    Optional<Bending> bending) {
  /** The thread of a stiff mill. */
  FoundThread(
      Hole hole, ThreadSpec spec, ThreadModel model, Optional<Double> partBottom, Text text) {
    this(hole, spec, model, partBottom, text, Optional.empty());
  }

  /** The same thread with what bending does. */
  FoundThread bent(Optional<Bending> other) {
    return new FoundThread(hole, spec, model, partBottom, text, other);
  }

  /**
   * The thread as bending leaves it, mean over the rows; that of a stiff mill when it is unknown.
   */
  ThreadModel asLeft() {
    return bending.map(b -> model.bent(b.mean())).orElse(model);
  }

  /** The thread at its tightest row. */
  ThreadModel tight() {
    return bending.map(b -> model.bent(b.tight())).orElse(model);
  }

  /** The thread at the turn where a NO-GO gauge must have stopped. */
  ThreadModel felt() {
    return bending.map(b -> model.bent(b.felt())).orElse(model);
  }

  /** Lowest height to which full thread is wanted, part frame (mm). */
  double wantedBottom() {
    double depth =
        hole.threadDepth()
            .or(hole::depth)
            .or(() -> partBottom.map(bottom -> hole.top() - bottom))
            .orElse(hole.top() - model.zBottom());
    return hole.top() - depth;
  }

  /** Length that a gauge engages (mm): what is wanted and cut, at least one pitch. */
  double engaged() {
    double high = Math.min(model.zTop() + spec.pitch() / 2, hole.top());
    double low = Math.max(model.zBottom() - spec.pitch() / 2, wantedBottom());
    return Math.max(spec.pitch(), high - low);
  }

  double accumulatedError() {
    return model.accumulatedError(engaged());
  }

  /** Distance of the helix's axis from that of the hole (mm). */
  double offAxis() {
    Pass pass = model.finish().pass();
    return Math.hypot(pass.x() - hole.x(), pass.y() - hole.y());
  }
}
