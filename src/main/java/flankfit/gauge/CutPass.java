package flankfit.gauge;

import flankfit.setup.Tool;
import flankfit.sweep.Tooth;

/**
 * A pass together with the teeth that cut it.
 *
 * @param pass the motion
 * @param tool the tool
 * @param teeth rows of the tool
 * @param tooth form of one tooth
 */
record CutPass(Pass pass, Tool tool, Tool.Teeth teeth, Tooth tooth) {
  /** Height of the middle of the lowest row when the tip stands at a height (mm). */
  double lowestRow(double zTip) {
    return zTip + teeth.tip();
  }

  /** Axial distance from row to row (mm); 0 for a single row. */
  double rowPitch() {
    return teeth.rows() > 1 ? teeth.pitch().orElse(0.0) : 0;
  }

  /** Height of the lowest groove's middle (mm). */
  double zBottom() {
    return lowestRow(pass.zLow());
  }

  /** Height of the highest groove's middle (mm). */
  double zTop() {
    return lowestRow(pass.zHigh()) + (teeth.rows() - 1) * rowPitch();
  }

  /** How far the teeth reach from the axis: greatest inside a hole, least on a boss (mm). */
  double reach(boolean internal) {
    return internal ? pass.radius() + tooth.outsideRadius() : pass.radius() - tooth.outsideRadius();
  }

  /** Whether the spindle and the sense of the path make it a climb cut. */
  boolean isClimb(boolean internal) {
    boolean anticlockwise = pass.isAnticlockwise();
    boolean rightCutter =
        switch (pass.state().spindle()) {
          case CLOCKWISE -> true;
          case COUNTER_CLOCKWISE -> false;
          case OFF -> !tool.leftHand();
        };
    return rightCutter == (anticlockwise == internal);
  }

  /** {@code climb} or {@code conventional}. */
  String cutting(boolean internal) {
    return isClimb(internal) ? "climb" : "conventional";
  }
}
