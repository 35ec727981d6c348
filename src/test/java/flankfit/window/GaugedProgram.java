package flankfit.window;

import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Finding;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadGauging;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A program in a file with the sheet beside it, its threads gauged. */
record GaugedProgram(SheetPrograms plain) implements ProgramSource {
  static GaugedProgram of(Path program) {
    return new GaugedProgram(new SheetPrograms(program));
  }

  @Override
  public String file() {
    return plain.file();
  }

  @Override
  public List<Path> files() {
    return plain.files();
  }

  @Override
  public Text read() throws UnreadableProgramException {
    return plain.read();
  }

  @Override
  public Judgement judge(Text text, Interpretation done) {
    Interpretation checked = ProgramCheck.checked(done, text.setup());
    GaugeRequest request =
        new GaugeRequest(
            file(),
            checked.tape(),
            text.setup(),
            checked.radiusSettings(),
            offsets ->
                Optional.of(
                    Interpreter.replay(text.program(), text.setup().withOffsets(offsets), List.of())
                        .tape()));
    GaugeAnswer answer = ThreadGauging.gauge(request);
    List<Finding> findings = new ArrayList<>(checked.findings());
    findings.addAll(answer.findings());
    return new Judgement(findings, "gauged", Optional.of(new Gauged(request, answer)));
  }
}
