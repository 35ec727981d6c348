package flankfit.metal;

import flankfit.unit.Require;
import java.util.Arrays;

/**
 * The cutting part of a tool as a body of revolution, full to the axis at every height: a stack of
 * bands, each bounded by a straight line or by an arc that bulges outwards, so that each band is
 * convex. Between bands there may be gaps. Heights count from the tool's lowest point.
 */
public final class Profile {
  private static final int BINS_A_BAND = 4;

  private final double[] low;
  private final double[] high;
  private final double[] lowRadius;
  private final double[] highRadius;
  private final double[] arcRadius;
  private final double[] centreRadius;
  private final double[] centreHeight;
  private final double[] bandWidest;
  private final double[] slope;
  private final double widest;
  private final boolean arcs;

  /** The first band that may be at a height of even steps, so many a millimetre. */
  private final int[] bins;

  private final double perHeight;

  private Profile(double[][] columns, int bands) {
    low = Arrays.copyOf(columns[0], bands);
    high = Arrays.copyOf(columns[1], bands);
    lowRadius = Arrays.copyOf(columns[2], bands);
    highRadius = Arrays.copyOf(columns[3], bands);
    arcRadius = Arrays.copyOf(columns[4], bands);
    centreRadius = Arrays.copyOf(columns[5], bands);
    centreHeight = Arrays.copyOf(columns[6], bands);
    bandWidest = new double[bands];
    slope = new double[bands];
    double most = 0;
    boolean any = false;
    for (int band = 0; band < bands; band++) {
      slope[band] = (highRadius[band] - lowRadius[band]) / (high[band] - low[band]);
      bandWidest[band] = findWidest(band);
      most = Math.max(most, bandWidest[band]);
      any |= arcRadius[band] > 0;
    }
    widest = most;
    arcs = any;
    bins = new int[BINS_A_BAND * bands];
    perHeight = bins.length / (high[bands - 1] - low[0]);
    int band = 0;
    for (int bin = 0; bin < bins.length; bin++) {
      // A little lower, so that rounding leads to no later band.
      double from = low[0] + (bin - 1e-6) / perHeight;
      while (high[band] < from) {
        band++;
      }
      bins[bin] = band;
    }
  }

  /** Builds a profile from the tip upwards. */
  static final class Builder {
    private static final int COLUMNS = 7;

    /** Lines that go on within this are one (mm): far below what a profile is read to. */
    private static final double JOINED = 1e-9;

    private final double[][] columns = new double[COLUMNS][16];
    private int bands;
    private double height;

    Builder(double from) {
      height = from;
    }

    /** A straight band up to a height (mm); nothing if that is not above. */
    Builder line(double to, double fromRadius, double toRadius) {
      return arc(to, fromRadius, toRadius, 0, 0, 0);
    }

    /** Leaves the tool without metal up to a height (mm). */
    Builder gap(double to) {
      height = Math.max(height, to);
      return this;
    }

    /** A band bounded by the outer part of a circle; a circle's radius of 0 means a line. */
    Builder arc(
        double to, double fromRadius, double toRadius, double radius, double atRadius, double at) {
      if (!(to > height)) {
        return this;
      }
      Require.notNegative("radius", Math.min(fromRadius, toRadius));
      if (bands == columns[0].length) {
        for (int i = 0; i < COLUMNS; i++) {
          columns[i] = Arrays.copyOf(columns[i], 2 * bands);
        }
      }
      if (radius == 0 && goesOn(to, fromRadius, toRadius)) {
        columns[1][bands - 1] = to;
        columns[3][bands - 1] = toRadius;
        height = to;
        return this;
      }
      double[] row = {height, to, fromRadius, toRadius, radius, atRadius, at};
      for (int i = 0; i < COLUMNS; i++) {
        columns[i][bands] = row[i];
      }
      bands++;
      height = to;
      return this;
    }

    /** Whether a line is the last band's, carried on. */
    private boolean goesOn(double to, double fromRadius, double toRadius) {
      if (bands == 0 || columns[4][bands - 1] > 0 || columns[1][bands - 1] != height) {
        return false;
      }
      double before = columns[3][bands - 1] - columns[2][bands - 1];
      double slope = before / (height - columns[0][bands - 1]);
      return Math.abs(columns[3][bands - 1] - fromRadius) < JOINED
          && Math.abs(fromRadius + slope * (to - height) - toRadius) < JOINED;
    }

    Profile build() {
      if (bands == 0) {
        throw new IllegalArgumentException("a profile must have a height");
      }
      return new Profile(columns, bands);
    }
  }

  /** A cylinder (mm). */
  static Profile cylinder(double radius, double from, double to) {
    return new Builder(from).line(to, radius, radius).build();
  }

  int bands() {
    return low.length;
  }

  /** Height of a band's lower end (mm). */
  double low(int band) {
    return low[band];
  }

  /** Height of a band's upper end (mm). */
  double high(int band) {
    return high[band];
  }

  /** Radius at a band's lower end (mm). */
  double lowRadius(int band) {
    return lowRadius[band];
  }

  /** Growth of a straight band's radius with height (1). */
  double slope(int band) {
    return slope[band];
  }

  boolean isArc(int band) {
    return arcRadius[band] > 0;
  }

  /** Whether any band is bounded by an arc. */
  boolean hasArcs() {
    return arcs;
  }

  double arcRadius(int band) {
    return arcRadius[band];
  }

  double centreHeight(int band) {
    return centreHeight[band];
  }

  /** The greatest radius of a band (mm). */
  double widest(int band) {
    return bandWidest[band];
  }

  private double findWidest(int band) {
    double ends = Math.max(lowRadius[band], highRadius[band]);
    boolean waist =
        arcRadius[band] > 0 && low[band] <= centreHeight[band] && high[band] >= centreHeight[band];
    return waist ? Math.max(ends, centreRadius[band] + arcRadius[band]) : ends;
  }

  /** The greatest radius (mm). */
  public double widest() {
    return widest;
  }

  /** Height of the lowest point (mm). */
  public double bottom() {
    return low[0];
  }

  /** Height of the top (mm). */
  public double top() {
    return high[high.length - 1];
  }

  /** The first band whose upper end is not below a height; the number of bands if there is none. */
  int bandAt(double height) {
    double bin = (height - low[0]) * perHeight;
    int band = bin >= bins.length ? low.length - 1 : bin > 0 ? bins[(int) bin] : 0;
    while (band < low.length && high[band] < height) {
      band++;
    }
    return band;
  }

  /** The radius at a height (mm), the greater one at a step; below 0 beyond the ends. */
  public double radiusAt(double height) {
    double best = -1;
    for (int b = bandAt(height); b < low.length && low[b] <= height; b++) {
      best = Math.max(best, radiusOf(b, height));
    }
    return best;
  }

  /** The greatest radius between two heights (mm); below 0 where there is none. */
  double widestBetween(double from, double to) {
    double best = -1;
    for (int b = bandAt(from); b < low.length && low[b] <= to; b++) {
      double start = Math.max(from, low[b]);
      double end = Math.min(to, high[b]);
      if (low[b] >= from && high[b] <= to) {
        best = Math.max(best, bandWidest[b]);
      } else if (arcRadius[b] > 0) {
        best = Math.max(best, radiusOf(b, Math.min(end, Math.max(start, centreHeight[b]))));
      } else {
        best = Math.max(best, Math.max(radiusOf(b, start), radiusOf(b, end)));
      }
    }
    return best;
  }

  /** A height between two at which the radius is greatest (mm), in the middle of equal ones. */
  double whereWidest(double from, double to) {
    double best = -1;
    double where = from;
    for (int b = bandAt(from); b < low.length && low[b] <= to; b++) {
      double start = Math.max(from, low[b]);
      double end = Math.min(to, high[b]);
      double at = slope[b] > 0 ? end : slope[b] < 0 ? start : (start + end) / 2;
      if (arcRadius[b] > 0) {
        at = Math.min(end, Math.max(start, centreHeight[b]));
      }
      if (radiusOf(b, at) > best) {
        best = radiusOf(b, at);
        where = at;
      }
    }
    return where;
  }

  /** The radius of a band at a height within it (mm). */
  double radiusOf(int band, double height) {
    if (arcRadius[band] > 0) {
      double up = height - centreHeight[band];
      double across = arcRadius[band] * arcRadius[band] - up * up;
      return centreRadius[band] + Math.sqrt(Math.max(0, across));
    }
    return lowRadius[band] + (height - low[band]) * slope[band];
  }

  boolean holds(double radius, double height) {
    return radius <= radiusAt(height);
  }

  /**
   * Signed distance to the whole outline (mm), exact inside and outside, with its direction.
   *
   * @param radius distance from the axis (mm), not below 0
   * @param height above the lowest point (mm)
   */
  void distance(double radius, double height, Near near) {
    near.begin();
    int middle = Math.min(bandAt(height), low.length - 1);
    for (int b = middle; b < low.length && low[b] - height < near.distance; b++) {
      outline(b, radius, height, near);
    }
    for (int b = middle - 1; b >= 0 && height - high[b] < near.distance; b--) {
      outline(b, radius, height, near);
    }
    if (holds(radius, height)) {
      near.inside();
    }
  }

  /** Takes side, lower step and, where nothing stands above, the top into account. */
  private void outline(int b, double radius, double height, Near near) {
    side(b, radius, height, near);
    double below = b > 0 && high[b - 1] == low[b] ? highRadius[b - 1] : 0;
    double above = lowRadius[b];
    if (below != above) {
      double at = Math.min(Math.max(radius, Math.min(below, above)), Math.max(below, above));
      near.outline(radius, height, at, low[b], 0, above > below ? -1 : 1);
    }
    if (b == low.length - 1 || low[b + 1] > high[b]) {
      near.outline(radius, height, Math.min(radius, highRadius[b]), high[b], 0, 1);
    }
  }

  private void side(int b, double radius, double height, Near near) {
    if (arcRadius[b] > 0) {
      arcSide(b, radius, height, near);
      return;
    }
    double dr = highRadius[b] - lowRadius[b];
    double dh = high[b] - low[b];
    double square = dr * dr + dh * dh;
    double share = ((radius - lowRadius[b]) * dr + (height - low[b]) * dh) / square;
    double s = Math.min(1, Math.max(0, share));
    double length = Math.sqrt(square);
    near.outline(radius, height, lowRadius[b] + s * dr, low[b] + s * dh, dh / length, -dr / length);
  }

  private void arcSide(int b, double radius, double height, Near near) {
    double cr = centreRadius[b];
    double ch = centreHeight[b];
    double x = radius - cr;
    double y = height - ch;
    double fromStart = (lowRadius[b] - cr) * y - (low[b] - ch) * x;
    double toEnd = x * (high[b] - ch) - y * (highRadius[b] - cr);
    double length = Math.sqrt(x * x + y * y);
    if (fromStart >= 0 && toEnd >= 0 && length > 0) {
      double scale = arcRadius[b] / length;
      near.outline(radius, height, cr + x * scale, ch + y * scale, x / length, y / length);
    } else {
      arcEnd(b, radius, height, lowRadius[b], low[b], near);
      arcEnd(b, radius, height, highRadius[b], high[b], near);
    }
  }

  private void arcEnd(int b, double radius, double height, double r, double h, Near near) {
    double q = arcRadius[b];
    near.outline(radius, height, r, h, (r - centreRadius[b]) / q, (h - centreHeight[b]) / q);
  }

  /**
   * Signed distance to one band taken as a body by itself, which is convex: exact inside and
   * outside, with a direction that is a subgradient.
   */
  void bandDistance(int b, double radius, double height, Near near) {
    near.begin();
    side(b, radius, height, near);
    near.outline(radius, height, Math.min(radius, lowRadius[b]), low[b], 0, -1);
    near.outline(radius, height, Math.min(radius, highRadius[b]), high[b], 0, 1);
    if (height >= low[b] && height <= high[b] && radius <= radiusOf(b, height)) {
      near.inside();
    }
  }
}
