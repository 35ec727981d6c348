package flankfit.paper;

import flankfit.picture.BundledFont;
import flankfit.picture.PdfLetters;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A text broken into lines of some width. White space counts as one blank; a word wider than a line
 * is broken where the line ends.
 */
final class PdfText {
  /** Distance of base lines, in sizes of letters (1). */
  private static final double LEADING = 1.34;

  /** Base line below the upper edge of a line, in sizes of letters (1). */
  private static final double ASCENT = 1.02;

  /** Letters of equal width are so much larger that they are set smaller (1). */
  private static final double CODE = 0.92;

  private final PdfLetters letters;
  private final Style style;
  private final double width;
  private final List<List<Part>> lines = new ArrayList<>();
  private List<Part> line = new ArrayList<>();
  private double end;
  private double widest;

  /**
   * How a text looks.
   *
   * @param size size of letters (1/72 in)
   * @param colour 0xRRGGBB
   * @param strong whether all of it is strong
   */
  record Style(double size, int colour, boolean strong) {
    double leading() {
      return LEADING * size;
    }
  }

  /** Letters of one look in a line. */
  private record Part(BundledFont font, double size, double x, String text) {}

  private PdfText(PdfLetters letters, Style style, double width) {
    this.letters = letters;
    this.style = style;
    this.width = width;
  }

  /**
   * Breaks words into lines.
   *
   * @param width width of a line (1/72 in)
   */
  static PdfText of(Words words, Style style, double width, PdfLetters letters) throws IOException {
    PdfText text = new PdfText(letters, style, width);
    boolean blank = false;
    for (Words.Span span : words.spans()) {
      BundledFont font = text.font(span.look());
      double size = span.look() == Words.Look.CODE ? CODE * style.size() : style.size();
      String said = letters.sayable(font, span.text());
      int at = 0;
      while (at < said.length()) {
        if (said.charAt(at) == ' ') {
          blank = true;
          at++;
          continue;
        }
        int last = said.indexOf(' ', at);
        last = last < 0 ? said.length() : last;
        text.word(font, size, said.substring(at, last), blank);
        blank = false;
        at = last;
      }
    }
    if (!text.line.isEmpty() || text.lines.isEmpty()) {
      text.newLine();
    }
    return text;
  }

  private BundledFont font(Words.Look look) {
    return switch (look) {
      case PLAIN -> style.strong() ? BundledFont.STRONG : BundledFont.TEXT;
      case STRONG -> BundledFont.STRONG;
      case CODE -> BundledFont.LISTING;
    };
  }

  private void newLine() {
    widest = Math.max(widest, end);
    lines.add(line);
    line = new ArrayList<>();
    end = 0;
  }

  private void word(BundledFont font, double size, String word, boolean blankBefore)
      throws IOException {
    double blank = blankBefore && !line.isEmpty() ? letters.width(font, " ", size) : 0;
    double wide = letters.width(font, word, size);
    if (end + blank + wide > width + 1e-6 && !line.isEmpty()) {
      newLine();
      blank = 0;
    }
    String left = word;
    while (end + blank + wide > width + 1e-6) {
      int fits = fitting(font, size, left);
      if (fits == left.length()) {
        break;
      }
      put(font, size, left.substring(0, fits), 0);
      newLine();
      left = left.substring(fits);
      wide = letters.width(font, left, size);
    }
    put(font, size, left, blank);
  }

  private void put(BundledFont font, double size, String word, double blank) throws IOException {
    int last = line.size() - 1;
    if (last >= 0 && line.get(last).font() == font && line.get(last).size() == size) {
      String joined = line.get(last).text() + (blank > 0 ? " " : "") + word;
      line.set(last, new Part(font, size, line.get(last).x(), joined));
      end = line.get(last).x() + letters.width(font, joined, size);
      return;
    }
    // The blank is written with the word, so that selected text keeps it.
    String said = blank > 0 ? " " + word : word;
    line.add(new Part(font, size, end, said));
    end += letters.width(font, said, size);
  }

  /** Number of characters of a word that go into an empty line; one at least. */
  private int fitting(BundledFont font, double size, String word) throws IOException {
    int fits = word.offsetByCodePoints(0, 1);
    while (fits < word.length()) {
      int next = word.offsetByCodePoints(fits, 1);
      if (letters.width(font, word.substring(0, next), size) > width) {
        break;
      }
      fits = next;
    }
    return fits;
  }

  /** Number of lines; one at least. */
  int lines() {
    return lines.size();
  }

  /** Height of all lines (1/72 in). */
  double height() {
    return lines.size() * style.leading();
  }

  /** Width of the widest line (1/72 in). */
  double widest() {
    return widest;
  }

  /** Draws all lines below each other from an upper left corner. */
  void draw(PdfCanvas canvas, double left, double top) throws IOException {
    draw(canvas, left, top, 0, lines.size());
  }

  /** Draws some lines, the first of them at the upper edge. */
  void draw(PdfCanvas canvas, double left, double top, int from, int to) throws IOException {
    for (int i = from; i < to; i++) {
      double base = top - (i - from) * style.leading() - ASCENT * style.size();
      for (Part part : lines.get(i)) {
        canvas.text(part.font(), part.size(), style.colour(), left + part.x(), base, part.text());
      }
    }
  }

  /** Draws the lines with their ends in one column. */
  void drawRight(PdfCanvas canvas, double right, double top) throws IOException {
    for (int i = 0; i < lines.size(); i++) {
      double wide = 0;
      for (Part part : lines.get(i)) {
        wide = part.x() + letters.width(part.font(), part.text(), part.size());
      }
      draw(canvas, right - wide, top - i * style.leading(), i, i + 1);
    }
  }

  /** Pieces of a paragraph: never one line of it alone on a page. */
  List<Piece> pieces(Piece.Hold last) {
    List<Piece> pieces = new ArrayList<>();
    int count = lines.size();
    int from = 0;
    while (from < count) {
      int to = count < 4 ? count : from == 0 ? 2 : Math.min(from + 1, count);
      to = count - to == 1 ? count : to;
      int first = from;
      int end = to;
      pieces.add(
          new Piece(
              (end - first) * style.leading(),
              end == count ? last : Piece.Hold.NONE,
              Optional.empty(),
              (canvas, left, top) -> draw(canvas, left, top, first, end)));
      from = to;
    }
    return pieces;
  }
}
