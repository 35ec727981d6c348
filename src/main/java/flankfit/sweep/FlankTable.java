package flankfit.sweep;

/**
 * A smooth flank by cubics through width and slope at distances evenly apart. With a few hundred
 * steps over a tooth's height the cubics stray from the form by less than 1e-11 mm.
 */
final class FlankTable implements FlankShape {
  private static final int MOST_STEPS = 40;

  /**
   * Change of the contact's distance at which its search ends (mm): the reach is greatest there, so
   * it is right to the square of what is left, far below 1e-12.
   */
  private static final double SETTLED = 1e-7;

  private final double root;
  private final double step;
  private final double[] width;
  private final double[] fall;
  private final double widest;

  /**
   * A flank.
   *
   * @param root distance from the cutter's axis of the first row (mm)
   * @param step distance from row to row (mm), above 0
   * @param width axial distance from the tooth's middle at each row (mm)
   * @param fall fall of the width for one length outwards at each row (1), above 0
   */
  FlankTable(double root, double step, double[] width, double[] fall) {
    this(root, step, width.clone(), fall.clone(), Double.POSITIVE_INFINITY);
  }

  private FlankTable(double root, double step, double[] width, double[] fall, double widest) {
    this.root = root;
    this.step = step;
    this.width = width;
    this.fall = fall;
    this.widest = widest;
  }

  @Override
  public double width(double distance) {
    return Math.min(widest, uncut(Math.max(root, distance)));
  }

  private double uncut(double distance) {
    int i = row(distance);
    double t = (distance - root) / step - i;
    double u = 1 - t;
    return u * u * (1 + 2 * t) * width[i]
        + t * t * (3 - 2 * t) * width[i + 1]
        + step * t * u * (t * fall[i + 1] - u * fall[i]);
  }

  private double fallAt(double distance) {
    int i = row(distance);
    double t = (distance - root) / step - i;
    double u = 1 - t;
    double chord = (width[i] - width[i + 1]) / step;
    return 6 * t * u * chord + u * (1 - 3 * t) * fall[i] + t * (3 * t - 2) * fall[i + 1];
  }

  private int row(double distance) {
    return Math.max(0, Math.min(width.length - 2, (int) ((distance - root) / step)));
  }

  @Override
  public double reach(Meeting meeting, double low, double high) {
    double from = Math.max(low, root);
    double best = Math.max(risen(meeting, low), risen(meeting, high));
    if (low < root) {
      best = Math.max(best, risen(meeting, Math.min(high, root)));
    }
    double contact = high > from ? contact(meeting, from, high) : Double.NaN;
    return Double.isNaN(contact) ? best : Math.max(best, risen(meeting, contact));
  }

  private double risen(Meeting meeting, double distance) {
    return meeting.risen(distance) + width(distance);
  }

  /** Where the flank touches: its slope hardly changes, so going from slope to contact settles. */
  private double contact(Meeting meeting, double low, double high) {
    double at = (low + high) / 2;
    for (int i = 0; i < MOST_STEPS; i++) {
      double next = Math.min(high, Math.max(low, meeting.contact(fallAt(at))));
      if (Double.isNaN(next) || Math.abs(next - at) < SETTLED) {
        return next;
      }
      at = next;
    }
    return at;
  }

  @Override
  public FlankShape endingAt(double most) {
    if (most >= width(root)) {
      return this;
    }
    // The end lies where the width is reached; nearer the axis the flank stays as wide.
    double low = root;
    double high = root + step * (width.length - 1);
    if (most <= width(high)) {
      return new FlankTable(high, step, new double[] {most, most}, new double[2], most);
    }
    double end = Root.between(d -> uncut(d) - most, low, high);
    return resampled(end, high, most);
  }

  private FlankTable resampled(double from, double to, double most) {
    int rows = width.length;
    double apart = (to - from) / (rows - 1);
    double[] widths = new double[rows];
    double[] falls = new double[rows];
    for (int i = 0; i < rows; i++) {
      widths[i] = uncut(from + i * apart);
      falls[i] = fallAt(from + i * apart);
    }
    return new FlankTable(from, apart, widths, falls, most);
  }
}
