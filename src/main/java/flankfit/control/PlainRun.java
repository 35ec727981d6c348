package flankfit.control;

import flankfit.finding.Code;
import flankfit.motion.ModalState;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.MoveKind;
import flankfit.motion.TapeBuilder;
import flankfit.nc.Block;
import flankfit.nc.BlockReader;
import flankfit.nc.PlainBlock;

/**
 * Executes runs of plain straight moves without sorting their words: the bulk of every surfacing
 * program. A block in which anything is to be told or decided is left, untouched, to {@link
 * BlockExecutor}, so that every rule stands in one place; what is done here that does alike.
 */
final class PlainRun {
  private final Machine machine;
  private final Modes modes;
  private final Dimensions dimensions;
  private final FeedAndSpindle feed;
  private final Mover mover;
  private final IncrementalRun run;
  private final TapeBuilder tape;
  private final PlainBlock plain = new PlainBlock();
  private final int blockLimit;
  private final double[] target = new double[3];
  private boolean listsFiner;
  private int finer;
  private int finerHere;
  private double toMillimetres;
  private double perUnit;
  private double targetX;
  private double targetY;
  private double targetZ;

  /** Whether the last block was a line after which coordinates alone make another one. */
  private boolean goesOn;

  private ModalState state;

  PlainRun(Machine machine, FeedAndSpindle feed, Mover mover, IncrementalRun run) {
    this.machine = machine;
    this.feed = feed;
    this.mover = mover;
    this.run = run;
    modes = machine.modes;
    dimensions = machine.dimensions;
    tape = machine.tape;
    blockLimit = machine.switches.flow().blockLimit();
    state = ModalState.initial(modes.unit());
  }

  /** Whether the modes are those in which a plain block is no more than a straight move. */
  boolean mayRun() {
    boolean known = !machine.assumed[0] && !machine.assumed[1] && !machine.assumed[2];
    return modes.motion() <= 1
        && known
        && machine.cycle.isQuiet()
        && !machine.compensation.active()
        && !machine.frame.transforms().isOn()
        && !machine.switches.reading().roundToLeastIncrement()
        && feed.isPerMinute()
        && feed.cutsQuietly();
  }

  /**
   * Executes the plain blocks that come next.
   *
   * @param reader stands before a block, and afterwards before the first that is not executed
   * @param block takes the place of each block executed
   * @param most blocks to execute at most
   */
  void run(BlockReader reader, Block block, int most) {
    int last = (int) Math.min(blockLimit, (long) machine.blockNumber + most);
    begin();
    try {
      blocks(reader, block, last);
    } finally {
      machine.report.counted(Code.RD13, finer);
    }
  }

  private void blocks(BlockReader reader, Block block, int last) {
    boolean begun = false;
    while (machine.blockNumber < last && reader.isPlain(plain)) {
      boolean further = goesOn && plain.isCoordinates();
      if (!(further ? isNear() : isAllowed())) {
        break;
      }
      if (!begun) {
        block.beginLike(plain);
        machine.report.begin(block);
        begun = true;
      }
      reader.take(plain);
      block.moveTo(plain);
      if (further) {
        goOn();
      } else {
        execute();
      }
    }
  }

  private void begin() {
    listsFiner = !machine.report.onlyCounts(Code.RD13);
    finer = 0;
    goesOn = false;
    toMillimetres = modes.unit().toMillimetres(1);
    perUnit = dimensions.perUnit();
  }

  /** Works out where the axis words lead; false when a number is to be told of. */
  private boolean isNear() {
    double[] tip = machine.tip;
    Frame frame = machine.frame;
    boolean absolute = modes.absolute();
    int fine = 0;
    double x = 0;
    double y = 0;
    double z = 0;
    if (plain.has(0)) {
      x = plain.x() * toMillimetres;
      fine += plain.isFine(0) && Dimensions.isFiner(plain.x(), perUnit) ? 1 : 0;
      targetX = x + (absolute ? frame.zero(0) : tip[0]);
    } else {
      targetX = tip[0];
    }
    if (plain.has(1)) {
      y = plain.y() * toMillimetres;
      fine += plain.isFine(1) && Dimensions.isFiner(plain.y(), perUnit) ? 1 : 0;
      targetY = y + (absolute ? frame.zero(1) : tip[1]);
    } else {
      targetY = tip[1];
    }
    if (plain.has(2)) {
      z = plain.z() * toMillimetres;
      fine += plain.isFine(2) && Dimensions.isFiner(plain.z(), perUnit) ? 1 : 0;
      targetZ = z + (absolute ? frame.zero(2) : tip[2]);
    } else {
      targetZ = tip[2];
    }
    if (Dimensions.isTooLarge(x) || Dimensions.isTooLarge(y) || Dimensions.isTooLarge(z)) {
      return false;
    }
    finerHere = fine;
    return fine == 0 || !listsFiner;
  }

  /** One more line by coordinates alone, in the modes of the line before it. */
  private void goOn() {
    machine.blockNumber++;
    finer += finerHere;
    if (!mover.isStill(targetX, targetY, targetZ)) {
      tape.straight(
          MoveKind.LINE, targetX, targetY, targetZ, plain.line(), machine.blockNumber, state);
    }
    machine.tip[0] = targetX;
    machine.tip[1] = targetY;
    machine.tip[2] = targetZ;
  }

  /** Whether a block has nothing to tell; works out where it leads. */
  private boolean isAllowed() {
    if (!isNear()) {
      return false;
    }
    if (plain.hasFeed()) {
      double rate = modes.unit().toMillimetres(plain.feed());
      return plain.feed() > 0 && (rate == modes.feedWord() || feed.isUsual(rate));
    }
    return !plain.hasAxis() || motion() == 0 || !Double.isNaN(modes.feedWord());
  }

  private int motion() {
    return plain.motion() >= 0 ? plain.motion() : modes.motion();
  }

  private void execute() {
    machine.blockNumber++;
    if (plain.hasFeed()) {
      feed.usualWord(modes.unit().toMillimetres(plain.feed()));
    }
    if (plain.motion() >= 0) {
      modes.motion(plain.motion());
    }
    finer += finerHere;
    goesOn = false;
    if (plain.hasAxis()) {
      move();
    }
  }

  private void move() {
    double x = machine.tip[0];
    double y = machine.tip[1];
    double z = machine.tip[2];
    target[0] = targetX;
    target[1] = targetY;
    target[2] = targetZ;
    int moves = tape.size();
    if (modes.motion() == 0) {
      mover.rapid(target);
    } else {
      mover.line(target);
      goesOn = modes.absolute() && tape.size() > moves;
      state = modes.show(modes.feedWord(), Compensation.OFF);
    }
    if (!modes.absolute()) {
      run.moved(x, y, z);
    }
  }
}
