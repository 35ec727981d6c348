package flankfit.gauge;

import flankfit.gauge.ThreadAnswer.PassAnswer;
import flankfit.gauge.ThreadAnswer.PassMeasures;
import flankfit.gauge.ThreadAnswer.Role;
import flankfit.sweep.Flank;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Answers to draw: some as gauged from a tape, many varied from them. */
public final class DrawnThreads {
  private static final String[] HOLES = {
    "A", "port A", "bleed port behind the relief valve", "Anschluss_17_hinten_links_unten_(Ablauf)"
  };
  private static final String[] REASONS = {
    "no plug decides",
    "the GO plug enters with 0.0769 mm to spare and a flank (the upper one, or both alike) touches"
        + " first, the NO-GO plug stops with 0.1066 mm to spare",
    "the GO plug does not enter: the functional diameter 18.67 mm is 0.368 mm below its pitch"
        + " diameter, and a flank (the upper one, or both alike) decides; the lead error alone"
        + " costs 0.433 mm; no register entry makes both gauges good; on the path as moved GO plug"
        + " stops after 0.2 turns"
  };

  private DrawnThreads() {}

  /** An M20x1.5 cut to size, with its real path. */
  public static ThreadAnswer good() {
    Milled job = new Milled();
    job.wear = -0.045;
    job.radii = new double[] {2.6, 3};
    return job.only();
  }

  /** The same with the wear the wrong way, gauged as an endless helix. */
  public static ThreadAnswer refused() {
    Milled job = new Milled();
    job.wear = 0.045;
    job.radii = new double[] {2.6, 3};
    return job.endless();
  }

  /** The same entered by half a pitch in half a turn: it leaves a mark. */
  public static ThreadAnswer marked() {
    Milled job = new Milled();
    job.wear = -0.045;
    job.entryRiseShare = 0.5;
    return job.only();
  }

  /** An external thread. */
  public static ThreadAnswer boss() {
    Milled job = new Milled();
    job.boss = true;
    job.thread = "M20x1.5-6g";
    job.hole = 19.9;
    job.radii = new double[] {16.1};
    return job.endless();
  }

  /** One that differs in name, reason, passes and what it measures. */
  public static ThreadAnswer varied(ThreadAnswer base, Random random) {
    double span = base.limits().pitchMax() - base.limits().pitchMin();
    Measures m = base.finished().orElseThrow();
    int count = 1 + random.nextInt(6);
    List<PassAnswer> passes = new ArrayList<>();
    double pitch = base.limits().pitchMin() + span * (4 * random.nextDouble() - 1.5);
    double lost = random.nextInt(3) == 0 ? 0 : span * random.nextDouble();
    double out = base.internal() ? -1 : 1;
    for (int i = 0; i < count; i++) {
      double left = span * (count - 1 - i) * 3 * random.nextDouble();
      double here = pitch + out * left;
      Role role = i < count - 1 ? Role.ROUGH : random.nextBoolean() ? Role.FINISH : Role.SPRING;
      boolean none = i < count - 1 && random.nextInt(5) == 0;
      passes.add(
          new PassAnswer(
              10 + 7 * i + random.nextInt(2) * 1000,
              3,
              role,
              none
                  ? Optional.empty()
                  : Optional.of(new PassMeasures(here, here + out * lost, m.major())),
              Optional.empty()));
    }
    Verdict[] verdicts = Verdict.values();
    return with(
        base,
        HOLES[random.nextInt(HOLES.length)],
        passes,
        pitch,
        pitch + out * lost,
        verdicts[random.nextInt(verdicts.length)],
        REASONS[random.nextInt(REASONS.length)]);
  }

  /** Entries of a register about a thread, each with what it would measure. */
  public static RegisterSweep sweep(ThreadAnswer thread, int count, double by) {
    List<RegisterSweep.Step> steps = new ArrayList<>();
    Measures m = thread.finished().orElseThrow();
    for (int i = 0; i < count; i++) {
      double wear = (i - count / 2) * by;
      double pitch = m.pitchSimple() - 2 * wear;
      double functional = m.functional() - 2 * wear;
      Verdict verdict =
          functional < thread.go().orElseThrow().pitch()
              ? Verdict.GO_REFUSED
              : pitch > thread.noGo().orElseThrow().pitch()
                  ? Verdict.NO_GO_ENTERS
                  : Verdict.GAUGES_GOOD;
      ThreadAnswer here =
          with(thread, thread.hole(), thread.passes(), pitch, functional, verdict, "a step");
      steps.add(new RegisterSweep.Step(wear, i == 1 ? List.of() : List.of(here)));
    }
    return new RegisterSweep(4, 0.3 * by, steps);
  }

  private static ThreadAnswer with(
      ThreadAnswer t,
      String hole,
      List<PassAnswer> passes,
      double pitch,
      double functional,
      Verdict verdict,
      String reason) {
    Measures m = t.finished().orElseThrow();
    Measures measures =
        new Measures(
            m.major(),
            m.minor(),
            pitch,
            m.pitchOverBall(),
            functional,
            m.functionalFlank(),
            m.decidedBy(),
            m.flankAngleUp(),
            m.flankAngleDown(),
            m.leadError(),
            m.leadLoss());
    return new ThreadAnswer(
        hole,
        t.spec(),
        t.line(),
        t.x(),
        t.y(),
        t.rightHand(),
        t.lead(),
        t.cutting(),
        t.zTop(),
        t.zBottom(),
        passes,
        Optional.of(measures),
        t.surface(),
        t.go(),
        t.noGo(),
        t.plain(),
        verdict,
        reason,
        t.offset(),
        t.bending(),
        t.real(),
        t.variation());
  }

  /** The same thread with an entry mark of some depth (mm), or none, as its deepest departure. */
  public static RealAnswer markedBy(RealAnswer real, double depth, double theta) {
    WallMeasures m = real.measures().orElseThrow();
    double z = (real.wall().top() + real.wall().bottom()) / 2;
    WallMeasures with =
        new WallMeasures(
            m.major(),
            m.minor(),
            m.pitch(),
            m.overBall(),
            m.levels(),
            m.functional(),
            m.flanks(),
            m.flankAngleUp(),
            m.flankAngleDown(),
            m.leadError(),
            m.leadSpread(),
            m.taper(),
            m.roundness(),
            m.axisX(),
            m.axisY(),
            m.bellMouth(),
            new Departure(depth, theta, z, Flank.UP),
            m.ends());
    return new RealAnswer(
        real.go(),
        real.reachesWanted(),
        real.noGo(),
        real.plain(),
        real.depth(),
        Optional.of(with),
        real.rubs(),
        real.words(),
        real.wall(),
        real.phase());
  }
}
