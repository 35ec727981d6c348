package flankfit.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import flankfit.cli.Answers;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.control.TapeChecks;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.SheetReading;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What must hold for every answer, whatever the program and the sheet are. */
final class Oracles {
  /** A short program is tried again with one switch after the other set otherwise. */
  private static final int WITH_TRIALS = 40;

  static final String SHEET = "case.setup.toml";

  /** Moves beyond which an answer is not written out, for time. */
  private static final int MOST_SHOWN = 3000;

  /** How many cases for one that is written as text for people too, for time. */
  private static final int TEXT_FOR_ONE_IN = 4;

  /** The same for gauging the path as moved, which takes seconds with coverage measured. */
  private static final int PATH_FOR_ONE_IN = 16;

  private Oracles() {}

  /**
   * Runs a case and checks all answers.
   *
   * @throws AssertionError if something does not hold; any other exception is a crash
   */
  static void check(FuzzCase given) throws IOException {
    check(given, sheet(given.sheet()).orElse(SetupSheet.empty()));
  }

  /** The same with a sheet that is read already. */
  static void check(FuzzCase given, SetupSheet sheet) throws IOException {
    SourceText text = given.source();
    List<SourceText> more = given.subprograms();
    Cost first = Cost.of(() -> Interpreter.interpret(text, sheet, more));
    Interpretation done = first.answer();
    whole(done);
    TapeChecks.assertFinite(done.tape());
    TapeChecks.assertContinuous(done.tape());
    List<SourceText> texts = new ArrayList<>(more);
    texts.add(text);
    placed(done.findings(), texts, given.sheet());
    Cost again = Cost.of(() -> Interpreter.interpret(given.source(), sheet, given.subprograms()));
    SameAnswer.check(done, again.answer());
    first.check(again, given.size(), longestLine(text), WITH_TRIALS);
    Cost alone = Cost.of(() -> Interpreter.replay(given.source(), sheet, given.subprograms()));
    Cost aloneAgain = Cost.of(() -> Interpreter.replay(given.source(), sheet, given.subprograms()));
    alone.check(aloneAgain, given.size(), longestLine(text), 1);
    answers(given, sheet, done, texts);
  }

  /** Reads a sheet twice and checks what is found; the sheet, when it has no errors. */
  static Optional<SetupSheet> sheet(String text) {
    SheetReading reading = SetupReader.read(SHEET, text);
    boolean errors = reading.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR);
    assertThat(reading.sheet().isPresent()).as("a sheet without errors").isEqualTo(!errors);
    placed(reading.findings(), List.of(), text);
    assertThat(SetupReader.read(SHEET, text)).isEqualTo(reading);
    return reading.sheet();
  }

  private static int longestLine(SourceText text) {
    return text.lines().stream().mapToInt(String::length).max().orElse(0);
  }

  private static void whole(Interpretation done) {
    assertThat(done.complete()).as("complete").isEqualTo(done.stoppedAt().isEmpty());
    done.stoppedAt()
        .ifPresent(
            stop ->
                assertThat(done.findings())
                    .as("a stop is told")
                    .anyMatch(f -> f.code() == stop.code()));
    for (String sentence : done.assumptions()) {
      assertThat(sentence).isNotBlank();
    }
  }

  /** Every finding stands inside a file and says something. */
  private static void placed(List<Finding> findings, List<SourceText> texts, String sheet) {
    Map<String, List<String>> lines = new HashMap<>();
    texts.forEach(text -> lines.put(text.file(), text.lines()));
    lines.put(SHEET, SetupReader.lines(sheet));
    for (Finding finding : findings) {
      List<String> file = lines.get(finding.place().file());
      if (finding.what().isBlank() || file == null || !isInside(finding, file)) {
        fail("%s stands nowhere or says nothing", finding);
      }
    }
  }

  private static boolean isInside(Finding finding, List<String> lines) {
    int line = finding.place().line();
    if (line > Math.max(1, lines.size())) {
      return false;
    }
    int length = line == 0 || lines.isEmpty() ? 0 : lines.get(line - 1).length();
    int column = finding.place().column();
    // The end of a line is a place too: something is missing there.
    return column <= length + 1 && column + finding.place().length() <= length + 2;
  }

  private static void answers(
      FuzzCase given, SetupSheet sheet, Interpretation done, List<SourceText> texts)
      throws IOException {
    if (done.tape().size() > MOST_SHOWN) {
      return;
    }
    parses(Answers.motionJson(done));
    if (sheet.holes().stream().anyMatch(hole -> hole.thread().isPresent())) {
      boolean asMoved = given.size() % PATH_FOR_ONE_IN == 0;
      Answers.Gauged gauged =
          Answers.gauge(given.source(), sheet, given.subprograms(), done, asMoved);
      parses(gauged.json());
      assertThat(gauged.text()).doesNotContain("NaN", "Infinity");
      placed(gauged.findings(), texts, given.sheet());
    }
    if (given.size() % TEXT_FOR_ONE_IN == 0) {
      assertThat(Answers.motionText(given.source(), sheet, given.subprograms(), done))
          .doesNotContain("NaN", "Infinity");
    }
  }

  private static void parses(byte[] json) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      int depth = 0;
      while (parser.nextToken() != null) {
        depth = Math.max(depth, parser.getParsingContext().getNestingDepth());
      }
      assertThat(depth).isPositive();
    }
  }
}
