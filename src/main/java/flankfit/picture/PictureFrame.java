package flankfit.picture;

import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Verdict;
import flankfit.picture.Overlay.Align;
import flankfit.picture.TextAtlas.Face;
import flankfit.unit.LengthUnit;
import java.util.List;

/**
 * What stands around every picture of a gauge answer: above it what kind of picture it is, the
 * thread with its verdict in words and a shape, and the reason; below it how to read it. Says which
 * rows are left between.
 */
final class PictureFrame {
  /** Space at the sheet's sides (px). */
  static final double MARGIN = 28;

  /** Width below which words give way to figures (px). */
  static final double NARROW = 900;

  private static final double LINE = 18;
  private static final double SMALL_LINE = 16;

  private final double top;
  private final double foot;

  /**
   * Writes it.
   *
   * @param kind what the picture is, in a few words
   * @param good whether the headline is good news
   * @param headline the thread and its verdict
   * @param reason a sentence
   * @param note how to read the picture
   */
  PictureFrame(
      Diagram diagram, String kind, boolean good, String headline, String reason, String note) {
    Theme.Palette palette = diagram.palette();
    double room = diagram.width() - 2 * MARGIN;
    double y = 22;
    for (String line : Paragraph.wrap(diagram, Face.SMALL, kind, room)) {
      diagram.text(Face.SMALL, MARGIN, y, line, Align.LEFT, palette.softInk());
      y += SMALL_LINE;
    }
    String words = (good ? "■ " : "▲ ") + headline;
    Face face = diagram.width(Face.TITLE, words) > room ? Face.STRONG : Face.TITLE;
    y += face == Face.TITLE ? 10 : 4;
    for (String line : Paragraph.wrap(diagram, face, words, room)) {
      int colour = good ? palette.ink() : palette.alarm();
      diagram.text(face, MARGIN, y, line, Align.LEFT, colour);
      y += LINE;
    }
    y += face == Face.TITLE ? 4 : 0;
    for (String line : Paragraph.wrap(diagram, Face.BODY, reason, room)) {
      diagram.text(Face.BODY, MARGIN, y, line, Align.LEFT, palette.ink());
      y += LINE;
    }
    top = y;
    List<String> below = Paragraph.wrap(diagram, Face.SMALL, note, room);
    double first = diagram.height() - 14 - SMALL_LINE * (below.size() - 1);
    for (int i = 0; i < below.size(); i++) {
      diagram.text(
          Face.SMALL, MARGIN, first + SMALL_LINE * i, below.get(i), Align.LEFT, palette.softInk());
    }
    foot = first - SMALL_LINE;
  }

  /** No frame: the words stand elsewhere, as in a window. */
  private PictureFrame(double foot) {
    top = 0;
    this.foot = foot;
  }

  /** A frame without words: all rows are left. */
  static PictureFrame bare(Diagram diagram) {
    return new PictureFrame(diagram.height());
  }

  /** The frame of a thread's picture. */
  static PictureFrame of(Diagram diagram, ThreadAnswer thread, String kind, String note) {
    boolean good = thread.verdict() == Verdict.GAUGES_GOOD;
    return new PictureFrame(diagram, kind, good, headline(thread), thread.reason(), note);
  }

  /** Thread, hole and verdict in words. */
  static String headline(ThreadAnswer thread) {
    return thread.designation() + " in " + thread.hole() + ": " + thread.verdict().words();
  }

  /** The unit as it stands beside a scale. */
  static String unit(LengthUnit unit) {
    return ", " + unit.symbol();
  }

  /** First row below the heading (px). */
  double top() {
    return top;
  }

  /** Last row above the note (px). */
  double foot() {
    return foot;
  }
}
