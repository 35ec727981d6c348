package flankfit.control;

import java.util.Optional;

/**
 * The run of a cycle: which, its levels and data. Levels are program coordinates of the plane's
 * normal (mm), but for the initial level, which is where the tool stood in the part frame.
 */
final class CycleState {
  private Optional<CycleKind> kind = Optional.empty();
  private boolean ended;
  private boolean clearanceReturn;
  private double initial;
  private double clearance;
  private double depthWord;
  private boolean depthFromClearance;
  private double peck;
  private double seconds;
  private double shiftX;
  private double shiftY;
  private boolean shiftStated;
  private double top;
  private boolean topFromDepth;

  /** Whether a cycle is on. */
  boolean isOn() {
    return kind.isPresent();
  }

  /** Whether neither a cycle is on nor the next motion must be stated after one. */
  boolean isQuiet() {
    return kind.isEmpty() && !ended;
  }

  Optional<CycleKind> kind() {
    return kind;
  }

  /** What an observer is told of the run. */
  Optional<ControlState.Cycle> told() {
    return kind.map(
        k ->
            new ControlState.Cycle(
                k.toString(),
                initial,
                FlowLog.optional(clearance),
                FlowLog.optional(depth()),
                FlowLog.optional(peck),
                seconds,
                shiftStated ? shiftX : 0,
                shiftStated ? shiftY : 0));
  }

  /** Begins a run with the tool at this height in the part frame (mm). */
  void begin(double height) {
    initial = height;
    clearance = Double.NaN;
    depthWord = Double.NaN;
    depthFromClearance = false;
    peck = Double.NaN;
    seconds = 0;
    shiftStated = false;
    top = Double.NaN;
    ended = false;
  }

  /** Another cycle of the run. */
  void kind(CycleKind next) {
    kind = Optional.of(next);
  }

  /** Ends the run; says whether the next motion function is still to be stated. */
  void end(boolean motionOpen) {
    kind = Optional.empty();
    ended = motionOpen;
  }

  /** Whether a run ended and no motion function has been stated since. */
  boolean motionOpen() {
    return ended;
  }

  /** Takes over the run of another control, or that its end left the motion function open. */
  void takeOverRun(CycleState other) {
    kind = other.kind;
    ended = other.ended;
    initial = other.initial;
    clearance = other.clearance;
    depthWord = other.depthWord;
    depthFromClearance = other.depthFromClearance;
    peck = other.peck;
    seconds = other.seconds;
    shiftX = other.shiftX;
    shiftY = other.shiftY;
    shiftStated = other.shiftStated;
    top = other.top;
    topFromDepth = other.topFromDepth;
  }

  /** Whether G99 is in force. */
  boolean returnsToClearance() {
    return clearanceReturn;
  }

  void returnsToClearance(boolean on) {
    clearanceReturn = on;
  }

  /** Initial level, part frame (mm). */
  double initial() {
    return initial;
  }

  /** R level (mm); not a number before R was said. */
  double clearance() {
    return clearance;
  }

  void clearance(double level) {
    clearance = level;
  }

  /** Depth (mm); not a number before it was said. */
  double depth() {
    return depthFromClearance ? clearance + depthWord : depthWord;
  }

  /** The depth word, which counts from the R level or is a coordinate (mm). */
  void depth(double word, boolean fromClearance) {
    depthWord = word;
    depthFromClearance = fromClearance;
  }

  /** Q (mm); not a number before it was said. */
  double peck() {
    return peck;
  }

  void peck(double depth) {
    peck = depth;
  }

  /** Dwell by P (s). */
  double seconds() {
    return seconds;
  }

  void seconds(double value) {
    seconds = value;
  }

  /** Shift by I and J along X and Y (mm). */
  void shift(double x, double y) {
    shiftX = x;
    shiftY = y;
    shiftStated = true;
  }

  boolean isShiftStated() {
    return shiftStated;
  }

  double shiftX() {
    return shiftX;
  }

  double shiftY() {
    return shiftY;
  }

  /** Top of a back bore by K (mm); not a number before it was said. */
  double top() {
    return topFromDepth ? depth() + top : top;
  }

  void top(double word, boolean fromDepth) {
    top = word;
    topFromDepth = fromDepth;
  }
}
