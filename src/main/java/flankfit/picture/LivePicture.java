package flankfit.picture;

import flankfit.unit.LengthUnit;
import java.util.Optional;

/**
 * The picture of a window, kept in graphics memory from frame to frame. Where the processor draws,
 * a path too long for a frame is drawn in pieces: every frame adds some hair lines, and when all
 * are there, lines with their widths and soft edges follow. A step of the cutter shows the path as
 * it was until the new one is there.
 */
public final class LivePicture implements AutoCloseable {
  /** Time that a frame may spend on drawing a long path (ns). */
  private static final long DRAWING = 8_000_000;

  /** Time that a frame may spend on new lines of a path (ns). */
  private static final long BUILDING = 5_000_000;

  private final SceneRenderer renderer;
  private final boolean saving;
  private final int samples;
  private Optional<RenderTarget> target = Optional.empty();
  private Optional<Sheet> front = Optional.empty();
  private Optional<Sheet> back = Optional.empty();
  private boolean unfinished;

  /** A path on its way. */
  private static final class Sheet implements AutoCloseable {
    private final RenderTarget target;
    private final PathProgress progress = new PathProgress();
    private Optional<PathLook> look = Optional.empty();
    private boolean complete;

    Sheet(int width, int height) {
      target = new RenderTarget(width, height, 0);
    }

    boolean has(PathLook wanted) {
      return look.isPresent() && look.get().is(wanted);
    }

    /**
     * What is begun is ended while the cutter moves on: else a film of steps would show nothing.
     */
    boolean goesOnFor(PathLook wanted) {
      return !complete && look.isPresent() && look.get().differsInPosition(wanted);
    }

    boolean hasEyeOf(PathLook wanted) {
      return look.isPresent() && look.get().hasEyeOf(wanted);
    }

    @Override
    public void close() {
      target.close();
    }
  }

  /**
   * Prepares shaders and letters.
   *
   * @param contentScale pixels a logical pixel (1), above 0
   * @param samples samples a pixel; 0 where the processor draws
   */
  public LivePicture(double contentScale, int samples) {
    this.samples = samples;
    saving = samples == 0;
    renderer = new SceneRenderer(contentScale, BUILDING, saving);
  }

  /**
   * Draws a scene, or as much of it as a frame has time for.
   *
   * @param scene what is shown
   * @param camera the eye
   * @param theme paper
   * @param unit unit of rules and scale bar
   * @param insets room round the scene
   */
  public void draw(Scene scene, Camera camera, Theme theme, LengthUnit unit, Insets insets) {
    if (target.isEmpty() || !fits(target.get(), camera)) {
      closeTargets();
      target = Optional.of(new RenderTarget(camera.width(), camera.height(), samples));
    }
    renderer.show(scene);
    renderer.prepare(camera, theme);
    if (!saving || !renderer.isHeavy(camera)) {
      target.get().bind();
      renderer.drawAll(camera, unit, insets);
      unfinished = false;
      return;
    }
    drawPath(camera, insets);
    front.orElseThrow().target.copyAllTo(target.get());
    target.get().bind();
    renderer.drawRest(camera, unit, insets);
  }

  private void drawPath(Camera camera, Insets insets) {
    PathLook coarse = renderer.look(false);
    if (front.isEmpty()) {
      front = Optional.of(new Sheet(camera.width(), camera.height()));
    }
    Sheet shown = front.get();
    boolean same = shown.has(coarse);
    if (!(shown.complete && shown.hasEyeOf(coarse)) || (same && renderer.isGrowing())) {
      add(shown, same ? shown.look.orElseThrow() : coarse, camera, insets);
      unfinished = true;
      return;
    }
    if (same && shown.progress.isFine()) {
      add(shown, shown.look.orElseThrow(), camera, insets);
      unfinished = !shown.complete;
      return;
    }
    // A step is shown coarsely first; what stays in sight is then drawn finely.
    PathLook look = renderer.look(same);
    if (back.isEmpty()) {
      back = Optional.of(new Sheet(camera.width(), camera.height()));
    }
    add(back.get(), look, camera, insets);
    unfinished = true;
    if (back.get().complete) {
      Optional<Sheet> before = front;
      front = back;
      back = before;
    }
  }

  private void add(Sheet sheet, PathLook look, Camera camera, Insets insets) {
    sheet.target.bind();
    boolean fitting = sheet.has(look) || sheet.goesOnFor(look);
    if (!fitting || sheet.progress.isFine() != look.isFine()) {
      sheet.look = Optional.of(look);
      sheet.progress.restart(look.isFine());
      renderer.clearForPath(camera);
    }
    long until = System.nanoTime() + DRAWING;
    sheet.complete = renderer.drawPath(camera, insets, sheet.progress, until);
  }

  private static boolean fits(RenderTarget target, Camera camera) {
    return target.width() == camera.width() && target.height() == camera.height();
  }

  /** Whether a further frame has something to add, with nothing else changed. */
  public boolean isUnfinished() {
    return unfinished || renderer.isGrowing();
  }

  /** Copies the picture into the bound window's framebuffer, its lower left corner there (px). */
  public void copyTo(int framebuffer, int x, int y) {
    target.orElseThrow().copyTo(framebuffer, x, y);
  }

  private void closeTargets() {
    target.ifPresent(RenderTarget::close);
    front.ifPresent(Sheet::close);
    back.ifPresent(Sheet::close);
    target = Optional.empty();
    front = Optional.empty();
    back = Optional.empty();
  }

  @Override
  public void close() {
    closeTargets();
    renderer.close();
  }
}
