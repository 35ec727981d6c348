package flankfit.draft;

import flankfit.unit.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Collects the rows of a worksheet, worded in the unit of the program. */
final class WorksheetRows {
  private final Grid grid;
  private final List<WorksheetRow> rows = new ArrayList<>();

  WorksheetRows(Grid grid) {
    this.grid = grid;
  }

  /** The rows in the order in which they came. */
  List<WorksheetRow> all() {
    return List.copyOf(rows);
  }

  /** Adds a row; see {@link WorksheetRow}. */
  void add(
      String key,
      String name,
      String formula,
      String inserted,
      double value,
      String unit,
      String result,
      String note) {
    rows.add(new WorksheetRow(key, name, formula, inserted, value, unit, result, note));
  }

  /** Adds a length (mm). */
  void length(String key, String name, String formula, String inserted, double value, String note) {
    add(key, name, formula, inserted, value, "mm", grid.text(value), note);
  }

  /** A length (mm) in the program's unit, without it. */
  String number(double millimetres) {
    return grid.number(millimetres);
  }

  /** A number with so many decimals at most. */
  static String plain(double number, int decimals) {
    return Lengths.plain(number, decimals);
  }

  /** Adds a feed (mm/min). */
  void feed(String key, String name, String formula, String inserted, double value, String note) {
    add(key, name, formula, inserted, value, "mm/min", shownFeed(value) + feedUnit(), note);
  }

  /** A feed (mm/min) in the program's unit, without it. */
  String shownFeed(double feed) {
    return plain(grid.unit().fromMillimetres(feed), 1);
  }

  private String feedUnit() {
    return String.format(Locale.ROOT, " %s/min", grid.unit().symbol());
  }
}
