package flankfit.nc;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.finding.Severity;

/**
 * Looks over a file once, as it is read or at once: whether it is program text at all, and which
 * part lies between the percent marks. Reports RD01 to RD04. Text is taken for program as long as
 * no control character and no percent mark but one at its head was seen; at the first one the rest
 * is looked over, and then it may turn out that the program begins elsewhere or nowhere.
 */
final class FileCheck {
  private static final String EMPTY = "it is empty";

  private static final double MOST_CONTROL_CHARACTERS = 0.01;

  /** Bytes that are looked at in one go before they are read. */
  private static final int STRETCH = 4096;

  private final SourceText source;
  private final byte[] bytes;
  private final PlainBytes plain;

  /** Takes what is known too early: it is found again when all has been looked at. */
  private Findings findings = new Findings();

  private String reason;
  private int head;
  private int first;
  private int looked;
  private boolean complete;
  private int begin;
  private int end;
  private int firstLine = 1;
  private int marks;
  private int openAt;
  private int closeAt;
  private boolean textBeforeOpen;
  private int leaders;
  private int firstLeaderAt;

  private FileCheck(SourceText source) {
    this.source = source;
    this.bytes = source.bytes();
    this.end = bytes.length;
    reason = notText();
    plain = new PlainBytes(bytes, end);
  }

  /** Looks over a file; gives the part that is program, or an empty one after RD01. */
  static FileCheck of(SourceText source, Findings findings) {
    FileCheck check = new FileCheck(source);
    check.complete(findings);
    return check;
  }

  /** Looks at the head of a file only, unless that tells that it is no program text. */
  static FileCheck begun(SourceText source, Findings findings) {
    FileCheck check = new FileCheck(source);
    if (check.reason.isEmpty()) {
      check.openingMark();
    } else {
      check.complete(findings);
    }
    return check;
  }

  /** A percent mark that begins the text, after blanks and empty lines. */
  private void openingMark() {
    int at = head;
    while (bytes[at] == ' ' || bytes[at] == '\t' || Characters.endsLine(bytes[at])) {
      at++; // what is trimmed at the end holds all other blanks
    }
    if (bytes[at] == '%') {
      mark(at, false);
      looked = at + 1;
      open();
    }
  }

  /**
   * Looks on to a line end behind an offset.
   *
   * @param offset where a line begins; everything before it is known to be plain
   * @return whether nothing stands there that asks for a look at the whole file
   */
  boolean lookOn(int offset) {
    looked = Math.max(looked, offset);
    int to = Math.min(end, looked + STRETCH);
    while (to < end && !Characters.endsLine(bytes[to - 1])) {
      to++;
    }
    int at = plain.firstOther(looked, to);
    while (at < to && (bytes[at] == '\t' || (bytes[at] == '%' && !startsLine(first, at)))) {
      at = plain.firstOther(at + 1, to);
    }
    looked = at;
    return at == to;
  }

  /** Offset before which all bytes have been looked at; after a line end, or the end of all. */
  int looked() {
    return looked;
  }

  /** Whether all of the file has been looked at. */
  boolean isComplete() {
    return complete;
  }

  /**
   * Looks over the rest of the file; gives the part that is program, or an empty one after RD01.
   */
  void complete(Findings taker) {
    complete = true;
    findings = taker;
    if (reason.isEmpty()) {
      begin = head;
      firstLine = 1;
      reason = scan();
    }
    if (!reason.isEmpty()) {
      findings.add(
          Code.RD01,
          Place.file(source.file()),
          "the file is not program text",
          reason,
          reason.equals(EMPTY)
              ? "write the program into it, or name the file that holds it"
              : "save it as plain text");
      end = 0;
      return;
    }
    skipped();
    percentMarks();
  }

  /** Offset where the program begins. */
  int begin() {
    return begin;
  }

  /** Offset after the program. */
  int end() {
    return end;
  }

  /** Line of the first byte of the program. */
  int firstLine() {
    return firstLine;
  }

  /** Whether the file holds no program at all. */
  boolean refused() {
    return end == 0;
  }

  private int at(int i) {
    return i < bytes.length ? bytes[i] & 0xFF : -1;
  }

  private String notText() {
    if ((at(0) == 0xFE && at(1) == 0xFF) || (at(0) == 0xFF && at(1) == 0xFE)) {
      return "it begins with the mark of UTF-16 or UTF-32";
    }
    if (at(0) == 0 && at(1) == 0 && at(2) == 0xFE && at(3) == 0xFF) {
      return "it begins with the mark of UTF-32";
    }
    head = at(0) == 0xEF && at(1) == 0xBB && at(2) == 0xBF ? 3 : 0;
    begin = head;
    leaders = head == 0 ? 0 : 1;
    firstLeaderAt = head;
    while (end > head && isTrailer(bytes[end - 1])) {
      end--;
    }
    if (end <= head) {
      return EMPTY;
    }
    first = head;
    while (first < end && Characters.isLeader(bytes[first])) {
      first++;
    }
    leaders += first - head;
    looked = first;
    return "";
  }

  /** End marks of old systems, leader and blank space after the last character. */
  private static boolean isTrailer(int b) {
    return b == 0x1A || b == 4 || Characters.isBlank(b) || Characters.endsLine(b);
  }

  /** Looks at all bytes that are left: counts control characters, finds the percent lines. */
  private String scan() {
    int control = 0;
    int at = plain.firstOther(looked);
    while (at < end) {
      byte b = bytes[at];
      if (b == '%') {
        if (startsLine(first, at)) {
          mark(at, marks == 0 && holdsText(first, at));
        }
      } else if (b != '\t') {
        control++;
        leader(at);
      }
      at = plain.firstOther(at + 1);
    }
    return control > MOST_CONTROL_CHARACTERS * (end - first)
        ? control + " of its " + (end - first) + " characters are control characters"
        : "";
  }

  /** Whether a byte is neither blank nor control character nor line end. */
  private static boolean isText(byte b) {
    return b < 0 || (b > ' ' && b != 0x7F);
  }

  /** Whether no text stands before an offset in its line. */
  private boolean startsLine(int first, int at) {
    int before = at - 1;
    while (before >= first && !isText(bytes[before]) && !Characters.endsLine(bytes[before])) {
      before--;
    }
    return before < first || !isText(bytes[before]);
  }

  private boolean holdsText(int from, int to) {
    for (int i = from; i < to; i++) {
      if (isText(bytes[i])) {
        return true;
      }
    }
    return false;
  }

  /** Line of a byte that ends none; counted only for what is told of. */
  private int lineOf(int at) {
    int line = 1;
    for (int i = 0; i < at; i++) {
      byte b = bytes[i];
      if (b == '\n' || (b == '\r' && bytes[i + 1] != '\n')) {
        line++;
      }
    }
    return line;
  }

  private void leader(int at) {
    if (Characters.isLeader(bytes[at])) {
      if (leaders == 0) {
        firstLeaderAt = at;
      }
      leaders++;
    }
  }

  private void mark(int at, boolean textBefore) {
    marks++;
    if (marks == 1) {
      openAt = at;
      textBeforeOpen = textBefore;
    } else if (marks == 2) {
      closeAt = at;
    }
  }

  private void skipped() {
    int trailing = 0;
    for (int i = end; i < bytes.length; i++) {
      trailing += Characters.isLeader(bytes[i]) ? 1 : 0;
    }
    if (leaders + trailing > 0) {
      findings.add(
          Code.RD04,
          new Place(source.file(), leaders > 0 ? lineOf(firstLeaderAt) : 0, 0, 0),
          (leaders + trailing) + " leader or control characters were skipped",
          "left over from a tape or a serial line",
          "none needed");
    }
  }

  private void percentMarks() {
    if (marks == 0) {
      return;
    }
    if (marks == 1) {
      boolean opens = !textBeforeOpen;
      findings.add(
          Code.RD03,
          new Place(source.file(), lineOf(openAt), 1, 1),
          "the " + (opens ? "closing" : "opening") + " % is missing",
          "the file may have been cut short",
          "check the end of the file, add the %");
      if (opens) {
        open();
      } else {
        close(openAt);
      }
      return;
    }
    outside(begin, openAt);
    close(closeAt);
    open();
  }

  private void open() {
    begin = openAt + 1;
    firstLine = lineOf(openAt);
    int next = begin;
    while (next < end && Characters.isBlank(bytes[next])) {
      next++;
    }
    int c = next < end ? Characters.capital(bytes[next]) : '\n';
    if (c != 'O' && c != ':' && c != '(' && c != ';') {
      int lineEnd = lineEnd(next);
      outside(next, lineEnd);
      begin = lineEnd;
    }
  }

  private void close(int at) {
    outside(at + 1, end);
    end = at;
  }

  private int lineEnd(int from) {
    int i = from;
    while (i < end && !Characters.endsLine(bytes[i])) {
      i++;
    }
    return i;
  }

  /** RD02 for a stretch of text that is not program. */
  private void outside(int from, int to) {
    int count = 0;
    int firstFound = from;
    boolean words = false;
    int at = from;
    while (at < to) {
      int stop = at;
      boolean text = false;
      while (stop < to && !Characters.endsLine(bytes[stop])) {
        text |= !Characters.isBlank(bytes[stop]);
        stop++;
      }
      if (text) {
        firstFound = count == 0 ? at : firstFound;
        count++;
        words |= holdsWord(at, stop);
      }
      if (stop + 1 < to && bytes[stop] == '\r' && bytes[stop + 1] == '\n') {
        stop++;
      }
      at = stop + 1;
    }
    if (count > 0) {
      report(count, lineOf(firstFound), words);
    }
  }

  private void report(int count, int line, boolean words) {
    findings.add(
        new Finding(
            Code.RD02,
            words ? Severity.WARNING : Severity.NOTE,
            new Place(source.file(), line, 0, 0),
            count
                + (count == 1 ? " line" : " lines")
                + " outside the % marks: not part of the program",
            "a control reads only what lies between the marks",
            "move them inside, or delete them"));
  }

  private boolean holdsWord(int from, int to) {
    for (int i = from; i + 1 < to; i++) {
      boolean startsWord = i == from || !Characters.isLetter(bytes[i - 1]);
      if (startsWord && Characters.isLetter(bytes[i])) {
        int next = i + 1;
        while (next < to && (Characters.isBlank(bytes[next]) || bytes[next] == '-')) {
          next++;
        }
        if (next < to && (Characters.isDigit(bytes[next]) || bytes[next] == '.')) {
          return true;
        }
      }
    }
    return false;
  }
}
