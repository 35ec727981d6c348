package flankfit.paper;

import flankfit.picture.PdfLetters;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Pieces put on pages one below the other, each page with its number and a line of words. */
final class PdfPages {
  private static final double MILLIMETRE = 72 / 25.4;

  /** Edges left free: more than any common printer needs. */
  static final double SIDE = 14 * MILLIMETRE;

  private static final double TOP = 13 * MILLIMETRE;
  private static final double BOTTOM = 17 * MILLIMETRE;
  private static final double FOOTER = 10 * MILLIMETRE;
  private static final double FOOTER_SIZE = 6.8;

  private final PDDocument document;
  private final PdfLetters letters;
  private final Sheet sheet;
  private final String words;
  private final List<List<Piece>> pages = new ArrayList<>();

  /** An empty document of pages with some words below each. */
  PdfPages(PDDocument document, PdfLetters letters, Sheet sheet, String words) {
    this.document = document;
    this.letters = letters;
    this.sheet = sheet;
    this.words = words;
  }

  /** Width between the edges (1/72 in). */
  static double width(Sheet sheet) {
    return sheet.width() - 2 * SIDE;
  }

  /** Height between the edges (1/72 in). */
  static double height(Sheet sheet) {
    return sheet.height() - TOP - BOTTOM;
  }

  /** Puts all pieces on pages and draws them. */
  void put(List<Piece> pieces) throws IOException {
    List<Piece> page = new ArrayList<>();
    double left = height(sheet);
    int next = 0;
    while (next < pieces.size()) {
      int end = chain(pieces, next);
      double tall = pieces.subList(next, end).stream().mapToDouble(Piece::height).sum();
      boolean begins = pieces.get(next).hold() == Piece.Hold.PAGE;
      if (!page.isEmpty() && (begins || tall > left + 1e-6)) {
        pages.add(page);
        page = new ArrayList<>();
        left = height(sheet);
      }
      for (Piece piece : pieces.subList(next, end)) {
        if (!page.isEmpty() && piece.height() > left + 1e-6) {
          // Held together it is taller than a page, so it parts after all.
          pages.add(page);
          page = new ArrayList<>();
          left = height(sheet);
        }
        if (page.isEmpty() && piece.hold() == Piece.Hold.ROOM) {
          continue;
        }
        if (page.isEmpty() && piece.head().isPresent()) {
          page.add(piece.head().get());
          left -= piece.head().get().height();
        }
        page.add(piece);
        left -= piece.height();
      }
      next = end;
    }
    pages.add(page);
    for (int i = 0; i < pages.size(); i++) {
      draw(pages.get(i), i + 1);
    }
  }

  /** One past the last piece that stands on the same page as this one. */
  private static int chain(List<Piece> pieces, int from) {
    int end = from;
    while (end + 1 < pieces.size()
        && (pieces.get(end).hold() == Piece.Hold.NEXT
            || pieces.get(end).hold() == Piece.Hold.PAGE
            || (pieces.get(end).hold() == Piece.Hold.ROOM && end > from))) {
      end++;
    }
    return end + 1;
  }

  private void draw(List<Piece> pieces, int number) throws IOException {
    PDPage page = new PDPage(new PDRectangle((float) sheet.width(), (float) sheet.height()));
    document.addPage(page);
    try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
      PdfCanvas canvas = new PdfCanvas(document, stream, letters);
      double top = sheet.height() - TOP;
      for (Piece piece : pieces) {
        piece.ink().draw(canvas, SIDE, top);
        top -= piece.height();
      }
      PdfText.Style style = new PdfText.Style(FOOTER_SIZE, PdfCanvas.SOFT, false);
      Words of = Words.of("page " + number + " of " + pages.size());
      PdfText count = PdfText.of(of, style, width(sheet), letters);
      double y = FOOTER + style.leading();
      count.drawRight(canvas, sheet.width() - SIDE, y);
      double room = width(sheet) - count.widest() - 12;
      PdfText said = PdfText.of(Words.of(words), style, room, letters);
      said.draw(canvas, SIDE, y, 0, Math.min(2, said.lines()));
    }
  }
}
