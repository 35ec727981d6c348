package flankfit.control;

import static org.assertj.core.api.Assertions.fail;

import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;

/** What every tape must hold: arcs run from where the last move ended to their own end. */
final class TapeChecks {
  private static final double NEAR = 1e-6;

  private TapeChecks() {}

  static void assertContinuous(Tape tape) {
    for (int i = 0; i < tape.size(); i++) {
      if (tape.kind(i) == MoveKind.ARC) {
        assertArc(tape, i);
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
    // Worded only when it fails: seeded tests come here often.
    if (Math.abs(Math.hypot(u0, v0) - tape.radius(i)) > NEAR
        || Math.abs(Math.hypot(u1, v1) - tape.endRadius(i)) > NEAR
        || Math.hypot(missU, missV) > NEAR
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
}
