package flankfit.control;

import flankfit.motion.ModalState;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.Plane;
import flankfit.unit.LengthUnit;

/**
 * The modal state of the control. Makes one {@link ModalState} and hands the same one out until
 * something that shows in it changes.
 */
final class Modes {
  private int motion;
  private boolean motionStated;
  private boolean distanceStated;
  private boolean planeStated;
  private boolean unitStated;
  private boolean offsetStated;
  private boolean absolute = true;
  private boolean absoluteCentre;
  private Plane plane = Plane.XY;
  private LengthUnit unit;
  private int feedMode = 940;
  private double feedWord = Double.NaN;
  private String workOffset = "G54";
  private Compensation side = Compensation.OFF;
  private double radius;
  private int radiusRegister;
  private int lengthMode = 490;
  private int lengthRegister;
  private int tool;
  private Spindle spindle = Spindle.OFF;
  private double speed;
  private boolean mist;
  private boolean flood;
  private boolean changed = true;
  private ModalState shown;

  Modes(LengthUnit unit, boolean absoluteCentre) {
    this.unit = unit;
    this.absoluteCentre = absoluteCentre;
    this.shown = ModalState.initial(unit);
  }

  /** The state as a tape shows it, for a feed (mm/min) and a side of compensation. */
  ModalState show(double feed, Compensation onSide) {
    if (changed || feed != shown.feed() || onSide != shown.compensation()) {
      shown =
          new ModalState(
              absolute ? Distance.ABSOLUTE : Distance.INCREMENTAL,
              plane,
              onSide,
              onSide == Compensation.OFF ? 0 : radius,
              radiusRegister,
              lengthMode == 490 ? 0 : lengthRegister,
              unit,
              workOffset,
              tool,
              feed,
              spindle,
              speed,
              mist || flood);
      changed = false;
    }
    return shown;
  }

  /** Motion function 0 to 3. */
  int motion() {
    return motion;
  }

  void motion(int function) {
    motion = function;
    motionStated = true;
  }

  /** A cycle is stated; the motion function before it stays. */
  void cycleStated() {
    motionStated = true;
  }

  boolean motionStated() {
    return motionStated;
  }

  boolean absolute() {
    return absolute;
  }

  void absolute(boolean on) {
    absolute = on;
    distanceStated = true;
    changed = true;
  }

  boolean distanceStated() {
    return distanceStated;
  }

  boolean absoluteCentre() {
    return absoluteCentre;
  }

  void absoluteCentre(boolean on) {
    absoluteCentre = on;
  }

  Plane plane() {
    return plane;
  }

  void plane(Plane other) {
    plane = other;
    planeStated = true;
    changed = true;
  }

  boolean planeStated() {
    return planeStated;
  }

  LengthUnit unit() {
    return unit;
  }

  void unit(LengthUnit other) {
    unit = other;
    unitStated = true;
    changed = true;
  }

  boolean unitStated() {
    return unitStated;
  }

  /** 930, 940 or 950. */
  int feedMode() {
    return feedMode;
  }

  void feedMode(int code) {
    feedMode = code;
  }

  /** F as it counts: mm/min, mm per revolution, or 1/min; not a number when none is given. */
  double feedWord() {
    return feedWord;
  }

  void feedWord(double value) {
    feedWord = value;
  }

  String workOffset() {
    return workOffset;
  }

  void workOffset(String name) {
    workOffset = name;
    offsetStated = true;
    changed = true;
  }

  boolean offsetStated() {
    return offsetStated;
  }

  /** Side of compensation last said; OFF after G40. */
  Compensation side() {
    return side;
  }

  void side(Compensation onSide) {
    side = onSide;
  }

  /** Radius in use (mm), signed as in the register. */
  double radius() {
    return radius;
  }

  void radius(double value) {
    radius = value;
    changed = true;
  }

  int radiusRegister() {
    return radiusRegister;
  }

  void radiusRegister(int number) {
    radiusRegister = number;
    changed = true;
  }

  /** 430, 440 or 490. */
  int lengthMode() {
    return lengthMode;
  }

  void lengthMode(int code) {
    lengthMode = code;
    changed = true;
  }

  int lengthRegister() {
    return lengthRegister;
  }

  void lengthRegister(int number) {
    lengthRegister = number;
    changed = true;
  }

  int tool() {
    return tool;
  }

  void tool(int number) {
    tool = number;
    changed = true;
  }

  Spindle spindle() {
    return spindle;
  }

  void spindle(Spindle way) {
    spindle = way;
    changed = true;
  }

  /** Spindle speed last commanded (1/min). */
  double speed() {
    return speed;
  }

  void speed(double perMinute) {
    speed = perMinute;
    changed = true;
  }

  boolean mist() {
    return mist;
  }

  void mist(boolean on) {
    mist = on;
    changed = true;
  }

  boolean flood() {
    return flood;
  }

  void flood(boolean on) {
    flood = on;
    changed = true;
  }
}
