package flankfit.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Collects the findings of every phase. One code is kept singly up to {@value #LISTED_SINGLY} times
 * and only counted beyond; the count stands in the last finding of that code.
 */
public final class Findings {
  /** How often one code is listed singly in a file. */
  public static final int LISTED_SINGLY = 100;

  private final List<Finding> kept = new ArrayList<>();
  private final Map<Code, Count> counts = new EnumMap<>(Code.class);
  private final Set<Told> told = new HashSet<>();
  private boolean onceEach;
  private boolean errors;

  private record Told(Code code, Severity severity, Place place) {}

  /** Adds one finding. */
  public void add(Finding finding) {
    if (onceEach && isRepeated(finding)) {
      return;
    }
    if (count(finding.code()) < LISTED_SINGLY) {
      kept.add(finding);
    }
    count(finding.code(), finding.severity());
  }

  /**
   * Counts one more finding of a code that would not be listed, with the code's usual severity.
   * Spares wording what nobody reads where millions of blocks share a fault.
   *
   * @return false when it would be listed: nothing is counted then, and it is to be added
   */
  public boolean countUnlisted(Code code) {
    return countUnlisted(code, 1);
  }

  /** The same for several findings of a code at once; the number may be 0. */
  public boolean countUnlisted(Code code, int times) {
    if (!onlyCounts(code)) {
      return false;
    }
    counts.get(code).value += times;
    errors |= times > 0 && code.severity() == Severity.ERROR;
    return true;
  }

  /** Whether findings of a code are no longer listed, only counted. */
  public boolean onlyCounts(Code code) {
    Count count = counts.get(code);
    return !onceEach && count != null && count.value >= LISTED_SINGLY;
  }

  private void count(Code code, Severity severity) {
    counts.computeIfAbsent(code, first -> new Count()).value++;
    errors |= severity == Severity.ERROR;
  }

  /**
   * From now on a second finding of the same code, severity and place is dropped: blocks may be
   * executed again, and every cause is told once.
   */
  public void onceEach() {
    onceEach = true;
    kept.forEach(this::isRepeated);
  }

  private boolean isRepeated(Finding finding) {
    boolean placed = finding.place().line() > 0;
    return placed && !told.add(new Told(finding.code(), finding.severity(), finding.place()));
  }

  /** Adds a finding with the usual severity of its code. */
  public void add(Code code, Place place, String what, String why, String fix) {
    add(Finding.of(code, place, what, why, fix));
  }

  /** Adds all findings of another phase. */
  public void addAll(Iterable<Finding> findings) {
    findings.forEach(this::add);
  }

  /** The findings listed singly after so many, in the order in which they were found. */
  public List<Finding> listedSince(int count) {
    return List.copyOf(kept.subList(count, kept.size()));
  }

  /** Whether any finding is an error, counted ones included. */
  public boolean hasErrors() {
    return errors;
  }

  /** How often a code was found, the unlisted ones included. */
  public int count(Code code) {
    Count count = counts.get(code);
    return count == null ? 0 : count.value;
  }

  /** The findings by file, line, column and code; a copy. */
  public List<Finding> sorted() {
    List<Finding> list = new ArrayList<>(kept);
    counts.forEach(
        (code, count) -> {
          if (count.value > LISTED_SINGLY) {
            noteCount(list, code, count.value);
          }
        });
    list.sort(Comparator.comparing(Finding::place).thenComparing(Finding::code));
    return List.copyOf(list);
  }

  /** Counts without making an object for each finding. */
  private static final class Count {
    private int value;
  }

  private static void noteCount(List<Finding> list, Code code, int count) {
    for (int i = list.size() - 1; i >= 0; i--) {
      Finding last = list.get(i);
      if (last.code() == code) {
        String what = last.what() + " (and " + (count - LISTED_SINGLY) + " more like it)";
        list.set(i, new Finding(code, last.severity(), last.place(), what, last.why(), last.fix()));
        return;
      }
    }
  }
}
