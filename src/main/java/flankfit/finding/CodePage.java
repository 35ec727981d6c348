package flankfit.finding;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;

/**
 * What a code means and how to mend it, with the smallest case that raises it and its mended form.
 *
 * @param code the code; its name, severity and stop stand there
 * @param meaning what it means for part, cutter or gauge; paragraphs parted by empty lines
 * @param mending how to mend it
 * @param guilty smallest case that raises it
 * @param mended the same case in order
 */
public record CodePage(Code code, String meaning, String mending, Case guilty, Case mended) {
  public CodePage {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(meaning, "meaning");
    Objects.requireNonNull(mending, "mending");
    Objects.requireNonNull(guilty, "guilty");
    Objects.requireNonNull(mended, "mended");
  }

  /**
   * One case: what is written and asked for.
   *
   * @param request command and its words; empty when any command shows it
   * @param sheet setup sheet; empty when none is needed
   * @param program milling program, where {@code \xNN} stands for the byte NN (hexadecimal); empty
   *     when the sheet or the request alone shows it
   */
  public record Case(Optional<String> request, Optional<String> sheet, Optional<String> program) {
    public Case {
      Objects.requireNonNull(request, "request");
      Objects.requireNonNull(sheet, "sheet");
      Objects.requireNonNull(program, "program");
    }

    /** The bytes of the program's file; none when there is no program. */
    public byte[] programBytes() {
      byte[] text = program.orElse("").getBytes(StandardCharsets.UTF_8);
      ByteArrayOutputStream out = new ByteArrayOutputStream(text.length);
      int at = 0;
      while (at < text.length) {
        int value = escaped(text, at);
        out.write(value < 0 ? text[at] : value);
        at += value < 0 ? 1 : 4;
      }
      return out.toByteArray();
    }

    /** The byte that four characters stand for; -1 when they stand for themselves. */
    private static int escaped(byte[] text, int at) {
      if (at + 3 >= text.length || text[at] != '\\' || text[at + 1] != 'x') {
        return -1;
      }
      int high = Character.digit(text[at + 2], 16);
      int low = Character.digit(text[at + 3], 16);
      return high < 0 || low < 0 ? -1 : high * 16 + low;
    }
  }
}
