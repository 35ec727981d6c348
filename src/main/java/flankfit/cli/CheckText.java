package flankfit.cli;

import flankfit.cli.CheckedProgram.MetalCut;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.gauge.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Checked programs for a person: a line each with its findings below, totals, cautions last. */
final class CheckText {
  private final StringBuilder out = new StringBuilder();
  private final Style style;

  private CheckText(Style style) {
    this.style = style;
  }

  /** The text. */
  static String of(List<CheckedProgram> checked, List<String> unused, Style style) {
    CheckText text = new CheckText(style);
    checked.forEach(text::program);
    if (checked.size() > 1) {
      text.out.append(CheckTable.of(checked));
    }
    text.totals(checked, unused);
    Cautions.write(text.out);
    return text.out.toString();
  }

  /** Findings of a severity in all programs. */
  static int sum(List<CheckedProgram> checked, Severity severity) {
    return checked.stream().mapToInt(program -> program.count(severity)).sum();
  }

  /** A thread and what gauges say of it. */
  static String words(CheckedProgram.Gauged thread) {
    return thread.hole() + ": " + thread.designation() + ", " + thread.verdict().words();
  }

  private void program(CheckedProgram program) {
    boolean good = program.status() == ExitStatus.OK;
    List<String> parts = new ArrayList<>();
    count(program, Severity.ERROR, parts);
    parts.addAll(verdicts(program.verdicts()));
    count(program, Severity.WARNING, parts);
    count(program, Severity.NOTE, parts);
    if (!program.accepted().isEmpty()) {
      parts.add(program.accepted().size() + " accepted");
    }
    if (program.failure().isPresent()) {
      parts.add("not checked, Flankfit failed on it: " + program.failure().get());
    } else if (program.findings().isEmpty() && program.accepted().isEmpty()) {
      parts.add("nothing found");
    }
    if (program.metal() == MetalCut.NO_STOCK) {
      parts.add("metal not cut");
    }
    String line = (good ? "[+] " : "[x] ") + program.file() + ": " + String.join("; ", parts);
    out.append(style.severity(good ? Severity.NOTE : Severity.ERROR, line)).append('\n');
    List<Finding> told =
        program.findings().stream().filter(f -> f.severity() != Severity.NOTE).toList();
    new FindingText(style).brief(program.file(), told, out);
  }

  private static void count(CheckedProgram program, Severity severity, List<String> parts) {
    if (program.count(severity) > 0) {
      parts.add(counted(program.count(severity), severity.word()));
    }
  }

  /** Threads of one designation that gauge alike are told together. */
  private static List<String> verdicts(List<CheckedProgram.Gauged> threads) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (CheckedProgram.Gauged thread : threads) {
      String words = thread.designation() + ", " + thread.verdict().words();
      alike.computeIfAbsent(words, key -> new ArrayList<>()).add(thread.hole());
    }
    return alike.entrySet().stream()
        .map(entry -> String.join(", ", entry.getValue()) + ": " + entry.getKey())
        .toList();
  }

  private void totals(List<CheckedProgram> checked, List<String> unused) {
    long bad =
        checked.stream()
            .flatMap(program -> program.verdicts().stream())
            .filter(thread -> thread.verdict() != Verdict.GAUGES_GOOD)
            .count();
    out.append('\n').append(counted(checked.size(), "program")).append(", ");
    out.append(counted(sum(checked, Severity.ERROR), "error")).append(", ");
    out.append(counted(sum(checked, Severity.WARNING), "warning"));
    if (bad > 0) {
      out.append(", ").append(counted(bad, "thread")).append(" not good");
    }
    int accepted = checked.stream().mapToInt(program -> program.accepted().size()).sum();
    if (accepted > 0) {
      out.append(", ").append(accepted).append(" accepted");
    }
    metal(checked);
    unused.forEach(sentence -> out.append("\nthe policy: ").append(sentence));
    out.append("\n--format json lists notes too; --explain CODE tells what a finding means\n");
  }

  /** Of how many programs the metal was cut, where somebody asked for it. */
  private void metal(List<CheckedProgram> checked) {
    long cut = count(checked, MetalCut.CUT);
    long not = count(checked, MetalCut.NO_STOCK);
    if (cut + not > 0) {
      out.append("\nmetal cut of ").append(counted(cut, "program"));
      if (not > 0) {
        out.append("; not of ").append(not).append(", whose ");
        out.append(not == 1 ? "sheet states" : "sheets state").append(" no stock");
      }
    }
  }

  static long count(List<CheckedProgram> checked, MetalCut metal) {
    return checked.stream().filter(program -> program.metal() == metal).count();
  }

  static String counted(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
