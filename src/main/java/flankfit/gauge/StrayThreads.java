package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import java.util.Optional;
import java.util.Set;

/** Tells of threads that are cut where none is wanted, and wanted where none is cut. */
final class StrayThreads {
  private final String program;
  private final Tape tape;
  private final SetupSheet setup;
  private final HoleMatcher holes;
  private final Text text;
  private final Cutters cutters;
  private final Findings findings;
  private final Assumptions assumptions;

  StrayThreads(
      GaugeRequest request,
      HoleMatcher holes,
      Text text,
      Cutters cutters,
      Findings findings,
      Assumptions assumptions) {
    this.program = request.program();
    this.tape = request.tape();
    this.setup = request.setup();
    this.holes = holes;
    this.text = text;
    this.cutters = cutters;
    this.findings = findings;
    this.assumptions = assumptions;
  }

  /** Tells of a thread that is cut where none is wanted. */
  void withoutThread(Pass pass, Optional<Hole> hole) {
    int number = pass.state().tool();
    if (setup.tool(number).isEmpty()) {
      if (setup.holes().isEmpty() || (hole.isEmpty() && isThreadWanted())) {
        cutters.unknown(pass);
      }
      return;
    }
    String where = "X" + text.coordinate(pass.x()) + " Y" + text.coordinate(pass.y());
    String what =
        hole.map(h -> "a thread is cut in " + h.name() + ", which wants none")
            .orElse("a thread is cut at " + where + ", where the sheet has no hole");
    String why =
        hole.isPresent()
            ? "no thread is named for it in the sheet"
            : holes
                .nearest(pass)
                .map(
                    h ->
                        "the nearest, "
                            + h.name()
                            + ", is "
                            + text.length(HoleMatcher.distance(h, pass))
                            + " away")
                .orElse("the sheet has no holes at all");
    findings.add(
        Code.GA02,
        line(pass.line()),
        what,
        why + reachedByDistance(pass),
        "name the hole and its thread in the sheet, or correct where the program goes");
  }

  /** Says so when the rapid that led here was read as a distance: G90 is easily forgotten. */
  private String reachedByDistance(Pass pass) {
    for (int move = pass.first() - 1; move >= 0; move--) {
      double travel =
          Math.hypot(tape.toX(move) - tape.fromX(move), tape.toY(move) - tape.fromY(move));
      if (tape.kind(move) == MoveKind.RAPID && travel > HoleMatcher.NEAR) {
        boolean distance = tape.state(move).distance() == ModalState.Distance.INCREMENTAL;
        return distance
            ? "; line " + tape.line(move) + " moved here by a distance, for G91 was on"
            : "";
      }
    }
    return "";
  }

  private boolean isThreadWanted() {
    return setup.holes().stream().anyMatch(hole -> hole.thread().isPresent());
  }

  /** Tells of threads wanted that nothing cuts. */
  void missing(boolean noneAtAll, Set<String> met) {
    if (noneAtAll) {
      findings.add(
          Code.GA01,
          Place.file(program),
          "no thread is found in the motion",
          "no thread mill runs more than half a turn about an axis along Z",
          "check tool, plane and centre of the turns");
      return;
    }
    for (Hole hole : setup.holes()) {
      if (hole.thread().isPresent() && !met.contains(hole.name()) && !isTapped(hole)) {
        findings.add(
            Code.GA03,
            Place.file(program),
            "the thread of " + hole.name() + " is not cut",
            hole.thread().get()
                + " is wanted at X"
                + text.coordinate(hole.x())
                + " Y"
                + text.coordinate(hole.y())
                + "; no helix runs about that axis",
            "correct the program's place, or take the thread out of the sheet");
      }
    }
  }

  private boolean isTapped(Hole hole) {
    for (int move = 0; move < tape.size(); move++) {
      boolean tap =
          setup
              .tool(tape.state(move).tool())
              .map(tool -> tool.kind() == Tool.Kind.TAP)
              .orElse(false);
      double apart = Math.hypot(tape.toX(move) - hole.x(), tape.toY(move) - hole.y());
      if (tap && apart <= HoleMatcher.NEAR && tape.toZ(move) < hole.top()) {
        assumptions.add("the tapped thread of " + hole.name() + " is not gauged");
        return true;
      }
    }
    return false;
  }

  private Place line(int line) {
    return new Place(program, line, 0, 0);
  }
}
