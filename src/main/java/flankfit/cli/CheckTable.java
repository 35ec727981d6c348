package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What was found how often in many programs: a line for each code, the gravest first. */
final class CheckTable {
  private static final int MOST = 15;

  private CheckTable() {}

  /** A code with a severity. */
  private record Key(Severity severity, Code code) {}

  /** How often, and in how many programs. */
  private static final class Count {
    private int findings;
    private int programs;
    private int lastProgram = -1;
  }

  /** The table; empty text where nothing was found. */
  static String of(List<CheckedProgram> checked) {
    Map<Key, Count> counts =
        new TreeMap<>(Comparator.comparing(Key::severity).thenComparing(Key::code));
    for (int i = 0; i < checked.size(); i++) {
      for (Finding finding : checked.get(i).findings()) {
        if (finding.severity() != Severity.NOTE) {
          Count count =
              counts.computeIfAbsent(
                  new Key(finding.severity(), finding.code()), key -> new Count());
          count.findings++;
          count.programs += count.lastProgram == i ? 0 : 1;
          count.lastProgram = i;
        }
      }
    }
    StringBuilder out = new StringBuilder();
    counts.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<Key, Count> e) -> e.getKey().severity())
                .thenComparing(e -> -e.getValue().findings))
        .limit(MOST)
        .forEach(e -> line(e.getKey(), e.getValue(), out));
    if (counts.size() > MOST) {
      out.append("  and ").append(counts.size() - MOST).append(" more codes\n");
    }
    return out.length() == 0 ? "" : "\nfindings  programs\n" + out;
  }

  private static void line(Key key, Count count, StringBuilder out) {
    out.append(
        String.format(
            Locale.ROOT,
            "%8d  %8d  %-7s %s %s\n",
            count.findings,
            count.programs,
            key.severity().word(),
            key.code(),
            key.code().inWords().replace('-', ' ')));
  }
}
