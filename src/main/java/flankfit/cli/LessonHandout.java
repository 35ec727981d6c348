package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.finding.Finding;
import flankfit.lesson.Step;
import flankfit.lesson.Steps;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.Point;
import flankfit.paper.LessonStep;
import flankfit.paper.Pen;
import flankfit.paper.Words;
import flankfit.picture.StepPicture;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A lesson to print: each step with its drawing. Modes are told by words and by the kind of line,
 * not by hue alone, so it prints in grey.
 */
final class LessonHandout {
  private static final int WIDE = 350;
  private static final int TALL = 240;

  /** Lines that all drawings together may have: a reader has to hold them. */
  private static final long MOST_LINES = 200_000;

  private final Steps steps;
  private final Interpretation done;
  private final Pen pen;

  private LessonHandout(Steps steps, Interpretation done, Pen pen) {
    this.steps = steps;
    this.done = done;
    this.pen = pen;
  }

  /** The file. */
  static byte[] of(Steps steps, Interpretation done, String title, Pen pen) {
    LessonHandout handout = new LessonHandout(steps, done, pen);
    handout.head(title);
    boolean drawn = handout.mayDraw();
    for (Step step : steps.all()) {
      handout.step(step, drawn);
    }
    handout.foot(drawn);
    return pen.finish();
  }

  private boolean mayDraw() {
    long moving = steps.all().stream().filter(Step::moves).count();
    return moving * done.tape().size() <= MOST_LINES;
  }

  private void head(String title) {
    pen.title(title);
    pen.paragraph(
        Words.of(
            "The same motion in absolute and in incremental words. Coordinates are those of the"
                + " program, in "
                + (done.unit() == LengthUnit.INCH ? "inches" : "millimetres")
                + "; right is +X, back is +Y, up is +Z. The bar at the left of a step is single"
                + " where its words were read as absolute, double where as incremental."));
    pen.small(Words.of(String.join(" ", Cautions.LINES)));
    List<Finding> errors = LessonText.errors(done);
    if (!errors.isEmpty()) {
      List<Words> told = new ArrayList<>(List.of(Words.strong("Mend first")));
      for (Finding finding : errors) {
        String fix = finding.fix().isEmpty() ? "" : "; " + finding.fix();
        String at = "line " + finding.place().line() + ": ";
        told.add(Words.of(at + finding.code().name() + " " + finding.what() + fix));
      }
      pen.warning(told);
    }
  }

  private void step(Step step, boolean drawn) {
    var bar =
        !step.moves()
            ? LessonStep.Bar.NONE
            : step.mode() == Distance.ABSOLUTE
                ? LessonStep.Bar.ABSOLUTE
                : LessonStep.Bar.INCREMENTAL;
    String place = "line " + step.place().line();
    pen.step(
        new LessonStep(
            bar,
            Words.of(place + " ").then(step.text(), Words.Look.CODE),
            step.plain(),
            rows(step),
            step.moves() && drawn && step.block() > 0
                ? Optional.of(
                    StepPicture.of(done.tape(), step, place + ": " + step.plain(), WIDE, TALL))
                : Optional.empty()));
  }

  private static List<LessonStep.Row> rows(Step step) {
    List<LessonStep.Row> rows = new ArrayList<>();
    LengthUnit unit = step.unit();
    if (step.moves()) {
      row(rows, "end point", point(step.end(), unit), false);
      row(rows, "move", point(step.move(), unit), false);
      step.compensatedEnd()
          .ifPresent(
              end -> row(rows, "compensated", "the tool ends at " + point(end, unit), false));
    }
    if (!step.absolute().equals(step.incremental()) || step.unsayable().isPresent()) {
      String no = step.unsayable().map(why -> "cannot be said: " + why).orElse("");
      boolean absolute = step.mode() == Distance.ABSOLUTE;
      row(rows, "absolute", step.absolute().orElse(no), absolute);
      row(rows, "incremental", step.incremental().orElse(no), !absolute);
    }
    if (!step.unfolds().isEmpty()) {
      row(rows, "moves", String.join("; ", step.unfolds()), false);
    }
    step.notes().forEach(note -> row(rows, "note", note, false));
    step.again()
        .ifPresent(
            again ->
                row(
                    rows,
                    "again",
                    Figures.count(again.times(), "time")
                        + ", at last to "
                        + point(again.lastEnd(), unit),
                    false));
    return rows;
  }

  private static void row(List<LessonStep.Row> rows, String name, String words, boolean own) {
    rows.add(new LessonStep.Row(name, words, own));
  }

  private static String point(Point p, LengthUnit unit) {
    return "X"
        + Figures.length(p.x(), unit)
        + " Y"
        + Figures.length(p.y(), unit)
        + " Z"
        + Figures.length(p.z(), unit);
  }

  private void foot(boolean drawn) {
    if (steps.left() > 0) {
      pen.paragraph(Words.of(steps.left() + " steps more are not told."));
    }
    if (!drawn) {
      pen.paragraph(Words.of("The path is too long to draw it at every step; name fewer lines."));
    }
    if (!done.complete()) {
      pen.paragraph(Words.of("The run was stopped: the steps are all before it."));
    }
    pen.small(Words.of("Assumed: " + String.join("; ", done.assumptions())));
  }
}
