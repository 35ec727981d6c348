package flankfit.setup;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Finding;
import flankfit.finding.Severity;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of reading that hold for every text. */
class SetupReaderProperties {
  private static final int CASES = 2000;
  private static final String PIECES = "\n\"'[]{}=,.#-+ 09eEmx_\\\u0000\u00e9";

  private static final List<String> SHEETS =
      List.of(
          SheetText.resource("filter-housing.setup.toml"),
          SheetText.resource("valve-block-inch.setup.toml"));

  @Test
  void a_damaged_sheet_is_read_or_refused_and_never_throws() {
    Random random = new Random(20_0615);
    int refused = 0;
    for (int i = 0; i < CASES; i++) {
      String text = damaged(excerpt(SHEETS.get(i % SHEETS.size()), random), random);
      SheetReading reading = SheetText.read(text);
      boolean errors = reading.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR);
      assertThat(reading.sheet().isEmpty()).as(text).isEqualTo(errors);
      assertThat(reading.findings()).isSortedAccordingTo((a, b) -> a.place().compareTo(b.place()));
      reading.findings().forEach(f -> checkWording(f, text));
      refused += errors ? 1 : 0;
    }
    assertThat(refused).isBetween(CASES / 4, CASES - CASES / 50);
  }

  private static void checkWording(Finding finding, String text) {
    assertThat(finding.what()).isNotBlank().doesNotEndWith(".").doesNotContain("\n", "\u0000");
    assertThat(finding.why()).isNotBlank();
    long lines = text.chars().filter(c -> c == '\n').count() + 1;
    assertThat(finding.place().line()).isBetween(0, (int) lines);
  }

  @Test
  void the_same_text_gives_the_same_reading() {
    Random random = new Random(7);
    for (int i = 0; i < 50; i++) {
      String text = damaged(excerpt(SHEETS.get(i % SHEETS.size()), random), random);
      assertThat(SheetText.read(text)).isEqualTo(SheetText.read(text));
    }
  }

  /** The head and two tables of a sheet: a whole one takes the parser ten times as long. */
  private static String excerpt(String sheet, Random random) {
    String[] tables = sheet.split("(?m)^(?=\\[)", -1);
    String first = tables[1 + random.nextInt(tables.length - 1)];
    String second = tables[1 + random.nextInt(tables.length - 1)];
    return tables[0] + first + second;
  }

  /** A few changes that a slip of the hand would make: letters, numbers, whole lines. */
  private static String damaged(String sheet, Random random) {
    StringBuilder text = new StringBuilder(sheet);
    int changes = 1 + random.nextInt(3);
    for (int i = 0; i < changes; i++) {
      change(text, random);
    }
    return text.toString();
  }

  private static void change(StringBuilder text, Random random) {
    int at = random.nextInt(text.length());
    char piece = PIECES.charAt(random.nextInt(PIECES.length()));
    switch (random.nextInt(6)) {
      case 0 -> text.deleteCharAt(at);
      case 1 -> text.insert(at, piece);
      case 2 -> text.setCharAt(at, piece);
      case 3 -> deleteLine(text, at);
      case 4 -> changeDigit(text, at, random);
      default -> swapLines(text, at, random);
    }
  }

  private static int lineStart(StringBuilder text, int at) {
    return text.lastIndexOf("\n", Math.max(0, at - 1)) + 1;
  }

  private static int lineEnd(StringBuilder text, int at) {
    int end = text.indexOf("\n", at);
    return end < 0 ? text.length() : end;
  }

  private static void deleteLine(StringBuilder text, int at) {
    int start = Math.min(at, lineStart(text, at));
    text.delete(start, lineEnd(text, at));
  }

  private static void changeDigit(StringBuilder text, int at, Random random) {
    for (int i = at; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        text.replace(i, i + 1, random.nextBoolean() ? "-" : "0");
        return;
      }
    }
  }

  private static void swapLines(StringBuilder text, int at, Random random) {
    int start = Math.min(at, lineStart(text, at));
    String line = text.substring(start, lineEnd(text, at));
    text.delete(start, lineEnd(text, at));
    text.insert(lineStart(text, random.nextInt(text.length())), line + "\n");
  }
}
