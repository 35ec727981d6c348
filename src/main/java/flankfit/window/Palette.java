package flankfit.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/** What can be had done now, by words: actions, recent files, samples, lines. */
final class Palette {
  private final ViewState state;
  private final Actions actions;
  private List<Entry> entries = List.of();
  private long shownTyped = -1;
  private long shownDesk = -1;

  /**
   * A row.
   *
   * @param words what it does
   * @param key its key; may be empty
   * @param does does it
   */
  record Entry(String words, String key, Runnable does) {
    Entry {
      Objects.requireNonNull(words, "words");
      Objects.requireNonNull(key, "key");
      Objects.requireNonNull(does, "does");
    }
  }

  /** A row and how well it fits. */
  private record Rated(Entry entry, int points) {}

  Palette(ViewState state, Actions actions) {
    this.state = state;
    this.actions = actions;
  }

  /** The rows for what is typed, the best first. */
  List<Entry> entries() {
    TextEntry typed = state.desk().entry();
    if (shownTyped != typed.changes() || shownDesk != state.desk().changes()) {
      shownTyped = typed.changes();
      shownDesk = state.desk().changes();
      entries = rated(typed.text());
    }
    return entries;
  }

  private List<Entry> rated(String typed) {
    List<Rated> found = new ArrayList<>();
    for (Entry entry : everything()) {
      int points = Fuzzy.rate(typed, entry.words());
      if (points >= 0) {
        found.add(new Rated(entry, points));
      }
    }
    found.sort(Comparator.comparingInt(Rated::points).reversed());
    List<Entry> sorted = new ArrayList<>(direct(typed.strip()));
    found.forEach(r -> sorted.add(r.entry()));
    return sorted;
  }

  private List<Entry> everything() {
    List<Entry> all = new ArrayList<>();
    for (Action action : actions.all()) {
      if (action.when().holds(state) && !action.id().equals("window.palette")) {
        all.add(new Entry(action.words(), action.keyWords(), () -> action.does().accept(state)));
      }
    }
    for (Path file : state.recent()) {
      all.add(new Entry("open " + file, "recent", () -> state.opening().open(file)));
    }
    for (Samples.Sample sample : Samples.all()) {
      all.add(new Entry("sample " + sample.name(), "sample", () -> state.opening().open(sample)));
    }
    return all;
  }

  /** What a number or a path asks for by itself. */
  private List<Entry> direct(String typed) {
    if (typed.matches("\\d{1,9}") && state.position() >= 0) {
      int line = Integer.parseInt(typed);
      return List.of(new Entry("go to line " + line, "line", () -> state.toLine(line)));
    }
    if (typed.matches(".*[/\\\\].*") || typed.matches("(?i).+\\.(nc|tap|mpf|ngc|txt|cnc|eia)")) {
      return List.of(
          new Entry("open the file " + typed, "file", () -> state.opening().typed(typed)));
    }
    return List.of();
  }

  /** Does what a row says, and closes the palette. */
  void run(int row) {
    List<Entry> now = entries();
    if (row >= 0 && row < now.size()) {
      Entry chosen = now.get(row);
      state.desk().close();
      chosen.does().run();
    }
  }
}
