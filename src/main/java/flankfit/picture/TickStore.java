package flankfit.picture;

import flankfit.motion.Point;
import java.util.Arrays;

/** Direction marks on their way to the graphics memory. */
final class TickStore {
  /** Floats of a mark: place from the origin (mm), heading (1), style, texel of its chord. */
  static final int FLOATS = 8;

  private final Point origin;
  private float[] data = new float[FLOATS * 64];
  private int size;

  /** An empty store of points about an origin. */
  TickStore(Point origin) {
    this.origin = origin;
  }

  /** Number of marks. */
  int size() {
    return size;
  }

  /** The floats. */
  float[] data() {
    return data;
  }

  /**
   * Adds a mark.
   *
   * @param place where (mm), 3 long
   * @param ahead a point a little further along the path (mm), 3 long
   */
  void add(double[] place, double[] ahead, int style, int texel) {
    double dx = ahead[0] - place[0];
    double dy = ahead[1] - place[1];
    double dz = ahead[2] - place[2];
    double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
    if (length == 0) {
      return;
    }
    int at = FLOATS * size;
    if (at == data.length) {
      data = Arrays.copyOf(data, data.length * 2);
    }
    data[at] = (float) (place[0] - origin.x());
    data[at + 1] = (float) (place[1] - origin.y());
    data[at + 2] = (float) (place[2] - origin.z());
    data[at + 3] = (float) (dx / length);
    data[at + 4] = (float) (dy / length);
    data[at + 5] = (float) (dz / length);
    data[at + 6] = style;
    data[at + 7] = texel;
    size++;
  }
}
