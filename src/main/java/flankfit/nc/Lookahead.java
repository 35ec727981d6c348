package flankfit.nc;

/** Looks at the bytes that follow, without reading them. */
final class Lookahead {
  private static final String[] STATEMENTS = {"IF", "GOTO", "WHILE", "DO", "END", "THEN"};
  private static final String[] FUNCTIONS = {
    "SIN", "COS", "TAN", "ASIN", "ACOS", "ATAN", "SQRT", "ABS", "ROUND", "FIX", "FUP", "LN", "EXP"
  };

  private final SourceText source;
  private final byte[] bytes;
  private final int end;

  Lookahead(SourceText source, int end) {
    this.source = source;
    this.bytes = source.bytes();
    this.end = end;
  }

  int peek(int at) {
    return at < end ? bytes[at] : '\n';
  }

  int skipBlanks(int from) {
    int at = from;
    while (at < end && Characters.isBlank(bytes[at])) {
      at++;
    }
    return at;
  }

  /** Bytes of the character at an offset: by UTF-8 where that fits, else one. */
  int characterLength(int offset) {
    int b = bytes[offset] & 0xFF;
    int length = b >= 0xF0 ? 4 : b >= 0xE0 ? 3 : b >= 0xC0 ? 2 : 1;
    return offset + length <= end && source.isUtf8(offset, length) ? length : 1;
  }

  /** Whether text is nothing but words, one of them G, M or an axis. */
  boolean readsAsBlock(int from, int to) {
    boolean telling = false;
    int at = skipBlanks(from);
    while (at < to) {
      int letter = Characters.capital(bytes[at]);
      if (!Characters.isLetter(letter)) {
        return false;
      }
      telling |= letter == 'G' || letter == 'M' || (letter >= 'X' && letter <= 'Z');
      at = skipBlanks(at + 1);
      if (at < to && (bytes[at] == '-' || bytes[at] == '+')) {
        at++;
      }
      int digits = at;
      while (at < to && (Characters.isDigit(bytes[at]) || bytes[at] == '.')) {
        at++;
      }
      if (at == digits) {
        return false;
      }
      at = skipBlanks(at);
    }
    return telling;
  }

  boolean isStatement(int offset) {
    for (String statement : STATEMENTS) {
      if (spells(offset, statement)) {
        return true;
      }
    }
    return false;
  }

  boolean isFunction(int offset) {
    for (String function : FUNCTIONS) {
      if (spells(offset, function) && peek(skipBlanks(offset + function.length())) == '[') {
        return true;
      }
    }
    return false;
  }

  private boolean spells(int offset, String text) {
    for (int i = 0; i < text.length(); i++) {
      if (Characters.capital(peek(offset + i)) != text.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  int trimmed(int from, int to) {
    int last = to;
    while (last > from && Characters.isBlank(bytes[last - 1])) {
      last--;
    }
    return last;
  }

  int numberLikeEnd(int from) {
    int at = from;
    while (at < end && (Characters.isDigit(bytes[at]) || "+-.,".indexOf(bytes[at]) >= 0)) {
      at++;
    }
    return at;
  }

  int skipToPoint(int from) {
    int at = skipBlanks(from);
    return peek(at) == '.' ? at : from;
  }
}
