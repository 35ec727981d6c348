package flankfit.nc;

/** What single characters of a program are, and what look-alikes were meant to be. */
final class Characters {
  private Characters() {}

  static boolean isDigit(int c) {
    return c >= '0' && c <= '9';
  }

  static boolean isLetter(int c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
  }

  static int capital(int c) {
    return c >= 'a' && c <= 'z' ? c - 32 : c;
  }

  /** Leader, rub-out and flow control of tape and serial lines; read over. */
  static boolean isLeader(int c) {
    return c == 0 || c == 0x7F || c == 0x11 || c == 0x13;
  }

  static boolean isBlank(int c) {
    return c == ' ' || c == '\t' || isLeader(c);
  }

  static boolean endsLine(int c) {
    return c == '\n' || c == '\r';
  }

  /** What a foreign character looks like; empty text when like nothing. */
  static String meant(int codePoint) {
    if (codePoint >= 0xFF01 && codePoint <= 0xFF5E) {
      return String.valueOf((char) (codePoint - 0xFF01 + '!'));
    }
    return switch (codePoint) {
      case 0x2212, 0x2010, 0x2011, 0x2012, 0x2013, 0x2014, 0x2015, 0xFE63, 0xAD -> "-";
      case 0xA0, 0x2002, 0x2003, 0x2009, 0x202F, 0x3000, 0x200B, 0xFEFF -> "blank";
      case 0x2018, 0x2019, 0x201C, 0x201D, '"', '\'' -> "( or )";
      case 0x2024, 0x3002, 0xB7 -> ".";
      case '<' -> "LT";
      case '>' -> "GT";
      case '{' -> "( or [";
      case '}' -> ") or ]";
      default -> "";
    };
  }
}
