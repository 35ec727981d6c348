package flankfit.cli;

import flankfit.lesson.Step;
import flankfit.motion.Tape;
import flankfit.picture.DiagramMovie;
import flankfit.picture.NoOpenGlException;
import flankfit.picture.StepPicture;
import java.util.List;

/** The steps of a lesson as a moving picture. */
final class LessonFilm {
  /** Steps that one may have: more make a file that no slide wants. */
  static final int MOST = 200;

  private static final int WIDE = 640;
  private static final int TALL = 480;

  /** Time to read a sentence (s). */
  private static final double STANDS = 2.5;

  private LessonFilm() {}

  /** Whether a step is one of the picture: it moves, and has a block of its own. */
  static boolean shows(Step step) {
    return step.moves() && step.block() > 0;
  }

  /**
   * The file.
   *
   * @throws NoOpenGlException if the machine has no OpenGL 3.3
   */
  static byte[] of(Tape tape, List<Step> steps) throws NoOpenGlException {
    return DiagramMovie.gif(
        steps.size(), i -> StepPicture.told(tape, steps.get(i), WIDE, TALL), STANDS);
  }
}
