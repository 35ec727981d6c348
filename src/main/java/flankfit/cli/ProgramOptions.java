package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadGauging;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which program to read, and with which setup sheet. */
final class ProgramOptions {
  @Parameters(paramLabel = "PROGRAM", description = "the milling program")
  private Path program = Path.of("");

  @Option(
      names = "--setup",
      paramLabel = "FILE",
      description = {
        "the setup sheet; without it, PROGRAM with its ending replaced by .setup.toml is used"
            + " when it exists"
      })
  private Optional<Path> setup = Optional.empty();

  /** The program file. */
  Path file() {
    return program;
  }

  /** The files that are read. */
  Path[] inputs() {
    return new ProgramFile(program, setup).inputs();
  }

  /**
   * Reads and executes the program.
   *
   * @throws RequestException if a file cannot be read or the sheet has errors
   */
  Job run() throws RequestException {
    return new ProgramFile(program, setup).run();
  }

  /**
   * A program read and executed.
   *
   * @param text the program
   * @param sheet the setup sheet
   * @param interpretation what the control made of it
   */
  record Job(SourceText text, SetupSheet sheet, Interpretation interpretation) {
    /** What the gauges will say. */
    GaugeAnswer gauge() {
      return ThreadGauging.gauge(
          new GaugeRequest(interpretation.file(), interpretation.tape(), sheet, this::replay));
    }

    /**
     * Major diameter of the threads wanted, by name of the hole (mm), for drawing.
     *
     * @throws RequestException if the sheet names a thread that no standard knows
     */
    Map<String, Double> majorDiameters() throws RequestException {
      Map<String, Double> diameters = new TreeMap<>();
      for (Hole hole : sheet.holes()) {
        if (hole.thread().isPresent()) {
          try {
            diameters.put(hole.name(), Designations.parse(hole.thread().get()).nominal());
          } catch (InvalidDesignationException e) {
            throw RequestException.wrong(
                Finding.of(
                    Code.SH07,
                    new Place(sheet.file(), hole.line(), 0, 0),
                    e.getMessage(),
                    e.why(),
                    e.fix()));
          }
        }
      }
      return diameters;
    }

    private Optional<Tape> replay(Offsets offsets) {
      Interpretation again = Interpreter.interpret(text, sheet.withOffsets(offsets));
      // A program that stops where it stopped before has cut the same threads until then.
      boolean asFar = again.stoppedAt().equals(interpretation.stoppedAt());
      return asFar ? Optional.of(again.tape()) : Optional.empty();
    }
  }
}
