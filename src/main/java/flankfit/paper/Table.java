package flankfit.paper;

import java.util.List;
import java.util.Objects;

/**
 * A table; a row never parts between pages.
 *
 * @param columns its columns, one at least
 * @param headed whether the names of the columns stand above
 * @param rows cells of each row, one for each column
 */
public record Table(List<Column> columns, boolean headed, List<List<Cell>> rows) {
  /** How the cells of a column look. */
  public enum Kind {
    /** Words. */
    WORDS,
    /** The name of its row, in a softer ink. */
    NAME,
    /** Figures, at the right. */
    FIGURES,
    /** Code, in letters of equal width. */
    CODE
  }

  /**
   * A column.
   *
   * @param name what stands above it where the table is headed
   * @param kind how its cells look
   */
  public record Column(String name, Kind kind) {
    public Column {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(kind, "kind");
    }
  }

  /**
   * A cell.
   *
   * @param words what it says
   * @param toFill whether it is room to write in
   */
  public record Cell(Words words, boolean toFill) {
    /** One that says something. */
    public static Cell of(String words) {
      return new Cell(Words.of(words), false);
    }

    /** Room to write in. */
    public static Cell blank() {
      return new Cell(Words.of(""), true);
    }

    /** One that says nothing. */
    public static Cell empty() {
      return of("");
    }
  }

  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    if (columns.isEmpty()) {
      throw new IllegalArgumentException("columns: none, and one is wanted at least");
    }
    for (List<Cell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            "a row of " + row.size() + " cells in a table of " + columns.size() + " columns");
      }
    }
  }

  /** Names at the left, what belongs to them at the right. */
  public static Table ofPairs(List<List<Cell>> rows) {
    return new Table(List.of(new Column("", Kind.NAME), new Column("", Kind.WORDS)), false, rows);
  }
}
