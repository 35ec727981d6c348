package flankfit.cli;

import flankfit.control.BlockTrace.Outcome;
import flankfit.control.Interpretation;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.lesson.Step;
import flankfit.lesson.Steps;
import flankfit.motion.Point;
import flankfit.unit.LengthUnit;
import java.io.PrintWriter;
import java.util.List;

/** A lesson for people, step by step, in the program's unit. */
final class LessonText {
  private static final int LABEL = 13;
  private static final String INDENT = " ".repeat(2 + LABEL);

  private final String program;
  private final Style style;
  private final StringBuilder text = new StringBuilder();

  private LessonText(String program, Style style) {
    this.program = program;
    this.style = style;
  }

  /** Writes errors first, then the steps, then what was assumed. */
  static void write(Steps steps, Interpretation done, Style style, PrintWriter out) {
    LessonText text = new LessonText(done.file(), style);
    text.heading(done);
    for (Step step : steps.all()) {
      text.step(step);
      out.print(text.text);
      text.text.setLength(0);
    }
    text.ending(steps, done);
    out.print(text.text);
    out.flush();
  }

  private void heading(Interpretation done) {
    text.append(program)
        .append(": the same motion in both modes, in order of execution;\n")
        .append("coordinates are those of the program; right is +X, back is +Y, up is +Z\n");
    List<Finding> errors = errors(done);
    if (!errors.isEmpty()) {
      text.append("\nmend first\n");
      new FindingText(style).brief(program, errors, text);
    }
  }

  /** The errors among the findings. */
  static List<Finding> errors(Interpretation done) {
    return done.findings().stream().filter(f -> f.severity() == Severity.ERROR).toList();
  }

  private void step(Step step) {
    text.append('\n');
    if (!step.place().file().equals(program)) {
      text.append(step.place().file()).append(' ');
    }
    text.append("line ").append(step.place().line());
    if (step.level() > 0) {
      text.append(", ").append(Figures.count(step.level(), "call")).append(" deep");
    }
    if (step.outcome() == Outcome.STOPPED) {
      text.append(", ").append(style.severity(Severity.ERROR, "stops here"));
    }
    text.append(":  ").append(style.strong(step.text())).append('\n');
    row("in words", step.plain());
    if (step.moves()) {
      numbers(step);
    }
    said(step);
    for (int i = 0; i < step.unfolds().size(); i++) {
      row(i == 0 ? "moves" : "", step.unfolds().get(i));
    }
    step.notes().forEach(note -> row("note", note));
    step.again().ifPresent(again -> again(step, again));
  }

  private void numbers(Step step) {
    row("mode", step.mode().word() + ", zero of " + step.zero());
    row("end point", point(step.end(), step.unit()));
    row("move", point(step.move(), step.unit()));
    step.compensatedEnd()
        .ifPresent(end -> row("compensated", "the tool ends at " + point(end, step.unit())));
  }

  private void said(Step step) {
    boolean alike = step.absolute().equals(step.incremental());
    if (alike && step.unsayable().isEmpty()) {
      return;
    }
    String no = step.unsayable().map(why -> "cannot be said: " + why).orElse("");
    row("absolute", step.absolute().orElse(no));
    row("incremental", step.incremental().orElse(no));
  }

  private void again(Step step, Step.Again again) {
    row(
        "again",
        Figures.count(again.times(), "time")
            + (again.alike() ? ", each the same way" : ", not the same way each time")
            + "; the last one ends at "
            + point(again.lastEnd(), step.unit()));
  }

  private static String point(Point p, LengthUnit unit) {
    return "X"
        + Figures.length(p.x(), unit)
        + " Y"
        + Figures.length(p.y(), unit)
        + " Z"
        + Figures.length(p.z(), unit);
  }

  private void row(String label, String words) {
    text.append("  ").append(Figures.left(label, LABEL));
    FindingText.wrap(words, INDENT, text);
  }

  private void ending(Steps steps, Interpretation done) {
    text.append('\n').append(Figures.count(steps.all().size(), "step")).append(" told");
    if (steps.left() > 0) {
      text.append(", ").append(steps.left()).append(" more are not; choose lines by --from, --to");
    }
    text.append('\n');
    done.stoppedAt()
        .ifPresent(
            stop ->
                text.append("incomplete   stopped at line ")
                    .append(stop.line())
                    .append(" by ")
                    .append(stop.code().name())
                    .append(": the steps are all before it\n"));
    MotionText.assumptions(done, text);
    Cautions.write(text);
  }
}
