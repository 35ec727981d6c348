package flankfit;

import flankfit.check.MetalCheck;
import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Code;
import flankfit.finding.CodePage;
import flankfit.finding.Finding;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadGauging;
import flankfit.metal.Metal;
import flankfit.metal.MetalOptions;
import flankfit.metal.MetalProgress;
import flankfit.metal.TooFineException;
import flankfit.nc.SourceText;
import flankfit.odds.Observation;
import flankfit.odds.OddsAnswers;
import flankfit.odds.OddsRequest;
import flankfit.odds.PartObserved;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.SheetReading;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Runs the case of a page of findings as the tool would. */
final class CaseRun {
  private CaseRun() {}

  /** The same, with gauges on endless helices only, which takes a fraction of the time. */
  static List<Finding> endless(Code code, CodePage.Case shown) {
    return of(code, shown, false);
  }

  /** What is found in a case: by the sheet's reader, else by the control, the rules and gauging. */
  static List<Finding> of(Code code, CodePage.Case shown) {
    return of(code, shown, true);
  }

  private static List<Finding> of(Code code, CodePage.Case shown, boolean realPath) {
    SetupSheet sheet = SetupSheet.empty();
    List<Finding> findings = new ArrayList<>();
    if (shown.sheet().isPresent()) {
      SheetReading reading = SetupReader.read("page.setup.toml", shown.sheet().get());
      findings.addAll(reading.findings());
      sheet = reading.sheet().orElse(sheet);
    }
    if (shown.program().isPresent()) {
      Interpretation done =
          Interpreter.interpret(SourceText.of("page.nc", shown.programBytes()), sheet);
      findings.addAll(done.findings());
      findings.addAll(ProgramCheck.findings(done, sheet));
      // Only hazards are found in the metal, and cutting it takes longest.
      if (sheet.stock().isPresent() && code.name().startsWith("HZ")) {
        findings.addAll(ofMetal(done, sheet));
      }
      if (isAboutThreads(sheet)) {
        findings.addAll(gauged(shown, done, sheet, realPath));
      }
    }
    return findings;
  }

  private static List<Finding> ofMetal(Interpretation done, SetupSheet sheet) {
    MetalOptions coarse = MetalOptions.usual().withCell(2);
    try {
      Metal metal = Metal.of(done.tape(), sheet, coarse, MetalProgress.NONE);
      return MetalCheck.of(done, sheet, metal, done.tape().size()).findings();
    } catch (TooFineException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Finding> gauged(
      CodePage.Case shown, Interpretation done, SetupSheet sheet, boolean realPath) {
    SourceText text = SourceText.of("page.nc", shown.programBytes());
    GaugeRequest request =
        new GaugeRequest(
            "page.nc",
            done.tape(),
            sheet,
            offsets ->
                Optional.of(
                    Interpreter.replay(text, sheet.withOffsets(offsets), List.of()).tape()));
    GaugeAnswer answer = ThreadGauging.gauge(realPath ? request : request.withoutRealPath());
    List<Finding> findings = new ArrayList<>(answer.findings());
    List<Observation> seen = observed(shown.request().orElse(""));
    if (!seen.isEmpty()) {
      String hole = answer.threads().get(0).hole();
      List<PartObserved> part = List.of(new PartObserved(1, -0.045, seen));
      OddsRequest odds = OddsRequest.of(Map.of(hole, part));
      findings.addAll(OddsAnswers.of("page.nc", answer, sheet, odds).findings());
    }
    return findings;
  }

  /** The words after --observed of a page's request. */
  private static List<Observation> observed(String request) {
    List<String> words = List.of(request.strip().split("\\s+"));
    List<Observation> seen = new ArrayList<>();
    for (int i = 1; i < words.size(); i++) {
      if (words.get(i - 1).equals("--observed")) {
        seen.add(Observation.of(words.get(i), LengthUnit.MILLIMETRE));
      }
    }
    return seen;
  }

  private static boolean isAboutThreads(SetupSheet sheet) {
    return sheet.holes().stream().anyMatch(hole -> hole.thread().isPresent())
        || sheet.tools().stream().anyMatch(tool -> tool.kind() == Tool.Kind.THREAD_MILL);
  }
}
