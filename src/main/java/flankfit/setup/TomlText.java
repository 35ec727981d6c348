package flankfit.setup;

import flankfit.finding.Code;
import flankfit.finding.Place;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;

/** Parses TOML, or reports every fault of its syntax with line and column. */
final class TomlText {
  private static final int DEEPEST = 32;
  private static final Pattern TEXT_OR_COMMENT =
      Pattern.compile("\"[^\"\\n]*+\"|'[^'\\n]*+'|#[^\\n]*+");

  private final SheetLog log;
  private final String kind;

  /**
   * Prepares.
   *
   * @param log where to report
   * @param kind what the text is, such as {@code a setup sheet}
   */
  TomlText(SheetLog log, String kind) {
    this.log = log;
    this.kind = kind;
  }

  /** The top table, where the text is one; else the faults are reported. */
  Optional<TomlTable> parse(String file) {
    String text = file.startsWith("\uFEFF") ? file.substring(1) : file;
    if (depth(text) > DEEPEST) {
      log.report(
          Code.SH01,
          Place.file(log.file()),
          "lists or tables are nested more than " + DEEPEST + " deep",
          "no value of " + kind + " is nested so deep",
          "close the brackets");
      return Optional.empty();
    }
    TomlParseResult result = Toml.parse(text);
    result.errors().forEach(this::reportSyntax);
    return result.hasErrors() ? Optional.empty() : Optional.of(result);
  }

  /** How deep brackets nest outside text and comments; the parser recurses once for each. */
  private static int depth(String text) {
    int depth = 0;
    int deepest = 0;
    for (char c : TEXT_OR_COMMENT.matcher(text).replaceAll("").toCharArray()) {
      if (c == '[' || c == '{') {
        deepest = Math.max(deepest, ++depth);
      } else if ((c == ']' || c == '}') && depth > 0) {
        depth--;
      }
    }
    return deepest;
  }

  private void reportSyntax(TomlParseError error) {
    String message = String.valueOf(error.getMessage());
    String what = message.isEmpty() ? "the text is no TOML" : lowerFirst(message);
    log.report(
        Code.SH01, log.place(error.position()), what, kind + " is TOML 1.0", syntaxFix(message));
  }

  private static String lowerFirst(String message) {
    if (message.endsWith(" .")) {
      return lowerFirst(message.substring(0, message.length() - 1) + "'.'");
    }
    boolean sentence = message.length() > 1 && Character.isLowerCase(message.charAt(1));
    return sentence ? Character.toLowerCase(message.charAt(0)) + message.substring(1) : message;
  }

  private static String syntaxFix(String message) {
    if (message.contains("Unexpected ','")) {
      return "write a decimal point, not a comma";
    }
    if (message.contains("Unexpected '.'")) {
      return "write a digit before and after the decimal point";
    }
    if (message.contains("previously defined")) {
      return "keep one of the two, or head a list of tables with [[ ]]";
    }
    return message.contains("a number, a boolean") ? "write a value; text stands in quotes" : "";
  }
}
