package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.unit.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Words what is found fault with in a compensated path. */
final class CompensationFindings {
  private static final int DECIMALS = 4;

  private final Findings findings;

  CompensationFindings(Findings findings) {
    this.findings = findings;
  }

  void startsInArc(Place place) {
    findings.add(
        Code.RC02,
        place,
        "compensation starts in an arc",
        "it needs a straight move to build up",
        "start it on the line before");
  }

  void endsInArc(Place place) {
    findings.add(
        Code.RC03,
        place,
        "compensation ends in an arc",
        "it needs a straight move",
        "end it on the line after");
  }

  void startUpShort(ProgrammedMove move, double length, double radius, boolean stops) {
    LengthUnit unit = move.state().unit();
    findings.add(
        new Finding(
            Code.RC04,
            stops ? Severity.ERROR : Severity.WARNING,
            move.place(),
            "start-up of " + text(length, unit) + " for " + text(radius, unit),
            "the tool may move against the wall",
            "start farther away"));
  }

  void exceedsArc(ProgrammedMove move, double offset) {
    LengthUnit unit = move.state().unit();
    double radius = Math.min(move.radius(), move.endRadius());
    findings.add(
        Code.RC05,
        move.place(),
        "arc radius "
            + text(radius, unit)
            + " is smaller than the compensation "
            + text(offset, unit),
        "the tool does not fit; it would cut beyond",
        "larger arc, smaller tool, or only the wear in D");
  }

  void doesNotFit(ProgrammedMove before, ProgrammedMove move, double radius) {
    findings.add(
        Code.RC06,
        move.place(),
        "tool of radius "
            + text(radius, move.state().unit())
            + " does not fit between line "
            + before.line()
            + " and this block",
        "the offset walls do not meet",
        "smaller tool, or another path");
  }

  void insideCorner(Place place) {
    findings.add(
        Code.RC07,
        place,
        "inside corner with compensation",
        "inside-corner = error",
        "round it with an arc");
  }

  void insideCornerAfterStartUp(Place place) {
    findings.add(
        Code.RC07,
        place,
        "inside corner with compensation right after the start-up",
        "this start-up stands beside the wall and cannot be shortened",
        "start from the other side of the wall's end");
  }

  void blocksWithoutPlaneMotion(Place place, int blocks, double overcut, LengthUnit unit) {
    findings.add(
        Code.RC17,
        place,
        blocks + " blocks without motion in the plane inside compensation",
        overcut > 0
            ? "a control that looks ahead less overcuts here by up to " + text(overcut, unit)
            : "a control that looks ahead less stands square to the last wall here",
        "move them before the start-up");
  }

  void nothingBetween(Place place) {
    findings.add(
        Code.RC18,
        place,
        "compensation switched on and off with nothing between",
        "no wall was cut with it",
        "delete both");
  }

  void turnsBack(Place place) {
    findings.add(
        Code.RC19,
        place,
        "path turns back on itself",
        "the tool goes round the end",
        "check the block");
  }

  /** A length in the unit of the program, with millimetres beside inches. */
  private static String text(double length, LengthUnit unit) {
    String own = number(unit.fromMillimetres(length)) + " " + unit.symbol();
    return unit == LengthUnit.MILLIMETRE ? own : own + " (" + number(length) + " mm)";
  }

  private static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
