package flankfit.window;

import flankfit.picture.KeptPicture;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;

/** Kept pictures of a window's scene, without the line of text that tells what was done last. */
final class KeptScene {
  private KeptScene() {}

  /**
   * Compares the scene of a window with a kept picture, where the renderer is the one that such
   * pictures are kept for.
   *
   * @param rgb the whole window, three bytes a pixel, rows downwards
   * @param width width of the window (px)
   * @param height height of the window (px)
   */
  static void compare(String renderer, String name, byte[] rgb, int width, int height) {
    if (!renderer.contains("llvmpipe")) {
      return;
    }
    Layout layout = new Layout(width, height, 1);
    int sceneWidth = (int) layout.sceneWidth();
    int sceneHeight = (int) layout.sceneHeight();
    int top = (int) layout.header();
    byte[] scene = new byte[3 * sceneWidth * sceneHeight];
    for (int row = 0; row < sceneHeight; row++) {
      int from = 3 * width * (top + row);
      byte[] line = Arrays.copyOfRange(rgb, from, from + 3 * sceneWidth);
      System.arraycopy(line, 0, scene, 3 * sceneWidth * row, line.length);
    }
    try {
      KeptPicture.compare(name, scene, sceneWidth, sceneHeight);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
