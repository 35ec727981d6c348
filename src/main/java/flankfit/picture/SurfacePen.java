package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.picture.SurfaceStore.Part;

/** Draws faces with their program. */
final class SurfacePen implements AutoCloseable {
  private final ShaderProgram program = new ShaderProgram("surface");
  private final float[] colour = new float[4];

  /** Takes up the program with matrices to the frame and to the eye. */
  void use(float[] toClip, float[] toView) {
    program.use();
    glUniformMatrix4fv(program.uniform("toClip"), false, toClip);
    glUniformMatrix4fv(program.uniform("toView"), false, toView);
  }

  /** Draws a part. */
  void paint(SurfaceBatch batch, Part part, int ink, double alpha, double shading) {
    Colours.put(ink, alpha, colour, 0);
    glUniform4fv(program.uniform("colour"), colour);
    glUniform1f(program.uniform("shading"), (float) shading);
    batch.draw(part);
  }

  /** Faces of stock, holes and keep-outs: far faces, walls of holes, near faces, mouths open. */
  void seeThrough(SurfaceBatch faces, Theme.Palette palette) {
    glEnable(GL_STENCIL_TEST);
    openings(faces);
    glEnable(GL_CULL_FACE);
    glCullFace(GL_FRONT);
    solidFaces(faces, palette, 0.10);
    glDisable(GL_STENCIL_TEST);
    paint(faces, Part.HOLE_WALL, palette.holeWall(), 0.34, 0.9);
    paint(faces, Part.HOLE_FLOOR, palette.holeWall(), 0.3, 0.6);
    glCullFace(GL_BACK);
    glEnable(GL_STENCIL_TEST);
    solidFaces(faces, palette, 0.20);
    glDisable(GL_STENCIL_TEST);
    paint(faces, Part.KEEP_OUT, palette.alarm(), 0.16, 0.5);
    glDisable(GL_CULL_FACE);
  }

  /** Marks mouths of holes with 1 and their exits with 2 in the stencil. */
  private static void openings(SurfaceBatch faces) {
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

  private void solidFaces(SurfaceBatch faces, Theme.Palette palette, double alpha) {
    glStencilFunc(GL_ALWAYS, 0, 0xFF);
    paint(faces, Part.STOCK_SIDES, palette.stock(), alpha, 0.7);
    glStencilFunc(GL_NOTEQUAL, 1, 1);
    paint(faces, Part.STOCK_TOP, palette.stock(), alpha, 0.7);
    glStencilFunc(GL_NOTEQUAL, 2, 2);
    paint(faces, Part.STOCK_BOTTOM, palette.stock(), alpha, 0.7);
  }

  @Override
  public void close() {
    program.close();
  }
}
