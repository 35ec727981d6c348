package flankfit.nc;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import java.util.Locale;

/** Words the findings of reading; the reader says only what and where. */
final class ReadingFindings {
  private final SourceText source;
  private final Findings findings;
  private boolean lowerCase;
  private boolean encoding;

  ReadingFindings(SourceText source, Findings findings) {
    this.source = source;
    this.findings = findings;
  }

  Place place(Block block, int lineStart, int at, int length) {
    return source.place(block.line(), lineStart, at, length);
  }

  /** An error that stops; only a warning in a deleted block. */
  void error(Block block, Code code, Place place, String what, String why, String fix) {
    if (block.deleted()) {
      findings.add(new Finding(code, Severity.WARNING, place, what, why, fix));
      return;
    }
    block.fault(code);
    findings.add(code, place, what, why, fix);
  }

  void unknownCharacter(Block block, Place place, int codePoint) {
    String meant = Characters.meant(codePoint);
    String shown =
        codePoint < 0x20 || Character.isISOControl(codePoint)
            ? "control character"
            : Character.toString(codePoint);
    String hex = String.format(Locale.ROOT, "U+%04X", codePoint);
    error(
        block,
        Code.RD05,
        place,
        shown + " (" + hex + ") is not a program character",
        meant.isEmpty() ? "unknown" : "looks like " + meant,
        meant.isEmpty() ? "take it out" : "type " + meant);
  }

  void misplacedCharacter(Block block, Place place, char c, String why, String fix) {
    String hex = String.format(Locale.ROOT, "U+%04X", (int) c);
    error(block, Code.RD05, place, c + " (" + hex + ") has no meaning here", why, fix);
  }

  void noNumber(Block block, Place place, char letter) {
    error(
        block,
        Code.RD06,
        place,
        letter + " has no number",
        "a word is a letter and a number",
        "write the number, or delete the letter");
  }

  void noLetter(Block block, Place place, String text) {
    error(
        block,
        Code.RD06,
        place,
        text + " has no letter",
        "a word is a letter and a number",
        "write the letter, or delete the number");
  }

  void comma(Block block, Place place, String text) {
    error(
        block,
        Code.RD07,
        place,
        text + ": decimal comma",
        "the decimal sign is a point",
        withoutComma(text));
  }

  /** How a number with a comma is written: with a point, unless it has one already. */
  static String withoutComma(String text) {
    return text.indexOf('.') < 0 ? "write " + text.replace(',', '.') : "write one number";
  }

  void commentOpen(Block block, Place place) {
    error(
        block,
        Code.RD08,
        place,
        "comment is not closed",
        "everything after ( would be lost",
        "add )");
  }

  void parentheses(Block block, Place place) {
    error(
        block,
        Code.RD09,
        place,
        "parentheses do not match",
        "comments cannot be nested",
        "use only one pair; brackets [ ] for arithmetic");
  }

  void blankInside(Block block, int lineStart, int at, int length) {
    String text = source.text(at, length);
    String value = text.replaceAll("\\s|\\.$", "");
    findings.add(
        Code.RD10,
        place(block, lineStart, at, length),
        text + " is read as " + value,
        "blanks mean nothing",
        "close the gap, or add the missing letter");
  }

  void lowerCase(Block block, int lineStart, int at) {
    if (!lowerCase) {
      lowerCase = true;
      findings.add(
          Code.RD11,
          place(block, lineStart, at, 1),
          "lower-case letters are read as capitals",
          "some controls refuse them",
          "write capitals");
    }
  }

  void notNumber(Block block, Place place, String text, String reason) {
    error(block, Code.RD12, place, text + " is not a number", reason, "write one number");
  }

  void letterO(Block block, Place place, String text) {
    error(
        block,
        Code.RD14,
        place,
        "letter O in " + text,
        "a program number cannot stand here",
        "write the digit 0");
  }

  void afterSemicolon(Place place) {
    findings.add(
        Code.RD17,
        place,
        "the text after ; is not executed",
        "; starts a comment (semicolon = comment)",
        "start a new line, or set semicolon = end-of-block");
  }

  void longLine(Block block, Place place, int length, boolean tooLong) {
    String what = "line of " + length + " characters";
    String why = "many controls stop reading at 256";
    String fix = "break the block";
    if (tooLong) {
      block.fault(Code.RD18);
      findings.add(new Finding(Code.RD18, Severity.ERROR, place, what, why, fix));
    } else {
      findings.add(Code.RD18, place, what, why, fix);
    }
  }

  void slash(Block block, Place place) {
    error(
        block,
        Code.RD20,
        place,
        "/ in the middle of a block",
        "block delete stands first",
        "move it to the start, or bracket the division");
  }

  void mixed(Block block, Place place, String what) {
    error(
        block,
        Code.FL07,
        place,
        "words and " + what + " in one block",
        "controls differ about the order",
        "two blocks");
  }

  void sequence(Place place, int number, String how) {
    findings.add(
        Code.RD21, place, "N" + number + " " + how, "a jump to it would be ambiguous", "renumber");
  }

  void encoding(Block block, int lineStart, int at, int length) {
    if (!encoding && !source.isUtf8(at, length)) {
      encoding = true;
      findings.add(
          Code.RD24,
          place(block, lineStart, at, length),
          "comment read as ISO 8859-1",
          "the encoding is not stated in the file",
          "save as UTF-8");
    }
  }

  void programNumber(Place place, String text) {
    findings.add(
        Code.RD22,
        place,
        "program number " + text,
        "older controls know four digits",
        "none needed");
  }
}
