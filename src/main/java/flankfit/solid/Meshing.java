package flankfit.solid;

/**
 * How a surface is made.
 *
 * @param threads threads to use; at least 1; the surface does not depend on it
 * @param opennessStep first step at which the air before a point is asked for (mm), each of four
 *     twice the one before; 0 for none, then every point is open
 * @param halt asked between pieces of the work
 */
public record Meshing(int threads, double opennessStep, Halt halt) {
  /** Checks the settings. */
  public Meshing {
    if (threads < 1) {
      throw new IllegalArgumentException("threads is " + threads + ", at least 1 is needed");
    }
    if (!(opennessStep >= 0) || Double.isInfinite(opennessStep)) {
      throw new IllegalArgumentException(
          "opennessStep is " + opennessStep + " mm, a finite step of 0 or more is needed");
    }
  }

  /**
   * The surface of a body by dual contouring: closed, manifold, without cracks where cells of two
   * sizes meet, sharp at creases.
   *
   * @throws java.util.concurrent.CancellationException when halted
   * @throws IllegalStateException if the cells do not hold the whole surface
   */
  public Mesh mesh(Solid solid) {
    return new Mesher(solid, this).mesh();
  }
}
