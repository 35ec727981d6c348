package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.picture.NoOpenGlException;
import flankfit.picture.Theme;
import picocli.CommandLine.Option;

/** How large a picture is, and on what paper. */
final class PictureOptions {
  private static final int LEAST_PIXELS = 200;
  private static final int MOST_PIXELS = 8192;

  /** How much a diagram is enlarged at most (1). */
  private static final double MOST_TIMES = 4;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      description = "size of the picture in pixels (default: 1600x1000; diagrams 1200x800)")
  private String size = "";

  @Option(names = "--dark", description = "draws on a dark ground")
  private boolean dark;

  /** A picture's sides (px). */
  record Pixels(int width, int height) {}

  /**
   * The size asked for.
   *
   * @param otherwise the size when none is asked for
   * @param leastWidth least width (px)
   * @param leastHeight least height (px)
   * @throws RequestException if it is none
   */
  Pixels pixels(Pixels otherwise, int leastWidth, int leastHeight) throws RequestException {
    if (size.isEmpty()) {
      return otherwise;
    }
    int cross = size.indexOf('x');
    try {
      int width = Integer.parseInt(size.substring(0, Math.max(0, cross)));
      int height = Integer.parseInt(size.substring(cross + 1));
      if (width >= leastWidth
          && height >= leastHeight
          && width <= MOST_PIXELS
          && height <= MOST_PIXELS) {
        return new Pixels(width, height);
      }
    } catch (NumberFormatException e) {
      throw badSize(e.getMessage());
    }
    throw badSize(
        "it must lie between "
            + leastWidth
            + "x"
            + leastHeight
            + " and "
            + MOST_PIXELS
            + "x"
            + MOST_PIXELS);
  }

  /** The size of a view of the part. */
  Pixels ofView() throws RequestException {
    return pixels(new Pixels(1600, 1000), LEAST_PIXELS, LEAST_PIXELS);
  }

  /** The size of a diagram. */
  Pixels ofDiagram() throws RequestException {
    return pixels(new Pixels(1200, 800), 600, 400);
  }

  /**
   * The size at which a diagram is laid out: a large one is a smaller one enlarged, so that its
   * letters and lines grow with it.
   */
  static Pixels layout(Pixels size) {
    double times =
        Math.max(1, Math.min(MOST_TIMES, Math.min(size.width() / 1200.0, size.height() / 800.0)));
    return new Pixels(
        (int) Math.floor(size.width() / times), (int) Math.floor(size.height() / times));
  }

  /** Whether nothing was asked for. */
  boolean isDefault() {
    return size.isEmpty() && !dark;
  }

  Theme theme() {
    return dark ? Theme.DARK : Theme.LIGHT;
  }

  /** What a picture without OpenGL is refused with. */
  static RequestException refused(NoOpenGlException e) {
    return RequestException.failed(
        Finding.of(Code.RQ05, Place.file(""), e.getMessage(), e.why(), e.fix()));
  }

  private RequestException badSize(String why) {
    return RequestException.wrong(
        Finding.of(
            Code.RQ04,
            Place.file(""),
            "--size " + size + " is not a size",
            why,
            "write width x height in pixels: 1600x1000"));
  }
}
