package flankfit.odds;

import flankfit.chance.Spread;
import java.util.Objects;

/**
 * One thing that scatters.
 *
 * @param kind which
 * @param spread how it scatters, in the unit of its kind
 */
record Input(Kind kind, Spread spread) {
  Input {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(spread, "spread");
  }

  /** What scatters; those of the mill and its forces stay from part to part. */
  enum Kind {
    /** Radius over the teeth (mm). */
    CUTTER("cutter diameter", true),
    /** How far the tooth that stands out most does so (mm). */
    RUNOUT("run-out", true),
    /** Width of the teeth (mm). */
    CREST("crest width", true),
    /** Bending less what was reckoned (1). */
    DEFLECTION("deflection", true),
    /** Even spread from 0 to 1: below a half the flanks are true V. */
    FORM("cutter form", true),
    /** Radius of the path by the control's rounding (mm). */
    RESOLUTION("offset resolution", false),
    /** Radius of the path by the machine (mm). */
    CIRCLE("machine, radius of circles", false),
    /** Greatest less least radius within one circle (mm). */
    ROUNDNESS("machine, roundness of circles", false),
    /** Radius of the hole before the thread (mm). */
    HOLE("diameter before the thread", false);

    private final String words;
    private final boolean stays;

    Kind(String words, boolean stays) {
      this.words = words;
      this.stays = stays;
    }

    /** Its name for people and JSON. */
    String words() {
      return words;
    }

    /** Whether it is the same for every part that the mill cuts. */
    boolean stays() {
      return stays;
    }
  }
}
