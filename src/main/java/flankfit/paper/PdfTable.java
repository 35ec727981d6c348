package flankfit.paper;

import flankfit.picture.PdfLetters;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A table as pieces, a row each; where it goes on overleaf, the names of its columns stand again.
 */
final class PdfTable {
  private static final double GAP = 7;
  private static final double PAD = 1.7;
  private static final double LEAST_TO_FILL = 66;
  private static final double MORE_TO_FILL = 60;

  /** Height of a row that somebody writes in (1/72 in). */
  private static final double HAND = 17;

  private static final double FAR = 1e6;

  private final Table table;
  private final PdfLetters letters;
  private final double size;
  private final double[] lefts;
  private final double[] widths;
  private final double width;

  private PdfTable(Table table, double width, double size, PdfLetters letters) throws IOException {
    this.table = table;
    this.letters = letters;
    this.size = size;
    this.width = width;
    widths = widths();
    lefts = new double[widths.length];
    for (int i = 1; i < widths.length; i++) {
      lefts[i] = lefts[i - 1] + widths[i - 1] + GAP;
    }
  }

  /**
   * The pieces.
   *
   * @param width width of the table (1/72 in)
   * @param size size of letters (1/72 in)
   */
  static List<Piece> pieces(Table table, double width, double size, PdfLetters letters)
      throws IOException {
    PdfTable made = new PdfTable(table, width, size, letters);
    List<Piece> pieces = new ArrayList<>();
    Optional<Piece> head =
        table.headed() ? Optional.of(made.row(made.names(), true)) : Optional.empty();
    head.ifPresent(pieces::add);
    for (List<Table.Cell> row : table.rows()) {
      Piece piece = made.row(row, false);
      pieces.add(new Piece(piece.height(), Piece.Hold.NONE, head, piece.ink()));
    }
    return pieces;
  }

  private List<Table.Cell> names() {
    return table.columns().stream().map(column -> Table.Cell.of(column.name())).toList();
  }

  private PdfText.Style style(Table.Kind kind, boolean head) {
    boolean soft = head || kind == Table.Kind.NAME;
    return new PdfText.Style(size, soft ? PdfCanvas.SOFT : PdfCanvas.INK, false);
  }

  private Words words(Table.Cell cell, int column, boolean head) {
    boolean code = !head && table.columns().get(column).kind() == Table.Kind.CODE;
    return code
        ? new Words(
            cell.words().spans().stream()
                .map(span -> new Words.Span(span.text(), Words.Look.CODE))
                .toList())
        : cell.words();
  }

  /**
   * Widths of the columns: as much as the longest cell of each wants where that goes, else the wide
   * ones give way until the table fits, none below its longest word.
   */
  private double[] widths() throws IOException {
    int columns = table.columns().size();
    double[] wanted = new double[columns];
    double[] least = new double[columns];
    List<List<Table.Cell>> all = new ArrayList<>(table.rows());
    if (table.headed()) {
      all.add(0, names());
    }
    boolean head = table.headed();
    for (List<Table.Cell> row : all) {
      for (int i = 0; i < columns; i++) {
        Words words = words(row.get(i), i, head);
        PdfText.Style style = style(table.columns().get(i).kind(), head);
        double floor = row.get(i).toFill() ? LEAST_TO_FILL : 0;
        double whole = PdfText.of(words, style, FAR, letters).widest();
        wanted[i] = Math.max(wanted[i], Math.max(floor, whole));
        double word = isShort(i, whole, head) ? whole : longestWord(words, style);
        least[i] = Math.max(least[i], Math.max(floor, word));
      }
      head = false;
    }
    return shared(wanted, least, width - GAP * (columns - 1));
  }

  /** Figures never part, and names do not where they are short. */
  private boolean isShort(int column, double whole, boolean head) {
    Table.Kind kind = table.columns().get(column).kind();
    return (kind == Table.Kind.FIGURES && !head) || (kind == Table.Kind.NAME && whole < width / 4);
  }

  private double longestWord(Words words, PdfText.Style style) throws IOException {
    double longest = 0;
    for (Words.Span span : words.spans()) {
      for (String word : span.text().split("\\s+", -1)) {
        Words alone = new Words(List.of(new Words.Span(word, span.look())));
        longest = Math.max(longest, PdfText.of(alone, style, FAR, letters).widest());
      }
    }
    return Math.min(longest, width / 3);
  }

  private double[] shared(double[] wanted, double[] least, double room) {
    double sum = Arrays.stream(wanted).sum();
    double[] given = wanted.clone();
    if (sum <= room) {
      // Of what is over, room to write in takes the most, and where no names are, the last column.
      double over = room - sum;
      boolean fill = table.rows().stream().anyMatch(row -> row.get(row.size() - 1).toFill());
      double last = !table.headed() ? over : fill ? Math.min(over, MORE_TO_FILL) : 0;
      given[given.length - 1] += last;
      for (int i = 0; i < given.length; i++) {
        given[i] += (over - last) / given.length;
      }
      return given;
    }
    double spare = sum - Arrays.stream(least).sum();
    double tooWide = sum - room;
    for (int i = 0; i < given.length; i++) {
      given[i] -=
          spare > tooWide
              ? tooWide * (wanted[i] - least[i]) / spare
              : wanted[i] - least[i] * room / Math.max(room, Arrays.stream(least).sum());
    }
    return given;
  }

  private Piece row(List<Table.Cell> row, boolean head) throws IOException {
    List<PdfText> texts = new ArrayList<>();
    double height = 0;
    for (int i = 0; i < row.size(); i++) {
      PdfText text =
          PdfText.of(
              words(row.get(i), i, head),
              style(table.columns().get(i).kind(), head),
              widths[i] + 1e-3,
              letters);
      texts.add(text);
      height = Math.max(height, text.height());
    }
    boolean byHand = row.stream().anyMatch(Table.Cell::toFill);
    double tall = Math.max(byHand ? HAND : 0, height + 2 * PAD);
    double high = height;
    return Piece.withNext(
        tall,
        (canvas, left, top) -> {
          for (int i = 0; i < texts.size(); i++) {
            double x = left + lefts[i];
            double below = top - PAD - (tall - 2 * PAD - high);
            if (table.columns().get(i).kind() == Table.Kind.FIGURES) {
              texts.get(i).drawRight(canvas, x + widths[i], below);
            } else {
              texts.get(i).draw(canvas, x, below);
            }
            if (row.get(i).toFill()) {
              canvas.line(x, top - tall, x + widths[i], top - tall, 0.9, 1.2, PdfCanvas.INK);
            } else {
              double end = i + 1 < texts.size() ? x + widths[i] + GAP : left + width;
              canvas.line(x, top - tall, end, top - tall, 0.5, 0, PdfCanvas.FAINT);
            }
          }
        });
  }
}
