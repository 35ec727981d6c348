package flankfit.picture;

import flankfit.gauge.RealAnswer;
import flankfit.gauge.ThreadAnswer;
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
  private static final double LEFT = 96;
  private static final double RIGHT = 190;
  private static final double TOP = 112;
  private static final double BOTTOM = 84;
  private static final int MOST_COLUMNS = 720;
  private static final int MOST_ROWS = 640;

  /** Points at which the profile of the endless helix is read. */
  private static final int PROFILE = 1024;

  /** Accuracy to which the wall is read (mm). */
  private static final double ACCURACY = 2e-4;

  /** Least and greatest departure at full hue (µm). */
  private static final double LEAST_FULL = 5;

  private static final double MOST_FULL = 50;

  private static final double MICROMETRES = 1000;

  private final Diagram diagram;
  private final ThreadAnswer thread;
  private final RealAnswer real;
  private final LengthUnit unit;
  private final double right;
  private final double bottom;
  private final int columns;
  private final int rows;

  private WallPicture(
      ThreadAnswer thread, RealAnswer real, LengthUnit unit, int width, int height, Theme theme) {
    this.thread = thread;
    this.real = real;
    this.unit = unit;
    diagram = new Diagram(width, height, theme, "Wall of " + LadderPicture.headline(thread));
    right = width - RIGHT;
    bottom = height - BOTTOM;
    columns = (int) Math.min(MOST_COLUMNS, right - LEFT);
    rows = (int) Math.min(MOST_ROWS, bottom - TOP);
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
    LadderPicture.title(
        diagram,
        thread,
        "shade: depth of the wall · hue: departure from the endless helix, on the radius · lengths"
            + " in "
            + LadderPicture.named(unit));
    Groove groove = surface.groove();
    double[] moved = moved(surface.blankRadius(), groove.bottom());
    double[] steady = steady(surface);
    double full = full(moved, steady);
    int[] cells = new int[columns * rows];
    for (int i = 0; i < cells.length; i++) {
      double share = (moved[i] - surface.blankRadius()) / (groove.bottom() - surface.blankRadius());
      int shade = Colours.mix(palette.stock(), palette.ground(), Math.max(0, Math.min(1, share)));
      cells[i] = tinted(shade, departure(moved[i], steady[i]) / full);
    }
    diagram.raster(LEFT, TOP, right - LEFT, bottom - TOP, columns, cells);
    scales();
    key(full);
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

  private double full(double[] moved, double[] steady) {
    double most = 0;
    for (int i = 0; i < moved.length; i++) {
      most = Math.max(most, departure(moved[i], steady[i]));
    }
    return Math.max(LEAST_FULL, Math.min(MOST_FULL, most));
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
    new DiagramRule(real.wall().bottom(), real.wall().top(), bottom, TOP)
        .upright(diagram, LEFT, unit);
    diagram.text(Face.SMALL, 28, TOP - 12, "Z", Align.LEFT, palette.softInk());
    for (int degrees = 0; degrees <= 360; degrees += 45) {
      double x = LEFT + (right - LEFT) * degrees / 360;
      diagram.line(x, bottom, x, bottom + 5, 1, palette.softInk());
      diagram.text(Face.SMALL, x, bottom + 19, degrees + "°", Align.MIDDLE, palette.softInk());
    }
    diagram.text(
        Face.SMALL,
        right,
        bottom + 38,
        "direction, from +X towards +Y",
        Align.RIGHT,
        palette.softInk());
  }

  /** What a hue stands for. */
  private void key(double full) {
    Theme.Palette palette = diagram.palette();
    double x = right + 36;
    int steps = 60;
    int[] cells = new int[steps];
    for (int i = 0; i < steps; i++) {
      cells[i] = tinted(palette.ground(), 1 - 2.0 * (i + 0.5) / steps);
    }
    double high = Math.min(300, bottom - TOP - 60);
    double top = TOP + 40;
    diagram.raster(x, top, 22, high, 1, cells);
    String most = Figures.plain(full, full < 10 ? 1 : 0) + " µm";
    diagram.text(Face.SMALL, x + 30, top + 10, most, Align.LEFT, palette.ink());
    diagram.text(Face.SMALL, x + 30, top + 26, "deeper", Align.LEFT, palette.softInk());
    diagram.text(Face.SMALL, x + 30, top + high / 2 + 4, "0", Align.LEFT, palette.ink());
    diagram.text(Face.SMALL, x + 30, top + high - 16, "metal left", Align.LEFT, palette.softInk());
    diagram.text(Face.SMALL, x + 30, top + high, "−" + most, Align.LEFT, palette.ink());
  }
}
