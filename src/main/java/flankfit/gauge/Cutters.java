package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.standard.InvalidDesignationException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Gives each pass its teeth, and tells of mills that are not known. */
final class Cutters {
  private final String program;
  private final SetupSheet setup;
  private final ThreadLookup threads;
  private final Findings findings;
  private final Set<Integer> unknownTools = new HashSet<>();

  Cutters(String program, SetupSheet setup, ThreadLookup threads, Findings findings) {
    this.program = program;
    this.setup = setup;
    this.threads = threads;
    this.findings = findings;
  }

  /** The passes with their teeth; empty, and told, when those of a mill are not known. */
  Optional<List<CutPass>> of(List<Pass> group) {
    List<CutPass> cuts = new ArrayList<>();
    for (Pass pass : group) {
      Optional<CutPass> cut = cutPass(pass);
      if (cut.isEmpty()) {
        return Optional.empty();
      }
      cuts.add(cut.get());
    }
    return Optional.of(cuts);
  }

  private Optional<CutPass> cutPass(Pass pass) {
    Optional<Tool> tool = setup.tool(pass.state().tool());
    if (tool.isEmpty() || tool.get().teeth().isEmpty()) {
      unknown(pass);
      return Optional.empty();
    }
    Tool.Teeth teeth = tool.get().teeth().get();
    try {
      return Optional.of(
          new CutPass(pass, tool.get(), teeth, new TeethForms(threads).tooth(tool.get(), teeth)));
    } catch (InvalidDesignationException e) {
      badCutter(pass, e.getMessage(), e.fix());
    } catch (IllegalArgumentException e) {
      badCutter(pass, e.getMessage(), "");
    }
    return Optional.empty();
  }

  /** Tells, once for a tool, that its teeth are not known. */
  void unknown(Pass pass) {
    if (unknownTools.add(pass.state().tool())) {
      badCutter(
          pass,
          "its teeth are not in the sheet",
          "state it in the sheet as a thread mill with diameter, rows, pitch, flank-angle,"
              + " crest-flat");
    }
  }

  private void badCutter(Pass pass, String why, String fix) {
    findings.add(
        Code.GA04,
        new Place(program, pass.line(), 0, 0),
        "the cutter of tool " + pass.state().tool() + " is not known",
        why,
        fix);
  }
}
