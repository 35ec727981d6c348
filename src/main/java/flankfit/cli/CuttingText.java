package flankfit.cli;

import flankfit.gauge.BendingAnswer;
import flankfit.gauge.PassCut;
import flankfit.unit.LengthUnit;

/** How passes cut and what bending makes of a thread, for a person. */
final class CuttingText {
  private CuttingText() {}

  /** How far a pass is pushed off its path, within its line. */
  static void push(PassCut cut, LengthUnit unit, StringBuilder out) {
    cut.push()
        .ifPresent(
            push -> {
              out.append(push.deflection() < 0 ? ", bent in " : ", bent ");
              out.append(fine(Math.abs(push.deflection()), unit)).append(' ');
              out.append(unit.symbol());
            });
  }

  /** Feeds, force and power of a pass, a line of its own. */
  static void pass(PassCut cut, LengthUnit unit, StringBuilder out) {
    int decimals = unit == LengthUnit.INCH ? 1 : 0;
    out.append("                  feed ");
    out.append(Figures.plain(unit.fromMillimetres(cut.feedCentre()), decimals));
    out.append(", at the edge ");
    out.append(Figures.plain(unit.fromMillimetres(cut.feedEdge()), decimals));
    out.append(' ').append(unit.symbol()).append("/min; ");
    cut.push()
        .ifPresent(
            push -> {
              out.append(Figures.plain(push.away(), 0)).append(" N away from the wall, ");
              out.append(Figures.plain(push.power(), 0)).append(" W; ");
            });
    out.append(Figures.plain(cut.seconds(), 0)).append(" s\n");
  }

  /** What bending makes of a thread. */
  static void bending(BendingAnswer bending, LengthUnit unit, StringBuilder out) {
    String share = Figures.plain(100 * bending.uncertainty(), 0);
    out.append("    stiff ").append(fine(bending.rigidPitch(), unit));
    out.append(", edges rubbing ").append(fine(bending.practicePitch(), unit));
    out.append(", one more spring pass ").append(signed(bending.springGain(), unit));
    out.append(' ').append(unit.symbol());
    out.append("; forces ±").append(share).append(" %\n");
    if (!fine(bending.pitchTight(), unit).equals(fine(bending.pitchLoose(), unit))) {
      out.append("    taper: rows leave ").append(fine(bending.pitchTight(), unit));
      out.append(" to ").append(fine(bending.pitchLoose(), unit)).append(' ');
      out.append(unit.symbol()).append('\n');
    }
  }

  private static String signed(double millimetres, LengthUnit unit) {
    return (millimetres < 0 ? "" : "+") + fine(millimetres, unit);
  }

  private static String fine(double millimetres, LengthUnit unit) {
    return Figures.fixed(unit.fromMillimetres(millimetres), Figures.decimals(unit) + 1);
  }
}
