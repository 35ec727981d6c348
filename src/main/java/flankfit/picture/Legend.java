package flankfit.picture;

import flankfit.motion.ModalState.Distance;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import java.util.ArrayList;
import java.util.List;

/** The key to a scene's lines: a sample and words for each kind that occurs, and for no other. */
final class Legend {
  /** What a sample shows. */
  enum Sample {
    ABSOLUTE("absolute"),
    INCREMENTAL("incremental"),
    RAPID("rapid"),
    PROGRAMMED("as programmed"),
    EARLIER("earlier pass"),
    STOCK("stock"),
    THREAD("major Ø"),
    CUTTER("cutter");

    private final String words;

    Sample(String words) {
      this.words = words;
    }
  }

  private static final double SAMPLE = 26;
  private static final double GAP = 7;
  private static final double BETWEEN = 19;

  /** From one line to the next (px at scale 1). */
  static final double ROW = 19;

  private final List<Sample> samples;
  private final Distance feedMode;
  private final Distance rapidMode;

  /** The key for a scene. */
  Legend(Scene scene) {
    samples = samples(scene);
    feedMode = samples.contains(Sample.INCREMENTAL) ? Distance.INCREMENTAL : Distance.ABSOLUTE;
    rapidMode = scene.kinds().rapid().orElse(Distance.ABSOLUTE);
  }

  /** What the key shows, in order. */
  List<Sample> samples() {
    return samples;
  }

  private static List<Sample> samples(Scene scene) {
    LineKinds kinds = scene.kinds();
    boolean[] occurs = new boolean[Sample.values().length];
    occurs[0] = kinds.absolute();
    occurs[1] = kinds.incremental();
    occurs[2] = kinds.rapid().isPresent();
    occurs[3] = kinds.programmed();
    occurs[4] = scene.passes().several();
    occurs[5] = scene.setup().stock().isPresent();
    occurs[6] = scene.setup().holes().stream().anyMatch(h -> scene.majorDiameter(h).isPresent());
    occurs[7] = scene.cutter().isPresent();
    List<Sample> found = new ArrayList<>();
    for (int i = 0; i < occurs.length; i++) {
      if (occurs[i]) {
        found.add(Sample.values()[i]);
      }
    }
    return List.copyOf(found);
  }

  /**
   * Draws the key, as many lines as it needs and may have; what matters most comes first.
   *
   * @param x left end (px)
   * @param y base line of the last line (px)
   * @param width room (px)
   * @param mostRows lines it may have, at least 1
   */
  void draw(
      Overlay overlay,
      LineStyles styles,
      Theme theme,
      double scale,
      double x,
      double y,
      double width,
      int mostRows) {
    int rows = Math.min(mostRows, rows(overlay, scale, width));
    double row = y + (rows - 1) * ROW * scale;
    double pen = x;
    for (Sample sample : samples) {
      double needed = needed(overlay, scale, sample);
      if (pen > x && pen + needed > x + width) {
        pen = x;
        row -= ROW * scale;
      }
      if (row < y - 1) {
        return;
      }
      sample(overlay, styles, theme, scale, sample, pen, row + 4.5 * scale);
      overlay.ink(theme.palette().ink(), 1);
      overlay.text(Face.SMALL, pen + (SAMPLE + GAP) * scale, row, sample.words, Align.LEFT);
      pen += needed + BETWEEN * scale;
    }
  }

  private static double needed(Overlay overlay, double scale, Sample sample) {
    return (SAMPLE + GAP) * scale + overlay.width(Face.SMALL, sample.words);
  }

  private int rows(Overlay overlay, double scale, double width) {
    int rows = 1;
    double pen = 0;
    for (Sample sample : samples) {
      double needed = needed(overlay, scale, sample);
      if (pen > 0 && pen + needed > width) {
        rows++;
        pen = 0;
      }
      pen += needed + BETWEEN * scale;
    }
    return rows;
  }

  private void sample(
      Overlay overlay,
      LineStyles styles,
      Theme theme,
      double scale,
      Sample sample,
      double x,
      double y) {
    double end = x + SAMPLE * scale;
    Theme.Palette palette = theme.palette();
    switch (sample) {
      case ABSOLUTE ->
          path(
              overlay,
              styles,
              LineStyles.path(LineStyles.FEED, Distance.ABSOLUTE, 0),
              palette,
              x,
              end,
              y);
      case INCREMENTAL ->
          path(
              overlay,
              styles,
              LineStyles.path(LineStyles.FEED, Distance.INCREMENTAL, 0),
              palette,
              x,
              end,
              y);
      case RAPID -> {
        int style = LineStyles.path(LineStyles.RAPID, rapidMode, 0);
        double dash = SAMPLE * scale / 7;
        for (int i = 0; i < 7; i += 2) {
          path(overlay, styles, style, palette, x + i * dash, x + (i + 1) * dash, y);
        }
      }
      case PROGRAMMED ->
          path(
              overlay,
              styles,
              LineStyles.path(LineStyles.PROGRAMMED, feedMode, 0),
              palette,
              x,
              end,
              y);
      case EARLIER ->
          path(overlay, styles, LineStyles.path(LineStyles.FEED, feedMode, 2), palette, x, end, y);
      case STOCK -> {
        overlay.ink(palette.stock(), 0.35);
        overlay.bar(x, y - 5 * scale, SAMPLE * scale, 10 * scale);
      }
      case THREAD -> path(overlay, styles, LineStyles.THREAD_EDGE, palette, x, end, y);
      case CUTTER -> {
        overlay.ink(palette.steel(), 1);
        overlay.bar(x, y - 5 * scale, SAMPLE * scale, 10 * scale);
      }
    }
  }

  private static void path(
      Overlay overlay,
      LineStyles styles,
      int style,
      Theme.Palette palette,
      double x,
      double end,
      double y) {
    double half = styles.shapes()[4 * style];
    double casing = styles.shapes()[4 * style + 2];
    if (casing > 0) {
      overlay.ink(palette.casing(), 1);
      overlay.stroke(x, y, end, y, 2 * (half + casing));
    }
    overlay.ink(Colours.rgb(styles.colours(), 4 * style), 1);
    overlay.stroke(x, y, end, y, Math.max(1, 2 * half));
  }
}
