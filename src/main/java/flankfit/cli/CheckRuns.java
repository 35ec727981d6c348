package flankfit.cli;

import flankfit.metal.MetalProgress;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/** Checks many programs, several at a time; their order is kept, and none stops the others. */
final class CheckRuns {
  private CheckRuns() {}

  /**
   * Checks all.
   *
   * @param check checks one; may be asked from several threads at once
   * @param progress told how far it has come
   */
  static List<CheckedProgram> of(
      List<Path> programs, Function<Path, CheckedProgram> check, MetalProgress progress) {
    AtomicInteger done = new AtomicInteger();
    return programs.parallelStream()
        .map(
            program -> {
              CheckedProgram checked = one(program, check);
              progress.goOn((double) done.incrementAndGet() / programs.size());
              return checked;
            })
        .toList();
  }

  private static CheckedProgram one(Path program, Function<Path, CheckedProgram> check) {
    try {
      return check.apply(program);
    } catch (RuntimeException | StackOverflowError e) {
      // Told with the program, and by the exit status: the others are still to be checked.
      return CheckedProgram.failed(program, e);
    }
  }
}
