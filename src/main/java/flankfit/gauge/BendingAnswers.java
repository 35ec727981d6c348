package flankfit.gauge;

import flankfit.sweep.RegularThread;
import java.util.List;
import java.util.Optional;

/** Puts the answer on bending together. */
final class BendingAnswers {
  private final FoundThread found;
  private final Measurer measurer;

  BendingAnswers(FoundThread found) {
    this.found = found;
    this.measurer = new Measurer(found.spec());
  }

  /** The answer; empty when nothing is known of bending. */
  Optional<BendingAnswer> answer() {
    return found.bending().map(this::of);
  }

  private BendingAnswer of(Bending bending) {
    RegularThread rigid = found.model().thread();
    double pitch = simple(bending.mean());
    double practice = simple(bending.practice());
    return new BendingAnswer(
        bending.material().key(),
        bending.material().source(),
        BendingAnswer.UNCERTAINTY,
        measurer.simple(rigid),
        verdict(rigid),
        practice,
        simple(bending.tight()),
        simple(bending.loose()),
        simple(bending.sprung()) - pitch,
        simple(bending.practiceSprung()) - practice);
  }

  private double simple(List<Double> bend) {
    return measurer.simple(found.model().bent(bend).thread());
  }

  private Verdict verdict(RegularThread rigid) {
    if (Judge.notMeasurable(found, rigid).isPresent()) {
      return Verdict.NOT_A_THREAD;
    }
    Measures measures =
        measurer.measure(rigid, found.model().leadError(), found.accumulatedError());
    return Judge.of(found, measures).verdict();
  }
}
