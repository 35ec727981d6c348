package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.CodePage;
import java.util.Optional;
import java.util.regex.Pattern;

/** The page of a code for a person: meaning, mending, the guilty case, the mended one. */
final class CodePageText {
  private static final String INDENT = "  ";
  private static final Pattern PARAGRAPHS = Pattern.compile("\n\n+");

  private final StringBuilder out = new StringBuilder();
  private final Style style;

  private CodePageText(Style style) {
    this.style = style;
  }

  /** The text. */
  static String of(CodePage page, Style style) {
    CodePageText text = new CodePageText(style);
    text.head(page.code());
    text.paragraphs("means", page.meaning());
    text.paragraphs("mend", page.mending());
    CodePage.Case guilty = page.guilty();
    CodePage.Case mended = page.mended();
    text.lines("raised by the request", guilty.request());
    text.lines("raised by", guilty.program());
    text.lines(guilty.program().isPresent() ? "with the setup sheet" : "raised by", guilty.sheet());
    text.lines("mended request", changed(mended.request(), guilty.request()));
    text.lines("mended", changed(mended.program(), guilty.program()));
    text.lines("mended setup sheet", changed(mended.sheet(), guilty.sheet()));
    Cautions.write(text.out);
    return text.out.toString();
  }

  private static Optional<String> changed(Optional<String> mended, Optional<String> guilty) {
    return mended.equals(guilty) ? Optional.empty() : mended;
  }

  private void head(Code code) {
    String name = code.severity().word() + " " + code.name();
    out.append(style.severity(code.severity(), name)).append(' ').append(code.inWords());
    out.append(code.stops() ? "; it stops what is read or run there\n" : "\n");
  }

  private void paragraphs(String name, String text) {
    out.append('\n').append(style.strong(name)).append('\n');
    String between = "";
    for (String paragraph : PARAGRAPHS.split(text, -1)) {
      out.append(between).append(INDENT);
      FindingText.wrap(paragraph.replace('\n', ' '), INDENT, out);
      between = "\n";
    }
  }

  private void lines(String name, Optional<String> text) {
    if (text.isPresent()) {
      out.append('\n').append(style.strong(name)).append('\n');
      text.get()
          .lines()
          .forEach(line -> out.append(line.isEmpty() ? "" : INDENT).append(line).append('\n'));
      if (text.get().isEmpty()) {
        out.append(INDENT).append("(nothing: the file is empty)\n");
      }
    }
  }
}
