package flankfit.odds;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What gauging a part makes believe of the mill, and what to key in.
 *
 * @param observed the parts it rests on, by rising number
 * @param pitch simple pitch diameter that the next part would have with the register as it is (mm)
 * @param cutter diameter over the mill's teeth (mm)
 * @param crest deviation of its teeth's width (mm)
 * @param straight probability that its flanks are true V, where the sheet leaves that open (1)
 * @param asItIs what the gauges will do with the register as it is
 * @param key what to key in; empty without a register that moves the thread
 * @param trend how the mill drifts; empty while one part alone was seen
 * @param clashes observations that hardly agree with the rest
 * @param midway gauges that stopped on their way for no reason that is known
 * @param assumptions what it rests on
 */
public record GaugingAdvice(
    List<PartObserved> observed,
    Estimate pitch,
    Estimate cutter,
    Estimate crest,
    Optional<Double> straight,
    Chances asItIs,
    Optional<Key> key,
    Optional<Trend> trend,
    List<Clash> clashes,
    List<Midway> midway,
    List<String> assumptions) {
  public GaugingAdvice {
    observed = List.copyOf(observed);
    Objects.requireNonNull(pitch, "pitch");
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(trend, "trend");
    clashes = List.copyOf(clashes);
    midway = List.copyOf(midway);
    assumptions = List.copyOf(assumptions);
  }

  /**
   * What the gauges will do with the next part.
   *
   * @param goEnters GO gauge enters (1)
   * @param noGoStops NO-GO gauge stops (1)
   * @param plainGood plain plugs pass (1)
   * @param good all of them pass (1)
   */
  public record Chances(double goEnters, double noGoStops, double plainGood, double good) {}

  /**
   * What to key in.
   *
   * @param register name of the register
   * @param now wear entry now (mm, as entered)
   * @param wear wear entry to key in, a multiple of the least increment (mm, as entered)
   * @param best the same without the control's limit (mm, as entered)
   * @param pitch simple pitch diameter that it then has (mm)
   * @param chances what the gauges will then do
   */
  public record Key(
      String register, double now, double wear, double best, Estimate pitch, Chances chances) {
    /** Whether the control's limit of wear keeps the best entry out. */
    public boolean limited() {
      return wear != best;
    }
  }

  /**
   * How the mill drifts over a batch.
   *
   * @param perPart change of the pitch diameter from part to part (mm); below 0 as holes get
   *     smaller
   * @param level chance below which an offset is to be entered anew (1)
   * @param reenterAt first part at which the chance with the register as it is falls below the
   *     level; empty when not within a thousand parts
   * @param keyedLasts the same after keying in what is advised
   */
  public record Trend(
      Estimate perPart, double level, OptionalInt reenterAt, OptionalInt keyedLasts) {}
}
