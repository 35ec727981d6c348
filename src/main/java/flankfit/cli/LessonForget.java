package flankfit.cli;

import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.lesson.LeftOut;
import flankfit.lesson.Parting;
import flankfit.picture.Diagram;
import flankfit.picture.DiagramFile;
import flankfit.picture.NoOpenGlException;
import flankfit.picture.PartingPicture;
import flankfit.setup.ControlSwitches;
import flankfit.unit.LengthUnit;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What happens when a mode word is forgotten. */
final class LessonForget {
  private final ProgramOptions.Job right;
  private final ProgramOptions.Job wrong;
  private final LeftOut left;
  private final Parting parting;
  private final CheckedProgram before;
  private final CheckedProgram after;

  private LessonForget(ProgramOptions.Job right, LeftOut left) {
    this.right = right;
    this.left = left;
    Interpretation done = Interpreter.interpret(left.text(), right.sheet(), right.subprograms());
    wrong =
        new ProgramOptions.Job(
            left.text(),
            right.sheet(),
            right.subprograms(),
            ProgramCheck.checked(done, right.sheet()));
    parting = Parting.of(right.text(), left, right.sheet(), right.subprograms());
    before = CheckedProgram.of(right);
    after = CheckedProgram.of(wrong);
  }

  /**
   * Leaves a word out and executes the program without it.
   *
   * @param asked {@code LINE}, or {@code LINE:WORD} where a line has several mode words
   * @throws RequestException if there is no such line or word
   */
  static LessonForget of(ProgramOptions.Job job, String asked) throws RequestException {
    int colon = asked.indexOf(':');
    Optional<String> word = colon < 0 ? Optional.empty() : Optional.of(asked.substring(colon + 1));
    int line = number(colon < 0 ? asked : asked.substring(0, colon), asked);
    ControlSwitches.Reading reading = job.sheet().control().reading();
    Optional<LeftOut> left = LeftOut.of(job.text(), reading, line, word);
    if (left.isEmpty()) {
      List<String> words = LeftOut.words(job.text(), reading, line);
      throw wrong(
          "line " + line + " has no such word to forget",
          words.isEmpty()
              ? "no mode word (G90, G91, G17, G40, G54 and their like) stands in it"
              : "its mode words are " + String.join(", ", words),
          words.isEmpty()
              ? "name a line that has one"
              : "write --forget " + line + ":" + words.get(0));
    }
    return new LessonForget(job, left.get());
  }

  private static int number(String text, String asked) throws RequestException {
    try {
      return Integer.parseInt(text.strip());
    } catch (NumberFormatException e) {
      throw wrong(
          "--forget " + asked + " names no line", e.getMessage(), "write --forget 24, or 24:G90");
    }
  }

  private static RequestException wrong(String what, String why, String fix) {
    return RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, why, fix));
  }

  private LengthUnit unit() {
    return right.interpretation().unit();
  }

  /** Findings that only the accident raises: by code and line, so that none is told twice. */
  private List<Finding> raised() {
    Set<String> known = new HashSet<>();
    before.findings().forEach(f -> known.add(f.code() + ":" + f.place().line()));
    List<Finding> raised = new ArrayList<>();
    for (Finding finding : after.findings()) {
      if (known.add(finding.code() + ":" + finding.place().line())) {
        raised.add(finding);
      }
    }
    return raised;
  }

  private String headline() {
    return left.word() + " of line " + left.place().line() + " forgotten";
  }

  private String tale() {
    String stop =
        wrong.interpretation().stoppedAt().isPresent()
                && !wrong.interpretation().stoppedAt().equals(right.interpretation().stoppedAt())
            ? "; the run stops at line " + wrong.interpretation().stoppedAt().get().line()
            : "";
    String order =
        parting
            .otherOrder()
            .map(place -> "; from line " + place.line() + " on other blocks are executed")
            .orElse("");
    if (parting.first().isEmpty()) {
      String time =
          Math.abs(parting.seconds()) > 1e-3
              ? ", only the feed: it takes "
                  + Figures.signed(parting.seconds(), 1)
                  + " s more or less"
              : "";
      return "the tool goes the same way" + time + order + stop;
    }
    return "the paths part at line "
        + parting.first().get().line()
        + "; farthest apart after line "
        + parting.at().line()
        + ": "
        + Figures.lengthWithUnit(parting.greatest(), unit())
        + "; in the end (line "
        + parting.lastAt().line()
        + ") "
        + Figures.lengthWithUnit(parting.last(), unit())
        + " apart"
        + order
        + stop;
  }

  /**
   * Draws both paths.
   *
   * @throws RequestException if the file cannot be written, or nothing draw
   */
  void draw(Path file, PictureOptions picture) throws RequestException {
    PictureOptions.Pixels size = picture.ofDiagram();
    PictureOptions.Pixels layout = PictureOptions.layout(size);
    Diagram diagram =
        PartingPicture.of(
            right.interpretation().tape(),
            wrong.interpretation().tape(),
            headline(),
            tale(),
            unit(),
            layout.width(),
            layout.height(),
            picture.theme());
    try {
      OutputFile.write(
          file,
          file.toString().toLowerCase(Locale.ROOT).endsWith(".svg")
              ? DiagramFile.svg(diagram, size.width(), size.height())
              : DiagramFile.png(diagram, size.width(), size.height()));
    } catch (NoOpenGlException e) {
      throw PictureOptions.refused(e);
    }
  }

  /** Tells people. */
  void write(Optional<Path> image, Style style, PrintWriter out) {
    StringBuilder text = new StringBuilder();
    text.append(right.interpretation().file()).append(": ").append(headline()).append("\n\n");
    row("written", right.text().line(left.place().line()).strip(), text);
    row("read", left.text().line(left.place().line()).strip(), text);
    row("motion", tale(), text);
    for (String thread : threads()) {
      row("thread", thread + ": " + verdict(before, thread) + " → " + verdict(after, thread), text);
    }
    image.ifPresent(file -> row("picture", file.toString(), text));
    List<Finding> raised = raised();
    text.append(raised.isEmpty() ? "\nno finding tells of it\n" : "\nfindings it raises\n");
    new FindingText(style).brief(right.interpretation().file(), raised, text);
    Cautions.write(text);
    out.print(text);
    out.flush();
  }

  /** Threads that either program cuts, in order. */
  private Set<String> threads() {
    Set<String> names = new LinkedHashSet<>();
    before.verdicts().forEach(one -> names.add(name(one)));
    after.verdicts().forEach(one -> names.add(name(one)));
    return names;
  }

  private static String name(CheckedProgram.Gauged one) {
    return one.designation() + " in " + one.hole();
  }

  private static String verdict(CheckedProgram program, String thread) {
    return program.verdicts().stream()
        .filter(one -> name(one).equals(thread))
        .findFirst()
        .map(one -> one.verdict().words())
        .orElse("not cut there");
  }

  private static void row(String label, String words, StringBuilder text) {
    text.append(Figures.left(label, 9));
    FindingText.wrap(words, " ".repeat(9), text);
  }

  /** The answer {@code flankfit/forget/1}. */
  void writeJson(OutputStream target) throws IOException {
    OutputStream out = new BufferedOutputStream(target);
    try (Json json = new Json(out)) {
      json.object()
          .put("schema", "flankfit/forget/1")
          .put("program", right.interpretation().file())
          .put("line", left.place().line())
          .put("word", left.word())
          .put("plain", tale())
          .put("greatest", parting.greatest())
          .put("last", parting.last())
          .put("lastLine", parting.lastAt().line());
      if (parting.first().isPresent()) {
        json.put("partsAt", parting.first().get().line());
        json.put("greatestAt", parting.at().line());
      }
      verdicts("verdictsBefore", before, json);
      verdicts("verdictsAfter", after, json);
      json.findings(raised()).end();
    }
    out.flush();
  }

  private static void verdicts(String name, CheckedProgram program, Json json) throws IOException {
    json.array(name);
    for (CheckedProgram.Gauged one : program.verdicts()) {
      json.object()
          .put("hole", one.hole())
          .put("designation", one.designation())
          .put("verdict", one.verdict().words())
          .end();
    }
    json.endArray();
  }
}
