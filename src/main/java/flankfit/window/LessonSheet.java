package flankfit.window;

import java.util.Optional;

/**
 * How it is said: the scene with the vectors that words mean, and both tellings of the block below.
 * The scene is that of the Motion sheet.
 */
final class LessonSheet implements Sheet {
  private final MotionSheet motion;
  private final LessonMarks marks;
  private final TellingPanel tellings;

  LessonSheet(ViewState state, MotionSheet motion) {
    this.motion = motion;
    marks = new LessonMarks(state);
    tellings = new TellingPanel(state);
  }

  @Override
  public SheetName name() {
    return SheetName.LESSON;
  }

  @Override
  public void picture(Paper paper, int below) {
    motion.picture(paper, below);
  }

  @Override
  public void words(Paper paper) {
    motion.words(paper);
    marks.draw(paper);
    tellings.draw(paper);
  }

  @Override
  public boolean isUnfinished() {
    return motion.isUnfinished();
  }

  @Override
  public Optional<Pick> pick(double column, double row) {
    return motion.pick(column, row);
  }

  @Override
  public void rescale(double contentScale) {
    // The sheet whose scene it shows is told by itself.
  }

  @Override
  public void close() {
    // It holds nothing of its own in graphics memory.
  }
}
