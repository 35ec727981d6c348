package flankfit.cli;

import flankfit.gauge.BendingAnswer;
import flankfit.gauge.PassCut;
import flankfit.unit.LengthUnit;

/** How passes cut and what bending makes of a thread, for a person. */
final class CuttingText {
  private static final String UNDER_PASS = " ".repeat(18);

  private CuttingText() {}

  /** One line under the line of a pass. */
  static void pass(PassCut cut, LengthUnit unit, StringBuilder out) {
    out.append(UNDER_PASS).append("feed ").append(feed(cut.feedCentre(), unit));
    out.append(", at the edge ").append(feed(cut.feedEdge(), unit));
    out.append(' ').append(unit.symbol()).append("/min");
    cut.push().ifPresent(push -> push(push, unit, out));
    out.append("; ").append(Figures.plain(cut.seconds(), 0)).append(" s\n");
  }

  private static String feed(double millimetres, LengthUnit unit) {
    return Figures.plain(unit.fromMillimetres(millimetres), unit == LengthUnit.INCH ? 1 : 0);
  }

  private static void push(PassCut.Push push, LengthUnit unit, StringBuilder out) {
    out.append("; ").append(Figures.plain(Math.abs(push.away()), 0));
    out.append(push.away() < 0 ? " N pull it in " : " N push it off ");
    out.append(fine(Math.abs(push.deflection()), unit)).append(' ').append(unit.symbol());
    out.append("; ").append(Figures.plain(push.power(), 0)).append(" W");
  }

  /** What a rubbing edge and one more spring pass would change. */
  static void bending(BendingAnswer bending, LengthUnit unit, StringBuilder out) {
    out.append("    bending in ").append(bending.material());
    out.append(": each force may be off by ");
    out.append(Figures.plain(100 * bending.uncertainty(), 0)).append(" %\n");
    if (!fine(bending.pitchTight(), unit).equals(fine(bending.pitchLoose(), unit))) {
      out.append("      its rows leave pitch diameters from ")
          .append(fine(bending.pitchTight(), unit));
      out.append(" to ").append(fine(bending.pitchLoose(), unit)).append(' ').append(unit.symbol());
      out.append('\n');
    }
    out.append("      one more spring pass changes the pitch diameter by ");
    out.append(fine(bending.springGain(), unit)).append(' ').append(unit.symbol()).append('\n');
    out.append("      where edges rub it is ").append(fine(bending.practicePitch(), unit));
    out.append(' ').append(unit.symbol()).append(", and one more spring pass changes it by ");
    out.append(fine(bending.springGainPractice(), unit)).append('\n');
  }

  private static String fine(double millimetres, LengthUnit unit) {
    return Figures.fixed(unit.fromMillimetres(millimetres), Figures.decimals(unit) + 1);
  }
}
