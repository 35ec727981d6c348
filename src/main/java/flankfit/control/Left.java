package flankfit.control;

import flankfit.motion.ModalState.Compensation;
import flankfit.setup.Offsets.Register;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A part of the state that outlives the end of a program where it resets nothing. Where the tool
 * stands is not among them: a sheet says that.
 */
final class Left {
  /** All parts, those that a machinist would look at first standing first. */
  static final List<Left> ALL =
      List.of(
          new Left(
              m -> m.absolute(), (m, v) -> m.absolute(v), m -> m.absolute() ? "G90" : "G91", "G90"),
          new Left(
              (before, fresh) -> before.machine().modes.side() != Compensation.OFF,
              Left::carryCompensation,
              before -> side(before.machine().modes) + " on",
              "G40"),
          new Left(
              (before, fresh) -> !before.machine().frame.isShiftedLike(fresh.machine().frame),
              (before, into) -> into.machine().frame.takeOverShifts(before.machine().frame),
              before -> shift(before.machine()) + " on",
              "G52 X0 Y0 Z0 and G92.1"),
          new Left(
              (before, fresh) -> before.machine().frame.transforms().isOn(),
              (before, into) ->
                  into.machine().frame.transforms().takeOver(before.machine().frame.transforms()),
              before -> transforms(before.machine().frame.transforms()) + " on",
              "G69, G50 and G50.1"),
          new Left(
              (before, fresh) -> !before.machine().cycle.isQuiet(),
              (before, into) -> into.machine().cycle.takeOverRun(before.machine().cycle),
              before -> before.machine().cycle.kind().map(Enum::name).orElse("G80") + " on",
              "G80, and G0 or G1"),
          new Left(
              (before, fresh) -> before.calls().isModal(),
              (before, into) -> into.calls().takeOverModal(before.calls()),
              before -> "G66 on",
              "G67"),
          new Left(
              m -> m.plane(),
              (m, v) -> m.plane(v),
              m -> Wording.planeFunction(m.plane()),
              "the plane"),
          new Left(
              m -> m.unit(),
              (m, v) -> m.unit(v),
              m -> m.unit() == LengthUnit.INCH ? "G20" : "G21",
              "G20 or G21"),
          new Left(
              (before, fresh) ->
                  !before.machine().modes.workOffset().equals(fresh.machine().modes.workOffset()),
              (before, into) -> {
                into.machine().modes.workOffset(before.machine().modes.workOffset());
                into.machine().frame.select(before.machine().modes.workOffset());
              },
              before -> before.machine().modes.workOffset() + " on",
              "the work offset"),
          new Left(
              m -> m.feedMode(),
              (m, v) -> m.feedMode(v),
              m -> GCode.text(m.feedMode()),
              "G94 or G95"),
          new Left(
              m -> m.absoluteCentre(),
              (m, v) -> m.absoluteCentre(v),
              m -> m.absoluteCentre() ? "G90.1" : "G91.1",
              "G90.1 or G91.1"),
          new Left(m -> m.motion(), (m, v) -> m.motion(v), m -> "G" + m.motion(), "G0 or G1"),
          new Left(
              (before, fresh) -> before.machine().cycle.returnsToClearance(),
              (before, into) -> into.machine().cycle.returnsToClearance(true),
              before -> "G99 on",
              "G98 or G99"),
          new Left(
              (before, fresh) -> !before.variables().commonWithValue().isEmpty(),
              (before, into) -> into.variables().takeOverCommon(before.variables()),
              before -> variables(before.variables()),
              "the values of variables"),
          new Left(
              (before, fresh) ->
                  !before.machine().frame.offsetsOtherThan(fresh.machine().frame).isEmpty(),
              (before, into) -> into.machine().frame.takeOverOffsets(before.machine().frame),
              before -> workOffsets(before.machine()) + " as set by G10",
              "G10 in G90"),
          new Left(
              (before, fresh) -> !before.machine().offsets.equals(fresh.machine().offsets),
              (before, into) -> into.machine().offsets = before.machine().offsets,
              before -> registers(before.machine()) + " as set by G10",
              "G10 in G90"),
          new Left(
              (before, fresh) -> before.machine().modes.selectedTool() != 0,
              (before, into) -> {
                Modes left = before.machine().modes;
                into.machine().modes.tool(left.tool());
                into.machine().modes.selectedTool(left.selectedTool());
                into.machine().modes.selectedSinceChange(left.selectedSinceChange());
              },
              before -> "tool " + before.machine().modes.tool() + " in the spindle",
              "T and M6"),
          new Left(
              (before, fresh) -> before.machine().modes.lengthWord() >= 0,
              (before, into) -> {
                Modes left = before.machine().modes;
                into.machine().modes.lengthMode(left.lengthMode());
                into.machine().modes.lengthRegister(left.lengthRegister());
                into.machine().modes.lengthWord(left.lengthWord());
              },
              before -> length(before.machine().modes),
              "G49, and H with G43"),
          new Left(
              (before, fresh) -> before.machine().modes.radiusRegisterStated(),
              (before, into) -> {
                into.machine().modes.radiusRegister(before.machine().modes.radiusRegister());
                into.machine().modes.radiusRegisterStated(true);
              },
              before -> "D" + before.machine().modes.radiusRegister() + " as the last D",
              "D with G41 or G42"),
          new Left(
              (before, fresh) -> !Double.isNaN(before.machine().modes.feedWord()),
              (before, into) -> into.machine().modes.feedWord(before.machine().modes.feedWord()),
              before -> "its last F in force",
              "F"),
          new Left(m -> m.speed(), (m, v) -> m.speed(v), m -> "S" + Wording.number(m.speed()), "S"),
          new Left(m -> m.spindle(), (m, v) -> m.spindle(v), m -> "the spindle", "M3 or M5"),
          new Left(
              m -> List.of(m.mist(), m.flood()),
              (m, v) -> {
                m.mist(v.get(0));
                m.flood(v.get(1));
              },
              m -> "coolant",
              "M8 or M9"));

  /** So many variables are named. */
  private static final int NAMED = 3;

  private final BiPredicate<FinishedRun, FinishedRun> differs;
  private final BiConsumer<FinishedRun, FinishedRun> carry;
  private final Function<FinishedRun, String> told;
  private final String mended;

  private Left(
      BiPredicate<FinishedRun, FinishedRun> differs,
      BiConsumer<FinishedRun, FinishedRun> carry,
      Function<FinishedRun, String> told,
      String mended) {
    this.differs = differs;
    this.carry = carry;
    this.told = told;
    this.mended = mended;
  }

  /** A mode that is on or in force. */
  private <T> Left(
      Function<Modes, T> get,
      BiConsumer<Modes, T> set,
      Function<Modes, String> name,
      String mended) {
    this(
        (before, fresh) ->
            !get.apply(before.machine().modes).equals(get.apply(fresh.machine().modes)),
        (before, into) -> set.accept(into.machine().modes, get.apply(before.machine().modes)),
        before -> name.apply(before.machine().modes) + " on",
        mended);
  }

  /** Whether a run left something else than power-up gives. */
  boolean differs(FinishedRun before, FinishedRun fresh) {
    return differs.test(before, fresh);
  }

  /** Gives another run what one left; the length difference is to be found anew after. */
  void carry(FinishedRun before, FinishedRun into) {
    carry.accept(before, into);
  }

  /** What is left, as it follows "the first run leaves". */
  String told(FinishedRun before) {
    return told.apply(before);
  }

  /** What makes it not matter, as it follows "state". */
  String mended() {
    return mended;
  }

  private static void carryCompensation(FinishedRun before, FinishedRun into) {
    Modes left = before.machine().modes;
    Machine machine = into.machine();
    machine.modes.side(left.side());
    machine.modes.sideOnPart(left.sideOnPart());
    machine.modes.radius(left.radius());
    double sigma = left.sideOnPart() == Compensation.LEFT ? left.radius() : -left.radius();
    machine.compensation.start(sigma, left.plane(), machine.report.place());
  }

  private static String side(Modes left) {
    return (left.side() == Compensation.LEFT ? "G41" : "G42") + " D" + left.radiusRegister();
  }

  private static String shift(Machine left) {
    Frame frame = left.frame;
    return (frame.isLocal() ? "G52" : "G92")
        + " shift X"
        + left.coordinate(frame.shifted(0))
        + " Y"
        + left.coordinate(frame.shifted(1))
        + " Z"
        + left.coordinate(frame.shifted(2));
  }

  private static String transforms(Transforms on) {
    return Stream.of(
            on.isRotated() ? "G68" : "", on.isScaled() ? "G51" : "", on.isMirrored() ? "G51.1" : "")
        .filter(Predicate.not(String::isEmpty))
        .collect(Collectors.joining(", "));
  }

  private static String variables(Variables left) {
    List<Integer> set = left.commonWithValue();
    String more = set.size() > NAMED ? " and " + (set.size() - NAMED) + " more" : "";
    return set.stream()
            .limit(NAMED)
            .map(n -> "#" + n + " = " + Wording.number(left.get(n)))
            .collect(Collectors.joining(", "))
        + more;
  }

  private static String workOffsets(Machine left) {
    return String.join(", ", left.frame.offsetsOtherThan(new Frame(left.setup)));
  }

  private static String registers(Machine left) {
    return Stream.concat(
            changed("H", left.setup.offsets().lengths(), left.offsets.lengths()),
            changed("D", left.setup.offsets().radii(), left.offsets.radii()))
        .collect(Collectors.joining(", "));
  }

  private static Stream<String> changed(
      String letter, Map<Integer, Register> sheet, Map<Integer, Register> left) {
    return left.entrySet().stream()
        .filter(entry -> !entry.getValue().equals(sheet.get(entry.getKey())))
        .map(entry -> letter + entry.getKey());
  }

  private static String length(Modes left) {
    return left.lengthMode() == 490
        ? "H" + left.lengthWord() + " as the last H"
        : GCode.text(left.lengthMode()) + " H" + left.lengthWord() + " on";
  }
}
