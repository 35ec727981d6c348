package flankfit.picture;

import flankfit.motion.Chords;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A path in one flat view, at one scale both ways: absolute moves in blue, incremental ones in
 * orange with dark edges, rapids dashed. What lies beyond the panel is cut off at its edges.
 */
final class PathPanel {
  /** How far a chord may lie off its arc (px). */
  private static final double OFF = 0.2;

  private static final double LEAST_SPAN = 1;
  private static final double ROOM = 0.08;

  private final Diagram diagram;
  private final int across;
  private final int up;
  private final double left;
  private final double top;
  private final double right;
  private final double bottom;
  private final DiagramRule columns;
  private final DiagramRule rows;
  private final double tolerance;

  /**
   * An empty panel.
   *
   * @param across axis from left to right, 0 (X), 1 (Y) or 2 (Z)
   * @param up axis upwards
   * @param low least of each axis (mm)
   * @param high greatest of each axis (mm)
   * @param x first column (px)
   * @param y first row (px)
   * @param wide width (px)
   * @param tall height (px)
   */
  PathPanel(
      Diagram diagram,
      int across,
      int up,
      Point low,
      Point high,
      double x,
      double y,
      double wide,
      double tall) {
    this.diagram = diagram;
    this.across = across;
    this.up = up;
    left = x;
    top = y;
    right = x + wide;
    bottom = y + tall;
    double spanU = Math.max(LEAST_SPAN, high.axis(across) - low.axis(across)) * (1 + 2 * ROOM);
    double spanV = Math.max(LEAST_SPAN, high.axis(up) - low.axis(up)) * (1 + 2 * ROOM);
    double perPixel = Math.max(spanU / wide, spanV / tall);
    double middleU = (low.axis(across) + high.axis(across)) / 2;
    double middleV = (low.axis(up) + high.axis(up)) / 2;
    double halfU = perPixel * wide / 2;
    double halfV = perPixel * tall / 2;
    tolerance = OFF * perPixel;
    columns = new DiagramRule(middleU - halfU, middleU + halfU, left, right);
    rows = new DiagramRule(middleV - halfV, middleV + halfV, bottom, top);
  }

  /** Draws edges, scales and the lines through zero. */
  void ground(LengthUnit unit) {
    Theme.Palette palette = diagram.palette();
    diagram.bar(left, top, right - left, bottom - top, palette.shade(), 1);
    if (columns.holds(0)) {
      diagram.line(columns.at(0), top, columns.at(0), bottom, 1, palette.rule());
    }
    if (rows.holds(0)) {
      diagram.line(left, rows.at(0), right, rows.at(0), 1, palette.rule());
    }
    columns.level(diagram, bottom, unit);
    rows.upright(diagram, left, unit);
    String axes = "XYZ";
    diagram.label(
        Face.SMALL,
        right,
        bottom + 33,
        axes.charAt(across) + " to the right",
        Align.RIGHT,
        palette.softInk());
    diagram.label(
        Face.SMALL,
        left,
        top - 6,
        axes.charAt(up) + " upwards, " + unit.symbol(),
        Align.LEFT,
        palette.softInk());
  }

  /**
   * Draws some moves.
   *
   * @param from index of the first
   * @param to index after the last
   * @param strong whether they are what the picture is about
   */
  void path(Tape tape, int from, int to, boolean strong) {
    for (int move = from; move < to; move++) {
      boolean rapid = tape.kind(move) == MoveKind.RAPID;
      boolean absolute = tape.state(move).distance() == Distance.ABSOLUTE;
      Theme.Palette palette = diagram.palette();
      for (double[] line : lines(tape, move)) {
        if (!strong) {
          diagram.stroke(line, 1, rapid ? 4 : 0, palette.softInk());
        } else if (absolute) {
          diagram.stroke(line, 2.2, rapid ? 6 : 0, palette.absolute());
        } else {
          diagram.stroke(line, 4, rapid ? 6 : 0, palette.casing());
          diagram.stroke(line, 2, rapid ? 6 : 0, palette.incremental());
        }
      }
    }
  }

  /** A move as lines on the panel (px): one, or several where its edges cut it. */
  private List<double[]> lines(Tape tape, int move) {
    int chords = Chords.count(tape, move, tolerance);
    double[] points = new double[3 * (chords + 1)];
    points[0] = tape.fromX(move);
    points[1] = tape.fromY(move);
    points[2] = tape.fromZ(move);
    Chords.write(tape, move, chords, points, 3);
    List<double[]> lines = new ArrayList<>();
    double[] line = new double[2 * (chords + 1)];
    int size = 0;
    for (int i = 3; i < points.length; i += 3) {
      double x0 = columns.at(points[i - 3 + across]);
      double y0 = rows.at(points[i - 3 + up]);
      double x1 = columns.at(points[i + across]);
      double y1 = rows.at(points[i + up]);
      double[] share = {0, 1};
      boolean seen = isSeen(x0, y0, x1, y1, share);
      if (!seen || share[0] > 0) {
        size = ended(line, size, lines);
      }
      if (seen) {
        if (size == 0) {
          line[size++] = x0 + share[0] * (x1 - x0);
          line[size++] = y0 + share[0] * (y1 - y0);
        }
        line[size++] = x0 + share[1] * (x1 - x0);
        line[size++] = y0 + share[1] * (y1 - y0);
        size = share[1] < 1 ? ended(line, size, lines) : size;
      }
    }
    ended(line, size, lines);
    return lines;
  }

  private static int ended(double[] line, int size, List<double[]> lines) {
    if (size > 0) {
      lines.add(Arrays.copyOf(line, size));
    }
    return 0;
  }

  /** Which part of a line lies on the panel (Liang and Barsky's way of clipping). */
  private boolean isSeen(double x0, double y0, double x1, double y1, double[] share) {
    return clip(x0 - x1, x0 - left, share)
        && clip(x1 - x0, right - x0, share)
        && clip(y0 - y1, y0 - top, share)
        && clip(y1 - y0, bottom - y0, share);
  }

  /** A line, cut off at the panel's edges. */
  private void stroke(double x0, double y0, double x1, double y1, int colour) {
    double[] share = {0, 1};
    if (isSeen(x0, y0, x1, y1, share)) {
      diagram.line(
          x0 + share[0] * (x1 - x0),
          y0 + share[0] * (y1 - y0),
          x0 + share[1] * (x1 - x0),
          y0 + share[1] * (y1 - y0),
          1.2,
          colour);
    }
  }

  private static boolean clip(double p, double q, double[] share) {
    if (p == 0) {
      return q >= 0;
    }
    double r = q / p;
    if (p < 0) {
      share[0] = Math.max(share[0], r);
    } else {
      share[1] = Math.min(share[1], r);
    }
    return share[0] <= share[1];
  }

  /** An arrow from point to point, as long as it lies on the panel. */
  void arrow(Point from, Point to, int colour) {
    double x0 = columns.at(from.axis(across));
    double y0 = rows.at(from.axis(up));
    double x1 = columns.at(to.axis(across));
    double y1 = rows.at(to.axis(up));
    double length = Math.hypot(x1 - x0, y1 - y0);
    if (length < 4) {
      return;
    }
    stroke(x0, y0, x1, y1, colour);
    double ux = (x1 - x0) / length;
    double uy = (y1 - y0) / length;
    stroke(x1, y1, x1 - 9 * ux - 4 * uy, y1 - 9 * uy + 4 * ux, colour);
    stroke(x1, y1, x1 - 9 * ux + 4 * uy, y1 - 9 * uy - 4 * ux, colour);
  }

  /** A small cross with words beside it, if it lies on the panel. */
  void mark(Point at, String words, int colour) {
    double x = columns.at(at.axis(across));
    double y = rows.at(at.axis(up));
    if (x < left || x > right || y < top || y > bottom) {
      return;
    }
    diagram.line(x - 5, y, x + 5, y, 1.4, colour);
    diagram.line(x, y - 5, x, y + 5, 1.4, colour);
    boolean beyond = x + 9 + diagram.width(Face.SMALL, words) > right;
    diagram.plate(
        Face.SMALL,
        beyond ? x - 9 : x + 9,
        y - 6,
        words,
        beyond ? Align.RIGHT : Align.LEFT,
        colour);
  }
}
