package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.motion.Point;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;
import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.util.List;
import org.lwjgl.system.MemoryUtil;

/** Draws bodies of metal into the bound framebuffer with the current OpenGL context. */
public final class BodyRenderer implements AutoCloseable {
  /** Distance of two lines of the hatching (px at scale 1). */
  private static final double HATCH = 9;

  /** How far the frame's edge is towards the walls of the room that the metal mirrors (1). */
  private static final double ROOM = 0.45;

  private final double contentScale;
  private final RegionMask mask = new RegionMask();
  private final ShaderProgram metal = new ShaderProgram("metal");
  private final ShaderProgram cap = new ShaderProgram("cap");
  private final ShaderProgram copy = new ShaderProgram("copy");
  private final BodyBatch body = new BodyBatch();
  private final BodyBatch walls = new BodyBatch();
  private final int capArray = glGenVertexArrays();
  private final int capBuffer = glGenBuffers();
  private final int bare = glGenVertexArrays();
  private final LineBatch creases = new LineBatch();
  private final LineBatch outline = new LineBatch();
  private final LinePen pen;
  private final TextAtlas atlas;
  private final Overlay overlay;
  private final Annotations annotations;
  private final float[] toClip = new float[16];
  private final float[] toView = new float[16];
  private final float[] colour = new float[4];
  private int capVertices;

  /**
   * Prepares shaders and letters.
   *
   * @param contentScale pixels a logical pixel (1), above 0
   */
  public BodyRenderer(double contentScale) {
    this.contentScale = contentScale;
    pen = new LinePen(contentScale);
    atlas = new TextAtlas(contentScale);
    overlay = new Overlay(atlas);
    annotations = new Annotations(overlay, contentScale);
    glBindVertexArray(capArray);
    glBindBuffer(GL_ARRAY_BUFFER, capBuffer);
    glEnableVertexAttribArray(0);
    glVertexAttribPointer(0, 3, GL_FLOAT, false, 3 * Float.BYTES, 0);
    glBindVertexArray(0);
  }

  /** Brings a body into graphics memory. */
  public void show(BodyScene scene) {
    body.upload(scene.faces());
    walls.upload(scene.walls());
    Point origin = scene.faces().origin();
    creases.upload(lines(scene.creases(), origin, LineStyles.BODY_CREASE));
    Coordinates edges = scene.cut().map(BodyScene.Cut::outline).orElse(Coordinates.NONE);
    outline.upload(lines(edges, origin, LineStyles.SECTION_EDGE));
    Coordinates closed = scene.cut().map(BodyScene.Cut::cap).orElse(Coordinates.NONE);
    capVertices = closed.size() / 3;
    FloatBuffer data = MemoryUtil.memAllocFloat(Math.max(1, closed.size()));
    for (int i = 0; i < closed.size(); i++) {
      data.put(i, (float) (closed.at(i) - origin.axis(i % 3)));
    }
    glBindBuffer(GL_ARRAY_BUFFER, capBuffer);
    glBufferData(GL_ARRAY_BUFFER, data, GL_STATIC_DRAW);
    MemoryUtil.memFree(data);
  }

  private static LineStore lines(Coordinates ends, Point origin, int style) {
    LineStore store = new LineStore(origin);
    for (int i = 0; i + 5 < ends.size(); i += 6) {
      store.segment(
          new Point(ends.at(i), ends.at(i + 1), ends.at(i + 2)),
          new Point(ends.at(i + 3), ends.at(i + 4), ends.at(i + 5)),
          style);
    }
    return store;
  }

  /**
   * Draws the metal alone, moved by a part of a pixel: several such frames together have soft
   * edges.
   *
   * @param shiftX to the right (px)
   * @param shiftY upwards (px)
   */
  void draw(BodyScene scene, Camera camera, Theme theme, double shiftX, double shiftY) {
    Theme.Palette palette = theme.palette();
    pen.paper(theme);
    matrices(scene, camera, shiftX, shiftY);
    glViewport(0, 0, camera.width(), camera.height());
    glDisable(GL_SCISSOR_TEST);
    glDepthMask(true);
    Colours.put(palette.ground(), 1, colour, 0);
    glClearColor(colour[0], colour[1], colour[2], 1);
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
    glDisable(GL_BLEND);
    glEnable(GL_DEPTH_TEST);
    glDepthFunc(GL_LEQUAL);
    glDisable(GL_CULL_FACE);
    glEnable(GL_POLYGON_OFFSET_FILL);
    glPolygonOffset(1, 2);
    glEnable(GL_CLIP_DISTANCE0);
    surface(scene, camera, theme);
    glDisable(GL_CLIP_DISTANCE0);
    closing(palette, shiftX, shiftY);
    glDisable(GL_POLYGON_OFFSET_FILL);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glDepthMask(false);
    pen.use(camera, toClip);
    pen.pass(outline, LinePen.CORE, toClip);
    pen.pass(outline, LinePen.FRINGE, toClip);
    glDepthMask(true);
  }

  private void matrices(BodyScene scene, Camera camera, double shiftX, double shiftY) {
    double depth =
        2 * scene.ground().reach().diagonal()
            + scene.ground().reach().middle().distance(camera.centre());
    camera.writeClip(scene.faces().origin(), depth, toClip);
    toClip[12] += (float) (2 * shiftX / camera.width());
    toClip[13] += (float) (2 * shiftY / camera.height());
    camera.writeView(toView);
  }

  private void surface(BodyScene scene, Camera camera, Theme theme) {
    metal.use();
    glUniformMatrix4fv(metal.uniform("toClip"), false, toClip);
    glUniformMatrix4fv(metal.uniform("toView"), false, toView);
    double least = Math.min(camera.width(), camera.height());
    glUniform2f(
        metal.uniform("reach"),
        (float) (ROOM * camera.width() / least),
        (float) (ROOM * camera.height() / least));
    glUniform1f(metal.uniform("day"), theme == Theme.LIGHT ? 1 : 0);
    Point origin = scene.faces().origin();
    float[] plane =
        scene
            .cut()
            .map(
                c ->
                    new float[] {
                      (float) c.nx(),
                      (float) c.ny(),
                      (float) c.nz(),
                      (float)
                          (c.nx() * origin.x()
                              + c.ny() * origin.y()
                              + c.nz() * origin.z()
                              - c.distance())
                    })
            .orElseGet(() -> new float[] {0, 0, 0, 1});
    glUniform4fv(metal.uniform("plane"), plane);
    mask.leaveOut(metal, scene.regions(), origin);
    body.draw();
    glUniform1i(metal.uniform("regions"), 0);
    walls.draw();
  }

  private void closing(Theme.Palette palette, double shiftX, double shiftY) {
    if (capVertices == 0) {
      return;
    }
    cap.use();
    glUniformMatrix4fv(cap.uniform("toClip"), false, toClip);
    Colours.put(Colours.mix(palette.stock(), palette.ground(), 0.45), 1, colour, 0);
    glUniform4fv(cap.uniform("ground"), colour);
    Colours.put(palette.ink(), 0.55, colour, 0);
    glUniform4fv(cap.uniform("ink"), colour);
    glUniform1f(cap.uniform("spacing"), (float) (HATCH * contentScale * Math.sqrt(2)));
    glUniform2f(cap.uniform("shift"), (float) shiftX, (float) shiftY);
    glBindVertexArray(capArray);
    glDrawArrays(GL_TRIANGLES, 0, capVertices);
    glBindVertexArray(0);
  }

  /** Lays a picture over the bound framebuffer: red, green, blue bytes, rows from the top. */
  void paste(byte[] rgb, int width, int height) {
    int texture = glGenTextures();
    ByteBuffer pixels = MemoryUtil.memAlloc(rgb.length);
    pixels.put(rgb).flip();
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, texture);
    glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
    glTexImage2D(GL_TEXTURE_2D, 0, GL_RGB8, width, height, 0, GL_RGB, GL_UNSIGNED_BYTE, pixels);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_NEAREST);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_NEAREST);
    MemoryUtil.memFree(pixels);
    glViewport(0, 0, width, height);
    glDisable(GL_DEPTH_TEST);
    glDisable(GL_BLEND);
    copy.use();
    glUniform1i(copy.uniform("picture"), 0);
    glBindVertexArray(bare);
    glDrawArrays(GL_TRIANGLES, 0, 3);
    glBindVertexArray(0);
    glDeleteTextures(texture);
  }

  /** Draws rules, axes, key and title over what is bound. */
  void annotate(
      BodyScene scene, Camera camera, Theme theme, LengthUnit unit, Insets insets, String below) {
    glDisable(GL_DEPTH_TEST);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    annotations.draw(camera, scene.ground(), theme, unit, insets);
    annotations.title(theme, scene.ground().title(), below, camera.height());
    key(scene.key(), theme.palette());
    overlay.flush(camera.width(), camera.height());
  }

  private void key(List<BodyScene.KeyRow> rows, Theme.Palette palette) {
    double x = 28 * contentScale;
    double y = Annotations.LAST_ROW * contentScale;
    for (BodyScene.KeyRow row : rows) {
      overlay.ink(palette.softInk(), 1);
      overlay.bar(x - 1, y - 1, 14 * contentScale + 2, 10 * contentScale + 2);
      overlay.ink(row.colour(), 1);
      overlay.bar(x, y, 14 * contentScale, 10 * contentScale);
      overlay.ink(palette.softInk(), 1);
      double wide = overlay.text(Face.SMALL, x + 20 * contentScale, y, row.words(), Align.LEFT);
      x += wide + 44 * contentScale;
    }
  }

  @Override
  public void close() {
    overlay.close();
    atlas.close();
    pen.close();
    outline.close();
    creases.close();
    glDeleteVertexArrays(bare);
    glDeleteBuffers(capBuffer);
    glDeleteVertexArrays(capArray);
    walls.close();
    body.close();
    copy.close();
    cap.close();
    metal.close();
  }
}
