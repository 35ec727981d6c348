package flankfit.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The collector that every phase reports to. */
class FindingsTest {
  private static Place at(int line, int column) {
    return new Place("hub.nc", line, column, 0);
  }

  @Test
  void findings_are_sorted_by_file_line_column_and_code() {
    Findings findings = new Findings();
    findings.add(Code.RD11, at(9, 1), "a", "", "");
    findings.add(Code.RD11, at(2, 5), "b", "", "");
    findings.add(Code.WD09, at(2, 3), "c", "", "");
    findings.add(Code.RD10, at(2, 3), "d", "", "");
    findings.add(Code.RD11, new Place("a.nc", 50, 1, 0), "e", "", "");
    assertThat(findings.sorted())
        .extracting(Finding::what)
        .containsExactly("e", "d", "c", "b", "a");
  }

  @Test
  void a_code_is_listed_a_hundred_times_and_counted_beyond() {
    Findings findings = new Findings();
    for (int line = 1; line <= 250; line++) {
      findings.add(Code.RD10, at(line, 1), "blank", "", "");
    }
    findings.add(Code.RD11, at(300, 1), "lower case", "", "");
    List<Finding> sorted = findings.sorted();
    assertThat(sorted).hasSize(101);
    assertThat(sorted.get(98).what()).isEqualTo("blank");
    assertThat(sorted.get(99).what()).isEqualTo("blank (and 150 more like it)");
    assertThat(sorted.get(99).place()).isEqualTo(at(100, 1));
    assertThat(sorted.get(100).what()).isEqualTo("lower case");
    assertThat(findings.count(Code.RD10)).isEqualTo(250);
    assertThat(findings.count(Code.AR01)).isZero();
    assertThat(findings.sorted()).isEqualTo(sorted);
  }

  @Test
  void only_what_would_not_be_listed_is_counted_without_words() {
    Findings findings = new Findings();
    for (int line = 1; line <= Findings.LISTED_SINGLY; line++) {
      assertThat(findings.countUnlisted(Code.RD10)).isFalse();
      findings.add(Code.RD10, at(line, 1), "blank", "", "");
    }
    assertThat(findings.countUnlisted(Code.RD10)).isTrue();
    assertThat(findings.countUnlisted(Code.RD11)).isFalse();
    assertThat(findings.count(Code.RD10)).isEqualTo(101);
    assertThat(findings.count(Code.RD11)).isZero();
    assertThat(findings.sorted().get(99).what()).isEqualTo("blank (and 1 more like it)");
    assertThat(findings.hasErrors()).isFalse();
  }

  @Test
  void an_error_counts_even_where_it_is_not_listed() {
    Findings findings = new Findings();
    for (int i = 0; i < Findings.LISTED_SINGLY; i++) {
      findings.add(new Finding(Code.AR01, Severity.WARNING, at(i + 1, 1), "mild", "", ""));
    }
    assertThat(findings.hasErrors()).isFalse();
    findings.add(Code.AR01, at(500, 1), "severe", "", "");
    assertThat(findings.hasErrors()).isTrue();
  }

  @Test
  void findings_of_another_phase_are_taken_over() {
    Findings reading = new Findings();
    reading.add(Code.RD05, at(1, 1), "x", "", "");
    Findings all = new Findings();
    assertThat(all.hasErrors()).isFalse();
    all.addAll(reading.sorted());
    assertThat(all.hasErrors()).isTrue();
    assertThat(all.sorted()).isEqualTo(reading.sorted());
  }

  @Test
  void a_place_has_no_negative_line_column_or_length() {
    assertThat(Place.file("a.nc")).isEqualTo(new Place("a.nc", 0, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Place("a.nc", -1, 0, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Place("a.nc", 0, -1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Place("a.nc", 0, 0, -1));
  }

  @Test
  void every_code_has_its_own_name_in_words() {
    assertThat(Arrays.stream(Code.values()).map(Code::inWords))
        .doesNotHaveDuplicates()
        .allMatch(name -> name.matches("[a-z0-9]+(-[a-z0-9]+)*"));
    assertThat(Arrays.stream(Code.values()).map(Code::name))
        .allMatch(name -> name.matches("[A-Z]{2}[0-9]{2}"));
  }
}
