package flankfit.cli;

import flankfit.gauge.DepthReading;
import flankfit.gauge.Measures;
import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.ThreadAnswer;
import flankfit.paper.Table;
import flankfit.paper.Table.Cell;
import flankfit.paper.Table.Column;
import flankfit.paper.Table.Kind;
import flankfit.paper.Words;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is predicted of a thread, with room for what was measured; what to key in. */
final class ReportMeasures {
  private final LengthUnit unit;
  private final List<List<Cell>> rows = new ArrayList<>();

  private ReportMeasures(LengthUnit unit) {
    this.unit = unit;
  }

  /** The table of a thread. */
  static Table of(ThreadAnswer thread) {
    ReportMeasures table = new ReportMeasures(GaugeText.unit(thread));
    table.write(thread);
    List<Column> columns =
        List.of(
            new Column("", Kind.WORDS),
            new Column("predicted (" + table.unit.symbol() + ")", Kind.FIGURES),
            new Column("limits", Kind.WORDS),
            new Column("measured", Kind.WORDS));
    return new Table(columns, true, table.rows);
  }

  private void write(ThreadAnswer thread) {
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
    rows.add(
        List.of(
            Cell.of(name),
            Cell.of(predicted),
            Cell.of(limits),
            measured ? Cell.blank() : Cell.empty()));
  }

  /** What to key in; empty when no register moves the finishing pass. */
  static Optional<Words> offset(ThreadAnswer thread) {
    LengthUnit unit = GaugeText.unit(thread);
    return thread.offset().map(offset -> offset(offset, unit));
  }

  private static Words offset(OffsetAdvice offset, LengthUnit unit) {
    Words words =
        Words.strong(offset.register() + " wear")
            .then(" is " + Figures.lengthWithUnit(offset.now(), unit));
    if (!offset.hasWindow()) {
      return words.then("; no value suits both gauges.");
    }
    String window =
        "; "
            + Figures.lengthWithUnit(offset.keyToMiddle(), unit)
            + " brings the middle; GO enters up to "
            + Figures.lengthWithUnit(offset.keyToGoLimit(), unit)
            + ", NO-GO stops up to "
            + Figures.lengthWithUnit(offset.keyToNoGoLimit(), unit)
            + '.';
    String set =
        offset
            .setBy()
            .map(
                by ->
                    " G10 in line "
                        + by.place().line()
                        + " overwrites the register: write the value there.")
            .orElse("");
    return words.then(window + set);
  }
}
