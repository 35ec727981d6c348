package flankfit.finding;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Reads the packaged pages, one file a code. A page is its meaning, then sections headed {@code ##
 * Mend}, {@code ## Setup sheet}, {@code ## Program}, {@code ## Request} and the same three with
 * {@code Mended} before them; cases stand between fences. Programs that the page does not hold
 * itself are packaged beside it, those that the control is tested with. A mended case that lacks a
 * part has that of the guilty one.
 */
public final class CodePages {
  private static final String FENCE = "```";
  private static final String HEAD = "## ";

  /** Lines of a packaged program that speak to its test alone. */
  private static final String FOR_THE_TEST = "; (expect|absent|sheet:)( .*)?";

  private CodePages() {}

  /**
   * The page of a code.
   *
   * @throws IllegalStateException if the page is not packaged or lacks a part
   */
  public static CodePage of(Code code) {
    Map<String, String> parts =
        parts(
            text("pages/" + code.name() + ".md")
                .orElseThrow(() -> new IllegalStateException("no page for " + code)));
    CodePage.Case guilty =
        new CodePage.Case(
            part(parts, "Request"),
            part(parts, "Setup sheet"),
            part(parts, "Program").or(() -> program(code.name())));
    CodePage.Case mended =
        new CodePage.Case(
            part(parts, "Mended request").or(guilty::request),
            part(parts, "Mended setup sheet").or(guilty::sheet),
            part(parts, "Mended program")
                .or(() -> program(code.name() + "-mended"))
                .or(guilty::program));
    return new CodePage(code, needed(code, parts, ""), needed(code, parts, "Mend"), guilty, mended);
  }

  private static Optional<String> part(Map<String, String> parts, String name) {
    return Optional.ofNullable(parts.get(name));
  }

  private static String needed(Code code, Map<String, String> parts, String name) {
    return part(parts, name)
        .filter(text -> !text.isBlank())
        .map(String::strip)
        .orElseThrow(
            () -> new IllegalStateException("the page of " + code + " lacks its part " + name));
  }

  private static Optional<String> program(String name) {
    return text("programs/" + name + ".nc")
        .map(
            text ->
                text.lines()
                    .filter(line -> !line.matches(FOR_THE_TEST))
                    .map(line -> line + "\n")
                    .collect(Collectors.joining()));
  }

  /** Sections by their heads; what stands before the first has the empty head. */
  private static Map<String, String> parts(String page) {
    Map<String, StringBuilder> parts = new LinkedHashMap<>();
    StringBuilder part = parts.computeIfAbsent("", key -> new StringBuilder());
    boolean fenced = false;
    for (String line : page.lines().toList()) {
      if (line.startsWith(FENCE)) {
        fenced = !fenced;
        if (fenced) {
          part.setLength(0);
        }
      } else if (!fenced && line.startsWith(HEAD)) {
        String head = line.substring(HEAD.length()).strip();
        part = parts.computeIfAbsent(head, key -> new StringBuilder());
      } else {
        part.append(line).append('\n');
      }
    }
    Map<String, String> texts = new LinkedHashMap<>();
    parts.forEach((head, text) -> texts.put(head, withoutEmptyEnd(text)));
    return texts;
  }

  private static String withoutEmptyEnd(StringBuilder text) {
    String whole = text.toString();
    int end = whole.length();
    while (end > 1 && whole.charAt(end - 1) == '\n' && whole.charAt(end - 2) == '\n') {
      end--;
    }
    return whole.substring(0, end).equals("\n") ? "" : whole.substring(0, end);
  }

  private static Optional<String> text(String name) {
    try (InputStream in = CodePages.class.getResourceAsStream(name)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
