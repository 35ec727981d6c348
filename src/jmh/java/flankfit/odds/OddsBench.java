package flankfit.odds;

import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.VariedThreads;
import flankfit.setup.Scatter;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Odds of 10 000 draws and advice on one M20 x 1.5, three passes, ground teeth, bending, on the
 * path as moved. Each call has a thread of its own, for a thread keeps the walls it has read.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class OddsBench {
  private ThreadAnswer thread;
  private List<PartObserved> seen;

  @Setup
  public void make() {
    gauge();
    Observation stops = Observation.of("go=stops", LengthUnit.MILLIMETRE);
    seen = List.of(new PartObserved(1, -0.045, List.of(stops)));
    if (draws().good() < 0.9 || advice().key().isEmpty()) {
      throw new IllegalStateException("a good thread is not found good");
    }
  }

  /** The thread as gauged, whose own answer is not part of what is measured. */
  @Setup(Level.Invocation)
  public void gauge() {
    thread = VariedThreads.realGroundAndBent(-0.045);
  }

  /** Tables of the thread, 10 000 draws, shares of the contributors. */
  @Benchmark
  public ThreadOdds draws() {
    return odds().reckoned(ThreadOdds.DRAWS);
  }

  /** Tables of the thread, and the advice after one gauge. */
  @Benchmark
  public GaugingAdvice advice() {
    return odds().advice(seen);
  }

  private Odds odds() {
    return Odds.of(thread, Scatter.unknown(), 1).orElseThrow();
  }
}
