package flankfit.window;

/** Plays the program at the machine's time or a multiple of it. */
final class Playback {
  private static final int[] RATES = {1, 10, 100, 1000};

  /** A longer pause between two frames (s) counts as this long: no leap after a stall. */
  private static final double LONGEST_FRAME = 0.25;

  private int rate;
  private boolean playing;
  private double seconds;

  /** Starts at the real time's rate of a list. */
  Playback(int times) {
    for (int i = 0; i < RATES.length; i++) {
      rate = RATES[i] == times ? i : rate;
    }
  }

  /** How many seconds of the machine a second shows (1). */
  int times() {
    return RATES[rate];
  }

  boolean isPlaying() {
    return playing;
  }

  /** Begins at a time of the program (s). */
  void play(double from) {
    playing = true;
    seconds = from;
  }

  void pause() {
    playing = false;
  }

  /** Goes faster by steps, or slower for negative ones. */
  void faster(int steps) {
    rate = Math.max(0, Math.min(RATES.length - 1, rate + steps));
  }

  /**
   * The time of the program after a frame (s); pauses at its end.
   *
   * @param passed time since the frame before (s)
   * @param end when the program ends (s)
   */
  double advance(double passed, double end) {
    seconds += Math.max(0, Math.min(LONGEST_FRAME, passed)) * times();
    if (seconds >= end) {
      seconds = end;
      playing = false;
    }
    return seconds;
  }
}
