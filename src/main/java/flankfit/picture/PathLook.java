package flankfit.picture;

import java.util.Arrays;

/** What decides how a path looks, but for moves that are added at its end. */
final class PathLook {
  private final PathDrawing drawing;
  private final float[] toClip;
  private final Theme theme;
  private final int position;
  private final boolean fine;

  /**
   * @param drawing the lines
   * @param toClip the eye; not changed by the caller any more
   * @param theme paper
   * @param position texel from which on chords lie beyond the position
   * @param fine whether lines have their widths and soft edges
   */
  PathLook(PathDrawing drawing, float[] toClip, Theme theme, int position, boolean fine) {
    this.drawing = drawing;
    this.toClip = toClip;
    this.theme = theme;
    this.position = position;
    this.fine = fine;
  }

  /** Whether another path stands in the same place on the same paper. */
  boolean hasEyeOf(PathLook other) {
    return theme == other.theme && Arrays.equals(toClip, other.toClip);
  }

  /** Whether lines have their widths and soft edges. */
  boolean isFine() {
    return fine;
  }

  /** Whether it differs from another in nothing but the position. */
  boolean differsInPosition(PathLook other) {
    return hasEyeOf(other) && drawing == other.drawing;
  }

  /** Whether another path looks the same, but for how finely it is drawn. */
  boolean is(PathLook other) {
    return differsInPosition(other) && position == other.position;
  }
}
