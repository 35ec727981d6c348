package flankfit.nc;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Findings;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The short ways through plain text against the long ways. */
class PlainReadingProperties {
  private static final String NUMBER = "0123456789.0123456789.-+ O";
  private static final String BYTES = "XY12.\n\r\t %\u0000\u001A\u007F\u00A5\u008A\u008D";

  private static Block read(String text, Findings findings) {
    SourceText source = SourceText.of("a.nc", text.getBytes(StandardCharsets.US_ASCII));
    Block block = new Block(source);
    new BlockReader(source, new ReadingRules(false, List.of()), findings).next(block);
    return block;
  }

  /** A blank after a word keeps it from being plain. */
  @Test
  void a_plain_word_reads_like_one_with_a_blank_after_it() {
    Random random = new Random(20);
    for (int round = 0; round < 20000; round++) {
      StringBuilder number = new StringBuilder();
      int length = 1 + random.nextInt(19);
      int kinds = round % 3 == 0 ? NUMBER.length() : 11;
      for (int i = 0; i < length; i++) {
        number.append(NUMBER.charAt(random.nextInt(kinds)));
      }
      String sign = random.nextBoolean() ? "-" : "";
      Findings plainFindings = new Findings();
      Findings longFindings = new Findings();
      Block plain = read("X" + sign + number + "\nM30\n", plainFindings);
      Block slow = read("X" + sign + number + " \nM30\n", longFindings);
      assertThat(plain.size()).as("%s%s", sign, number).isEqualTo(slow.size());
      assertThat(plainFindings.sorted()).isEqualTo(longFindings.sorted());
      if (plain.size() == 1) {
        assertThat(plain.letter(0)).isEqualTo(slow.letter(0));
        assertThat(Double.doubleToRawLongBits(plain.value(0)))
            .as("%s%s", sign, number)
            .isEqualTo(Double.doubleToRawLongBits(slow.value(0)));
        assertThat(plain.digits(0)).isEqualTo(slow.digits(0));
        assertThat(plain.hadPoint(0)).isEqualTo(slow.hadPoint(0));
        assertThat(plain.decimals(0)).isEqualTo(slow.decimals(0));
        assertThat(plain.place(0)).isEqualTo(slow.place(0));
      }
    }
  }

  @Test
  void a_plain_number_is_exactly_rounded() {
    Random random = new Random(21);
    for (int round = 0; round < 20000; round++) {
      String digits = String.valueOf(Math.abs(random.nextLong() % 1_000_000_000_000_000L));
      int point = random.nextInt(digits.length() + 1);
      String number = digits.substring(0, point) + "." + digits.substring(point);
      Block block = read("X" + number + "Y0.\nM30\n", new Findings());
      assertThat(block.value(0)).as(number).isEqualTo(Double.parseDouble(number));
    }
  }

  @Test
  void eight_bytes_at_once_find_what_one_after_the_other_find() {
    Random random = new Random(22);
    for (int round = 0; round < 20000; round++) {
      int rare = 5 + random.nextInt(BYTES.length() - 4);
      byte[] bytes = new byte[random.nextInt(40)];
      for (int i = 0; i < bytes.length; i++) {
        boolean any = random.nextInt(12) == 0;
        bytes[i] = (byte) BYTES.charAt(random.nextInt(any ? rare : 7));
      }
      PlainBytes plain = new PlainBytes(bytes, bytes.length);
      int feeds = 0;
      for (int from = 0; from <= bytes.length; ) {
        int wanted = from;
        while (wanted < bytes.length && !isSeen(bytes[wanted])) {
          feeds += bytes[wanted++] == '\n' ? 1 : 0;
        }
        assertThat(plain.firstOther(from)).isEqualTo(wanted);
        assertThat(plain.lineFeeds()).isEqualTo(feeds);
        from = wanted + 1;
      }
    }
  }

  private static boolean isSeen(byte b) {
    return b == '%' || b == 0x7F || (b >= 0 && b < 0x20 && b != '\n' && b != '\r');
  }
}
