package flankfit.gauge;

import flankfit.unit.Angles;

/** Where the helix of a wall's grooves stands. */
final class HelixPhase {
  /** Shares of the pitch between which the width of a whole groove lies on the pitch line (1). */
  private static final double NARROWEST = 0.2;

  private static final double WIDEST = 0.8;

  private HelixPhase() {}

  /**
   * Height of the middle of a groove in direction 0 (mm), such that grooves lie on the helix on
   * average; 0 when there is no groove.
   */
  static double of(WallSection[] sections, Winding winding, double pitchLine) {
    double cos = 0;
    double sin = 0;
    for (WallSection section : sections) {
      WallLine line = section.at(pitchLine);
      for (int i = 0; i < line.count(); i++) {
        double width = line.high(i) - line.low(i);
        if (width > NARROWEST * winding.pitch() && width < WIDEST * winding.pitch()) {
          double middle = (line.low(i) + line.high(i)) / 2;
          double off = middle - winding.rise() * section.theta();
          double turn = Angles.TURN * off / winding.pitch();
          cos += Math.cos(turn);
          sin += Math.sin(turn);
        }
      }
    }
    return Math.atan2(sin, cos) / Angles.TURN * winding.pitch();
  }
}
