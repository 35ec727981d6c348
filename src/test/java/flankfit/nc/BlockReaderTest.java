package flankfit.nc;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Blocks and words from text, and the findings of reading with their places. */
class BlockReaderTest {
  private final Findings findings = new Findings();

  private List<String> read(String text, ReadingRules rules) {
    return read(text.getBytes(StandardCharsets.UTF_8), rules);
  }

  private List<String> read(String text) {
    return read(text, ReadingRules.defaults());
  }

  private List<String> read(byte[] bytes, ReadingRules rules) {
    SourceText source = SourceText.of("a.nc", bytes);
    BlockReader reader = new BlockReader(source, rules, findings);
    Block block = new Block(source);
    List<String> blocks = new ArrayList<>();
    while (reader.next(block)) {
      StringBuilder words = new StringBuilder().append(block.line()).append(':');
      for (int i = 0; i < block.size(); i++) {
        words.append(' ').append(block.letter(i)).append(block.value(i));
      }
      blocks.add(words.toString());
    }
    return blocks;
  }

  private Finding only(Code code) {
    List<Finding> found = findings.sorted().stream().filter(f -> f.code() == code).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void words_are_read_whatever_the_spacing_and_case() {
    assertThat(read("N10g1 x-0.5Y+ 2.(side)z 1\n\n(only this)\nG0"))
        .containsExactly("1: G1.0 X-0.5 Y2.0 Z1.0", "4: G0.0");
  }

  @Test
  void every_kind_of_line_end_counts_once() {
    assertThat(read("G0\rG1\r\nG2\n\nG3"))
        .containsExactly("1: G0.0", "2: G1.0", "3: G2.0", "5: G3.0");
  }

  @Test
  void place_counts_characters_not_bytes() {
    read("(Öl) G1 X1.2.3");
    assertThat(only(Code.RD12).place()).isEqualTo(new Place("a.nc", 1, 9, 6));
  }

  @Test
  void look_alike_is_named_with_its_number_and_what_was_meant() {
    read("G1 X−5.");
    Finding finding = only(Code.RD05);
    assertThat(finding.place()).isEqualTo(new Place("a.nc", 1, 5, 1));
    assertThat(finding.what()).isEqualTo("− (U+2212) is not a program character");
    assertThat(finding.fix()).isEqualTo("type -");
  }

  @Test
  void semicolon_ends_the_block_when_switched() {
    assertThat(read("G1 X5.; G1 Y5.", new ReadingRules(true, List.of())))
        .containsExactly("1: G1.0 X5.0", "1: G1.0 Y5.0");
    assertThat(findings.count(Code.RD17)).isZero();
  }

  @Test
  void error_in_a_deleted_block_is_only_a_warning() {
    read("/2 G1 X\nG0", new ReadingRules(false, List.of(2)));
    assertThat(only(Code.RD06).severity()).isEqualTo(Severity.WARNING);
  }

  @Test
  void errors_of_all_lines_are_reported() {
    read("G1 X\nG1 Y\nG1 X5,5\nG0");
    assertThat(findings.count(Code.RD06)).isEqualTo(2);
    assertThat(findings.count(Code.RD07)).isEqualTo(1);
  }

  @Test
  void only_what_stands_between_the_percent_marks_is_read() {
    assertThat(read("left over\n%O12 G0\nG1\n%\nG2")).containsExactly("2: G0.0", "3: G1.0");
    assertThat(findings.sorted())
        .filteredOn(f -> f.code() == Code.RD02)
        .extracting(f -> f.severity() + " " + f.place().line())
        .containsExactly("NOTE 1", "WARNING 5");
  }

  @Test
  void leader_characters_are_dropped_and_counted() {
    StringBuilder text = new StringBuilder("\u0000\u0000%\n");
    text.append("G1 X1.\n".repeat(30)).append("G0\u007F X5.\n%\n\u0000");
    assertThat(read(text.toString())).hasSize(31).last().isEqualTo("32: G0.0 X5.0");
    assertThat(only(Code.RD04).what()).startsWith("4 leader");
  }

  @Test
  void utf8_mark_is_dropped() {
    assertThat(read("\uFEFFG0 X5.")).containsExactly("1: G0.0 X5.0");
    assertThat(findings.count(Code.RD04)).isEqualTo(1);
  }

  @Test
  void end_mark_of_old_systems_ends_the_file() {
    assertThat(read("G0 X5.\n\u001A")).containsExactly("1: G0.0 X5.0");
    assertThat(findings.sorted()).isEmpty();
  }

  @Test
  void comment_in_iso_8859_1_is_noted_once() {
    read("(Öl)\n(Öl)\nG0".getBytes(StandardCharsets.ISO_8859_1), ReadingRules.defaults());
    assertThat(only(Code.RD24).place().line()).isEqualTo(1);
  }

  @Test
  void line_of_65537_characters_is_an_error() {
    read("G0 (" + "x".repeat(65_540) + ")\nG1");
    assertThat(only(Code.RD18).severity()).isEqualTo(Severity.ERROR);
  }

  @Test
  void sequence_number_may_be_used_again_in_another_program() {
    read("O1\nN10 G0\nO2\nN10 G1");
    assertThat(findings.count(Code.RD21)).isZero();
    read("N5 G0\nN7 G1\nG2 N9\nN5 G3");
    assertThat(findings.sorted())
        .extracting(Finding::what)
        .containsExactly("N9 not first", "N5 also in line 1");
  }

  @Test
  void statements_and_words_to_compute_are_told_apart() {
    SourceText source =
        SourceText.of(
            "a.nc",
            "G1 X-#5 Y2.\nN7 IF [#1 EQ 2] GOTO 5 (why)\nGOX1.\n".getBytes(StandardCharsets.UTF_8));
    BlockReader reader = new BlockReader(source, ReadingRules.defaults(), findings);
    Block block = new Block(source);
    assertThat(reader.next(block)).isTrue();
    assertThat(block.isFlow()).isTrue();
    assertThat(block.statement()).isEmpty();
    assertThat(block.size()).isEqualTo(3);
    assertThat(block.isFormula(0)).isFalse();
    assertThat(block.isFormula(1)).isTrue();
    assertThat(block.place(1)).isEqualTo(new Place("a.nc", 1, 4, 4));
    assertThat(block.value(2)).isEqualTo(2);
    assertThat(reader.next(block)).isTrue();
    assertThat(block.sequence()).isEqualTo(7);
    assertThat(block.statement().map(Statement::kind)).contains(Statement.Kind.IF_GOTO);
    assertThat(reader.next(block)).isTrue();
    assertThat(block.fault()).contains(Code.RD14);
    assertThat(block.isFlow()).isFalse();
  }

  @Test
  void a_comma_after_a_point_is_not_mended_to_two_points() {
    read("X2,5\n");
    read("X2.5,5\n");
    assertThat(findings.sorted())
        .filteredOn(f -> f.code() == Code.RD07)
        .extracting(Finding::fix)
        .containsExactlyInAnyOrder("write X2.5", "write one number");
  }
}
