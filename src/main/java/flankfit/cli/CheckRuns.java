package flankfit.cli;

import flankfit.metal.MetalProgress;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;

/** Checks many programs, several at a time; their order is kept, and none stops the others. */
final class CheckRuns {
  private CheckRuns() {}

  /**
   * Checks all.
   *
   * @param check checks one, and tells how far it is; may be asked from several threads at once
   * @param progress told how far it has come
   */
  static List<CheckedProgram> of(
      List<Path> programs,
      BiFunction<Path, MetalProgress, CheckedProgram> check,
      MetalProgress progress) {
    SharedProgress all = new SharedProgress(programs.size(), progress);
    return programs.parallelStream()
        .map(
            program -> {
              SharedProgress.Piece piece = all.piece();
              CheckedProgram checked = one(program, check, piece);
              piece.goOn(1);
              return checked;
            })
        .toList();
  }

  private static CheckedProgram one(
      Path program, BiFunction<Path, MetalProgress, CheckedProgram> check, MetalProgress progress) {
    try {
      return check.apply(program, progress);
    } catch (RuntimeException | StackOverflowError e) {
      // Told with the program, and by the exit status: the others are still to be checked.
      return CheckedProgram.failed(program, e);
    }
  }
}
