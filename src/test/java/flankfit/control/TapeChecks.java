package flankfit.control;

import static org.assertj.core.api.Assertions.fail;

import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;

/** What every tape must hold: arcs run from where the last move ended to their own end. */
public final class TapeChecks {
  private static final double NEAR = 1e-6;

  /** What rounding may do to a coordinate, as a share of the largest number that made it. */
  private static final double ROUNDING = 1e-14;

  private TapeChecks() {}

  /** Every arc begins where the move before ended and ends at its own end. */
  public static void assertContinuous(Tape tape) {
    for (int i = 0; i < tape.size(); i++) {
      if (tape.kind(i) == MoveKind.ARC) {
        assertArc(tape, i);
      }
    }
  }

  /** No number of the tape is infinite or none. */
  public static void assertFinite(Tape tape) {
    for (int i = 0; i < tape.size(); i++) {
      double sum = tape.toX(i) + tape.toY(i) + tape.toZ(i) + tape.length(i) + tape.seconds(i);
      if (tape.kind(i) == MoveKind.ARC) {
        sum += tape.centreU(i) + tape.centreV(i) + tape.radius(i) + tape.endRadius(i);
        sum += tape.sweep(i);
      }
      if (!Double.isFinite(sum)) {
        fail("move %d on line %d has a number that is none", i, tape.line(i));
      }
    }
  }

  private static void assertArc(Tape tape, int i) {
    Plane plane = tape.state(i).plane();
    double u0 = tape.from(i).axis(plane.u()) - tape.centreU(i);
    double v0 = tape.from(i).axis(plane.v()) - tape.centreV(i);
    double u1 = tape.to(i).axis(plane.u()) - tape.centreU(i);
    double v1 = tape.to(i).axis(plane.v()) - tape.centreV(i);
    double angle = Math.atan2(v0, u0) + tape.sweep(i);
    double missU = u1 - tape.endRadius(i) * Math.cos(angle);
    double missV = v1 - tape.endRadius(i) * Math.sin(angle);
    double near = NEAR + ROUNDING * size(tape, i);
    // Worded only when it fails: seeded tests come here often.
    if (Math.abs(Math.hypot(u0, v0) - tape.radius(i)) > near
        || Math.abs(Math.hypot(u1, v1) - tape.endRadius(i)) > near
        || Math.hypot(missU, missV) > near
        || tape.sweep(i) == 0) {
      fail(
          "arc %d on line %d from %s to %s does not fit centre %s %s, radii %s %s, sweep %s",
          i,
          tape.line(i),
          tape.from(i),
          tape.to(i),
          tape.centreU(i),
          tape.centreV(i),
          tape.radius(i),
          tape.endRadius(i),
          tape.sweep(i));
    }
  }

  /** The largest coordinate an arc is reckoned with (mm); a sweep of many turns weighs its own. */
  private static double size(Tape tape, int i) {
    double size = Math.max(Math.abs(tape.centreU(i)), Math.abs(tape.centreV(i)));
    return Math.max(size, tape.radius(i)) * (1 + Math.abs(tape.sweep(i)));
  }
}
