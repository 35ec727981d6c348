package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadGauging;
import flankfit.gauge.Verdict;
import flankfit.unit.LengthUnit;
import flankfit.window.Gauged;
import flankfit.window.ProgramSource;
import flankfit.window.UnreadableProgramException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The program that a window was asked for. */
final class WindowProgram implements ProgramSource {
  private final ProgramOptions program;
  private volatile List<Path> subprograms = List.of();

  WindowProgram(ProgramOptions program) {
    this.program = program;
  }

  @Override
  public String file() {
    return program.file().toString();
  }

  @Override
  public List<Path> files() {
    return Stream.concat(program.watched().stream(), subprograms.stream()).toList();
  }

  @Override
  public Text read() throws UnreadableProgramException {
    try {
      return first();
    } catch (RequestException e) {
      throw new UnreadableProgramException(e.findings());
    }
  }

  @Override
  public Optional<Text> beginning(int most) throws UnreadableProgramException {
    try {
      if (!program.isLongerThan(most)) {
        return Optional.empty();
      }
      return Optional.of(text(program.readBeginning(most)));
    } catch (RequestException e) {
      throw new UnreadableProgramException(e.findings());
    }
  }

  /**
   * Reads it for the first time.
   *
   * @throws RequestException if a file cannot be read or the sheet has errors
   */
  Text first() throws RequestException {
    return text(program.read());
  }

  private Text text(ProgramOptions.Texts texts) throws RequestException {
    subprograms = texts.subprograms().stream().map(t -> Path.of(t.file())).toList();
    return new Text(
        texts.text(),
        texts.sheet(),
        texts.subprograms(),
        ProgramOptions.majorDiameters(texts.sheet()),
        texts.mesh());
  }

  @Override
  public Judgement judge(Text text, Interpretation checked) {
    var job =
        new ProgramOptions.Job(
            text.program(), text.setup(), text.subprograms(), checked, text.mesh());
    if (!CheckedProgram.isAboutThreads(job)) {
      return new Judgement(checked.findings(), toMend(checked.findings()) + "no thread is milled");
    }
    GaugeRequest request = job.gaugeRequest();
    GaugeAnswer answer = ThreadGauging.gauge(request);
    List<Finding> findings = GaugeCommand.findings(checked, answer);
    return new Judgement(
        findings, headline(answer, findings), Optional.of(new Gauged(request, answer)));
  }

  /** The threads and their verdicts in one sentence, after what has to be mended first. */
  private static String headline(GaugeAnswer answer, List<Finding> findings) {
    Map<String, List<String>> holes = new LinkedHashMap<>();
    for (ThreadAnswer thread : answer.threads()) {
      holes.computeIfAbsent(sentence(thread), key -> new ArrayList<>()).add(thread.hole());
    }
    String threads =
        holes.entrySet().stream()
            .map(entry -> String.join(", ", entry.getValue()) + ": " + entry.getKey())
            .collect(Collectors.joining("; "));
    return toMend(findings) + (threads.isEmpty() ? "no thread is gauged" : threads);
  }

  /** What has to be mended first, and a semicolon; empty for nothing. */
  private static String toMend(List<Finding> findings) {
    long errors = findings.stream().filter(f -> f.severity() == Severity.ERROR).count();
    return errors == 0
        ? ""
        : errors + (errors == 1 ? " error to mend first; " : " errors to mend first; ");
  }

  private static String sentence(ThreadAnswer thread) {
    LengthUnit unit =
        thread.spec().threadsPerInch().isPresent() ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    String words = thread.designation() + ", " + thread.verdict().words();
    return thread
            .go()
            .map(
                go ->
                    words
                        + (go.enters() ? ", GO with " : ", GO lacks ")
                        + Figures.lengthWithUnit(Math.abs(go.clearance()), unit)
                        + (go.enters() ? " to spare" : ""))
            .orElse(words)
        + toKeyIn(thread, unit);
  }

  /** What to key in where the gauges are not content; empty where no value mends it. */
  private static String toKeyIn(ThreadAnswer thread, LengthUnit unit) {
    if (thread.verdict() == Verdict.GAUGES_GOOD) {
      return "";
    }
    return thread
        .offset()
        .filter(OffsetAdvice::hasWindow)
        .map(o -> key(o) + Figures.lengthWithUnit(o.keyToMiddle(), unit))
        .orElse("");
  }

  private static String key(OffsetAdvice advice) {
    return advice
        .setBy()
        .map(set -> ": write " + set.word() + " in line " + set.place().line() + " as ")
        .orElse(": key in " + advice.register() + " wear ");
  }
}
