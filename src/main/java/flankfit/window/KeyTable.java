package flankfit.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** All keys and what the pointer does, from the table of actions. */
final class KeyTable {
  private static final List<Row> POINTER =
      List.of(
          new Row("click a line", "go to the block it makes"),
          new Row("click the path", "pick a move; again at it: go there"),
          new Row("drag the band", "go to a time"),
          new Row("drag", "turn the part"),
          new Row("Shift+drag", "shift the paper; the middle button does the same"),
          new Row("wheel", "zoom at the pointer"),
          new Row("drag the ladder", "turn the wear dial"),
          new Row("drag a gauge", "turn it in or out; the wheel does the same"),
          new Row("wheel on depths", "zoom along the depth; Ctrl+wheel on a gauge"),
          new Row("drag a round grip", "move the plane that opens the metal"),
          new Row("drop a file", "open it"));

  private KeyTable() {}

  /**
   * A row.
   *
   * @param keys keys, or what the pointer does
   * @param words what happens
   */
  record Row(String keys, String words) {
    Row {
      Objects.requireNonNull(keys, "keys");
      Objects.requireNonNull(words, "words");
    }
  }

  /** Rows for all actions that have keys, then for the pointer. */
  static List<Row> rows(Actions actions) {
    List<Row> rows = new ArrayList<>();
    for (Action action : actions.all()) {
      if (!action.keys().isEmpty()) {
        rows.add(new Row(action.keyWords(), action.words()));
      }
    }
    rows.addAll(POINTER);
    return rows;
  }

  /** The same as lines of text, keys padded; actions without a key last. */
  static List<String> lines(Actions actions) {
    List<String> lines = new ArrayList<>();
    for (Row row : rows(actions)) {
      lines.add(String.format(java.util.Locale.ROOT, "  %-18s %s", row.keys(), row.words()));
    }
    for (Action action : actions.all()) {
      if (action.keys().isEmpty()) {
        lines.add(String.format(java.util.Locale.ROOT, "  %-18s %s", "(palette)", action.words()));
      }
    }
    return lines;
  }

  /** The same as a table in Markdown. */
  static List<String> markdown(Actions actions) {
    List<String> lines = new ArrayList<>();
    lines.add("| key | does | when |");
    lines.add("| --- | --- | --- |");
    for (Action action : actions.all()) {
      String keys = action.keys().isEmpty() ? "palette" : action.keyWords();
      lines.add("| " + keys + " | " + action.words() + " | " + action.when().words() + " |");
    }
    for (Row row : POINTER) {
      lines.add("| " + row.keys() + " | " + row.words() + " | |");
    }
    return lines;
  }
}
