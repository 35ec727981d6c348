package flankfit.odds;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.Measures;
import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.Text;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadVariation;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.unit.Lengths;
import flankfit.unit.Tolerance;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts the answer about chance together for all threads of a program. */
public final class OddsAnswers {
  private final String program;
  private final SetupSheet sheet;
  private final OddsRequest request;
  private final Map<String, ThreadOdds> odds = new LinkedHashMap<>();
  private final Map<String, GaugingAdvice> advice = new LinkedHashMap<>();
  private final Set<String> assumptions = new LinkedHashSet<>();
  private final Findings findings = new Findings();

  private OddsAnswers(String program, SetupSheet sheet, OddsRequest request) {
    this.program = program;
    this.sheet = sheet;
    this.request = request;
  }

  /**
   * What chance says of threads that were gauged.
   *
   * @param program name of the program as the user gave it
   * @param gauged the threads
   * @param sheet what scatters, as far as it says so
   */
  public static OddsAnswer of(
      String program, GaugeAnswer gauged, SetupSheet sheet, OddsRequest request) {
    OddsAnswers answers = new OddsAnswers(program, sheet, request);
    gauged.threads().forEach(thread -> answers.answer(thread, gauged.threads()));
    gauged.threads().forEach(thread -> answers.informs(thread, gauged.threads()));
    return new OddsAnswer(
        answers.odds,
        answers.advice,
        new ArrayList<>(answers.assumptions),
        answers.findings.sorted());
  }

  private void answer(ThreadAnswer thread, List<ThreadAnswer> all) {
    List<PartObserved> parts = seen(thread);
    List<ThreadAnswer> alike =
        all.stream()
            .filter(t -> !t.hole().equals(thread.hole()))
            .filter(t -> !seen(t).isEmpty() && isAlike(t, thread))
            .toList();
    if (!request.odds() && parts.isEmpty() && alike.isEmpty()) {
      return;
    }
    Optional<Odds> of = Odds.of(thread, sheet.scatter(), request.seed());
    if (of.isEmpty()) {
      assumptions.add("odds: none for " + thread.hole() + ", in which no gauge can be tried");
      return;
    }
    if (request.odds()) {
      ThreadOdds reckoned = of.get().reckoned(request.draws());
      odds.put(thread.hole(), reckoned);
      assumptions.addAll(reckoned.assumptions());
    }
    if (!parts.isEmpty() || !alike.isEmpty()) {
      List<PartObserved> others = alike.stream().flatMap(t -> seen(t).stream()).toList();
      GaugingAdvice advised = of.get().advice(parts, others);
      advice.put(thread.hole(), advised);
      assumptions.addAll(advised.assumptions());
      clashes(thread, advised);
      midway(thread, advised);
      advised.key().filter(GaugingAdvice.Key::limited).ifPresent(key -> limited(thread, key));
    }
  }

  private List<PartObserved> seen(ThreadAnswer thread) {
    return request.parts().getOrDefault(thread.hole(), List.of());
  }

  /** Says for which other threads of its mill counts what was seen in a thread, and which not. */
  private void informs(ThreadAnswer thread, List<ThreadAnswer> all) {
    if (seen(thread).isEmpty()) {
      return;
    }
    List<String> alike = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (ThreadAnswer other : all) {
      if (!other.hole().equals(thread.hole()) && isOfOneMill(thread, other)) {
        (isAlike(thread, other) ? alike : others).add(other.hole());
      }
    }
    if (!alike.isEmpty()) {
      assumptions.add(
          "gauging: what is seen in "
              + thread.hole()
              + " counts for "
              + String.join(", ", alike)
              + ", too: cut alike by the same mill and register");
    }
    if (!others.isEmpty()) {
      assumptions.add(
          "gauging: what is seen in "
              + thread.hole()
              + " does not count for "
              + String.join(", ", others)
              + ": the same mill cuts another thread there, or by another entry");
    }
  }

  private static boolean isOfOneMill(ThreadAnswer a, ThreadAnswer b) {
    Optional<Tool> mill = a.variation().map(ThreadVariation::tool);
    return mill.isPresent() && mill.equals(b.variation().map(ThreadVariation::tool));
  }

  /** Whether two threads are wanted and cut alike by one mill and one entry of one register. */
  private static boolean isAlike(ThreadAnswer a, ThreadAnswer b) {
    if (!a.spec().equals(b.spec())) {
      return false;
    }
    boolean sameEntry =
        a.offset().map(OffsetAdvice::register).equals(b.offset().map(OffsetAdvice::register))
            && near(
                a.offset().map(OffsetAdvice::now).orElse(0.0),
                b.offset().map(OffsetAdvice::now).orElse(0.0));
    return isOfOneMill(a, b)
        && sameEntry
        && near(simple(a), simple(b))
        && near(functional(a), functional(b))
        && a.cutting().equals(b.cutting())
        && a.passes().size() == b.passes().size();
  }

  private static double simple(ThreadAnswer thread) {
    return thread.finished().map(Measures::pitchSimple).orElse(Double.NaN);
  }

  private static double functional(ThreadAnswer thread) {
    return thread.finished().map(Measures::functional).orElse(Double.NaN);
  }

  private static boolean near(double a, double b) {
    return Tolerance.MODEL.near(a, b);
  }

  private void clashes(ThreadAnswer thread, GaugingAdvice advised) {
    Set<Set<String>> told = new HashSet<>();
    boolean many = advised.observed().size() > 1;
    for (Clash clash : advised.clashes()) {
      String seen = clash.observation().text();
      String part = many ? " on part " + clash.part() : "";
      if (told.add(new HashSet<>(List.of(part + seen, part + clash.with())))) {
        findings.add(
            Code.GA10,
            new Place(program, thread.line(), 0, 0),
            seen + part + " in " + thread.hole() + " clashes with " + clash.with(),
            "all else believed, it had a chance of "
                + Text.percent(clash.chance())
                + "; the advice trusts neither wholly",
            "clean and deburr, try again; check mill, register and gauge against the sheet");
      }
    }
  }

  private void midway(ThreadAnswer thread, GaugingAdvice advised) {
    boolean many = advised.observed().size() > 1;
    for (Midway seen : advised.midway()) {
      boolean go = seen.observation() instanceof Observation.Go;
      findings.add(
          Code.GA13,
          new Place(program, thread.line(), 0, 0),
          seen.observation().text()
              + (many ? " on part " + seen.part() : "")
              + " in "
              + thread.hole()
              + ": nothing in program and sheet makes a "
              + (go ? "GO" : "NO-GO")
              + " gauge stop there",
          "by them it "
              + (go ? "passes its " : "passes ")
              + Lengths.plain(seen.whole(), 1)
              + " turns or stops at the face; that something else stopped it is "
              + Text.percent(seen.chance())
              + " likely, and the advice takes it that the next part is alike",
          "look for a chip or burr, a damaged first thread, a bell mouth, a worn row of the mill, a"
              + " lead error of the machine, a mill that bends (name the material in the sheet)");
    }
  }

  private void limited(ThreadAnswer thread, GaugingAdvice.Key key) {
    Text text = new Text(sheet.unit());
    findings.add(
        Code.GA11,
        new Place(program, thread.line(), 0, 0),
        key.register()
            + " wear "
            + text.length(key.best())
            + ", best for "
            + thread.hole()
            + ", is beyond what the control takes, "
            + text.length(Math.abs(sheet.control().tools().wearLimit().orElseThrow())),
        "with "
            + text.length(key.wear())
            + " the chance of good gauges is "
            + Text.percent(key.chances().good()),
        "put the difference into the geometry entry, or mend path or mill");
  }
}
