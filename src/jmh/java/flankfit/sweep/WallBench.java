package flankfit.sweep;

import flankfit.motion.Point;
import flankfit.unit.Angles;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
 * Every flank of one M20 x 1.5, 16 deep, milled with a single row of 14 mm in two roughing passes
 * and a finishing one, half-turn entry and exit each: half a degree apart, 33 radii.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class WallBench {
  private static final double PITCH = 1.5;
  private static final double PER_RADIAN = PITCH / Angles.TURN;
  private static final double TURNS = 10.6;
  private static final double START = -15.5;
  private static final int ANGLES = 720;
  private static final int RADII = 33;

  /** A flank read off straight lines between the radii shall be as good as this (mm). */
  private static final double ACCURATE = 0.001;

  private Blank hole;
  private GroovePhase phase;
  private double[] theta;
  private double[] radius;
  private Tooth straight;
  private Tooth ground;

  @Setup
  public void make() {
    hole = Blank.hole(9.1881, -24);
    phase = new GroovePhase(START, PER_RADIAN, PITCH);
    theta = IntStream.range(0, ANGLES).mapToDouble(i -> Angles.TURN * i / ANGLES).toArray();
    // Closer towards the bottom, where the groove is rounded.
    radius =
        IntStream.rangeClosed(1, RADII)
            .mapToDouble(i -> 10 - 0.8 * Math.pow((double) (RADII - i) / RADII, 2))
            .toArray();
    straight = PolylineTooth.straight(7, PITCH / 8, Math.PI / 6);
    double pitchRadius = (20 - 0.75 * Math.sqrt(3) / 2 * PITCH) / 2;
    ground =
        new GroundTooth(new GroundTooth.Basis(true, 10, pitchRadius, PITCH, PITCH, Math.PI / 6), 7);
    check(straight, straightTeeth());
    check(ground, groundTeeth());
  }

  private void check(Tooth tooth, FlankField field) {
    double[] between =
        IntStream.range(1, RADII).mapToDouble(i -> (radius[i - 1] + radius[i]) / 2).toArray();
    FlankField fine = FlankField.of(wall(tooth), field.phase(), theta, between);
    for (int k = 1; k < 9; k++) {
      for (int i = 1; i < RADII; i++) {
        double read = (field.z(100, k, Flank.UP, i - 1) + field.z(100, k, Flank.UP, i)) / 2;
        double off = Math.abs(read - fine.z(100, k, Flank.UP, i - 1));
        if (!(off < ACCURATE)) {
          throw new IllegalStateException("flank off by " + off + " at " + between[i - 1]);
        }
      }
    }
  }

  /** A mill with straight flanks. */
  @Benchmark
  public FlankField straightTeeth() {
    return FlankField.of(wall(straight), phase, theta, radius);
  }

  /** A mill ground for the thread, its flanks known from before. */
  @Benchmark
  public FlankField groundTeeth() {
    return FlankField.of(wall(ground), phase, theta, radius);
  }

  private SweptWall wall(Tooth tooth) {
    Cutter cutter = new Cutter(tooth, 1, 0, 0, PITCH, List.of());
    return new SweptWall(
        true,
        0,
        0,
        new SweptWall.Range(-24, 0),
        List.of(hole),
        List.of(
            Sweep.of(cutter, path(2.6)), Sweep.of(cutter, path(2.9)), Sweep.of(cutter, path(3))));
  }

  /** Down the axis, half a turn out, up the helix, half a turn back, out. */
  private static CutterPath path(double e) {
    double a = e / 2;
    double rise = PER_RADIAN * Math.PI / 2;
    double sweep = TURNS * Angles.TURN;
    double end = START + PER_RADIAN * sweep;
    double cx = a * Math.cos(sweep);
    double cy = a * Math.sin(sweep);
    return new CutterPath(
        List.of(
            new PathPiece.Line(new Point(0, 0, 5), new Point(0, 0, START - rise), -1),
            new PathPiece.Arc(a, 0, a, a, -Math.PI, Math.PI, START - rise, START, -1),
            new PathPiece.Arc(0, 0, e, e, 0, sweep, START, end, -1),
            new PathPiece.Arc(cx, cy, a, a, sweep, Math.PI, end, end + rise, -1),
            new PathPiece.Line(new Point(0, 0, end + rise), new Point(0, 0, 5), -1)));
  }
}
