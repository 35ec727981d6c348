package flankfit.window;

import flankfit.motion.ModalState;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.Figures;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.util.List;

/** The state of the control during a move, as words and numbers with their units. */
final class StateWords {
  /**
   * One line.
   *
   * @param label what it is
   * @param value words and numbers
   */
  record Row(String label, String value) {}

  private StateWords() {}

  /** Where the tool is told to go by a move, and where it is after a share (1) of it. */
  static List<Row> positions(Tape tape, int move, double share, LengthUnit unit) {
    double[] p = new double[3];
    tape.pointAt(move, share, p);
    return List.of(
        new Row("programmed", point(tape.programmedTo(move), unit)),
        new Row("actual", point(new Point(p[0], p[1], p[2]), unit)));
  }

  private static String point(Point p, LengthUnit unit) {
    return "X"
        + coordinate(p.x(), unit)
        + " Y"
        + coordinate(p.y(), unit)
        + " Z"
        + coordinate(p.z(), unit);
  }

  /** A length of fixed width, so that a changing number moves no neighbour. */
  private static String coordinate(double value, LengthUnit unit) {
    String text = Figures.length(value, unit);
    return " ".repeat(Math.max(0, 8 - text.length())) + text;
  }

  /** The state: four lines with long values, four with short ones, one as wide as both. */
  static List<Row> state(Tape tape, SetupSheet setup, int move, LengthUnit unit) {
    ModalState s = tape.state(move);
    return List.of(
        new Row("motion", motion(tape, move, unit)),
        new Row("compensation", compensation(s, unit)),
        new Row("tool", tool(s, setup, unit)),
        new Row("feed", feed(s, unit)),
        new Row("distance", s.distance().word()),
        new Row("plane", s.plane().name()),
        new Row("work", s.workOffset()),
        new Row("length", s.lengthRegister() == 0 ? "no offset" : "H" + s.lengthRegister()),
        new Row("spindle", spindle(s) + ", coolant " + (s.coolant() ? "on" : "off")));
  }

  private static String motion(Tape tape, int move, LengthUnit unit) {
    MoveKind kind = tape.kind(move);
    if (kind == MoveKind.DWELL) {
      return "dwell, " + Figures.fixed(tape.seconds(move), 2) + " s";
    }
    String length = Figures.lengthWithUnit(tape.length(move), unit);
    String word = kind == MoveKind.ARC && Math.abs(tape.rise(move)) > 0 ? "helix" : kind.word();
    return word + ", " + length + (tape.inserted(move) ? ", put in" : "");
  }

  private static String compensation(ModalState s, LengthUnit unit) {
    if (s.compensation() == Compensation.OFF) {
      return "off";
    }
    return s.compensation().word()
        + ", "
        + Figures.lengthWithUnit(s.compensationOffset(), unit)
        + ", D"
        + s.radiusRegister();
  }

  private static String tool(ModalState s, SetupSheet setup, LengthUnit unit) {
    if (s.tool() == 0) {
      return "none";
    }
    return setup
        .tool(s.tool())
        .map(
            t ->
                "T"
                    + t.number()
                    + " "
                    + t.kind().word()
                    + ", "
                    + Figures.plain(unit.fromMillimetres(t.diameter()), 4)
                    + " "
                    + unit.symbol())
        .orElse("T" + s.tool() + ", not in the sheet");
  }

  private static String feed(ModalState s, LengthUnit unit) {
    if (s.feed() == 0) {
      return "none given";
    }
    return Figures.plain(unit.fromMillimetres(s.feed()), 2) + " " + unit.symbol() + "/min";
  }

  private static String spindle(ModalState s) {
    if (s.spindle() == Spindle.OFF) {
      return "off";
    }
    return s.spindle().word() + " " + Figures.plain(s.rpm(), 0) + " rev/min";
  }
}
