package flankfit.picture;

/**
 * The lines of a scene's path for one level of zoom, in graphics memory. Made piece by piece, so
 * that a long path never holds up a frame; what is there already can be drawn.
 */
final class PathDrawing implements AutoCloseable {
  /** Texels that are handed to graphics memory at a time: 4 MB. */
  private static final int MOST_TEXELS = 1 << 18;

  private final int level;
  private final PathLines lines;
  private final LineBatch actual = new LineBatch();
  private final LineBatch programmed = new LineBatch();
  private final TickBatch ticks = new TickBatch();
  private int uploadedTicks;

  /**
   * Nothing yet.
   *
   * @param tolerance greatest distance of a chord from its arc (mm), above 0
   * @param pixel what a pixel shows about (mm), above 0
   */
  PathDrawing(Scene scene, int level, double tolerance, double pixel) {
    this.level = level;
    lines = new PathLines(scene, tolerance, pixel);
  }

  int level() {
    return level;
  }

  /**
   * Goes on with the lines of a scene.
   *
   * @param scene the scene it was made for, or one that shares its ground
   * @param until the time (ns, of {@link System#nanoTime}) after which no more is begun
   */
  void extend(Scene scene, long until) {
    do {
      lines.extend(scene, until);
      actual.append(lines.actual(), MOST_TEXELS);
      programmed.append(lines.programmed(), MOST_TEXELS);
    } while (!isComplete(scene) && System.nanoTime() - until < 0);
    if (lines.ticks().size() != uploadedTicks) {
      uploadedTicks = lines.ticks().size();
      ticks.upload(lines.ticks());
    }
  }

  /** Whether all moves of a scene are in graphics memory. */
  boolean isComplete(Scene scene) {
    return lines.moves() >= scene.tape().size()
        && actual.uploaded() == lines.actual().size()
        && programmed.uploaded() == lines.programmed().size();
  }

  /** Number of moves that have their lines. */
  int moves() {
    return lines.moves();
  }

  LineBatch actual() {
    return actual;
  }

  LineBatch programmed() {
    return programmed;
  }

  TickBatch ticks() {
    return ticks;
  }

  /** Texel of the actual path at which a move ends, or whose chord it ends within. */
  int end(int move) {
    return lines.end(move);
  }

  /** The texel whose chord a share (1) of a move ends within. */
  int part(int move, double share) {
    return lines.part(move, share);
  }

  /** The texel whose chord a move ends within; -1 when it ends at a texel. */
  int split(int move) {
    return lines.endsWithinChord(move) ? lines.end(move) : -1;
  }

  @Override
  public void close() {
    ticks.close();
    programmed.close();
    actual.close();
  }
}
