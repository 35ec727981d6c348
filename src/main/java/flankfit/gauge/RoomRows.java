package flankfit.gauge;

import flankfit.unit.Angles;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The rooms of a wall's elements, with rows between directions that lie far apart. A gauge that
 * stands aside comes nearer to the wall between two directions than at either, though the wall is
 * even there: the rooms between are those on the straight line.
 */
final class RoomRows {
  /** Directions are at most so far apart for a gauge (rad). */
  private static final double APART = Angles.TURN / 120;

  /** What a gauge finds at one place. */
  record Row(double theta, double height, double up, double down, double crest, boolean isRead) {
    boolean isOpen() {
      return up == Double.POSITIVE_INFINITY
          && down == Double.POSITIVE_INFINITY
          && crest == Double.POSITIVE_INFINITY;
    }
  }

  /** Tells the row of an element. */
  interface Reader {
    Row of(int element);
  }

  private RoomRows() {}

  /** The rows of all elements and between them, from above downwards. */
  static List<Row> of(WallField field, Reader reader) {
    Row[] own = new Row[field.size()];
    List<Row> rows = new ArrayList<>();
    for (int e = 0; e < own.length; e++) {
      own[e] = reader.of(e);
      rows.add(own[e]);
    }
    for (int e = 0; e < own.length; e++) {
      int behind = field.behind(e);
      if (behind >= 0) {
        between(own[e], own[behind], rows);
      }
    }
    rows.sort(Comparator.comparingDouble(row -> -row.height));
    return rows;
  }

  private static void between(Row one, Row other, List<Row> rows) {
    double turn = Angles.normalised(other.theta - one.theta);
    int parts = (int) Math.ceil(turn / APART - 1e-6);
    for (int i = 1; i < parts; i++) {
      double share = (double) i / parts;
      Row row =
          new Row(
              Angles.normalised(one.theta + share * turn),
              between(one.height, other.height, share),
              between(one.up, other.up, share),
              between(one.down, other.down, share),
              between(one.crest, other.crest, share),
              false);
      if (!row.isOpen()) {
        rows.add(row);
      }
    }
  }

  /** On the straight line; infinite where nothing stands at one end. */
  private static double between(double one, double other, double share) {
    boolean both = Double.isFinite(one) && Double.isFinite(other);
    return both ? one + share * (other - one) : Double.POSITIVE_INFINITY;
  }
}
