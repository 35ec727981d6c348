package flankfit.control;

import java.util.List;

/** The parts of a {@link ControlState} that are told apart when a block changes them. */
public enum ControlSetting {
  MOTION,
  CYCLE,
  RETURN_LEVEL,
  DISTANCE,
  CENTRE,
  PLANE,
  UNIT,
  FEED_MODE,
  FEED,
  SPINDLE,
  SPEED,
  COOLANT,
  SELECTED_TOOL,
  TOOL,
  LENGTH,
  COMPENSATION,
  RADIUS_REGISTER,
  WORK_OFFSET,
  LOCAL_SHIFT,
  SHIFT,
  MIRROR,
  SCALE,
  ROTATION,
  MODAL_CALL,
  REGISTERS;

  /** Its value in a state: equal values mean that nothing changed. */
  public Object of(ControlState s) {
    return switch (this) {
      case MOTION -> s.motion();
      case CYCLE -> s.cycle();
      case RETURN_LEVEL -> s.returnsToClearance();
      case DISTANCE -> s.distance();
      case CENTRE -> s.centre();
      case PLANE -> s.plane();
      case UNIT -> s.unit();
      case FEED_MODE -> s.feedMode();
      case FEED -> s.feed();
      case SPINDLE -> s.spindle();
      case SPEED -> s.speed();
      case COOLANT -> List.of(s.mist(), s.flood());
      case SELECTED_TOOL -> s.selectedTool();
      case TOOL -> s.tool();
      case LENGTH -> List.of(s.lengthMode(), s.lengthRegister());
      case COMPENSATION -> List.of(s.side(), s.radius());
      case RADIUS_REGISTER -> s.radiusRegister();
      case WORK_OFFSET -> List.of(s.workOffset(), s.workZero());
      case LOCAL_SHIFT -> s.localShift();
      case SHIFT -> s.shift();
      case MIRROR -> s.mirror();
      case SCALE -> s.scale();
      case ROTATION -> s.rotation();
      case MODAL_CALL -> s.modalCall();
      case REGISTERS -> s.registers();
    };
  }
}
