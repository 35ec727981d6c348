package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

/** Lays one picture over another, as thin as is wished. */
final class FrameBlend implements AutoCloseable {
  private final ShaderProgram copy = new ShaderProgram("blend");
  private final int texture = glGenTextures();
  private final int bare = glGenVertexArrays();
  private int width;
  private int height;

  /**
   * Mixes a picture into another of the same size.
   *
   * @param share of the first in what comes of it (1)
   */
  void lay(RenderTarget from, RenderTarget onto, double share) {
    from.bind();
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, texture);
    if (width == from.width() && height == from.height()) {
      glCopyTexSubImage2D(GL_TEXTURE_2D, 0, 0, 0, 0, 0, width, height);
    } else {
      width = from.width();
      height = from.height();
      glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_NEAREST);
      glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_NEAREST);
      glCopyTexImage2D(GL_TEXTURE_2D, 0, GL_RGB8, 0, 0, width, height, 0);
    }
    onto.bind();
    glDisable(GL_SCISSOR_TEST);
    glDisable(GL_DEPTH_TEST);
    glEnable(GL_BLEND);
    glBlendColor(0, 0, 0, (float) share);
    glBlendFunc(GL_CONSTANT_ALPHA, GL_ONE_MINUS_CONSTANT_ALPHA);
    copy.use();
    glUniform1i(copy.uniform("picture"), 0);
    glBindVertexArray(bare);
    glDrawArrays(GL_TRIANGLES, 0, 3);
    glBindVertexArray(0);
    glDisable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
  }

  @Override
  public void close() {
    glDeleteVertexArrays(bare);
    glDeleteTextures(texture);
    copy.close();
  }
}
