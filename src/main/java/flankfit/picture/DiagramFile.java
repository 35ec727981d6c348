package flankfit.picture;

import static org.lwjgl.opengl.GL33C.GL_BLEND;
import static org.lwjgl.opengl.GL33C.GL_COLOR_BUFFER_BIT;
import static org.lwjgl.opengl.GL33C.GL_ONE_MINUS_SRC_ALPHA;
import static org.lwjgl.opengl.GL33C.GL_SRC_ALPHA;
import static org.lwjgl.opengl.GL33C.glBlendFunc;
import static org.lwjgl.opengl.GL33C.glClear;
import static org.lwjgl.opengl.GL33C.glClearColor;
import static org.lwjgl.opengl.GL33C.glDisable;
import static org.lwjgl.opengl.GL33C.glEnable;

import org.lwjgl.opengl.GL33C;

/** Drawings as files. */
public final class DiagramFile {
  private static final int SAMPLES = 4;

  private DiagramFile() {}

  /** The drawing as an SVG file. */
  public static byte[] svg(Diagram diagram) {
    return svg(diagram, diagram.width(), diagram.height());
  }

  /**
   * The drawing as an SVG file, enlarged.
   *
   * @param width width (px) it asks for
   * @param height height (px) it asks for
   */
  public static byte[] svg(Diagram diagram, int width, int height) {
    return SvgInk.encode(diagram, width, height);
  }

  /**
   * The drawing as a PNG file.
   *
   * @throws NoOpenGlException if the machine has no OpenGL 3.3
   */
  public static byte[] png(Diagram diagram) throws NoOpenGlException {
    return png(diagram, diagram.width(), diagram.height());
  }

  /**
   * The drawing as a PNG file, enlarged: letters and lines grow with it.
   *
   * @param width width (px), 1 to 4 times the drawing's
   * @param height height (px), as many times the drawing's
   * @throws NoOpenGlException if the machine has no OpenGL 3.3
   */
  public static byte[] png(Diagram diagram, int width, int height) throws NoOpenGlException {
    try (GlContext context = GlContext.open(false)) {
      byte[] rgb = draw(diagram, width, height);
      context.requireNoError();
      return Png.encode(rgb, width, height);
    }
  }

  /** Red, green, blue of the drawing, rows from the top, with the current context. */
  static byte[] draw(Diagram diagram) {
    return draw(diagram, diagram.width(), diagram.height());
  }

  private static byte[] draw(Diagram diagram, int width, int height) {
    double scale = Math.min((double) width / diagram.width(), (double) height / diagram.height());
    try (RenderTarget target = new RenderTarget(width, height, SAMPLES);
        TextAtlas atlas = new TextAtlas(scale);
        Overlay overlay = new Overlay(atlas)) {
      target.bind();
      float[] ground = new float[4];
      Colours.put(diagram.palette().ground(), 1, ground, 0);
      glClearColor(ground[0], ground[1], ground[2], 1);
      glClear(GL_COLOR_BUFFER_BIT);
      glDisable(GL33C.GL_DEPTH_TEST);
      glEnable(GL_BLEND);
      glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
      diagram.onto(new OverlayInk(overlay, scale, height / scale));
      overlay.flush(width, height);
      return target.readRgb();
    }
  }
}
