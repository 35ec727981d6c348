package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.motion.Point;
import flankfit.picture.SurfaceStore.Part;
import flankfit.setup.Tool;
import java.util.Optional;

/** The cutter in graphics memory, and where it stands. */
final class CutterDrawing implements AutoCloseable {
  /** How far edges on round walls are pulled to the eye (px), so that the walls don't cut them. */
  private static final double EDGE_PULL = 2;

  private final double contentScale;
  private final SurfaceBatch faces = new SurfaceBatch();
  private final LineBatch edges = new LineBatch();
  private final float[] toClip = new float[16];
  private final float[] toView = new float[16];
  private final float[] edgeClip = new float[16];
  private Optional<Tool> shown = Optional.empty();

  CutterDrawing(double contentScale) {
    this.contentScale = contentScale;
  }

  /** Takes a tool in place of the one before. */
  void show(Optional<Tool> tool) {
    if (!tool.equals(shown)) {
      shown = tool;
      if (tool.isPresent()) {
        CutterShape shape = new CutterShape(tool.get());
        faces.upload(shape.faces());
        edges.upload(shape.edges(tool.get().radius()));
      }
    }
  }

  /** The cutter is turned so that its drawn meridians are the outline that the eye sees. */
  void place(Camera camera, Point tip, double depth) {
    camera.writeClip(tip, depth, toClip);
    camera.writeView(toView);
    turn(toClip, camera.azimuth());
    turn(toView, camera.azimuth());
    System.arraycopy(toClip, 0, edgeClip, 0, toClip.length);
    edgeClip[14] -= (float) (EDGE_PULL * contentScale * camera.millimetresPerPixel() / depth);
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

  /** From above the cutter would hide the path: there its teeth are drawn last, see-through. */
  void draw(Camera camera, SurfacePen surfaces, LinePen pen, Theme.Palette palette, double alpha) {
    if (shown.isEmpty()) {
      return;
    }
    glEnable(GL_POLYGON_OFFSET_FILL);
    glPolygonOffset(1, 2);
    if (alpha < 1) {
      glColorMask(false, false, false, false);
      surfaces.use(toClip, toView);
      glDepthFunc(GL_ALWAYS);
      faces.draw(Part.CUTTING_PART);
      glDepthFunc(GL_LEQUAL);
      faces.draw(Part.CUTTING_PART);
      glColorMask(true, true, true, true);
    }
    surfaces.use(toClip, toView);
    surfaces.paint(faces, Part.CUTTING_PART, palette.steel(), alpha, 1);
    if (alpha == 1) {
      int shank = Colours.mix(palette.steel(), palette.ground(), 0.35);
      surfaces.paint(faces, Part.SHANK, shank, 1, 1);
    }
    glDisable(GL_POLYGON_OFFSET_FILL);
    pen.use(camera, edgeClip);
    pen.pass(edges, LinePen.CORE, edgeClip);
    glDepthMask(false);
    pen.pass(edges, LinePen.FRINGE, edgeClip);
    glDepthMask(true);
  }

  @Override
  public void close() {
    edges.close();
    faces.close();
  }
}
