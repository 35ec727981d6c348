package flankfit.lesson;

import flankfit.finding.Place;
import flankfit.motion.ModalState.Distance;
import java.util.Objects;
import java.util.Optional;

/**
 * A block told in both modes, word beside word.
 *
 * @param step what it does
 * @param absolute its words in absolute mode
 * @param incremental its words in incremental mode
 * @param modeSince the mode word that was executed last, in this block or before; empty while the
 *     mode is the one of power-up
 */
public record Told(Step step, Wording absolute, Wording incremental, Optional<Place> modeSince) {
  public Told {
    Objects.requireNonNull(step, "step");
    Objects.requireNonNull(absolute, "absolute");
    Objects.requireNonNull(incremental, "incremental");
    Objects.requireNonNull(modeSince, "modeSince");
  }

  /** Its words in a mode. */
  public Wording in(Distance mode) {
    return mode == Distance.ABSOLUTE ? absolute : incremental;
  }
}
