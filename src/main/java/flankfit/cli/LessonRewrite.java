package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.lesson.Rewriter;
import flankfit.lesson.Rewriting;
import flankfit.motion.ModalState.Distance;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Writes a program in the other distance mode into a file. */
final class LessonRewrite {
  private final ProgramOptions.Texts texts;
  private final Distance mode;
  private final Path file;

  LessonRewrite(ProgramOptions.Texts texts, Distance mode, Path file) {
    this.texts = texts;
    this.mode = mode;
    this.file = file;
  }

  /**
   * Rewrites, proves, and only then writes the file.
   *
   * @throws RequestException if the program cannot be said in the mode, or the file not be written
   */
  Rewriting.Done run() throws RequestException {
    Path[] others = texts.subprograms().stream().map(t -> Path.of(t.file())).toArray(Path[]::new);
    OutputFile.check(file, others);
    Rewriting answer = Rewriter.rewrite(texts.text(), texts.sheet(), texts.subprograms(), mode);
    if (answer instanceof Rewriting.Refused no) {
      throw new RequestException(
          ExitStatus.ANSWER_NO,
          List.of(Finding.of(Code.RQ08, no.place(), no.what(), no.why(), no.fix())),
          lines(no.place()));
    }
    Rewriting.Done done = (Rewriting.Done) answer;
    OutputFile.write(file, done.text().toBytes());
    return done;
  }

  private List<String> lines(Place place) {
    return place.file().equals(texts.text().file()) ? texts.text().lines() : List.of();
  }

  /** Tells people what was done and what is held. */
  void write(Rewriting.Done done, PrintWriter out) {
    StringBuilder text = new StringBuilder();
    text.append(texts.text().file())
        .append(" in ")
        .append(mode.word())
        .append(" words: ")
        .append(file)
        .append("\n\n");
    row("changed", Figures.count(done.lines(), "line"), text);
    row("proof", proof(done), text);
    row("rounding", rounding(done), text);
    for (Rewriting.Kept kept : done.kept()) {
      row("as it was", "line " + kept.line() + ": " + kept.why(), text);
    }
    if (!done.raised().isEmpty()) {
      text.append("\nfindings that it raises and the program did not\n");
      new FindingText(Style.plain()).brief(texts.text().file(), done.raised(), text);
    }
    Cautions.write(text);
    out.print(text);
    out.flush();
  }

  private static void row(String label, String words, StringBuilder text) {
    text.append(Figures.left(label, 11));
    FindingText.wrap(words, " ".repeat(11), text);
  }

  private static String proof(Rewriting.Done done) {
    return "both programs were executed with this setup sheet: "
        + Figures.count(done.moves(), "move")
        + " of one kind, line and state; ends differ by "
        + small(done.difference())
        + " mm at most ("
        + small(Rewriter.EXACT)
        + " allowed"
        + (done.rounding() > 0 ? " beyond four times the rounding" : "")
        + "), centres, radii and sweeps by less than "
        + small(Rewriter.ARCS)
        + " mm"
        + (done.rounding() > 0 ? " beyond eight times the rounding" : "");
  }

  private static String rounding(Rewriting.Done done) {
    if (done.rounding() == 0) {
      return "none: every coordinate can be written exactly; chains of distances close exactly";
    }
    return "to "
        + Figures.count(done.decimals(), "decimal")
        + ": no programmed coordinate is off by more than "
        + small(done.rounding())
        + " mm, for each word counts from where the words before it led; chains of distances close"
        + " within "
        + small(done.closing())
        + " mm";
  }

  private static String small(double millimetres) {
    return millimetres == 0 ? "0" : String.format(Locale.ROOT, "%.1e", millimetres);
  }

  /** The answer {@code flankfit/rewrite/1}. */
  void writeJson(Rewriting.Done done, OutputStream target) throws IOException {
    OutputStream out = new BufferedOutputStream(target);
    try (Json json = new Json(out)) {
      json.object()
          .put("schema", "flankfit/rewrite/1")
          .put("program", texts.text().file())
          .put("mode", mode.word())
          .put("file", file.toString())
          .put("linesChanged", done.lines())
          .put("movesCompared", done.moves())
          .put("decimals", done.decimals())
          .put("rounding", done.rounding())
          .put("closing", done.closing())
          .put("difference", done.difference())
          .array("kept");
      for (Rewriting.Kept kept : done.kept()) {
        json.object().put("line", kept.line()).put("why", kept.why()).end();
      }
      json.endArray().findings(done.raised()).end();
    }
    out.flush();
  }
}
