package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.CodePages;
import flankfit.finding.Finding;
import flankfit.finding.Nearest;
import flankfit.finding.Place;
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
      "Examples: flankfit check sample-programs",
      "          flankfit check --explain RC05"
    })
final class CheckCommand implements Callable<Integer> {
  private static final String ENDING = ".nc";

  private final Terminal terminal;

  @Parameters(
      paramLabel = "PROGRAM|FOLDER",
      arity = "0..*",
      description = "milling programs; of a folder, every file in it that ends in .nc")
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

  @Mixin private OutputOptions output = new OutputOptions();

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
    List<CheckedProgram> checked = new ArrayList<>();
    for (Path program : programs()) {
      checked.add(CheckedProgram.of(program, setup, metal));
    }
    if (output.json()) {
      CheckJson.write(checked, terminal.outBytes());
    } else {
      terminal.result(CheckText.of(checked, output.style()));
    }
    return status(checked);
  }

  /** A wrong request outweighs an answer of no. */
  private static int status(List<CheckedProgram> checked) {
    return checked.stream().mapToInt(CheckedProgram::status).max().orElse(ExitStatus.OK);
  }

  private int explain(String word) throws RequestException {
    if (output.json() || !places.isEmpty()) {
      throw incomplete(
          "--explain goes with neither programs nor JSON",
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

  private static List<Path> programsIn(Path folder) throws RequestException {
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
          "programs in a folder are the files that end in " + ENDING,
          "name the programs themselves");
    }
    return programs;
  }

  private static boolean isProgram(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(ENDING);
  }

  private static RequestException incomplete(String what, String why, String fix) {
    return RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, why, fix));
  }
}
