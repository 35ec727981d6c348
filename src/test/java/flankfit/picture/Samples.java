package flankfit.picture;

import flankfit.motion.Extents;
import flankfit.motion.ModalState;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.setup.Tool.Section;
import flankfit.setup.Tool.Teeth;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Two small programs of our own, written straight to the tape. */
public final class Samples {
  private static final double[] RAPIDS = {20000, 20000, 15000};
  private static final double QUARTER = Math.PI / 2;

  private Samples() {}

  /** Scene of {@link #threadTape}: the port of a valve block. */
  public static Scene thread() {
    return new Scene(threadTape(), threadSetup(), "Valve block, port M20x1.5")
        .withMajorDiameters(Map.of("port", 20.0));
  }

  /** Scene of {@link #patternTape}: four holes of a filter housing. */
  public static Scene pattern() {
    return new Scene(patternTape(), patternSetup(), "Filter housing, four holes");
  }

  /** M20x1.5 in a hole of 18.5 mm with a mill of 14 mm: three passes, the last at e = 3.0 mm. */
  public static Tape threadTape() {
    TapeBuilder tape = new TapeBuilder(new Point(0, 0, 60), RAPIDS);
    ModalState absolute = state(Distance.ABSOLUTE, Compensation.OFF, 0);
    tape.straight(MoveKind.RAPID, 0, 0, 5, 3, 1, absolute);
    tape.straight(MoveKind.RAPID, 0, 0, -19, 4, 2, absolute);
    double[] offsets = {2.2, 2.7, 3.0};
    int line = 6;
    int block = 3;
    for (double e : offsets) {
      pass(tape, e, line, block);
      line += 7;
      block += 6;
    }
    tape.straight(MoveKind.RAPID, 0, 0, 5, 27, 21, absolute);
    tape.straight(MoveKind.RAPID, 0, 0, 60, 28, 22, absolute);
    return tape.build();
  }

  private static void pass(TapeBuilder tape, double e, int line, int block) {
    ModalState on = state(Distance.INCREMENTAL, Compensation.LEFT, 10 - e);
    ModalState off = state(Distance.INCREMENTAL, Compensation.OFF, 0);
    double r = 10 - e;
    double a = e / 2;
    double z = -19;
    tape.straight(MoveKind.LINE, a, -a, z, line, block, on);
    tape.programmedTo(a, -a - r, z);
    z += 0.1875;
    tape.arc(e, 0, z, a, 0, a, a, QUARTER, line + 1, block + 1, on);
    tape.programmedTo(10, 0, z);
    z += 1.5;
    tape.arc(e, 0, z, 0, 0, e, e, 4 * QUARTER, line + 2, block + 2, on);
    tape.programmedTo(10, 0, z);
    z += 0.1875;
    tape.arc(a, a, z, a, 0, a, a, QUARTER, line + 3, block + 3, on);
    tape.programmedTo(a, a + r, z);
    tape.straight(MoveKind.LINE, 0, 0, z, line + 4, block + 4, off);
    tape.straight(MoveKind.LINE, 0, 0, -19, line + 5, block + 5, off);
  }

  private static ModalState state(Distance distance, Compensation compensation, double offset) {
    return new ModalState(
        distance,
        Plane.XY,
        compensation,
        offset,
        compensation == Compensation.OFF ? 0 : 12,
        2,
        LengthUnit.MILLIMETRE,
        "G54",
        2,
        240,
        Spindle.CLOCKWISE,
        2700,
        true);
  }

  /** The setup of the thread. */
  public static SetupSheet threadSetup() {
    Tool mill =
        new Tool(
            2,
            Tool.Kind.THREAD_MILL,
            false,
            14,
            4,
            Optional.of(
                new Teeth(
                    12, Optional.of(1.5), Math.PI / 6, 0.19, new Tool.CutterForm.Straight(), 0.75)),
            Math.PI,
            0,
            18.5,
            Optional.of(new Section(11, 26)),
            Optional.of(new Section(14, 40)),
            Optional.empty(),
            0,
            0,
            "carbide",
            0);
    return sheet(block(), List.of(hole("port", 0, 0, 18.5, Optional.empty())), List.of(mill));
  }

  /** Four drilled and then bored holes, all absolute, with rapids between. */
  public static Tape patternTape() {
    TapeBuilder tape = new TapeBuilder(new Point(0, 0, 30), RAPIDS);
    ModalState state =
        new ModalState(
            Distance.ABSOLUTE,
            Plane.XY,
            Compensation.OFF,
            0,
            0,
            1,
            LengthUnit.MILLIMETRE,
            "G54",
            1,
            180,
            Spindle.CLOCKWISE,
            3200,
            true);
    int block = 1;
    for (double[] at : new double[][] {{-25, -18}, {25, -18}, {25, 18}, {-25, 18}}) {
      tape.straight(MoveKind.RAPID, at[0], at[1], 3, block + 4, block++, state);
      tape.straight(MoveKind.LINE, at[0], at[1], -1, block + 4, block++, state);
      for (int turn = 1; turn <= 5; turn++) {
        if (turn == 1) {
          tape.straight(MoveKind.LINE, at[0] + 1.5, at[1], -1, block + 4, block++, state);
        }
        tape.arc(
            at[0] + 1.5,
            at[1],
            -1 - 3 * turn,
            at[0],
            at[1],
            1.5,
            1.5,
            4 * QUARTER,
            block + 4,
            block++,
            state);
      }
      tape.straight(MoveKind.LINE, at[0], at[1], -16, block + 4, block++, state);
      tape.straight(MoveKind.RAPID, at[0], at[1], 3, block + 4, block++, state);
    }
    return tape.build();
  }

  /** The setup of the pattern. */
  public static SetupSheet patternSetup() {
    Tool mill =
        new Tool(
            1,
            Tool.Kind.END_MILL,
            false,
            6,
            3,
            Optional.empty(),
            Math.PI,
            0,
            18,
            Optional.empty(),
            Optional.of(new Section(6, 30)),
            Optional.empty(),
            0,
            0,
            "",
            0);
    List<Hole> holes = new ArrayList<>();
    int number = 1;
    for (double[] at : new double[][] {{-25, -18}, {25, -18}, {25, 18}, {-25, 18}}) {
      holes.add(hole("hole " + number++, at[0], at[1], 9, Optional.of(16.0)));
    }
    return sheet(block(), holes, List.of(mill));
  }

  private static Stock block() {
    return new Stock(
        Stock.Shape.BLOCK, new Extents(new Point(-40, -30, -30), new Point(40, 30, 0)), 0);
  }

  private static Hole hole(String name, double x, double y, double d, Optional<Double> depth) {
    return new Hole(
        name,
        false,
        x,
        y,
        0,
        d,
        depth,
        Math.PI,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        0);
  }

  private static SetupSheet sheet(Stock stock, List<Hole> holes, List<Tool> tools) {
    SetupSheet empty = SetupSheet.empty();
    return new SetupSheet(
        "",
        "",
        LengthUnit.MILLIMETRE,
        empty.control(),
        Optional.of(stock),
        List.of(),
        Map.of(),
        holes,
        tools,
        Offsets.none(),
        "",
        empty.gauges(),
        List.of());
  }
}
