package flankfit.cli;

import flankfit.finding.Severity;
import flankfit.gauge.Measures;
import flankfit.gauge.RegisterSweep;
import flankfit.gauge.RegisterSweep.Step;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Verdict;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;

/** A sweep of a register as a table for each thread. */
final class SweepText {
  private static final int FIGURE = 11;

  private SweepText() {}

  /** Appends the tables. */
  static void write(
      RegisterSweep sweep, List<ThreadAnswer> threads, Style style, StringBuilder out) {
    for (ThreadAnswer thread : threads) {
      table(sweep, thread, style, out);
    }
  }

  private static void table(
      RegisterSweep sweep, ThreadAnswer thread, Style style, StringBuilder out) {
    LengthUnit unit = GaugeText.unit(thread);
    out.append(style.strong("D" + sweep.register() + " wear"));
    out.append(" for ").append(thread.designation()).append(" in ").append(thread.hole());
    out.append(", ").append(unit.symbol()).append("; the sheet has ");
    out.append(Figures.length(sweep.now(), unit)).append('\n');
    out.append(Figures.right("wear", FIGURE)).append(Figures.right("pitch", FIGURE));
    out.append(Figures.right("functional", FIGURE + 1)).append("   gauges\n");
    for (Step step : sweep.steps()) {
      row(step, thread.hole(), unit, style, out);
    }
    out.append('\n');
  }

  private static void row(Step step, String hole, LengthUnit unit, Style style, StringBuilder out) {
    out.append(Figures.right(Figures.length(step.wear(), unit), FIGURE));
    Optional<ThreadAnswer> thread = step.thread(hole);
    Optional<Measures> measures = thread.flatMap(ThreadAnswer::finished);
    out.append(figure(measures.map(Measures::pitchSimple), unit, FIGURE));
    out.append(figure(measures.map(Measures::functional), unit, FIGURE + 1));
    boolean good = thread.map(t -> t.verdict() == Verdict.GAUGES_GOOD).orElse(false);
    String words =
        thread.map(t -> t.verdict().words()).orElse("the program stops at an error with it");
    out.append("   ");
    out.append(
        style.severity(good ? Severity.NOTE : Severity.ERROR, (good ? "[+] " : "[x] ") + words));
    out.append('\n');
  }

  private static String figure(Optional<Double> value, LengthUnit unit, int width) {
    return Figures.right(value.map(v -> GaugeText.fine(v, unit)).orElse("-"), width);
  }
}
