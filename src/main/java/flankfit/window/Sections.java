package flankfit.window;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.picture.Camera;
import flankfit.picture.LiveBody;
import java.util.ArrayList;
import java.util.List;

/**
 * The planes that open the metal, one across each axis. What lies before all of those that are on
 * is taken away, on the side that the eye looks from, so that two of them show a half section.
 */
final class Sections {
  private static final String[] NAMES = {"X", "Y", "Z"};

  private final boolean[] on = new boolean[3];
  private final double[] at = new double[3];
  private final double[] home = new double[3];
  private Extents box = new Extents(Point.ZERO, Point.ZERO);
  private int held = -1;

  /** The name of an axis, 0 to 2. */
  static String name(int axis) {
    return NAMES[axis];
  }

  /**
   * Another stock: all planes are off and at home.
   *
   * @param stock the box that holds it
   * @param through where planes begin, such as in the axis of the hole (mm)
   */
  void begin(Extents stock, Point through) {
    box = stock;
    held = -1;
    for (int axis = 0; axis < 3; axis++) {
      on[axis] = false;
      home[axis] = within(axis, through.axis(axis));
      at[axis] = home[axis];
    }
  }

  private double within(int axis, double place) {
    return Math.max(box.min().axis(axis), Math.min(box.max().axis(axis), place));
  }

  boolean isOn(int axis) {
    return on[axis];
  }

  /** Whether any plane is on. */
  boolean isAny() {
    return on[0] || on[1] || on[2];
  }

  /** Where a plane stands (mm). */
  double at(int axis) {
    return at[axis];
  }

  /** Where it begins (mm). */
  double home(int axis) {
    return home[axis];
  }

  /** The plane that keys move; -1 for none. */
  int held() {
    return held;
  }

  /** Takes the plane of an axis in hand. */
  void hold(int axis) {
    held = axis;
  }

  /** Switches the plane of an axis; one that is switched on is in hand. */
  void toggle(int axis) {
    on[axis] = !on[axis];
    held = on[axis] ? axis : -1;
    for (int other = 0; other < 3 && held < 0; other++) {
      held = on[other] ? other : -1;
    }
  }

  /** Switches all off. */
  void close() {
    on[0] = false;
    on[1] = false;
    on[2] = false;
    held = -1;
  }

  /** Puts a plane to a place (mm), within the stock; gives whether it moved. */
  boolean to(int axis, double place) {
    double wanted = within(axis, place);
    boolean moved = wanted != at[axis];
    at[axis] = wanted;
    return moved;
  }

  /**
   * Where a step from a place leads (mm): to the next whole step, so that steps by hand make round
   * figures.
   */
  static double stepped(double place, double step, int way) {
    double whole = Math.rint(place / step);
    boolean isWhole = Math.abs(place / step - whole) < 1e-6;
    double next =
        isWhole ? whole + way : way > 0 ? Math.ceil(place / step) : Math.floor(place / step);
    return next * step;
  }

  /** The box that planes move in. */
  Extents box() {
    return box;
  }

  /** Whether the side of greater coordinates is taken away: that of the eye. */
  static boolean takesUpper(Camera camera, int axis) {
    return camera.eye(axis) > -1e-9;
  }

  /** The planes that are on, with the side of the eye. */
  List<LiveBody.Cut> cuts(Camera camera) {
    List<LiveBody.Cut> cuts = new ArrayList<>(3);
    for (int axis = 0; axis < 3; axis++) {
      if (on[axis]) {
        double side = takesUpper(camera, axis) ? 1 : -1;
        cuts.add(
            new LiveBody.Cut(
                axis == 0 ? side : 0, axis == 1 ? side : 0, axis == 2 ? side : 0, side * at[axis]));
      }
    }
    return cuts;
  }

  /** Whether a place is taken away. */
  boolean takes(Camera camera, double x, double y, double z) {
    boolean all = isAny();
    for (int axis = 0; axis < 3; axis++) {
      double place = axis == 0 ? x : axis == 1 ? y : z;
      all &= !on[axis] || (takesUpper(camera, axis) ? place > at[axis] : place < at[axis]);
    }
    return all;
  }
}
