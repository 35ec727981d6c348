package flankfit.motion;

import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Random;

/** Tapes for tests. */
final class Tapes {
  static final double[] RATES = {20000, 20000, 10000};
  static final ModalState STATE = ModalState.initial(LengthUnit.MILLIMETRE);

  private static final List<Plane> PLANES = List.of(Plane.values());

  private Tapes() {}

  static ModalState state(Plane plane, double feed) {
    return new ModalState(
        STATE.distance(),
        plane,
        STATE.compensation(),
        0,
        0,
        0,
        STATE.unit(),
        STATE.workOffset(),
        0,
        feed,
        STATE.spindle(),
        0,
        false);
  }

  static TapeBuilder builder() {
    return new TapeBuilder(Point.ZERO, RATES);
  }

  /**
   * One arc as a tape of its own.
   *
   * @param start polar angle of the first point (rad)
   */
  static Tape arc(
      Plane plane,
      double centreU,
      double centreV,
      double radius,
      double endRadius,
      double start,
      double sweep,
      double rise) {
    double[] from = new double[3];
    from[plane.u()] = centreU + radius * Math.cos(start);
    from[plane.v()] = centreV + radius * Math.sin(start);
    from[plane.n()] = 1.25;
    double[] to = new double[3];
    to[plane.u()] = centreU + endRadius * Math.cos(start + sweep);
    to[plane.v()] = centreV + endRadius * Math.sin(start + sweep);
    to[plane.n()] = from[plane.n()] + rise;
    TapeBuilder builder = new TapeBuilder(new Point(from[0], from[1], from[2]), RATES);
    builder.arc(
        to[0], to[1], to[2], centreU, centreV, radius, endRadius, sweep, 1, 1, state(plane, 600));
    return builder.build();
  }

  /** Any arc: all planes, both senses, up to four turns, every other one a spiral. */
  static Tape anyArc(Random random) {
    Plane plane = PLANES.get(random.nextInt(3));
    double radius = Math.pow(10, random.nextDouble() * 4 - 2);
    double endRadius = random.nextBoolean() ? radius : radius * (0.5 + random.nextDouble());
    double sweep = (random.nextBoolean() ? 1 : -1) * (0.01 + 8 * Math.PI * random.nextDouble());
    return arc(
        plane,
        100 * random.nextDouble() - 50,
        100 * random.nextDouble() - 50,
        radius,
        endRadius,
        2 * Math.PI * random.nextDouble() - Math.PI,
        sweep,
        random.nextInt(3) == 0 ? 0 : 20 * random.nextDouble() - 10);
  }
}
