package flankfit.cli;

import flankfit.gauge.Text;
import flankfit.gauge.ThreadAnswer;
import flankfit.odds.Estimate;
import flankfit.odds.GaugingAdvice;
import flankfit.odds.GaugingAdvice.Chances;
import flankfit.odds.GaugingAdvice.Trend;
import flankfit.odds.OddsAnswer;
import flankfit.odds.PartObserved;
import flankfit.odds.ThreadOdds;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Odds and advice after gauging, for a person. */
final class OddsText {
  private static final String INDENT = "    ";

  /** Contributors that are told; the rest stands in the JSON. */
  private static final int MOST_TOLD = 4;

  /** Times the standard deviation that ± tells, as in a certificate. */
  private static final double EXPANDED = 2;

  private static final int MICROMETRES = 1000;

  private final OddsAnswer answer;
  private final Style style;
  private final StringBuilder out;

  private OddsText(OddsAnswer answer, Style style, StringBuilder out) {
    this.answer = answer;
    this.style = style;
    this.out = out;
  }

  /** Appends what is known of each thread. */
  static void write(OddsAnswer answer, List<ThreadAnswer> threads, Style style, StringBuilder out) {
    OddsText text = new OddsText(answer, style, out);
    threads.forEach(text::thread);
  }

  private void thread(ThreadAnswer thread) {
    LengthUnit unit = GaugeText.unit(thread);
    answer.odds(thread.hole()).ifPresent(odds -> odds(thread, odds, unit));
    answer.advice(thread.hole()).ifPresent(advice -> advice(thread, advice, unit));
  }

  private void odds(ThreadAnswer thread, ThreadOdds odds, LengthUnit unit) {
    head("odds for " + thread.designation() + " in " + thread.hole());
    out.append(": all gauges good in ").append(Text.percent(odds.good())).append('\n');
    line(
        "GO enters "
            + Text.percent(odds.goEnters())
            + ", NO-GO stops "
            + Text.percent(odds.noGoStops())
            + (thread.plain().isPresent()
                ? ", plain plugs pass " + Text.percent(odds.plainGood())
                : "")
            + "; 19 of 20 have pitch diameter "
            + GaugeText.fine(odds.pitchLow(), unit)
            + " to "
            + GaugeText.fine(odds.pitchHigh(), unit)
            + " "
            + unit.symbol());
    line(
        "what scatters most: "
            + odds.contributors().stream()
                .limit(MOST_TOLD)
                .map(c -> c.name() + " " + Math.round(100 * c.share()) + " %")
                .collect(Collectors.joining("; ")));
    out.append('\n');
  }

  private void advice(ThreadAnswer thread, GaugingAdvice advice, LengthUnit unit) {
    observed(thread, advice.observed());
    line(
        "the next part as it is: pitch diameter "
            + estimate(advice.pitch(), unit)
            + "; "
            + chances(advice.asItIs()));
    advice.key().ifPresent(key -> key(key, unit));
    line(
        "believed of the mill: "
            + estimate(advice.cutter(), unit)
            + " over the teeth as it cuts, teeth wider by "
            + estimate(advice.crest(), unit)
            + advice
                .straight()
                .map(p -> "; flanks true V rather than ground: " + Text.percent(p))
                .orElse(""));
    advice.trend().ifPresent(trend -> trend(trend, advice));
    out.append('\n');
  }

  private void observed(ThreadAnswer thread, List<PartObserved> observed) {
    if (observed.isEmpty()) {
      head(thread.hole() + " by what was seen in threads cut alike");
      out.append('\n');
      return;
    }
    PartObserved last = observed.get(observed.size() - 1);
    String seen = last.observations().stream().map(o -> o.text()).collect(Collectors.joining(", "));
    head("after gauging " + thread.hole());
    out.append(observed.size() > 1 ? ", part " + last.part() : "");
    out.append(": ").append(seen).append('\n');
  }

  private void head(String text) {
    out.append(style.strong(text));
  }

  private void line(String text) {
    out.append(INDENT);
    // A percent sign never begins a line.
    FindingText.wrap(text.replace(" %", "\u00a0%"), INDENT, out);
  }

  private void key(GaugingAdvice.Key key, LengthUnit unit) {
    line(
        (key.wear() == key.now() ? "leave " : "key in ")
            + key.register()
            + " wear "
            + Figures.lengthWithUnit(key.wear(), unit)
            + (key.limited() ? ", the control's limit" : "")
            + ": pitch diameter "
            + estimate(key.pitch(), unit)
            + "; "
            + chances(key.chances()));
  }

  private void trend(Trend trend, GaugingAdvice advice) {
    String limit = Text.percent(trend.level());
    line(
        "trend "
            + Figures.signed(MICROMETRES * trend.perPart().value(), 2)
            + " ± "
            + Figures.fixed(EXPANDED * MICROMETRES * trend.perPart().deviation(), 2)
            + " µm a part on the pitch diameter; the chance stays above "
            + limit
            + " as it is"
            + until(trend.reenterAt())
            + advice
                .key()
                .filter(key -> key.wear() != key.now())
                .map(key -> ", after keying in" + until(trend.keyedLasts()))
                .orElse(""));
  }

  private static String until(OptionalInt part) {
    return part.isPresent()
        ? " up to part " + (part.getAsInt() - 1) + " (enter anew at " + part.getAsInt() + ")"
        : " for a thousand parts";
  }

  private static String chances(Chances chances) {
    return "GO enters "
        + Text.percent(chances.goEnters())
        + ", NO-GO stops "
        + Text.percent(chances.noGoStops())
        + ", all good "
        + Text.percent(chances.good());
  }

  private static String estimate(Estimate estimate, LengthUnit unit) {
    return GaugeText.fine(estimate.value(), unit)
        + " ± "
        + GaugeText.fine(EXPANDED * estimate.deviation(), unit)
        + " "
        + unit.symbol();
  }
}
