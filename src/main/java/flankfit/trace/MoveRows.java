package flankfit.trace;

import flankfit.motion.ModalState;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import flankfit.unit.Angles;
import flankfit.unit.Lengths;
import flankfit.unit.Tolerance;
import java.util.ArrayList;
import java.util.List;

/** The moves of a block: from where to where, arcs with their data, and what compensation did. */
final class MoveRows {
  private static final String[] AXES = {"X", "Y", "Z"};

  private final Numbers numbers;

  MoveRows(Numbers numbers) {
    this.numbers = numbers;
  }

  List<TraceRow> of(Tape moves) {
    List<TraceRow> rows = new ArrayList<>();
    for (int i = 0; i < moves.size(); i++) {
      move(moves, i, rows);
    }
    return rows;
  }

  private static TraceRow row(String label, String text) {
    return new TraceRow(TraceRow.Kind.MOVE, label, text, "");
  }

  private void move(Tape moves, int i, List<TraceRow> rows) {
    MoveKind kind = moves.kind(i);
    String label = moves.inserted(i) ? "corner " + kind.word() : kind.word();
    if (kind == MoveKind.DWELL) {
      rows.add(row(label, Lengths.plain(moves.seconds(i), 3) + " s"));
      return;
    }
    rows.add(row(label, numbers.point(moves.from(i)) + " → " + numbers.point(moves.to(i))));
    if (kind == MoveKind.ARC) {
      rows.add(row("", arc(moves, i)));
    }
    rows.add(row("", conditions(moves, i)));
    boolean displaced = !moves.programmedTo(i).equals(moves.to(i));
    if (displaced) {
      String said = moves.inserted(i) ? "at the programmed corner " : "programmed ";
      rows.add(row("", said + numbers.point(moves.programmedTo(i))));
    }
  }

  private String arc(Tape moves, int i) {
    Plane plane = moves.state(i).plane();
    double degrees = Angles.toDegrees(moves.sweep(i));
    boolean round = Tolerance.MODEL.near(moves.radius(i), moves.endRadius(i));
    return "centre "
        + AXES[plane.u()]
        + numbers.bare(moves.centreU(i))
        + " "
        + AXES[plane.v()]
        + numbers.bare(moves.centreV(i))
        + ", radius "
        + numbers.bare(moves.radius(i))
        + (round ? "" : " to " + numbers.bare(moves.endRadius(i)))
        + ", "
        + Lengths.plain(Math.abs(degrees), 2)
        + "° "
        + (degrees < 0 ? "clockwise" : "anticlockwise")
        + (Tolerance.MODEL.zero(moves.rise(i)) ? "" : ", rise " + numbers.bare(moves.rise(i)));
  }

  private String conditions(Tape moves, int i) {
    ModalState state = moves.state(i);
    String side =
        state.compensation() == Compensation.OFF
            ? ""
            : ", compensated " + state.compensation().word();
    String feed = moves.kind(i) == MoveKind.RAPID ? "" : " at " + numbers.feed(state.feed());
    return "length " + numbers.brief(moves.length(i)) + feed + side;
  }
}
