package flankfit.metal;

import flankfit.motion.Extents;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.setup.ControlSwitches;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.solid.SurfaceCells;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Map;
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
 * A filter housing's port at 0.05 mm: faced, drilled, countersunk, M20 x 1.5 milled in three
 * passes.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 5)
@Fork(2)
public class MetalBench {
  private static final double CELL = 0.05;
  private static final double PITCH = 1.5;

  private final List<Tool> tools =
      List.of(
          tool(1, Tool.Kind.FACE_MILL, 50, 20, Math.PI, Optional.empty()),
          tool(2, Tool.Kind.DRILL, 18.5, 40, 2, Optional.empty()),
          tool(3, Tool.Kind.COUNTERSINK, 25, 20, Math.PI / 2, Optional.empty()),
          tool(4, Tool.Kind.THREAD_MILL, 14, 18, Math.PI, Optional.of(teeth())));

  private SetupSheet sheet;
  private Tape tape;
  private TapeBuilder builder;
  private double x;
  private double y;
  private int spindleTool;

  private static Tool.Teeth teeth() {
    return new Tool.Teeth(
        11, Optional.of(PITCH), Math.PI / 6, PITCH / 8, new Tool.CutterForm.Straight(), 0.75);
  }

  private static Tool tool(
      int number,
      Tool.Kind kind,
      double diameter,
      double flute,
      double point,
      Optional<Tool.Teeth> teeth) {
    return new Tool(
        number,
        kind,
        false,
        diameter,
        4,
        teeth,
        point,
        0,
        flute,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        0,
        0,
        "",
        0);
  }

  @Setup
  public void make() throws TooFineException {
    sheet =
        new SetupSheet(
            "",
            "",
            LengthUnit.MILLIMETRE,
            ControlSwitches.defaults(),
            Optional.of(
                new Stock(
                    Stock.Shape.BLOCK,
                    new Extents(new Point(-40, -30, -30), new Point(40, 30, 1)),
                    0)),
            List.of(),
            Map.of(),
            List.of(),
            tools,
            Offsets.none(),
            "",
            SetupSheet.GaugeCondition.NEW,
            List.of());
    builder = new TapeBuilder(new Point(0, 0, 100), new double[] {1e4, 1e4, 1e4});
    spindleTool = 1;
    line(-70, -15, 50).line(-70, -15, 0).line(70, -15, 0).line(70, 15, 0).line(-70, 15, 0);
    line(-70, 15, 50).line(0, 0, 50);
    spindleTool = 2;
    line(0, 0, -22).line(0, 0, 50);
    spindleTool = 3;
    line(0, 0, -10.5).line(0, 0, 50);
    spindleTool = 4;
    for (double path : new double[] {2.6, 3, 3}) {
      line(0, 0, -17).line(path / 2, -path / 2, -17);
      arc(path / 2, 0, 0.25, -16.812).arc(0, 0, 1, -15.312).arc(path / 2, 0, 0.25, -15.125);
    }
    line(0, 0, -15.125).line(0, 0, 50);
    tape = builder.build();
    Metal metal = metal();
    if (metal.at(tape.size()).cells().count() < 100_000 || metal.volume(tape.size()) > 142_000) {
      throw new IllegalStateException("the part is not cut");
    }
  }

  private MetalBench line(double toX, double toY, double toZ) {
    builder.straight(MoveKind.LINE, toX, toY, toZ, 1, 1, state());
    x = toX;
    y = toY;
    return this;
  }

  private MetalBench arc(double centreX, double centreY, double turns, double toZ) {
    double r = Math.hypot(x - centreX, y - centreY);
    double sweep = turns * 2 * Math.PI;
    double a = Math.atan2(y - centreY, x - centreX) + sweep;
    x = centreX + r * Math.cos(a);
    y = centreY + r * Math.sin(a);
    builder.arc(x, y, toZ, centreX, centreY, r, r, sweep, 1, 1, state());
    return this;
  }

  private ModalState state() {
    return new ModalState(
        ModalState.Distance.ABSOLUTE,
        Plane.XY,
        ModalState.Compensation.OFF,
        0,
        0,
        0,
        LengthUnit.MILLIMETRE,
        "G54",
        spindleTool,
        100,
        ModalState.Spindle.CLOCKWISE,
        1000,
        false);
  }

  private Metal metal() throws TooFineException {
    return Metal.of(tape, sheet, MetalOptions.usual().withCell(CELL), MetalProgress.NONE);
  }

  /** All of it, to the volumes that each tool took away. */
  @Benchmark
  public Balance balance() throws TooFineException {
    return metal().balance(tape.size());
  }

  /** All of it, to the cells that hold surface at the end. */
  @Benchmark
  public SurfaceCells cut() throws TooFineException {
    return metal().at(tape.size()).cells();
  }
}
