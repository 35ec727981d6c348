package flankfit.trace;

import flankfit.control.ControlSetting;
import flankfit.control.ControlState;
import flankfit.control.ControlState.Cycle;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.setup.Offsets.Register;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringJoiner;

/** The settings of the control in words and functions. */
final class SettingWords {
  private static final String[] AXES = {"X", "Y", "Z"};

  private final Numbers numbers;

  SettingWords(Numbers numbers) {
    this.numbers = numbers;
  }

  /** What a setting is called. */
  static String label(ControlSetting setting) {
    return switch (setting) {
      case MOTION -> "motion";
      case CYCLE -> "cycle";
      case RETURN_LEVEL -> "return level";
      case DISTANCE -> "distance mode";
      case CENTRE -> "arc centres";
      case PLANE -> "plane";
      case UNIT -> "unit";
      case FEED_MODE -> "feed mode";
      case FEED -> "feed";
      case SPINDLE -> "spindle";
      case SPEED -> "spindle speed";
      case COOLANT -> "coolant";
      case SELECTED_TOOL -> "next tool";
      case TOOL -> "tool";
      case LENGTH -> "tool length";
      case COMPENSATION -> "compensation";
      case RADIUS_REGISTER -> "D register";
      case WORK_OFFSET -> "work offset";
      case LOCAL_SHIFT -> "local shift";
      case SHIFT -> "shift by G92";
      case MIRROR -> "mirror";
      case SCALE -> "scaling";
      case ROTATION -> "rotation";
      case MODAL_CALL -> "modal call";
      case REGISTERS -> "registers";
    };
  }

  /** The value of a setting in a state. */
  String value(ControlSetting setting, ControlState s) {
    return switch (setting) {
      case MOTION -> FunctionWords.withCode(s.motion());
      case CYCLE -> s.cycle().map(this::cycle).orElse("off");
      case RETURN_LEVEL -> s.returnsToClearance() ? "G99 R level" : "G98 initial level";
      case DISTANCE -> FunctionWords.withCode(s.distance() == Distance.ABSOLUTE ? 90 : 91);
      case CENTRE -> s.centre() == Distance.ABSOLUTE ? "G90.1 absolute" : "G91.1 incremental";
      case PLANE -> plane(s.plane());
      case UNIT -> s.unit() == LengthUnit.INCH ? "G20 inch" : "G21 millimetre";
      case FEED_MODE -> FunctionWords.withCode(s.feedMode());
      case FEED -> feed(s);
      case SPINDLE -> spindle(s.spindle());
      case SPEED -> Numbers.speed(s.speed());
      case COOLANT -> coolant(s);
      case SELECTED_TOOL -> tool(s.selectedTool());
      case TOOL -> tool(s.tool());
      case LENGTH -> length(s);
      case COMPENSATION -> compensation(s);
      case RADIUS_REGISTER -> s.radiusRegister() == 0 ? "none" : "D" + s.radiusRegister();
      case WORK_OFFSET -> s.workOffset() + " at " + numbers.point(s.workZero());
      case LOCAL_SHIFT -> shift(s.localShift());
      case SHIFT -> shift(s.shift());
      case MIRROR -> mirror(s.mirror());
      case SCALE -> s.scale().map(this::scale).orElse("off");
      case ROTATION -> s.rotation().map(this::rotation).orElse("off");
      case MODAL_CALL ->
          s.modalCall().isPresent() ? "G66 calls O" + s.modalCall().getAsInt() : "off";
      case REGISTERS -> s.registers().lengths().size() + s.registers().radii().size() + " entries";
    };
  }

  /** What a register holds. */
  String register(Optional<Register> register) {
    return register
        .map(r -> numbers.brief(r.geometry()) + ", wear " + numbers.brief(r.wear()))
        .orElse("no value");
  }

  private static String plane(Plane plane) {
    return switch (plane) {
      case XY -> "G17 XY";
      case ZX -> "G18 ZX";
      case YZ -> "G19 YZ";
    };
  }

  private String feed(ControlState s) {
    if (s.feed().isEmpty()) {
      return "none";
    }
    double feed = s.feed().getAsDouble();
    return switch (s.feedMode()) {
      case 93 -> Numbers.plain(feed) + "/min";
      case 95 -> numbers.brief(feed) + " a revolution";
      default -> numbers.feed(feed);
    };
  }

  private static String spindle(Spindle spindle) {
    return switch (spindle) {
      case OFF -> "M5 off";
      case CLOCKWISE -> "M3 clockwise";
      case COUNTER_CLOCKWISE -> "M4 counter-clockwise";
    };
  }

  private static String coolant(ControlState s) {
    if (s.mist()) {
      return s.flood() ? "M7 mist, M8 flood" : "M7 mist";
    }
    return s.flood() ? "M8 flood" : "M9 off";
  }

  private static String tool(int number) {
    return number == 0 ? "none" : "T" + number;
  }

  private static String length(ControlState s) {
    return s.lengthMode() == 49 ? "G49 off" : "G" + s.lengthMode() + " H" + s.lengthRegister();
  }

  private String compensation(ControlState s) {
    if (s.side() == Compensation.OFF) {
      return "G40 off";
    }
    String side = s.side() == Compensation.LEFT ? "G41 left" : "G42 right";
    return side + " by " + numbers.brief(s.radius());
  }

  private String shift(Point by) {
    return by.equals(Point.ZERO) ? "none" : numbers.point(by);
  }

  private String mirror(List<OptionalDouble> mirror) {
    StringJoiner axes = new StringJoiner(" ");
    axes.setEmptyValue("off");
    for (int axis = 0; axis < AXES.length; axis++) {
      if (mirror.get(axis).isPresent()) {
        axes.add(AXES[axis] + " at " + numbers.bare(mirror.get(axis).getAsDouble()));
      }
    }
    return axes.toString();
  }

  private String scale(ControlState.Scale s) {
    boolean alike = s.x() == s.y() && s.y() == s.z();
    String factors =
        alike
            ? Numbers.plain(s.x())
            : "X "
                + Numbers.plain(s.x())
                + " Y "
                + Numbers.plain(s.y())
                + " Z "
                + Numbers.plain(s.z());
    return factors + " about " + numbers.point(s.centre());
  }

  private String rotation(ControlState.Rotation r) {
    return Numbers.plain(r.degrees())
        + "° about "
        + AXES[r.plane().u()]
        + numbers.bare(r.centreU())
        + " "
        + AXES[r.plane().v()]
        + numbers.bare(r.centreV());
  }

  private String cycle(Cycle c) {
    StringJoiner data = new StringJoiner(", ");
    data.add(c.function());
    data.add("initial level " + numbers.bare(c.initial()));
    c.clearance().ifPresent(level -> data.add("R " + numbers.bare(level)));
    c.depth().ifPresent(level -> data.add("depth " + numbers.bare(level)));
    c.peck().ifPresent(peck -> data.add("Q " + numbers.bare(peck)));
    if (c.seconds() > 0) {
      data.add("dwell " + Numbers.plain(c.seconds()) + " s");
    }
    if (c.shiftX() != 0 || c.shiftY() != 0) {
      data.add("shift X" + numbers.bare(c.shiftX()) + " Y" + numbers.bare(c.shiftY()));
    }
    return data.toString();
  }
}
