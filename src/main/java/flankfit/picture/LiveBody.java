package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.motion.Point;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The metal in a window, with planes that open it and the cutter at its place. New faces are
 * brought into graphics memory over as many frames as that needs; until all are there, those before
 * are shown.
 */
public final class LiveBody implements AutoCloseable {
  /** Planes that open a body together, at most. */
  public static final int MOST_CUTS = 3;

  /** Changes that follow each other so closely are a movement (ns). */
  private static final long MOVING = 600_000_000;

  /** Frames that are averaged at rest, each moved by part of a pixel (R2 sequence). */
  private static final int FRAMES = 8;

  /** Steps of the R2 sequence: reciprocals of the plastic number and of its square. */
  private static final double STEP_X = 0.7548776662466927;

  private static final double STEP_Y = 0.5698402909980532;

  /** How far the frame's edge is towards the walls of the room that the metal mirrors (1). */
  private static final double ROOM = 0.45;

  /** What shows through metal that is seen through (1). */
  private static final double CLEAR = 0.72;

  private final int samples;
  private final ShaderProgram metal = new ShaderProgram("metal");
  private final BodyStore store = new BodyStore();
  private final SectionFaces faces;
  private final FrameBlend blend = new FrameBlend();
  private final SurfacePen surfaces = new SurfacePen();
  private final LinePen pen;
  private final CutterDrawing cutter;
  private final TextAtlas atlas;
  private final Overlay overlay;
  private final Annotations annotations;
  private final float[] toClip = new float[16];
  private final float[] toView = new float[16];
  private final float[] colour = new float[4];
  private final float[] heights = new float[4 * MOST_CUTS];
  private final RegionMask mask = new RegionMask();
  private Optional<Targets> targets = Optional.empty();
  private Optional<Drawing> drawing = Optional.empty();
  private int softened;
  private long drawnAt;

  /**
   * A plane that opens a body.
   *
   * @param nx unit normal to the side that is taken away
   * @param ny unit normal
   * @param nz unit normal
   * @param distance of the plane from the zero along the normal (mm)
   */
  public record Cut(double nx, double ny, double nz, double distance) {}

  /** What is drawn into: a frame, frames averaged, and those with rules and words. */
  private record Targets(
      RenderTarget frame, RenderTarget half, RenderTarget soft, RenderTarget front)
      implements AutoCloseable {
    static Targets of(int width, int height, int samples) {
      return new Targets(
          new RenderTarget(width, height, samples),
          new RenderTarget((width + 1) / 2, (height + 1) / 2, 0),
          RenderTarget.precise(width, height),
          new RenderTarget(width, height, 0));
    }

    @Override
    public void close() {
      front.close();
      soft.close();
      half.close();
      frame.close();
    }
  }

  /** What was drawn last. */
  private record Drawing(
      Scene scene, Camera camera, Theme theme, LengthUnit unit, Insets insets, Look look) {}

  /**
   * How the metal is shown.
   *
   * @param cuts planes; what lies before all of them is taken away
   * @param seeThrough whether what lies behind is seen
   * @param plain colour of all faces (0xRRGGBB, as seen); empty for the colours of tools
   * @param cutter whether the cutter is shown
   */
  public record Look(List<Cut> cuts, boolean seeThrough, Optional<Integer> plain, boolean cutter) {
    public Look {
      cuts = List.copyOf(cuts);
      Objects.requireNonNull(plain, "plain");
      if (cuts.size() > MOST_CUTS) {
        throw new IllegalArgumentException("at most " + MOST_CUTS + " planes: " + cuts.size());
      }
    }
  }

  /**
   * Prepares shaders and letters.
   *
   * @param contentScale pixels a logical pixel (1), above 0
   * @param samples samples a pixel; 0 where the processor draws
   */
  public LiveBody(double contentScale, int samples) {
    this.samples = samples;
    faces = new SectionFaces(contentScale);
    pen = new LinePen(contentScale);
    cutter = new CutterDrawing(contentScale);
    atlas = new TextAtlas(contentScale);
    overlay = new Overlay(atlas);
    annotations = new Annotations(overlay, contentScale);
  }

  /** Wants a body shown, in place of the one before. */
  public void show(BodyPieces pieces) {
    store.show(pieces);
  }

  /** Wants exact walls shown, or none. */
  public void show(Optional<ThreadWalls> exact) {
    store.show(exact);
  }

  /** Forgets the body: nothing is shown until the next is there. */
  public void forget() {
    store.forget();
  }

  /** Whether a body is shown. */
  public boolean isThere() {
    return store.isThere();
  }

  /** Whether exact walls of threads are shown. */
  public boolean showsWalls() {
    return store.showsWalls();
  }

  /** Whether all that is wanted is shown. */
  public boolean isComplete() {
    return store.isComplete();
  }

  /**
   * Brings faces into graphics memory.
   *
   * @param until the time (ns, of {@link System#nanoTime}) after which no more is begun
   * @return whether something else is shown now
   */
  public boolean upload(long until) {
    return store.upload(until);
  }

  /**
   * Draws what is shown.
   *
   * @param scene motion, sheet, and where the cutter is
   * @param camera the eye
   */
  public void draw(
      Scene scene, Camera camera, Theme theme, LengthUnit unit, Insets insets, Look look) {
    Targets all = targets(camera);
    Drawing now = new Drawing(scene, camera, theme, unit, insets, look);
    drawing = Optional.of(now);
    softened = 0;
    // What moves is drawn coarsely where the processor draws, so that it moves at all.
    if (samples == 0 && System.nanoTime() - drawnAt < MOVING) {
      frame(now, all.half(), 0, 0);
      all.half().stretchTo(all.soft());
      words(now, all);
    } else {
      soften();
    }
    drawnAt = System.nanoTime();
  }

  /** Whether the edges of what was drawn are as soft as they get. */
  public boolean isSoft() {
    return softened >= FRAMES || drawing.isEmpty();
  }

  /** Draws the same once more, moved by part of a pixel, and averages: edges become soft. */
  public void soften() {
    if (isSoft() || targets.isEmpty()) {
      return;
    }
    Targets all = targets.get();
    Drawing now = drawing.orElseThrow();
    double x = (0.5 + STEP_X * softened) % 1 - 0.5;
    double y = (0.5 + STEP_Y * softened) % 1 - 0.5;
    frame(now, all.frame(), x, y);
    softened++;
    if (softened == 1) {
      all.frame().copyTo(all.soft().name(), 0, 0);
    } else {
      all.frame().copyTo(all.front().name(), 0, 0);
      blend.lay(all.front(), all.soft(), 1.0 / softened);
    }
    words(now, all);
  }

  /** What is averaged, with rules, scale bar and axes over it. */
  private void words(Drawing now, Targets all) {
    all.soft().copyTo(all.front().name(), 0, 0);
    all.front().bind();
    glDisable(GL_SCISSOR_TEST);
    glDisable(GL_DEPTH_TEST);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    annotations.draw(now.camera(), now.scene(), now.theme(), now.unit(), now.insets());
    overlay.flush(now.camera().width(), now.camera().height());
  }

  private void frame(Drawing now, RenderTarget target, double shiftX, double shiftY) {
    Scene scene = now.scene();
    Camera camera = now.camera();
    Theme theme = now.theme();
    Look look = now.look();
    Insets insets = now.insets();
    target.bind();
    double pixels = (double) target.width() / camera.width();
    Theme.Palette palette = theme.palette();
    pen.paper(theme);
    clear(palette);
    double depth = 2 * scene.reach().diagonal() + scene.reach().middle().distance(camera.centre());
    Point origin =
        store.complete().map(c -> c.faces().get(0).origin()).orElse(scene.bounds().middle());
    camera.writeClip(origin, depth, toClip);
    toClip[12] += (float) (2 * shiftX / camera.width());
    toClip[13] += (float) (2 * shiftY / camera.height());
    camera.writeView(toView);
    glEnable(GL_SCISSOR_TEST);
    glScissor(
        (int) (pixels * insets.left()),
        (int) (pixels * insets.bottom()),
        (int) (pixels * Math.max(0, camera.width() - insets.left() - insets.right())),
        (int) (pixels * Math.max(0, camera.height() - insets.bottom() - insets.top())));
    Optional<Tool> tool = look.cutter() ? scene.cutter() : Optional.empty();
    if (tool.isPresent() && look.seeThrough()) {
      cutter(scene, camera, palette, tool, depth);
    }
    if (store.complete().isPresent()) {
      for (int i = 0; i < look.cuts().size(); i++) {
        SectionFaces.put(look.cuts().get(i), origin, 1, heights, 4 * i);
      }
      body(camera, theme, look);
      for (int i = 0; i < look.cuts().size(); i++) {
        faces.draw(store.drawn(), toClip, scene, origin, palette, look, i, pixels);
      }
    }
    if (tool.isPresent() && !look.seeThrough()) {
      cutter(scene, camera, palette, tool, depth);
    }
    glDisable(GL_SCISSOR_TEST);
  }

  private Targets targets(Camera camera) {
    boolean fits =
        targets.isPresent()
            && targets.get().frame().width() == camera.width()
            && targets.get().frame().height() == camera.height();
    if (!fits) {
      targets.ifPresent(Targets::close);
      targets = Optional.of(Targets.of(camera.width(), camera.height(), samples));
    }
    return targets.orElseThrow();
  }

  private void clear(Theme.Palette palette) {
    glDisable(GL_SCISSOR_TEST);
    glDepthMask(true);
    glStencilMask(0xFF);
    Colours.put(palette.ground(), 1, colour, 0);
    glClearColor(colour[0], colour[1], colour[2], 1);
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
    glDisable(GL_BLEND);
    glDisable(GL_CULL_FACE);
    glEnable(GL_DEPTH_TEST);
    glDepthFunc(GL_LEQUAL);
  }

  private void body(Camera camera, Theme theme, Look look) {
    metal.use();
    glUniformMatrix4fv(metal.uniform("toClip"), false, toClip);
    glUniformMatrix4fv(metal.uniform("toView"), false, toView);
    double least = Math.min(camera.width(), camera.height());
    glUniform2f(
        metal.uniform("reach"),
        (float) (ROOM * camera.width() / least),
        (float) (ROOM * camera.height() / least));
    glUniform1f(metal.uniform("day"), theme == Theme.LIGHT ? 1 : 0);
    glUniform4f(metal.uniform("plane"), 0, 0, 0, 1);
    glUniform1i(metal.uniform("sections"), look.cuts().size());
    glUniform4fv(metal.uniform("section"), heights);
    int tint = look.plain().map(BodyFaces::linear).orElse(0);
    glUniform4f(
        metal.uniform("plain"),
        (tint & 0xFF) / 255f,
        (tint >> 8 & 0xFF) / 255f,
        (tint >> 16 & 0xFF) / 255f,
        look.plain().isPresent() ? 1 : 0);
    glUniform1f(metal.uniform("clear"), look.seeThrough() ? (float) CLEAR : 0);
    if (!look.seeThrough()) {
      surface();
      return;
    }
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glDepthMask(false);
    glEnable(GL_CULL_FACE);
    glCullFace(GL_FRONT);
    surface();
    glCullFace(GL_BACK);
    surface();
    glDisable(GL_CULL_FACE);
    glDepthMask(true);
    glDisable(GL_BLEND);
  }

  private void surface() {
    Optional<ThreadWalls> exact = store.walls();
    Point origin = store.complete().orElseThrow().faces().get(0).origin();
    mask.leaveOut(metal, exact.map(ThreadWalls::regions).orElse(List.of()), origin);
    List<BodyBatch> drawn = store.drawn();
    for (int i = 0; i < drawn.size(); i++) {
      drawn.get(i).draw();
    }
    if (exact.isPresent()) {
      glUniform1i(metal.uniform("regions"), 0);
      store.drawWalls();
    }
  }

  private void cutter(
      Scene scene, Camera camera, Theme.Palette palette, Optional<Tool> tool, double depth) {
    cutter.show(tool);
    cutter.place(camera, scene.tip(), depth);
    boolean above = camera.elevation() > SceneRenderer.FROM_ABOVE;
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    pen.styles().meridians(!above);
    cutter.draw(camera, surfaces, pen, palette, above ? SceneRenderer.SEEN_THROUGH : 1);
    glDisable(GL_BLEND);
  }

  /** Copies the picture into the bound window's framebuffer, its lower left corner there (px). */
  public void copyTo(int framebuffer, int x, int y) {
    targets.orElseThrow().front().copyTo(framebuffer, x, y);
  }

  @Override
  public void close() {
    store.close();
    faces.close();
    targets.ifPresent(Targets::close);
    blend.close();
    overlay.close();
    atlas.close();
    cutter.close();
    pen.close();
    surfaces.close();
    metal.close();
  }
}
