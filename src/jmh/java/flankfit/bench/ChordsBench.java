package flankfit.bench;

import flankfit.motion.Chords;
import flankfit.motion.ModalState;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Chords of a helix within 1 µm; the score is the time for a thousand turns' chords, each one. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ChordsBench {
  private static final double TOLERANCE = 0.001;
  private static final double RADIUS = 3;

  /** Chords in a turn of radius 3 within 1 µm: ceil(2π / (2 acos(1 - 0.001 / 3))). */
  static final int CHORDS = 122;

  private Tape tape;
  private final double[] target = new double[3 * CHORDS];

  @Setup
  public void make() {
    TapeBuilder builder =
        new TapeBuilder(new Point(RADIUS, 0, 0), new double[] {20000, 20000, 20000});
    builder.arc(
        RADIUS,
        0,
        1.5,
        0,
        0,
        RADIUS,
        RADIUS,
        Angles.TURN,
        1,
        1,
        ModalState.initial(LengthUnit.MILLIMETRE));
    tape = builder.build();
    if (Chords.count(tape, 0, TOLERANCE) != CHORDS) {
      throw new IllegalStateException("not the least number: " + Chords.count(tape, 0, TOLERANCE));
    }
  }

  /** One turn; the score is per chord. */
  @Benchmark
  @OperationsPerInvocation(CHORDS)
  public int turn() {
    return Chords.write(tape, 0, Chords.count(tape, 0, TOLERANCE), target, 0);
  }
}
