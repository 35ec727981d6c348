package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Nearest;
import flankfit.finding.Place;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.ThreadAnswer;
import flankfit.odds.GaugingAdvice;
import flankfit.odds.Observation;
import flankfit.odds.OddsAnswer;
import flankfit.odds.OddsAnswers;
import flankfit.odds.OddsRequest;
import flankfit.odds.PartObserved;
import flankfit.odds.ThreadOdds;
import flankfit.unit.LengthUnit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** What is asked about chance: odds, what was seen on a part, the log of a batch. */
final class OddsOptions {
  private static final int MOST_DRAWS = 10_000_000;

  @Option(
      names = "--odds",
      description = {
        "how likely the gauges are to pass over the tolerances of mill, hole, machine",
        "and forces, and what scatters most"
      })
  private boolean odds;

  @Option(names = "--draws", paramLabel = "N", description = "draws of the odds, 10000 unless told")
  private int draws = ThreadOdds.DRAWS;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "another number gives another sample, 1 unless told")
  private long seed = ThreadOdds.SEED;

  @Option(
      names = "--observed",
      paramLabel = "SEEN",
      description = {
        "what was seen on a part, for advice: go=enters, go=stops:3 (turns gone),",
        "no-go=stops, no-go=turns:0.5, pitch=18.94, pitch=18.94±0.004; several times;",
        "with several holes \"port A: go=enters\""
      })
  private List<String> observed = new ArrayList<>();

  @Option(
      names = "--log",
      paramLabel = "FILE",
      description = {
        "parts of a batch, one JSON line each: read for the advice, and what is observed",
        "now is added at its end"
      })
  private Optional<Path> log = Optional.empty();

  @Option(
      names = "--part",
      paramLabel = "N",
      description = "number of the part that was observed; the next of the log unless told")
  private Optional<Integer> part = Optional.empty();

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "date that the log keeps of the part")
  private Optional<String> date = Optional.empty();

  /**
   * The answer about chance, and what of it the log is to keep.
   *
   * @param answer the answer
   * @param log the log, when there is one
   * @param lines lines for it
   */
  record Told(OddsAnswer answer, Optional<PartLog> log, List<PartLog.Line> lines) {
    /** Adds to the log what was observed; last of all, so that nothing failed is kept. */
    void keep() throws RequestException {
      if (log.isPresent()) {
        log.get().add(lines);
      }
    }
  }

  /**
   * The answer about chance; empty when nothing is asked.
   *
   * @throws RequestException if an observation is none, names no hole, or the log does not fit
   */
  Optional<Told> answer(ProgramOptions.Job job, GaugeAnswer gauged) throws RequestException {
    check();
    if (!odds && observed.isEmpty() && log.isEmpty()) {
      return Optional.empty();
    }
    Map<String, List<Observation>> seen = seen(gauged, job.sheet().unit());
    Optional<PartLog> parts = log(job, gauged);
    int number = part.or(() -> parts.map(PartLog::next)).orElse(1);
    Map<String, List<PartObserved>> all = new LinkedHashMap<>();
    for (ThreadAnswer thread : gauged.threads()) {
      List<PartObserved> ofThread = new ArrayList<>();
      parts.ifPresent(p -> ofThread.addAll(p.of(thread.hole())));
      List<Observation> now = seen.getOrDefault(thread.hole(), List.of());
      if (!now.isEmpty()) {
        ofThread.add(new PartObserved(number, wear(thread), now));
      }
      if (!ofThread.isEmpty()) {
        all.put(thread.hole(), ofThread);
      }
    }
    OddsAnswer answer =
        OddsAnswers.of(
            job.interpretation().file(),
            gauged,
            job.sheet(),
            new OddsRequest(odds, draws, seed, all));
    OddsAnswer whole = parts.map(p -> told(answer, p)).orElse(answer);
    return Optional.of(new Told(whole, parts, lines(number, seen, gauged, answer)));
  }

  private Optional<PartLog> log(ProgramOptions.Job job, GaugeAnswer gauged)
      throws RequestException {
    if (log.isEmpty()) {
      return Optional.empty();
    }
    OutputFile.check(log.get(), inputs(job));
    return Optional.of(PartLog.read(log.get(), job.interpretation().file(), gauged));
  }

  private static Path[] inputs(ProgramOptions.Job job) {
    return Stream.concat(
            Stream.of(job.interpretation().file(), job.sheet().file())
                .filter(name -> !name.isEmpty())
                .map(Path::of),
            Stream.of(job.subprogramFiles()))
        .toArray(Path[]::new);
  }

  private static double wear(ThreadAnswer thread) {
    return thread.offset().map(OffsetAdvice::now).orElse(0.0);
  }

  private void check() throws RequestException {
    if (draws < 1 || draws > MOST_DRAWS) {
      throw wrong("--draws " + draws + " is out of range", "1 to " + MOST_DRAWS, "write 10000");
    }
    if (part.isPresent() && part.get() < 1) {
      throw wrong("--part " + part.get() + " is no part", "parts count from 1", "write 1");
    }
    if ((part.isPresent() || date.isPresent()) && observed.isEmpty()) {
      throw wrong(
          "--part and --date say nothing without --observed",
          "they belong to what was seen on one part",
          "add, say, --observed go=enters");
    }
    if (date.isPresent()) {
      try {
        LocalDate.parse(date.get());
      } catch (DateTimeParseException e) {
        throw wrong(
            "--date " + date.get() + " is no date",
            "year, month and day are wanted",
            "write, say, --date 2026-11-28");
      }
    }
  }

  private Map<String, List<Observation>> seen(GaugeAnswer gauged, LengthUnit unit)
      throws RequestException {
    List<String> holes = gauged.threads().stream().map(ThreadAnswer::hole).toList();
    Map<String, List<Observation>> seen = new LinkedHashMap<>();
    for (String text : observed) {
      int colon = text.indexOf(':');
      int equals = text.indexOf('=');
      boolean named = colon >= 0 && (equals < 0 || colon < equals);
      String hole = named ? text.substring(0, colon).strip() : only(text, holes);
      if (!holes.contains(hole)) {
        throw wrong(
            "--observed " + text + " names no thread that the program cuts",
            holes.isEmpty() ? "it cuts none" : "it cuts " + String.join(", ", holes),
            Nearest.of(hole, holes).map(n -> "write \"" + n + ": …\"").orElse(""));
      }
      String what = named ? text.substring(colon + 1) : text;
      try {
        seen.computeIfAbsent(hole, h -> new ArrayList<>()).add(Observation.of(what, unit));
      } catch (IllegalArgumentException e) {
        throw wrong(
            "--observed " + text + " is not understood",
            e.getMessage(),
            "write one of: " + Observation.FORMS);
      }
    }
    return seen;
  }

  private static String only(String text, List<String> holes) throws RequestException {
    if (holes.size() != 1) {
      throw wrong(
          "--observed " + text + " does not say in which hole",
          holes.isEmpty()
              ? "the program cuts no thread"
              : "the program cuts threads in " + String.join(", ", holes),
          holes.isEmpty() ? "" : "write \"" + holes.get(0) + ": " + text + "\"");
    }
    return holes.get(0);
  }

  private List<PartLog.Line> lines(
      int number, Map<String, List<Observation>> seen, GaugeAnswer gauged, OddsAnswer answer) {
    List<PartLog.Line> lines = new ArrayList<>();
    for (ThreadAnswer thread : gauged.threads()) {
      Optional<GaugingAdvice> advice = answer.advice(thread.hole());
      if (seen.containsKey(thread.hole()) && advice.isPresent()) {
        PartObserved now = new PartObserved(number, wear(thread), seen.get(thread.hole()));
        lines.add(new PartLog.Line(thread, now, date, advice.get()));
      }
    }
    return lines;
  }

  /** What the reading of the log told stands with the rest. */
  private static OddsAnswer told(OddsAnswer answer, PartLog parts) {
    List<String> assumptions = new ArrayList<>(answer.assumptions());
    assumptions.addAll(parts.assumptions());
    List<Finding> findings = new ArrayList<>(parts.findings());
    findings.addAll(answer.findings());
    return new OddsAnswer(answer.odds(), answer.advice(), assumptions, findings);
  }

  private static RequestException wrong(String what, String why, String fix) {
    return RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, why, fix));
  }
}
