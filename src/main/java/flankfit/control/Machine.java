package flankfit.control;

import flankfit.finding.Findings;
import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.nc.Block;
import flankfit.setup.ControlSwitches;
import flankfit.setup.Offsets;
import flankfit.setup.Offsets.Register;
import flankfit.setup.RadiusSetting;
import flankfit.setup.SetupSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What every part of the control works on: modes, frame, where the tool stands, the tape. */
final class Machine {
  /** Height of the assumed reference point without stock, and its least height above one (mm). */
  private static final double ASSUMED_HEIGHT = 200;

  private static final double ASSUMED_ABOVE_STOCK = 100;

  final SetupSheet setup;
  final ControlSwitches switches;
  final Report report;
  final BlockWords words;
  final Modes modes;
  final Frame frame;
  final Dimensions dimensions;
  final TapeBuilder tape;
  final RadiusCompensation compensation;
  final Assumptions assumptions;
  final Surfaces surfaces;
  final CycleState cycle = new CycleState();
  final FlowLog log;

  /** The registers as they stand now: those of the sheet, changed by G10. */
  Offsets offsets;

  /** The D registers that the program has set itself, in order. */
  final List<RadiusSetting> settings = new ArrayList<>();

  /** The programmed point, part frame (mm). */
  final double[] tip = new double[3];

  /** Whether the place of an axis is only assumed. */
  final boolean[] assumed = new boolean[3];

  /** Number of the block being executed, from 1. */
  int blockNumber;

  /**
   * @param log takes the steps of each block, when somebody wants to know
   */
  Machine(
      SetupSheet setup, Findings findings, Block block, String file, int likelyMoves, FlowLog log) {
    this.setup = setup;
    this.log = log;
    this.switches = setup.control();
    offsets = setup.offsets();
    report = new Report(findings, block);
    words = new BlockWords(report, block);
    modes = new Modes(switches.reading().powerUpUnit(), switches.arcs().absoluteCentre());
    frame = new Frame(setup);
    dimensions = new Dimensions(switches.reading(), modes, report);
    Point start = switches.places().start().orElse(reference());
    tape =
        new TapeBuilder(
            start,
            switches.rapids().rates().stream().mapToDouble(Double::doubleValue).toArray(),
            likelyMoves,
            switches.flow().moveLimit());
    compensation = new RadiusCompensation(switches.compensation(), tape, findings);
    assumptions = new Assumptions(findings, file);
    surfaces = new Surfaces(this);
    boolean known =
        switches.places().start().isPresent() || switches.places().reference().isPresent();
    for (int axis = 0; axis < 3; axis++) {
      tip[axis] = start.axis(axis);
      assumed[axis] = !known;
    }
  }

  /** The reference point, or the assumed one. */
  Point reference() {
    return switches.places().reference().orElseGet(this::assumedReference);
  }

  /** Works out how far the tip stands above what Z says, by the tool and the register in use. */
  void findLengthDifference() {
    Optional<Register> used =
        modes.lengthMode() == 490 ? Optional.empty() : offsets.length(modes.lengthRegister());
    Optional<Register> own = setup.offsets().length(modes.tool());
    double sign = modes.lengthMode() == 440 ? -1 : 1;
    double wear = sign * used.map(Register::wear).orElse(0.0);
    double geometry =
        own.isPresent()
            ? sign * used.map(Register::geometry).orElse(0.0) - own.get().geometry()
            : 0;
    frame.lengthDifference(geometry + wear);
  }

  private Point assumedReference() {
    double height =
        setup
            .stock()
            .map(stock -> Math.max(ASSUMED_HEIGHT, stock.top() + ASSUMED_ABOVE_STOCK))
            .orElse(ASSUMED_HEIGHT);
    return new Point(0, 0, height);
  }

  /** A length (mm) worded in the unit of the program. */
  String length(double mm) {
    return Wording.length(mm, modes.unit());
  }

  /** A coordinate (mm) worded in the unit of the program. */
  String coordinate(double mm) {
    return Wording.coordinate(mm, modes.unit());
  }
}
