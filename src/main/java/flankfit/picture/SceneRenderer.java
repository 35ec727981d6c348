package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.motion.Point;
import flankfit.picture.SurfaceStore.Part;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.util.Optional;

/**
 * Draws scenes into the bound framebuffer with the current OpenGL context. Owns everything it keeps
 * in graphics memory. Chords are computed once for each level of zoom, not for each frame.
 */
public final class SceneRenderer implements AutoCloseable {
  private static final int BEHIND = 0;
  static final int CASING = 1;
  static final int CORE = 2;
  static final int FRINGE = 3;

  /** Lines of one pixel, with hard edges. */
  static final int HAIR = 4;

  /** Chords that are still drawn with soft edges where the processor draws. */
  private static final long MOST_CHORDS = 20_000;

  /** Length of all chords (px) that is still drawn so. */
  private static final double MOST_LENGTH = 60_000;

  /** Pixels a dash and its gap take up at least. */
  private static final double LEAST_DASH = 9;

  /** Above this elevation (rad) the cutter is see-through. */
  private static final double FROM_ABOVE = 1.2;

  /** How far edges on round walls are pulled to the eye (px), so that the walls don't cut them. */
  private static final double EDGE_PULL = 2;

  private static final double SEEN_THROUGH = 0.3;
  private static final double FINEST_CHORD = 1e-4;

  private final double contentScale;
  private final ShaderProgram lineProgram = new ShaderProgram("line");
  private final ShaderProgram surfaceProgram = new ShaderProgram("surface");
  private final ShaderProgram tickProgram = new ShaderProgram("tick");
  private final TextAtlas atlas;
  private final Overlay overlay;
  private final Annotations annotations;
  private final SurfaceBatch faces = new SurfaceBatch();
  private final LineBatch edges = new LineBatch();
  private final LineBatch outlines = new LineBatch();
  private final SurfaceBatch cutterFaces = new SurfaceBatch();
  private final LineBatch cutterEdges = new LineBatch();
  private final float[] toClip = new float[16];
  private final float[] toView = new float[16];
  private final float[] cutterClip = new float[16];
  private final float[] cutterView = new float[16];
  private final float[] cutterEdgeClip = new float[16];
  private final float[] colour = new float[4];
  private Optional<Scene> shown = Optional.empty();
  private Optional<PathDrawing> path = Optional.empty();
  private Optional<PathDrawing> nextPath = Optional.empty();
  private Optional<Furniture> furniture = Optional.empty();
  private Optional<Legend> legend = Optional.empty();
  private Optional<Tool> cutter = Optional.empty();
  private LineStyles styles;
  private boolean pathIsStale;
  private Theme theme = Theme.LIGHT;
  private double outlineAzimuth = Double.NaN;
  private final long pathTime;
  private final boolean saving;

  /**
   * Prepares shaders and letters; whatever is shown is drawn whole, however long it takes.
   *
   * @param contentScale pixels a logical pixel (1), above 0
   */
  public SceneRenderer(double contentScale) {
    this(contentScale, Long.MAX_VALUE / 2, false);
  }

  /**
   * Prepares shaders and letters for a window that must not stand still.
   *
   * @param contentScale pixels a logical pixel (1), above 0
   * @param pathTime time that a frame may spend on new lines of the path (ns), above 0; the rest
   *     comes with the next ones
   * @param saving whether a long path may be drawn in pieces: where the processor draws
   */
  public SceneRenderer(double contentScale, long pathTime, boolean saving) {
    this.contentScale = contentScale;
    this.pathTime = pathTime;
    this.saving = saving;
    atlas = new TextAtlas(contentScale);
    overlay = new Overlay(atlas);
    annotations = new Annotations(overlay, contentScale);
    styles = new LineStyles(theme, contentScale);
  }

  /** Takes a scene in place of the one before. */
  public void show(Scene scene) {
    boolean sameGround = shown.isPresent() && shown.get().sharesGround(scene);
    boolean sameKey =
        sameGround
            && shown.get().kinds().equals(scene.kinds())
            && shown.get().cutter().isPresent() == scene.cutter().isPresent();
    boolean sameFurniture = sameGround && shown.get().bounds().equals(scene.bounds());
    if (!sameGround) {
      dropPaths(shown.isPresent() && shown.get().sharesProgram(scene));
    }
    shown = Optional.of(scene);
    if (!sameKey) {
      legend = Optional.of(new Legend(scene));
    }
    if (!sameFurniture) {
      Furniture built = new Furniture(scene);
      furniture = Optional.of(built);
      faces.upload(built.faces());
      edges.upload(built.edges());
      outlineAzimuth = Double.NaN;
    }
    Optional<Tool> wanted = scene.cutter();
    if (!wanted.equals(cutter)) {
      cutter = wanted;
      wanted.ifPresent(this::uploadCutter);
    }
  }

  /** Lines of the same program stay until there are better ones. */
  private void dropPaths(boolean sameProgram) {
    nextPath.ifPresent(PathDrawing::close);
    nextPath = Optional.empty();
    if (sameProgram) {
      pathIsStale = true;
    } else {
      path.ifPresent(PathDrawing::close);
      path = Optional.empty();
    }
  }

  /** Whether lines of the path are still to come in further frames. */
  public boolean isGrowing() {
    return nextPath.isPresent()
        || path.isPresent() && shown.isPresent() && !path.get().isComplete(shown.get());
  }

  private void uploadCutter(Tool tool) {
    CutterShape shape = new CutterShape(tool);
    cutterFaces.upload(shape.faces());
    cutterEdges.upload(shape.edges(tool.radius()));
  }

  /**
   * Draws the scene and its rules.
   *
   * @param camera the eye; its size must be that of the bound framebuffer
   * @param wanted paper
   * @param unit unit of rules and scale bar
   * @param insets room round the scene
   */
  public void draw(Camera camera, Theme wanted, LengthUnit unit, Insets insets) {
    prepare(camera, wanted);
    drawAll(camera, unit, insets);
  }

  /** Draws all of what was prepared, the path with round joins and soft edges. */
  void drawAll(Camera camera, LengthUnit unit, Insets insets) {
    Scene scene = shown();
    clear(camera);
    clip(camera, insets);
    boolean above = camera.elevation() > FROM_ABOVE;
    styles.meridians(!above);
    if (!above) {
      cutter(scene, camera, 1);
    }
    lines(scene, camera, position(scene));
    if (above) {
      cutter(scene, camera, SEEN_THROUGH);
    }
    finish(scene, camera, unit, insets);
  }

  private void finish(Scene scene, Camera camera, LengthUnit unit, Insets insets) {
    seeThrough(camera);
    glDisable(GL_SCISSOR_TEST);
    glDisable(GL_DEPTH_TEST);
    annotations.draw(camera, scene, theme, unit, insets);
    key(camera, insets);
    overlay.flush(camera.width(), camera.height());
  }

  private static void clip(Camera camera, Insets insets) {
    glEnable(GL_SCISSOR_TEST);
    glScissor(
        insets.left(),
        insets.bottom(),
        Math.max(0, camera.width() - insets.left() - insets.right()),
        Math.max(0, camera.height() - insets.bottom() - insets.top()));
  }

  /** Whether the path of what was prepared takes more than a frame with a processor that draws. */
  boolean isHeavy(Camera camera) {
    LineBatch.Effort effort = new LineBatch.Effort();
    path.orElseThrow().actual().estimate(toClip, effort);
    path.orElseThrow().programmed().estimate(toClip, effort);
    return effort.chords() > MOST_CHORDS
        || effort.length() / camera.millimetresPerPixel() > MOST_LENGTH;
  }

  /**
   * What decides how the path looks, but for moves that are added at its end.
   *
   * @param fine whether lines have their widths and soft edges
   */
  PathLook look(boolean fine) {
    Scene scene = shown();
    PathDrawing drawn = path.orElseThrow();
    return new PathLook(drawn, toClip.clone(), theme, position(scene), fine);
  }

  /** Clears the bound framebuffer for a path in pieces. */
  void clearForPath(Camera camera) {
    clear(camera);
  }

  /**
   * Draws some of the path into the bound framebuffer.
   *
   * @param progress what is drawn already; is moved on
   * @param until the time (ns, of {@link System#nanoTime}) after which no more is begun
   * @return whether all of it is drawn
   */
  boolean drawPath(Camera camera, Insets insets, PathProgress progress, long until) {
    Scene scene = shown();
    glViewport(0, 0, camera.width(), camera.height());
    glEnable(GL_DEPTH_TEST);
    glDepthFunc(GL_LEQUAL);
    glEnable(GL_BLEND);
    clip(camera, insets);
    useLines(camera, toClip);
    if (!progress.isFine()) {
      glUniform4fv(lineProgram.uniform("colour"), styles.thinColours());
    }
    int split = split(scene);
    boolean all =
        progress.draw(path.orElseThrow(), lineProgram, toClip, position(scene), split, until);
    glDisable(GL_SCISSOR_TEST);
    return all;
  }

  /** Draws everything but the path, over a path that the bound framebuffer holds already. */
  void drawRest(Camera camera, LengthUnit unit, Insets insets) {
    Scene scene = shown();
    glViewport(0, 0, camera.width(), camera.height());
    glEnable(GL_BLEND);
    glEnable(GL_DEPTH_TEST);
    clip(camera, insets);
    boolean above = camera.elevation() > FROM_ABOVE;
    styles.meridians(!above);
    cutter(scene, camera, above ? SEEN_THROUGH : 1);
    glDepthMask(false);
    marks(camera, position(scene));
    glDepthMask(true);
    finish(scene, camera, unit, insets);
  }

  private Scene shown() {
    return shown.orElseThrow(() -> new IllegalStateException("no scene is shown"));
  }

  private void key(Camera camera, Insets insets) {
    double x = 28 * contentScale;
    double y = Annotations.LAST_ROW * contentScale;
    double room = camera.width() - x - insets.right() - 225 * contentScale;
    double height = insets.bottom() - y - 32 * contentScale;
    int rows = 1 + (int) Math.max(0, Math.floor(height / (Legend.ROW * contentScale)));
    legend.orElseThrow().draw(overlay, styles, theme, contentScale, x, y, room, rows);
  }

  /** Draws the title of a picture over a scene drawn before. */
  void drawTitle(Camera camera, String title, String below) {
    annotations.title(theme, title, below, camera.height());
    overlay.flush(camera.width(), camera.height());
  }

  /** Brings everything into graphics memory that is drawn next. */
  void prepare(Camera camera, Theme wanted) {
    Scene scene = shown();
    if (wanted != theme) {
      theme = wanted;
      styles = new LineStyles(theme, contentScale);
    }
    path(scene, camera);
    if (camera.azimuth() != outlineAzimuth) {
      outlineAzimuth = camera.azimuth();
      outlines.upload(furniture.orElseThrow().outlines(camera.right(0), camera.right(1)));
    }
    double depth = depth(scene, camera);
    camera.writeClip(scene.origin(), depth, toClip);
    camera.writeView(toView);
    scene.position().ifPresent(move -> placeCutter(camera, scene.tape().to(move), depth));
  }

  private double depth(Scene scene, Camera camera) {
    double least =
        2 * scene.reach().diagonal() + scene.reach().middle().distance(camera.centre()) + 400;
    // A growing path that is drawn in pieces must not shift in depth.
    return saving ? Math.pow(2, Math.ceil(Math.log(least) / Math.log(2))) : least;
  }

  /**
   * Goes on with the lines of the path. Those of another zoom are drawn while the wanted ones are
   * fewer.
   */
  private void path(Scene scene, Camera camera) {
    long until = System.nanoTime() + pathTime;
    int level =
        (int) Math.floor(Math.log(camera.millimetresPerPixel() / contentScale) / Math.log(4));
    boolean fits = path.isPresent() && path.get().level() == level && !pathIsStale;
    if (fits || (nextPath.isPresent() && nextPath.get().level() != level)) {
      nextPath.ifPresent(PathDrawing::close);
      nextPath = Optional.empty();
    }
    if (fits) {
      path.get().extend(scene, until);
      return;
    }
    if (nextPath.isEmpty()) {
      double pixel = Math.pow(4, level) * 2 * contentScale;
      double tolerance = Math.max(FINEST_CHORD, pixel / 8);
      nextPath = Optional.of(new PathDrawing(scene, level, tolerance, pixel));
    }
    PathDrawing next = nextPath.get();
    next.extend(scene, until);
    if (path.isEmpty() || next.moves() >= path.get().moves()) {
      path.ifPresent(PathDrawing::close);
      path = nextPath;
      nextPath = Optional.empty();
      pathIsStale = false;
    }
  }

  /** The cutter is turned so that its drawn meridians are the outline that the eye sees. */
  private void placeCutter(Camera camera, Point tip, double depth) {
    camera.writeClip(tip, depth, cutterClip);
    camera.writeView(cutterView);
    turn(cutterClip, camera.azimuth());
    turn(cutterView, camera.azimuth());
    System.arraycopy(cutterClip, 0, cutterEdgeClip, 0, cutterClip.length);
    cutterEdgeClip[14] -= (float) (EDGE_PULL * contentScale * camera.millimetresPerPixel() / depth);
  }

  private static void turn(float[] matrix, double angle) {
    float c = (float) Math.cos(angle);
    float s = (float) Math.sin(angle);
    for (int row = 0; row < 3; row++) {
      float x = matrix[row];
      float y = matrix[4 + row];
      matrix[row] = x * c + y * s;
      matrix[4 + row] = y * c - x * s;
    }
  }

  private void clear(Camera camera) {
    glViewport(0, 0, camera.width(), camera.height());
    glDisable(GL_SCISSOR_TEST);
    glDepthMask(true);
    glStencilMask(0xFF);
    Colours.put(theme.palette().ground(), 1, colour, 0);
    glClearColor(colour[0], colour[1], colour[2], 1);
    glClearStencil(0);
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glEnable(GL_DEPTH_TEST);
    glDepthFunc(GL_LEQUAL);
    glDisable(GL_CULL_FACE);
    glDisable(GL_STENCIL_TEST);
  }

  private int position(Scene scene) {
    if (scene.position().isEmpty()) {
      return Integer.MAX_VALUE;
    }
    return path.orElseThrow().end(scene.position().getAsInt());
  }

  /** The texel whose chord the position lies within, told to the line program; -1 for none. */
  private int split(Scene scene) {
    int move = scene.position().orElse(-1);
    int texel = move < 0 ? -1 : path.orElseThrow().split(move);
    if (texel >= 0) {
      Point tip = scene.tape().to(move);
      Point origin = scene.origin();
      glUniform3f(
          lineProgram.uniform("tip"),
          (float) (tip.x() - origin.x()),
          (float) (tip.y() - origin.y()),
          (float) (tip.z() - origin.z()));
    }
    return texel;
  }

  /** From above the cutter would hide the path: there its teeth are drawn last, see-through. */
  private void cutter(Scene scene, Camera camera, double alpha) {
    if (scene.position().isEmpty() || cutter.isEmpty()) {
      return;
    }
    glEnable(GL_POLYGON_OFFSET_FILL);
    glPolygonOffset(1, 2);
    if (alpha < 1) {
      glColorMask(false, false, false, false);
      surfaces(cutterClip, cutterView);
      glDepthFunc(GL_ALWAYS);
      cutterFaces.draw(Part.CUTTING_PART);
      glDepthFunc(GL_LEQUAL);
      cutterFaces.draw(Part.CUTTING_PART);
      glColorMask(true, true, true, true);
    }
    surfaces(cutterClip, cutterView);
    paint(cutterFaces, Part.CUTTING_PART, theme.palette().steel(), alpha, 1);
    if (alpha == 1) {
      int shank = Colours.mix(theme.palette().steel(), theme.palette().ground(), 0.35);
      paint(cutterFaces, Part.SHANK, shank, 1, 1);
    }
    glDisable(GL_POLYGON_OFFSET_FILL);
    useLines(camera, cutterEdgeClip);
    drawBoth(cutterEdges, cutterEdgeClip);
  }

  private void lines(Scene scene, Camera camera, int position) {
    useLines(camera, toClip);
    PathDrawing drawn = path.orElseThrow();
    LineBatch actual = drawn.actual();
    LineBatch programmed = drawn.programmed();
    int split = split(scene);
    glDepthFunc(GL_GREATER);
    glDepthMask(false);
    pass(actual, BEHIND, toClip, position, split);
    glDepthFunc(GL_LEQUAL);
    pass(actual, CASING, toClip, position, split);
    glDepthMask(true);
    pass(programmed, CORE, toClip, Integer.MAX_VALUE, -1);
    pass(actual, CORE, toClip, position, split);
    glDepthMask(false);
    pass(programmed, FRINGE, toClip, Integer.MAX_VALUE, -1);
    pass(actual, FRINGE, toClip, position, split);
    marks(camera, position);
    glDepthMask(true);
  }

  private void drawBoth(LineBatch batch, float[] matrix) {
    pass(batch, CORE, matrix, Integer.MAX_VALUE, -1);
    glDepthMask(false);
    pass(batch, FRINGE, matrix, Integer.MAX_VALUE, -1);
    glDepthMask(true);
  }

  private void useLines(Camera camera, float[] matrix) {
    lineProgram.use();
    glUniformMatrix4fv(lineProgram.uniform("toClip"), false, matrix);
    glUniform2f(lineProgram.uniform("viewport"), camera.width(), camera.height());
    glUniform4fv(lineProgram.uniform("colour"), styles.colours());
    glUniform4fv(lineProgram.uniform("shape"), styles.shapes());
    Colours.put(theme.palette().casing(), 1, colour, 0);
    glUniform4fv(lineProgram.uniform("casingColour"), colour);
    Colours.put(theme.palette().ground(), 0.72, colour, 0);
    glUniform4fv(lineProgram.uniform("ground"), colour);
    glUniform1f(lineProgram.uniform("hiddenAlpha"), 0.42f);
    double least = LEAST_DASH * contentScale * camera.millimetresPerPixel();
    double period = Math.pow(2, Math.ceil(Math.log(least) / Math.log(2)));
    glUniform1f(lineProgram.uniform("dashPeriod"), (float) period);
  }

  private void pass(LineBatch batch, int phase, float[] matrix, int position, int split) {
    glUniform1i(lineProgram.uniform("phase"), phase);
    batch.draw(lineProgram, matrix, position, split);
  }

  private void marks(Camera camera, int position) {
    tickProgram.use();
    glUniformMatrix4fv(tickProgram.uniform("toClip"), false, toClip);
    glUniform2f(tickProgram.uniform("viewport"), camera.width(), camera.height());
    glUniform1f(tickProgram.uniform("pixelsPerMm"), (float) (1 / camera.millimetresPerPixel()));
    glUniform4fv(tickProgram.uniform("tickColour"), styles.tickColours());
    Colours.put(theme.palette().ground(), 0.72, colour, 0);
    glUniform4fv(tickProgram.uniform("ground"), colour);
    glUniform1i(tickProgram.uniform("position"), position);
    glUniform2f(
        tickProgram.uniform("tick"), (float) (6.5 * contentScale), (float) (0.75 * contentScale));
    path.orElseThrow().ticks().draw();
  }

  private void surfaces(float[] matrix, float[] view) {
    surfaceProgram.use();
    glUniformMatrix4fv(surfaceProgram.uniform("toClip"), false, matrix);
    glUniformMatrix4fv(surfaceProgram.uniform("toView"), false, view);
  }

  private void paint(SurfaceBatch batch, Part part, int ink, double alpha, double shading) {
    Colours.put(ink, alpha, colour, 0);
    glUniform4fv(surfaceProgram.uniform("colour"), colour);
    glUniform1f(surfaceProgram.uniform("shading"), (float) shading);
    batch.draw(part);
  }

  /** Stock last: far faces, walls of holes, near faces; mouths of holes are left open. */
  private void seeThrough(Camera camera) {
    Theme.Palette palette = theme.palette();
    glDepthMask(false);
    surfaces(toClip, toView);
    glEnable(GL_STENCIL_TEST);
    openings();
    glEnable(GL_CULL_FACE);
    glCullFace(GL_FRONT);
    solidFaces(palette, 0.10);
    glDisable(GL_STENCIL_TEST);
    paint(faces, Part.HOLE_WALL, palette.holeWall(), 0.34, 0.9);
    paint(faces, Part.HOLE_FLOOR, palette.holeWall(), 0.3, 0.6);
    glCullFace(GL_BACK);
    glEnable(GL_STENCIL_TEST);
    solidFaces(palette, 0.20);
    glDisable(GL_STENCIL_TEST);
    paint(faces, Part.KEEP_OUT, palette.alarm(), 0.16, 0.5);
    glDisable(GL_CULL_FACE);
    useLines(camera, toClip);
    pass(edges, CORE, toClip, Integer.MAX_VALUE, -1);
    pass(edges, FRINGE, toClip, Integer.MAX_VALUE, -1);
    pass(outlines, CORE, toClip, Integer.MAX_VALUE, -1);
    pass(outlines, FRINGE, toClip, Integer.MAX_VALUE, -1);
    glDepthMask(true);
  }

  /** Marks mouths of holes with 1 and their exits with 2 in the stencil. */
  private void openings() {
    glColorMask(false, false, false, false);
    glDisable(GL_DEPTH_TEST);
    glStencilOp(GL_KEEP, GL_KEEP, GL_REPLACE);
    glStencilMask(1);
    glStencilFunc(GL_ALWAYS, 1, 1);
    faces.draw(Part.HOLE_MOUTH);
    glStencilMask(2);
    glStencilFunc(GL_ALWAYS, 2, 2);
    faces.draw(Part.HOLE_EXIT);
    glStencilMask(0);
    glStencilOp(GL_KEEP, GL_KEEP, GL_KEEP);
    glEnable(GL_DEPTH_TEST);
    glColorMask(true, true, true, true);
  }

  private void solidFaces(Theme.Palette palette, double alpha) {
    glStencilFunc(GL_ALWAYS, 0, 0xFF);
    paint(faces, Part.STOCK_SIDES, palette.stock(), alpha, 0.7);
    glStencilFunc(GL_NOTEQUAL, 1, 1);
    paint(faces, Part.STOCK_TOP, palette.stock(), alpha, 0.7);
    glStencilFunc(GL_NOTEQUAL, 2, 2);
    paint(faces, Part.STOCK_BOTTOM, palette.stock(), alpha, 0.7);
  }

  @Override
  public void close() {
    cutterEdges.close();
    cutterFaces.close();
    outlines.close();
    edges.close();
    faces.close();
    nextPath.ifPresent(PathDrawing::close);
    path.ifPresent(PathDrawing::close);
    overlay.close();
    atlas.close();
    tickProgram.close();
    surfaceProgram.close();
    lineProgram.close();
  }
}
