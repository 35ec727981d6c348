package flankfit.lesson;

import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import java.util.Optional;

/**
 * Compares two tapes move by move: kind, line, block, state but for the distance mode, ends,
 * programmed ends, and of arcs centre, radii and length of the sweep.
 */
final class SameMotion {
  private final Tape a;
  private final Tape b;
  private final double within;
  private final double arcsWithin;
  private double greatest;

  private SameMotion(Tape a, Tape b, double within, double arcsWithin) {
    this.a = a;
    this.b = b;
    this.within = within;
    this.arcsWithin = arcsWithin;
  }

  /**
   * What two tapes differ by.
   *
   * @param greatest greatest difference of an end on one axis (mm), up to the move that departs
   * @param departs index of the first move that differs; empty for none
   */
  record Difference(double greatest, Optional<Integer> departs) {}

  /**
   * Compares.
   *
   * @param within largest difference of an end on one axis that counts as none (mm)
   * @param arcsWithin largest difference of a centre, a radius, or the length of a sweep that does
   *     (mm): they follow from the ends, and by R from small differences of them
   */
  static Difference of(Tape a, Tape b, double within, double arcsWithin) {
    return new SameMotion(a, b, within, arcsWithin).compare();
  }

  private Difference compare() {
    int both = Math.min(a.size(), b.size());
    for (int i = 0; i < both; i++) {
      if (!alike(i)) {
        return new Difference(greatest, Optional.of(i));
      }
    }
    return new Difference(greatest, a.size() == b.size() ? Optional.empty() : Optional.of(both));
  }

  private boolean alike(int i) {
    return a.kind(i) == b.kind(i)
        && a.line(i) == b.line(i)
        && a.block(i) == b.block(i)
        && a.inserted(i) == b.inserted(i)
        && sameState(i)
        && near(a.to(i), b.to(i))
        && near(a.programmedTo(i), b.programmedTo(i))
        && (a.kind(i) != MoveKind.ARC || sameArc(i))
        && (a.kind(i) != MoveKind.DWELL || a.seconds(i) == b.seconds(i));
  }

  private boolean sameState(int i) {
    // Feeds by time or revolution follow from lengths, which may differ in the last digits.
    double feed = a.state(i).feed();
    boolean sameFeed = Math.abs(feed - b.state(i).feed()) <= 1e-6 * Math.abs(feed);
    return sameFeed
        && a.state(i).plane() == b.state(i).plane()
        && a.state(i).compensation() == b.state(i).compensation()
        && a.state(i).compensationOffset() == b.state(i).compensationOffset()
        && a.state(i).radiusRegister() == b.state(i).radiusRegister()
        && a.state(i).lengthRegister() == b.state(i).lengthRegister()
        && a.state(i).unit() == b.state(i).unit()
        && a.state(i).workOffset().equals(b.state(i).workOffset())
        && a.state(i).tool() == b.state(i).tool()
        && a.state(i).spindle() == b.state(i).spindle()
        && a.state(i).rpm() == b.state(i).rpm()
        && a.state(i).coolant() == b.state(i).coolant();
  }

  private boolean sameArc(int i) {
    return Math.abs(a.centreU(i) - b.centreU(i)) <= arcsWithin
        && Math.abs(a.centreV(i) - b.centreV(i)) <= arcsWithin
        && Math.abs(a.radius(i) - b.radius(i)) <= arcsWithin
        && Math.abs(a.endRadius(i) - b.endRadius(i)) <= arcsWithin
        && Math.abs(a.sweep(i) * a.radius(i) - b.sweep(i) * b.radius(i)) <= arcsWithin;
  }

  private boolean near(Point p, Point q) {
    return near(p.x(), q.x()) && near(p.y(), q.y()) && near(p.z(), q.z());
  }

  private boolean near(double p, double q) {
    double off = Math.abs(p - q);
    greatest = Math.max(greatest, off);
    return off <= within;
  }
}
