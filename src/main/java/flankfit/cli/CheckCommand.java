package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.CodePages;
import flankfit.finding.Finding;
import flankfit.finding.Nearest;
import flankfit.finding.Place;
import flankfit.setup.CheckPolicy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is wrong: the findings of one program or many, and what a finding means. */
@Command(
    name = "check",
    description = {
      "Checks programs and tells what is found fault with, each in a line with its findings",
      "below; or explains a code of a finding."
    },
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  flankfit check sample-programs",
      "  flankfit check jobs --policy shop.toml --format sarif",
      "  flankfit check --explain RC05"
    })
final class CheckCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(
      paramLabel = "PROGRAM|FOLDER",
      arity = "0..*",
      description = "milling programs; of a folder, every file in it with the ending of a program")
  private List<Path> places = List.of();

  @Option(
      names = "--setup",
      paramLabel = "FILE",
      description = {
        "one setup sheet for all programs; without it, each program's own with its ending"
            + " replaced by .setup.toml is used when it exists"
      })
  private Optional<Path> setup = Optional.empty();

  @Option(
      names = "--metal",
      description = {
        "also cuts the metal of programs whose sheet states the stock, and tells what touches it"
            + " that should not; takes longer"
      })
  private boolean metal;

  @Option(
      names = "--explain",
      paramLabel = "CODE",
      description =
          "prints what a code such as RC05 means, and the smallest program that raises it")
  private Optional<String> explain = Optional.empty();

  @Option(
      names = "--policy",
      paramLabel = "FILE",
      description = {
        "TOML that weighs codes otherwise ([severity] HZ15 = \"off\") and accepts findings that were"
            + " looked at ([[accept]] code, program, line, reason)"
      })
  private Optional<Path> policy = Optional.empty();

  @Option(
      names = "--ending",
      paramLabel = "EXT",
      description = "endings of programs in a folder; may be given several times (default: nc)")
  private List<String> endings = List.of("nc");

  @Option(
      names = "--watch",
      description = "checks again whenever a program or its sheet changes, until interrupted")
  private boolean watch;

  @Mixin private CheckOutput output = new CheckOutput();

  CheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException, RequestException {
    if (explain.isPresent()) {
      return explain(explain.get());
    }
    if (places.isEmpty()) {
      throw incomplete(
          "nothing to check is named", "", "name a program or a folder, or a code: --explain RC05");
    }
    CheckPolicies policies =
        policy.isPresent() ? CheckPolicies.of(policy.get()) : new CheckPolicies(CheckPolicy.none());
    if (watch) {
      return watched(policies);
    }
    return answer(programs(), policies);
  }

  private int answer(List<Path> programs, CheckPolicies policies) throws IOException {
    List<CheckedProgram> checked;
    try (ProgressLine progress = new ProgressLine("checking", terminal)) {
      checked =
          CheckRuns.of(
              programs,
              (file, each) -> policies.on(CheckedProgram.of(file, setup, metal, each)),
              progress);
    }
    output.write(checked, policies.unused(checked), terminal);
    return status(checked);
  }

  private int watched(CheckPolicies policies) throws IOException, RequestException {
    if (!output.isText()) {
      throw incomplete(
          "--watch goes with text only", "it writes answer after answer", "leave --format out");
    }
    CheckWatch changes = new CheckWatch();
    int status = ExitStatus.OK;
    List<Path> changed = changes.among(programs(), setup);
    try {
      while (!Thread.currentThread().isInterrupted()) {
        if (!changed.isEmpty()) {
          status = answer(changed, policies);
          terminal.aside("watching; Ctrl+C ends\n");
        }
        Thread.sleep(CheckWatch.BETWEEN);
        changed = changes.among(programs(), setup);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return status;
  }

  /** A wrong request outweighs an answer of no. */
  private static int status(List<CheckedProgram> checked) {
    return checked.stream().mapToInt(CheckedProgram::status).max().orElse(ExitStatus.OK);
  }

  private int explain(String word) throws RequestException {
    if (!output.isText() || !places.isEmpty()) {
      throw incomplete(
          "--explain goes with neither programs nor another form",
          "it prints one page for people",
          "ask for the page alone: flankfit check --explain " + word);
    }
    terminal.result(CodePageText.of(CodePages.of(code(word)), output.style()));
    return ExitStatus.OK;
  }

  /** A code by itself or by its name in words, in either case. */
  private static Code code(String word) throws RequestException {
    String wanted = word.strip();
    for (Code code : Code.values()) {
      if (code.name().equalsIgnoreCase(wanted) || code.inWords().equalsIgnoreCase(wanted)) {
        return code;
      }
    }
    List<String> known =
        Arrays.stream(Code.values())
            .flatMap(code -> Stream.of(code.name(), code.inWords()))
            .toList();
    throw incomplete(
        "no finding has the code " + word,
        "a code is two letters and two digits, as findings show it",
        Nearest.of(wanted, known).map(near -> "the nearest is " + near).orElse(""));
  }

  private List<Path> programs() throws RequestException {
    List<Path> programs = new ArrayList<>();
    for (Path place : places) {
      if (Files.isDirectory(place)) {
        programs.addAll(programsIn(place));
      } else {
        programs.add(place);
      }
    }
    return programs;
  }

  private List<Path> programsIn(Path folder) throws RequestException {
    List<Path> programs;
    try (Stream<Path> files = Files.list(folder)) {
      programs =
          files
              .filter(file -> isProgram(String.valueOf(file.getFileName())))
              .filter(Files::isRegularFile)
              .sorted()
              .toList();
    } catch (IOException e) {
      throw RequestException.wrong(
          Finding.of(
              Code.RQ02,
              Place.file(folder.toString()),
              "folder " + folder + " cannot be read",
              e.toString(),
              "check the folder's rights"));
    }
    if (programs.isEmpty()) {
      throw incomplete(
          "folder " + folder + " holds no program",
          "programs in a folder are the files that end in "
              + String.join(" or ", endings.stream().map(CheckCommand::dotted).toList()),
          "name the programs themselves, or other endings: --ending tap");
    }
    return programs;
  }

  private boolean isProgram(String name) {
    String low = name.toLowerCase(Locale.ROOT);
    return endings.stream().anyMatch(end -> low.endsWith(dotted(end)));
  }

  private static String dotted(String ending) {
    String low = ending.toLowerCase(Locale.ROOT);
    return low.startsWith(".") ? low : "." + low;
  }

  private static RequestException incomplete(String what, String why, String fix) {
    return RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, why, fix));
  }
}
