package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.finding.Finding;
import flankfit.lesson.Step;
import flankfit.lesson.Steps;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.DiagramFile;
import flankfit.picture.StepPicture;
import flankfit.unit.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A lesson as one HTML file: no script, nothing from elsewhere, drawings within. It prints in grey
 * on A4 and on letter: modes are told by words and by the kind of line, not by hue alone.
 */
final class LessonHandout {
  private static final int WIDE = 420;
  private static final int TALL = 300;

  /** Lines that all drawings together may have: a browser has to hold them. */
  private static final long MOST_LINES = 200_000;

  private static final String STYLE =
      """
      @page { margin: 15mm 14mm; }
      body { font: 11pt/1.35 "DejaVu Sans Condensed", "DejaVu Sans", Verdana, "Segoe UI",
        Helvetica, Arial, sans-serif; color: #23272b; background: #fff; max-width: 182mm;
        margin: 0 auto; padding: 4mm; font-variant-numeric: tabular-nums; }
      h1 { font-size: 16pt; margin: 0 0 2mm; }
      section { break-inside: avoid; page-break-inside: avoid; border-top: 0.3mm solid #999;
        padding: 2.5mm 0 3mm; overflow: hidden; }
      h2 { font-size: 11pt; margin: 0 0 1mm; }
      code { font-family: "DejaVu Sans Mono", Consolas, Menlo, monospace; font-size: 10pt; }
      p { margin: 0 0 1.5mm; }
      dl { display: grid; grid-template-columns: 27mm 1fr; margin: 0; }
      dt { color: #5c6064; }
      dd { margin: 0; overflow-wrap: anywhere; }
      dd.own { font-weight: bold; }
      section.absolute { border-left: 1mm solid #0072b2; padding-left: 3mm; }
      section.incremental { border-left: 1.4mm double #b36b00; padding-left: 3mm; }
      svg { float: right; width: 78mm; height: auto; margin: 0 0 0 4mm; }
      .wrong { border: 0.5mm solid #a63a00; padding: 2mm; }
      .soft { color: #5c6064; font-size: 9pt; }
      @media print { body { padding: 0; max-width: none; } }
      """;

  private final Steps steps;
  private final Interpretation done;
  private final StringBuilder out = new StringBuilder();

  private LessonHandout(Steps steps, Interpretation done) {
    this.steps = steps;
    this.done = done;
  }

  /** The file. */
  static byte[] of(Steps steps, Interpretation done, String title) {
    LessonHandout handout = new LessonHandout(steps, done);
    handout.head(title);
    boolean drawn = handout.mayDraw();
    for (Step step : steps.all()) {
      handout.step(step, drawn);
    }
    handout.foot(drawn);
    return handout.out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private boolean mayDraw() {
    long moving = steps.all().stream().filter(Step::moves).count();
    return moving * done.tape().size() <= MOST_LINES;
  }

  private void head(String title) {
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n<title>");
    text(title).append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n");
    out.append("<h1>");
    text(title).append("</h1>\n<p>The same motion in absolute and in incremental words. ");
    out.append("Coordinates are those of the program, in ");
    out.append(done.unit() == LengthUnit.INCH ? "inches" : "millimetres");
    out.append("; right is +X, back is +Y, up is +Z. The bar at the left of a step is single ");
    out.append("where its words were read as absolute, double where as incremental.</p>\n");
    List<Finding> errors = LessonText.errors(done);
    if (!errors.isEmpty()) {
      out.append("<div class=\"wrong\">\n<p><strong>Mend first</strong></p>\n");
      for (Finding finding : errors) {
        out.append("<p>line ").append(finding.place().line()).append(": ");
        text(finding.code().name() + " " + finding.what());
        text(finding.fix().isEmpty() ? "" : "; " + finding.fix()).append("</p>\n");
      }
      out.append("</div>\n");
    }
  }

  private void step(Step step, boolean drawn) {
    String kind = step.moves() ? " class=\"" + step.mode().word() + "\"" : "";
    out.append("<section").append(kind).append(">\n");
    if (step.moves() && drawn && step.block() > 0) {
      picture(done.tape(), step);
    }
    out.append("<h2>line ").append(step.place().line()).append(" <code>");
    text(step.text()).append("</code></h2>\n<p>");
    text(step.plain()).append("</p>\n<dl>\n");
    if (step.moves()) {
      row("end point", point(step.end(), step.unit()), false);
      row("move", point(step.move(), step.unit()), false);
      step.compensatedEnd()
          .ifPresent(
              end -> row("compensated", "the tool ends at " + point(end, step.unit()), false));
    }
    if (!step.absolute().equals(step.incremental()) || step.unsayable().isPresent()) {
      String no = step.unsayable().map(why -> "cannot be said: " + why).orElse("");
      boolean absolute = step.mode() == Distance.ABSOLUTE;
      row("absolute", step.absolute().orElse(no), absolute);
      row("incremental", step.incremental().orElse(no), !absolute);
    }
    if (!step.unfolds().isEmpty()) {
      row("moves", String.join("; ", step.unfolds()), false);
    }
    step.notes().forEach(note -> row("note", note, false));
    step.again()
        .ifPresent(
            again ->
                row(
                    "again",
                    Figures.count(again.times(), "time")
                        + ", at last to "
                        + point(again.lastEnd(), step.unit()),
                    false));
    out.append("</dl>\n</section>\n");
  }

  private void picture(Tape tape, Step step) {
    String title = "line " + step.place().line() + ": " + step.plain();
    String svg =
        new String(
            DiagramFile.svg(StepPicture.of(tape, step, title, WIDE, TALL)), StandardCharsets.UTF_8);
    out.append(svg);
  }

  private void row(String name, String words, boolean own) {
    out.append("<dt>").append(name).append("</dt><dd").append(own ? " class=\"own\">" : ">");
    text(words).append("</dd>\n");
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
      out.append("<p>").append(steps.left()).append(" steps more are not told.</p>\n");
    }
    if (!drawn) {
      out.append("<p>The path is too long to draw it at every step; name fewer lines.</p>\n");
    }
    if (!done.complete()) {
      out.append("<p>The run was stopped: the steps are all before it.</p>\n");
    }
    out.append("<section class=\"soft\">\n<p>Assumed: ");
    text(String.join("; ", done.assumptions())).append("</p>\n");
    StringBuilder cautions = new StringBuilder();
    Cautions.write(cautions);
    out.append("<p>");
    text(cautions.toString().strip().replace('\n', ' ')).append("</p>\n");
    out.append("</section>\n</body>\n</html>\n");
  }

  private StringBuilder text(String words) {
    return out.append(HtmlText.escaped(words));
  }
}
