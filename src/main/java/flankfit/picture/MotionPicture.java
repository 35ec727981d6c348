package flankfit.picture;

import flankfit.motion.Extents;
import flankfit.unit.LengthUnit;
import flankfit.unit.Require;

/** Pictures of the motion, drawn without a window. */
public final class MotionPicture {
  private static final int MOST_SAMPLES = 4;
  private static final double MARGIN = 22;

  private MotionPicture() {}

  /** Makes a context; tests put a failing one here. */
  interface ContextSource {
    GlContext open() throws NoOpenGlException;
  }

  /**
   * A picture of a scene, fitted into the frame, with rules, axes, scale bar, legend and title.
   *
   * @param scene what is shown
   * @param view where from
   * @param width width (px), 200 to 8192
   * @param height height (px), 200 to 8192
   * @param theme paper
   * @return a PNG file; the same request gives the same bytes on one renderer
   * @throws NoOpenGlException if the machine has no OpenGL 3.3
   */
  public static byte[] png(Scene scene, View view, int width, int height, Theme theme)
      throws NoOpenGlException {
    return png(scene, view, width, height, theme, () -> GlContext.open(false));
  }

  static byte[] png(
      Scene scene, View view, int width, int height, Theme theme, ContextSource source)
      throws NoOpenGlException {
    return png(scene, view, width, height, 1, theme, source);
  }

  /**
   * The same with lines and letters so many times larger, for a picture that is shown smaller.
   *
   * @param scale how many times (1), 1 to 4
   */
  public static byte[] png(Scene scene, View view, int width, int height, double scale, Theme theme)
      throws NoOpenGlException {
    return png(scene, view, width, height, scale, theme, () -> GlContext.open(false));
  }

  private static byte[] png(
      Scene scene,
      View view,
      int width,
      int height,
      double scale,
      Theme theme,
      ContextSource source)
      throws NoOpenGlException {
    Require.within("scale", scale, 1, 4);
    Require.within("width", width, 200, 8192);
    Require.within("height", height, 200, 8192);
    try (GlContext context = source.open()) {
      byte[] rgb = draw(scene, view, width, height, scale, theme);
      context.requireNoError();
      return Png.encode(rgb, width, height);
    }
  }

  /** Red, green, blue of the picture, rows from the top, with the current context. */
  static byte[] draw(Scene scene, View view, int width, int height, Theme theme) {
    return draw(scene, view, width, height, 1, theme);
  }

  private static byte[] draw(
      Scene scene, View view, int width, int height, double scale, Theme theme) {
    LengthUnit unit = scene.setup().unit();
    Insets insets = Insets.ofPicture(scale);
    Camera camera = camera(scene, view, width, height, scale);
    try (RenderTarget target = new RenderTarget(width, height, MOST_SAMPLES);
        SceneRenderer renderer = new SceneRenderer(scale)) {
      target.bind();
      renderer.show(scene);
      renderer.draw(camera, theme, unit, insets);
      String below = view.word() + " view, lengths in " + unit.symbol();
      renderer.drawTitle(camera, scene.title(), below);
      return target.readRgb();
    }
  }

  /** The eye of a picture: straight views look closely at what is cut, the iso view at the part. */
  static Camera camera(Scene scene, View view, int width, int height) {
    return camera(scene, view, width, height, 1);
  }

  private static Camera camera(Scene scene, View view, int width, int height, double scale) {
    Camera camera = new Camera(view);
    camera.resize(width, height);
    Extents seen = view == View.ISO ? scene.bounds() : scene.subject();
    camera.fit(seen, Insets.ofPicture(scale).widened(MARGIN * scale));
    return camera;
  }
}
