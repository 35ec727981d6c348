package flankfit.window;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.picture.Scene;

/** What the eye is fitted to, and when; leaves it alone once the hand chose what is to be seen. */
final class Fitting {
  /** A growing picture is fitted with so much room to grow (1). */
  private static final double ROOM = 1.3;

  private boolean closely;
  private boolean touched;
  private boolean wanted = true;
  private Extents box;

  /**
   * Wants a fit.
   *
   * @param closely whether to what is cut; else to the whole part
   */
  Fitting(Scene scene, boolean closely) {
    this.closely = closely;
    box = boxOf(scene);
  }

  private Extents boxOf(Scene scene) {
    return closely ? scene.subject() : scene.bounds();
  }

  /** The user wants a fit. */
  void ask(Scene scene, boolean toCut) {
    closely = toCut;
    touched = false;
    wanted = true;
    box = boxOf(scene);
  }

  /** The hand moved the eye. */
  void touch() {
    touched = true;
  }

  /**
   * The picture has changed.
   *
   * @param grows whether it still grows
   * @param asBefore whether it did so before the change
   */
  void follow(Scene scene, boolean grows, boolean asBefore) {
    Extents seen = boxOf(scene);
    boolean isIn = seen.union(box).equals(box);
    if (!touched && (!asBefore || (grows && !isIn))) {
      box = grows ? withRoom(seen) : seen;
      wanted = true;
    }
  }

  private static Extents withRoom(Extents box) {
    Point m = box.middle();
    Point a = box.min();
    Point b = box.max();
    return new Extents(
        new Point(roomy(m.x(), a.x()), roomy(m.y(), a.y()), roomy(m.z(), a.z())),
        new Point(roomy(m.x(), b.x()), roomy(m.y(), b.y()), roomy(m.z(), b.z())));
  }

  private static double roomy(double middle, double edge) {
    return middle + ROOM * (edge - middle);
  }

  /** Whether the eye shall be fitted now; asking takes the wish away. */
  boolean take() {
    boolean now = wanted;
    wanted = false;
    return now;
  }

  /** What a fit shall show. */
  Extents box() {
    return box;
  }
}
