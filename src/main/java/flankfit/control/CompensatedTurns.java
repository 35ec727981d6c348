package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.Plane;
import flankfit.setup.Hole;
import flankfit.unit.Angles;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Compares full turns made under compensation with the holes of the sheet: RC27, RC28. */
final class CompensatedTurns {
  /** A radius fits a wall within this (mm). */
  private static final double FIT = 0.5;

  private static final Pattern METRIC =
      Pattern.compile("M(\\d+(?:\\.\\d+)?)(?:x(\\d+(?:\\.\\d+)?))?.*");

  /** Depth of a thread as a share of its pitch (1). */
  private static final double DEPTH_SHARE = 0.65;

  private final Machine machine;
  private Place place;
  private String register = "";
  private double rho;
  private double toolRadius;
  private boolean centre;
  private boolean wall;
  private boolean reported;

  CompensatedTurns(Machine machine) {
    this.machine = machine;
    this.place = machine.report.place();
  }

  void begin(Place at, String name, double radius, double tool, boolean isCentre, boolean isWall) {
    place = at;
    register = name;
    rho = radius;
    toolRadius = tool;
    centre = isCentre;
    wall = isWall;
    reported = false;
  }

  /** Looks at one arc; only whole turns in the plane across the tool tell anything. */
  void look(ArcSolver arc, Compensation side) {
    boolean whole = Math.abs(arc.sweep()) >= Angles.TURN - 1e-9;
    boolean known = toolRadius > 0 && centre != wall;
    if (reported || !whole || !known || machine.modes.plane() != Plane.XY) {
      return;
    }
    for (Hole hole : machine.setup.holes()) {
      if (Math.hypot(hole.x() - arc.centreU(), hole.y() - arc.centreV()) <= FIT) {
        compare(hole, arc, side);
        return;
      }
    }
  }

  private void compare(Hole hole, ArcSolver arc, Compensation side) {
    double centreWall = hole.boss() ? arc.radius() - toolRadius : arc.radius() + toolRadius;
    boolean fitsCentre = isWall(hole, centreWall);
    boolean fitsWall = isWall(hole, arc.radius());
    if (fitsCentre == fitsWall) {
      return;
    }
    String programmed = machine.length(arc.radius());
    if (fitsCentre && wall) {
      reported = true;
      double turn = Math.signum(arc.sweep()) * (side == Compensation.LEFT ? rho : -rho);
      report(
          Code.RC27,
          "compensated twice: the path is already the tool centre",
          "radius programmed " + programmed + ", with D " + machine.length(arc.radius() - turn),
          "only wear in " + register);
    } else if (fitsWall && centre) {
      reported = true;
      report(
          Code.RC28,
          "not compensated: the path is the wall and " + register + " is " + machine.length(rho),
          "the tool centre would run on the wall, radius " + programmed,
          "radius of the tool into " + register);
    }
  }

  private void report(Code code, String what, String why, String fix) {
    machine.report.add(code, place, what, why, fix);
  }

  /** Whether a radius lies on the wall: between core and outside of the thread, or on the hole. */
  private static boolean isWall(Hole hole, double radius) {
    double low = hole.diameter() / 2;
    double high = low;
    Matcher metric = METRIC.matcher(hole.thread().orElse(""));
    if (metric.matches()) {
      double nominal = Double.parseDouble(metric.group(1)) / 2;
      double pitch = metric.group(2) == null ? 0 : Double.parseDouble(metric.group(2));
      double core = hole.boss() ? nominal - DEPTH_SHARE * pitch : low;
      low = Math.min(low, core);
      high = Math.max(high, nominal);
    }
    return radius >= low - FIT && radius <= high + FIT;
  }
}
