package flankfit.window;

import java.util.Optional;

/**
 * One of the sheets of the window. All sheets show one program at one position; each draws its own
 * picture and words over it. A sheet that cannot be drawn is not there.
 */
sealed interface Sheet extends AutoCloseable
    permits MotionSheet, MetalSheet, GaugeSheet, LessonSheet {
  /** Which one it is. */
  SheetName name();

  /**
   * Draws its picture with OpenGL into the window's framebuffer, before all panels.
   *
   * @param below row of the framebuffer, from the bottom, where the scene ends (px)
   */
  void picture(Paper paper, int below);

  /** Draws words and marks over its picture, as a panel. */
  void words(Paper paper);

  /** Whether some of the picture is still to come, with nothing changed. */
  boolean isUnfinished();

  /**
   * What lies at a place of the scene.
   *
   * @param column of the pointer (px)
   * @param row of the pointer, upwards (px)
   */
  Optional<Pick> pick(double column, double row);

  /** Takes another scale: pixels a logical pixel (1). */
  void rescale(double contentScale);

  @Override
  void close();
}
