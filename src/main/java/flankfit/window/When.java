package flankfit.window;

import java.util.function.Predicate;

/** When an action makes sense. */
enum When {
  ALWAYS("always", state -> true),
  PROGRAM("with a program", state -> state.loaded().stage() != Stage.NOTHING),
  MOVES("with a program that moves", state -> state.position() >= 0),
  LOADING("while a program is read", ViewState::isLoading),
  CHOSEN(
      "with a move picked or a line found",
      state ->
          state.selection().picked().isPresent()
              || (state.search().isOn() && state.search().current() > 0)),
  SEARCHING("while a search is on", state -> state.search().isOn());

  private final String words;
  private final Predicate<ViewState> holds;

  When(String words, Predicate<ViewState> holds) {
    this.words = words;
    this.holds = holds;
  }

  /** As people read it. */
  String words() {
    return words;
  }

  /** Whether it is so now. */
  boolean holds(ViewState state) {
    return holds.test(state);
  }
}
