package flankfit.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Comments that a control displays: those that begin with {@code MSG,}, blanks and lower case
 * allowed (NIST RS274/NGC interpreter, 3.3.4).
 */
final class Messages {
  private static final String MARK = "MSG,";

  private Messages() {}

  /** The messages in the comments of a line or block, in order. */
  static List<String> in(String text) {
    List<String> messages = new ArrayList<>();
    int at = 0;
    while (at < text.length() && text.charAt(at) != ';') {
      int end = text.charAt(at) == '(' ? text.indexOf(')', at) : at;
      if (end < 0) {
        break;
      }
      if (end > at) {
        add(text.substring(at + 1, end), messages);
      }
      at = end + 1;
    }
    return messages;
  }

  private static void add(String comment, List<String> messages) {
    int comma = comment.indexOf(',');
    if (comma < 0) {
      return;
    }
    String begin = comment.substring(0, comma + 1).replaceAll("[ \t]", "");
    if (begin.toUpperCase(Locale.ROOT).equals(MARK)) {
      messages.add(comment.substring(comma + 1).strip());
    }
  }

  /** Whether a line holds nothing but blanks and comments. */
  static boolean isAllComment(String line) {
    String rest = line.replaceAll("\\([^)]*\\)", "").strip();
    return rest.isEmpty() || rest.charAt(0) == ';';
  }
}
