package flankfit.check;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.SheetReading;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A program and its sheet, with what the rules find.
 *
 * @param done the interpretation
 * @param findings those of the rules alone
 */
record Checked(Interpretation done, List<Finding> findings) {
  /** Reads, executes and checks. */
  static Checked of(String program, String sheet) {
    SheetReading reading = SetupReader.read("sheet.toml", sheet);
    SetupSheet setup =
        reading.sheet().orElseThrow(() -> new AssertionError(reading.findings().toString()));
    byte[] bytes = program.getBytes(StandardCharsets.UTF_8);
    Interpretation done = Interpreter.interpret(SourceText.of("p.nc", bytes), setup);
    return new Checked(done, ProgramCheck.findings(done, setup));
  }

  /** Code and line of what was found, such as {@code HZ02@5}, without assumptions. */
  List<String> codes() {
    return findings.stream()
        .filter(f -> f.code() != Code.AS05)
        .map(f -> f.code() + "@" + f.place().line())
        .toList();
  }

  /** The only finding of a code. */
  Finding only(Code code) {
    List<Finding> found = findings.stream().filter(f -> f.code() == code).toList();
    if (found.size() != 1) {
      throw new AssertionError(code + " was found " + found.size() + " times: " + findings);
    }
    return found.get(0);
  }
}
