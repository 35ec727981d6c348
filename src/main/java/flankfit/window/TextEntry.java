package flankfit.window;

/** A line of text that is typed. */
final class TextEntry {
  private static final int MOST = 200;

  private final StringBuilder text = new StringBuilder();
  private int caret;
  private long changes;

  /** What was typed. */
  String text() {
    return text.toString();
  }

  /** Characters before the caret. */
  int caret() {
    return caret;
  }

  /** Grows with every change of the text. */
  long changes() {
    return changes;
  }

  /** Types a character, if it is printable and there is room. */
  void type(int character) {
    if (character >= ' ' && character != 127 && text.length() < MOST) {
      String typed = Character.toString(character);
      text.insert(caret, typed);
      caret += typed.length();
      changes++;
    }
  }

  /** Puts in a text; a line break ends it. */
  void paste(String given) {
    given.lines().findFirst().orElse("").codePoints().forEach(this::type);
  }

  /** Takes away the character before the caret, or the word. */
  void backspace(boolean word) {
    int from = caret;
    do {
      from = from > 0 ? text.offsetByCodePoints(from, -1) : 0;
    } while (word && from > 0 && text.charAt(from - 1) != ' ');
    cut(from, caret);
  }

  /** Takes away the character behind the caret. */
  void delete() {
    if (caret < text.length()) {
      cut(caret, text.offsetByCodePoints(caret, 1));
    }
  }

  private void cut(int from, int to) {
    if (to > from) {
      text.delete(from, to);
      caret = from;
      changes++;
    }
  }

  /** Moves the caret by characters. */
  void move(int characters) {
    int target = caret;
    if (characters < 0 && target > 0) {
      target = text.offsetByCodePoints(target, -1);
    } else if (characters > 0 && target < text.length()) {
      target = text.offsetByCodePoints(target, 1);
    }
    caret = target;
  }

  void toStart() {
    caret = 0;
  }

  void toEnd() {
    caret = text.length();
  }

  void clear() {
    text.setLength(0);
    caret = 0;
    changes++;
  }
}
