package flankfit.setup;

import flankfit.motion.Point;
import flankfit.unit.LengthUnit;
import flankfit.unit.Require;
import java.util.List;
import java.util.Optional;

/**
 * How the control reads a program; every switch has a default.
 *
 * @param reading how text becomes numbers and blocks
 * @param arcs what arcs are accepted
 * @param rapids how rapids run, and the greatest feed
 * @param places fixed points of the machine
 * @param tools what T, M6, registers mean
 * @param compensation how radius compensation behaves
 * @param cycles how drilling and boring cycles behave
 * @param scaleReading what the factors of G51 mean
 * @param flow how subprograms, expressions and loops behave
 */
public record ControlSwitches(
    Reading reading,
    Arcs arcs,
    Rapids rapids,
    Places places,
    Tools tools,
    Compensation compensation,
    Cycles cycles,
    ScaleReading scaleReading,
    Flow flow) {

  /** All switches at their defaults. */
  public static ControlSwitches defaults() {
    return new ControlSwitches(
        new Reading(
            NumberReading.CALCULATOR,
            false,
            0.001,
            LengthUnit.INCH.toMillimetres(0.0001),
            LengthUnit.MILLIMETRE,
            Semicolon.COMMENT,
            List.of(),
            false,
            DwellP.BY_POINT),
        new Arcs(false, 0.02, TurnsWord.OFF, true, false),
        new Rapids(false, List.of(20000.0, 20000.0, 20000.0), 20000.0),
        new Places(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            1.0),
        new Tools(false, false, Entry.RADIUS, Entry.RADIUS, false),
        new Compensation(StartUp.NEXT_NORMAL, false, CancelReference.PROGRAMMED, false, false),
        new Cycles(RepeatWord.EITHER, false, 1.0, 0.5, BoreShift.MINUS_X, false),
        ScaleReading.FACTOR,
        new Flow(CallForm.AUTO, List.of(), false, 100_000, 50_000_000, 10_000_000, false));
  }

  /** The same with other reading switches. */
  public ControlSwitches with(Reading other) {
    return new ControlSwitches(
        other, arcs, rapids, places, tools, compensation, cycles, scaleReading, flow);
  }

  /** The same with other arc switches. */
  public ControlSwitches with(Arcs other) {
    return new ControlSwitches(
        reading, other, rapids, places, tools, compensation, cycles, scaleReading, flow);
  }

  /** The same with other rapid switches. */
  public ControlSwitches with(Rapids other) {
    return new ControlSwitches(
        reading, arcs, other, places, tools, compensation, cycles, scaleReading, flow);
  }

  /** The same with other places. */
  public ControlSwitches with(Places other) {
    return new ControlSwitches(
        reading, arcs, rapids, other, tools, compensation, cycles, scaleReading, flow);
  }

  /** The same with other tool switches. */
  public ControlSwitches with(Tools other) {
    return new ControlSwitches(
        reading, arcs, rapids, places, other, compensation, cycles, scaleReading, flow);
  }

  /** The same with other compensation switches. */
  public ControlSwitches with(Compensation other) {
    return new ControlSwitches(
        reading, arcs, rapids, places, tools, other, cycles, scaleReading, flow);
  }

  /** The same with other cycle switches. */
  public ControlSwitches with(Cycles other) {
    return new ControlSwitches(
        reading, arcs, rapids, places, tools, compensation, other, scaleReading, flow);
  }

  /** The same with another reading of scale factors. */
  public ControlSwitches with(ScaleReading other) {
    return new ControlSwitches(
        reading, arcs, rapids, places, tools, compensation, cycles, other, flow);
  }

  /** The same with other flow switches. */
  public ControlSwitches with(Flow other) {
    return new ControlSwitches(
        reading, arcs, rapids, places, tools, compensation, cycles, scaleReading, other);
  }

  /**
   * How text becomes numbers and blocks.
   *
   * @param numbers what a number without a point means ({@code number-reading})
   * @param roundToLeastIncrement whether dimensions are rounded ({@code input-rounding})
   * @param leastIncrementMm least increment of metric input (mm)
   * @param leastIncrementInch least increment of inch input (mm)
   * @param powerUpUnit unit before G20 or G21 is said
   * @param semicolon what a semicolon does
   * @param blockDelete levels of block delete that are on, each 1 to 9; empty for none
   * @param optionalStop whether M1 stops
   * @param dwellP how P of a dwell is read
   */
  public record Reading(
      NumberReading numbers,
      boolean roundToLeastIncrement,
      double leastIncrementMm,
      double leastIncrementInch,
      LengthUnit powerUpUnit,
      Semicolon semicolon,
      List<Integer> blockDelete,
      boolean optionalStop,
      DwellP dwellP) {
    public Reading {
      blockDelete = List.copyOf(blockDelete);
    }

    /** Least increment of a unit (mm). */
    public double leastIncrement(LengthUnit unit) {
      return unit == LengthUnit.INCH ? leastIncrementInch : leastIncrementMm;
    }
  }

  /**
   * What arcs are accepted.
   *
   * @param absoluteCentre whether I J K are coordinates at the start ({@code arc-centre})
   * @param closureLimit greatest difference of the radii at start and end (mm)
   * @param turns which word counts turns
   * @param longArcByNegativeR whether a negative R asks for the long arc
   * @param inPlaneFeed whether F holds in the plane of a helix ({@code helix-feed})
   */
  public record Arcs(
      boolean absoluteCentre,
      double closureLimit,
      TurnsWord turns,
      boolean longArcByNegativeR,
      boolean inPlaneFeed) {}

  /**
   * How rapids run.
   *
   * @param dogLeg whether each axis runs at its own rate ({@code rapid-path})
   * @param rates rate of each axis (mm/min), 3 long
   * @param maxFeed feed above which a finding is given (mm/min)
   */
  public record Rapids(boolean dogLeg, List<Double> rates, double maxFeed) {
    public Rapids {
      rates = List.copyOf(rates);
    }
  }

  /**
   * Fixed points of the machine in the part frame (mm).
   *
   * @param reference where G28 goes
   * @param reference2 where G30 goes
   * @param reference3 where G30 P3 goes
   * @param reference4 where G30 P4 goes
   * @param machineZero zero of machine coordinates
   * @param start where the tip stands at the start
   * @param clearance height above the part's top that counts as clear (mm)
   */
  public record Places(
      Optional<Point> reference,
      Optional<Point> reference2,
      Optional<Point> reference3,
      Optional<Point> reference4,
      Optional<Point> machineZero,
      Optional<Point> start,
      double clearance) {}

  /**
   * What T, M6 and the registers mean.
   *
   * @param changeByT whether T alone changes the tool ({@code tool-change = "t-alone"})
   * @param changeGoesHome whether M6 first sends Z to the reference point
   * @param geometryEntry how the geometry of a D register is entered
   * @param wearEntry how the wear of a D register is entered
   * @param registerByTool whether G41 without D takes the tool's number ({@code d-default})
   * @param wearLimit largest wear that can be entered, either sign (mm, as entered)
   */
  public record Tools(
      boolean changeByT,
      boolean changeGoesHome,
      Entry geometryEntry,
      Entry wearEntry,
      boolean registerByTool,
      Optional<Double> wearLimit) {
    /** No limit of wear is stated. */
    public Tools(boolean byT, boolean home, Entry geometry, Entry wear, boolean registerByTool) {
      this(byT, home, geometry, wear, registerByTool, Optional.empty());
    }
  }

  /**
   * How radius compensation behaves.
   *
   * @param startUp shape of the start-up
   * @param startOnArc whether it may start on an arc
   * @param cancelReference where increments of the cancel move count from
   * @param mitre whether outside corners are mitred instead of rounded
   * @param insideCornerIsError whether every inside corner is an error
   */
  public record Compensation(
      StartUp startUp,
      boolean startOnArc,
      CancelReference cancelReference,
      boolean mitre,
      boolean insideCornerIsError) {}

  /**
   * How drilling and boring cycles behave.
   *
   * @param repeat which word counts repeats
   * @param axisWordsAfterG80AreError whether axis words after G80 need G0 to G3 ({@code after-g80})
   * @param peckClearance where a peck's rapid stops above the last depth (mm), from 0
   * @param chipBreakRetract how far G73 backs off between pecks (mm), from 0
   * @param boreShift where the tool goes by Q of G76 and G87
   * @param backBoreFromDepth whether G87 begins at the depth word and K is the top of the bore
   *     ({@code back-bore = "Z-bottom"}); otherwise it begins at R
   */
  public record Cycles(
      RepeatWord repeat,
      boolean axisWordsAfterG80AreError,
      double peckClearance,
      double chipBreakRetract,
      BoreShift boreShift,
      boolean backBoreFromDepth) {
    public Cycles {
      Require.notNegative("peckClearance", peckClearance);
      Require.notNegative("chipBreakRetract", chipBreakRetract);
    }
  }

  /**
   * How subprograms, expressions and loops behave, and what the end of the program leaves.
   *
   * @param callForm how P of M98 is read ({@code m98-form})
   * @param subprograms names of files with further programs, beside the sheet
   * @param fixDown whether FIX goes down and FUP up also below zero ({@code fix-rounding})
   * @param loopLimit most passes of one loop, and most backward jumps of one GOTO
   * @param blockLimit most blocks executed
   * @param moveLimit most moves; an arc counts as two
   * @param keepsState whether the next run begins in the state that this one leaves ({@code
   *     end-reset = "keep"})
   */
  public record Flow(
      CallForm callForm,
      List<String> subprograms,
      boolean fixDown,
      int loopLimit,
      int blockLimit,
      int moveLimit,
      boolean keepsState) {
    public Flow {
      subprograms = List.copyOf(subprograms);
    }
  }

  /** How P of M98 is read. */
  public enum CallForm {
    /** Five digits and more are count and program, as far as that is clear. */
    AUTO,
    /** Five digits and more are always count and program. */
    SPLIT,
    /** P is always the program. */
    PLAIN
  }

  /** What a number without a point means. */
  public enum NumberReading {
    CALCULATOR,
    LEAST_INCREMENT
  }

  /** What a semicolon does. */
  public enum Semicolon {
    COMMENT,
    END_OF_BLOCK
  }

  /** How P of a dwell is read. */
  public enum DwellP {
    BY_POINT,
    MILLISECONDS,
    SECONDS
  }

  /** Which word counts the turns of an arc. */
  public enum TurnsWord {
    OFF,
    P,
    L
  }

  /** Which word counts the repeats of a cycle. */
  public enum RepeatWord {
    EITHER,
    K,
    L;

    /** Whether a letter counts repeats. */
    public boolean reads(char letter) {
      return this == EITHER ? letter == 'K' || letter == 'L' : name().charAt(0) == letter;
    }
  }

  /** Where the tool goes from the bore when the spindle is oriented. */
  public enum BoreShift {
    MINUS_X("-X", 0, -1),
    PLUS_X("+X", 0, 1),
    MINUS_Y("-Y", 1, -1),
    PLUS_Y("+Y", 1, 1);

    private final String word;
    private final int axis;
    private final int sign;

    BoreShift(String word, int axis, int sign) {
      this.word = word;
      this.axis = axis;
      this.sign = sign;
    }

    /** The word in the sheet. */
    public String word() {
      return word;
    }

    /** Index of the axis: 0 X, 1 Y. */
    public int axis() {
      return axis;
    }

    /** +1 or -1 along the axis. */
    public int sign() {
      return sign;
    }
  }

  /** What the factors of G51 mean. */
  public enum ScaleReading {
    FACTOR,
    THOUSANDTHS
  }

  /** Whether a register holds radii or diameters. */
  public enum Entry {
    RADIUS(1),
    DIAMETER(2);

    private final int divisor;

    Entry(int divisor) {
      this.divisor = divisor;
    }

    /** What an entry is divided by to give a radius (1). */
    public int divisor() {
      return divisor;
    }
  }

  /** Shape of the start-up of radius compensation. */
  public enum StartUp {
    NEXT_NORMAL,
    OWN_NORMAL,
    TANGENT
  }

  /** Where increments of the cancel move count from. */
  public enum CancelReference {
    PROGRAMMED,
    ACTUAL
  }
}
