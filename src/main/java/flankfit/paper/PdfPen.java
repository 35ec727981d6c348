package flankfit.paper;

import flankfit.picture.Diagram;
import flankfit.picture.PdfLetters;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Writes a paper as a PDF: drawings of lines, text in embedded fonts, page numbers. It holds no
 * date and no chance, so the same paper gives the same bytes.
 *
 * @see "ISO 32000-1:2008"
 */
public final class PdfPen implements Pen {
  private static final double BODY = 9.2;
  private static final double TITLE = 15;
  private static final double HEADING = 11;
  private static final double SMALL = 7.8;
  private static final double VERDICT = 12;
  private static final double GAP = 4;
  private static final double BETWEEN = 10;
  private static final double BOX = 7.5;

  private static final PdfText.Style PLAIN = new PdfText.Style(BODY, PdfCanvas.INK, false);
  private static final PdfText.Style SOFT = new PdfText.Style(SMALL, PdfCanvas.SOFT, false);

  private final PDDocument document = new PDDocument();
  private final PdfLetters letters = new PdfLetters(document);
  private final List<Piece> pieces = new ArrayList<>();
  private final Sheet sheet;
  private final String footer;
  private final double width;

  /**
   * Begins a paper.
   *
   * @param title the document's title
   * @param footer words below each page
   * @param sheet what it is printed on
   */
  public PdfPen(String title, String footer, Sheet sheet) {
    this.sheet = sheet;
    this.footer = footer;
    width = PdfPages.width(sheet);
    PDDocumentInformation about = new PDDocumentInformation();
    about.setTitle(title);
    about.setProducer("Flankfit");
    document.setDocumentInformation(about);
    document.getDocumentCatalog().setLanguage("en");
    PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
    shown.setDisplayDocTitle(true);
    document.getDocumentCatalog().setViewerPreferences(shown);
  }

  /** Work on the document; it is in memory, so its failures are ours. */
  private interface Work {
    void run() throws IOException;
  }

  private static void run(Work work) {
    try {
      work.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void room(double height) {
    pieces.add(Piece.room(height));
  }

  private PdfText text(Words words, PdfText.Style style) throws IOException {
    return PdfText.of(words, style, width, letters);
  }

  @Override
  public void title(String words) {
    PdfText.Style style = new PdfText.Style(TITLE, PdfCanvas.INK, true);
    run(() -> pieces.addAll(text(Words.of(words), style).pieces(Piece.Hold.NEXT)));
    pieces.add(Piece.withNext(GAP, (canvas, left, top) -> {}));
  }

  @Override
  public void heading(Words words) {
    heading(words, Piece.Hold.NEXT);
  }

  @Override
  public void pageHeading(Words words) {
    heading(words, Piece.Hold.PAGE);
  }

  private void heading(Words words, Piece.Hold hold) {
    run(
        () -> {
          PdfText said = text(words, new PdfText.Style(HEADING, PdfCanvas.INK, true));
          if (hold == Piece.Hold.NEXT) {
            room(BETWEEN);
          }
          pieces.add(
              new Piece(
                  said.height() + 2 * GAP,
                  hold,
                  Optional.empty(),
                  (canvas, left, top) -> {
                    canvas.line(left, top, left + width, top, 0.8, 0, PdfCanvas.RULE);
                    said.draw(canvas, left, top - GAP);
                  }));
        });
  }

  @Override
  public void paragraph(Words words) {
    run(() -> pieces.addAll(text(words, PLAIN).pieces(Piece.Hold.NONE)));
    room(GAP);
  }

  @Override
  public void small(Words words) {
    run(() -> pieces.addAll(text(words, SOFT).pieces(Piece.Hold.NONE)));
    room(GAP);
  }

  @Override
  public void verdict(String words, boolean good) {
    PdfText.Style style = new PdfText.Style(VERDICT, PdfCanvas.INK, true);
    framed(List.of(Words.of(words)), style, good ? PdfCanvas.INK : PdfCanvas.ALARM, !good);
  }

  @Override
  public void warning(List<Words> paragraphs) {
    framed(paragraphs, PLAIN, PdfCanvas.ALARM, false);
  }

  private void framed(List<Words> words, PdfText.Style style, int colour, boolean twice) {
    run(() -> pieces.addAll(new PdfFrame(words, style, width, colour, twice, letters).pieces()));
    room(GAP);
  }

  @Override
  public void table(Table table) {
    run(() -> pieces.addAll(PdfTable.pieces(table, width, BODY, letters)));
    room(2 * GAP);
  }

  @Override
  public void checklist(List<String> points) {
    for (String point : points) {
      run(
          () -> {
            PdfText said = PdfText.of(Words.of(point), PLAIN, width - 2 * BOX, letters);
            pieces.add(
                Piece.of(
                    said.height() + 2,
                    (canvas, left, top) -> {
                      canvas.frame(left, top - 2.4 - BOX, BOX, BOX, 0.8, PdfCanvas.INK);
                      said.draw(canvas, left + 2 * BOX, top);
                    }));
          });
    }
    room(GAP);
  }

  /**
   * Something of a fixed shape that stands beside others.
   *
   * @param aspect height over width (1)
   * @param ink draws it from its lower left corner in a width
   */
  private record Beside(double aspect, Ink ink) {
    interface Ink {
      void draw(PdfCanvas canvas, double left, double bottom, double width) throws IOException;
    }
  }

  /** Things beside one another as wide as the paper, their upper edges on one line. */
  private void beside(List<Beside> all) {
    double each = (width - BETWEEN * (all.size() - 1)) / all.size();
    double tall = each * all.stream().mapToDouble(Beside::aspect).max().orElse(0);
    pieces.add(
        Piece.of(
            tall,
            (canvas, left, top) -> {
              double at = left;
              for (Beside one : all) {
                one.ink().draw(canvas, at, top - each * one.aspect(), each);
                at += each + BETWEEN;
              }
            }));
    room(GAP);
  }

  @Override
  public void drawings(List<Diagram> drawings) {
    List<Beside> all = new ArrayList<>();
    for (Diagram drawing : drawings) {
      double aspect = (double) drawing.height() / drawing.width();
      all.add(
          new Beside(
              aspect, (canvas, left, bottom, wide) -> canvas.drawing(drawing, left, bottom, wide)));
    }
    beside(all);
  }

  @Override
  public void photos(List<Photo> photos) {
    run(
        () -> {
          List<Beside> all = new ArrayList<>();
          for (Photo photo : photos) {
            PDImageXObject image =
                PDImageXObject.createFromByteArray(document, photo.png(), photo.shows());
            double aspect = (double) image.getHeight() / image.getWidth();
            all.add(
                new Beside(
                    aspect,
                    (canvas, left, bottom, wide) ->
                        canvas.image(image, left, bottom, wide, wide * aspect)));
          }
          beside(all);
        });
  }

  @Override
  public void step(LessonStep step) {
    run(() -> pieces.addAll(new PdfStep(step, width, BODY, letters).pieces()));
  }

  @Override
  public byte[] finish() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    run(
        () -> {
          try (document) {
            lacking();
            new PdfPages(document, letters, sheet, footer).put(pieces);
            // Instead of the time, which goes into the identifiers of the file.
            document.setDocumentId(0L);
            document.save(out);
            letters.close();
          }
        });
    return out.toByteArray();
  }

  /** What the fonts cannot say is told: a reader shall not take the replacement for the text. */
  private void lacking() {
    String missing =
        letters.lacking().stream()
            .map(c -> String.format(Locale.ROOT, "U+%04X", c))
            .collect(Collectors.joining(", "));
    if (!missing.isEmpty()) {
      small(
          Words.of(
              "Characters that the fonts of this document lack are shown as "
                  + Character.toString(0xFFFD)
                  + ": "
                  + missing));
    }
  }
}
