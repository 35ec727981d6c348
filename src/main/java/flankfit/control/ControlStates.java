package flankfit.control;

import flankfit.motion.ModalState.Compensation;
import flankfit.motion.ModalState.Distance;
import java.util.OptionalInt;

/** Reads the whole state of the control, for an observer. */
final class ControlStates {
  private final Machine machine;
  private final ToolAndLength tool;
  private final Calls calls;

  ControlStates(Machine machine, ToolAndLength tool, Calls calls) {
    this.machine = machine;
    this.tool = tool;
    this.calls = calls;
  }

  /** The state now. */
  ControlState now() {
    Modes modes = machine.modes;
    Frame frame = machine.frame;
    Transforms transforms = frame.transforms();
    boolean sided = modes.side() != Compensation.OFF;
    return new ControlState(
        modes.motion(),
        distance(modes.absolute()),
        distance(modes.absoluteCentre()),
        modes.plane(),
        modes.unit(),
        modes.feedMode() / 10,
        FlowLog.optional(modes.feedWord()),
        modes.spindle(),
        modes.speed(),
        modes.mist(),
        modes.flood(),
        modes.tool(),
        tool.selected(),
        modes.lengthMode() / 10,
        modes.lengthMode() == 490 ? 0 : modes.lengthRegister(),
        modes.side(),
        sided ? modes.radius() : 0,
        modes.radiusRegister(),
        modes.workOffset(),
        frame.workZero(),
        frame.local(),
        frame.shift(),
        transforms.mirrors(),
        transforms.scaling(),
        transforms.rotation(),
        machine.cycle.told(),
        machine.cycle.returnsToClearance(),
        calls.modal().map(call -> OptionalInt.of(call.program())).orElse(OptionalInt.empty()),
        machine.offsets);
  }

  private static Distance distance(boolean absolute) {
    return absolute ? Distance.ABSOLUTE : Distance.INCREMENTAL;
  }
}
