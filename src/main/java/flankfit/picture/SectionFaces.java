package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.picture.LiveBody.Cut;
import flankfit.picture.LiveBody.Look;
import java.nio.FloatBuffer;
import java.util.List;
import org.lwjgl.system.MemoryUtil;

/** Draws the faces that planes cut in a body, hatched. */
final class SectionFaces implements AutoCloseable {
  /** Distance of two lines of the hatching (px at scale 1). */
  private static final double HATCH = 9;

  private final double contentScale;
  private final ShaderProgram count = new ShaderProgram("count");
  private final ShaderProgram section = new ShaderProgram("section");
  private final int quadArray = glGenVertexArrays();
  private final int quadBuffer = glGenBuffers();
  private final FloatBuffer quad = MemoryUtil.memAllocFloat(12);
  private final float[] others = new float[4 * (LiveBody.MOST_CUTS - 1)];
  private final float[] colour = new float[4];

  SectionFaces(double contentScale) {
    this.contentScale = contentScale;
    glBindVertexArray(quadArray);
    glBindBuffer(GL_ARRAY_BUFFER, quadBuffer);
    glBufferData(GL_ARRAY_BUFFER, 12 * Float.BYTES, GL_DYNAMIC_DRAW);
    glEnableVertexAttribArray(0);
    glVertexAttribPointer(0, 3, GL_FLOAT, false, 3 * Float.BYTES, 0);
    glBindVertexArray(0);
  }

  /** Height above a plane, or below it, about an origin. */
  static void put(Cut cut, Point origin, double sign, float[] target, int at) {
    target[at] = (float) (sign * cut.nx());
    target[at + 1] = (float) (sign * cut.ny());
    target[at + 2] = (float) (sign * cut.nz());
    double height =
        cut.nx() * origin.x() + cut.ny() * origin.y() + cut.nz() * origin.z() - cut.distance();
    target[at + 3] = (float) (sign * height);
  }

  /**
   * The face that a plane cuts: where the eye meets an odd number of faces behind the plane, the
   * place on the plane lies in metal.
   */
  void draw(
      List<BodyBatch> drawn,
      float[] toClip,
      Scene scene,
      Point origin,
      Theme.Palette palette,
      Look look,
      int which,
      double pixels) {
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
    hatched(toClip, scene, origin, palette, look, which, pixels);
    glDisable(GL_STENCIL_TEST);
    glStencilMask(0xFF);
  }

  private void hatched(
      float[] toClip,
      Scene scene,
      Point origin,
      Theme.Palette palette,
      Look look,
      int which,
      double pixels) {
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
    glUniform1f(section.uniform("spacing"), (float) (HATCH * contentScale * pixels * Math.sqrt(2)));
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

  @Override
  public void close() {
    MemoryUtil.memFree(quad);
    glDeleteBuffers(quadBuffer);
    glDeleteVertexArrays(quadArray);
    section.close();
    count.close();
  }
}
