package flankfit.window;

import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.Figures;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/** What was picked or measured, as rows of words and figures. */
final class SelectionWords {
  private static final String[] AXES = {"X", "Y", "Z"};
  private static final String[] CENTRE_WORDS = {"I", "J", "K"};

  private SelectionWords() {}

  /** The move that was picked. */
  static List<StateWords.Row> picked(WindowInput input, Pick pick, LengthUnit unit) {
    Tape tape = input.tape();
    int move = pick.move();
    List<StateWords.Row> rows = new ArrayList<>();
    int line = tape.line(move);
    List<String> lines = input.programLines();
    String text = line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
    rows.add(new StateWords.Row("line " + line, text));
    rows.add(
        new StateWords.Row("block", LoadWords.number(tape.block(move)) + ", " + kind(tape, move)));
    rows.add(new StateWords.Row("from", point(tape.from(move), unit)));
    rows.add(new StateWords.Row("to", point(tape.to(move), unit)));
    rows.add(
        new StateWords.Row(
            "length", Figures.lengthWithUnit(tape.length(move), unit) + time(tape, move)));
    if (tape.kind(move) == MoveKind.ARC) {
      arc(tape, move, unit, rows);
    }
    return rows;
  }

  private static String time(Tape tape, int move) {
    double seconds = tape.seconds(move);
    return Double.isFinite(seconds) ? ", " + Figures.fixed(seconds, 2) + " s" : ", no feed";
  }

  private static String kind(Tape tape, int move) {
    if (tape.kind(move) != MoveKind.ARC) {
      return tape.kind(move).word() + (tape.inserted(move) ? ", put in" : "");
    }
    String word = Math.abs(tape.rise(move)) > 0 ? "helix" : "arc";
    return word + (tape.sweep(move) > 0 ? " anticlockwise" : " clockwise");
  }

  private static void arc(Tape tape, int move, LengthUnit unit, List<StateWords.Row> rows) {
    ArcVectors vectors = ArcVectors.of(tape, move);
    StringBuilder words = new StringBuilder();
    var plane = tape.state(move).plane();
    for (int axis = 0; axis < 3; axis++) {
      if (axis == plane.u() || axis == plane.v()) {
        words.append(words.length() == 0 ? "" : "  ").append(CENTRE_WORDS[axis]).append(' ');
        words.append(Figures.length(vectors.word(axis), unit));
      }
    }
    rows.add(new StateWords.Row("centre", words + " from the start as programmed"));
    String radius = Figures.lengthWithUnit(tape.radius(move), unit);
    boolean spiral = tape.radius(move) != tape.endRadius(move);
    rows.add(
        new StateWords.Row(
            "radius",
            radius
                + (spiral ? " to " + Figures.lengthWithUnit(tape.endRadius(move), unit) : "")
                + ", "
                + Figures.plain(Math.toDegrees(Math.abs(tape.sweep(move))), 2)
                + "°"));
    if (Math.abs(tape.rise(move)) > 0) {
      double turn = 2 * Math.PI * tape.rise(move) / Math.abs(tape.sweep(move));
      rows.add(
          new StateWords.Row(
              "rise",
              Figures.lengthWithUnit(tape.rise(move), unit)
                  + ", "
                  + Figures.lengthWithUnit(turn, unit)
                  + " a turn"));
    }
  }

  /** The points that were picked to measure, and what lies between them. */
  static List<StateWords.Row> measured(Selection selection, Tape tape, LengthUnit unit) {
    List<StateWords.Row> rows = new ArrayList<>();
    for (Pick pick : selection.points()) {
      rows.add(
          new StateWords.Row(
              rows.isEmpty() ? "from" : "to",
              point(pick.point(), unit)
                  + "  "
                  + pick.kind().words()
                  + ", line "
                  + tape.line(pick.move())));
    }
    if (rows.isEmpty()) {
      rows.add(new StateWords.Row("from", "click an end, a centre or a point on the path"));
    } else if (rows.size() == 1) {
      rows.add(new StateWords.Row("to", "click the second one"));
    }
    selection
        .measure()
        .ifPresent(
            m -> {
              double[] parts = {m.dx(), m.dy(), m.dz()};
              for (int axis = 0; axis < 3; axis++) {
                rows.add(
                    new StateWords.Row(
                        "Δ" + AXES[axis], Figures.lengthWithUnit(parts[axis], unit)));
              }
              rows.add(new StateWords.Row("distance", Figures.lengthWithUnit(m.distance(), unit)));
              rows.add(
                  new StateWords.Row(
                      "in plan",
                      Figures.lengthWithUnit(m.inPlan(), unit)
                          + " at "
                          + Figures.fixed(Math.toDegrees(m.angle()), 3)
                          + "° from +X"));
              rows.add(
                  new StateWords.Row(
                      "rise", Figures.fixed(Math.toDegrees(m.rise()), 3) + "° above the plane XY"));
            });
    return rows;
  }

  private static String point(Point p, LengthUnit unit) {
    return "X "
        + Figures.length(p.x(), unit)
        + "  Y "
        + Figures.length(p.y(), unit)
        + "  Z "
        + Figures.length(p.z(), unit);
  }
}
