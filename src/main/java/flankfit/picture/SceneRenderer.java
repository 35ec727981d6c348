package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.unit.LengthUnit;
import java.util.Optional;

/**
 * Draws scenes into the bound framebuffer with the current OpenGL context. Owns everything it keeps
 * in graphics memory. Chords are computed once for each level of zoom, not for each frame.
 */
public final class SceneRenderer implements AutoCloseable {
  /** Chords that are still drawn with soft edges where the processor draws. */
  private static final long MOST_CHORDS = 20_000;

  /** Length of all chords (px) that is still drawn so. */
  private static final double MOST_LENGTH = 60_000;

  /** Above this elevation (rad) the cutter is see-through. */
  static final double FROM_ABOVE = 1.2;

  static final double SEEN_THROUGH = 0.3;

  private final double contentScale;
  private final boolean saving;
  private final CurrentPath path;
  private final LinePen pen;
  private final SurfacePen surfaces = new SurfacePen();
  private final CutterDrawing cutter;
  private final TextAtlas atlas;
  private final Overlay overlay;
  private final Annotations annotations;
  private final SurfaceBatch faces = new SurfaceBatch();
  private final LineBatch edges = new LineBatch();
  private final LineBatch outlines = new LineBatch();
  private final float[] toClip = new float[16];
  private final float[] toView = new float[16];
  private final float[] colour = new float[4];
  private Optional<Scene> shown = Optional.empty();
  private Optional<Furniture> furniture = Optional.empty();
  private Optional<Legend> legend = Optional.empty();
  private Theme theme = Theme.LIGHT;
  private double outlineAzimuth = Double.NaN;

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
    path = new CurrentPath(contentScale, pathTime);
    this.saving = saving;
    atlas = new TextAtlas(contentScale);
    overlay = new Overlay(atlas);
    annotations = new Annotations(overlay, contentScale);
    pen = new LinePen(contentScale);
    cutter = new CutterDrawing(contentScale);
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
      path.drop(shown.isPresent() && shown.get().sharesProgram(scene));
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
    cutter.show(scene.cutter());
  }

  /** Whether lines of the path are still to come in further frames. */
  public boolean isGrowing() {
    return shown.isPresent() && path.isGrowing(shown.get());
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
    pen.styles().meridians(!above);
    if (!above) {
      cutter.draw(camera, surfaces, pen, theme.palette(), 1);
    }
    lines(scene, camera, position(scene));
    if (above) {
      cutter.draw(camera, surfaces, pen, theme.palette(), SEEN_THROUGH);
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
    path.get().actual().estimate(toClip, effort);
    path.get().programmed().estimate(toClip, effort);
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
    PathDrawing drawn = path.get();
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
    pen.use(camera, toClip);
    if (!progress.isFine()) {
      pen.useThinColours();
    }
    int split = split(scene);
    boolean all = progress.draw(path.get(), pen.program(), toClip, position(scene), split, until);
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
    pen.styles().meridians(!above);
    cutter.draw(camera, surfaces, pen, theme.palette(), above ? SEEN_THROUGH : 1);
    glDepthMask(false);
    pen.marks(path.get().ticks(), camera, toClip, position(scene));
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
    legend.orElseThrow().draw(overlay, pen.styles(), theme, contentScale, x, y, room, rows);
  }

  /** Draws the title of a picture over a scene drawn before. */
  void drawTitle(Camera camera, String title, String below) {
    annotations.title(theme, title, below, camera.height());
    overlay.flush(camera.width(), camera.height());
  }

  /** Brings everything into graphics memory that is drawn next. */
  void prepare(Camera camera, Theme wanted) {
    Scene scene = shown();
    theme = wanted;
    pen.paper(wanted);
    path.follow(scene, camera);
    if (camera.azimuth() != outlineAzimuth) {
      outlineAzimuth = camera.azimuth();
      outlines.upload(furniture.orElseThrow().outlines(camera.right(0), camera.right(1)));
    }
    double depth = depth(scene, camera);
    camera.writeClip(scene.origin(), depth, toClip);
    camera.writeView(toView);
    if (scene.position().isPresent()) {
      cutter.place(camera, scene.tip(), depth);
    }
  }

  private double depth(Scene scene, Camera camera) {
    double least =
        2 * scene.reach().diagonal() + scene.reach().middle().distance(camera.centre()) + 400;
    // A growing path that is drawn in pieces must not shift in depth.
    return saving ? Math.pow(2, Math.ceil(Math.log(least) / Math.log(2))) : least;
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
    int move = scene.position().getAsInt();
    return scene.share() < 1 ? path.get().part(move, scene.share()) : path.get().end(move);
  }

  /** The texel whose chord the position lies within, told to the line program; -1 for none. */
  private int split(Scene scene) {
    int move = scene.position().orElse(-1);
    int texel = move < 0 ? -1 : path.get().split(move);
    if (move >= 0 && scene.share() < 1) {
      texel = path.get().part(move, scene.share());
    }
    if (texel >= 0) {
      pen.tip(scene.tip(), scene.origin());
    }
    return texel;
  }

  private void lines(Scene scene, Camera camera, int position) {
    pen.use(camera, toClip);
    LineBatch actual = path.get().actual();
    LineBatch programmed = path.get().programmed();
    int split = split(scene);
    glDepthFunc(GL_GREATER);
    glDepthMask(false);
    pen.pass(actual, LinePen.BEHIND, toClip, position, split);
    glDepthFunc(GL_LEQUAL);
    pen.pass(actual, LinePen.CASING, toClip, position, split);
    glDepthMask(true);
    pen.pass(programmed, LinePen.CORE, toClip);
    pen.pass(actual, LinePen.CORE, toClip, position, split);
    glDepthMask(false);
    pen.pass(programmed, LinePen.FRINGE, toClip);
    pen.pass(actual, LinePen.FRINGE, toClip, position, split);
    pen.marks(path.get().ticks(), camera, toClip, position);
    glDepthMask(true);
  }

  /** Stock last. */
  private void seeThrough(Camera camera) {
    glDepthMask(false);
    surfaces.use(toClip, toView);
    surfaces.seeThrough(faces, theme.palette());
    pen.use(camera, toClip);
    pen.pass(edges, LinePen.CORE, toClip);
    pen.pass(edges, LinePen.FRINGE, toClip);
    pen.pass(outlines, LinePen.CORE, toClip);
    pen.pass(outlines, LinePen.FRINGE, toClip);
    glDepthMask(true);
  }

  @Override
  public void close() {
    cutter.close();
    outlines.close();
    edges.close();
    faces.close();
    path.close();
    overlay.close();
    atlas.close();
    surfaces.close();
    pen.close();
  }
}
