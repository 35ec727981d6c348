package flankfit.nc;

import flankfit.finding.Findings;
import flankfit.finding.Place;

/**
 * Reads the blocks of a program one after the other into a {@link Block} that is used again.
 * Comments are left out, reading errors are reported where they stand; after one the rest of the
 * line is not read. No object is made for a block without findings.
 */
public final class BlockReader {
  private static final int USUAL_LINE = 256;

  private static final int LONGEST_LINE = 65536;

  private final SourceText source;
  private final byte[] bytes;
  private final Cursor cursor;
  private final FileCheck check;
  private final Findings findings;
  private int end;
  private boolean begun;
  private boolean beginsElsewhere;
  private final ReadingRules rules;
  private final boolean[] deleteLevels = new boolean[10];
  private final ReadingFindings report;
  private final NumberReader number;
  private final PlainWords plain;
  private final PlainBlocks plainBlocks;
  private final Lookahead text;
  private final FlowReader flow;
  private final WordReader words;

  /**
   * Looks over the file and stands before its first block.
   *
   * @param source the program
   * @param rules what the switches decide
   * @param findings takes the findings of reading
   */
  public BlockReader(SourceText source, ReadingRules rules, Findings findings) {
    this(source, rules, findings, FileCheck.of(source, findings), false);
  }

  /**
   * A reader that looks over the file no farther than it reads. What it reads need not be the
   * program: see {@link #beginsElsewhere}.
   */
  public static BlockReader onTheWay(SourceText source, ReadingRules rules, Findings findings) {
    return new BlockReader(source, rules, findings, FileCheck.begun(source, findings), false);
  }

  /** A reader of a text whose findings another one gives; it may be sent to and fro. */
  public static BlockReader quiet(SourceText source, ReadingRules rules) {
    FileCheck check = FileCheck.of(source, new Findings());
    return new BlockReader(source, rules, new Findings(), check, true);
  }

  private BlockReader(
      SourceText source, ReadingRules rules, Findings findings, FileCheck check, boolean quiet) {
    this.source = source;
    this.bytes = source.bytes();
    this.rules = rules;
    cursor = new Cursor(source);
    this.report = new ReadingFindings(source, findings);
    for (int level : rules.blockDelete()) {
      deleteLevels[level] = true;
    }
    this.check = check;
    this.findings = findings;
    end = check.end();
    toBegin();
    number = new NumberReader(bytes, end);
    plain = new PlainWords(bytes, end);
    plainBlocks = new PlainBlocks(bytes, end);
    text = new Lookahead(source, end);
    flow = new FlowReader(source, end, cursor, report, text, this::sign);
    words = new WordReader(source, cursor, report, number, text, flow, this::sign, quiet);
  }

  private void toBegin() {
    seek(check.begin(), check.firstLine(), check.begin());
  }

  /** Whether the file is known to be no program text at all, as RD01 says. */
  public boolean refused() {
    return check.refused();
  }

  /**
   * Whether what was read turned out not to be the program, since a second percent mark or too many
   * control characters were met. All of it is then to be forgotten, and read by a reader that looks
   * over the file before; this one reads no more.
   */
  public boolean beginsElsewhere() {
    return beginsElsewhere;
  }

  /** How much of the text has been read, from 0 to 1 (1). */
  public double share() {
    return end <= cursor.pos ? 1 : (double) cursor.pos / end;
  }

  /** Line where reading stands, from 1. */
  public int line() {
    return cursor.line;
  }

  /** Offset where reading stands. */
  public int offset() {
    return cursor.pos;
  }

  /** Offset where the line begins in which reading stands. */
  public int lineStart() {
    return cursor.lineStart;
  }

  /** Goes on reading where a block begins or ended. */
  public void seek(int offset, int atLine, int atLineStart) {
    cursor.pos = offset;
    cursor.line = atLine;
    cursor.lineStart = atLineStart;
  }

  /**
   * Reads the next block that holds anything but blanks and comments.
   *
   * @return false at the end of the program text
   */
  public boolean next(Block block) {
    while (goesOn()) {
      block.begin(cursor.line, cursor.lineStart, cursor.pos);
      read(block);
      if (!block.isBlank()) {
        return true;
      }
    }
    return false;
  }

  /** Whether there is more to read; looks at what has not been looked at yet. */
  private boolean goesOn() {
    if (!check.isComplete() && (cursor.pos >= end || cursor.pos >= check.looked())) {
      boolean plainText = check.lookOn(cursor.pos);
      if (!plainText || cursor.pos >= end) {
        lookAtAll();
      }
    }
    begun = true;
    return cursor.pos < end && !beginsElsewhere;
  }

  private void lookAtAll() {
    int taken = check.begin();
    check.complete(findings);
    end = check.end();
    if (check.refused() || check.begin() != taken) {
      beginsElsewhere = begun;
      toBegin();
    }
  }

  /**
   * Looks whether a plain block comes next, and stays before it.
   *
   * @param into takes the block; not to be used when there is none
   */
  public boolean isPlain(PlainBlock into) {
    if (cursor.pos != cursor.lineStart || !plainBlocks.read(cursor.pos, USUAL_LINE, into)) {
      return false;
    }
    into.line = cursor.line;
    return !PlainBlocks.isNumbered(into) || words.isNew(into.sequence);
  }

  /** Goes past a plain block that comes next. */
  public void take(PlainBlock block) {
    cursor.pos = block.next;
    cursor.lineStart = block.next;
    cursor.line++;
    if (PlainBlocks.isNumbered(block)) {
      words.keep(block.sequence);
    }
  }

  /** Reads up to the end of the block and past it. */
  private void read(Block block) {
    cursor.stopLine = false;
    cursor.pos = plain.read(cursor.pos, block);
    while (cursor.pos < end) {
      int c = bytes[cursor.pos];
      if (Characters.isLetter(c)) {
        words.word(block, c);
        cursor.pos = cursor.stopLine ? cursor.pos : plain.read(cursor.pos, block);
      } else if (Characters.isBlank(c)) {
        cursor.pos = plain.read(cursor.pos + 1, block);
      } else if (Characters.endsLine(c)) {
        block.end(cursor.pos);
        endLine(block);
        return;
      } else if (c == ';' && rules.semicolonEndsBlock()) {
        block.end(cursor.pos++);
        return;
      } else {
        sign(block, c);
      }
      if (cursor.stopLine) {
        skipLine();
      }
    }
    block.end(cursor.pos);
    checkLength(block);
  }

  private void skipLine() {
    cursor.stopLine = false;
    while (cursor.pos < end && !Characters.endsLine(bytes[cursor.pos])) {
      cursor.pos++;
    }
  }

  private void endLine(Block block) {
    checkLength(block);
    if (bytes[cursor.pos] == '\r' && text.peek(cursor.pos + 1) == '\n' && cursor.pos + 1 < end) {
      cursor.pos++;
    }
    cursor.pos++;
    cursor.line++;
    cursor.lineStart = cursor.pos;
  }

  private void checkLength(Block block) {
    int length = cursor.pos - cursor.lineStart;
    if (length > USUAL_LINE) {
      Place place = report.place(block, cursor.lineStart, cursor.lineStart, length);
      report.longLine(block, place, length, length > LONGEST_LINE);
    }
  }

  /** Everything that is neither letter nor blank nor line end. */
  private void sign(Block block, int c) {
    switch (c) {
      case '(' -> comment(block);
      case ')' -> {
        report.parentheses(block, cursor.place(block, cursor.pos, 1));
        cursor.stopLine = true;
      }
      case ';' -> lineComment(block);
      case '/' -> slash(block);
      case ':' -> colon(block);
      case ',' -> comma(block);
      case '#', '[', ']', '=', '*' -> flow.sign(block);
      case '%' -> misplaced(block, '%', "a percent mark stands first in its line", "take it out");
      case '<', '>' ->
          misplaced(
              block, (char) c, "comparisons are written in letters", "type " + Characters.meant(c));
      case '+', '-', '.', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9' -> bare(block);
      default -> foreign(block);
    }
  }

  private void misplaced(Block block, char c, String why, String fix) {
    report.misplacedCharacter(block, cursor.place(block, cursor.pos, 1), c, why, fix);
    cursor.stopLine = true;
  }

  private void foreign(Block block) {
    int length = text.characterLength(cursor.pos);
    int codePoint = source.text(cursor.pos, length).codePointAt(0);
    report.unknownCharacter(block, cursor.place(block, cursor.pos, length), codePoint);
    cursor.stopLine = true;
  }

  private void comment(Block block) {
    int start = cursor.pos++;
    boolean high = false;
    while (cursor.pos < end
        && !Characters.endsLine(bytes[cursor.pos])
        && bytes[cursor.pos] != ')') {
      if (bytes[cursor.pos] == '(') {
        report.parentheses(block, cursor.place(block, cursor.pos, 1));
        cursor.stopLine = true;
        return;
      }
      high |= bytes[cursor.pos] < 0;
      cursor.pos++;
    }
    if (cursor.pos >= end || bytes[cursor.pos] != ')') {
      report.commentOpen(block, cursor.place(block, start, cursor.pos - start));
      return;
    }
    cursor.pos++;
    if (high) {
      report.encoding(block, cursor.lineStart, start, cursor.pos - start);
    }
  }

  private void lineComment(Block block) {
    int start = cursor.pos;
    boolean high = false;
    while (cursor.pos < end && !Characters.endsLine(bytes[cursor.pos])) {
      high |= bytes[cursor.pos] < 0;
      cursor.pos++;
    }
    if (high) {
      report.encoding(block, cursor.lineStart, start, cursor.pos - start);
    } else if (text.readsAsBlock(start + 1, cursor.pos)) {
      report.afterSemicolon(cursor.place(block, start, cursor.pos - start));
    }
  }

  private void slash(Block block) {
    if (block.size() > 0
        || block.deleteLevel() > 0
        || block.programNumber() >= 0
        || block.isFlow()) {
      report.slash(block, cursor.place(block, cursor.pos, 1));
      cursor.stopLine = true;
      return;
    }
    cursor.pos++;
    int level = 1;
    if (text.peek(cursor.pos) >= '1' && text.peek(cursor.pos) <= '9') {
      level = bytes[cursor.pos++] - '0';
    }
    block.delete(level, deleteLevels[level]);
  }

  private void colon(Block block) {
    if (block.isBare()) {
      words.programNumber(block);
    } else {
      misplaced(block, ':', "a colon starts a program number and stands first", "take it out");
    }
  }

  private void comma(Block block) {
    int letter = Characters.capital(text.peek(text.skipBlanks(cursor.pos + 1)));
    int start = cursor.pos;
    if (letter == 'C' || letter == 'R') {
      cursor.pos = text.skipBlanks(cursor.pos + 1) + 1;
      if (number.read(cursor.pos)) {
        cursor.pos = number.end();
      }
      block.add(letter + 32, 0, start, cursor.pos - start, 0, -1);
    } else {
      misplaced(block, ',', "a comma stands only before C or R of a corner", "type .");
    }
  }

  private void bare(Block block) {
    int start = cursor.pos;
    while (cursor.pos < end
        && (Characters.isDigit(bytes[cursor.pos]) || "+-.".indexOf(bytes[cursor.pos]) >= 0)) {
      cursor.pos++;
    }
    report.noLetter(
        block,
        cursor.place(block, start, cursor.pos - start),
        source.text(start, cursor.pos - start));
    cursor.stopLine = true;
  }
}
