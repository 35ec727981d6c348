package flankfit.window;

import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Something the user can have done, by a key or by its words in the palette.
 *
 * @param id its name for ever: its group, a point, the action
 * @param words what it does, for people
 * @param keys keys that do it; empty for the palette alone
 * @param when when it makes sense
 * @param repeats whether a key held down does it again and again
 * @param does does it
 */
record Action(
    String id,
    String words,
    List<KeyStroke> keys,
    When when,
    boolean repeats,
    Consumer<ViewState> does) {
  Action {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(words, "words");
    keys = List.copyOf(keys);
    Objects.requireNonNull(when, "when");
    Objects.requireNonNull(does, "does");
  }

  /** The group it stands in. */
  String group() {
    return id.substring(0, id.indexOf('.'));
  }

  /** Its keys as people read them, those of the keypad left out; empty for none. */
  String keyWords() {
    return keys.stream()
        .filter(k -> !k.isOnKeypad())
        .map(KeyStroke::words)
        .collect(Collectors.joining("  "));
  }
}
