package flankfit.control;

import flankfit.finding.Code;
import flankfit.motion.Plane;
import flankfit.nc.Block;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.TurnsWord;

/** Which words an arc block must and must not have, and its turns. */
final class ArcWords {
  private static final int MOST_TURNS = 1000;

  private final Machine machine;
  private final BlockWords words;
  private final Report report;
  private final ControlSwitches.Arcs switches;

  ArcWords(Machine machine) {
    this.machine = machine;
    this.words = machine.words;
    this.report = machine.report;
    this.switches = machine.switches.arcs();
  }

  /** The motion function in force. */
  String function() {
    return "G" + machine.modes.motion();
  }

  /** The centre words of a plane. */
  static String centreLetters(Plane plane) {
    return "" + (char) ('I' + plane.u()) + " " + (char) ('I' + plane.v());
  }

  /** Reports AR02, AR03, AR06 and AR08; false after one of them. */
  boolean fit(Plane plane) {
    Block block = words.block();
    int normal = words.centre(plane.n());
    if (normal >= 0) {
      report.add(
          Code.AR06,
          normal,
          block.text(normal) + " in plane " + Wording.plane(plane),
          "the axis of the arc has no centre word",
          "delete it, or select the plane");
    } else if (words.has('R') && words.hasCentre()) {
      report.add(
          Code.AR03,
          words.word('R'),
          "R and " + firstCentre() + " in one block",
          "they may contradict each other",
          "keep one");
    } else if (!words.has('R') && !words.hasCentre()) {
      report.add(
          Code.AR02,
          -1,
          "arc without centre or radius",
          function() + " is in force",
          "add " + centreLetters(plane) + " or R; write G1 if a line is meant");
    } else {
      turnsWords(block);
    }
    return !report.stopped();
  }

  private char firstCentre() {
    return words.has('I') ? 'I' : words.has('J') ? 'J' : 'K';
  }

  private void turnsWords(Block block) {
    for (char letter : new char[] {'P', 'L'}) {
      boolean read = switches.turns() == (letter == 'P' ? TurnsWord.P : TurnsWord.L);
      if (words.has(letter) && !read) {
        report.add(
            Code.AR08,
            words.word(letter),
            block.text(words.word(letter)) + " in an arc",
            "controls differ about turns",
            "one block a turn, or set arc-turns");
        return;
      }
    }
  }

  /** Turns begun, by the word that counts them; 1 without one and after an error. */
  double turns() {
    if (switches.turns() == TurnsWord.OFF) {
      return 1;
    }
    int word = words.word(switches.turns() == TurnsWord.P ? 'P' : 'L');
    if (word < 0) {
      return 1;
    }
    if (!words.whole(word)) {
      return 1;
    }
    double turns = Math.rint(words.block().value(word));
    if (turns < 1 || turns > MOST_TURNS) {
      report.add(
          Code.WD11,
          word,
          words.block().text(word) + " is out of range 1 to " + MOST_TURNS,
          "it counts the turns of the arc",
          "correct it");
      return 1;
    }
    return turns;
  }
}
