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
      if (!isAllowed()) {
        break;
      }
      if (!begun) {
        block.beginLike(plain);
        machine.report.begin(block);
        begun = true;
      }
      reader.take(plain);
      block.moveTo(plain);
      execute();
      if (goesOn) {
        lines(reader, block, last);
      }
    }
  }

  /**
   * Goes on with lines by absolute coordinates alone, in the modes of the line before them. What
   * cannot change between them is looked up once.
   */
  private void lines(BlockReader reader, Block block, int last) {
    double zeroX = machine.frame.zero(0);
    double zeroY = machine.frame.zero(1);
    double zeroZ = machine.frame.zero(2);
    double unit = toMillimetres;
    double x = machine.tip[0];
    double y = machine.tip[1];
    double z = machine.tip[2];
    try {
      while (machine.blockNumber < last && reader.isPlain(plain) && plain.isCoordinates()) {
        double toX = plain.has(0) ? plain.x() * unit : 0;
        double toY = plain.has(1) ? plain.y() * unit : 0;
        double toZ = plain.has(2) ? plain.z() * unit : 0;
        int fine = plain.isFine() ? fine() : 0;
        boolean told = fine > 0 && listsFiner;
        if (told || Dimensions.isTooLarge(toX, toY, toZ)) {
          break;
        }
        reader.take(plain);
        block.moveTo(plain);
        machine.blockNumber++;
        finer += fine;
        toX = plain.has(0) ? toX + zeroX : x;
        toY = plain.has(1) ? toY + zeroY : y;
        toZ = plain.has(2) ? toZ + zeroZ : z;
        if (!Mover.isStill(toX - x, toY - y, toZ - z)) {
          tape.straight(MoveKind.LINE, toX, toY, toZ, plain.line(), machine.blockNumber, state);
        }
        x = toX;
        y = toY;
        z = toZ;
      }
    } finally {
      machine.tip[0] = x;
      machine.tip[1] = y;
      machine.tip[2] = z;
      goesOn = false;
    }
  }

  /**
   * Executes a block whose words are nothing but computed coordinates, if nothing is to be told or
   * decided.
   *
   * @param block has been begun in the report and counted
   * @return whether it was executed; if not, nothing was done
   */
  boolean computed(Block block, Flow flow) {
    if (!modes.absolute() || modes.motion() != 1 || Double.isNaN(modes.feedWord())) {
      return false;
    }
    System.arraycopy(machine.tip, 0, target, 0, target.length);
    double unit = modes.unit().toMillimetres(1);
    for (int word = 0; word < block.size(); word++) {
      double value = flow.quick(block.formula(word)) * unit;
      if (Double.isNaN(value) || Dimensions.isTooLarge(value)) {
        return false;
      }
      int axis = block.letter(word) - 'X';
      target[axis] = value + machine.frame.zero(axis);
    }
    mover.line(target);
    return true;
  }

  private void begin() {
    listsFiner = !machine.report.onlyCounts(Code.RD13);
    finer = 0;
    goesOn = false;
    toMillimetres = modes.unit().toMillimetres(1);
    perUnit = dimensions.perUnit();
    plain.coarse(dimensions.coarseDecimals());
  }

  /** Works out where the axis words lead; false when a number is to be told of. */
  private boolean isNear() {
    finerHere = plain.isFine() ? fine() : 0;
    boolean near = finerHere == 0 || !listsFiner;
    for (int axis = 0; axis < 3; axis++) {
      double from = machine.tip[axis];
      double word = plain.has(axis) ? plain.number(axis) * toMillimetres : 0;
      double zero = modes.absolute() ? machine.frame.zero(axis) : from;
      target[axis] = plain.has(axis) ? word + zero : from;
      near &= !Dimensions.isTooLarge(word);
    }
    return near;
  }

  /** How many of the numbers are finer than a least increment. */
  private int fine() {
    int count = 0;
    for (int axis = 0; axis < 3; axis++) {
      boolean fine = plain.isFine(axis) && Dimensions.isFiner(plain.number(axis), perUnit);
      count += fine ? 1 : 0;
    }
    return count;
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
