package flankfit.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The fonts that come along; in each of them all digits are equally wide. */
public enum BundledFont {
  TEXT("DejaVuSansCondensed.ttf"),
  STRONG("DejaVuSansCondensed-Bold.ttf"),
  LISTING("DejaVuSansMono.ttf");

  private final String file;

  BundledFont(String file) {
    this.file = file;
  }

  /** Side of the em square in the fonts' own units: the same in all of them. */
  int unitsPerEm() {
    return 2048;
  }

  /** Em square over the height from the highest to the lowest letter, of the fonts' tables (1). */
  double emShare() {
    return unitsPerEm() / (1901.0 + 483.0);
  }

  /** The font file's bytes. */
  public byte[] bytes() {
    try (InputStream in = BundledFont.class.getResourceAsStream("/flankfit/font/" + file)) {
      if (in == null) {
        throw new IllegalStateException("font is missing: " + file);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
