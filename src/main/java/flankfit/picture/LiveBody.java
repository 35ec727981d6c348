package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.nio.FloatBuffer;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.lwjgl.system.MemoryUtil;

/**
 * The metal in a window, with planes that open it and the cutter at its place. New faces are brought
 * into graphics memory over as many frames as that needs; until all are there, those before are
 * shown.
 */
public final class LiveBody implements AutoCloseable {
  /** Planes that open a body together, at most. */
  public static final int MOST_CUTS = 3;

  /** Distance of two lines of the hatching (px at scale 1). */
  private static final double HATCH = 9;

  /** Frames that are averaged at rest, each moved by part of a pixel (R2 sequence). */
  private static final int FRAMES = 8;

  /** Steps of the R2 sequence: reciprocals of the plastic number and of its square. */
  private static final double STEP_X = 0.7548776662466927;

  private static final double STEP_Y = 0.5698402909980532;

  /** How far the frame's edge is towards the walls of the room that the metal mirrors (1). */
  private static final double ROOM = 0.45;

  /** What shows through metal that is seen through (1). */
  private static final double CLEAR = 0.72;

  private final double contentScale;
  private final int samples;
  private final ShaderProgram metal = new ShaderProgram("metal");
  private final ShaderProgram count = new ShaderProgram("count");
  private final ShaderProgram section = new ShaderProgram("section");
  private final FrameBlend blend = new FrameBlend();
  private final SurfacePen surfaces = new SurfacePen();
  private final LinePen pen;
  private final CutterDrawing cutter;
  private final TextAtlas atlas;
  private final Overlay overlay;
  private final Annotations annotations;
  private final BodyBatch walls = new BodyBatch();
  private final int quadArray = glGenVertexArrays();
  private final int quadBuffer = glGenBuffers();
  private final FloatBuffer quad = MemoryUtil.memAllocFloat(12);
  private final float[] toClip = new float[16];
  private final float[] toView = new float[16];
  private final float[] colour = new float[4];
  private final float[] heights = new float[4 * MOST_CUTS];
  private final float[] others = new float[4 * (MOST_CUTS - 1)];
  private final float[] ring = new float[4 * BodyScene.MOST_REGIONS];
  private final float[] span = new float[2 * BodyScene.MOST_REGIONS];
  private Map<BodyFaces, BodyBatch> shown = new IdentityHashMap<>();
  private List<BodyBatch> drawn = List.of();
  private Map<BodyFaces, BodyBatch> coming = new IdentityHashMap<>();
  private Optional<BodyPieces> wanted = Optional.empty();
  private Optional<BodyPieces> complete = Optional.empty();
  private Optional<ThreadWalls> wantedWalls = Optional.empty();
  private Optional<ThreadWalls> shownWalls = Optional.empty();
  private Optional<Targets> targets = Optional.empty();
  private Optional<Drawing> drawing = Optional.empty();
  private int softened;

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
  private record Targets(RenderTarget frame, RenderTarget soft, RenderTarget front)
      implements AutoCloseable {
    static Targets of(int width, int height, int samples) {
      return new Targets(
          new RenderTarget(width, height, samples),
          RenderTarget.precise(width, height),
          new RenderTarget(width, height, 0));
    }

    @Override
    public void close() {
      front.close();
      soft.close();
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
  public record Look(
      List<Cut> cuts, boolean seeThrough, Optional<Integer> plain, boolean cutter) {
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
    this.contentScale = contentScale;
    this.samples = samples;
    pen = new LinePen(contentScale);
    cutter = new CutterDrawing(contentScale);
    atlas = new TextAtlas(contentScale);
    overlay = new Overlay(atlas);
    annotations = new Annotations(overlay, contentScale);
    glBindVertexArray(quadArray);
    glBindBuffer(GL_ARRAY_BUFFER, quadBuffer);
    glBufferData(GL_ARRAY_BUFFER, 12 * Float.BYTES, GL_DYNAMIC_DRAW);
    glEnableVertexAttribArray(0);
    glVertexAttribPointer(0, 3, GL_FLOAT, false, 3 * Float.BYTES, 0);
    glBindVertexArray(0);
  }

  /** Wants a body shown, in place of the one before. */
  public void show(BodyPieces pieces) {
    wanted = Optional.of(pieces);
  }

  /** Wants exact walls shown, or none. */
  public void show(Optional<ThreadWalls> exact) {
    wantedWalls = exact;
  }

  /** Forgets the body: nothing is shown until the next is there. */
  public void forget() {
    wanted = Optional.empty();
    complete = Optional.empty();
    wantedWalls = Optional.empty();
    shownWalls = Optional.empty();
    shown.values().forEach(BodyBatch::close);
    coming.forEach((faces, batch) -> batch.close());
    shown = new IdentityHashMap<>();
    coming = new IdentityHashMap<>();
    drawn = List.of();
  }

  /** Whether a body is shown. */
  public boolean isThere() {
    return complete.isPresent();
  }

  /** Whether exact walls of threads are shown. */
  public boolean showsWalls() {
    return shownWalls.filter(w -> !w.regions().isEmpty()).isPresent();
  }

  /** Whether all that is wanted is shown. */
  public boolean isComplete() {
    return isSame(wanted, complete) && isSame(wantedWalls, shownWalls);
  }

  private static boolean isSame(Optional<?> one, Optional<?> other) {
    return one.isPresent() == other.isPresent()
        && (one.isEmpty() || one.get() == other.get());
  }

  /**
   * Brings faces into graphics memory.
   *
   * @param until the time (ns, of {@link System#nanoTime}) after which no more is begun
   * @return whether something else is shown now
   */
  public boolean upload(long until) {
    boolean changed = false;
    if (!isSame(wanted, complete) && wanted.isPresent() && bring(wanted.get(), until)) {
      swap(wanted.get());
      changed = true;
    }
    if (isSame(wanted, complete) && !isSame(wantedWalls, shownWalls)) {
      wantedWalls.ifPresent(w -> walls.upload(w.faces()));
      shownWalls = wantedWalls;
      changed = true;
    }
    return changed;
  }

  /** Whether all pieces are in graphics memory. */
  private boolean bring(BodyPieces pieces, long until) {
    for (BodyFaces piece : pieces.faces()) {
      if (piece.triangles() > 0 && !shown.containsKey(piece) && !coming.containsKey(piece)) {
        if (System.nanoTime() > until) {
          return false;
        }
        BodyBatch batch = new BodyBatch();
        batch.upload(piece);
        coming.put(piece, batch);
      }
    }
    return true;
  }

  private void swap(BodyPieces pieces) {
    Map<BodyFaces, BodyBatch> next = new IdentityHashMap<>();
    List<BodyBatch> order = new ArrayList<>();
    for (BodyFaces piece : pieces.faces()) {
      BodyBatch batch = coming.remove(piece);
      if (batch == null) {
        batch = shown.remove(piece);
      }
      if (batch != null) {
        next.put(piece, batch);
        order.add(batch);
      }
    }
    shown.values().forEach(BodyBatch::close);
    coming.values().forEach(BodyBatch::close);
    coming = new IdentityHashMap<>();
    shown = next;
    drawn = order;
    complete = Optional.of(pieces);
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
    softened = 1;
    frame(now, all, 0, 0);
    all.frame().copyTo(all.soft().name(), 0, 0);
    words(now, all);
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
    frame(now, all, x, y);
    softened++;
    all.frame().copyTo(all.front().name(), 0, 0);
    blend.lay(all.front(), all.soft(), 1.0 / softened);
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

  private void frame(Drawing now, Targets all, double shiftX, double shiftY) {
    Scene scene = now.scene();
    Camera camera = now.camera();
    Theme theme = now.theme();
    Look look = now.look();
    Insets insets = now.insets();
    all.frame().bind();
    Theme.Palette palette = theme.palette();
    pen.paper(theme);
    clear(palette);
    double depth =
        2 * scene.reach().diagonal() + scene.reach().middle().distance(camera.centre());
    Point origin =
        complete.map(c -> c.faces().get(0).origin()).orElse(scene.bounds().middle());
    camera.writeClip(origin, depth, toClip);
    toClip[12] += (float) (2 * shiftX / camera.width());
    toClip[13] += (float) (2 * shiftY / camera.height());
    camera.writeView(toView);
    glEnable(GL_SCISSOR_TEST);
    glScissor(
        insets.left(),
        insets.bottom(),
        Math.max(0, camera.width() - insets.left() - insets.right()),
        Math.max(0, camera.height() - insets.bottom() - insets.top()));
    Optional<Tool> tool = look.cutter() ? scene.cutter() : Optional.empty();
    if (tool.isPresent() && look.seeThrough()) {
      cutter(scene, camera, palette, tool, depth);
    }
    if (complete.isPresent()) {
      for (int i = 0; i < look.cuts().size(); i++) {
        put(look.cuts().get(i), origin, 1, heights, 4 * i);
      }
      body(camera, theme, look);
      for (int i = 0; i < look.cuts().size(); i++) {
        face(scene, origin, palette, look, i);
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

  /** Height above a plane, or below it, about an origin. */
  private static void put(Cut cut, Point origin, double sign, float[] target, int at) {
    target[at] = (float) (sign * cut.nx());
    target[at + 1] = (float) (sign * cut.ny());
    target[at + 2] = (float) (sign * cut.nz());
    double height =
        cut.nx() * origin.x() + cut.ny() * origin.y() + cut.nz() * origin.z() - cut.distance();
    target[at + 3] = (float) (sign * height);
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
      faces();
      return;
    }
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glDepthMask(false);
    glEnable(GL_CULL_FACE);
    glCullFace(GL_FRONT);
    faces();
    glCullFace(GL_BACK);
    faces();
    glDisable(GL_CULL_FACE);
    glDepthMask(true);
    glDisable(GL_BLEND);
  }

  private void faces() {
    Optional<ThreadWalls> exact = shownWalls;
    regions(exact.map(ThreadWalls::regions).orElse(List.of()));
    for (int i = 0; i < drawn.size(); i++) {
      drawn.get(i).draw();
    }
    if (exact.isPresent()) {
      glUniform1i(metal.uniform("regions"), 0);
      walls.draw();
    }
  }

  private void regions(List<ThreadRegion> regions) {
    Point origin = complete.orElseThrow().faces().get(0).origin();
    for (int i = 0; i < regions.size(); i++) {
      ThreadRegion region = regions.get(i);
      ring[4 * i] = (float) (region.x() - origin.x());
      ring[4 * i + 1] = (float) (region.y() - origin.y());
      ring[4 * i + 2] = (float) (region.inner() * region.inner());
      ring[4 * i + 3] = (float) (region.outer() * region.outer());
      span[2 * i] = (float) (region.low() - origin.z());
      span[2 * i + 1] = (float) (region.high() - origin.z());
    }
    glUniform1i(metal.uniform("regions"), regions.size());
    glUniform4fv(metal.uniform("ring"), ring);
    glUniform2fv(metal.uniform("span"), span);
  }

  /**
   * The face that a plane cuts: where the eye meets an odd number of faces behind the plane, the
   * place on the plane lies in metal.
   */
  private void face(Scene scene, Point origin, Theme.Palette palette, Look look, int which) {
    Cut cut = look.cuts().get(which);
    glEnable(GL_STENCIL_TEST);
    glClear(GL_STENCIL_BUFFER_BIT);
    glColorMask(false, false, false, false);
    glDepthMask(false);
    glDisable(GL_DEPTH_TEST);
    glStencilFunc(GL_ALWAYS, 0, 1);
    glStencilOp(GL_KEEP, GL_KEEP, GL_INVERT);
    glStencilMask(1);
    count.use();
    glUniformMatrix4fv(count.uniform("toClip"), false, toClip);
    put(cut, origin, -1, others, 0);
    glUniform4f(count.uniform("plane"), others[0], others[1], others[2], others[3]);
    glEnable(GL_CLIP_DISTANCE0);
    for (int i = 0; i < drawn.size(); i++) {
      drawn.get(i).draw();
    }
    glDisable(GL_CLIP_DISTANCE0);
    glColorMask(true, true, true, true);
    glDepthMask(true);
    glEnable(GL_DEPTH_TEST);
    glStencilFunc(GL_EQUAL, 1, 1);
    glStencilOp(GL_KEEP, GL_KEEP, GL_KEEP);
    hatched(scene, origin, palette, look, which);
    glDisable(GL_STENCIL_TEST);
    glStencilMask(0xFF);
  }

  private void hatched(Scene scene, Point origin, Theme.Palette palette, Look look, int which) {
    section.use();
    glUniformMatrix4fv(section.uniform("toClip"), false, toClip);
    int count = 0;
    for (int i = 0; i < look.cuts().size(); i++) {
      if (i != which) {
        put(look.cuts().get(i), origin, 1, others, 4 * count++);
      }
    }
    glUniform1i(section.uniform("others"), count);
    glUniform4fv(section.uniform("section"), others);
    Colours.put(Colours.mix(palette.stock(), palette.ground(), 0.45), 1, colour, 0);
    glUniform4fv(section.uniform("ground"), colour);
    Colours.put(palette.ink(), 0.55, colour, 0);
    glUniform4fv(section.uniform("ink"), colour);
    glUniform1f(section.uniform("spacing"), (float) (HATCH * contentScale * Math.sqrt(2)));
    glUniform1f(section.uniform("lean"), which == 1 ? -1 : 1);
    quad(scene, origin, look.cuts().get(which));
    glBindVertexArray(quadArray);
    glBindBuffer(GL_ARRAY_BUFFER, quadBuffer);
    glBufferSubData(GL_ARRAY_BUFFER, 0, quad);
    glDrawArrays(GL_TRIANGLE_STRIP, 0, 4);
    glBindVertexArray(0);
  }

  /** A square of the plane that covers all there is. */
  private void quad(Scene scene, Point origin, Cut cut) {
    Extents box = scene.reach();
    double half = box.diagonal();
    Point m = box.middle();
    double off = cut.nx() * m.x() + cut.ny() * m.y() + cut.nz() * m.z() - cut.distance();
    double px = m.x() - off * cut.nx() - origin.x();
    double py = m.y() - off * cut.ny() - origin.y();
    double pz = m.z() - off * cut.nz() - origin.z();
    boolean upright = Math.abs(cut.nz()) < 0.9;
    double ux = upright ? -cut.ny() : 1;
    double uy = upright ? cut.nx() : 0;
    double length = Math.hypot(ux, uy);
    ux *= half / length;
    uy *= half / length;
    double vx = -cut.nz() * uy;
    double vy = cut.nz() * ux;
    double vz = cut.nx() * uy - cut.ny() * ux;
    for (int i = 0; i < 4; i++) {
      double u = (i & 1) == 0 ? -1 : 1;
      double v = i < 2 ? -1 : 1;
      quad.put(3 * i, (float) (px + u * ux + v * vx));
      quad.put(3 * i + 1, (float) (py + u * uy + v * vy));
      quad.put(3 * i + 2, (float) (pz + v * vz));
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
    forget();
    targets.ifPresent(Targets::close);
    blend.close();
    MemoryUtil.memFree(quad);
    glDeleteBuffers(quadBuffer);
    glDeleteVertexArrays(quadArray);
    walls.close();
    overlay.close();
    atlas.close();
    cutter.close();
    pen.close();
    surfaces.close();
    section.close();
    count.close();
    metal.close();
  }
}
