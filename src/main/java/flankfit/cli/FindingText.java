package flankfit.cli;

import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import java.util.List;
import java.util.function.Function;

/** Words findings for people. */
final class FindingText {
  private static final int WIDTH = 96;
  private static final String INDENT = "        ";

  private final Style style;

  FindingText(Style style) {
    this.style = style;
  }

  /**
   * Each finding with what, why, fix and the guilty line.
   *
   * @param linesOf lines of a file by its name; empty when unknown
   */
  void full(List<Finding> findings, Function<String, List<String>> linesOf, StringBuilder out) {
    for (Finding finding : findings) {
      out.append(place(finding.place())).append(": ");
      out.append(
          style.severity(
              finding.severity(), finding.severity().word() + " " + finding.code().name()));
      out.append(' ').append(finding.code().inWords()).append('\n');
      part("what", finding.what(), out);
      part("why", finding.why(), out);
      part("fix", finding.fix(), out);
      excerpt(finding.place(), linesOf.apply(finding.place().file()), out);
    }
  }

  /**
   * One line a finding: line, severity, code, what, for errors why, and fix; those that point into
   * another file than the program name it.
   */
  void brief(String program, List<Finding> findings, StringBuilder out) {
    for (Finding finding : findings) {
      Place place = finding.place();
      boolean elsewhere = place.line() > 0 && !place.file().equals(program);
      brief(finding, elsewhere ? place.file() + " " : "", out);
    }
  }

  private void brief(Finding finding, String file, StringBuilder out) {
    boolean toMend = finding.severity() != Severity.NOTE && !finding.fix().isEmpty();
    boolean toUnderstand = finding.severity() == Severity.ERROR && !finding.why().isEmpty();
    String text =
        finding.what()
            + (toUnderstand ? ": " + finding.why() : "")
            + (toMend ? "; " + finding.fix() : "");
    String head = finding.severity().word() + " " + finding.code().name();
    int line = finding.place().line();
    String at = line == 0 ? "" : file + "line " + line + ": ";
    out.append("  ").append(style.severity(finding.severity(), head)).append("  ");
    wrap(at + text, " ".repeat(head.length() + 4), out);
  }

  private static String place(Place place) {
    StringBuilder text = new StringBuilder(place.file().isEmpty() ? "flankfit" : place.file());
    if (place.line() > 0) {
      text.append(':').append(place.line());
      if (place.column() > 0) {
        text.append(':').append(place.column());
      }
    }
    return text.toString();
  }

  private static void part(String name, String text, StringBuilder out) {
    if (!text.isEmpty()) {
      out.append("  ").append(name).append(" ".repeat(6 - name.length()));
      wrap(text, INDENT, out);
    }
  }

  /** Writes text whose first line is already indented, broken at blanks. */
  static void wrap(String text, String indent, StringBuilder out) {
    int room = WIDTH - indent.length();
    int from = 0;
    while (text.length() - from > room) {
      int at = text.lastIndexOf(' ', from + room);
      if (at <= from) {
        at = text.indexOf(' ', from + room);
        if (at < 0) {
          break;
        }
      }
      out.append(text, from, at).append('\n').append(indent);
      from = at + 1;
    }
    out.append(text, from, text.length()).append('\n');
  }

  private static void excerpt(Place place, List<String> lines, StringBuilder out) {
    if (place.line() == 0 || place.line() > lines.size()) {
      return;
    }
    String line = lines.get(place.line() - 1).replace('\t', ' ');
    String number = "  " + place.line();
    if (line.length() > 200) {
      return;
    }
    out.append(number).append(" | ").append(line).append('\n');
    if (place.column() > 0 && place.length() > 0) {
      out.append(" ".repeat(number.length())).append(" | ");
      out.append(" ".repeat(place.column() - 1)).append("^".repeat(place.length())).append('\n');
    }
  }
}
