package flankfit.picture;

import java.util.Optional;

/**
 * The lines of the path that is shown, and those for another zoom on their way. Old ones are drawn
 * while the wanted ones are fewer.
 */
final class CurrentPath implements AutoCloseable {
  private static final double FINEST_CHORD = 1e-4;

  private final double contentScale;
  private final long time;
  private Optional<PathDrawing> path = Optional.empty();
  private Optional<PathDrawing> next = Optional.empty();
  private boolean stale;

  /**
   * No lines yet.
   *
   * @param contentScale pixels a logical pixel (1), above 0
   * @param time time that a frame may spend on new lines (ns), above 0
   */
  CurrentPath(double contentScale, long time) {
    this.contentScale = contentScale;
    this.time = time;
  }

  /** The lines to draw; {@link #follow} has been called. */
  PathDrawing get() {
    return path.orElseThrow();
  }

  /** Another scene follows; lines of the same program stay until there are better ones. */
  void drop(boolean sameProgram) {
    next.ifPresent(PathDrawing::close);
    next = Optional.empty();
    if (sameProgram) {
      stale = true;
    } else {
      path.ifPresent(PathDrawing::close);
      path = Optional.empty();
    }
  }

  /** Whether lines of a scene are still to come. */
  boolean isGrowing(Scene scene) {
    return next.isPresent() || (path.isPresent() && !path.get().isComplete(scene));
  }

  /** Goes on with the lines that an eye wants. */
  void follow(Scene scene, Camera camera) {
    long until = System.nanoTime() + time;
    int level =
        (int) Math.floor(Math.log(camera.millimetresPerPixel() / contentScale) / Math.log(4));
    boolean fits = path.isPresent() && path.get().level() == level && !stale;
    if (fits || (next.isPresent() && next.get().level() != level)) {
      next.ifPresent(PathDrawing::close);
      next = Optional.empty();
    }
    if (fits) {
      path.get().extend(scene, until);
      return;
    }
    if (next.isEmpty()) {
      double pixel = Math.pow(4, level) * 2 * contentScale;
      double tolerance = Math.max(FINEST_CHORD, pixel / 8);
      next = Optional.of(new PathDrawing(scene, level, tolerance, pixel));
    }
    PathDrawing wanted = next.get();
    wanted.extend(scene, until);
    if (path.isEmpty() || wanted.moves() >= path.get().moves()) {
      path.ifPresent(PathDrawing::close);
      path = next;
      next = Optional.empty();
      stale = false;
    }
  }

  @Override
  public void close() {
    next.ifPresent(PathDrawing::close);
    path.ifPresent(PathDrawing::close);
  }
}
