package flankfit.odds;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.Text;
import flankfit.gauge.ThreadAnswer;
import flankfit.setup.SetupSheet;
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
    gauged.threads().forEach(answers::answer);
    return new OddsAnswer(
        answers.odds,
        answers.advice,
        new ArrayList<>(answers.assumptions),
        answers.findings.sorted());
  }

  private void answer(ThreadAnswer thread) {
    List<PartObserved> parts = request.parts().getOrDefault(thread.hole(), List.of());
    if (!request.odds() && parts.isEmpty()) {
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
    if (!parts.isEmpty()) {
      GaugingAdvice advised = of.get().advice(parts);
      advice.put(thread.hole(), advised);
      assumptions.addAll(advised.assumptions());
      clashes(thread, advised);
      advised.key().filter(GaugingAdvice.Key::limited).ifPresent(key -> limited(thread, key));
    }
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
