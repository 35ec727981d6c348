package flankfit.nc;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import java.util.BitSet;

/**
 * Reads the blocks of a program one after the other into a {@link Block} that is used again.
 * Comments are left out, reading errors are reported where they stand; after one the rest of the
 * line is not read. No object is made for a block without findings.
 */
public final class BlockReader {
  private static final int USUAL_LINE = 256;

  /** Bytes of a block at least, as a guess. */
  private static final int USUAL_BLOCK = 16;

  private static final int LONGEST_LINE = 65536;
  private static final int LARGEST_NUMBER_DIGITS = 8;

  private final SourceText source;
  private final byte[] bytes;
  private final int end;
  private final boolean refused;
  private final int likelyBlocks;
  private final ReadingRules rules;
  private final boolean[] deleteLevels = new boolean[10];
  private final ReadingFindings report;
  private final NumberReader number;
  private final PlainWords plain;
  private final Lookahead text;
  private final BitSet sequences = new BitSet();
  private final boolean quiet;
  private final ExpressionParser expressions;
  private final StatementParser statements;
  private int pos;
  private int line;
  private int lineStart;
  private boolean stopLine;

  /**
   * Looks over the file and stands before its first block.
   *
   * @param source the program
   * @param rules what the switches decide
   * @param findings takes the findings of reading
   */
  public BlockReader(SourceText source, ReadingRules rules, Findings findings) {
    this(source, rules, findings, false);
  }

  /** A reader of a text whose findings another one gives; it may be sent to and fro. */
  public static BlockReader quiet(SourceText source, ReadingRules rules) {
    return new BlockReader(source, rules, new Findings(), true);
  }

  private BlockReader(SourceText source, ReadingRules rules, Findings findings, boolean quiet) {
    this.source = source;
    this.quiet = quiet;
    this.bytes = source.bytes();
    this.rules = rules;
    this.report = new ReadingFindings(source, findings);
    for (int level : rules.blockDelete()) {
      deleteLevels[level] = true;
    }
    FileCheck check = FileCheck.of(source, findings);
    pos = check.begin();
    end = check.end();
    line = check.firstLine();
    lineStart = pos;
    refused = check.refused();
    likelyBlocks = Math.min(check.lineFeeds(), bytes.length / USUAL_BLOCK) + 1;
    number = new NumberReader(bytes, end);
    plain = new PlainWords(bytes, end);
    text = new Lookahead(source, end);
    expressions = new ExpressionParser(source, end);
    statements = new StatementParser(expressions);
  }

  /** Whether the file is no program text at all, as RD01 says. */
  public boolean refused() {
    return refused;
  }

  /** A guess of the number of blocks; never more than the size of the file justifies. */
  public int likelyBlocks() {
    return likelyBlocks;
  }

  /** Line where reading stands, from 1. */
  public int line() {
    return line;
  }

  /** Offset where reading stands. */
  public int offset() {
    return pos;
  }

  /** Offset where the line begins in which reading stands. */
  public int lineStart() {
    return lineStart;
  }

  /** Goes on reading where a block begins or ended. */
  public void seek(int offset, int atLine, int atLineStart) {
    pos = offset;
    line = atLine;
    lineStart = atLineStart;
  }

  /**
   * Reads the next block that holds anything but blanks and comments.
   *
   * @return false at the end of the program text
   */
  public boolean next(Block block) {
    while (pos < end) {
      block.begin(line, lineStart, pos);
      read(block);
      if (!block.isBlank()) {
        return true;
      }
    }
    return false;
  }

  /** Reads up to the end of the block and past it. */
  private void read(Block block) {
    stopLine = false;
    pos = plain.read(pos, block);
    while (pos < end) {
      int c = bytes[pos];
      if (Characters.isLetter(c)) {
        word(block, c);
        pos = stopLine ? pos : plain.read(pos, block);
      } else if (Characters.isBlank(c)) {
        pos = plain.read(pos + 1, block);
      } else if (Characters.endsLine(c)) {
        block.end(pos);
        endLine(block);
        return;
      } else if (c == ';' && rules.semicolonEndsBlock()) {
        block.end(pos++);
        return;
      } else {
        sign(block, c);
      }
      if (stopLine) {
        skipLine();
      }
    }
    block.end(pos);
    checkLength(block);
  }

  private void skipLine() {
    stopLine = false;
    while (pos < end && !Characters.endsLine(bytes[pos])) {
      pos++;
    }
  }

  private void endLine(Block block) {
    checkLength(block);
    if (bytes[pos] == '\r' && text.peek(pos + 1) == '\n' && pos + 1 < end) {
      pos++;
    }
    pos++;
    line++;
    lineStart = pos;
  }

  private void checkLength(Block block) {
    int length = pos - lineStart;
    if (length > USUAL_LINE) {
      Place place = report.place(block, lineStart, lineStart, length);
      report.longLine(block, place, length, length > LONGEST_LINE);
    }
  }

  /** Everything that is neither letter nor blank nor line end. */
  private void sign(Block block, int c) {
    switch (c) {
      case '(' -> comment(block);
      case ')' -> {
        report.parentheses(block, at(block, pos, 1));
        stopLine = true;
      }
      case ';' -> lineComment(block);
      case '/' -> slash(block);
      case ':' -> colon(block);
      case ',' -> comma(block);
      case '#', '[', ']', '=', '*' -> flow(block);
      case '%' -> misplaced(block, '%', "a percent mark stands first in its line", "take it out");
      case '<', '>' ->
          misplaced(
              block, (char) c, "comparisons are written in letters", "type " + Characters.meant(c));
      case '+', '-', '.', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9' -> bare(block);
      default -> foreign(block);
    }
  }

  private Place at(Block block, int offset, int length) {
    return report.place(block, lineStart, offset, length);
  }

  private void misplaced(Block block, char c, String why, String fix) {
    report.misplacedCharacter(block, at(block, pos, 1), c, why, fix);
    stopLine = true;
  }

  private void foreign(Block block) {
    int length = text.characterLength(pos);
    int codePoint = source.text(pos, length).codePointAt(0);
    report.unknownCharacter(block, at(block, pos, length), codePoint);
    stopLine = true;
  }

  private void comment(Block block) {
    int start = pos++;
    boolean high = false;
    while (pos < end && !Characters.endsLine(bytes[pos]) && bytes[pos] != ')') {
      if (bytes[pos] == '(') {
        report.parentheses(block, at(block, pos, 1));
        stopLine = true;
        return;
      }
      high |= bytes[pos] < 0;
      pos++;
    }
    if (pos >= end || bytes[pos] != ')') {
      report.commentOpen(block, at(block, start, pos - start));
      return;
    }
    pos++;
    if (high) {
      report.encoding(block, lineStart, start, pos - start);
    }
  }

  private void lineComment(Block block) {
    int start = pos;
    boolean high = false;
    while (pos < end && !Characters.endsLine(bytes[pos])) {
      high |= bytes[pos] < 0;
      pos++;
    }
    if (high) {
      report.encoding(block, lineStart, start, pos - start);
    } else if (text.readsAsBlock(start + 1, pos)) {
      report.afterSemicolon(at(block, start, pos - start));
    }
  }

  private void slash(Block block) {
    if (block.size() > 0
        || block.deleteLevel() > 0
        || block.programNumber() >= 0
        || block.isFlow()) {
      report.slash(block, at(block, pos, 1));
      stopLine = true;
      return;
    }
    pos++;
    int level = 1;
    if (text.peek(pos) >= '1' && text.peek(pos) <= '9') {
      level = bytes[pos++] - '0';
    }
    block.delete(level, deleteLevels[level]);
  }

  private boolean atHead(Block block) {
    return block.size() == 0 && block.programNumber() < 0 && !block.isFlow();
  }

  /** Whether a statement may begin: after a program or sequence number at most. */
  private static boolean mayState(Block block) {
    return block.size() == 0 && !block.isFlow();
  }

  private void colon(Block block) {
    if (atHead(block)) {
      programNumber(block);
    } else {
      misplaced(block, ':', "a colon starts a program number and stands first", "take it out");
    }
  }

  private void comma(Block block) {
    int letter = Characters.capital(text.peek(text.skipBlanks(pos + 1)));
    int start = pos;
    if (letter == 'C' || letter == 'R') {
      pos = text.skipBlanks(pos + 1) + 1;
      if (number.read(pos)) {
        pos = number.end();
      }
      block.add(letter + 32, 0, start, pos - start, 0, -1);
    } else {
      misplaced(block, ',', "a comma stands only before C or R of a corner", "type .");
    }
  }

  private void bare(Block block) {
    int start = pos;
    while (pos < end && (Characters.isDigit(bytes[pos]) || "+-.".indexOf(bytes[pos]) >= 0)) {
      pos++;
    }
    report.noLetter(block, at(block, start, pos - start), source.text(start, pos - start));
    stopLine = true;
  }

  /** A sign of a variable or an expression where no word has just begun. */
  private void flow(Block block) {
    if (bytes[pos] == '#' && mayState(block)) {
      statement(block);
      return;
    }
    int last = text.trimmed(pos, flowEnd(pos));
    expressions.begin(pos, last);
    if (bytes[pos] == '#') {
      report.mixed(block, at(block, pos, last - pos), "assignment");
    } else {
      expressions.expected("a letter");
      fault(block);
    }
    stopLine = true;
  }

  /** Where a statement or value ends at the latest: before a semicolon outside comments. */
  private int flowEnd(int from) {
    boolean comment = false;
    int at = from;
    while (at < end && !Characters.endsLine(bytes[at]) && (comment || bytes[at] != ';')) {
      comment = bytes[at] == '(' || (comment && bytes[at] != ')');
      at++;
    }
    return at;
  }

  /** Whether only program characters stand there outside comments; reports the first other one. */
  private boolean isProgramText(Block block, int from, int to) {
    boolean comment = false;
    for (int i = from; i < to; i++) {
      int c = bytes[i];
      comment = c == '(' || (comment && c != ')');
      boolean known =
          Characters.isLetter(c)
              || Characters.isDigit(c)
              || Characters.isBlank(c)
              || "+-*/.,#[]=()".indexOf(c) >= 0;
      if (!comment && !known) {
        pos = i;
        if (c == '<' || c == '>' || c == '%' || c == ':') {
          sign(block, c);
        } else {
          foreign(block);
        }
        return false;
      }
    }
    return true;
  }

  /** An assignment, a jump or a loop; nothing but comments may follow in its block. */
  private void statement(Block block) {
    int before = flowEnd(pos);
    if (!isProgramText(block, pos, before)) {
      return;
    }
    Statement read = statements.read(pos, before);
    if (expressions.failed()) {
      fault(block);
      return;
    }
    expressions.blankInside().ifPresent(b -> blankInside(block, b.offset(), b.length()));
    block.statement(expressions.remark().isEmpty() ? read : read.withRemark(expressions.remark()));
    pos = before;
  }

  /** A word whose value is a variable, an expression or a function. */
  private void formula(Block block, int letter, int start) {
    int before = flowEnd(start);
    expressions.begin(start, before);
    expressions.moveTo(start + 1);
    Expression value = expressions.value();
    if (!isProgramText(block, start, expressions.failed() ? before : expressions.at())) {
      return;
    }
    if (!expressions.failed() && (letter == 'N' || letter == 'O')) {
      expressions.expected("a plain number");
    }
    if (expressions.failed()) {
      fault(block);
      return;
    }
    expressions.blankInside().ifPresent(b -> blankInside(block, b.offset(), b.length()));
    pos = expressions.at();
    block.addFormula(letter, value, start, pos - start);
  }

  private void blankInside(Block block, int offset, int length) {
    String written = source.text(offset, length);
    report.blankInside(at(block, offset, length), written, written.replaceAll("\\s|\\.$", ""));
  }

  private void fault(Block block) {
    SyntaxFault fault = expressions.fault();
    report.error(
        block,
        fault.code(),
        at(block, fault.offset(), fault.length()),
        fault.what(),
        fault.why(),
        fault.fix());
    stopLine = true;
  }

  private void word(Block block, int c) {
    int start = pos;
    int letter = Characters.capital(c);
    if (letter != c) {
      report.lowerCase(block, lineStart, pos);
    }
    boolean letterFollows = Characters.isLetter(text.peek(pos + 1));
    if (letter == 'O') {
      if (atHead(block)) {
        programNumber(block);
      } else {
        letterO(block, start, start + 1);
      }
      return;
    }
    if (letterFollows && text.isStatement(pos)) {
      if (mayState(block)) {
        statement(block);
      } else {
        report.mixed(block, at(block, pos, 1), "control");
        stopLine = true;
      }
      return;
    }
    pos++;
    if (number.read(pos)) {
      numbered(block, letter, start);
    } else {
      withoutNumber(block, letter, start);
    }
  }

  private void numbered(Block block, int letter, int start) {
    pos = number.end();
    int length = pos - start;
    if (number.blankInside()) {
      blankInside(block, start, length);
    }
    int next = text.peek(pos);
    if (!number.reason().isEmpty()) {
      notNumber(block, start, number.reason());
    } else if (next == '.' || text.peek(text.skipBlanks(pos)) == '.') {
      notNumber(block, start, "it has two points");
    } else if (next == ',' && Characters.isDigit(text.peek(pos + 1))) {
      decimalComma(block, start);
    } else if (next == '+' || next == '-') {
      notNumber(block, start, "a sign stands before the digits");
    } else if (next == 'O' || next == 'o') {
      letterO(block, start, pos + 1);
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
      pos = at;
      notNumber(block, start, number.reason());
    } else if (number.decimals() < 0 && (next == '#' || next == '[' || text.isFunction(at))) {
      formula(block, letter, start);
    } else if (next == 'O' || next == 'o') {
      letterO(block, start, at + 1);
    } else if (next < 0) {
      pos = at;
      foreign(block);
    } else if (next == ',' && Characters.isDigit(text.peek(at + 1))) {
      pos = at;
      decimalComma(block, start);
    } else {
      int length = Math.max(1, text.trimmed(start, at) - start);
      report.noNumber(block, at(block, start, length), (char) letter);
      stopLine = true;
    }
  }

  private void notNumber(Block block, int start, String reason) {
    int length = text.numberLikeEnd(Math.max(pos, text.skipToPoint(pos))) - start;
    report.notNumber(block, at(block, start, length), source.text(start, length), reason);
    stopLine = true;
  }

  private void decimalComma(Block block, int start) {
    int length = text.numberLikeEnd(pos) - start;
    report.comma(block, at(block, start, length), source.text(start, length));
    stopLine = true;
  }

  private void letterO(Block block, int start, int last) {
    int stop = last;
    while (Characters.isDigit(text.peek(stop)) || Characters.capital(text.peek(stop)) == 'O') {
      stop++;
    }
    int length = stop - start;
    report.letterO(block, at(block, start, length), source.text(start, length));
    stopLine = true;
  }

  private void sequence(Block block, int start, int length) {
    Place place = null;
    int value = wholeNumber(block, start, length, 'N');
    if (value < 0) {
      return;
    }
    if (!atHead(block) || block.sequence() >= 0) {
      place = at(block, start, length);
      report.sequence(place, value, "not first");
    } else if (!quiet && sequences.get(value)) {
      place = at(block, start, length);
      report.sequence(place, value, "also in line " + firstLineOf(value));
    } else {
      sequences.set(value);
    }
    if (block.sequence() < 0) {
      block.sequence(value);
    }
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
          at(block, start, length),
          text + " is out of range 0 to 99999999",
          letter + " has one to eight digits",
          "correct it");
    } else {
      report.error(
          block,
          Code.WD10,
          at(block, start, length),
          text + " is not a whole number",
          letter + " is a number of something",
          "correct it");
    }
    stopLine = true;
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
    return line;
  }

  private void programNumber(Block block) {
    int start = pos++;
    char letter = (char) Characters.capital(bytes[start]);
    if (!number.read(pos)) {
      boolean zeroMeant = letter == 'O' && Characters.capital(text.peek(number.end())) == 'O';
      if (zeroMeant) {
        letterO(block, start, number.end() + 1);
      } else {
        report.noNumber(block, at(block, start, 1), letter);
        stopLine = true;
      }
      return;
    }
    pos = number.end();
    int length = pos - start;
    int next = text.peek(pos);
    if (next == 'O' || next == 'o') {
      letterO(block, start, pos + 1);
      return;
    }
    int value = wholeNumber(block, start, length, letter);
    if (value >= 0) {
      block.programNumber(value, start, length);
      sequences.clear();
      if (number.digits() > 4) {
        report.programNumber(at(block, start, length), source.text(start, length));
      }
    }
  }
}
