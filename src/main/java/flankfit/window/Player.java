package flankfit.window;

/** Plays the program: moves the position with the clock. */
final class Player {
  private final Course course;
  private final Look look;
  private final Desk desk;
  private final Playback playback;
  private long frameAt;

  Player(Course course, Look look, Desk desk, Playback playback) {
    this.course = course;
    this.look = look;
    this.desk = desk;
    this.playback = playback;
  }

  Playback playback() {
    return playback;
  }

  /** Plays on from the position, from the beginning at the end; or holds. */
  void toggle() {
    if (playback.isPlaying()) {
      playback.pause();
    } else {
      boolean atEnd = course.seconds() >= course.steps().seconds();
      playback.play(atEnd ? 0 : course.seconds());
    }
    desk.notice(playback.isPlaying() ? "playing, " + rate() : "held");
  }

  /** Goes faster by steps, or slower for negative ones. */
  void faster(int by) {
    playback.faster(by);
    desk.notice(rate());
  }

  private String rate() {
    return playback.times() == 1 ? "real time" : "real time ×" + playback.times();
  }

  /**
   * Goes on playing.
   *
   * @param now the time (ns, of {@link System#nanoTime})
   * @return whether it plays
   */
  boolean tick(long now) {
    double passed = (now - frameAt) * 1e-9;
    frameAt = now;
    if (!playback.isPlaying() || course.move() < 0) {
      return false;
    }
    Steps steps = course.steps();
    double time = playback.advance(passed, steps.seconds());
    if (look.isStill()) {
      course.toTime(steps.until(steps.endOfBlock(steps.at(time))));
    } else {
      course.toTime(time);
    }
    if (!playback.isPlaying()) {
      desk.notice("the end of the program");
    }
    return playback.isPlaying();
  }
}
