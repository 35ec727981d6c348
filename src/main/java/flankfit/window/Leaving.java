package flankfit.window;

import java.util.List;

/** What the key that leaves does: one thing at a time, what lies on top first. */
final class Leaving {
  private final ViewState state;
  private final Loads loads;

  Leaving(ViewState state, Loads loads) {
    this.state = state;
    this.loads = loads;
  }

  /** What lies over the sheet, errors, what is picked, playing, the load. */
  void leave() {
    Desk desk = state.desk();
    if (!desk.close()) {
      if (!desk.problems().isEmpty()) {
        desk.problems(List.of());
      } else if (desk.isWelcome() && state.loaded().stage() != Stage.NOTHING) {
        desk.welcome(false);
      } else if (!letGo()) {
        stop();
      }
    }
  }

  private boolean letGo() {
    Selection selection = state.selection();
    boolean cuts = state.sheet() == SheetName.METAL && !selection.isMeasuring();
    if (cuts && state.metal().leave()) {
      selection.clear();
      return true;
    }
    boolean left =
        selection.clear() || (state.sheet() == SheetName.LESSON && state.lesson().leave());
    if (left) {
      state.desk().notice("");
    }
    return left;
  }

  private void stop() {
    if (state.search().isOn()) {
      state.search().clear();
    } else if (state.player().playback().isPlaying()) {
      state.player().toggle();
    } else if (state.isLoading()) {
      loads.stop();
    } else {
      state.desk().notice("Q closes the window");
    }
  }
}
