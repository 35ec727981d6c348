package flankfit.cli;

import flankfit.standard.Drill;
import flankfit.standard.Limits;
import flankfit.standard.PlugGauges;
import flankfit.standard.ThreadSpec;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.OptionalDouble;

/** Limits, gauges and drill for people: in the standard's own unit, with the other beside it. */
final class ThreadText {
  private final StringBuilder out = new StringBuilder();
  private final Style style;

  private ThreadText(Style style) {
    this.style = style;
  }

  /** The text for some threads. */
  static String of(List<ThreadSpec> threads, Style style) {
    ThreadText text = new ThreadText(style);
    for (ThreadSpec thread : threads) {
      text.thread(thread);
    }
    text.out.append("Limits are for uncoated threads at 20 °C and normal length of engagement.\n");
    text.out.append("The standard named on the drawing and calibrated gauges decide.\n");
    return text.out.toString();
  }

  private void thread(ThreadSpec thread) {
    boolean inch = thread.threadsPerInch().isPresent();
    LengthUnit first = inch ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    LengthUnit second = inch ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    out.append(style.strong(thread.designation()))
        .append(thread.internal() ? ", internal" : ", external")
        .append(thread.leftHand() ? ", left hand" : "")
        .append('\n');
    out.append("  pitch ").append(pitch(thread));
    out.append(", lead angle ").append(Figures.fixed(Angles.toDegrees(thread.leadAngle()), 3));
    out.append("°\n");
    out.append(Figures.left("", 24)).append(Figures.right("least " + first.symbol(), 12));
    out.append(Figures.right("greatest " + first.symbol(), 14));
    out.append(Figures.right("least " + second.symbol(), 13));
    out.append(Figures.right("greatest " + second.symbol(), 14)).append('\n');
    Limits limits = thread.limits();
    row("major diameter", limits.majorMin(), limits.majorMax(), first, second);
    row(
        "pitch diameter",
        OptionalDouble.of(limits.pitchMin()),
        OptionalDouble.of(limits.pitchMax()),
        first,
        second);
    row("minor diameter", limits.minorMin(), limits.minorMax(), first, second);
    thread.gauges().ifPresent(g -> gauges(g, first, second));
    thread.drill().ifPresent(d -> drill(d, first, second));
    thread.sources().forEach(this::source);
    out.append('\n');
  }

  private static String pitch(ThreadSpec thread) {
    String millimetres = Figures.plain(thread.pitch(), 6) + " mm";
    if (thread.threadsPerInch().isEmpty()) {
      return millimetres;
    }
    return Figures.plain(thread.threadsPerInch().getAsDouble(), 4)
        + " threads per inch, "
        + Figures.fixed(LengthUnit.INCH.fromMillimetres(thread.pitch()), 6)
        + " in, "
        + millimetres;
  }

  private void row(
      String name, OptionalDouble least, OptionalDouble most, LengthUnit first, LengthUnit second) {
    out.append("  ").append(Figures.left(name, 22));
    out.append(Figures.right(figure(least, first), 12));
    out.append(Figures.right(figure(most, first), 14));
    out.append(Figures.right(figure(least, second), 13));
    out.append(Figures.right(figure(most, second), 14)).append('\n');
  }

  private static String figure(OptionalDouble value, LengthUnit unit) {
    return value.isEmpty() ? "not limited" : Figures.length(value.getAsDouble(), unit);
  }

  private void gauges(PlugGauges gauges, LengthUnit first, LengthUnit second) {
    gauge("GO plug, pitch diameter", gauges.goPitch(), first, second);
    gauge("GO plug, least major", gauges.goMajorMin(), first, second);
    gauge("NO-GO plug, pitch dia.", gauges.noGoPitch(), first, second);
    gauge("NO-GO plug, most major", gauges.noGoMajorMax(), first, second);
    gauge("plain GO plug", gauges.plainGo(), first, second);
    gauge("plain NO-GO plug", gauges.plainNoGo(), first, second);
    out.append("  NO-GO may enter ").append(Figures.plain(gauges.turnsAllowed(), 2));
    out.append(" turns\n");
    source(gauges.rule());
  }

  private void gauge(String name, double size, LengthUnit first, LengthUnit second) {
    out.append("  ").append(Figures.left(name, 24));
    out.append(Figures.right(precise(size, first), 10)).append(' ').append(first.symbol());
    out.append(Figures.right(precise(size, second), 14)).append(' ').append(second.symbol());
    out.append('\n');
  }

  /** Gauges are told to one decimal more than threads. */
  private static String precise(double millimetres, LengthUnit unit) {
    return Figures.fixed(unit.fromMillimetres(millimetres), Figures.decimals(unit) + 1);
  }

  private void drill(Drill drill, LengthUnit first, LengthUnit second) {
    out.append("  drill ").append(drill.name()).append(" (");
    out.append(Figures.lengthWithUnit(drill.diameter(), first)).append(", ");
    out.append(Figures.lengthWithUnit(drill.diameter(), second)).append(") leaves ");
    out.append(Figures.fixed(drill.engagementPercent(), 0)).append(" % of the thread height\n");
  }

  private void source(String text) {
    out.append("  ");
    FindingText.wrap(text, "    ", out);
  }
}
