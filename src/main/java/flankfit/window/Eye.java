package flankfit.window;

import flankfit.motion.Extents;
import flankfit.picture.Camera;
import flankfit.picture.Scene;
import flankfit.picture.View;
import java.util.Optional;

/** Where the eye stands: free or in a standard view of the part, or before an unrolled wall. */
final class Eye {
  private static final double TURN_PER_PIXEL = 0.008;

  private final Camera part;
  private final Camera flat = new Camera(View.FRONT);
  private final Fitting fitting;
  private View view;
  private Optional<View> standing;
  private boolean unrolled;
  private Optional<Extents> wanted = Optional.empty();
  private Optional<Extents> offered = Optional.empty();
  private boolean byHand;
  private boolean asked;
  private Extents box;

  Eye(Scene scene, View view) {
    this.view = view;
    standing = Optional.of(view);
    part = new Camera(view);
    fitting = new Fitting(scene, view != View.ISO);
    box = fitting.box();
  }

  /** The camera in use; before a wall it looks at the wall laid flat. */
  Camera camera() {
    return unrolled ? flat : part;
  }

  /** The standard view chosen last. */
  View view() {
    return view;
  }

  /** The standard view the eye has; empty after a turn by hand and before a wall. */
  Optional<View> standing() {
    return unrolled ? Optional.empty() : standing;
  }

  /** Whether a wall laid flat is looked at. */
  boolean isUnrolled() {
    return unrolled;
  }

  Fitting fitting() {
    return fitting;
  }

  /** Turns to a standard view and fits it. */
  void look(View to, Scene scene) {
    unrolled = false;
    view = to;
    standing = Optional.of(to);
    part.look(to);
    wanted = Optional.empty();
    free();
    fitting.ask(scene, to != View.ISO);
  }

  /** Goes before a wall, whole. */
  void unroll(Extents wall) {
    unrolled = true;
    wanted = Optional.of(wall);
  }

  /** Fits the whole part, or closely what is cut. */
  void fit(Scene scene, boolean toCut) {
    wanted = Optional.empty();
    free();
    asked = true;
    fitting.ask(scene, toCut);
  }

  /** Fits a box. */
  void fitTo(Extents box) {
    touch();
    wanted = Optional.of(box);
  }

  private void free() {
    byHand = false;
    asked = false;
    offered = Optional.empty();
  }

  private void touch() {
    byHand = true;
    leaveAlone();
  }

  /** The fitting shall leave the eye alone, a fit that it still wants included. */
  private void leaveAlone() {
    fitting.touch();
    fitting.take();
  }

  /** A sheet begins that offers what to see: fits asked for before no longer count. */
  void beginOffers() {
    asked = false;
    offered = Optional.empty();
  }

  /** Fits a box unless a hand has chosen what is seen, or it is fitted already; gives whether. */
  boolean offer(Extents box) {
    if (byHand || asked || unrolled || offered.filter(box::equals).isPresent()) {
      return false;
    }
    offered = Optional.of(box);
    leaveAlone();
    wanted = Optional.of(box);
    return true;
  }

  /** What a fit shall show. */
  Extents fitted() {
    return box;
  }

  /** Whether the eye shall be fitted now; asking takes the wish away. */
  boolean takeFit() {
    if (wanted.isPresent()) {
      box = wanted.get();
      wanted = Optional.empty();
      return true;
    }
    boolean now = !unrolled && fitting.take();
    box = now ? fitting.box() : box;
    return now;
  }

  /** Turns as a hand drags over the scene (px, rows downwards); a wall is shifted instead. */
  void orbit(double columns, double rows) {
    if (unrolled) {
      pan(columns, rows);
      return;
    }
    part.turn(part.azimuth() - columns * TURN_PER_PIXEL, part.elevation() + rows * TURN_PER_PIXEL);
    standing = Optional.empty();
  }

  /** Shifts the paper (px, rows downwards). */
  void pan(double columns, double rows) {
    touch();
    camera().pan(columns, -rows);
  }

  /** Zooms about a place in the scene (px, rows upwards). */
  void zoom(double notches, double column, double row) {
    touch();
    camera().zoom(Math.pow(1.15, notches), column, row);
  }

  /** Takes another size of the scene (px); gives whether it had another. */
  boolean resize(int width, int height) {
    boolean other = width != part.width() || height != part.height();
    if (other) {
      part.resize(width, height);
      flat.resize(width, height);
    }
    return other;
  }
}
