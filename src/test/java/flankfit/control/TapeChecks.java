package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
    String what = "move " + i + " on line " + tape.line(i);
    assertThat(Math.hypot(u0, v0)).as(what).isCloseTo(tape.radius(i), within(NEAR));
    assertThat(Math.hypot(u1, v1)).as(what).isCloseTo(tape.endRadius(i), within(NEAR));
    double angle = Math.atan2(v0, u0) + tape.sweep(i);
    double miss =
        Math.hypot(
            u1 - tape.endRadius(i) * Math.cos(angle), v1 - tape.endRadius(i) * Math.sin(angle));
    assertThat(miss).as(what + ": sweep misses the end").isLessThan(NEAR);
    assertThat(tape.sweep(i)).as(what).isNotZero();
  }
}
