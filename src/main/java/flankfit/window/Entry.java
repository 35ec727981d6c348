package flankfit.window;

import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.WearTrial;
import java.util.Objects;
import java.util.Optional;

/**
 * A thread with some wear entry: what answers are asked for and belong to.
 *
 * @param base the thread as the sheet has it
 * @param trial the same with other entries; empty when no register moves it
 * @param wear the entry (mm, as entered); 0 without a register
 */
record Entry(ThreadAnswer base, Optional<WearTrial> trial, double wear) {
  Entry {
    Objects.requireNonNull(base, "base");
    Objects.requireNonNull(trial, "trial");
  }

  /** Whether it is the entry of the sheet. */
  boolean isSheets() {
    return trial.isEmpty() || wear == trial.get().offset().now();
  }

  /** The answer of an endless helix; empty when the program stops with this entry. */
  Optional<ThreadAnswer> endless() {
    return isSheets() ? Optional.of(base) : trial.orElseThrow().endless(wear);
  }

  /** The whole answer; empty likewise. */
  Optional<ThreadAnswer> whole() {
    return isSheets() ? Optional.of(base) : trial.orElseThrow().whole(wear);
  }

  /** Whether it is the same thread with the same entry. */
  boolean is(Entry other) {
    return base.equals(other.base) && wear == other.wear;
  }
}
