package flankfit.nc;

import flankfit.finding.Code;

/**
 * The text of a statement or a value, read from left to right: passes blanks and comments, keeps
 * the first fault, after which nothing follows.
 */
final class SyntaxText {
  private final SourceText source;
  private final byte[] bytes;
  private int begin;
  private int at;
  private int limit;
  private SyntaxFault fault = SyntaxFault.NONE;
  private boolean failed;
  private String remark = "";

  SyntaxText(SourceText source) {
    this.source = source;
    this.bytes = source.bytes();
  }

  /** Begins a statement or a value that ends before a limit. */
  void begin(int from, int before) {
    begin = from;
    at = from;
    limit = before;
    failed = false;
    remark = "";
  }

  /** The last comment that was passed; empty text for none. */
  String remark() {
    return remark;
  }

  /** Where reading stands: after what was read. */
  int at() {
    return at;
  }

  void moveTo(int offset) {
    at = offset;
  }

  /** The fault, when {@link #failed}. */
  SyntaxFault fault() {
    return fault;
  }

  boolean failed() {
    return failed;
  }

  /** The first fault stays; nothing is read after it. */
  void fail(Code code, int offset, int length, String what, String why, String fix) {
    if (!failed) {
      failed = true;
      fault = new SyntaxFault(code, offset, length, what, why, fix);
    }
    at = limit;
  }

  /** FL01, or FL02 when the brackets are to blame. */
  void expected(String wanted) {
    int opened = count('[');
    int closed = count(']');
    if (opened != closed) {
      brackets(opened, closed);
      return;
    }
    int last = trimmed(limit);
    String rest = at >= last ? "the end" : source.text(at, Math.min(last - at, 20));
    String text = source.text(begin, Math.max(0, last - begin));
    fail(
        Code.FL01,
        begin,
        Math.max(1, last - begin),
        text + ": not an assignment, condition or value",
        "expected " + wanted + " at " + rest,
        "write #i = value, IF [a EQ b] GOTO n, or a letter and [value]");
  }

  /** FL02. */
  void unbalanced() {
    brackets(count('['), count(']'));
  }

  private void brackets(int opened, int closed) {
    fail(
        Code.FL02,
        begin,
        Math.max(1, trimmed(limit) - begin),
        "brackets do not balance",
        opened + " opened, " + closed + " closed; " + ExpressionParser.DEEPEST + " deep at most",
        "close them; ( ) is a comment");
  }

  private int count(int bracket) {
    int found = 0;
    boolean comment = false;
    for (int i = begin; i < limit; i++) {
      comment = bytes[i] == '(' || (comment && bytes[i] != ')');
      found += !comment && bytes[i] == bracket ? 1 : 0;
    }
    return found;
  }

  /** The end without blanks and comments before it. */
  int trimmed(int to) {
    int last = begin;
    boolean comment = false;
    for (int i = begin; i < to; i++) {
      comment = bytes[i] == '(' || (comment && bytes[i] != ')');
      if (!comment && bytes[i] != ')' && !Characters.isBlank(bytes[i])) {
        last = i + 1;
      }
    }
    return last;
  }

  /** The next byte that means something, as a capital; a line end at the limit. */
  int peek() {
    while (at < limit) {
      int c = bytes[at];
      if (c == '(') {
        comment();
      } else if (Characters.isBlank(c)) {
        at++;
      } else {
        return Characters.capital(c);
      }
    }
    return '\n';
  }

  private void comment() {
    int start = at;
    at++;
    while (at < limit && bytes[at] != ')' && bytes[at] != '(') {
      at++;
    }
    if (at >= limit) {
      fail(
          Code.RD08,
          start,
          limit - start,
          "comment is not closed",
          "everything after ( would be lost",
          "add )");
    } else if (bytes[at] == '(') {
      fail(
          Code.RD09,
          at,
          1,
          "parentheses do not match",
          "comments cannot be nested",
          "use only one pair; brackets [ ] for arithmetic");
    } else {
      remark = source.text(start + 1, at - start - 1).strip();
      at++;
    }
  }

  /** Reads a word in letters if it stands here. */
  boolean take(String word) {
    if (peek() != word.charAt(0) || !spells(at, word)) {
      return false;
    }
    at += word.length();
    return true;
  }

  /** Whether a word in letters stands here. */
  boolean sees(String word) {
    return peek() == word.charAt(0) && spells(at, word);
  }

  /** Whether a word in letters stands at the very place. */
  boolean spells(String word) {
    return spells(at, word);
  }

  private boolean spells(int from, String word) {
    if (from + word.length() > limit) {
      return false;
    }
    for (int i = 0; i < word.length(); i++) {
      if (Characters.capital(bytes[from + i]) != word.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** Where the statement or value ends at the latest. */
  int limit() {
    return limit;
  }
}
