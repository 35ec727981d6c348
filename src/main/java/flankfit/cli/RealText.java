package flankfit.cli;

import flankfit.gauge.Departure;
import flankfit.gauge.RealAnswer;
import flankfit.gauge.WallMeasures;
import flankfit.sweep.Rub;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;

/** What gauges do on the wall of the real path, for a person. */
final class RealText {
  private static final String INDENT = "      ";

  /** Length over which taper is told (mm). */
  private static final double TAPER_OVER = 10;

  private RealText() {}

  /** Appends a few lines. */
  static void write(RealAnswer real, LengthUnit unit, StringBuilder out) {
    out.append("    on the path as moved, entry and exit included\n").append(INDENT);
    FindingText.wrap(real.words(), INDENT, out);
    real.measures().ifPresent(m -> FindingText.wrap(measures(m, unit), INDENT, indent(out)));
    real.rubs().stream()
        .findFirst()
        .ifPresent(rub -> FindingText.wrap(rubs(rub, unit), INDENT, indent(out)));
  }

  private static StringBuilder indent(StringBuilder out) {
    return out.append(INDENT);
  }

  private static String measures(WallMeasures m, LengthUnit unit) {
    Departure deepest = m.deepest();
    return "pitch diameter "
        + GaugeText.fine(m.pitch().least(), unit)
        + " to "
        + GaugeText.fine(m.pitch().greatest(), unit)
        + " "
        + unit.symbol()
        + "; over "
        + Figures.lengthWithUnit(TAPER_OVER, unit)
        + " it tapers by "
        + GaugeText.fine(m.taper() * TAPER_OVER, unit)
        + "; out of round by "
        + GaugeText.fine(m.roundness(), unit)
        + "; deepest mark "
        + GaugeText.fine(deepest.depth(), unit)
        + " at "
        + Math.round(Angles.toDegrees(deepest.theta()))
        + "°, Z"
        + Figures.length(deepest.z(), unit)
        + "; "
        + Figures.fixed(m.ends().fullTurns(), 1)
        + " turns of full form";
  }

  private static String rubs(Rub rub, LengthUnit unit) {
    return "the "
        + rub.section().name()
        + " rubs "
        + Figures.lengthWithUnit(rub.depth(), unit)
        + " deep at Z"
        + Figures.length(rub.z(), unit);
  }
}
