package flankfit.control;

import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.Optional;

/** Interprets a whole program. */
public final class Interpreter {
  private Interpreter() {}

  /**
   * Reads and executes the main program of a file, once; where its end keeps the state, once more
   * to compare.
   *
   * @param program text of the program
   * @param setup what the program does not say
   * @return tape and findings; never fails on any text
   */
  public static Interpretation interpret(SourceText program, SetupSheet setup) {
    return interpret(program, setup, List.of());
  }

  /**
   * Reads and executes the main program of a file, once; where its end keeps the state, once more
   * to compare.
   *
   * @param program text of the program
   * @param setup what the program does not say
   * @param subprograms texts of the files where called programs are looked up after the first
   * @return tape and findings; never fails on any text
   */
  public static Interpretation interpret(
      SourceText program, SetupSheet setup, List<SourceText> subprograms) {
    InterpreterRun run = start(program, setup, subprograms);
    run.advanceToEnd();
    return run.result().orElseThrow();
  }

  /**
   * The same of this run alone, for replays: no second run compares, and no defaults are tried.
   *
   * @param program text of the program
   * @param setup what the program does not say
   * @param subprograms texts of the files where called programs are looked up after the first
   * @return the same tape and stop as {@link #interpret}, in a fraction of its time
   */
  public static Interpretation replay(
      SourceText program, SetupSheet setup, List<SourceText> subprograms) {
    ProgramRun run = new ProgramRun(program, setup, subprograms, Optional.empty(), false, true);
    run.advanceToEnd();
    return run.resultAlone();
  }

  /**
   * The same findings but for the defaults that mattered ({@code AS07}): no switch is tried
   * otherwise. For many programs, of which a person reads what is wrong.
   *
   * @param program text of the program
   * @param setup what the program does not say
   * @param subprograms texts of the files where called programs are looked up after the first
   */
  public static Interpretation interpretUntried(
      SourceText program, SetupSheet setup, List<SourceText> subprograms) {
    ProgramRun run = new ProgramRun(program, setup, subprograms, Optional.empty(), false, true);
    run.advanceToEnd();
    return run.resultUntried();
  }

  /**
   * Interprets for the eyes of an observer only; as {@link #replay} otherwise.
   *
   * @param program text of the program
   * @param setup what the program does not say
   * @param subprograms texts of the files where called programs are looked up after the first
   * @param observer is told what each block did
   */
  public static void observe(
      SourceText program, SetupSheet setup, List<SourceText> subprograms, BlockObserver observer) {
    ProgramRun run =
        new ProgramRun(program, setup, subprograms, Optional.of(observer), false, false);
    run.advanceToEnd();
    run.resultAlone();
  }

  /**
   * Interprets block by block before the eyes of an observer. It takes longer and changes nothing.
   *
   * @param program text of the program
   * @param setup what the program does not say
   * @param subprograms texts of the files where called programs are looked up after the first
   * @param observer is told what each block did
   */
  public static Interpretation interpret(
      SourceText program, SetupSheet setup, List<SourceText> subprograms, BlockObserver observer) {
    ProgramRun run =
        new ProgramRun(program, setup, subprograms, Optional.of(observer), false, false);
    run.advanceToEnd();
    return run.result();
  }

  /**
   * Begins to read and execute the main program of a file, once. The first moves are there before
   * the file has been read through.
   *
   * @param program text of the program
   * @param setup what the program does not say
   * @param subprograms texts of the files where called programs are looked up after the first
   * @return a run that has executed nothing yet; never fails on any text
   */
  public static InterpreterRun start(
      SourceText program, SetupSheet setup, List<SourceText> subprograms) {
    return new InterpreterRun(program, setup, subprograms);
  }
}
