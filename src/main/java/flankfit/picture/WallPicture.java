package flankfit.picture;

import flankfit.gauge.RealAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.WallMeasures;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.sweep.Groove;
import flankfit.sweep.GroovePhase;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Wall;
import flankfit.sweep.WallGrid;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;

/**
 * The wall unrolled: angle across, depth down, so that a true helix is a straight line. Shade tells
 * how deep the wall stands, hue how far it departs from the endless helix: an entry mark is a spot,
 * an incomplete turn a band.
 */
public final class WallPicture {
  private static final double LEFT = 84;
  private static final double RIGHT = 176;
  private static final double NARROW_RIGHT = 132;
  private static final double BELOW = 46;
  private static final int MOST_COLUMNS = 720;
  private static final int MOST_ROWS = 640;

  /** Points at which the profile of the endless helix is read. */
  private static final int PROFILE = 1024;

  /** Accuracy to which the wall is read (mm). */
  private static final double ACCURACY = 2e-4;

  /** Departure below which the wall counts as that of the endless helix (µm). */
  private static final double NONE = 1;

  /** Share of a row that departs from where on it is a band at an end of the thread (1). */
  private static final double BANDED = 0.4;

  /** Least and greatest departure at full hue (µm). */
  private static final double LEAST_FULL = 5;

  private static final double MOST_FULL = 50;

  private static final double MICROMETRES = 1000;

  private final Diagram diagram;
  private final ThreadAnswer thread;
  private final RealAnswer real;
  private final LengthUnit unit;
  private final double top;
  private final double right;
  private final double bottom;
  private final int columns;
  private final int rows;

  private WallPicture(
      ThreadAnswer thread, RealAnswer real, LengthUnit unit, int width, int height, Theme theme) {
    this.thread = thread;
    this.real = real;
    this.unit = unit;
    diagram =
        new Diagram(
            width, height, theme, "Wall of " + PictureFrame.headline(thread), thread.reason());
    PictureFrame frame =
        PictureFrame.of(
            diagram,
            thread,
            "Wall unrolled: direction across, height up; the groove is a sloping stripe",
            "shade: depth of the wall from the crest · hue: how far the wall as moved stands deeper"
                + " or shallower than the endless helix, on the radius");
    top = frame.top() + 24;
    right = width - (width < PictureFrame.NARROW ? NARROW_RIGHT : RIGHT);
    bottom = frame.foot() - BELOW;
    columns = (int) Math.min(MOST_COLUMNS, right - LEFT);
    rows = (int) Math.min(MOST_ROWS, bottom - top);
  }

  /**
   * The wall of a thread.
   *
   * @param real its real path
   * @param surface its endless helix
   * @param unit unit of the figures
   * @param width width (px), 600 to 8192
   * @param height height (px), 400 to 8192
   */
  public static Diagram of(
      ThreadAnswer thread,
      RealAnswer real,
      RegularThread surface,
      LengthUnit unit,
      int width,
      int height,
      Theme theme) {
    WallPicture picture = new WallPicture(thread, real, unit, width, height, theme);
    picture.draw(surface);
    return picture.diagram;
  }

  private void draw(RegularThread surface) {
    Theme.Palette palette = diagram.palette();
    Groove groove = surface.groove();
    double[] moved = moved(surface.blankRadius(), groove.bottom());
    double[] steady = steady(surface);
    double[] departures = new double[moved.length];
    double most = 0;
    for (int i = 0; i < moved.length; i++) {
      departures[i] = departure(moved[i], steady[i]);
      most = Math.max(most, Math.abs(departures[i]));
    }
    double full = Math.max(LEAST_FULL, Math.min(MOST_FULL, most));
    int[] cells = new int[columns * rows];
    for (int i = 0; i < cells.length; i++) {
      double share = (moved[i] - surface.blankRadius()) / (groove.bottom() - surface.blankRadius());
      int shade = Colours.mix(palette.stock(), palette.ground(), Math.max(0, Math.min(1, share)));
      boolean seen = Math.abs(departures[i]) >= NONE;
      cells[i] = seen ? tinted(shade, departures[i] / full) : shade;
    }
    diagram.raster(LEFT, top, right - LEFT, bottom - top, columns, cells);
    scales();
    WallKey key = new WallKey(diagram, right + 24, top, bottom);
    key.depth(Math.abs(groove.bottom() - surface.blankRadius()) * MICROMETRES);
    if (most < NONE) {
      key.noDeparture(NONE);
    } else {
      key.departure(full, most > full, share -> tinted(palette.ground(), share));
    }
    mark();
    ends(departures);
  }

  /** Names the mark of the entry where it is. */
  private void mark() {
    real.measures()
        .map(WallMeasures::deepest)
        .filter(mark -> mark.depth() * MICROMETRES >= NONE)
        .ifPresent(
            mark -> {
              int ink = diagram.palette().ink();
              double turn = mark.theta() / Angles.TURN;
              double x = LEFT + (turn - Math.floor(turn)) * (right - LEFT);
              Wall wall = real.wall();
              double y = new DiagramRule(wall.bottom(), wall.top(), bottom, top).within(mark.z());
              diagram.stroke(
                  new double[] {x, y - 9, x + 9, y, x, y + 9, x - 9, y, x, y - 9}, 2, 0, ink);
              String deep = Figures.plain(mark.depth() * MICROMETRES, 0) + " µm";
              String words = "entry mark, " + deep + " deeper";
              double wide = diagram.width(Face.STRONG, words);
              boolean atRight = x + 20 + wide < right;
              double row = Math.max(top + 16, Math.min(bottom - 8, y + 5));
              diagram.plate(
                  Face.STRONG,
                  atRight ? x + 16 : x - 16,
                  row,
                  words,
                  atRight ? Align.LEFT : Align.RIGHT,
                  ink);
            });
  }

  /** Names the bands at both ends where the thread is not that of the endless helix. */
  private void ends(double[] departures) {
    int mouth = 0;
    while (mouth < rows && share(departures, mouth, 1) > BANDED) {
      mouth++;
    }
    int end = rows;
    while (end > mouth && share(departures, end - 1, -1) > BANDED) {
      end--;
    }
    band(0, mouth, "mouth: wider than the thread");
    band(end, rows, "no full thread here: metal left");
  }

  /** Share of a row's cells that depart clearly to one side (1). */
  private double share(double[] departures, int row, int sign) {
    int there = 0;
    for (int i = 0; i < columns; i++) {
      there += sign * departures[row * columns + i] > MOST_FULL / 2 ? 1 : 0;
    }
    return (double) there / columns;
  }

  private void band(int first, int last, String words) {
    double high = (bottom - top) / rows;
    if ((last - first) * high < 18) {
      return;
    }
    double y = top + (first + last) / 2.0 * high + 5;
    diagram.plate(Face.BODY, (LEFT + right) / 2, y, words, Align.MIDDLE, diagram.palette().ink());
  }

  private double theta(int column) {
    return Angles.TURN * (column + 0.5) / columns;
  }

  /** Height of a row from below (mm). */
  private double z(int row) {
    Wall wall = real.wall();
    return wall.bottom() + (wall.top() - wall.bottom()) * (row + 0.5) / rows;
  }

  /** Radii of the endless helix, rows from the top (mm): one profile, read along the helix. */
  private double[] steady(RegularThread surface) {
    GroovePhase phase = real.phase();
    double[] profile = new double[PROFILE + 1];
    for (int i = 0; i <= PROFILE; i++) {
      profile[i] = surface.surface(phase.spacing() * i / PROFILE);
    }
    double[] radii = new double[columns * rows];
    for (int k = 0; k < rows; k++) {
      for (int i = 0; i < columns; i++) {
        double turns = (z(rows - 1 - k) - phase.middle(0, theta(i))) / phase.spacing();
        double at = (turns - Math.floor(turns)) * PROFILE;
        int low = (int) Math.min(PROFILE - 1, at);
        radii[k * columns + i] = profile[low] + (at - low) * (profile[low + 1] - profile[low]);
      }
    }
    return radii;
  }

  /** Radii of the wall as moved, rows from the top (mm). */
  private double[] moved(double shallow, double deep) {
    double[] theta = new double[columns];
    for (int i = 0; i < columns; i++) {
      theta[i] = theta(i);
    }
    double[] z = new double[rows];
    for (int k = 0; k < rows; k++) {
      z[k] = z(k);
    }
    WallGrid grid = WallGrid.of(real.wall(), theta, z, shallow, deep, ACCURACY);
    double[] radii = new double[columns * rows];
    for (int k = 0; k < rows; k++) {
      for (int i = 0; i < columns; i++) {
        radii[k * columns + i] = grid.radius(i, rows - 1 - k);
      }
    }
    return radii;
  }

  /** How far the wall stands into the metal beyond the endless helix (µm). */
  private double departure(double moved, double steady) {
    return (thread.internal() ? 1 : -1) * (moved - steady) * MICROMETRES;
  }

  /** Deeper takes the one hue, metal left the other. */
  private int tinted(int shade, double share) {
    Theme.Palette palette = diagram.palette();
    double strength = Math.min(1, Math.abs(share));
    return strength < 0.02
        ? shade
        : Colours.mix(
            shade, share > 0 ? palette.incremental() : palette.absolute(), 0.85 * strength);
  }

  private void scales() {
    Theme.Palette palette = diagram.palette();
    new DiagramRule(real.wall().bottom(), real.wall().top(), bottom, top)
        .upright(diagram, LEFT, unit);
    diagram.text(
        Face.SMALL,
        PictureFrame.MARGIN,
        top - 12,
        "height Z" + PictureFrame.unit(unit),
        Align.LEFT,
        palette.softInk());
    int step = right - LEFT < 450 ? 90 : 45;
    for (int degrees = 0; degrees <= 360; degrees += step) {
      double x = LEFT + (right - LEFT) * degrees / 360;
      diagram.line(x, bottom, x, bottom + 5, 1, palette.softInk());
      diagram.label(Face.SMALL, x, bottom + 19, degrees + "°", Align.MIDDLE, palette.softInk());
    }
    diagram.line(LEFT, bottom, right, bottom, 1, palette.softInk());
    diagram.text(
        Face.SMALL,
        right,
        bottom + 36,
        "direction about the axis, from +X towards +Y",
        Align.RIGHT,
        palette.softInk());
  }
}
