package flankfit.cli;

import static flankfit.cli.HtmlText.escaped;

import flankfit.gauge.DepthReading;
import flankfit.gauge.Measures;
import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.ThreadAnswer;
import flankfit.unit.LengthUnit;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is predicted of a thread, with room for what was measured; what to key in. */
final class ReportMeasures {
  private final LengthUnit unit;
  private final StringBuilder out = new StringBuilder();

  private ReportMeasures(LengthUnit unit) {
    this.unit = unit;
  }

  /** The table of a thread. */
  static String of(ThreadAnswer thread) {
    ReportMeasures table = new ReportMeasures(GaugeText.unit(thread));
    table.write(thread);
    return table.out.toString();
  }

  private void write(ThreadAnswer thread) {
    out.append("<table>\n<tr><th>predicted (").append(unit.symbol());
    out.append(")</th><th></th><th>limits</th><th>measured</th></tr>\n");
    String plug = thread.internal() ? " plug" : " ring";
    thread
        .real()
        .ifPresent(
            real -> {
              row(
                  "GO" + plug,
                  real.reachesWanted() ? "enters" : "stops",
                  Figures.fixed(real.go().turns(), 1) + " turns",
                  true);
              row(
                  "NO-GO" + plug,
                  Figures.fixed(real.noGo().turns(), 1) + " turns",
                  "at most " + Figures.plain(real.noGo().allowed(), 1),
                  true);
              real.depth().ifPresent(this::depth);
            });
    thread
        .plain()
        .ifPresent(
            p ->
                row(
                    "plain plugs",
                    p.goEnters() ? "GO enters" : "GO stops",
                    p.noGoStops() ? "NO-GO stops" : "NO-GO enters",
                    true));
    thread.finished().ifPresent(m -> measures(thread, m));
    out.append("</table>\n");
  }

  private void depth(DepthReading depth) {
    row("depth", length(depth.reads()), "at least " + length(depth.wanted()), true);
  }

  private void measures(ThreadAnswer thread, Measures m) {
    var limits = thread.limits();
    String pitch = length(limits.pitchMin()) + " to " + length(limits.pitchMax());
    row("pitch diameter", GaugeText.fine(m.pitchSimple(), unit), pitch, false);
    m.pitchOverBall()
        .ifPresent(p -> row("pitch diameter over balls", GaugeText.fine(p, unit), pitch, true));
    row(
        "functional diameter",
        GaugeText.fine(m.functional(), unit),
        thread.go().map(g -> "GO " + GaugeText.fine(g.pitch(), unit)).orElse(""),
        false);
    row("major diameter", length(m.major()), range(limits.majorMin(), limits.majorMax()), false);
    row("minor diameter", length(m.minor()), range(limits.minorMin(), limits.minorMax()), true);
  }

  private static String range(OptionalDouble least, OptionalDouble most, LengthUnit unit) {
    String from = least.isPresent() ? Figures.length(least.getAsDouble(), unit) : "";
    String to = most.isPresent() ? Figures.length(most.getAsDouble(), unit) : "";
    if (from.isEmpty() || to.isEmpty()) {
      return (from.isEmpty() ? "" : "at least " + from) + (to.isEmpty() ? "" : "at most " + to);
    }
    return from + " to " + to;
  }

  private String range(OptionalDouble least, OptionalDouble most) {
    return range(least, most, unit);
  }

  private String length(double millimetres) {
    return Figures.length(millimetres, unit);
  }

  private void row(String name, String predicted, String limits, boolean measured) {
    out.append("<tr><td>").append(escaped(name)).append("</td><td class=\"n\">");
    out.append(escaped(predicted)).append("</td><td>").append(escaped(limits));
    out.append("</td><td").append(measured ? " class=\"fill\"" : "").append("></td></tr>\n");
  }

  /** What to key in; empty when no register moves the finishing pass. */
  static Optional<String> offset(ThreadAnswer thread) {
    LengthUnit unit = GaugeText.unit(thread);
    return thread.offset().map(offset -> offset(offset, unit));
  }

  private static String offset(OffsetAdvice offset, LengthUnit unit) {
    StringBuilder out = new StringBuilder("<p><b>").append(escaped(offset.register()));
    out.append(" wear</b> is ").append(Figures.lengthWithUnit(offset.now(), unit));
    if (!offset.hasWindow()) {
      return out.append("; no value suits both gauges.</p>\n").toString();
    }
    out.append("; ").append(Figures.lengthWithUnit(offset.keyToMiddle(), unit));
    out.append(" brings the middle; GO enters up to ");
    out.append(Figures.lengthWithUnit(offset.keyToGoLimit(), unit));
    out.append(", NO-GO stops up to ");
    out.append(Figures.lengthWithUnit(offset.keyToNoGoLimit(), unit)).append('.');
    offset
        .setBy()
        .ifPresent(
            set ->
                out.append(" G10 in line ")
                    .append(set.place().line())
                    .append(" overwrites the register: write the value there."));
    return out.append("</p>\n").toString();
  }
}
