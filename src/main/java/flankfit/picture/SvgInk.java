package flankfit.picture;

import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;

/**
 * Writes a drawing as SVG. Letters stay letters, in the first of a few common narrow faces.
 *
 * @see "W3C, Scalable Vector Graphics (SVG) 1.1 (Second Edition), 2011"
 */
final class SvgInk implements Ink {
  private static final String FACES =
      "'DejaVu Sans Condensed','DejaVu Sans',Verdana,'Segoe UI',Helvetica,Arial,sans-serif";

  private final StringBuilder out = new StringBuilder();

  private SvgInk() {}

  /** The drawing as an SVG file in UTF-8; the same drawing gives the same bytes. */
  static byte[] encode(Diagram diagram, int width, int height) {
    SvgInk ink = new SvgInk();
    ink.open(diagram, width, height);
    diagram.onto(ink);
    ink.out.append("</svg>\n");
    return ink.out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void open(Diagram diagram, int width, int height) {
    String size = diagram.width() + "\" height=\"" + diagram.height();
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(width);
    out.append("\" height=\"").append(height);
    out.append("\" viewBox=\"0 0 ").append(diagram.width()).append(' ').append(diagram.height());
    out.append("\" role=\"img\" font-family=\"").append(FACES).append("\">\n<title>");
    escape(diagram.title());
    out.append("</title>\n");
    if (!diagram.description().isEmpty()) {
      out.append("<desc>");
      escape(diagram.description());
      out.append("</desc>\n");
    }
    out.append("<rect width=\"").append(size).append("\" fill=\"");
    colour(diagram.palette().ground()).append("\"/>\n");
  }

  @Override
  public void stroke(double[] points, double width, double dash, int colour) {
    out.append("<polyline fill=\"none\" stroke-linejoin=\"round\" stroke=\"");
    colour(colour).append("\" stroke-width=\"");
    number(width).append('"');
    if (dash > 0) {
      out.append(" stroke-dasharray=\"");
      number(dash).append('"');
    }
    out.append(" points=\"");
    for (int i = 0; i < points.length; i += 2) {
      point(points[i], points[i + 1]);
    }
    out.append("\"/>\n");
  }

  @Override
  public void fill(double[] x, double[] upper, double[] lower, int colour, double alpha) {
    out.append("<polygon fill=\"");
    colour(colour).append('"');
    if (alpha < 1) {
      out.append(" fill-opacity=\"");
      number(alpha).append('"');
    }
    out.append(" points=\"");
    for (int i = 0; i < x.length; i++) {
      point(x[i], upper[i]);
    }
    for (int i = x.length - 1; i >= 0; i--) {
      point(x[i], lower[i]);
    }
    out.append("\"/>\n");
  }

  @Override
  public void text(Face face, double x, double y, String text, Align align, int colour) {
    out.append("<text x=\"");
    number(x).append("\" y=\"");
    number(y).append("\" font-size=\"");
    number(Letters.emSize(face)).append("\" fill=\"");
    colour(colour).append('"');
    if (Letters.isStrong(face)) {
      out.append(" font-weight=\"bold\"");
    }
    if (align != Align.LEFT) {
      out.append(" text-anchor=\"").append(align == Align.RIGHT ? "end" : "middle").append('"');
    }
    out.append('>');
    escape(text);
    out.append("</text>\n");
  }

  @Override
  public void raster(double x, double y, double width, double height, int columns, int[] cells) {
    int rows = cells.length / columns;
    byte[] rgb = new byte[3 * cells.length];
    for (int i = 0; i < cells.length; i++) {
      rgb[3 * i] = (byte) (cells[i] >> 16);
      rgb[3 * i + 1] = (byte) (cells[i] >> 8);
      rgb[3 * i + 2] = (byte) cells[i];
    }
    out.append("<image preserveAspectRatio=\"none\" style=\"image-rendering:pixelated\" x=\"");
    number(x).append("\" y=\"");
    number(y).append("\" width=\"");
    number(width).append("\" height=\"");
    number(height).append("\" href=\"data:image/png;base64,");
    out.append(Base64.getEncoder().encodeToString(Png.encode(rgb, columns, rows)));
    out.append("\"/>\n");
  }

  private void point(double x, double y) {
    number(x).append(',');
    number(y).append(' ');
  }

  private StringBuilder colour(int rgb) {
    return out.append(String.format(Locale.ROOT, "#%06X", rgb));
  }

  /** Hundredths of a pixel are more than anyone sees. */
  private StringBuilder number(double value) {
    long hundredths = Math.round(value * 100);
    if (hundredths % 100 == 0) {
      return out.append(hundredths / 100);
    }
    return out.append(hundredths / 100.0);
  }

  private void escape(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '&' -> out.append("&amp;");
        default -> out.append(c);
      }
    }
  }
}
