package flankfit.paper;

import java.util.Objects;

/** A picture of pixels. */
public final class Photo {
  private final byte[] png;
  private final String shows;

  /**
   * Takes a PNG file.
   *
   * @param png the file
   * @param shows what it shows, in words
   */
  public Photo(byte[] png, String shows) {
    this.png = png.clone();
    this.shows = Objects.requireNonNull(shows, "shows");
  }

  /** The PNG file. */
  byte[] png() {
    return png.clone();
  }

  /** What it shows, in words. */
  String shows() {
    return shows;
  }
}
