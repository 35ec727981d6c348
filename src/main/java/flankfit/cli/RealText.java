package flankfit.cli;

import flankfit.gauge.Departure;
import flankfit.gauge.DepthReading;
import flankfit.gauge.PlainRuling;
import flankfit.gauge.RealAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Travel;
import flankfit.gauge.TurnsRuling;
import flankfit.gauge.WallMeasures;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;

/** What gauges do on the wall of the real path, for a person: a row for each, no more. */
final class RealText {
  /** Length over which taper is told, in millimetres and inches. */
  private static final double TAPER_OVER = 10;

  private static final double TAPER_OVER_INCHES = 1;

  private static final int WIDTH = 100;

  /** Unevenness below which there is none (mm). */
  private static final double NONE = 0.0005;

  private final ThreadAnswer thread;
  private final LengthUnit unit;
  private final StringBuilder out;

  private RealText(ThreadAnswer thread, LengthUnit unit, StringBuilder out) {
    this.thread = thread;
    this.unit = unit;
    this.out = out;
  }

  /** Appends a few lines. */
  static void write(ThreadAnswer thread, RealAnswer real, LengthUnit unit, StringBuilder out) {
    RealText text = new RealText(thread, unit, out);
    text.go(real);
    text.noGo(real.noGo());
    real.measures().ifPresent(text::measures);
    real.plain().ifPresent(text::plain);
  }

  private void go(RealAnswer real) {
    Travel go = real.go();
    String ends = turns(go.turns()) + " turns, " + end(go);
    String gauge = thread.internal() ? "GO plug" : "GO ring";
    if (real.depth().isEmpty()) {
      row(gauge, Figures.fixed(go.turns(), 1), "turns", end(go));
      return;
    }
    DepthReading depth = real.depth().get();
    String wanted = Figures.plain(unit.fromMillimetres(depth.wanted()), Figures.decimals(unit));
    row(
        "GO depth plug",
        Figures.length(depth.reads(), unit),
        unit.symbol(),
        "of " + wanted + " wanted" + (depth.isDeepEnough() ? "; " : ", too short; ") + ends);
  }

  private void noGo(TurnsRuling ruling) {
    Travel most = ruling.travels().get(0);
    for (Travel travel : ruling.travels()) {
      most = travel.turns() > most.turns() ? travel : most;
    }
    String far = most.from() == Travel.From.FAR_END ? ", from the far end" : "";
    row(
        thread.internal() ? "NO-GO plug" : "NO-GO ring",
        turns(ruling.turns()),
        "turns",
        "of " + Figures.plain(ruling.allowed(), 1) + " allowed; " + end(most) + far);
  }

  private static String turns(double turns) {
    return Figures.fixed(turns, 1);
  }

  private static String end(Travel travel) {
    return switch (travel.end()) {
      case THROUGH -> "goes through";
      case ON_FLOOR -> "as far as there is room";
      case STOPPED ->
          "stopped by " + travel.stoppedOn().map(c -> part(c.by().word())).orElse("its thread");
    };
  }

  private static String part(String word) {
    return switch (word) {
      case "flank-up" -> "upper flank";
      case "flank-down" -> "lower flank";
      default -> "its " + word;
    };
  }

  private void measures(WallMeasures m) {
    StringBuilder uneven = new StringBuilder();
    uneven.append("to ").append(GaugeText.fine(m.pitch().greatest(), unit));
    double over = unit == LengthUnit.INCH ? TAPER_OVER_INCHES : TAPER_OVER;
    double taper = m.taper() * unit.toMillimetres(over);
    if (Math.abs(taper) >= NONE) {
      uneven.append(", tapers ").append(GaugeText.fine(taper, unit));
      uneven.append(" over ").append(Figures.plain(over, 0));
    }
    if (m.roundness() >= NONE) {
      uneven.append(", out of round ").append(GaugeText.fine(m.roundness(), unit));
    }
    Departure mark = m.deepest();
    if (mark.depth() >= NONE) {
      uneven.append(", mark ").append(GaugeText.fine(mark.depth(), unit)).append(" at ");
      uneven.append(Math.round(Angles.toDegrees(mark.theta()))).append('°');
    }
    row(
        "pitch diameter",
        GaugeText.fine(m.pitch().least(), unit),
        unit.symbol(),
        uneven.toString());
  }

  /** Plain plugs are told where they do not do what the minor diameter alone makes them do. */
  private void plain(PlainRuling plain) {
    if (plain.goEnters() && plain.noGoStops()) {
      return;
    }
    String go = plain.goEnters() ? "GO enters" : "GO stops at Z" + z(plain.go().z());
    String noGo = plain.noGoStops() ? "NO-GO stops" : "NO-GO goes to Z" + z(plain.noGo().z());
    row("plain plugs", "", "", go + ", " + noGo);
  }

  private String z(double height) {
    return Figures.length(height, unit);
  }

  private void row(String name, String figure, String symbol, String more) {
    String head =
        "    "
            + Figures.left("as moved, " + name, GaugeText.NAME)
            + Figures.right(figure, 10)
            + ' '
            + symbol
            + "  ";
    String line = head + more;
    while (line.length() > WIDTH) {
      int end = line.lastIndexOf(", ", WIDTH - 1);
      if (end <= head.length()) {
        break;
      }
      out.append(line, 0, end + 1).append('\n');
      line = " ".repeat(head.length()) + line.substring(end + 2);
    }
    out.append(line).append('\n');
  }
}
