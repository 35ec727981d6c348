package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.nc.Block;
import flankfit.setup.ControlSwitches.NumberReading;
import java.util.ArrayList;
import java.util.List;

/** Whether a program writes its dimensions with a point: RD15, AS03. */
final class PointHabit {
  private final NumberReading reading;
  private final List<Place> places = new ArrayList<>();
  private final List<String> texts = new ArrayList<>();
  private final List<Double> values = new ArrayList<>();
  private int without;
  private boolean with;

  PointHabit(NumberReading reading) {
    this.reading = reading;
  }

  /** Whether nothing is left to learn from numbers with a point, or zero. */
  boolean knowsPoint() {
    return with;
  }

  /** Looks at every block of the text, executed or not. */
  void look(Block block) {
    if (block.isMacroCall() || (with && block.allHadPoint())) {
      return; // words of a call are arguments
    }
    for (int word = 0; word < block.size(); word++) {
      if (with && block.hadPoint(word)) {
        continue;
      }
      char letter = block.letter(word);
      boolean dimension =
          (letter >= 'X' && letter <= 'Z')
              || (letter >= 'I' && letter <= 'K')
              || letter == 'R'
              || letter == 'Q';
      if (dimension && block.value(word) != 0 && !isOther(block, letter)) {
        note(block, word);
      }
    }
  }

  /** Whether a word is a time, an angle or a factor: X of G4, R of G68, I J K of G51. */
  private static boolean isOther(Block block, char letter) {
    int function = letter == 'X' ? 4 : letter == 'R' ? 68 : letter <= 'K' ? 51 : 0;
    for (int word = 0; function != 0 && word < block.size(); word++) {
      if (block.letter(word) == 'G' && block.value(word) == function) {
        return true;
      }
    }
    return false;
  }

  private void note(Block block, int word) {
    if (block.hadPoint(word)) {
      with = true;
      return;
    }
    without++;
    if (places.size() <= Findings.LISTED_SINGLY) {
      places.add(block.place(word));
      texts.add(block.text(word));
      values.add(block.value(word));
    }
  }

  /** Reports at the end of the text. */
  void report(Findings findings, Assumptions assumptions) {
    if (without == 0) {
      return;
    }
    boolean counts = reading == NumberReading.LEAST_INCREMENT;
    assumptions.once(
        Code.AS03,
        "",
        "numbers without a point are read as "
            + (counts ? "counts of the least increment" : "whole units"),
        "number-reading = " + (counts ? "least-increment" : "calculator"));
    if (counts) {
      return;
    }
    int listed = with ? places.size() : 1;
    for (int i = 0; i < listed; i++) {
      findings.add(finding(i));
    }
    for (int i = listed; with && i < without; i++) {
      if (!findings.countUnlisted(Code.RD15)) {
        findings.add(finding(listed - 1));
      }
    }
  }

  private Finding finding(int i) {
    String text = texts.get(i);
    return new Finding(
        Code.RD15,
        with ? Severity.WARNING : Severity.NOTE,
        places.get(i),
        text + " has no decimal point" + (with ? " and others have" : ", nor has any other"),
        "another control would read " + Wording.number(values.get(i) / 1000),
        "write " + text + ".");
  }
}
