package flankfit.standard;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of a printed table in the test resources; lines that begin with # are its sources. */
final class PrintedTable {
  private PrintedTable() {}

  /** One row: cells as printed, by column. */
  record Row(String file, Map<String, String> cells) {
    String text(String column) {
      String cell = cells.get(column);
      if (cell == null) {
        throw new IllegalArgumentException(file + " has no column " + column);
      }
      return cell;
    }

    double number(String column) {
      return Double.parseDouble(text(column));
    }

    boolean has(String column) {
      return !text(column).isEmpty();
    }

    @Override
    public String toString() {
      return String.join(" ", cells.values());
    }
  }

  static List<Row> read(String file) {
    List<Row> rows = new ArrayList<>();
    List<String> header = List.of();
    for (String line : text(file).lines().toList()) {
      if (line.startsWith("#")) {
        continue;
      }
      List<String> cells = cells(line);
      if (header.isEmpty()) {
        header = cells;
        continue;
      }
      if (cells.size() != header.size()) {
        throw new IllegalArgumentException(file + ": wrong number of cells: " + line);
      }
      Map<String, String> row = new LinkedHashMap<>();
      for (int i = 0; i < cells.size(); i++) {
        row.put(header.get(i), cells.get(i));
      }
      rows.add(new Row(file, row));
    }
    return rows;
  }

  private static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }

  private static String text(String file) {
    try (InputStream in = PrintedTable.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException("no such test resource: " + file);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
