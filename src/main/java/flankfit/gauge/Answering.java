package flankfit.gauge;

import flankfit.gauge.ThreadAnswer.PassAnswer;
import flankfit.gauge.ThreadAnswer.PassMeasures;
import flankfit.gauge.ThreadAnswer.Role;
import flankfit.motion.Tape;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.RegularThread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the answer on one thread together. */
final class Answering {
  private final FoundThread found;
  private final OffsetSolver solver;
  private final HeldAdvice held;
  private final ThreadSpec spec;
  private final ThreadModel model;
  private final Measurer measurer;
  private final PassCuts cuts;
  private final RealWall real;
  private final Variations varied;

  /** Gives the real answer of a thread that can be gauged; empty where it is not to be had. */
  interface RealWall {
    Optional<RealAnswer> of(FoundThread found);
  }

  /** Makes a thread's variation. */
  interface Variations {
    /**
     * @param slopes slopes of its register
     * @param moved whether its path as moved counts
     */
    ThreadVariation of(Optional<double[]> slopes, boolean moved);
  }

  /**
   * @param held makes advice hold on the path as moved
   * @param real gives what gauges do on the wall of the real path
   * @param varied makes the thread's variation
   */
  Answering(
      FoundThread found,
      OffsetSolver solver,
      HeldAdvice held,
      Tape tape,
      RealWall real,
      Variations varied) {
    this.real = real;
    this.varied = varied;
    this.found = found;
    this.solver = solver;
    this.held = held;
    this.spec = found.spec();
    this.model = found.model();
    this.measurer = new Measurer(spec);
    this.cuts = new PassCuts(found, tape);
  }

  ThreadAnswer answer() {
    RegularThread thread = found.asLeft().thread();
    Optional<String> notMeasurable = Judge.notMeasurable(found, thread);
    Optional<Measures> measured =
        notMeasurable.isPresent() ? Optional.empty() : Optional.of(measured(thread));
    Judge.Ruling ruling =
        measured
            .map(m -> Judge.of(found, m, measurer.simple(found.felt().thread())))
            .orElseGet(() -> Judge.Ruling.notAThread(notMeasurable.orElseThrow()));
    Optional<BendingAnswer> bending =
        measured.isPresent() ? new BendingAnswers(found).answer() : Optional.empty();
    Optional<RealAnswer> moved = ruling.go().flatMap(go -> real.of(found));
    Optional<OffsetAdvice> endless =
        ruling.go().isPresent() ? solver.solve(found) : Optional.empty();
    Optional<OffsetAdvice> offset = moved.isPresent() ? endless.map(held::of) : endless;
    Judge.Ruling ruled = moved.map(ruling::and).orElse(ruling);
    Optional<ThreadVariation> variation =
        ruling.go().map(go -> varied.of(solver.slopes(found), moved.isPresent()));
    CutPass finish = model.finish();
    return new ThreadAnswer(
        found.hole().name(),
        spec,
        finish.pass().line(),
        finish.pass().x(),
        finish.pass().y(),
        finish.pass().isRightHanded(),
        finish.pass().lead(),
        finish.cutting(spec.internal()),
        model.zTop(),
        model.zBottom(),
        passes(),
        measured,
        measured.map(m -> thread),
        ruled.go(),
        ruled.noGo(),
        ruled.plain(),
        ruled.verdict(),
        reason(ruled, offset) + stiff(bending, ruling.verdict()),
        offset,
        bending,
        moved,
        variation);
  }

  /** On a taper the tightest row alone decides what enters. */
  private Measures measured(RegularThread thread) {
    Measures mean = measurer.measure(thread, model.leadError(), found.accumulatedError());
    return found.bending().isEmpty()
        ? mean
        : mean.withFit(measurer.fit(found.tight().thread(), found.accumulatedError()));
  }

  /** Says so when a stiff mill would have made another verdict. */
  private static String stiff(Optional<BendingAnswer> bending, Verdict verdict) {
    return bending
        .filter(b -> b.rigidVerdict() != verdict)
        .map(b -> "; bending decides: of a stiff mill it would be: " + b.rigidVerdict().words())
        .orElse("");
  }

  private static String reason(Judge.Ruling ruling, Optional<OffsetAdvice> offset) {
    boolean hopeless = offset.isPresent() && !offset.get().hasWindow();
    return hopeless
        ? ruling.reason() + "; no register entry makes both gauges good"
        : ruling.reason();
  }

  private List<PassAnswer> passes() {
    List<PassAnswer> list = new ArrayList<>();
    for (int i = 0; i < model.passes().size(); i++) {
      Pass pass = model.passes().get(i).pass();
      list.add(new PassAnswer(pass.line(), pass.radius(), role(i), after(i + 1), cuts.of(i)));
    }
    return list;
  }

  /** A pass at full depth repeats an earlier one when it covers the same heights. */
  private Role role(int i) {
    CutPass cut = model.passes().get(i);
    if (!model.isAtFullDepth(cut)) {
      return Role.ROUGH;
    }
    for (int k = 0; k < i; k++) {
      CutPass before = model.passes().get(k);
      boolean sameHeights =
          Math.abs(before.zBottom() - cut.zBottom()) < spec.lead() / 2
              && Math.abs(before.zTop() - cut.zTop()) < spec.lead() / 2;
      if (model.isAtFullDepth(before) && sameHeights) {
        return Role.SPRING;
      }
    }
    return Role.FINISH;
  }

  private Optional<PassMeasures> after(int count) {
    RegularThread thread = found.asLeft().threadAfter(count);
    if (Judge.notMeasurable(found, thread).isPresent()) {
      return Optional.empty();
    }
    RegularThread tight = found.tight().threadAfter(count);
    Fit fit = measurer.fit(tight, found.accumulatedError());
    return Optional.of(
        new PassMeasures(measurer.simple(thread), fit.functional(), 2 * thread.groove().bottom()));
  }
}
