package flankfit.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import flankfit.control.Interpretation;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;

/** One program answered twice: tape, findings and assumptions are the same to the last bit. */
final class SameAnswer {
  private SameAnswer() {}

  static void check(Interpretation a, Interpretation b) {
    assertThat(b.findings()).isEqualTo(a.findings());
    assertThat(b.assumptions()).isEqualTo(a.assumptions());
    assertThat(b.stoppedAt()).isEqualTo(a.stoppedAt());
    assertThat(b.blocks()).isEqualTo(a.blocks());
    assertThat(b.tape().size()).isEqualTo(a.tape().size());
    for (int i = 0; i < a.tape().size(); i++) {
      if (!isSame(a.tape(), b.tape(), i)) {
        fail("move %d of line %d differs in the second run", i, a.tape().line(i));
      }
    }
  }

  private static boolean isSame(Tape a, Tape b, int i) {
    return a.kind(i) == b.kind(i)
        && a.line(i) == b.line(i)
        && a.block(i) == b.block(i)
        && a.to(i).equals(b.to(i))
        && a.programmedTo(i).equals(b.programmedTo(i))
        && a.state(i).equals(b.state(i))
        && Double.compare(a.length(i), b.length(i)) == 0
        && (a.kind(i) != MoveKind.ARC || isSameArc(a, b, i));
  }

  private static boolean isSameArc(Tape a, Tape b, int i) {
    return Double.compare(a.centreU(i), b.centreU(i)) == 0
        && Double.compare(a.centreV(i), b.centreV(i)) == 0
        && Double.compare(a.radius(i), b.radius(i)) == 0
        && Double.compare(a.endRadius(i), b.endRadius(i)) == 0
        && Double.compare(a.sweep(i), b.sweep(i)) == 0;
  }
}
