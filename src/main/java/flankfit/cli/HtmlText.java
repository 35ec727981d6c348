package flankfit.cli;

/** Text as HTML: nothing in it can be taken for a tag. */
final class HtmlText {
  private HtmlText() {}

  /** The text with what means something in HTML spelt out. */
  static String escaped(String words) {
    StringBuilder out = new StringBuilder(words.length() + 16);
    for (int i = 0; i < words.length(); i++) {
      char c = words.charAt(i);
      switch (c) {
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '&' -> out.append("&amp;");
        case '"' -> out.append("&quot;");
        default -> out.append(c < ' ' || c == 0x7F ? ' ' : c);
      }
    }
    return out.toString();
  }
}
