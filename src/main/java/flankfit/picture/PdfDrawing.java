package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;

/**
 * Puts drawings on a page of a PDF document: lines stay lines and letters letters. The ground is
 * left out, for paper has its own.
 *
 * @see "ISO 32000-1:2008, 8 Graphics and 9 Text"
 */
public final class PdfDrawing implements Ink {
  private static final int WHITE = 0xFFFFFF;

  private final PDDocument document;
  private final PDPageContentStream page;
  private final PdfLetters letters;
  private final double height;
  private final int ground;
  private final Map<Double, PDExtendedGraphicsState> seeThrough = new HashMap<>();

  private PdfDrawing(
      PDDocument document, PDPageContentStream page, PdfLetters letters, Diagram diagram) {
    this.document = document;
    this.page = page;
    this.letters = letters;
    height = diagram.height();
    ground = diagram.palette().ground();
  }

  /**
   * Draws it.
   *
   * @param left left edge from that of the page (1/72 in)
   * @param bottom lower edge from that of the page (1/72 in)
   * @param width width on the page (1/72 in); the height follows
   * @throws IOException if the document cannot take it
   */
  public static void put(
      Diagram diagram,
      PDDocument document,
      PDPageContentStream page,
      PdfLetters letters,
      double left,
      double bottom,
      double width)
      throws IOException {
    float scale = (float) (width / diagram.width());
    page.saveGraphicsState();
    page.transform(new Matrix(scale, 0, 0, scale, (float) left, (float) bottom));
    page.addRect(0, 0, diagram.width(), diagram.height());
    page.clip();
    page.setLineJoinStyle(1);
    try {
      diagram.onto(new PdfDrawing(document, page, letters, diagram));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
    page.restoreGraphicsState();
  }

  private static PDExtendedGraphicsState through(double alpha) {
    PDExtendedGraphicsState state = new PDExtendedGraphicsState();
    state.setNonStrokingAlphaConstant((float) alpha);
    return state;
  }

  private float row(double y) {
    return (float) (height - y);
  }

  private int onPaper(int colour) {
    return colour == ground ? WHITE : colour;
  }

  private static float part(int colour, int shift) {
    return (colour >> shift & 0xFF) / 255f;
  }

  private void ink(int colour) throws IOException {
    int c = onPaper(colour);
    page.setNonStrokingColor(part(c, 16), part(c, 8), part(c, 0));
  }

  @Override
  public void stroke(double[] points, double width, double dash, int colour) {
    try {
      int c = onPaper(colour);
      page.setStrokingColor(part(c, 16), part(c, 8), part(c, 0));
      page.setLineWidth((float) width);
      page.setLineDashPattern(dash > 0 ? new float[] {(float) dash} : new float[0], 0);
      page.moveTo((float) points[0], row(points[1]));
      for (int i = 2; i < points.length; i += 2) {
        page.lineTo((float) points[i], row(points[i + 1]));
      }
      page.stroke();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void fill(double[] x, double[] upper, double[] lower, int colour, double alpha) {
    try {
      page.saveGraphicsState();
      if (alpha < 1) {
        page.setGraphicsStateParameters(seeThrough.computeIfAbsent(alpha, PdfDrawing::through));
      }
      ink(colour);
      page.moveTo((float) x[0], row(upper[0]));
      for (int i = 1; i < x.length; i++) {
        page.lineTo((float) x[i], row(upper[i]));
      }
      for (int i = x.length - 1; i >= 0; i--) {
        page.lineTo((float) x[i], row(lower[i]));
      }
      page.closePath();
      page.fill();
      page.restoreGraphicsState();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void text(Face face, double x, double y, String text, Align align, int colour) {
    try {
      String words = letters.sayable(face.font(), text);
      double size = Letters.emSize(face);
      double wide = letters.width(face.font(), words, size);
      double before =
          switch (align) {
            case LEFT -> 0;
            case MIDDLE -> wide / 2;
            case RIGHT -> wide;
          };
      page.beginText();
      ink(colour);
      page.setFont(letters.font(face.font()), (float) size);
      page.newLineAtOffset((float) (x - before), row(y));
      page.showText(words);
      page.endText();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void raster(double x, double y, double width, double high, int columns, int[] cells) {
    try {
      int rows = cells.length / columns;
      BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
      image.setRGB(0, 0, columns, rows, cells, 0, columns);
      page.drawImage(
          LosslessFactory.createFromImage(document, image),
          (float) x,
          row(y + high),
          (float) width,
          (float) high);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
