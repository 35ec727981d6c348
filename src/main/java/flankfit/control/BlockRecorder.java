package flankfit.control;

import flankfit.control.BlockTrace.Outcome;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.nc.Block;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Tells an observer what each block did; does nothing without one. A block waits here until radius
 * compensation holds none of its moves back. Compensation itself keeps as many blocks, so a program
 * of any length is told in little memory; a second run would know the findings of a block no
 * better, and take twice as long.
 */
final class BlockRecorder {
  private static final Place NOWHERE = Place.file("");

  private final Optional<BlockObserver> observer;
  private final Machine machine;
  private final BlockExecutor executor;
  private final Findings findings;
  private final ArrayDeque<Waiting> queue = new ArrayDeque<>();
  private final Map<Line, List<Finding>> readAhead = new HashMap<>();
  private ControlState last;
  private Place place = NOWHERE;
  private String text = "";
  private List<WordTrace> words = List.of();
  private int level;
  private Point from = Point.ZERO;
  private int numberBefore;
  private int told;
  private int moves;

  /** Where findings of reading wait until the line is executed. */
  private record Line(String file, int number) {
    static Line of(Place place) {
      return new Line(place.file(), place.line());
    }
  }

  /** A block of which not all moves are known yet. */
  private record Waiting(
      Outcome outcome,
      int number,
      int lastNumber,
      Place place,
      String text,
      int level,
      List<WordTrace> words,
      List<FlowStep> steps,
      ControlState before,
      ControlState after,
      ToldWay way,
      List<Finding> findings) {}

  BlockRecorder(
      Optional<BlockObserver> observer,
      Machine machine,
      BlockExecutor executor,
      Findings findings) {
    this.observer = observer;
    this.machine = machine;
    this.executor = executor;
    this.findings = findings;
    last = executor.state();
    observer.ifPresent(o -> o.begins(last));
  }

  private boolean isOff() {
    return observer.isEmpty();
  }

  /**
   * A block is about to be executed or passed over.
   *
   * @param depth how many calls deep it stands
   */
  void begin(int depth) {
    if (isOff()) {
      return;
    }
    machine.log.clear();
    level = depth;
    from = tip();
    numberBefore = machine.blockNumber;
  }

  /** A block was executed; what it asks for elsewhere is still to be done. */
  void executed(Block block) {
    if (isOff()) {
      return;
    }
    stand(block);
    words = executor.understood(block);
  }

  private void stand(Block block) {
    place = block.place();
    text = block.text();
  }

  /** All of a block is done. */
  void end() {
    if (isOff()) {
      return;
    }
    ControlState before = last;
    last = executor.state();
    add(
        machine.report.stopped() ? Outcome.STOPPED : Outcome.EXECUTED,
        machine.blockNumber > numberBefore ? machine.blockNumber : 0,
        words,
        List.copyOf(machine.log.steps()),
        before);
    release(machine.compensation.heldFrom());
  }

  /** A block is passed over. */
  void passedOver(Block block, Outcome outcome) {
    if (isOff()) {
      return;
    }
    stand(block);
    from = tip();
    add(outcome, 0, List.of(), List.of(), last);
    release(machine.compensation.heldFrom());
  }

  private void add(
      Outcome outcome,
      int number,
      List<WordTrace> itsWords,
      List<FlowStep> steps,
      ControlState before) {
    List<Finding> its = new ArrayList<>();
    List<Finding> early = readAhead.remove(Line.of(place));
    if (early != null) {
      its.addAll(early);
    }
    for (Finding finding : fresh()) {
      owner(finding, its).add(finding);
    }
    queue.add(
        new Waiting(
            outcome,
            number,
            machine.blockNumber,
            place,
            text,
            level,
            itsWords,
            steps,
            before,
            last,
            new ToldWay(from, tip(), machine.frame.told()),
            its));
  }

  private Point tip() {
    return new Point(machine.tip[0], machine.tip[1], machine.tip[2]);
  }

  private List<Finding> fresh() {
    List<Finding> fresh = findings.listedSince(told);
    told += fresh.size();
    return fresh;
  }

  /** The list of the waiting block that a finding points at; that of the present one otherwise. */
  private List<Finding> owner(Finding finding, List<Finding> present) {
    Line line = Line.of(finding.place());
    if (!line.equals(Line.of(place))) {
      for (Waiting waiting : queue) {
        if (line.equals(Line.of(waiting.place))) {
          return waiting.findings;
        }
      }
    }
    return present;
  }

  /** Text was read that is executed later, if at all. */
  void readAhead() {
    if (isOff()) {
      return;
    }
    for (Finding finding : fresh()) {
      readAhead.computeIfAbsent(Line.of(finding.place()), line -> new ArrayList<>()).add(finding);
    }
  }

  /** Nothing is held back any more. */
  void release() {
    release(Integer.MAX_VALUE);
  }

  private void release(int held) {
    while (!queue.isEmpty() && queue.peek().lastNumber < held) {
      tell(queue.remove());
    }
  }

  private void tell(Waiting block) {
    int from = moves;
    while (moves < machine.tape.size() && machine.tape.block(moves) <= block.lastNumber) {
      moves++;
    }
    Tape part = machine.tape.part(from, moves);
    observer.ifPresent(
        o ->
            o.block(
                new BlockTrace(
                    block.outcome,
                    block.number,
                    block.place,
                    block.text,
                    block.level,
                    block.words,
                    block.steps,
                    block.before,
                    block.after,
                    block.way,
                    part,
                    block.findings)));
  }

  /** No more blocks come. */
  void finish() {
    if (isOff()) {
      return;
    }
    release();
    List<Finding> others = new ArrayList<>();
    readAhead.values().forEach(others::addAll);
    others.addAll(fresh());
    others.sort(Comparator.comparing(Finding::place).thenComparing(Finding::code));
    observer.ifPresent(o -> o.ends(List.copyOf(others)));
  }
}
