package flankfit.gauge;

import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.HelicalGroove;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Tooth;
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

/** Exact axial profile and all measures of one M20 x 1.5 milled with a 14 mm mill. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ProfileBench {
  /** What a straight V leaves, by the closed form of the involute helicoid (mm). */
  private static final double STRAIGHT_PITCH = 19.064866;

  private ThreadSpec spec;
  private Tooth straight;

  @Setup
  public void make() throws InvalidDesignationException {
    spec = Designations.parse("M20x1.5-6H");
    straight = PolylineTooth.straight(7, 1.5 / 8, spec.halfAngle());
    if (Math.abs(straightForm().pitchSimple() - STRAIGHT_PITCH) > 1e-6) {
      throw new IllegalStateException("wrong pitch diameter: " + straightForm().pitchSimple());
    }
  }

  /** A mill with straight flanks. */
  @Benchmark
  public Measures straightForm() {
    return measure(straight);
  }

  /** A mill ground for the thread, its flanks computed anew each time. */
  @Benchmark
  public Measures groundForm() {
    return measure(TeethForms.groundFor(spec, 7));
  }

  private Measures measure(Tooth tooth) {
    HelicalGroove groove = new HelicalGroove(tooth, true, 3, 1.5);
    return new Measurer(spec).measure(new RegularThread(groove, 1.5, 9.25), 0, 0);
  }
}
