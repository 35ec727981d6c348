package flankfit.paper;

import flankfit.picture.BundledFont;
import flankfit.picture.Diagram;
import flankfit.picture.PdfDrawing;
import flankfit.picture.PdfLetters;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** One page that is being drawn; lengths in 1/72 in from its lower left corner. */
final class PdfCanvas {
  static final int INK = 0x23272B;
  static final int SOFT = 0x5C6064;
  static final int RULE = 0x999999;
  static final int FAINT = 0xCCCCCC;
  static final int ALARM = 0xA63A00;

  private final PDDocument document;
  private final PDPageContentStream page;
  private final PdfLetters letters;

  PdfCanvas(PDDocument document, PDPageContentStream page, PdfLetters letters) {
    this.document = document;
    this.page = page;
    this.letters = letters;
  }

  private static float part(int colour, int shift) {
    return (colour >> shift & 0xFF) / 255f;
  }

  /** A text that the font can say; y is its base line. */
  void text(BundledFont font, double size, int colour, double x, double y, String text)
      throws IOException {
    page.beginText();
    page.setNonStrokingColor(part(colour, 16), part(colour, 8), part(colour, 0));
    page.setFont(letters.font(font), (float) size);
    page.newLineAtOffset((float) x, (float) y);
    page.showText(text);
    page.endText();
  }

  /** A straight line; dotted where a dot's length is above 0. */
  void line(double x0, double y0, double x1, double y1, double width, double dot, int colour)
      throws IOException {
    page.setStrokingColor(part(colour, 16), part(colour, 8), part(colour, 0));
    page.setLineWidth((float) width);
    page.setLineDashPattern(dot > 0 ? new float[] {(float) dot} : new float[0], 0);
    page.moveTo((float) x0, (float) y0);
    page.lineTo((float) x1, (float) y1);
    page.stroke();
  }

  /** A frame; its lines lie inside. */
  void frame(double left, double bottom, double width, double height, double thick, int colour)
      throws IOException {
    page.setStrokingColor(part(colour, 16), part(colour, 8), part(colour, 0));
    page.setLineWidth((float) thick);
    page.setLineDashPattern(new float[0], 0);
    page.addRect(
        (float) (left + thick / 2),
        (float) (bottom + thick / 2),
        (float) (width - thick),
        (float) (height - thick));
    page.stroke();
  }

  /** A drawing. */
  void drawing(Diagram drawing, double left, double bottom, double width) throws IOException {
    PdfDrawing.put(drawing, document, page, letters, left, bottom, width);
  }

  /** A picture. */
  void image(PDImageXObject image, double left, double bottom, double width, double height)
      throws IOException {
    page.drawImage(image, (float) left, (float) bottom, (float) width, (float) height);
  }
}
