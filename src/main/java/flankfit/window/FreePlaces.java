package flankfit.window;

/** Finds places for labels of one frame, so that none covers another. Makes no object for them. */
final class FreePlaces {
  private static final int MOST = 16;

  /** Rows tried below and above the place wanted, nearest first. */
  private static final int[] ROWS = {0, 1, -1, 2, -2, 3, -3, 4, -4, 5};

  private final float[] boxes = new float[4 * MOST];
  private int count;
  private float left;
  private float top;

  /** Begins a frame. */
  void clear() {
    count = 0;
  }

  /**
   * Takes a place for a label, held within the scene (window units).
   *
   * @param x its left edge as wanted
   * @param y its upper edge as wanted
   */
  void put(float x, float y, float wide, float high, Paper paper) {
    Layout layout = paper.layout();
    put(
        x,
        y,
        wide,
        high,
        layout.sceneWidth(),
        layout.header(),
        layout.sceneHeight(),
        paper.scale());
  }

  /**
   * The same.
   *
   * @param width width of the scene
   * @param first row where the scene begins
   * @param height height of the scene
   * @param s window units a logical pixel (1)
   */
  void put(
      float x, float y, float wide, float high, float width, float first, float height, float s) {
    float room = 3 * s;
    left = Math.max(room, Math.min(x, width - wide - 2 * room));
    float highest = first + room;
    float lowest = first + height - high - room;
    float held = Math.max(highest, Math.min(y, lowest));
    top = held;
    for (int rows : ROWS) {
      float at = held + rows * (high + room);
      if (at >= highest && at <= lowest && isFree(left, at, wide, high, room)) {
        top = at;
        break;
      }
    }
    if (count < MOST) {
      boxes[4 * count] = left;
      boxes[4 * count + 1] = top;
      boxes[4 * count + 2] = left + wide;
      boxes[4 * count + 3] = top + high;
      count++;
    }
  }

  private boolean isFree(float x, float y, float wide, float high, float room) {
    for (int i = 0; i < count; i++) {
      boolean apart =
          x > boxes[4 * i + 2] + room
              || x + wide + room < boxes[4 * i]
              || y >= boxes[4 * i + 3]
              || y + high <= boxes[4 * i + 1];
      if (!apart) {
        return false;
      }
    }
    return true;
  }

  /** Left edge of the label put last. */
  float left() {
    return left;
  }

  /** Its upper edge. */
  float top() {
    return top;
  }
}
