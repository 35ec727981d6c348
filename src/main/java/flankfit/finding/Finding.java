package flankfit.finding;

import java.util.Objects;

/**
 * One thing found fault with, assumed, or noted: pure data, worded where it is found.
 *
 * @param code which kind of finding
 * @param severity how much this one weighs; a few codes have two severities
 * @param place the smallest guilty span
 * @param what one statement that stands alone, present tense, no full stop
 * @param why what it does to part, cutter or gauge, or the rule broken; may be empty
 * @param fix an action; may be empty
 */
public record Finding(
    Code code, Severity severity, Place place, String what, String why, String fix) {
  public Finding {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(why, "why");
    Objects.requireNonNull(fix, "fix");
  }

  /** A finding with the usual severity of its code. */
  public static Finding of(Code code, Place place, String what, String why, String fix) {
    return new Finding(code, code.severity(), place, what, why, fix);
  }
}
