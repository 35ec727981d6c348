package flankfit.window;

import static org.lwjgl.glfw.GLFW.*;

import java.util.Optional;
import java.util.function.Supplier;

/** Keys while a text is typed or a list is open: they belong to it alone. */
final class Typing {
  private final ViewState state;
  private final Palette palette;
  private final WelcomePanel welcome;

  Typing(ViewState state, Palette palette, WelcomePanel welcome) {
    this.state = state;
    this.palette = palette;
    this.welcome = welcome;
  }

  /** Takes a character; gives whether it was typed. */
  boolean character(int character) {
    if (!state.desk().isTyping()) {
      return false;
    }
    state.desk().entry().type(character);
    changed();
    return true;
  }

  private void changed() {
    if (state.desk().over() == Desk.Over.SEARCH) {
      state.search().look(state.desk().entry().text(), state.input().programLines());
    } else if (state.desk().over() == Desk.Over.PALETTE) {
      state.desk().choose(0);
    }
  }

  /** Takes a key; gives whether it was meant for what is open. */
  boolean key(KeyStroke stroke, Supplier<String> clipboard) {
    if (state.desk().isTyping()) {
      return typed(stroke, clipboard);
    }
    return state.desk().over() == Desk.Over.NOTHING
        && state.desk().isWelcome()
        && chooses(stroke, welcome.count(), welcome::run);
  }

  /** Moves the choice in a list, or takes it. */
  private boolean chooses(KeyStroke stroke, int count, Runnable take) {
    int chosen = state.desk().chosen();
    switch (stroke.key()) {
      case GLFW_KEY_DOWN -> state.desk().choose(Math.min(count - 1, chosen + 1));
      case GLFW_KEY_UP -> state.desk().choose(chosen - 1);
      case GLFW_KEY_ENTER, GLFW_KEY_KP_ENTER -> take.run();
      default -> {
        return false;
      }
    }
    return true;
  }

  private boolean typed(KeyStroke stroke, Supplier<String> clipboard) {
    TextEntry entry = state.desk().entry();
    boolean inPalette = state.desk().over() == Desk.Over.PALETTE;
    int chosen = state.desk().chosen();
    if (inPalette && chooses(stroke, palette.entries().size(), () -> palette.run(chosen))) {
      return true;
    }
    if (state.desk().over() == Desk.Over.SEEN
        && chooses(stroke, Said.CHOICES.size(), () -> state.gauge().seen(entry.text(), chosen))) {
      return true;
    }
    switch (stroke.key()) {
      case GLFW_KEY_ESCAPE -> leave();
      case GLFW_KEY_ENTER, GLFW_KEY_KP_ENTER -> found();
      case GLFW_KEY_BACKSPACE -> entry.backspace(stroke.ctrl());
      case GLFW_KEY_DELETE -> entry.delete();
      case GLFW_KEY_LEFT -> entry.move(-1);
      case GLFW_KEY_RIGHT -> entry.move(1);
      case GLFW_KEY_HOME -> entry.toStart();
      case GLFW_KEY_END -> entry.toEnd();
      case GLFW_KEY_V -> paste(stroke, clipboard);
      default -> {
        // Letters come as characters; other keys mean nothing here.
      }
    }
    boolean edits =
        stroke.key() == GLFW_KEY_BACKSPACE
            || stroke.key() == GLFW_KEY_DELETE
            || (stroke.ctrl() && stroke.key() == GLFW_KEY_V);
    if (edits) {
      changed();
    }
    return true;
  }

  private void paste(KeyStroke stroke, Supplier<String> clipboard) {
    if (stroke.ctrl()) {
      state.desk().entry().paste(Optional.ofNullable(clipboard.get()).orElse(""));
    }
  }

  private void leave() {
    if (state.desk().over() == Desk.Over.SEARCH) {
      state.search().clear();
    }
    state.desk().close();
  }

  /**
   * Enter ends the typing: a search goes to the first line found from the position on, a wear entry
   * turns the dial.
   */
  private void found() {
    if (state.desk().over() == Desk.Over.WEAR) {
      String text = state.desk().entry().text();
      state.desk().close();
      state.gauge().typed(text);
      return;
    }
    state.search().from(Math.max(1, state.line()));
    state.desk().close();
  }
}
