package flankfit.window;

/** When an action makes sense. */
enum When {
  ALWAYS("always"),
  PROGRAM("with a program"),
  MOVES("with a program that moves"),
  LOADING("while a program is read"),
  CHOSEN("with a move picked or a line found"),
  SEARCHING("while a search is on"),
  METAL("on the Metal sheet"),
  SECTION("on the Metal sheet, opened"),
  GAUGE("on the Gauge sheet"),
  GAUGE_FREE("on the Gauge sheet, no search on"),
  DIAL("on the Gauge sheet, with a register"),
  LESSON("on the Lesson sheet"),
  ASKING("on the Lesson sheet, asked first"),
  ASKED("on the Lesson sheet, with an answer kept back");

  private final String words;

  When(String words) {
    this.words = words;
  }

  /** As people read it. */
  String words() {
    return words;
  }

  /** Whether it is so now. */
  boolean holds(ViewState state) {
    return switch (this) {
      case ALWAYS -> true;
      case PROGRAM -> state.loaded().stage() != Stage.NOTHING;
      case MOVES -> state.position() >= 0;
      case LOADING -> state.isLoading();
      case CHOSEN ->
          state.selection().picked().isPresent()
              || (state.search().isOn() && state.search().current() > 0);
      case SEARCHING -> state.search().isOn();
      case METAL -> isMetal(state);
      case SECTION -> isMetal(state) && state.metal().sections().held() >= 0;
      case GAUGE -> isGauge(state);
      case GAUGE_FREE -> isGauge(state) && !state.search().isOn();
      case DIAL -> isGauge(state) && state.gauge().hasDial();
      case LESSON -> isLesson(state);
      case ASKING -> isLesson(state) && state.lesson().asks();
      case ASKED -> isLesson(state) && state.lesson().isHiding();
    };
  }

  private static boolean isLesson(ViewState state) {
    return state.sheet() == SheetName.LESSON && state.position() >= 0;
  }

  private static boolean isMetal(ViewState state) {
    return state.sheet() == SheetName.METAL && state.metal().bench().subject().isPresent();
  }

  private static boolean isGauge(ViewState state) {
    return state.sheet() == SheetName.GAUGE && state.gauge().bench().base().isPresent();
  }
}
