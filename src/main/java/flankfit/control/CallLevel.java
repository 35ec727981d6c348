package flankfit.control;

import flankfit.motion.ModalState.Compensation;
import flankfit.motion.Plane;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** A program in execution: where it returns to, and what was in force when it was called. */
final class CallLevel {
  private final ProgramFile file;
  private final ProgramIndex.Program program;
  private final Call call;
  private final Spot back;
  private final int callOffset;
  private final int locals;
  private final int mainLine;
  private final boolean absolute;
  private final Plane plane;
  private final LengthUnit unit;
  private final Compensation side;
  private int left;
  private boolean thenReturns;
  private int thenTarget = -1;

  /**
   * @param back where the caller goes on
   * @param callOffset offset of the calling block
   * @param locals level of the local variables
   * @param mainLine line of the main file that led to another file; -1 in the main file
   */
  CallLevel(
      Library.Found found,
      Call call,
      Spot back,
      int callOffset,
      int locals,
      int mainLine,
      Modes modes) {
    file = found.file();
    program = found.program();
    this.call = call;
    this.back = back;
    this.callOffset = callOffset;
    this.locals = locals;
    this.mainLine = mainLine;
    left = call.times() - 1;
    absolute = modes.absolute();
    plane = modes.plane();
    unit = modes.unit();
    side = modes.side();
  }

  ProgramFile file() {
    return file;
  }

  ProgramIndex.Program program() {
    return program;
  }

  Call call() {
    return call;
  }

  Spot back() {
    return back;
  }

  int callOffset() {
    return callOffset;
  }

  int locals() {
    return locals;
  }

  int mainLine() {
    return mainLine;
  }

  /** What an observer is told when it begins. */
  FlowStep step() {
    List<FlowStep.Variable> arguments = new ArrayList<>();
    if (call.arguments().isPresent()) {
      double[] values = call.arguments().get();
      for (int number = 1; number < values.length; number++) {
        if (!Double.isNaN(values[number])) {
          arguments.add(new FlowStep.Variable(number, FlowLog.optional(values[number])));
        }
      }
    }
    return new FlowStep.Called(
        program.number(),
        call.times() - left,
        call.times(),
        call.modal(),
        arguments,
        file.source().file(),
        program.begin().line());
  }

  /** What an observer is told when it is left, with the caller's file standing where it goes on. */
  FlowStep returned(int sequence, ProgramFile caller) {
    return new FlowStep.Returned(
        program.number(),
        sequence < 0 ? OptionalInt.empty() : OptionalInt.of(sequence),
        caller.source().file(),
        caller.spot().line());
  }

  /** Begins the next of several executions; false when there is none left. */
  boolean again() {
    return left-- > 0;
  }

  /** When it is done, its caller returns too. */
  void thenReturns(int target) {
    thenReturns = true;
    thenTarget = target;
  }

  boolean callerReturns() {
    return thenReturns;
  }

  int callerTarget() {
    return thenTarget;
  }

  /** The functions that are in force now and were not when it was called. */
  List<String> changed(Modes modes) {
    List<String> changed = new ArrayList<>();
    if (modes.absolute() != absolute) {
      changed.add(modes.absolute() ? "G90" : "G91");
    }
    if (modes.plane() != plane) {
      changed.add(Wording.planeFunction(modes.plane()));
    }
    if (modes.unit() != unit) {
      changed.add(modes.unit() == LengthUnit.INCH ? "G20" : "G21");
    }
    if (modes.side() != side) {
      changed.add(
          switch (modes.side()) {
            case OFF -> "G40";
            case LEFT -> "G41";
            case RIGHT -> "G42";
          });
    }
    return changed;
  }
}
