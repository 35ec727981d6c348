package flankfit.control;

import flankfit.finding.Code;
import flankfit.motion.ModalState.Spindle;
import flankfit.nc.Block;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.BoreShift;
import flankfit.setup.Tool;
import java.util.Optional;

/** Reads the words of a cycle block and says what is missing or wrong: CY01 to CY09. */
final class CycleWords {
  private static final double NEAR = 1e-9;
  private static final int MOST_PECKS = 1000;
  private static final int MOST_REPEATS = 9999;
  private static final double FEED_WITHIN = 1e-3;

  private final Machine machine;
  private final BlockWords words;
  private final Modes modes;
  private final Report report;
  private final CycleState state;
  private final ControlSwitches.Cycles switches;
  private final FeedAndSpindle feed;
  private final Dwell dwell;
  private double reportedFeed = Double.NaN;

  CycleWords(Machine machine, FeedAndSpindle feed, Dwell dwell) {
    this.machine = machine;
    this.words = machine.words;
    this.modes = machine.modes;
    this.report = machine.report;
    this.state = machine.cycle;
    this.switches = machine.switches.cycles();
    this.feed = feed;
    this.dwell = dwell;
  }

  /** Puts the words of the block into the state of the run. */
  void read(CycleKind kind, double initial) {
    boolean distance = !modes.absolute();
    int n = modes.plane().n();
    if (words.has('R')) {
      double level = length(words.word('R'));
      state.clearance(distance ? initial + level : level);
    }
    if (words.axis(n) >= 0) {
      state.depth(length(words.axis(n)), distance);
    }
    if (kind.reads('Q') && words.has('Q')) {
      state.peck(length(words.word('Q')));
    }
    boolean othersP = words.g(GCode.WORK_OFFSET) == 541 || words.g(GCode.ONE_BLOCK) == 40;
    if (kind.reads('P') && words.has('P') && !othersP) {
      state.seconds(dwell.seconds('P'));
    }
    if (kind == CycleKind.G87 && switches.backBoreFromDepth() && words.has('K')) {
      state.top(length(words.word('K')), distance);
    }
    if (kind.isShifting()) {
      shift(n);
    }
  }

  private double length(int word) {
    return machine.dimensions.millimetres(words.block(), word);
  }

  /** I J, or Q along the switch. */
  private void shift(int n) {
    boolean byI = words.has('I') && n != 0;
    boolean byJ = words.has('J') && n != 1;
    if (byI || byJ) {
      state.shift(byI ? length(words.word('I')) : 0, byJ ? length(words.word('J')) : 0);
      return;
    }
    BoreShift way = switches.boreShift();
    if (words.has('Q') && state.peck() > 0 && way.axis() != n) {
      double by = way.sign() * state.peck();
      state.shift(way.axis() == 0 ? by : 0, way.axis() == 1 ? by : 0);
    }
  }

  /** How often the block makes its hole. */
  int repeats(CycleKind kind) {
    boolean topByK = kind == CycleKind.G87 && switches.backBoreFromDepth();
    int k = switches.repeat().reads('K') && !topByK ? words.word('K') : -1;
    int l = switches.repeat().reads('L') ? words.word('L') : -1;
    if (k >= 0 && l >= 0) {
      report.add(Code.CY07, l, "K and L both count repeats", "", "keep one");
      return 0;
    }
    int word = Math.max(k, l);
    if (word < 0) {
      return 1;
    }
    if (!words.whole(word)) {
      return 0;
    }
    double count = Math.rint(words.block().value(word));
    if (count < 0 || count > MOST_REPEATS) {
      report.add(
          Code.WD11,
          word,
          words.block().text(word) + " is out of range 0 to " + MOST_REPEATS,
          "it counts the holes of the block",
          "correct it");
      return 0;
    }
    return (int) count;
  }

  /** Whether a hole can be made with what is known; reports why not. */
  boolean complete(CycleKind kind) {
    levels(kind);
    if (!report.stopped()) {
      pecks(kind);
    }
    if (!report.stopped() && kind.isShifting() && !state.isShiftStated()) {
      report.add(
          Code.CY06,
          -1,
          kind + " without Q or I J",
          "the tool would drag out along the bore",
          "add Q, or I J, in the plane of the bore");
    }
    if (!report.stopped() && kind.isTapping()) {
      tapping(kind);
    }
    if (!report.stopped() && feed.ready(kind.toString()) && kind.isTapping()) {
      tappingFeed();
    }
    return !report.stopped();
  }

  private boolean rises(CycleKind kind) {
    return kind == CycleKind.G87 && !switches.backBoreFromDepth();
  }

  private void levels(CycleKind kind) {
    double depth = state.depth();
    double clearance = state.clearance();
    boolean topNeeded = kind == CycleKind.G87 && switches.backBoreFromDepth();
    if (Double.isNaN(clearance)) {
      missing(kind, "R");
    } else if (Double.isNaN(depth)) {
      missing(kind, String.valueOf((char) ('X' + modes.plane().n())));
    } else if (topNeeded && Double.isNaN(state.top())) {
      missing(kind, "K");
    } else if (rises(kind)) {
      if (depth <= clearance + NEAR) {
        order("depth " + level(depth) + " is not above R " + level(clearance));
      }
    } else if (depth >= clearance - NEAR) {
      order("depth " + level(depth) + " is not below R " + level(clearance));
    } else if (topNeeded && state.top() <= depth + NEAR) {
      order("K " + level(state.top()) + " is not above depth " + level(depth));
    }
  }

  private void missing(CycleKind kind, String letter) {
    boolean depth = letter.charAt(0) >= 'X';
    report.add(Code.CY01, -1, kind + " without " + (depth ? "depth" : letter), "", "add " + letter);
  }

  private String level(double coordinate) {
    return machine.coordinate(coordinate);
  }

  private void order(String what) {
    int word = words.axis(modes.plane().n());
    report.add(
        Code.CY02,
        word >= 0 ? word : words.word('R'),
        what,
        modes.absolute() ? "" : "in G91 the depth counts from R",
        "correct it");
  }

  private void pecks(CycleKind kind) {
    if (!kind.isPecking()) {
      return;
    }
    double peck = state.peck();
    int word = words.word('Q');
    if (!(peck > 0)) {
      report.add(Code.CY03, word, kind + " needs Q > 0", "", word >= 0 ? "correct Q" : "add Q");
    } else if ((state.clearance() - state.depth()) / peck > MOST_PECKS) {
      report.addAndStop(
          Code.CY04,
          word,
          "peck " + machine.length(peck) + " makes more than " + MOST_PECKS + " pecks",
          "endless",
          "larger Q");
    } else {
      double back = kind == CycleKind.G83 ? switches.peckClearance() : switches.chipBreakRetract();
      if (word >= 0 && peck <= back) {
        report.add(
            Code.CY04,
            word,
            "peck " + machine.length(peck) + " is not above the retract " + machine.length(back),
            "less than the clearance",
            "larger Q");
      }
    }
  }

  private void tapping(CycleKind kind) {
    boolean left = kind == CycleKind.G74;
    Spindle needed = left ? Spindle.COUNTER_CLOCKWISE : Spindle.CLOCKWISE;
    if (modes.spindle() != needed || modes.speed() == 0) {
      report.add(
          Code.CY08,
          words.gWord(GCode.MOTION),
          kind + " needs the spindle " + (left ? "anticlockwise" : "clockwise"),
          "",
          "M" + (left ? 4 : 3) + (modes.speed() == 0 ? " and S" : "") + " before");
    }
  }

  private void tappingFeed() {
    Optional<Double> pitch =
        machine
            .setup
            .tool(modes.tool())
            .filter(tool -> tool.kind() == Tool.Kind.TAP)
            .flatMap(Tool::teeth)
            .flatMap(Tool.Teeth::pitch);
    double now = feed.alongPath(0, 0);
    if (pitch.isEmpty() || now == reportedFeed) {
      return;
    }
    double right = modes.speed() * pitch.get();
    if (Math.abs(now - right) > FEED_WITHIN * right) {
      reportedFeed = now;
      report.add(
          Code.CY09,
          words.word('F'),
          "feed "
              + machine.length(now)
              + "/min is not S × pitch = "
              + machine.length(right)
              + "/min",
          "the tap breaks",
          "write F" + Wording.number(inWords(right)));
    }
  }

  /** The feed as F says it in the feed mode in force. */
  private double inWords(double perMinute) {
    double feedWord = modes.feedMode() == 950 ? perMinute / modes.speed() : perMinute;
    return modes.unit().fromMillimetres(feedWord);
  }

  /** CY05 for a block that names a cycle and makes no hole. */
  void noHole() {
    Block block = words.block();
    int word = words.gWord(GCode.MOTION);
    report.add(
        Code.CY05,
        word,
        "no hole made by " + block.text(word),
        "no X Y Z R word",
        "add the position");
  }
}
