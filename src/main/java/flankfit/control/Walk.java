package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.nc.Block;
import flankfit.nc.Expression;
import flankfit.nc.Statement;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Executes blocks in the order of jumps, loops and calls, from the first block that asks for one.
 * Every loop, jump and call is counted, so that it ends.
 */
final class Walk {
  private final Machine machine;
  private final Report report;
  private final BlockExecutor executor;
  private final Flow flow;
  private final Calls calls;
  private final Library library;
  private final BlockRecorder recorder;
  private final FlowLog log;
  private final Deque<CallLevel> levels = new ArrayDeque<>();
  private final List<JumpSite> ledBack = new ArrayList<>();
  private final LoopRun loopRun;
  private final int loopLimit;
  private Optional<Loop> cameBack = Optional.empty();
  private ProgramFile file;
  private int left;
  private boolean over;

  Walk(Machine machine, BlockExecutor executor, Library library, BlockRecorder recorder) {
    this.machine = machine;
    this.executor = executor;
    this.library = library;
    this.recorder = recorder;
    log = machine.log;
    report = machine.report;
    flow = executor.flow();
    calls = executor.calls();
    loopRun = new LoopRun(machine, executor);
    loopLimit = machine.switches.flow().loopLimit();
    file = library.mainFile();
  }

  /**
   * Goes on from a block that was executed and asked for more than the next one.
   *
   * @param block the block
   * @param next where the block after it begins
   */
  void begin(Block block, Spot next) {
    file.goTo(next);
    act(block);
    recorder.end();
  }

  /** Whether nothing is left to execute. */
  boolean isOver() {
    return over || report.stopped();
  }

  /** The text where execution ended, to be read on from there. */
  ProgramFile file() {
    return file;
  }

  /**
   * Reads and executes one more block, and passes of a loop that it leads back to.
   *
   * @param most blocks to execute at most, 1 or more
   */
  void step(int most) {
    left = most - 1;
    if (!file.next()) {
      ends(new Place(file.source().file(), Math.max(1, file.source().lineCount()), 0, 0), "");
      return;
    }
    Block block = file.block();
    if (block.programNumber() >= 0 && !program().begin().is(block)) {
      ends(block.programPlace(), "O" + block.programNumber());
      return;
    }
    recorder.begin(levels.size());
    if (block.deleted()) {
      recorder.passedOver(block, BlockTrace.Outcome.DELETED);
      return;
    }
    executor.execute(block);
    recorder.executed(block);
    if (executor.ended()) {
      over = true;
    } else if (flow.leave().asked() && !report.stopped()) {
      act(block);
    }
    recorder.end();
  }

  private ProgramIndex.Program program() {
    return levels.isEmpty() ? file.index().programs().get(0) : levels.peek().program();
  }

  /** The text of a program ends, or another program begins. */
  private void ends(Place place, String next) {
    over = true;
    if (levels.isEmpty()) {
      executor.runsOut(place);
      return;
    }
    report.add(
        Code.FL31,
        place,
        "O" + program().number() + " has no M99",
        next.isEmpty() ? "the text ends there" : "it runs on into " + next,
        "add M99");
  }

  private void act(Block block) {
    Leave leave = flow.leave();
    switch (leave.jump()) {
      case NONE -> calls(block, leave);
      case GOTO -> jump(block, leave.target());
      case ENTER -> enter(block);
      case SKIP -> {
        cameBack = Optional.empty();
        loop(block).ifPresent(this::leave);
      }
      case BACK -> {
        cameBack = loop(block);
        cameBack.ifPresent(this::back);
        cameBack = cameBack.filter(loop -> loopRun.run(file, loop, levels.size(), left));
      }
    }
  }

  private void leave(Loop loop) {
    file.goTo(loop.after());
    if (log.isOn()) {
      log.add(new FlowStep.LoopLeft(loop.number(), loop.after().line()));
    }
  }

  private void back(Loop loop) {
    file.goTo(loop.begin());
    if (log.isOn()) {
      log.add(new FlowStep.LoopBack(loop.number(), loop.begin().line()));
    }
  }

  private Optional<Loop> loop(Block block) {
    Optional<Loop> loop = file.index().loop(block);
    if (loop.isEmpty()) {
      Statement statement = block.statement().orElseThrow();
      boolean ends = statement.kind() == Statement.Kind.END;
      String begin = statement.kind() == Statement.Kind.WHILE ? "WHILE" : "DO";
      report.add(
          Code.FL08,
          block.place(),
          (ends ? "END " : begin + " ") + statement.loop() + " has no partner",
          "loops pair by number and do not cross",
          "add " + (ends ? "WHILE " : "END ") + statement.loop());
    }
    return loop;
  }

  private void enter(Block block) {
    Optional<Loop> found = loop(block);
    if (found.isEmpty()) {
      return;
    }
    Loop loop = found.get();
    boolean again = cameBack.isPresent() && cameBack.get().equals(loop);
    cameBack = Optional.empty();
    restart(loop.begin().offset(), loop.endOffset());
    int passes = loop.passes().count(levels.size(), again);
    if (log.isOn()) {
      log.add(new FlowStep.LoopPass(loop.number(), passes));
    }
    Optional<Expression> condition = block.statement().orElseThrow().condition();
    if (passes == loopLimit) {
      loop.before().take(condition, flow.variables());
    } else if (passes > loopLimit) {
      tooOften(block, loop.before(), condition, "no pass leaves the loop");
    }
  }

  private void tooOften(
      Block block, Snapshot before, Optional<Expression> condition, String otherwise) {
    report.add(
        Code.FL24,
        block.place(),
        "loop runs more than " + loopLimit + " times",
        before.unchanged(
            flow.variables(), condition.isPresent() ? "the condition goes on to hold" : otherwise),
        "check the condition");
  }

  private void jump(Block block, int sequence) {
    JumpSite site = file.jump(block);
    Optional<Spot> target = site.target(sequence);
    if (target.isEmpty()) {
      target = target(sequence, program(), block.offset(), block.place());
      target.ifPresent(spot -> site.leadsTo(sequence, spot));
    }
    if (target.isPresent()) {
      if (target.get().offset() <= block.offset()) {
        backward(block, site, target.get().offset());
      }
      file.goTo(target.get());
      if (log.isOn()) {
        log.add(new FlowStep.Jumped(sequence, target.get().line()));
      }
    }
  }

  /** Counts a jump back; jumps within the stretch that it repeats begin anew. */
  private void backward(Block block, JumpSite site, int target) {
    int level = levels.size();
    int count = site.backward().count(level, true);
    if (count == 1 && !ledBack.contains(site)) {
      ledBack.add(site);
    }
    restart(target, site.offset());
    Optional<Expression> condition = block.statement().orElseThrow().condition();
    if (count == loopLimit) {
      site.before().take(condition, flow.variables());
    } else if (count > loopLimit) {
      tooOften(block, site.before(), condition, "nothing stops the jump");
    }
  }

  /** Jumps within a stretch that is executed once more count anew. */
  private void restart(int from, int to) {
    for (JumpSite site : ledBack) {
      if (site.isWithin(file, from, to)) {
        site.backward().clear(levels.size());
      }
    }
  }

  private Optional<Spot> target(int sequence, ProgramIndex.Program program, int from, Place place) {
    Optional<Spot> target = program.target(sequence);
    if (target.isEmpty()) {
      boolean named = program.number() >= 0;
      report.add(
          Code.FL12,
          place,
          "N" + sequence + " not found",
          "searched " + (named ? "program O" + program.number() : "the program"),
          "add N" + sequence);
      return target;
    }
    if (program.count(sequence) > 1) {
      report.add(
          Code.FL13,
          place,
          "N" + sequence + " stands " + program.count(sequence) + " times",
          "the jump is ambiguous",
          "renumber");
      return Optional.empty();
    }
    Optional<Loop> entered = program.enteredFromOutside(from, target.get().offset());
    if (entered.isPresent()) {
      report.add(
          Code.FL10,
          place,
          "jump into the loop of line " + entered.get().begin().line(),
          "its start would be skipped",
          "jump before its WHILE or DO");
      return Optional.empty();
    }
    return target;
  }

  /** M98 or G65, then a modal call, then M99. */
  private void calls(Block block, Leave leave) {
    int shared = levels.isEmpty() ? 0 : levels.peek().locals();
    if (leave.callsModally()) {
      call(calls.modal().orElseThrow(), block, shared);
      if (leave.returns() && !report.stopped()) {
        levels.peek().thenReturns(leave.returnTarget());
      }
      if (leave.call().isPresent() && !report.stopped()) {
        call(leave.call().get(), block, shared); // runs first and returns to the modal one
      }
    } else if (leave.call().isPresent()) {
      call(leave.call().get(), block, shared);
    } else if (leave.returns()) {
      returns(leave.returnTarget(), block.place());
    }
  }

  private void call(Call call, Block block, int shared) {
    Optional<Library.Found> found = library.find(call.program(), call.place());
    if (found.isEmpty()) {
      return;
    }
    if (levels.size() == Calls.DEEPEST) {
      tooDeep(call);
      return;
    }
    int depth = levels.size() + 1;
    int locals = call.arguments().isPresent() ? depth : shared;
    boolean inMain = file == library.mainFile();
    boolean toMain = found.get().file() == library.mainFile();
    int outer = inMain ? block.line() : levels.peek().mainLine();
    CallLevel level =
        new CallLevel(
            found.get(),
            call,
            file.spot(),
            block.offset(),
            locals,
            toMain ? -1 : outer,
            machine.modes);
    levels.push(level);
    if (call.modal()) {
      calls.withinModal(true);
    }
    begin(level);
  }

  private void begin(CallLevel level) {
    level.call().arguments().ifPresent(a -> arguments(a, level.locals()));
    flow.variables().level(level.locals());
    ledBack.forEach(site -> site.backward().clear(levels.size()));
    file = level.file();
    file.goTo(level.program().begin());
    report.mainLine(level.mainLine());
    if (log.isOn()) {
      log.add(level.step());
    }
  }

  private void arguments(double[] values, int level) {
    System.arraycopy(values, 0, flow.variables().fresh(level), 0, values.length);
  }

  private void tooDeep(Call call) {
    List<String> chain = new ArrayList<>();
    chain.add("O" + call.program());
    levels.forEach(level -> chain.add("O" + level.program().number()));
    Collections.reverse(chain);
    report.add(
        Code.FL23,
        call.place(),
        "calls nested " + (levels.size() + 1) + " deep",
        String.join(", ", chain) + "; " + Calls.DEEPEST + " deep at most",
        "does one call itself?");
  }

  /** M99. */
  private void returns(int target, Place place) {
    if (levels.isEmpty()) {
      over = true;
      executor.returnsFromMain(place);
      return;
    }
    CallLevel done = levels.peek();
    changed(done, place);
    if (target < 0 && done.again()) {
      begin(done);
      return;
    }
    levels.pop();
    if (done.call().modal()) {
      calls.withinModal(false);
    }
    resume(done);
    if (target >= 0) {
      target(target, program(), done.callOffset(), place).ifPresent(file::goTo);
    }
    if (log.isOn() && !report.stopped()) {
      log.add(done.returned(target, file));
    }
    if (target < 0 && done.callerReturns()) {
      returns(done.callerTarget(), place);
    }
  }

  private void resume(CallLevel done) {
    boolean toMain = levels.isEmpty();
    file = toMain ? library.mainFile() : levels.peek().file();
    flow.variables().level(toMain ? 0 : levels.peek().locals());
    report.mainLine(toMain ? -1 : levels.peek().mainLine());
    file.goTo(done.back());
  }

  private void changed(CallLevel done, Place place) {
    List<String> changed = done.changed(machine.modes);
    if (!changed.isEmpty()) {
      report.add(
          Code.FL29,
          place,
          "O"
              + done.program().number()
              + " returns with "
              + String.join(", ", changed)
              + " changed",
          "the caller goes on in it",
          "restore it before M99");
    }
  }
}
