package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

/** Draws diagrams into a window's framebuffer with the current context. */
public final class LiveDiagram implements AutoCloseable {
  private final double scale;
  private final TextAtlas atlas;
  private final Overlay overlay;

  /**
   * Prepares letters and shaders.
   *
   * @param contentScale pixels a pixel of the diagrams (1), above 0
   */
  public LiveDiagram(double contentScale) {
    scale = contentScale;
    atlas = new TextAtlas(contentScale);
    overlay = new Overlay(atlas);
  }

  /**
   * Draws one into the bound framebuffer; the viewport is left on it.
   *
   * @param x column of its left edge (px)
   * @param y row of its lower edge, upwards (px)
   */
  public void draw(Diagram diagram, int x, int y) {
    int width = (int) Math.round(diagram.width() * scale);
    int height = (int) Math.round(diagram.height() * scale);
    glViewport(x, y, width, height);
    glDisable(GL_DEPTH_TEST);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    diagram.onto(new OverlayInk(overlay, scale, height / scale));
    overlay.flush(width, height);
  }

  @Override
  public void close() {
    overlay.close();
    atlas.close();
  }
}
