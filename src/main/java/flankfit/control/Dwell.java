package flankfit.control;

import flankfit.finding.Code;
import flankfit.nc.Block;
import flankfit.setup.ControlSwitches.DwellP;

/** G4 with P or X, and P of cycles. Reports CY17 and MD17. */
final class Dwell {
  private static final double LONG = 10;

  private final Machine machine;
  private final BlockWords words;
  private final Report report;
  private final Mover mover;

  Dwell(Machine machine, Mover mover) {
    this.machine = machine;
    this.words = machine.words;
    this.report = machine.report;
    this.mover = mover;
  }

  /** Writes the dwell of the block, if it has one. */
  void execute() {
    if (words.g(GCode.ONE_BLOCK) != 40) {
      return;
    }
    char letter = words.has('P') ? 'P' : 'X';
    if (!words.has(letter)) {
      report.add(
          Code.MD17,
          words.gWord(GCode.ONE_BLOCK),
          "G4 without a time",
          "no dwell is made",
          "add P");
      return;
    }
    double seconds = seconds(letter);
    if (seconds > 0) {
      mover.dwell(seconds);
    }
  }

  private boolean countsThousandths(Block block, int word) {
    DwellP reading = machine.switches.reading().dwellP();
    return block.letter(word) == 'P'
        && (reading == DwellP.MILLISECONDS
            || (reading == DwellP.BY_POINT && !block.hadPoint(word)));
  }

  /** Time that a word says (s), without findings. */
  double understood(Block block, int word) {
    double value = block.value(word);
    return countsThousandths(block, word) ? value / 1000 : value;
  }

  /** Time that a word of the block says (s); 0 after an error. */
  double seconds(char letter) {
    int word = words.word(letter);
    double value = words.block().value(word);
    if (value < 0) {
      report.add(
          Code.WD11,
          word,
          words.block().text(word) + " is out of range 0 and up",
          "it is a time",
          "correct it");
      return 0;
    }
    boolean thousandths = countsThousandths(words.block(), word);
    double seconds = understood(words.block(), word);
    if (seconds > LONG) {
      report.add(
          Code.CY17,
          word,
          "dwell of "
              + Wording.number(seconds)
              + " s, usual are up to "
              + Wording.number(LONG)
              + " s",
          letter + " read as " + (thousandths ? "milliseconds" : "seconds"),
          letter == 'P' ? "check dwell-p" : "check X");
    }
    return seconds;
  }
}
