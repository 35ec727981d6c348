package flankfit.window;

import flankfit.lesson.ArcStep;
import flankfit.lesson.Step;
import flankfit.motion.Point;
import flankfit.picture.Figures;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/** Figures of a step as people read them. */
record LessonWords(LengthUnit unit) {
  private String number(double millimetres) {
    return Figures.plain(unit.fromMillimetres(millimetres), unit == LengthUnit.INCH ? 4 : 3);
  }

  /** A distance with its sign (mm), without unit. */
  String signed(double millimetres) {
    String text = number(millimetres);
    return millimetres > 0 && !text.equals("0") ? "+" + text : text;
  }

  /** A point by its coordinates. */
  String point(Point p) {
    return "X " + number(p.x()) + "  Y " + number(p.y()) + "  Z " + number(p.z());
  }

  /** A way by its distances along the axes. */
  String way(Point way) {
    return "X " + signed(way.x()) + "  Y " + signed(way.y()) + "  Z " + signed(way.z());
  }

  /** What coordinates say of a step. */
  List<String> absolute(Step step) {
    List<String> rows = new ArrayList<>();
    rows.add("ends at  " + point(step.end()) + "  " + unit.symbol());
    step.arc().ifPresent(arc -> rows.add("centre at  " + inPlane(arc, arc.centre(), false)));
    return rows;
  }

  /** What distances say of a step. */
  List<String> incremental(Step step) {
    List<String> rows = new ArrayList<>();
    rows.add("goes  " + way(step.move()) + "  " + unit.symbol());
    step.arc()
        .ifPresent(arc -> rows.add("centre from the start  " + inPlane(arc, arc.toCentre(), true)));
    return rows;
  }

  private String inPlane(ArcStep arc, Point p, boolean distances) {
    StringBuilder text = new StringBuilder();
    for (int axis = 0; axis < 3; axis++) {
      if (axis != arc.plane().n()) {
        text.append(text.length() == 0 ? "" : "  ")
            .append((distances ? "IJK" : "XYZ").charAt(axis))
            .append(' ')
            .append(distances ? signed(p.axis(axis)) : number(p.axis(axis)));
      }
    }
    return text.append("  ").append(unit.symbol()).toString();
  }

  /** What else is to be known of a step. */
  List<String> notes(Step step) {
    List<String> all = new ArrayList<>(step.notes());
    step.compensatedEnd()
        .ifPresent(
            end ->
                all.add(
                    "compensation leads the tool to  "
                        + point(end)
                        + "  "
                        + unit.symbol()
                        + ", "
                        + number(end.distance(step.end()))
                        + " beside what is told"));
    if (step.unfolds().size() > 1) {
      all.add("it makes: " + String.join("; ", step.unfolds()));
    }
    return all;
  }
}
