package flankfit.gauge;

import flankfit.standard.Limits;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.RegularThread;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One thread: how it is cut, what it measures, what the gauges say.
 *
 * @param hole name of the hole or boss
 * @param spec thread wanted
 * @param line line where its finishing pass begins
 * @param x axis of the helix, part frame (mm)
 * @param y axis of the helix, part frame (mm)
 * @param rightHand hand of the helix as moved
 * @param lead lead of the motion (mm)
 * @param cutting {@code climb} or {@code conventional}, in the finishing pass
 * @param zTop height of the highest groove's middle, part frame (mm)
 * @param zBottom height of the lowest groove's middle, part frame (mm)
 * @param passes passes in order
 * @param finished what is measured; empty when it is not a thread
 * @param surface the surface measured; empty when it is not a thread
 * @param go what the GO gauge does
 * @param noGo what the NO-GO gauge does
 * @param plain what plain plugs do, inside a hole
 * @param verdict all gauges together
 * @param reason one sentence: which gauge decides, and by how much
 * @param offset advice for the D register; empty when no register moves the finishing pass
 * @param bending what bending makes of the thread; empty when metal or mill are not known
 * @param real what gauges do on the wall of the real path; empty when that was not asked for
 * @param variation the thread when its making departs from sheet and program; empty when it is not
 *     a thread
 */
public record ThreadAnswer(
    String hole,
    ThreadSpec spec,
    int line,
    double x,
    double y,
    boolean rightHand,
    double lead,
    String cutting,
    double zTop,
    double zBottom,
    List<PassAnswer> passes,
    Optional<Measures> finished,
    Optional<RegularThread> surface,
    Optional<Go> go,
    Optional<NoGo> noGo,
    Optional<Plain> plain,
    Verdict verdict,
    String reason,
    Optional<OffsetAdvice> offset,
    Optional<BendingAnswer> bending,
    Optional<RealAnswer> real,
    Optional<ThreadVariation> variation) {
  public ThreadAnswer {
    passes = List.copyOf(passes);
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(reason, "reason");
  }

  /** Designation of the thread wanted. */
  public String designation() {
    return spec.designation();
  }

  /** Whether it is a hole's thread. */
  public boolean internal() {
    return spec.internal();
  }

  /** Number of starts of the thread wanted. */
  public int starts() {
    return spec.starts();
  }

  /** Limits of size of the thread wanted. */
  public Limits limits() {
    return spec.limits();
  }

  /** Roles of passes. */
  public enum Role {
    ROUGH("rough"),
    FINISH("finish"),
    SPRING("spring");

    private final String word;

    Role(String word) {
      this.word = word;
    }

    /** The word people and JSON see. */
    public String word() {
      return word;
    }
  }

  /**
   * One pass and what stands after it.
   *
   * @param line line of its first move
   * @param radius radius of its path (mm)
   * @param role what it is for
   * @param after what is measured after it; empty while nothing is cut
   * @param cut how it cuts; empty when no feed is known
   */
  public record PassAnswer(
      int line, double radius, Role role, Optional<PassMeasures> after, Optional<PassCut> cut) {}

  /**
   * What is measured after a pass.
   *
   * @param pitch simple pitch diameter (mm)
   * @param functional functional diameter with full crest (mm)
   * @param major diameter of the groove's bottom: major in a hole, minor on a boss (mm)
   */
  public record PassMeasures(double pitch, double functional, double major) {}

  /**
   * The GO gauge.
   *
   * @param pitch its pitch diameter (mm)
   * @param enters whether it goes the whole length
   * @param clearance functional diameter beyond it (mm); negative when it does not enter
   */
  public record Go(double pitch, boolean enters, double clearance) {}

  /**
   * The NO-GO gauge.
   *
   * @param pitch its pitch diameter (mm)
   * @param turnsAllowed turns it may travel and the thread still be accepted (1)
   * @param turns turns it travels (1): on an endless regular thread none, or all
   * @param stops whether it stops in time
   */
  public record NoGo(double pitch, double turnsAllowed, double turns, boolean stops) {}

  /**
   * Plain plugs in the minor diameter.
   *
   * @param goEnters whether the plain GO plug enters
   * @param noGoStops whether the plain NO-GO plug stays out
   */
  public record Plain(boolean goEnters, boolean noGoStops) {}
}
