package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/** A framebuffer in memory with colour, depth and stencil; multisampled if asked for. */
public final class RenderTarget implements AutoCloseable {
  private final int width;
  private final int height;
  private final int samples;
  private final int framebuffer;
  private final int colour;
  private final int depth;

  /**
   * Makes a framebuffer.
   *
   * @param width width (px), at least 1
   * @param height height (px), at least 1
   * @param samples samples a pixel; 0 for none; no more than the driver allows are taken
   * @throws IllegalStateException if the driver refuses it
   */
  public RenderTarget(int width, int height, int samples) {
    this(width, height, samples, GL_RGBA8);
  }

  /** One without samples whose colours are finer than a screen's, to average frames in. */
  static RenderTarget precise(int width, int height) {
    return new RenderTarget(width, height, 0, GL_RGBA16F);
  }

  private RenderTarget(int width, int height, int samples, int format) {
    this.width = width;
    this.height = height;
    this.samples = Math.min(samples, glGetInteger(GL_MAX_SAMPLES));
    framebuffer = glGenFramebuffers();
    colour = glGenRenderbuffers();
    depth = glGenRenderbuffers();
    glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
    glBindRenderbuffer(GL_RENDERBUFFER, colour);
    glRenderbufferStorageMultisample(GL_RENDERBUFFER, this.samples, format, width, height);
    glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, colour);
    glBindRenderbuffer(GL_RENDERBUFFER, depth);
    glRenderbufferStorageMultisample(
        GL_RENDERBUFFER, this.samples, GL_DEPTH24_STENCIL8, width, height);
    glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_DEPTH_STENCIL_ATTACHMENT, GL_RENDERBUFFER, depth);
    int status = glCheckFramebufferStatus(GL_FRAMEBUFFER);
    if (status != GL_FRAMEBUFFER_COMPLETE) {
      close();
      throw new IllegalStateException(
          "framebuffer is incomplete: 0x" + Integer.toHexString(status));
    }
  }

  /** Width (px). */
  public int width() {
    return width;
  }

  /** Height (px). */
  public int height() {
    return height;
  }

  /** Name of the framebuffer. */
  int name() {
    return framebuffer;
  }

  /** Draws here from now on. */
  public void bind() {
    glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
    glViewport(0, 0, width, height);
  }

  /**
   * Copies the picture to another framebuffer, lower left corner to a place there.
   *
   * @param target name of the other framebuffer; 0 is the window's
   * @param x column there (px)
   * @param y row there, from below (px)
   */
  public void copyTo(int target, int x, int y) {
    glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer);
    glBindFramebuffer(GL_DRAW_FRAMEBUFFER, target);
    glBlitFramebuffer(
        0, 0, width, height, x, y, x + width, y + height, GL_COLOR_BUFFER_BIT, GL_NEAREST);
    glBindFramebuffer(GL_FRAMEBUFFER, target);
  }

  /** Copies the picture to a target of another size and no samples, stretched. */
  void stretchTo(RenderTarget other) {
    glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer);
    glBindFramebuffer(GL_DRAW_FRAMEBUFFER, other.framebuffer);
    glBlitFramebuffer(
        0, 0, width, height, 0, 0, other.width, other.height, GL_COLOR_BUFFER_BIT, GL_LINEAR);
    glBindFramebuffer(GL_FRAMEBUFFER, other.framebuffer);
  }

  /** Copies colour, depth and stencil to another target of the same size and samples. */
  void copyAllTo(RenderTarget other) {
    glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer);
    glBindFramebuffer(GL_DRAW_FRAMEBUFFER, other.framebuffer);
    int all = GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT | GL_STENCIL_BUFFER_BIT;
    glBlitFramebuffer(0, 0, width, height, 0, 0, width, height, all, GL_NEAREST);
  }

  /** The picture as red, green, blue bytes, rows from the top. */
  byte[] readRgb() {
    if (samples == 0) {
      bind();
      return readBound(width, height);
    }
    try (RenderTarget plain = new RenderTarget(width, height, 0)) {
      copyTo(plain.framebuffer, 0, 0);
      return readBound(width, height);
    }
  }

  /**
   * The bound framebuffer as red, green, blue bytes, rows from the top.
   *
   * @param width columns from the left (px)
   * @param height rows from below (px)
   */
  public static byte[] readBound(int width, int height) {
    ByteBuffer pixels = MemoryUtil.memAlloc(width * height * 3);
    try {
      glPixelStorei(GL_PACK_ALIGNMENT, 1);
      glReadPixels(0, 0, width, height, GL_RGB, GL_UNSIGNED_BYTE, pixels);
      byte[] rgb = new byte[width * height * 3];
      for (int row = 0; row < height; row++) {
        pixels.position((height - 1 - row) * width * 3);
        pixels.get(rgb, row * width * 3, width * 3);
      }
      return rgb;
    } finally {
      MemoryUtil.memFree(pixels.clear());
    }
  }

  @Override
  public void close() {
    glDeleteRenderbuffers(depth);
    glDeleteRenderbuffers(colour);
    glDeleteFramebuffers(framebuffer);
  }
}
