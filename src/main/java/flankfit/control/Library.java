package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.nc.ReadingRules;
import flankfit.nc.SourceText;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** All programs that can be called: those of the file, then those of the subprogram files. */
final class Library {
  private final SourceText main;
  private final List<SourceText> further;
  private final ReadingRules rules;
  private final Report report;
  private final Consumer<SourceText> readWhole;
  private final List<ProgramFile> files = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();

  /** A program and the file it stands in. */
  record Found(ProgramFile file, ProgramIndex.Program program) {}

  /**
   * @param readWhole reads a further file for its findings, when a program of it is first called
   */
  Library(
      SourceText main,
      List<SourceText> further,
      ReadingRules rules,
      Report report,
      Consumer<SourceText> readWhole) {
    this.main = main;
    this.further = further;
    this.rules = rules;
    this.report = report;
    this.readWhole = readWhole;
  }

  ProgramFile mainFile() {
    if (files.isEmpty()) {
      files.add(new ProgramFile(main, rules));
    }
    return files.get(0);
  }

  private List<ProgramFile> files() {
    mainFile();
    while (files.size() <= further.size()) {
      files.add(new ProgramFile(further.get(files.size() - 1), rules));
    }
    return files;
  }

  private List<Found> all(int number) {
    List<Found> found = new ArrayList<>();
    for (ProgramFile file : files()) {
      for (ProgramIndex.Program program : file.index().programs()) {
        if (program.number() == number) {
          found.add(new Found(file, program));
        }
      }
    }
    return found;
  }

  boolean has(int number) {
    return !all(number).isEmpty();
  }

  /** The program of a number; FL20 or FL21 when that is not one. */
  Optional<Found> find(int number, Place caller) {
    List<Found> found = all(number);
    if (found.isEmpty()) {
      report.add(
          Code.FL20,
          caller,
          "program O" + number + " not found",
          "looked in "
              + files().stream().map(f -> f.source().file()).collect(Collectors.joining(", ")),
          "add it, or list the file under subprograms");
      return Optional.empty();
    }
    if (found.size() > 1) {
      Found second = found.get(1);
      String file = second.file() == files.get(0) ? "" : second.file().source().file() + " ";
      report.add(
          Code.FL21,
          caller,
          "O" + number + " stands twice (" + file + "line " + second.program().begin().line() + ")",
          "a call would be ambiguous",
          "renumber");
      return Optional.empty();
    }
    SourceText source = found.get(0).file().source();
    if (source != main && seen.add(source.file())) {
      readWhole.accept(source);
    }
    return Optional.of(found.get(0));
  }
}
