package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.motion.Point;
import java.util.List;

/** Tells the metal's program where the exact walls of threads stand in for the mesh. */
final class RegionMask {
  private final float[] ring = new float[4 * BodyScene.MOST_REGIONS];
  private final float[] span = new float[2 * BodyScene.MOST_REGIONS];

  /**
   * Leaves out what lies within some regions from now on.
   *
   * @param metal the program, in use
   * @param regions at most {@link BodyScene#MOST_REGIONS}
   * @param origin of the drawn coordinates (mm)
   */
  void leaveOut(ShaderProgram metal, List<ThreadRegion> regions, Point origin) {
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
}
