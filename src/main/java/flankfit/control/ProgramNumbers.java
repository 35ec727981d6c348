package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.nc.Block;
import java.util.HashMap;
import java.util.Map;

/** The program numbers of a text: FL21 for one that stands twice, RD22 for a missing one. */
final class ProgramNumbers {
  private final String file;
  private final Findings findings;
  private final Map<Integer, Integer> lines = new HashMap<>();

  ProgramNumbers(String file, Findings findings) {
    this.file = file;
    this.findings = findings;
  }

  /**
   * Takes the number that a block begins with.
   *
   * @param wordsBefore whether words of a program without a number stand before
   */
  void found(Block block, boolean wordsBefore) {
    int number = block.programNumber();
    Integer before = lines.putIfAbsent(number, block.line());
    if (before != null) {
      findings.add(
          Code.FL21,
          block.programPlace(),
          "O" + number + " stands twice (line " + before + ")",
          "a call would be ambiguous",
          "renumber");
    } else if (wordsBefore && lines.size() == 1) {
      findings.add(
          Code.RD22,
          new Place(file, 1, 0, 0),
          "program number missing in a file with several programs",
          "older controls know four digits",
          "none needed");
    }
  }
}
