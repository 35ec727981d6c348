package flankfit.cli;

import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.Measures;
import flankfit.gauge.RegisterSweep;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Verdict;
import flankfit.odds.OddsAnswer;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** The gauge answer for a person: verdict first, figures, what to key in, cautions last. */
final class GaugeText {
  /** Width of a row's name. */
  static final int NAME = 30;

  /** Begins what a switch at its default would change otherwise. */
  private static final String DEFAULT = " (the default; ";

  private final StringBuilder out = new StringBuilder();
  private final String program;
  private final Style style;
  private final Optional<Double> wearLimit;

  private GaugeText(String program, Style style, Optional<Double> wearLimit) {
    this.program = program;
    this.style = style;
    this.wearLimit = wearLimit;
  }

  /** The text. */
  static String of(
      ProgramOptions.Job job,
      GaugeAnswer answer,
      Optional<OddsAnswer> odds,
      Optional<RegisterSweep> sweep,
      List<Path> written,
      List<Finding> findings,
      Style style) {
    Optional<Double> wearLimit = job.sheet().control().tools().wearLimit();
    GaugeText text = new GaugeText(job.interpretation().file(), style, wearLimit);
    text.errorsFirst(findings);
    text.threads(answer.threads());
    odds.ifPresent(o -> OddsText.write(o, answer.threads(), style, text.out));
    sweep.ifPresent(swept -> SweepText.write(swept, answer.threads(), style, text.out));
    written.forEach(file -> text.out.append("picture ").append(file).append('\n'));
    text.findings(findings);
    text.assumed(assumptions(job, answer, odds));
    Cautions.write(text.out);
    return text.out.toString();
  }

  /** What control, gauging and odds assumed, each sentence once. */
  static List<String> assumptions(
      ProgramOptions.Job job, GaugeAnswer answer, Optional<OddsAnswer> odds) {
    Set<String> all = new LinkedHashSet<>(job.interpretation().assumptions());
    all.addAll(answer.assumptions());
    odds.ifPresent(o -> all.addAll(o.assumptions()));
    return List.copyOf(all);
  }

  private void errorsFirst(List<Finding> findings) {
    List<Finding> errors = findings.stream().filter(f -> f.severity() == Severity.ERROR).toList();
    if (!errors.isEmpty()) {
      out.append(style.severity(Severity.ERROR, errors.size() == 1 ? "error" : "errors"));
      out.append(" to mend first\n");
      new FindingText(style).brief(program, errors, out);
      out.append('\n');
    }
  }

  /** Threads that measure alike, as those of a hole pattern do, are told once. */
  private void threads(List<ThreadAnswer> threads) {
    Map<String, List<ThreadAnswer>> alike = new LinkedHashMap<>();
    for (ThreadAnswer thread : threads) {
      alike.computeIfAbsent(figures(thread), key -> new ArrayList<>()).add(thread);
    }
    alike.forEach((figures, group) -> group(group, figures));
  }

  private void group(List<ThreadAnswer> group, String figures) {
    ThreadAnswer first = group.get(0);
    boolean good = first.verdict() == Verdict.GAUGES_GOOD;
    String holes = group.stream().map(ThreadAnswer::hole).collect(Collectors.joining(", "));
    String head = (good ? "[+] " : "[x] ") + first.designation() + " in " + holes + ": ";
    out.append(
        style.severity(good ? Severity.NOTE : Severity.ERROR, head + first.verdict().words()));
    out.append('\n').append(figures);
    passes(group);
    first.offset().ifPresent(o -> OffsetText.write(o, wearLimit, program, unit(first), style, out));
    out.append('\n');
  }

  private String figures(ThreadAnswer thread) {
    GaugeText text = new GaugeText(program, style, wearLimit);
    text.out.append("    ");
    FindingText.wrap(thread.reason(), "    ", text.out);
    thread.finished().ifPresent(measures -> text.measures(thread, measures));
    thread.real().ifPresent(real -> RealText.write(thread, real, unit(thread), text.out));
    return text.out.toString();
  }

  /** The unit that the thread is named in. */
  static LengthUnit unit(ThreadAnswer thread) {
    return thread.spec().threadsPerInch().isPresent() ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
  }

  private void measures(ThreadAnswer thread, Measures m) {
    LengthUnit unit = unit(thread);
    boolean inside = thread.internal();
    row(
        "pitch diameter, simple",
        m.pitchSimple(),
        unit,
        range(
                OptionalDouble.of(thread.limits().pitchMin()),
                OptionalDouble.of(thread.limits().pitchMax()),
                unit)
            + thread.noGo().map(g -> "; NO-GO " + fine(g.pitch(), unit)).orElse(""));
    row(
        "functional, full crest",
        m.functional(),
        unit,
        thread
            .go()
            .map(g -> "GO " + fine(g.pitch(), unit) + ", touched first by " + m.decidedBy().word())
            .orElse(""));
    // Alone they matter where the crest costs something.
    if (!fine(m.functionalFlank(), unit).equals(fine(m.functional(), unit))) {
      row("functional, flanks alone", m.functionalFlank(), unit, "");
    }
    m.pitchOverBall().ifPresent(p -> row("pitch diameter over balls", p, unit, ""));
    row(
        "major diameter",
        m.major(),
        unit,
        range(thread.limits().majorMin(), thread.limits().majorMax(), unit));
    row(
        "minor diameter",
        m.minor(),
        unit,
        range(thread.limits().minorMin(), thread.limits().minorMax(), unit));
    out.append("    ").append(Figures.left("flank angles, up and down", NAME));
    out.append(Figures.right(Figures.fixed(Angles.toDegrees(m.flankAngleUp()), 2) + "°", 10));
    out.append(Figures.right(Figures.fixed(Angles.toDegrees(m.flankAngleDown()), 2) + "°", 10));
    out.append("     wanted ")
        .append(Figures.plain(Angles.toDegrees(thread.spec().halfAngle()), 2))
        .append("°\n");
    out.append("    ").append(Figures.left("lead, hand, cutting", NAME));
    out.append(Figures.right(Figures.length(thread.lead(), unit), 10))
        .append(' ')
        .append(unit.symbol())
        .append("  ")
        .append(thread.rightHand() ? "right" : "left")
        .append(" hand, ")
        .append(thread.cutting())
        .append(inside ? ", inside" : ", outside");
    out.append(", Z ")
        .append(Figures.length(thread.zTop(), unit))
        .append(" to ")
        .append(Figures.length(thread.zBottom(), unit))
        .append('\n');
  }

  private void row(String name, double value, LengthUnit unit, String against) {
    out.append("    ").append(Figures.left(name, NAME));
    out.append(Figures.right(fine(value, unit), 10)).append(' ').append(unit.symbol());
    if (!against.isEmpty()) {
      out.append("  ").append(against);
    }
    out.append('\n');
  }

  /** Measures are told to one decimal more than the least increment. */
  static String fine(double millimetres, LengthUnit unit) {
    return Figures.fixed(unit.fromMillimetres(millimetres), Figures.decimals(unit) + 1);
  }

  private static String range(OptionalDouble least, OptionalDouble most, LengthUnit unit) {
    if (least.isPresent() && most.isPresent()) {
      return "limits "
          + Figures.length(least.getAsDouble(), unit)
          + " to "
          + Figures.length(most.getAsDouble(), unit);
    }
    if (least.isPresent()) {
      return "least " + Figures.length(least.getAsDouble(), unit);
    }
    return most.isPresent() ? "greatest " + Figures.length(most.getAsDouble(), unit) : "";
  }

  private void passes(List<ThreadAnswer> group) {
    ThreadAnswer first = group.get(0);
    LengthUnit unit = unit(first);
    for (int i = 0; i < first.passes().size(); i++) {
      ThreadAnswer.PassAnswer pass = first.passes().get(i);
      int index = i;
      // Holes that one subprogram cuts share its lines.
      List<String> lines =
          group.stream()
              .filter(thread -> index < thread.passes().size())
              .map(thread -> Integer.toString(thread.passes().get(index).line()))
              .distinct()
              .toList();
      out.append("    ").append(Figures.left(pass.role().word() + " pass", 14));
      out.append("path radius ").append(fine(pass.radius(), unit)).append(' ');
      out.append(unit.symbol());
      pass.after()
          .ifPresent(
              after ->
                  out.append(", leaves pitch diameter ")
                      .append(fine(after.pitch(), unit))
                      .append(' ')
                      .append(unit.symbol()));
      pass.cut().ifPresent(cut -> CuttingText.push(cut, unit, out));
      out.append(lines.size() == 1 ? "  (line " : "  (lines ");
      out.append(String.join(", ", lines)).append(")\n");
      pass.cut()
          .filter(cut -> pass.role() == ThreadAnswer.Role.FINISH)
          .ifPresent(cut -> CuttingText.pass(cut, unit, out));
    }
    first.bending().ifPresent(bending -> CuttingText.bending(bending, unit, out));
  }

  private void findings(List<Finding> findings) {
    List<Finding> warnings =
        findings.stream().filter(f -> f.severity() == Severity.WARNING).toList();
    new FindingText(style).brief(program, warnings, out);
    long notes = findings.stream().filter(f -> f.severity() == Severity.NOTE).count();
    if (notes > 0) {
      out.append("  ").append(Figures.count(notes, "note"));
      out.append(" more: --format json lists them\n");
    }
  }

  private void assumed(List<String> assumptions) {
    if (assumptions.isEmpty()) {
      return;
    }
    out.append("\nassumed\n");
    for (String assumption : inShort(assumptions)) {
      out.append("  ");
      FindingText.wrap(assumption, "  ", out);
    }
  }

  /** Switches left at defaults that mattered are only named: the motion tells what they do. */
  private static List<String> inShort(List<String> assumptions) {
    List<String> told = new ArrayList<>();
    List<String> switches = new ArrayList<>();
    for (String assumption : assumptions) {
      int end = assumption.indexOf(DEFAULT);
      if (end < 0) {
        told.add(assumption);
      } else {
        switches.add(assumption.substring(0, Math.min(end, assumption.indexOf(" = "))));
      }
    }
    if (!switches.isEmpty()) {
      told.add("defaults of the control that matter: " + String.join(", ", switches));
    }
    return told;
  }
}
