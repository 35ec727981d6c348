package flankfit.control;

import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;

/** Interprets a whole program. */
public final class Interpreter {
  private Interpreter() {}

  /**
   * Reads and executes the main program of a file, once.
   *
   * @param program text of the program
   * @param setup what the program does not say
   * @return tape and findings; never fails on any text
   */
  public static Interpretation interpret(SourceText program, SetupSheet setup) {
    return new ProgramRun(program, setup).run();
  }
}
