package flankfit.control;

import java.util.Optional;

/**
 * Runs passes of a loop of computed points and assignments at one go: the bulk of a program that
 * reckons its own path. As soon as anything is to be told or decided, the block in question is left
 * to {@link Walk}, so that every rule stands in one place; what is done here that does alike.
 */
final class LoopRun {
  private final Machine machine;
  private final BlockExecutor executor;
  private final Flow flow;
  private final int blockLimit;
  private final int loopLimit;

  LoopRun(Machine machine, BlockExecutor executor) {
    this.machine = machine;
    this.executor = executor;
    flow = executor.flow();
    blockLimit = machine.switches.flow().blockLimit();
    loopLimit = machine.switches.flow().loopLimit();
  }

  /**
   * Runs passes from the beginning of a loop that END has led back to.
   *
   * @param file the text, standing before the loop's WHILE; afterwards before the block that is to
   *     be executed next
   * @param level how many calls deep
   * @param left blocks to execute at most
   * @return whether that is the loop's WHILE, reached from its END
   */
  boolean run(ProgramFile file, Loop loop, int level, int left) {
    Optional<LoopBody> found = executor.mayRunPlain() ? file.body(loop) : Optional.empty();
    if (found.isEmpty()) {
      return true;
    }
    LoopBody body = found.get();
    // The pass that meets a limit is left to Walk, which tells of it.
    int blocks = Math.min(left, blockLimit - machine.blockNumber);
    int toLoopLimit = loopLimit - 1 - loop.passes().of(level);
    int most = Math.min(blocks / body.size(), toLoopLimit);
    for (int pass = 0; pass < most && holds(body); pass++) {
      machine.blockNumber++;
      loop.passes().count(level, true);
      for (int i = 0; i < body.entries().size(); i++) {
        LoopBody.Entry entry = body.entries().get(i);
        if (!execute(entry)) {
          file.goTo(entry.at());
          return false;
        }
      }
      machine.blockNumber++;
    }
    return true;
  }

  private boolean holds(LoopBody body) {
    double value = flow.quick(body.condition());
    return !Double.isNaN(value) && value != 0;
  }

  /** Executes a block; false when it is left to others. */
  private boolean execute(LoopBody.Entry entry) {
    machine.blockNumber++;
    boolean done = entry.isPoint() ? point(entry) : assigned(entry);
    machine.blockNumber -= done ? 0 : 1;
    return done;
  }

  private boolean point(LoopBody.Entry entry) {
    machine.report.begin(entry.block());
    return executor.plain().computed(entry.block(), flow);
  }

  private boolean assigned(LoopBody.Entry entry) {
    double value = flow.quick(entry.value());
    if (Double.isNaN(value)) {
      return false;
    }
    flow.variables().set(entry.variable(), value);
    return true;
  }
}
