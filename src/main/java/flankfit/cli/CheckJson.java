package flankfit.cli;

import flankfit.cli.CheckedProgram.MetalCut;
import flankfit.finding.Severity;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** The answer {@code flankfit/check/1}. */
final class CheckJson {
  private CheckJson() {}

  /** Writes the answer. */
  static void write(List<CheckedProgram> checked, List<String> unused, OutputStream out)
      throws IOException {
    try (Json json = new Json(out)) {
      json.object().put("schema", "flankfit/check/1").array("programs");
      for (CheckedProgram program : checked) {
        json.object().put("file", program.file()).put("complete", program.complete());
        if (program.metal() != MetalCut.NOT_WANTED) {
          json.put("metal", program.metal().word());
        }
        json.array("verdicts");
        for (CheckedProgram.Gauged thread : program.verdicts()) {
          json.object()
              .put("hole", thread.hole())
              .put("designation", thread.designation())
              .put("verdict", thread.verdict().words())
              .end();
        }
        json.endArray().findings(program.findings());
        accepted(program, json);
        json.end();
      }
      json.endArray()
          .object("totals")
          .put("programs", checked.size())
          .put("errors", CheckText.sum(checked, Severity.ERROR))
          .put("warnings", CheckText.sum(checked, Severity.WARNING))
          .put("accepted", checked.stream().mapToInt(p -> p.accepted().size()).sum())
          .put("metalCut", CheckText.count(checked, MetalCut.CUT))
          .put("metalNotCut", CheckText.count(checked, MetalCut.NO_STOCK))
          .end()
          .put("acceptedInVain", unused)
          .end();
    }
  }

  private static void accepted(CheckedProgram program, Json json) throws IOException {
    json.array("accepted");
    for (CheckedProgram.AcceptedFinding accepted : program.accepted()) {
      json.object()
          .put("code", accepted.finding().code().name())
          .put("line", accepted.finding().place().line())
          .put("what", accepted.finding().what())
          .put("reason", accepted.reason())
          .end();
    }
    json.endArray();
    if (program.failure().isPresent()) {
      json.put("failure", program.failure().get());
    }
  }
}
