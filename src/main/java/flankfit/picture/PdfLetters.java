package flankfit.picture;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The bundled fonts in one PDF document, each embedded with the letters that are used, so that its
 * text is seen everywhere alike and can be selected and searched.
 */
public final class PdfLetters implements AutoCloseable {
  /** What stands for a character that no bundled font has. */
  private static final int LACKING = 0xFFFD;

  private final PDDocument document;
  private final Map<BundledFont, Embedded> fonts = new EnumMap<>(BundledFont.class);
  private final TreeSet<Integer> lacking = new TreeSet<>();

  /** One font of the document. */
  private record Embedded(TrueTypeFont file, CmapLookup letters, PDType0Font font) {}

  /** Fonts for a document; each is read when it is first asked for. */
  public PdfLetters(PDDocument document) {
    this.document = document;
  }

  private Embedded embedded(BundledFont font) throws IOException {
    Embedded known = fonts.get(font);
    if (known != null) {
      return known;
    }
    TrueTypeFont file =
        new TTFParser().parse(new RandomAccessReadBuffer(new ByteArrayInputStream(font.bytes())));
    // Ligatures would be found by nobody who searches for the letters.
    file.setEnableGsub(false);
    Embedded made =
        new Embedded(file, file.getUnicodeCmapLookup(), PDType0Font.load(document, file, true));
    fonts.put(font, made);
    return made;
  }

  /** The font as the document knows it. */
  public PDFont font(BundledFont font) throws IOException {
    return embedded(font).font();
  }

  /**
   * A text in letters that the font has: control characters become blanks, and what it lacks is
   * replaced by the sign that stands for such characters.
   */
  public String sayable(BundledFont font, String text) throws IOException {
    CmapLookup letters = embedded(font).letters();
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              if (Character.isISOControl(c)) {
                out.append(' ');
              } else if (letters.getGlyphId(c) == 0) {
                lacking.add(c);
                out.appendCodePoint(LACKING);
              } else {
                out.appendCodePoint(c);
              }
            });
    return out.toString();
  }

  /** Width of a {@link #sayable} text at a font size, in the unit of the size. */
  public double width(BundledFont font, String text, double size) throws IOException {
    return embedded(font).font().getStringWidth(text) * size / 1000;
  }

  /** Characters asked for that a bundled font lacks, in rising order. */
  public List<Integer> lacking() {
    return List.copyOf(lacking);
  }

  @Override
  public void close() throws IOException {
    for (Embedded font : fonts.values()) {
      font.file().close();
    }
  }
}
