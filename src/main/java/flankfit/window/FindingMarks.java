package flankfit.window;

import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.picture.Theme;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Findings by the line they point at, and how they are told apart: a shape and a word each. */
final class FindingMarks {
  private final Map<Integer, List<Finding>> byLine = new HashMap<>();
  private final List<Finding> inOrder;

  private final String file;

  /**
   * Sorts findings.
   *
   * @param file name of the program; findings in other files, such as the sheet, have no line in it
   */
  FindingMarks(List<Finding> findings, String file) {
    this.file = file;
    List<Finding> sorted = new ArrayList<>(findings);
    sorted.sort(Comparator.comparing(Finding::place).thenComparing(Finding::severity));
    inOrder = List.copyOf(sorted);
    for (Finding finding : inOrder) {
      byLine.computeIfAbsent(lineOf(finding), line -> new ArrayList<>()).add(finding);
    }
  }

  /** Line of the program that a finding points at; 0 for none. */
  int lineOf(Finding finding) {
    return finding.place().file().equals(file) ? finding.place().line() : 0;
  }

  /** All findings, the gravest first, then by place. */
  List<Finding> byWeight() {
    return inOrder.stream().sorted(Comparator.comparing(Finding::severity)).toList();
  }

  /** Ink of a severity: only an error is alarming. */
  static int ink(Severity severity, Theme.Palette palette) {
    return switch (severity) {
      case ERROR -> palette.alarm();
      case WARNING -> palette.ink();
      case NOTE -> palette.softInk();
    };
  }

  /** All findings, by place. */
  List<Finding> all() {
    return inOrder;
  }

  /** Findings that point at a line. */
  List<Finding> at(int line) {
    return byLine.getOrDefault(line, List.of());
  }

  /** The gravest severity at a line; empty for none. */
  Optional<Severity> gravest(int line) {
    return at(line).stream().map(Finding::severity).min(Comparator.naturalOrder());
  }

  /** Shape and word of a severity. */
  static String sign(Severity severity) {
    return switch (severity) {
      case ERROR -> "■ error";
      case WARNING -> "▲ warning";
      case NOTE -> "● note";
    };
  }

  /** How many of each there are, in words. */
  String summary() {
    if (inOrder.isEmpty()) {
      return "no findings";
    }
    List<String> parts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long count = inOrder.stream().filter(f -> f.severity() == severity).count();
      if (count > 0) {
        parts.add(count + " " + severity.word() + (count == 1 ? "" : "s"));
      }
    }
    return String.join(", ", parts);
  }
}
