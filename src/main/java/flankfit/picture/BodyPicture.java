package flankfit.picture;

import flankfit.motion.Extents;
import flankfit.unit.LengthUnit;
import flankfit.unit.Require;

/** Pictures of the metal that is left, drawn without a window. */
public final class BodyPicture {
  /** Frames that are drawn and averaged, each moved by part of a pixel (R2 sequence). */
  private static final int FRAMES = 12;

  /** Steps of the R2 sequence: reciprocals of the plastic number and of its square. */
  private static final double STEP_X = 0.7548776662466927;

  private static final double STEP_Y = 0.5698402909980532;
  private static final double MARGIN = 26;

  private BodyPicture() {}

  /**
   * A picture of a body, fitted into the frame, with rules, axes, scale bar, key and title.
   *
   * @param view where from
   * @param subject what fills the frame
   * @param width width (px), 200 to 8192
   * @param height height (px), 200 to 8192
   * @param theme paper
   * @return a PNG file; the same request gives the same bytes on one renderer
   * @throws NoOpenGlException if the machine has no OpenGL 3.3
   */
  public static byte[] png(
      BodyScene scene, View view, Extents subject, int width, int height, Theme theme)
      throws NoOpenGlException {
    Require.within("width", width, 200, 8192);
    Require.within("height", height, 200, 8192);
    try (GlContext context = GlContext.open(false)) {
      byte[] rgb = draw(scene, view, subject, width, height, theme);
      context.requireNoError();
      return Png.encode(rgb, width, height);
    }
  }

  /** Red, green, blue of the picture, rows from the top, with the current context. */
  static byte[] draw(
      BodyScene scene, View view, Extents subject, int width, int height, Theme theme) {
    LengthUnit unit = scene.ground().setup().unit();
    Insets insets = Insets.ofPicture(1);
    Camera camera = camera(view, subject, width, height);
    try (RenderTarget target = new RenderTarget(width, height, 0);
        BodyRenderer renderer = new BodyRenderer(1)) {
      target.bind();
      renderer.show(scene);
      renderer.paste(averaged(scene, renderer, target, camera, theme), width, height);
      String below = view.word() + " view, lengths in " + unit.symbol();
      renderer.annotate(scene, camera, theme, unit, insets, below);
      return target.readRgb();
    }
  }

  /** The eye of a picture. */
  public static Camera camera(View view, Extents subject, int width, int height) {
    Camera camera = new Camera(view);
    camera.resize(width, height);
    camera.fit(subject, Insets.ofPicture(1).widened(MARGIN));
    return camera;
  }

  private static byte[] averaged(
      BodyScene scene, BodyRenderer renderer, RenderTarget target, Camera camera, Theme theme) {
    int[] sum = new int[3 * target.width() * target.height()];
    for (int frame = 0; frame < FRAMES; frame++) {
      double shiftX = (0.5 + STEP_X * frame) % 1 - 0.5;
      double shiftY = (0.5 + STEP_Y * frame) % 1 - 0.5;
      target.bind();
      renderer.draw(scene, camera, theme, shiftX, shiftY);
      byte[] rgb = target.readRgb();
      for (int i = 0; i < sum.length; i++) {
        sum[i] += rgb[i] & 0xFF;
      }
    }
    byte[] mean = new byte[sum.length];
    for (int i = 0; i < sum.length; i++) {
      mean[i] = (byte) ((2 * sum[i] + FRAMES) / (2 * FRAMES));
    }
    target.bind();
    return mean;
  }
}
