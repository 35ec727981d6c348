package flankfit.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Lines of a program: blocks numbered by tens, and comments in capitals as old controls want. */
final class Blocks {
  private static final int STEP = 10;

  private final List<String> lines = new ArrayList<>();
  private int number;

  /** A line as it stands, such as {@code %}. */
  void plain(String line) {
    lines.add(line);
  }

  /** A comment; brackets inside it would end it and become commas. */
  void comment(String text) {
    String ascii = text.replace('(', ',').replace(')', ' ').replaceAll("[^\\x20-\\x7e]", "-");
    lines.add("(" + ascii.strip().toUpperCase(Locale.ROOT) + ")");
  }

  /** A block with the next sequence number. */
  void block(String words) {
    number += STEP;
    lines.add("N" + number + " " + words);
  }

  List<String> lines() {
    return List.copyOf(lines);
  }

  /** The whole text; each line ends with a line feed. */
  String text() {
    return String.join("\n", lines) + "\n";
  }
}
