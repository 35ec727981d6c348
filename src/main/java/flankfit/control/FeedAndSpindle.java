package flankfit.control;

import flankfit.finding.Code;
import flankfit.motion.ModalState.Spindle;
import flankfit.nc.Block;

/** F, S, the feed modes, the spindle and the coolant. */
final class FeedAndSpindle {
  private static final int INVERSE_TIME = 930;
  private static final int PER_MINUTE = 940;
  private static final int PER_REVOLUTION = 950;

  private final Machine machine;
  private final Modes modes;
  private final BlockWords words;
  private final Report report;
  private boolean lostByUnit;
  private double effective;
  private boolean cutAtRestReported;

  FeedAndSpindle(Machine machine) {
    this.machine = machine;
    this.modes = machine.modes;
    this.words = machine.words;
    this.report = machine.report;
  }

  /** F loses its value when the unit changes. */
  void unitChanged() {
    lostByUnit = true;
    modes.feedWord(Double.NaN);
  }

  void feedMode() {
    int code = words.g(GCode.FEED);
    if (code < 0) {
      return;
    }
    if (code != modes.feedMode() && modes.feedMode() == INVERSE_TIME) {
      modes.feedWord(Double.NaN);
    }
    modes.feedMode(code);
  }

  void feedWord() {
    int word = words.word('F');
    if (word < 0) {
      return;
    }
    Block block = words.block();
    double value = block.value(word);
    if (value <= 0) {
      report.add(
          Code.MD02, word, "feed " + Wording.number(value), "feed must be positive", "correct it");
      return;
    }
    lostByUnit = false;
    double feed = modes.feedMode() == INVERSE_TIME ? value : modes.unit().toMillimetres(value);
    if (feed != modes.feedWord() && modes.feedMode() == PER_MINUTE) {
      unusual(word, feed);
    }
    modes.feedWord(feed);
  }

  /** Whether a feed per minute is one that is commonly programmed (mm/min). */
  boolean isUsual(double feed) {
    return feed >= 1 && feed <= machine.switches.rapids().maxFeed();
  }

  /** Whether F counts by the minute. */
  boolean isPerMinute() {
    return modes.feedMode() == PER_MINUTE;
  }

  /** Whether feed motions at any height have nothing more to report. */
  boolean cutsQuietly() {
    return cutAtRestReported || (modes.spindle() != Spindle.OFF && modes.speed() > 0);
  }

  /** F of a plain block: a feed per minute that gives no finding (mm/min). */
  void usualWord(double perMinute) {
    lostByUnit = false;
    modes.feedWord(perMinute);
  }

  private void unusual(int word, double feed) {
    if (!isUsual(feed)) {
      double most = machine.switches.rapids().maxFeed();
      report.add(
          Code.MD09,
          word,
          "feed "
              + machine.length(feed)
              + "/min, usual are 1 to "
              + Wording.number(most)
              + " mm/min",
          "looks like feed per " + (feed < 1 ? "revolution" : "minute of another unit"),
          "check F and G94/G95");
    }
  }

  void speedWord() {
    int word = words.word('S');
    if (word < 0) {
      return;
    }
    double value = words.block().value(word);
    if (value < 0) {
      report.add(
          Code.WD11,
          word,
          words.block().text(word) + " is out of range 0 and up",
          "M4 turns the spindle the other way, not the sign",
          "correct it");
      return;
    }
    modes.speed(value);
  }

  void spindleStart() {
    int code = words.m(MCode.SPINDLE);
    if (code != 3 && code != 4) {
      return;
    }
    int word = words.mWord(MCode.SPINDLE);
    Spindle way = code == 3 ? Spindle.CLOCKWISE : Spindle.COUNTER_CLOCKWISE;
    if (modes.speed() == 0) {
      report.add(Code.MD13, word, "spindle started without speed", "it would not turn", "add S");
    }
    if (modes.spindle() != Spindle.OFF && modes.spindle() != way) {
      report.add(Code.MD16, word, "spindle reversed without stop", "", "write M5 first");
    }
    modes.spindle(way);
    cutAtRestReported = false;
  }

  void coolantOn() {
    if (words.mist()) {
      modes.mist(true);
    }
    if (words.flood()) {
      modes.flood(true);
    }
  }

  /** M5, M19 and M9 act after the motion of their block. */
  void after(boolean fed) {
    int code = words.m(MCode.SPINDLE);
    if (code == 5 || code == 19) {
      if (fed && code == 5) {
        afterMotion(words.mWord(MCode.SPINDLE), "M5");
      }
      stopSpindle();
    }
    if (words.coolantOff() >= 0) {
      if (fed) {
        afterMotion(words.coolantOff(), "M9");
      }
      modes.mist(false);
      modes.flood(false);
    }
  }

  private void afterMotion(int word, String function) {
    report.add(
        Code.MD12,
        word,
        function + " acts after the motion here",
        "some controls act before it",
        "put it in its own block");
  }

  void stopSpindle() {
    modes.spindle(Spindle.OFF);
    cutAtRestReported = false;
  }

  /** Whether a feed motion may run; reports MD01, MD03, MD04. */
  boolean ready() {
    return isReady() || ready("G" + modes.motion());
  }

  /** Whether there is nothing to look at, as in most blocks. */
  private boolean isReady() {
    return isPerMinute() && !Double.isNaN(modes.feedWord()) && !report.stopped();
  }

  /** The same for a function named so. */
  boolean ready(String function) {
    if (modes.feedMode() == INVERSE_TIME && !words.has('F')) {
      report.add(
          Code.MD03,
          -1,
          "G93 needs F in every block",
          "the block would have no time",
          "add F, or G94");
    } else if (Double.isNaN(modes.feedWord())) {
      report.add(
          Code.MD01,
          -1,
          "no feed has been given" + (lostByUnit ? " since the unit changed" : ""),
          function + " needs F",
          "add F");
    } else if (modes.feedMode() == PER_REVOLUTION
        && (modes.spindle() == Spindle.OFF || modes.speed() == 0)) {
      report.add(
          Code.MD04,
          -1,
          "feed per revolution, spindle at rest",
          "the axes would not move",
          "start the spindle, or G94");
    }
    return !report.stopped();
  }

  /**
   * Feed along the path (mm/min) of a block that {@link #ready} allowed.
   *
   * @param path length of the path (mm)
   * @param inPlane length of its projection on the plane (mm)
   */
  double alongPath(double path, double inPlane) {
    double word = modes.feedWord();
    double feed =
        switch (modes.feedMode()) {
          case PER_REVOLUTION -> word * modes.speed();
          case INVERSE_TIME -> word * path;
          default -> word;
        };
    boolean projected = machine.switches.arcs().inPlaneFeed() && inPlane > 0;
    effective = projected && modes.feedMode() != INVERSE_TIME ? feed * path / inPlane : feed;
    return effective;
  }

  /** Feed that a state shows during a move without feed (mm/min); 0 when none has been given. */
  double standing() {
    double word = modes.feedWord();
    if (Double.isNaN(word)) {
      return 0;
    }
    return modes.feedMode() == PER_MINUTE ? word : effective;
  }

  /** HZ04 for a feed motion below the top with the spindle stopped. */
  void cutting(double lowest) {
    boolean turning = modes.spindle() != Spindle.OFF && modes.speed() > 0;
    if (turning || cutAtRestReported || lowest >= machine.surfaces.top()) {
      return;
    }
    cutAtRestReported = true;
    report.add(
        Code.HZ04, -1, "cutting with the spindle stopped", "the tool breaks", "M3 S… before");
  }
}
