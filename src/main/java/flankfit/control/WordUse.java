package flankfit.control;

import flankfit.finding.Code;
import flankfit.setup.ControlSwitches;

/** Who reads which word of a block: WD03 for G80, WD04, WD09, WD14, WD15. */
final class WordUse {
  private static final String LETTERS = "IJKRPLQ";

  private final BlockWords words;
  private final Modes modes;
  private final Report report;
  private final CycleState cycle;
  private final ControlSwitches.Cycles cycleSwitches;

  WordUse(Machine machine) {
    words = machine.words;
    modes = machine.modes;
    report = machine.report;
    cycle = machine.cycle;
    cycleSwitches = machine.switches.cycles();
  }

  void check() {
    if (words.onlyAxesAndFeed()) {
      return;
    }
    int taker = words.axisTaker();
    if (taker >= 0 && words.g(GCode.MOTION) >= 0) {
      contest(taker);
    } else if (taker >= 0 && words.axisTakers() > 1) {
      report.add(
          Code.WD04,
          words.axisTakerWord(),
          "two functions of the block want the axis words",
          "they belong to one function",
          "use two blocks");
    }
    if (!report.stopped() && words.g(GCode.MOTION) >= CycleKind.FIRST_CODE) {
      besideCycle(words.g(GCode.MOTION));
    }
    if (!report.stopped()) {
      unused(taker);
      toolChange();
    }
  }

  private void contest(int taker) {
    int motion = words.g(GCode.MOTION);
    boolean isReturn = taker == 280 || taker == 300;
    if (isReturn && motion <= 10) {
      report.add(
          Code.WD15,
          words.gWord(GCode.MOTION),
          GCode.text(motion) + " does not move to " + axisText(),
          "the words are the intermediate point of " + GCode.text(taker),
          "leave out " + GCode.text(motion));
      return;
    }
    report.add(
        Code.WD04,
        words.axisTakerWord(),
        GCode.text(motion) + " and " + GCode.text(taker) + " both want the axis words",
        "they belong to one function",
        "use two blocks");
  }

  /** What no block that names a cycle may hold. */
  private void besideCycle(int code) {
    if (words.g(GCode.CYCLE_END) >= 0) {
      report.add(
          Code.WD03,
          words.gWord(GCode.CYCLE_END),
          GCode.text(code) + " and G80 exclude each other",
          "one begins a cycle, the other ends it",
          "keep one, or use two blocks");
    } else if (words.g(GCode.ONE_BLOCK) == 40 && words.has('P') && cycleReads('P', code)) {
      report.add(
          Code.WD04,
          words.word('P'),
          GCode.text(code) + " and G4 both want P",
          "it belongs to one function",
          "use two blocks");
    }
  }

  private boolean cycleReads(char letter, int code) {
    CycleKind kind = code >= 0 ? CycleKind.of(code) : cycle.kind().orElseThrow();
    boolean topByK = kind == CycleKind.G87 && cycleSwitches.backBoreFromDepth();
    return switch (letter) {
      case 'R' -> true;
      case 'K' -> topByK || cycleSwitches.repeat().reads('K');
      case 'L' -> cycleSwitches.repeat().reads('L');
      case 'I', 'J' -> kind.reads(letter) && modes.plane().n() != letter - 'I';
      default -> kind.reads(letter);
    };
  }

  /** Whether the words of the block belong to a cycle. */
  private boolean isCycle(int taker) {
    boolean named = words.g(GCode.MOTION) >= CycleKind.FIRST_CODE;
    boolean other = words.g(GCode.ONE_BLOCK) == 530;
    return taker < 0 && (named || (cycle.isOn() && !words.endsCycle() && !other));
  }

  /** Whether a function other than an arc or a cycle reads a word of this letter. */
  private boolean takerReads(int taker, char letter) {
    return switch (taker) {
      case 100 -> letter == 'L' || letter == 'P' || (letter == 'R' && setsRegister());
      case 510 -> letter == 'P' || (letter >= 'I' && letter <= 'K');
      case 680 -> letter == 'R';
      default -> false;
    };
  }

  /** Whether G10 sets a register, from R, and no work offset. */
  private boolean setsRegister() {
    return !words.has('L') || (words.value('L') >= 9.5 && words.value('L') < 13.5);
  }

  private String axisText() {
    StringBuilder text = new StringBuilder();
    for (int axis = 0; axis < 3; axis++) {
      if (words.axis(axis) >= 0) {
        text.append(text.length() == 0 ? "" : " ").append(words.block().text(words.axis(axis)));
      }
    }
    return text.toString();
  }

  private void unused(int taker) {
    int written = words.g(GCode.MOTION);
    int motion = written >= 0 ? written / 10 : modes.motion();
    boolean isCycle = isCycle(taker);
    boolean arc = motion >= 2 && taker < 0 && !isCycle;
    for (int i = 0; i < LETTERS.length(); i++) {
      char letter = LETTERS.charAt(i);
      if (words.has(letter) && !isRead(letter, taker, arc, isCycle)) {
        noUse(letter, partner(letter));
      }
    }
    if (words.g(GCode.ONE_BLOCK) == 40) {
      dwell();
    }
    if (taker == 100 && setsRegister()) {
      noUse('X', "L2");
      noUse('Y', "L2");
      noUse('Z', "L2");
    }
  }

  private boolean isRead(char letter, int taker, boolean arc, boolean isCycle) {
    if (arc) {
      return letter != 'Q';
    }
    int code = words.g(GCode.ONE_BLOCK);
    int stop = words.m(MCode.STOP);
    boolean othersP =
        code == 40 || code == 300 || words.g(GCode.WORK_OFFSET) == 541 || stop == 98 || stop == 99;
    return (letter == 'P' && othersP)
        || (letter == 'L' && stop == 98)
        || takerReads(taker, letter)
        || (isCycle && cycleReads(letter, words.g(GCode.MOTION)));
  }

  private static String partner(char letter) {
    return switch (letter) {
      case 'P' -> "G4";
      case 'L', 'Q' -> "the function it belongs to";
      default -> "G2 or G3";
    };
  }

  private void dwell() {
    boolean moves = words.g(GCode.MOTION) >= 0 && !words.has('X');
    if (words.has('P')) {
      if (words.has('X')) {
        noUse('X', "a block of its own");
      }
    }
    if (!moves && words.has('X')) {
      noUse('Y', "a block of its own");
      noUse('Z', "a block of its own");
    }
  }

  private void noUse(char letter, String partner) {
    if (words.has(letter)) {
      report.add(
          Code.WD09,
          words.word(letter),
          words.block().text(words.word(letter)) + " has no use here",
          "no function of the block reads it",
          "delete it, or add " + partner);
    }
  }

  private void toolChange() {
    boolean change = words.has('T') || words.m(MCode.TOOL) >= 0;
    int taker = words.axisTaker();
    boolean moves = words.hasAxis() && (taker < 0 || taker == 280 || taker == 300);
    if (change && moves) {
      int word = words.has('T') ? words.word('T') : words.mWord(MCode.TOOL);
      report.add(
          Code.WD14,
          word,
          "tool change and motion in one block",
          "here the change comes first; controls differ",
          "use two blocks");
    }
  }
}
