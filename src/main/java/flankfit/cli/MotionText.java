package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.finding.Severity;
import flankfit.motion.Extents;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;

/** The moves as a table for people, in the program's unit. */
final class MotionText {
  private final Tape tape;
  private final LengthUnit unit;

  private MotionText(Interpretation done) {
    this.tape = done.tape();
    this.unit = done.unit();
  }

  /** Writes table, sums, findings, assumptions and cautions. */
  static void write(ProgramOptions.Job job, Style style, Optional<Path> image, PrintWriter out) {
    Interpretation done = job.interpretation();
    MotionText text = new MotionText(done);
    StringBuilder line = new StringBuilder();
    text.heading(done, line);
    out.print(line);
    for (int i = 0; i < text.tape.size(); i++) {
      line.setLength(0);
      text.row(i, line);
      out.print(line);
    }
    line.setLength(0);
    text.sums(done, line);
    image.ifPresent(file -> line.append("picture      ").append(file).append('\n'));
    new FindingText(style)
        .full(
            done.findings().stream().filter(f -> f.severity() != Severity.NOTE).toList(),
            job::lines,
            section(line, "findings"));
    new FindingText(style)
        .brief(
            done.file(),
            done.findings().stream().filter(f -> f.severity() == Severity.NOTE).toList(),
            line);
    assumptions(done, line);
    Cautions.write(line);
    out.print(line);
    out.flush();
  }

  private static StringBuilder section(StringBuilder out, String name) {
    return out.append('\n').append(name).append('\n');
  }

  /** Appends what was assumed, if anything. */
  static void assumptions(Interpretation done, StringBuilder out) {
    if (!done.assumptions().isEmpty()) {
      section(out, "assumed");
      for (String assumption : done.assumptions()) {
        out.append("  ");
        FindingText.wrap(assumption, "  ", out);
      }
    }
  }

  private void heading(Interpretation done, StringBuilder out) {
    out.append(done.file())
        .append(": ")
        .append(Figures.count(tape.size(), "move"))
        .append(" from ")
        .append(Figures.count(done.blocks(), "block"))
        .append(unit == LengthUnit.INCH ? ", in inches" : ", in millimetres")
        .append(" as programmed; the tool tip in the part frame\n\n");
    out.append(
        " line  kind           X         Y         Z    radius    sweep      rise    feed  "
            + "mode  side   tool\n");
  }

  private void row(int i, StringBuilder out) {
    ModalState state = tape.state(i);
    MoveKind kind = tape.kind(i);
    out.append(Figures.right(Integer.toString(tape.line(i)), 5)).append("  ");
    out.append(Figures.left(tape.inserted(i) ? "corner" : kind.word(), 6));
    column(Figures.length(tape.toX(i), unit), out);
    column(Figures.length(tape.toY(i), unit), out);
    column(Figures.length(tape.toZ(i), unit), out);
    if (kind == MoveKind.ARC) {
      column(Figures.length(tape.radius(i), unit), out);
      out.append(Figures.right(Figures.signed(Angles.toDegrees(tape.sweep(i)), 2), 9));
      column(Figures.length(tape.rise(i), unit), out);
    } else {
      out.append(" ".repeat(29));
    }
    boolean fed = kind == MoveKind.LINE || kind == MoveKind.ARC;
    String feed =
        fed
            ? Figures.plain(unit.fromMillimetres(state.feed()), unit == LengthUnit.INCH ? 2 : 1)
            : "";
    out.append(Figures.right(feed, 8)).append("  ");
    out.append(state.distance() == ModalState.Distance.ABSOLUTE ? "abs" : "inc").append("   ");
    out.append(Figures.left(state.compensation().word(), 7));
    out.append('T').append(state.tool()).append('\n');
  }

  private static void column(String text, StringBuilder out) {
    out.append(Figures.right(text, 10));
  }

  private void sums(Interpretation done, StringBuilder out) {
    Extents extents = tape.extents();
    Totals totals = Totals.of(tape);
    out.append('\n');
    out.append("reaches      ").append(range(extents.min(), extents.max(), 0, "X"));
    out.append("   ").append(range(extents.min(), extents.max(), 1, "Y"));
    out.append("   ").append(range(extents.min(), extents.max(), 2, "Z")).append('\n');
    out.append("length       feed ").append(Figures.lengthWithUnit(totals.feedLength(), unit));
    out.append(", rapid ").append(Figures.lengthWithUnit(totals.rapidLength(), unit)).append('\n');
    out.append("time         ").append(Figures.fixed(totals.seconds(), 1));
    out.append(" s, without acceleration and tool changes\n");
    done.stoppedAt()
        .ifPresent(
            stop ->
                out.append("incomplete   stopped at line ")
                    .append(stop.line())
                    .append(" by ")
                    .append(stop.code().name())
                    .append(": the moves above are all before it\n"));
  }

  private String range(Point min, Point max, int axis, String name) {
    return name
        + " "
        + Figures.length(min.axis(axis), unit)
        + " to "
        + Figures.length(max.axis(axis), unit);
  }
}
