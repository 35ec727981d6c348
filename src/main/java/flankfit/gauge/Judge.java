package flankfit.gauge;

import flankfit.gauge.ThreadAnswer.Go;
import flankfit.gauge.ThreadAnswer.NoGo;
import flankfit.gauge.ThreadAnswer.Plain;
import flankfit.standard.PlugGauges;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.RegularThread;
import java.util.Optional;

/** Says what the gauges do with a measured thread, which decides, and by how much. */
final class Judge {
  /**
   * Share of the pitch above which accumulated lead errors leave nothing that a gauge could try.
   */
  private static final double LOST_SHARE = 0.25;

  /** Loss by lead errors that is worth a word (mm). */
  private static final double LEAD_TOLD = 0.001;

  private Judge() {}

  /**
   * What the gauges say.
   *
   * @param go the GO gauge; empty when there is nothing to try
   * @param noGo the NO-GO gauge
   * @param plain plain plugs
   * @param verdict all together
   * @param reason one sentence
   */
  record Ruling(
      Optional<Go> go, Optional<NoGo> noGo, Optional<Plain> plain, Verdict verdict, String reason) {
    /** The worse of this and what the gauges do on the path as moved. */
    Ruling and(RealAnswer real) {
      Optional<Go> bothGo =
          go.map(g -> new Go(g.pitch(), g.enters() && real.reachesWanted(), g.clearance()));
      Optional<NoGo> bothNoGo =
          noGo.map(
              n ->
                  new NoGo(
                      n.pitch(),
                      n.turnsAllowed(),
                      real.noGo().turns(),
                      n.stops() && real.noGo().accepted()));
      Optional<Plain> bothPlain =
          plain.map(
              p ->
                  real.plain()
                      .map(
                          moved ->
                              new Plain(
                                  p.goEnters() && moved.goEnters(),
                                  p.noGoStops() && moved.noGoStops()))
                      .orElse(p));
      Verdict both =
          bothGo.isPresent() && bothNoGo.isPresent()
              ? Judge.verdict(bothGo.get(), bothNoGo.get(), bothPlain)
              : verdict;
      if (verdict != Verdict.GAUGES_GOOD || both == Verdict.GAUGES_GOOD) {
        return new Ruling(bothGo, bothNoGo, bothPlain, verdict, reason);
      }
      String told = "on the path as moved " + real.words() + "; of an endless helix, " + reason;
      return new Ruling(bothGo, bothNoGo, bothPlain, both, told);
    }

    static Ruling notAThread(String reason) {
      return new Ruling(
          Optional.empty(), Optional.empty(), Optional.empty(), Verdict.NOT_A_THREAD, reason);
    }
  }

  /** Why nothing can be measured at all; empty when something can. */
  static Optional<String> notMeasurable(FoundThread found, RegularThread thread) {
    ThreadSpec spec = found.spec();
    Text text = found.text();
    if (!thread.isCut()) {
      return Optional.of(
          "the teeth reach diameter "
              + text.length(2 * thread.groove().bottom())
              + " where "
              + (spec.internal() ? "the hole has " : "the boss has ")
              + text.length(2 * thread.blankRadius())
              + ": no groove is cut");
    }
    if (thread.groove().width(thread.groove().bottom()) >= spec.pitch() / 2) {
      return Optional.of("the groove is wider than half the pitch even at its bottom");
    }
    if (Double.isNaN(new Measurer(spec).simple(thread))) {
      // a tooth narrower than that, or a ring cut in the solid round a wall that is not reached
      return Optional.of("no groove half the pitch wide is cut into the wall");
    }
    return Optional.empty();
  }

  /** What the gauges say of a thread that was measured. */
  static Ruling of(FoundThread found, Measures measured) {
    return of(found, measured, measured.pitchSimple());
  }

  /**
   * What the gauges say of a thread that was measured.
   *
   * @param felt simple pitch diameter at the turn where a NO-GO gauge must have stopped (mm)
   */
  static Ruling of(FoundThread found, Measures measured, double felt) {
    Optional<String> lost = noGaugeStarts(found);
    if (lost.isPresent()) {
      return Ruling.notAThread(lost.get());
    }
    ThreadSpec spec = found.spec();
    Go go = go(spec, measured.functional());
    NoGo noGo = noGo(spec, felt, found.engaged() / spec.lead());
    Optional<Plain> plain = plain(spec, measured.minor());
    Verdict verdict = verdict(go, noGo, plain);
    String reason = reason(verdict, found, measured, felt, go, noGo);
    return new Ruling(Optional.of(go), Optional.of(noGo), plain, verdict, reason);
  }

  /**
   * What all gauges together say of diameters.
   *
   * @param functional functional diameter with the GO gauge's full crest (mm)
   * @param felt simple pitch diameter at the turn where a NO-GO gauge must have stopped (mm)
   * @param minor diameter of the ridge's crest inside a hole (mm)
   */
  static Verdict verdict(ThreadSpec spec, double functional, double felt, double minor) {
    return verdict(go(spec, functional), noGo(spec, felt, 0), plain(spec, minor));
  }

  private static Go go(ThreadSpec spec, double functional) {
    double pitch = Mate.goPitch(spec);
    double clearance = spec.internal() ? functional - pitch : pitch - functional;
    return new Go(pitch, clearance >= 0, clearance);
  }

  private static NoGo noGo(ThreadSpec spec, double felt, double all) {
    double pitch = Mate.noGoPitch(spec);
    boolean stops = spec.internal() ? felt <= pitch : felt >= pitch;
    double allowed = spec.gauges().map(PlugGauges::turnsAllowed).orElse(0.0);
    return new NoGo(pitch, allowed, stops ? 0 : all, stops);
  }

  private static Optional<Plain> plain(ThreadSpec spec, double minor) {
    return spec.gauges().map(g -> new Plain(minor >= g.plainGo(), minor < g.plainNoGo()));
  }

  /** Why no gauge of the thread wanted starts at all; empty when gauges can be tried. */
  static Optional<String> noGaugeStarts(FoundThread found) {
    ThreadSpec spec = found.spec();
    Text text = found.text();
    Pass pass = found.model().finish().pass();
    if (pass.lead() > 0 && pass.isRightHanded() == spec.leftHand()) {
      return Optional.of(
          (spec.leftHand()
                  ? "the helix is right-hand where a left-hand"
                  : "the helix is left-hand where a right-hand")
              + " thread is wanted: no gauge starts");
    }
    double error = found.accumulatedError();
    if (error > LOST_SHARE * spec.pitch()) {
      if (Math.abs(found.model().leadError()) <= LOST_SHARE * error) {
        return Optional.of(
            "the rows of the mill stand "
                + text.length(found.model().finish().rowPitch())
                + " apart where the thread's pitch is "
                + text.length(spec.pitch())
                + ": over the engaged length grooves lie "
                + text.length(error)
                + " off, more than a quarter of the pitch");
      }
      return Optional.of(
          "the lead is "
              + text.length(pass.lead())
              + " where "
              + text.length(spec.lead())
              + " is wanted: over the engaged length grooves lie "
              + text.length(error)
              + " off, more than a quarter of the pitch");
    }
    return Optional.empty();
  }

  private static Verdict verdict(Go go, NoGo noGo, Optional<Plain> plain) {
    if (!go.enters()) {
      return Verdict.GO_REFUSED;
    }
    if (!noGo.stops()) {
      return Verdict.NO_GO_ENTERS;
    }
    if (plain.isPresent() && !plain.get().goEnters()) {
      return Verdict.MINOR_SMALL;
    }
    return plain.isPresent() && !plain.get().noGoStops()
        ? Verdict.MINOR_LARGE
        : Verdict.GAUGES_GOOD;
  }

  private static String reason(
      Verdict verdict, FoundThread found, Measures measured, double felt, Go go, NoGo noGo) {
    ThreadSpec spec = found.spec();
    Text text = found.text();
    String kind = spec.internal() ? "plug" : "ring";
    double over = Math.abs(felt - noGo.pitch());
    return switch (verdict) {
      case GO_REFUSED -> goRefused(found, measured, go, noGo, kind);
      case NO_GO_ENTERS ->
          "the NO-GO "
              + kind
              + " runs through: the pitch diameter "
              + text.length(felt)
              + " is "
              + text.length(over)
              + (spec.internal() ? " above" : " below")
              + " its own";
      case MINOR_SMALL ->
          "the plain GO plug does not enter: the minor diameter "
              + text.length(measured.minor())
              + " is below its "
              + text.length(spec.gauges().map(PlugGauges::plainGo).orElseThrow());
      case MINOR_LARGE ->
          "the plain NO-GO plug enters: the minor diameter "
              + text.length(measured.minor())
              + " is not below its "
              + text.length(spec.gauges().map(PlugGauges::plainNoGo).orElseThrow());
      case GAUGES_GOOD ->
          "the GO "
              + kind
              + " enters with "
              + text.length(go.clearance())
              + " to spare and "
              + touches(measured)
              + " touches first, the NO-GO "
              + kind
              + " stops with "
              + text.length(over)
              + " to spare";
      case NOT_A_THREAD -> "no gauge starts";
    };
  }

  private static String goRefused(
      FoundThread found, Measures measured, Go go, NoGo noGo, String kind) {
    Text text = found.text();
    String reason =
        "the GO "
            + kind
            + " does not enter: the functional diameter "
            + text.length(measured.functional())
            + " is "
            + text.length(-go.clearance())
            + (found.spec().internal() ? " below" : " above")
            + " its pitch diameter, and "
            + touches(measured)
            + " decides";
    if (measured.leadLoss() > LEAD_TOLD) {
      reason += "; the lead error alone costs " + text.length(measured.leadLoss());
    }
    return noGo.stops() ? reason : reason + "; the NO-GO " + kind + " enters as well";
  }

  private static String touches(Measures measured) {
    return switch (measured.decidedBy()) {
      case CREST -> "the gauge's crest";
      case FLANK_UP -> "a flank (the upper one, or both alike)";
      case FLANK_DOWN -> "the lower flank";
    };
  }
}
