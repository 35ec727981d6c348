package flankfit.paper;

import flankfit.picture.PdfLetters;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Paragraphs in a frame, as pieces. A frame that has no room on a page parts between its lines and
 * stays open where it parts.
 */
final class PdfFrame {
  private static final double PAD = 6;
  private static final double THICK = 1.2;
  private static final double APART = 2.6;

  /** The most that a frame may be tall and still be held together (1/72 in). */
  private static final double MOST = 400;

  private final double width;
  private final int colour;
  private final boolean twice;
  private final List<PdfText> texts = new ArrayList<>();

  /**
   * Breaks paragraphs into lines.
   *
   * @param width width of the frame (1/72 in)
   * @param colour of the frame, 0xRRGGBB
   * @param twice whether the frame is a double one
   */
  PdfFrame(
      List<Words> paragraphs,
      PdfText.Style style,
      double width,
      int colour,
      boolean twice,
      PdfLetters letters)
      throws IOException {
    this.width = width;
    this.colour = colour;
    this.twice = twice;
    for (Words words : paragraphs) {
      texts.add(PdfText.of(words, style, width - 3 * PAD, letters));
    }
  }

  List<Piece> pieces() {
    double high = 2 * PAD + texts.stream().mapToDouble(PdfText::height).sum();
    return high <= MOST ? List.of(whole(high)) : parted();
  }

  private Piece whole(double high) {
    return Piece.of(
        high,
        (canvas, left, top) -> {
          canvas.frame(left, top - high, width, high, THICK, colour);
          if (twice) {
            canvas.frame(
                left + APART, top - high + APART, width - 2 * APART, high - 2 * APART, 1, colour);
          }
          double at = top - PAD;
          for (PdfText text : texts) {
            text.draw(canvas, left + 1.5 * PAD, at);
            at -= text.height();
          }
        });
  }

  private List<Piece> parted() {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Piece.withNext(PAD, (canvas, left, top) -> edge(canvas, left, top, top, PAD)));
    for (PdfText text : texts) {
      for (int i = 0; i < text.lines(); i++) {
        int line = i;
        double high = text.height() / text.lines();
        Piece.Ink ink =
            (canvas, left, top) -> {
              sides(canvas, left, top, high);
              text.draw(canvas, left + 1.5 * PAD, top, line, line + 1);
            };
        // The first paragraph names the rest, and the lower edge closes the last line.
        boolean last = text == texts.get(texts.size() - 1) && i + 1 == text.lines();
        boolean held = text == texts.get(0) || last;
        pieces.add(held ? Piece.withNext(high, ink) : Piece.of(high, ink));
      }
    }
    pieces.add(Piece.of(PAD, (canvas, left, top) -> edge(canvas, left, top, top - PAD, PAD)));
    return pieces;
  }

  private void edge(PdfCanvas canvas, double left, double top, double edge, double high)
      throws IOException {
    sides(canvas, left, top, high);
    canvas.line(left, edge, left + width, edge, THICK, 0, colour);
  }

  private void sides(PdfCanvas canvas, double left, double top, double high) throws IOException {
    for (double x : new double[] {left + THICK / 2, left + width - THICK / 2}) {
      canvas.line(x, top, x, top - high, THICK, 0, colour);
    }
  }
}
