package flankfit.gauge;

import flankfit.finding.Findings;
import flankfit.motion.Tape;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The real answer of one thread: a blind M20 x 1.5 by a ground comb in three passes that bend, on
 * arcs in and out; GO, NO-GO and plain plugs, measures, rubbing.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class RealAnswerBench {
  private Tape tape;
  private FoundThread found;

  @Setup
  public void make() {
    Milled job = new Milled();
    job.wear = -0.045;
    job.radii = new double[] {2.6, 3, 3};
    job.entryRiseShare = 0.25;
    job.form = new Tool.CutterForm.GroundFor("M20x1.5-6H", false);
    job.metal = "aluminium, wrought";
    job.neck = Optional.of(new Tool.Section(11, 42));
    job.shank = Optional.of(new Tool.Section(14, 6));
    job.depth = Optional.of(22.0);
    job.threadDepth = 15;
    SetupSheet sheet = job.sheet();
    tape = job.tape(sheet.offsets());
    FoundThread stiff = job.found(tape);
    Text text = new Text(LengthUnit.MILLIMETRE);
    Assumptions assumptions = new Assumptions(job.condition, text, true);
    found = stiff.bent(new WorkpieceMetal(sheet, new Findings(), assumptions).bending(stiff));
    if (found.bending().isEmpty()) {
      throw new IllegalStateException("the mill does not bend");
    }
    if (!answer().reachesWanted()) {
      throw new IllegalStateException("the GO plug stops: " + answer().words());
    }
  }

  /** From the tape to the answer. */
  @Benchmark
  public RealAnswer answer() {
    try {
      return new RealAnswers(tape).of(found);
    } catch (NoRealWallException e) {
      throw new IllegalStateException(e);
    }
  }
}
