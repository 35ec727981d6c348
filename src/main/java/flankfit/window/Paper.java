package flankfit.window;

import flankfit.picture.Theme;
import java.util.Objects;

/**
 * What panels are drawn on in one frame.
 *
 * @param style letters
 * @param layout where things stand
 * @param palette colours
 * @param pixels pixels a window unit (1)
 * @param column column of the pointer (window units); -1 outside
 * @param row row of the pointer, downwards (window units); -1 outside
 */
record Paper(
    PaperStyle style,
    Layout layout,
    Theme.Palette palette,
    float pixels,
    double column,
    double row) {
  Paper {
    Objects.requireNonNull(style, "style");
    Objects.requireNonNull(layout, "layout");
    Objects.requireNonNull(palette, "palette");
  }

  /** Window units a logical pixel (1). */
  float scale() {
    return style.scale();
  }
}
