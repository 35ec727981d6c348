package flankfit.picture;

import static org.lwjgl.opengl.GL33C.glDepthMask;
import static org.lwjgl.opengl.GL33C.glUniform1i;

/** How much of a path is drawn already, pass by pass. */
final class PathProgress {
  /** A pass over all lines of a path. */
  private enum Pass {
    HAIR(LinePen.HAIR, true, true),
    CASING(LinePen.CASING, false, false),
    CORE(LinePen.CORE, true, true),
    FRINGE(LinePen.FRINGE, false, true);

    private final int phase;
    private final boolean writesDepth;
    private final boolean showsProgrammed;

    Pass(int phase, boolean writesDepth, boolean showsProgrammed) {
      this.phase = phase;
      this.writesDepth = writesDepth;
      this.showsProgrammed = showsProgrammed;
    }
  }

  private static final Pass[] COARSE = {Pass.HAIR};
  private static final Pass[] FINE = {Pass.CASING, Pass.CORE, Pass.FRINGE};

  private final SlotOrder[] actual = {new SlotOrder(), new SlotOrder(), new SlotOrder()};
  private final SlotOrder[] programmed = {new SlotOrder(), new SlotOrder(), new SlotOrder()};
  private boolean fine;

  /** Nothing is drawn; the lines are to be hair lines, or have their widths and soft edges. */
  void restart(boolean toBeFine) {
    fine = toBeFine;
    for (int i = 0; i < actual.length; i++) {
      actual[i].restart();
      programmed[i].restart();
    }
  }

  /** Whether the lines have their widths and soft edges. */
  boolean isFine() {
    return fine;
  }

  /** Draws some more; gives whether all is drawn. */
  boolean draw(
      PathDrawing path,
      ShaderProgram program,
      float[] toClip,
      int position,
      int split,
      long until) {
    Pass[] passes = fine ? FINE : COARSE;
    boolean all = true;
    for (int i = 0; i < passes.length && all; i++) {
      glUniform1i(program.uniform("phase"), passes[i].phase);
      glDepthMask(passes[i].writesDepth);
      all = path.actual().drawSome(!fine, program, toClip, position, split, actual[i], until);
      if (all && passes[i].showsProgrammed) {
        all =
            path.programmed()
                .drawSome(!fine, program, toClip, Integer.MAX_VALUE, -1, programmed[i], until);
      }
    }
    glDepthMask(true);
    return all;
  }
}
