package flankfit.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies over the sheet: the palette, a search, the page of keys, errors; and wishes for files.
 */
final class Desk {
  private Over over = Over.NOTHING;
  private boolean welcome;
  private final TextEntry entry = new TextEntry();
  private int chosen;
  private List<Problem> problems = List.of();
  private String notice = "";
  private final List<Wish> wishes = new ArrayList<>();
  private long changes;

  /** What takes the keys. */
  enum Over {
    NOTHING,
    KEYS,
    PALETTE,
    SEARCH,
    /** A wear entry is typed. */
    WEAR,
    /** It is told what a gauge said. */
    SEEN
  }

  /** A file that is to be written. */
  enum Wish {
    SCREENSHOT,
    PICTURE
  }

  Over over() {
    return over;
  }

  /** Whether a text is typed. */
  boolean isTyping() {
    return over != Over.NOTHING && over != Over.KEYS;
  }

  /** What is typed. */
  TextEntry entry() {
    return entry;
  }

  /** Which row of a list is chosen, from 0. */
  int chosen() {
    return chosen;
  }

  /** Chooses another row. */
  void choose(int row) {
    chosen = Math.max(0, row);
    changes++;
  }

  /** Grows with every change but typing. */
  long changes() {
    return changes;
  }

  void palette() {
    open(Over.PALETTE);
  }

  void search() {
    open(Over.SEARCH);
  }

  /** Opens a line to type in. */
  void type(Over what) {
    open(what);
  }

  void toggleKeys() {
    open(over == Over.KEYS ? Over.NOTHING : Over.KEYS);
  }

  private void open(Over what) {
    over = what;
    chosen = 0;
    entry.clear();
    changes++;
  }

  /** Closes what takes the keys; gives whether there was anything. */
  boolean close() {
    boolean any = over != Over.NOTHING;
    open(Over.NOTHING);
    return any;
  }

  /** Whether samples and recent files are shown. */
  boolean isWelcome() {
    return welcome;
  }

  void welcome(boolean shown) {
    welcome = shown;
    chosen = 0;
    changes++;
  }

  void toggleWelcome() {
    welcome(!welcome);
  }

  /** What went wrong. */
  List<Problem> problems() {
    return problems;
  }

  /** Something went wrong; an empty list takes the errors away. */
  void problems(List<Problem> what) {
    problems = List.copyOf(what);
    changes++;
  }

  /** The last thing that was done, in words; may be empty. */
  String notice() {
    return notice;
  }

  void notice(String words) {
    notice = words;
    changes++;
  }

  /** Wishes for a file. */
  void wish(Wish what) {
    wishes.add(what);
    changes++;
  }

  /** The next wish; asking takes it away. */
  Optional<Wish> takeWish() {
    return wishes.isEmpty() ? Optional.empty() : Optional.of(wishes.remove(0));
  }
}
