package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;

/**
 * What stands round a scene: rules along its left and lower side where the view shows an axis
 * straight, a scale bar, the axes, a title. Upright views have the depth rule at the left: zero at
 * the part's top.
 */
final class Annotations {
  /** Base line of the lowest words (px at scale 1). */
  static final double LAST_ROW = 22;

  private static final double LEAST_STEP = 56;
  private static final double STRAIGHT = 1 - 1e-9;
  private static final String[] AXES = {"X", "Y", "Z"};

  private final Overlay overlay;
  private final double scale;

  Annotations(Overlay overlay, double contentScale) {
    this.overlay = overlay;
    this.scale = contentScale;
  }

  /** Draws rules, scale bar and axes. */
  void draw(Camera camera, Scene scene, Theme theme, LengthUnit unit, Insets insets) {
    int across = straight(camera, true);
    int upright = straight(camera, false);
    if (across >= 0) {
      lowerRule(camera, theme.palette(), unit, insets, across);
    }
    if (upright >= 0) {
      leftRule(camera, scene, theme.palette(), unit, insets, upright);
    }
    if (across < 0 || upright < 0) {
      axes(camera, theme.palette(), insets);
    }
    scaleBar(camera, theme.palette(), unit, insets);
  }

  /** Draws the title and a line below it. */
  void title(Theme theme, String title, String below, int height) {
    double x = 28 * scale;
    overlay.ink(theme.palette().ink(), 1);
    overlay.text(Face.TITLE, x, height - 40 * scale, title, Align.LEFT);
    overlay.ink(theme.palette().softInk(), 1);
    overlay.text(Face.SMALL, x, height - 62 * scale, below, Align.LEFT);
  }

  /** The axis that runs straight to the right or up, or -1. */
  private static int straight(Camera camera, boolean right) {
    for (int axis = 0; axis < 3; axis++) {
      double part = right ? camera.right(axis) : camera.up(axis);
      if (Math.abs(part) > STRAIGHT) {
        return axis;
      }
    }
    return -1;
  }

  private void lowerRule(
      Camera camera, Theme.Palette palette, LengthUnit unit, Insets insets, int axis) {
    double y = insets.bottom() - 0.5;
    double perUnit = unit.toMillimetres(1) / camera.millimetresPerPixel();
    double sign = Math.signum(camera.right(axis));
    double zero =
        camera.width() / 2.0 - sign * camera.centre().axis(axis) / camera.millimetresPerPixel();
    double step = Ticks.stepAtLeast(LEAST_STEP * scale / perUnit);
    double from = insets.left();
    double to = camera.width() - insets.right();
    double fine = step / 5;
    overlay.ink(palette.rule(), 1);
    overlay.bar(from, y, to - from, line());
    long first =
        (long) Math.ceil(Math.min((from - zero) * sign, (to - zero) * sign) / perUnit / fine);
    long last =
        (long) Math.floor(Math.max((from - zero) * sign, (to - zero) * sign) / perUnit / fine);
    for (long i = first; i <= last; i++) {
      double x = Math.rint(zero + sign * (double) i * fine * perUnit);
      boolean major = i % 5 == 0;
      overlay.ink(major ? palette.softInk() : palette.rule(), 1);
      overlay.bar(x, y - (major ? 7 : 4) * scale, line(), (major ? 7 : 4) * scale);
      if (major && x > from + 8 * scale && x < to - 48 * scale) {
        String label = Figures.fixed((double) i * fine, Ticks.decimals(step));
        overlay.text(Face.SMALL, x, y - 21 * scale, label, Align.MIDDLE);
      }
    }
    overlay.ink(palette.softInk(), 1);
    overlay.text(Face.SMALL, to, y - 21 * scale, AXES[axis] + " " + unit.symbol(), Align.RIGHT);
  }

  private void leftRule(
      Camera camera, Scene scene, Theme.Palette palette, LengthUnit unit, Insets insets, int axis) {
    double x = insets.left() - 0.5;
    double from = insets.bottom();
    double to = camera.height() - insets.top();
    double perUnit = unit.toMillimetres(1) / camera.millimetresPerPixel();
    double origin = axis == 2 ? scene.top() : 0;
    double zero =
        camera.height() / 2.0
            + (origin - camera.centre().axis(axis)) / camera.millimetresPerPixel();
    double step = Ticks.stepAtLeast(LEAST_STEP * 0.8 * scale / perUnit);
    double fine = step / 5;
    overlay.ink(palette.rule(), 1);
    overlay.bar(x, from, line(), to - from);
    long first = (long) Math.ceil((from - zero) / perUnit / fine);
    long last = (long) Math.floor((to - zero) / perUnit / fine);
    for (long i = first; i <= last; i++) {
      double y = Math.rint(zero + (double) i * fine * perUnit);
      boolean major = i % 5 == 0;
      overlay.ink(major ? palette.softInk() : palette.rule(), 1);
      overlay.bar(x - (major ? 7 : 4) * scale, y, (major ? 7 : 4) * scale, line());
      if (major && y < to - 5 * scale && y > from + 4 * scale) {
        boolean top = axis == 2 && i == 0;
        overlay.ink(top ? palette.ink() : palette.softInk(), 1);
        String label = Figures.fixed((double) i * fine, Ticks.decimals(step));
        overlay.text(
            top ? Face.STRONG : Face.SMALL, x - 11 * scale, y - 4 * scale, label, Align.RIGHT);
      }
    }
    if (axis == 2 && zero > from && zero < to) {
      overlay.ink(palette.softInk(), 0.45);
      overlay.bar(x, Math.rint(zero), camera.width() - insets.right() - x, line());
    }
    overlay.ink(palette.softInk(), 1);
    String name = axis == 2 ? "depth " + unit.symbol() : AXES[axis] + " " + unit.symbol();
    overlay.text(Face.SMALL, x - 11 * scale, to + 7 * scale, name, Align.RIGHT);
  }

  private double line() {
    return Math.max(1, Math.round(scale));
  }

  private void scaleBar(Camera camera, Theme.Palette palette, LengthUnit unit, Insets insets) {
    double perUnit = unit.toMillimetres(1) / camera.millimetresPerPixel();
    double step = Ticks.stepAtLeast(64 * scale / perUnit);
    double length = Math.round(step * perUnit);
    double right = camera.width() - insets.right();
    double y = (LAST_ROW + 4) * scale;
    overlay.ink(palette.ink(), 1);
    overlay.bar(right - length, y, length, line());
    overlay.bar(right - length, y - 3 * scale, line(), 7 * scale);
    overlay.bar(right - line(), y - 3 * scale, line(), 7 * scale);
    String label = Figures.plain(step, 6) + " " + unit.symbol();
    overlay.text(Face.SMALL, right - length - 8 * scale, y - 4 * scale, label, Align.RIGHT);
  }

  private void axes(Camera camera, Theme.Palette palette, Insets insets) {
    double size = 30 * scale;
    double x = insets.left() * 0.5 + 18 * scale;
    double y = insets.bottom() + 6 * scale;
    for (int axis = 0; axis < 3; axis++) {
      double dx = camera.right(axis) * size;
      double dy = camera.up(axis) * size;
      double seen = Math.hypot(dx, dy);
      if (seen < 0.12 * size) {
        continue;
      }
      overlay.ink(palette.ink(), 0.85);
      overlay.stroke(x, y, x + dx, y + dy, 1.3 * scale);
      double ux = dx / seen;
      double uy = dy / seen;
      double head = 6 * scale;
      for (int side = -1; side <= 1; side += 2) {
        overlay.stroke(
            x + dx,
            y + dy,
            x + dx - head * (ux - side * uy * 0.5),
            y + dy - head * (uy + side * ux * 0.5),
            1.3 * scale);
      }
      overlay.text(
          Face.SMALL,
          x + dx + ux * 11 * scale,
          y + dy + uy * 11 * scale - 4 * scale,
          AXES[axis],
          Align.MIDDLE);
    }
  }
}
