package flankfit.window;

/**
 * Where things stand in the window, in its own units from the upper left corner. Computed from size
 * and scale alone.
 *
 * @param width width of the window
 * @param height height of the window
 * @param scale units a logical pixel (1)
 * @param explained whether the block at the position is explained in place of the state
 * @param lesson whether it is told in both modes below scene and program, in place of the state
 */
record Layout(float width, float height, float scale, boolean explained, boolean lesson) {
  /** What an explanation takes of the room for program and state (1). */
  private static final float EXPLANATION = 0.56f;

  /** Least height of the tellings where there is room (logical px). */
  private static final float TELLINGS = 232;

  /** What the tellings take of the room for them and the scene (1). */
  private static final float TELLING = 0.35f;

  /** Height of the window below which a lesson does without the time band (logical px). */
  private static final float CROWDED = 540;

  /** What they take at most (1). */
  private static final float MOST_TELLING = 0.58f;

  Layout(float width, float height, float scale) {
    this(width, height, scale, false, false);
  }

  /** Height of headline and words above the scene. */
  float header() {
    return 82 * scale;
  }

  /** Height of the cautions below everything. */
  float footer() {
    return 30 * scale;
  }

  /** Height of the time band and the operations below the scene. */
  float band() {
    return isCrowded() ? 0 : 60 * scale;
  }

  /** Whether letters are so large that the tellings leave no room for time and scene both. */
  private boolean isCrowded() {
    return lesson && height < CROWDED * scale;
  }

  /** Width of the program and the state at the right. */
  float panel() {
    // The state stands in two columns; anything else wraps, and leaves more to the scene.
    float least = explained || lesson ? 300 : 384;
    return Math.max(least * scale, Math.min(480 * scale, width * 0.33f));
  }

  /** Width of the scene. */
  float sceneWidth() {
    return Math.max(64, width - panel());
  }

  /** Height of the scene. */
  float sceneHeight() {
    return Math.max(64, height - header() - band() - footer() - tellings());
  }

  /** Height of both tellings of the block below everything but the cautions; 0 without them. */
  float tellings() {
    float room = height - header() - band() - footer();
    float wanted = Math.max(TELLINGS * scale, TELLING * room);
    return lesson ? Math.max(64, Math.min(Math.min(wanted, 400 * scale), MOST_TELLING * room)) : 0;
  }

  /** Height of the state words, or of the explanation in their place. */
  float stateHeight() {
    float words = 206 * scale;
    if (lesson) {
      return tellings();
    }
    return explained ? Math.max(words, EXPLANATION * (height - header() - footer())) : words;
  }

  /** Height of the program and findings together. */
  float listingHeight() {
    return Math.max(64, height - header() - footer() - stateHeight());
  }

  /** Width of the panel of errors. */
  float problemsWidth() {
    return Math.min(760 * scale, width - 60 * scale);
  }

  /** Greatest height of the panel of errors. */
  float problemsHeight() {
    return Math.max(64, height - problemsTop() - footer() - 12 * scale);
  }

  /** Left edge of the panel of errors. */
  float problemsLeft() {
    return (width - problemsWidth()) / 2;
  }

  /** Upper edge of the panel of errors. */
  float problemsTop() {
    return header() + 18 * scale;
  }

  /** Whether a place lies in the scene. */
  boolean inScene(double x, double y) {
    return x >= 0 && x < sceneWidth() && y >= header() && y < header() + sceneHeight();
  }
}
