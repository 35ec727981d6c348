package flankfit.window;

import flankfit.finding.Finding;
import flankfit.motion.Tape;
import flankfit.setup.SetupSheet;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the window shows.
 *
 * @param file name of the program as the user gave it
 * @param programLines its lines, the first being line 1; not copied, so they must not change
 * @param tape what the tool does
 * @param setup what the program does not say
 * @param findings what was found, in any order
 * @param headline the sentence above everything, such as a thread's verdict; may be empty
 * @param cautions sentences that every output carries
 * @param majorDiameters major diameter of the thread wanted by name of the hole (mm); may be empty
 * @param replay executes the program again, to tell what its blocks meant
 * @param gauged its threads; empty while they are not gauged, and where there is nothing to gauge
 * @param cutting what its metal is cut by; empty while the program is not executed to its end
 */
public record WindowInput(
    String file,
    List<String> programLines,
    Tape tape,
    SetupSheet setup,
    List<Finding> findings,
    String headline,
    List<String> cautions,
    Map<String, Double> majorDiameters,
    Replay replay,
    Optional<Gauged> gauged,
    Optional<Cutting> cutting) {
  public WindowInput {
    Objects.requireNonNull(file, "file");
    programLines = Collections.unmodifiableList(programLines);
    Objects.requireNonNull(tape, "tape");
    Objects.requireNonNull(setup, "setup");
    findings = List.copyOf(findings);
    Objects.requireNonNull(headline, "headline");
    cautions = List.copyOf(cautions);
    majorDiameters = Map.copyOf(majorDiameters);
    Objects.requireNonNull(replay, "replay");
    Objects.requireNonNull(gauged, "gauged");
    Objects.requireNonNull(cutting, "cutting");
  }

  /** The same before it is executed to its end. */
  public WindowInput(
      String file,
      List<String> programLines,
      Tape tape,
      SetupSheet setup,
      List<Finding> findings,
      String headline,
      List<String> cautions,
      Map<String, Double> majorDiameters,
      Replay replay,
      Optional<Gauged> gauged) {
    this(
        file,
        programLines,
        tape,
        setup,
        findings,
        headline,
        cautions,
        majorDiameters,
        replay,
        gauged,
        Optional.empty());
  }

  /** The same before its threads are gauged. */
  public WindowInput(
      String file,
      List<String> programLines,
      Tape tape,
      SetupSheet setup,
      List<Finding> findings,
      String headline,
      List<String> cautions,
      Map<String, Double> majorDiameters,
      Replay replay) {
    this(
        file,
        programLines,
        tape,
        setup,
        findings,
        headline,
        cautions,
        majorDiameters,
        replay,
        Optional.empty());
  }

  /** The same without major diameters of threads, and never executed again. */
  public WindowInput(
      String file,
      List<String> programLines,
      Tape tape,
      SetupSheet setup,
      List<Finding> findings,
      String headline,
      List<String> cautions) {
    this(file, programLines, tape, setup, findings, headline, cautions, Map.of(), Replay.NONE);
  }
}
