package flankfit.window;

import flankfit.motion.Extents;
import flankfit.picture.Camera;
import flankfit.picture.Scene;
import flankfit.picture.View;
import java.util.Optional;

/** Where the part, or the unrolled wall of a hole of it, is looked at from, and how near. */
final class Viewpoint {
  private final Course course;
  private final Eye eye;
  private final Runnable changed;
  private Optional<WallFrame> wall = Optional.empty();

  /**
   * Begins with a standard view.
   *
   * @param changed told of every change of what is seen
   */
  Viewpoint(Course course, View view, Runnable changed) {
    this.course = course;
    this.changed = changed;
    eye = new Eye(course.scene(), view);
  }

  /** The scene goes on growing, or is another one. */
  void follow(Scene scene, boolean grows, boolean asBefore) {
    followWall();
    eye.fitting().follow(scene, grows, asBefore);
  }

  /** Keeps the unrolled wall that of the hole the tip is at. */
  void followWall() {
    if (eye.isUnrolled()) {
      Optional<WallFrame> now = frame();
      if (!now.equals(wall)) {
        wall = now;
        now.ifPresent(w -> eye.unroll(w.box()));
      }
    }
  }

  private Optional<WallFrame> frame() {
    return WallFrame.of(course.tape(), course.loaded().input().setup(), course.move());
  }

  /** The eye. */
  Camera camera() {
    return eye.camera();
  }

  /** The standard view chosen last. */
  View view() {
    return eye.view();
  }

  /** The standard view the eye has; empty after a turn by hand. */
  Optional<View> standing() {
    return eye.standing();
  }

  /** The wall that is shown unrolled; empty for the part itself, or where there is no wall. */
  Optional<WallFrame> wall() {
    return eye.isUnrolled() ? wall : Optional.empty();
  }

  /** Whether a wall is to be shown unrolled. */
  boolean isUnrolled() {
    return eye.isUnrolled();
  }

  /** Another program: its own view anew. */
  void begin(Scene scene) {
    eye.look(eye.view(), scene);
  }

  void look(View wanted) {
    eye.look(wanted, course.scene());
    changed.run();
  }

  /** Shows the wall of the hole unrolled. */
  void unroll() {
    wall = frame();
    eye.unroll(wall.map(WallFrame::box).orElse(course.scene().bounds()));
    changed.run();
  }

  /**
   * Fits the whole part into the scene, or closely what is cut; the whole wall where one is shown.
   */
  void fit(boolean toCut) {
    if (wall().isPresent()) {
      eye.unroll(wall.orElseThrow().box());
    } else {
      eye.fit(course.scene(), toCut);
    }
    changed.run();
  }

  /** A sheet begins that offers what to see. */
  void beginOffers() {
    eye.beginOffers();
  }

  /** Fits a box unless a hand has chosen what is seen. */
  void offer(Extents box) {
    if (eye.offer(box)) {
      changed.run();
    }
  }

  /** Shows the moves of the block at the position as large as they fit. */
  void fitBlock() {
    if (course.move() >= 0) {
      eye.fitTo(BlockBox.of(course.tape(), course.move(), wall()));
      changed.run();
    }
  }

  /** Shows a box of the part as large as it fits. */
  void fitBox(Extents box) {
    eye.fitTo(box);
    changed.run();
  }

  /** What a fit shall show. */
  Extents fitted() {
    return eye.fitted();
  }

  /** Whether the eye shall be fitted before the next drawing; asking takes the wish away. */
  boolean takeFit() {
    return eye.takeFit();
  }

  /** Turns the eye as a hand drags over the scene (px, rows downwards). */
  void orbit(double columns, double rows) {
    eye.orbit(columns, rows);
    changed.run();
  }

  /** Shifts the paper (px, rows downwards). */
  void pan(double columns, double rows) {
    eye.pan(columns, rows);
    changed.run();
  }

  /** Zooms about a place in the scene (px, rows upwards). */
  void zoom(double notches, double column, double row) {
    eye.zoom(notches, column, row);
    changed.run();
  }

  /** Takes another size of the scene (px). */
  void resize(int width, int height) {
    if (eye.resize(width, height)) {
      changed.run();
    }
  }
}
