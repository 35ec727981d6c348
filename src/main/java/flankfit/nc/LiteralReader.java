package flankfit.nc;

import flankfit.finding.Code;
import java.util.Optional;

/** Reads the plain numbers of expressions and names what is no number. */
final class LiteralReader {
  private final SourceText source;
  private final byte[] bytes;
  private final SyntaxText text;
  private final NumberReader number;
  private Optional<Span> blankInside = Optional.empty();

  /** A stretch of the text (bytes). */
  record Span(int offset, int length) {}

  LiteralReader(SourceText source, SyntaxText text, int end) {
    this.source = source;
    this.bytes = source.bytes();
    this.text = text;
    this.number = new NumberReader(bytes, end);
  }

  void begin() {
    blankInside = Optional.empty();
  }

  /** The first number with a blank inside. */
  Optional<Span> blankInside() {
    return blankInside;
  }

  /** Reads a number; 0 after a fault. */
  double read() {
    int start = text.at();
    if (!number.read(start)) {
      text.expected("a number");
      return 0;
    }
    text.moveTo(Math.min(number.end(), text.limit()));
    if (number.blankInside() && blankInside.isEmpty()) {
      blankInside = Optional.of(new Span(start, text.at() - start));
    }
    check(start);
    return text.failed() ? 0 : number.value();
  }

  private void check(int start) {
    int at = text.at();
    int next = at < text.limit() ? bytes[at] : '\n';
    if (!number.reason().isEmpty()) {
      notNumber(start, number.reason());
    } else if (next == '.') {
      notNumber(start, "it has two points");
    } else if (next == ',') {
      comma(start);
    } else if (Characters.capital(next) == 'O' && !text.spells("OR")) {
      text.fail(
          Code.RD14,
          start,
          at + 1 - start,
          "letter O in " + source.text(start, at + 1 - start),
          "a program number cannot stand here",
          "write the digit 0");
    }
  }

  private void notNumber(int start, String reason) {
    int stop = text.at();
    while (stop < text.limit() && (Characters.isDigit(bytes[stop]) || bytes[stop] == '.')) {
      stop++;
    }
    text.fail(
        Code.RD12,
        start,
        stop - start,
        source.text(start, stop - start) + " is not a number",
        reason,
        "write one number");
  }

  private void comma(int start) {
    int stop = text.at() + 1;
    while (stop < text.limit() && Characters.isDigit(bytes[stop])) {
      stop++;
    }
    String written = source.text(start, stop - start);
    text.fail(
        Code.RD07,
        start,
        stop - start,
        written + ": decimal comma",
        "the decimal sign is a point",
        ReadingFindings.withoutComma(written));
  }
}
