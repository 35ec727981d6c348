package flankfit.nc;

import java.util.function.ObjIntConsumer;

/** Reads statements, and words whose value is to be computed. */
final class FlowReader {
  private final byte[] bytes;
  private final int limit;
  private final Cursor cursor;
  private final ReadingFindings report;
  private final Lookahead text;
  private final ExpressionParser expressions;
  private final StatementParser statements;
  private final ObjIntConsumer<Block> sign;

  /**
   * Has read nothing yet.
   *
   * @param limit offset after the program
   * @param sign reads or reports a character that belongs to no statement
   */
  FlowReader(
      SourceText source,
      int limit,
      Cursor cursor,
      ReadingFindings report,
      Lookahead text,
      ObjIntConsumer<Block> sign) {
    this.bytes = source.bytes();
    this.limit = limit;
    this.cursor = cursor;
    this.report = report;
    this.text = text;
    this.sign = sign;
    expressions = new ExpressionParser(source, limit);
    statements = new StatementParser(expressions);
  }

  /** A sign of a variable or an expression where no word has just begun. */
  void sign(Block block) {
    if (bytes[cursor.pos] == '#' && block.mayState()) {
      statement(block);
      return;
    }
    int last = text.trimmed(cursor.pos, flowEnd(cursor.pos));
    expressions.begin(cursor.pos, last);
    if (bytes[cursor.pos] == '#') {
      report.mixed(block, cursor.place(block, cursor.pos, last - cursor.pos), "assignment");
    } else {
      expressions.expected("a letter");
      fault(block);
    }
    cursor.stopLine = true;
  }

  /** Where a statement or value ends at the latest: before a semicolon outside comments. */
  private int flowEnd(int from) {
    boolean comment = false;
    int at = from;
    while (at < limit && !Characters.endsLine(bytes[at]) && (comment || bytes[at] != ';')) {
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
        cursor.pos = i;
        sign.accept(block, c);
        return false;
      }
    }
    return true;
  }

  /** An assignment, a jump or a loop; nothing but comments may follow in its block. */
  void statement(Block block) {
    int before = flowEnd(cursor.pos);
    if (!isProgramText(block, cursor.pos, before)) {
      return;
    }
    Statement read = statements.read(cursor.pos, before);
    if (expressions.failed()) {
      fault(block);
      return;
    }
    expressions
        .blankInside()
        .ifPresent(b -> report.blankInside(block, cursor.lineStart, b.offset(), b.length()));
    block.statement(expressions.remark().isEmpty() ? read : read.withRemark(expressions.remark()));
    cursor.pos = before;
  }

  /** A word whose value is a variable, an expression or a function. */
  void formula(Block block, int letter, int start) {
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
    expressions
        .blankInside()
        .ifPresent(b -> report.blankInside(block, cursor.lineStart, b.offset(), b.length()));
    cursor.pos = expressions.at();
    block.addFormula(letter, value, start, cursor.pos - start);
  }

  private void fault(Block block) {
    SyntaxFault fault = expressions.fault();
    report.error(
        block,
        fault.code(),
        cursor.place(block, fault.offset(), fault.length()),
        fault.what(),
        fault.why(),
        fault.fix());
    cursor.stopLine = true;
  }
}
