package flankfit.gauge;

import java.util.List;
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

/** GO and NO-GO through fifteen turns of an M16 x 2, oval, tapered and long in its lead. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class TravelBench {
  private TurnedWall wall;
  private WallField field;
  private ThreadGauge go;
  private ThreadGauge noGo;

  @Setup
  public void make() {
    wall = new TurnedWall("M16x2-6H");
    wall.bottom = -30;
    wall.larger = (theta, z) -> 0.004 * z + 0.010 * Math.cos(2 * theta);
    wall.raised = (theta, z) -> 0.001 * z;
    field = read();
    go = ThreadGauge.go(wall.spec).withPitchDiameter(wall.pitchDiameter() - 0.2);
    noGo = ThreadGauge.noGo(wall.spec).withPitchDiameter(wall.pitchDiameter() - 0.15);
    for (Travel travel : travels()) {
      if (travel.end() != Travel.End.THROUGH) {
        throw new IllegalStateException("a loose gauge is stopped: " + travel);
      }
    }
  }

  /** The wall read into a field; mostly the wall's own work. */
  @Benchmark
  public WallField read() {
    return WallField.sample(wall, wall.spec, true);
  }

  /** Both gauges on their way, the field read before. */
  @Benchmark
  public List<Travel> travels() {
    return List.of(Travel.of(field, go), Travel.of(field, noGo));
  }
}
