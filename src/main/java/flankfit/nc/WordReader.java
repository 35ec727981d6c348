package flankfit.nc;

import flankfit.finding.Code;
import flankfit.finding.Place;
import java.util.BitSet;
import java.util.function.ObjIntConsumer;

/** Reads one word of a block: a letter with its number, sequence and program numbers among them. */
final class WordReader {
  private static final int LARGEST_NUMBER_DIGITS = 8;

  private final SourceText source;
  private final byte[] bytes;
  private final Cursor cursor;
  private final ReadingFindings report;
  private final NumberReader number;
  private final Lookahead text;
  private final FlowReader flow;
  private final ObjIntConsumer<Block> sign;
  private final boolean quiet;
  private final BitSet sequences = new BitSet();

  /**
   * Has read no word yet.
   *
   * @param sign reports a character that belongs to no word
   * @param quiet whether another reader tells what is found
   */
  WordReader(
      SourceText source,
      Cursor cursor,
      ReadingFindings report,
      NumberReader number,
      Lookahead text,
      FlowReader flow,
      ObjIntConsumer<Block> sign,
      boolean quiet) {
    this.source = source;
    this.bytes = source.bytes();
    this.cursor = cursor;
    this.report = report;
    this.number = number;
    this.text = text;
    this.flow = flow;
    this.sign = sign;
    this.quiet = quiet;
  }

  void word(Block block, int c) {
    int start = cursor.pos;
    int letter = Characters.capital(c);
    if (letter != c) {
      report.lowerCase(block, cursor.lineStart, cursor.pos);
    }
    boolean letterFollows = Characters.isLetter(text.peek(cursor.pos + 1));
    if (letter == 'O') {
      if (block.isBare()) {
        programNumber(block);
      } else {
        letterO(block, start, start + 1);
      }
      return;
    }
    if (letterFollows && text.isStatement(cursor.pos)) {
      if (block.mayState()) {
        flow.statement(block);
      } else {
        report.mixed(block, cursor.place(block, cursor.pos, 1), "control");
        cursor.stopLine = true;
      }
      return;
    }
    cursor.pos++;
    if (number.read(cursor.pos)) {
      numbered(block, letter, start);
    } else {
      withoutNumber(block, letter, start);
    }
  }

  private void numbered(Block block, int letter, int start) {
    cursor.pos = number.end();
    int length = cursor.pos - start;
    if (number.blankInside()) {
      report.blankInside(block, cursor.lineStart, start, length);
    }
    int next = text.peek(cursor.pos);
    if (!number.reason().isEmpty()) {
      notNumber(block, start, number.reason());
    } else if (next == '.' || text.peek(text.skipBlanks(cursor.pos)) == '.') {
      notNumber(block, start, "it has two points");
    } else if (next == ',' && Characters.isDigit(text.peek(cursor.pos + 1))) {
      decimalComma(block, start);
    } else if (next == '+' || next == '-') {
      notNumber(block, start, "a sign stands before the digits");
    } else if (next == 'O' || next == 'o') {
      letterO(block, start, cursor.pos + 1);
    } else if (letter == 'N') {
      sequence(block, start, length);
    } else {
      block.add(letter, number.value(), start, length, number.digits(), number.decimals());
    }
  }

  private void withoutNumber(Block block, int letter, int start) {
    int at = number.end();
    int next = text.peek(at);
    if (!number.reason().isEmpty()) {
      cursor.pos = at;
      notNumber(block, start, number.reason());
    } else if (number.decimals() < 0 && (next == '#' || next == '[' || text.isFunction(at))) {
      flow.formula(block, letter, start);
    } else if (next == 'O' || next == 'o') {
      letterO(block, start, at + 1);
    } else if (next < 0) {
      cursor.pos = at;
      sign.accept(block, next);
    } else if (next == ',' && Characters.isDigit(text.peek(at + 1))) {
      cursor.pos = at;
      decimalComma(block, start);
    } else {
      int length = Math.max(1, text.trimmed(start, at) - start);
      report.noNumber(block, cursor.place(block, start, length), (char) letter);
      cursor.stopLine = true;
    }
  }

  private void notNumber(Block block, int start, String reason) {
    int length = text.numberLikeEnd(Math.max(cursor.pos, text.skipToPoint(cursor.pos))) - start;
    report.notNumber(block, cursor.place(block, start, length), source.text(start, length), reason);
    cursor.stopLine = true;
  }

  private void decimalComma(Block block, int start) {
    int length = text.numberLikeEnd(cursor.pos) - start;
    report.comma(block, cursor.place(block, start, length), source.text(start, length));
    cursor.stopLine = true;
  }

  private void letterO(Block block, int start, int last) {
    int stop = last;
    while (Characters.isDigit(text.peek(stop)) || Characters.capital(text.peek(stop)) == 'O') {
      stop++;
    }
    int length = stop - start;
    report.letterO(block, cursor.place(block, start, length), source.text(start, length));
    cursor.stopLine = true;
  }

  private void sequence(Block block, int start, int length) {
    Place place = null;
    int value = wholeNumber(block, start, length, 'N');
    if (value < 0) {
      return;
    }
    if (!block.isBare() || block.sequence() >= 0) {
      place = cursor.place(block, start, length);
      report.sequence(place, value, "not first");
    } else if (!quiet && sequences.get(value)) {
      place = cursor.place(block, start, length);
      report.sequence(place, value, "also in line " + firstLineOf(value));
    } else {
      sequences.set(value);
    }
    if (block.sequence() < 0) {
      block.sequence(value);
    }
  }

  /** Whether a sequence number has not stood yet in this program. */
  boolean isNew(int sequence) {
    return !sequences.get(sequence);
  }

  /** Keeps a sequence number of this program. */
  void keep(int sequence) {
    sequences.set(sequence);
  }

  /** The number last read as a sequence or program number; -1 after a finding. */
  private int wholeNumber(Block block, int start, int length, char letter) {
    boolean plain = number.decimals() < 0 && !number.signed();
    if (plain && number.digits() <= LARGEST_NUMBER_DIGITS) {
      return (int) number.value();
    }
    String text = source.text(start, length);
    if (plain) {
      report.error(
          block,
          Code.WD11,
          cursor.place(block, start, length),
          text + " is out of range 0 to 99999999",
          letter + " has one to eight digits",
          "correct it");
    } else {
      report.error(
          block,
          Code.WD10,
          cursor.place(block, start, length),
          text + " is not a whole number",
          letter + " is a number of something",
          "correct it");
    }
    cursor.stopLine = true;
    return -1;
  }

  /** Line where a sequence number stands first in this program; searched only for a finding. */
  private int firstLineOf(int wanted) {
    for (int n = 1; n <= source.lineCount(); n++) {
      String text = source.line(n).replaceAll("\\s", "");
      String rest = text.replaceFirst("^/[1-9]?", "");
      if (rest.matches("(?i)N0*" + wanted + "(\\D.*)?")) {
        return n;
      }
    }
    return cursor.line;
  }

  void programNumber(Block block) {
    int start = cursor.pos++;
    char letter = (char) Characters.capital(bytes[start]);
    if (!number.read(cursor.pos)) {
      boolean zeroMeant = letter == 'O' && Characters.capital(text.peek(number.end())) == 'O';
      if (zeroMeant) {
        letterO(block, start, number.end() + 1);
      } else {
        report.noNumber(block, cursor.place(block, start, 1), letter);
        cursor.stopLine = true;
      }
      return;
    }
    cursor.pos = number.end();
    int length = cursor.pos - start;
    int next = text.peek(cursor.pos);
    if (next == 'O' || next == 'o') {
      letterO(block, start, cursor.pos + 1);
      return;
    }
    int value = wholeNumber(block, start, length, letter);
    if (value >= 0) {
      block.programNumber(value, start, length);
      sequences.clear();
      if (number.digits() > 4) {
        report.programNumber(cursor.place(block, start, length), source.text(start, length));
      }
    }
  }
}
