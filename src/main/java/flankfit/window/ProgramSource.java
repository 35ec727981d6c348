package flankfit.window;

import flankfit.control.Interpretation;
import flankfit.finding.Finding;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import flankfit.solid.MeshBody;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Where the window gets a program from. What reads or judges is called on a thread of the loader's.
 */
public interface ProgramSource {
  /** Name of the program as the user gave it. */
  String file();

  /**
   * The files that it is read from, whether they are there or not; a change of one is a change of
   * the program. Called on any thread.
   */
  default List<Path> files() {
    return List.of();
  }

  /**
   * Reads its files anew.
   *
   * @throws UnreadableProgramException if one cannot be read, or the sheet has errors
   */
  Text read() throws UnreadableProgramException;

  /**
   * Reads the beginning of a large program alone, so that first moves are there before the rest is
   * read.
   *
   * @param most number of bytes at most, above 0
   * @return whole lines; empty for a program that is no larger
   * @throws UnreadableProgramException if a file cannot be read, or the sheet has errors
   */
  default Optional<Text> beginning(int most) throws UnreadableProgramException {
    return Optional.empty();
  }

  /**
   * Gauges its threads.
   *
   * @param text the program
   * @param checked what the control made of it, with the findings of all rules
   */
  Judgement judge(Text text, Interpretation checked);

  /**
   * A program as it stands in its files.
   *
   * @param program the program
   * @param setup what it does not say
   * @param subprograms the files with further programs
   * @param majorDiameters major diameter of the thread wanted by name of the hole (mm)
   * @param mesh the body of the file that the sheet names as stock; empty for other stock
   */
  record Text(
      SourceText program,
      SetupSheet setup,
      List<SourceText> subprograms,
      Map<String, Double> majorDiameters,
      Optional<MeshBody> mesh) {
    /** A program whose stock is no mesh. */
    public Text(
        SourceText program,
        SetupSheet setup,
        List<SourceText> subprograms,
        Map<String, Double> majorDiameters) {
      this(program, setup, subprograms, majorDiameters, Optional.empty());
    }

    public Text {
      Objects.requireNonNull(mesh, "mesh");
      Objects.requireNonNull(program, "program");
      Objects.requireNonNull(setup, "setup");
      subprograms = List.copyOf(subprograms);
      majorDiameters = Map.copyOf(majorDiameters);
    }

    /**
     * The same with the whole lines at its beginning alone; empty if it is no longer.
     *
     * @param most number of bytes at most, above 0
     */
    Optional<Text> beginning(int most) {
      return program.size() <= most
          ? Optional.empty()
          : Optional.of(
              new Text(program.beginning(most), setup, subprograms, majorDiameters, mesh));
    }
  }

  /**
   * What is to be said of it.
   *
   * @param findings all findings, in any order
   * @param headline the sentence above everything; may be empty
   * @param gauged its threads; empty where there is nothing to gauge
   */
  record Judgement(List<Finding> findings, String headline, Optional<Gauged> gauged) {
    public Judgement {
      findings = List.copyOf(findings);
      Objects.requireNonNull(headline, "headline");
      Objects.requireNonNull(gauged, "gauged");
    }

    /** What is to be said of a program that was not gauged. */
    public Judgement(List<Finding> findings, String headline) {
      this(findings, headline, Optional.empty());
    }
  }
}
