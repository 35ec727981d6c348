package flankfit.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class CodePagesTest {
  private static CodePage.Case program(String text) {
    return new CodePage.Case(Optional.empty(), Optional.empty(), Optional.of(text));
  }

  @Test
  void page_holds_its_own_case() {
    CodePage page = CodePages.of(Code.TH14);
    assertThat(page.meaning()).startsWith("Two passes").contains("\n\nIt is often a retract");
    assertThat(page.mending()).startsWith("Start both passes").doesNotContain("##");
    assertThat(page.guilty().program().orElseThrow()).startsWith("G21").endsWith("M30\n");
    assertThat(page.guilty().sheet().orElseThrow()).contains("[[tool]]").doesNotContain("```");
    assertThat(page.mended().sheet()).isEqualTo(page.guilty().sheet());
    assertThat(page.mended().program()).isNotEqualTo(page.guilty().program());
  }

  @Test
  void program_beside_the_page_comes_without_what_speaks_to_its_test() {
    CodePage page = CodePages.of(Code.AR08);
    assertThat(page.guilty().program().orElseThrow())
        .contains("G2 X10. I5. P2")
        .doesNotContain(";");
    assertThat(page.guilty().sheet()).isEmpty();
    assertThat(page.mended().sheet()).hasValue("[control]\narc-turns = \"P\"\n");
  }

  @Test
  void backslash_x_stands_for_a_byte_and_nothing_else_does() {
    assertThat(program("\\xEF\\xd8A\\xZZ\\x1").programBytes())
        .isEqualTo(new byte[] {(byte) 0xEF, (byte) 0xD8, 'A', '\\', 'x', 'Z', 'Z', '\\', 'x', '1'});
    assertThat(program("").programBytes()).isEmpty();
    assertThat(CodePages.of(Code.RD01).guilty().program()).hasValue("");
  }
}
