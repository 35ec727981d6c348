package flankfit.picture;

/** How much of a path is drawn already. */
final class PathProgress {
  private final SlotOrder actual = new SlotOrder();
  private final SlotOrder programmed = new SlotOrder();

  /** Nothing is drawn. */
  void restart() {
    actual.restart();
    programmed.restart();
  }

  /** Draws some more; gives whether all is drawn. */
  boolean draw(
      PathDrawing path,
      ShaderProgram program,
      float[] toClip,
      int position,
      int split,
      long until) {
    return path.actual().drawSome(program, toClip, position, split, actual, until)
        && path.programmed()
            .drawSome(program, toClip, Integer.MAX_VALUE, -1, programmed, until);
  }
}
