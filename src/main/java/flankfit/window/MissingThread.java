package flankfit.window;

import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Why a program has no thread to gauge, and what to write so that it has one. */
final class MissingThread {
  private static final int MOST_FINDINGS = 4;

  private MissingThread() {}

  /**
   * Something that is lacking.
   *
   * @param what it
   * @param fix what to do
   * @param example lines to write; may be empty
   */
  record Lack(String what, String fix, String example) {
    Lack {
      Objects.requireNonNull(what, "what");
      Objects.requireNonNull(fix, "fix");
      Objects.requireNonNull(example, "example");
    }
  }

  static String heading(Loaded loaded) {
    if (loaded.stage().isGoing()) {
      return "gauging: computing…";
    }
    return switch (loaded.stage()) {
      case NOTHING -> "no program is open";
      case STOPPED, FAILED -> "not gauged: " + loaded.told();
      default -> "there is no thread to gauge yet";
    };
  }

  /** What is lacking, the first thing to give first. */
  static List<Lack> of(Loaded loaded) {
    List<Lack> lacks = new ArrayList<>();
    if (loaded.stage() != Stage.DONE) {
      return lacks;
    }
    SetupSheet sheet = loaded.input().setup();
    if (sheet.file().isEmpty()) {
      lacks.add(
          new Lack(
              "the setup sheet",
              "write a text file beside the program, named like it with the ending .setup.toml;"
                  + " it tells holes, tools and registers",
              ""));
    }
    if (sheet.holes().stream().noneMatch(h -> h.thread().isPresent())) {
      lacks.add(
          new Lack(
              "a hole with the thread that is wanted",
              "say in the sheet where it is and how wide before the thread is cut",
              """
              [[hole]]
              name         = "port A"
              at           = [0.0, 0.0]
              top          = 0.0
              diameter     = 18.5
              depth        = 22.0
              thread       = "M20x1.5-6H"
              thread-depth = 16.0"""));
    }
    if (sheet.tools().stream().noneMatch(t -> t.kind() == Tool.Kind.THREAD_MILL)) {
      lacks.add(
          new Lack(
              "the thread mill",
              "say in the sheet what its number is and what its teeth are like",
              """
              [[tool]]
              number       = 4
              kind         = "thread mill"
              diameter     = 14.0
              flutes       = 4
              rows         = 12
              pitch        = 1.5
              flank-angle  = 60.0
              ground-for   = "M20x1.5-6H"
              tip          = 0.5
              flute-length = 18.0"""));
    }
    loaded.input().findings().stream()
        .filter(f -> f.severity() != Severity.NOTE)
        .filter(f -> f.code().name().startsWith("GA") || f.severity() == Severity.ERROR)
        .limit(MOST_FINDINGS)
        .forEach(f -> lacks.add(found(f)));
    if (lacks.isEmpty()) {
      lacks.add(
          new Lack(
              "a helix in the hole",
              "the thread mill makes no full turn with G2 or G3 and a rise in Z about the axis of a"
                  + " hole of the sheet",
              ""));
    }
    return lacks;
  }

  private static Lack found(Finding finding) {
    int line = finding.place().line();
    String where = line == 0 ? "" : "line " + line + ": ";
    String fix = finding.fix().isEmpty() ? finding.why() : finding.why() + "; " + finding.fix();
    return new Lack(finding.code().name() + "  " + where + finding.what(), fix, "");
  }
}
