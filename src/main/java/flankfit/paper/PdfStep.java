package flankfit.paper;

import flankfit.picture.Diagram;
import flankfit.picture.PdfLetters;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A step of a lesson as a piece: bar, drawing at the right, words at the left. One that has no room
 * on a page parts between its rows.
 */
final class PdfStep {
  private static final int ABSOLUTE = 0x0072B2;
  private static final int INCREMENTAL = 0xB36B00;
  private static final double HEADING = 10.2;
  private static final double NAME = 67;
  private static final double BAR = 13;
  private static final double DRAWING = 0.38;
  private static final double ABOVE = 6;
  private static final double GAP = 3;
  private static final double BETWEEN = 10;

  /** The most that a step may be tall and still be held together (1/72 in). */
  private static final double MOST = 560;

  private final LessonStep step;
  private final double width;
  private final double size;
  private final PdfLetters letters;
  private final double indent;

  PdfStep(LessonStep step, double width, double size, PdfLetters letters) {
    this.step = step;
    this.width = width;
    this.size = size;
    this.letters = letters;
    indent = step.bar() == LessonStep.Bar.NONE ? 0 : BAR;
  }

  /** A line of it with its height. */
  private record Part(double height, Piece.Ink ink) {}

  List<Piece> pieces() throws IOException {
    Optional<Diagram> drawing = step.drawing();
    double wide = drawing.isPresent() ? DRAWING * width : 0;
    double tall = drawing.map(d -> wide * d.height() / d.width()).orElse(0.0);
    List<Part> parts = parts(width - indent - (drawing.isPresent() ? wide + BETWEEN : 0));
    double words = parts.stream().mapToDouble(Part::height).sum();
    double high = ABOVE + Math.max(words, tall) + ABOVE;
    if (high <= MOST) {
      Piece.Ink all =
          (canvas, left, top) -> {
            rule(canvas, left, top);
            bar(canvas, left, top, high);
            if (drawing.isPresent()) {
              canvas.drawing(drawing.get(), left + width - wide, top - ABOVE - tall, wide);
            }
            double at = top - ABOVE;
            for (Part part : parts) {
              part.ink().draw(canvas, left + indent, at);
              at -= part.height();
            }
          };
      return List.of(Piece.of(high, all));
    }
    return parted(wide, tall);
  }

  private List<Piece> parted(double wide, double tall) throws IOException {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Piece.withNext(ABOVE, this::ruled));
    if (step.drawing().isPresent()) {
      Diagram drawing = step.drawing().get();
      pieces.add(
          Piece.withNext(
              tall + GAP,
              (canvas, left, top) -> {
                bar(canvas, left, top, tall + GAP);
                canvas.drawing(drawing, left + indent, top - tall, wide);
              }));
    }
    for (Part part : parts(width - indent)) {
      pieces.add(
          Piece.of(
              part.height(),
              (canvas, left, top) -> {
                bar(canvas, left, top, part.height());
                part.ink().draw(canvas, left + indent, top);
              }));
    }
    pieces.add(Piece.of(ABOVE, (canvas, left, top) -> bar(canvas, left, top, ABOVE)));
    return pieces;
  }

  private void ruled(PdfCanvas canvas, double left, double top) throws IOException {
    rule(canvas, left, top);
    bar(canvas, left, top, ABOVE);
  }

  private void rule(PdfCanvas canvas, double left, double top) throws IOException {
    canvas.line(left, top, left + width, top, 0.8, 0, PdfCanvas.RULE);
  }

  private void bar(PdfCanvas canvas, double left, double top, double high) throws IOException {
    switch (step.bar()) {
      case NONE -> {}
      case ABSOLUTE -> canvas.line(left + 1.5, top, left + 1.5, top - high, 3, 0, ABSOLUTE);
      case INCREMENTAL -> {
        canvas.line(left + 0.7, top, left + 0.7, top - high, 1.3, 0, INCREMENTAL);
        canvas.line(left + 3.9, top, left + 3.9, top - high, 1.3, 0, INCREMENTAL);
      }
    }
  }

  private List<Part> parts(double room) throws IOException {
    List<Part> parts = new ArrayList<>();
    lines(step.heading(), new PdfText.Style(HEADING, PdfCanvas.INK, true), room, parts);
    lines(Words.of(step.plain()), new PdfText.Style(size, PdfCanvas.INK, false), room, parts);
    for (LessonStep.Row row : step.rows()) {
      PdfText.Style soft = new PdfText.Style(size, PdfCanvas.SOFT, false);
      PdfText name = PdfText.of(Words.of(row.name()), soft, NAME, letters);
      PdfText.Style own = new PdfText.Style(size, PdfCanvas.INK, row.own());
      PdfText said = PdfText.of(Words.of(row.words()), own, room - NAME, letters);
      for (int i = 0; i < said.lines(); i++) {
        int line = i;
        parts.add(
            new Part(
                own.leading(),
                (canvas, left, top) -> {
                  if (line == 0) {
                    name.draw(canvas, left, top);
                  }
                  said.draw(canvas, left + NAME, top, line, line + 1);
                }));
      }
    }
    return parts;
  }

  private void lines(Words words, PdfText.Style style, double room, List<Part> parts)
      throws IOException {
    PdfText said = PdfText.of(words, style, room, letters);
    for (int i = 0; i < said.lines(); i++) {
      int line = i;
      double gap = i + 1 == said.lines() ? GAP : 0;
      parts.add(
          new Part(
              style.leading() + gap,
              (canvas, left, top) -> said.draw(canvas, left, top, line, line + 1)));
    }
  }
}
