package flankfit.picture;

import java.util.Arrays;

/** What decides how a path looks, but for moves that are added at its end. */
final class PathLook {
  private final PathDrawing drawing;
  private final float[] toClip;
  private final Theme theme;
  private final int position;

  /**
   * @param drawing the lines
   * @param toClip the eye; not changed by the caller any more
   * @param theme paper
   * @param position texel from which on chords lie beyond the position
   */
  PathLook(PathDrawing drawing, float[] toClip, Theme theme, int position) {
    this.drawing = drawing;
    this.toClip = toClip;
    this.theme = theme;
    this.position = position;
  }

  /** Whether another path stands in the same place on the same paper. */
  boolean hasEyeOf(PathLook other) {
    return theme == other.theme && Arrays.equals(toClip, other.toClip);
  }

  /** Whether another path looks the same. */
  boolean is(PathLook other) {
    return hasEyeOf(other) && drawing == other.drawing && position == other.position;
  }
}
