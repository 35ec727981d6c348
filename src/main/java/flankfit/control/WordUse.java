package flankfit.control;

import flankfit.finding.Code;

/** Who reads which word of a block: WD04, WD09, WD14, WD15. */
final class WordUse {
  private final BlockWords words;
  private final Modes modes;
  private final Report report;

  WordUse(BlockWords words, Modes modes, Report report) {
    this.words = words;
    this.modes = modes;
    this.report = report;
  }

  void check() {
    if (words.onlyAxesAndFeed()) {
      return;
    }
    int taker = words.axisTaker();
    if (taker >= 0 && words.g(GCode.MOTION) >= 0) {
      contest(taker);
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
    int motion = words.g(GCode.MOTION) >= 0 ? words.g(GCode.MOTION) / 10 : modes.motion();
    boolean arc = motion >= 2 && taker < 0;
    if (!arc) {
      for (char letter : new char[] {'I', 'J', 'K'}) {
        noUse(letter, "G2 or G3");
      }
      noUse('R', "G2 or G3");
    }
    int code = words.g(GCode.ONE_BLOCK);
    int calls = words.m(MCode.STOP);
    boolean readsP =
        code == 40
            || code == 300
            || words.g(GCode.WORK_OFFSET) == 541
            || calls == 98
            || calls == 99;
    if (!readsP && !(arc && words.has('P'))) {
      noUse('P', "G4");
    }
    if (!(arc && words.has('L')) && calls != 98) {
      noUse('L', "the function it belongs to");
    }
    noUse('Q', "the function it belongs to");
    if (code == 40) {
      dwell();
    }
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
    boolean moves = words.hasAxis() && words.axisTaker() != 40 && words.axisTaker() != 501;
    if (change && moves && words.axisTaker() != 520 && words.axisTaker() != 920) {
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
