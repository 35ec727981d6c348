package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read from a designation, and how it is written back. */
class DesignationsTest {
  private static final double EXACT = 1e-12;

  @ParameterizedTest
  @CsvSource({
    "M20x1.5-6H, M20x1.5-6H",
    "M20-6H, M20x2.5-6H",
    "M12x1.25-6g, M12x1.25-6g",
    "m20\u00D71.5 - 6H, M20x1.5-6H",
    "M 20 X 1.5-6H-LH, M20x1.5-6H-LH",
    "M20x1.5 6H lh, M20x1.5-6H-LH",
    "M20x1\u20135H6H, M20x1-5H6H",
    "M3x.5-6H6H, M3x0.5-6H",
    "M20 x Ph 3 P 1.5-6H, M20xPh3P1.5-6H",
    "M20xph3p1.5-6H, M20xPh3P1.5-6H",
    "1/2-13 UNC-2B, 1/2-13 UNC-2B",
    "1/2 - 13unc2b, 1/2-13 UNC-2B",
    "1-1/4-7 UNC-2B, 1-1/4-7 UNC-2B",
    "1 1/4-7 UNC-2B, 1-1/4-7 UNC-2B",
    "#10-32 UNF-2B, #10-32 UNF-2B",
    "10-32 UNF-2B, #10-32 UNF-2B",
    "No. 10-32 UNF-2B, #10-32 UNF-2B",
    "0.190-32 UNF-2B, #10-32 UNF-2B",
    ".500-20 UNF-3B, 1/2-20 UNF-3B",
    "1/2-20 UNF-3B-LH, 1/2-20 UNF-3B-LH",
    ".495-20 UNS-3A, 0.495-20 UNS-3A",
    "2-4-1/2 UNC-2B, 2-4.5 UNC-2B",
    "1-8 UNC-2B, 1-8 UNC-2B",
    "1-64 UNC-2B, #1-64 UNC-2B",
    "2-8 UN-2B, 2-8 UN-2B",
    "1/4-20 UNC-2A (21), 1/4-20 UNC-2A",
    "1/2-13-LH, 1/2-13 UNC-2B-LH",
    "1/2-13 UNC-2B LH, 1/2-13 UNC-2B-LH",
    "10-32-3B, #10-32 UNF-3B",
    "'M20x1,5-6H', M20x1.5-6H"
  })
  void designation_is_read_and_written_canonically(String text, String canonical) throws Exception {
    assertThat(Designations.parse(text).designation()).isEqualTo(canonical);
  }

  @Test
  void metric_thread_has_its_basic_figures() throws Exception {
    ThreadSpec thread = Designations.parse("M20x1.5-6H");
    assertThat(thread.form()).isEqualTo("ISO metric");
    assertThat(thread.series()).isEqualTo("fine");
    assertThat(thread.nominal()).isEqualTo(20);
    assertThat(thread.pitch()).isEqualTo(1.5);
    assertThat(thread.threadsPerInch()).isEmpty();
    assertThat(thread.threadClass()).isEqualTo("6H");
    assertThat(thread.internal()).isTrue();
    assertThat(thread.leftHand()).isFalse();
    assertThat(thread.starts()).isEqualTo(1);
    assertThat(Math.toDegrees(thread.halfAngle())).isCloseTo(30, within(EXACT));
    assertThat(thread.gauges()).isPresent();
    assertThat(thread.drill()).isPresent();
  }

  @Test
  void unified_thread_has_its_basic_figures() throws Exception {
    ThreadSpec thread = Designations.parse("5/16-18 UNC-2B");
    assertThat(thread.form()).isEqualTo("Unified");
    assertThat(thread.series()).isEqualTo("UNC");
    assertThat(thread.nominal()).isCloseTo(7.9375, within(EXACT));
    assertThat(thread.pitch()).isCloseTo(1.4111111111111, within(EXACT));
    assertThat(thread.threadsPerInch()).hasValue(18);
  }

  @Test
  void screw_has_neither_plugs_nor_drill() throws Exception {
    for (String text : new String[] {"M12x1.25-6g", "1/2-13 UNC-2A"}) {
      ThreadSpec screw = Designations.parse(text);
      assertThat(screw.internal()).isFalse();
      assertThat(screw.gauges()).isEmpty();
      assertThat(screw.drill()).isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "M8-6H, coarse",
    "M8x1-6H, fine",
    "M8x0.5-6H, ''",
    "M13x1-6H, ''",
    "M25x1.5-6H, fine"
  })
  void metric_series_is_coarse_fine_or_none(String text, String series) throws Exception {
    assertThat(Designations.parse(text).series()).isEqualTo(series);
  }

  @ParameterizedTest
  @CsvSource({
    "10-32, UNF",
    "10-24, UNC",
    "1/4-32, UNEF",
    "3/4-12, UN",
    "1-12, UNF",
    "1-1/2-6, UNC",
    "1-7/16-6, UN",
    "4-4, UNC",
    "5-8, UN",
    "2-1/2-20, UN"
  })
  void series_is_found_from_size_and_threads_per_inch(String text, String series) throws Exception {
    ThreadSpec thread = Designations.parse(text);
    assertThat(thread.series()).isEqualTo(series);
    assertThat(thread.sources()).anyMatch(source -> source.startsWith("no series is written"));
  }

  @ParameterizedTest
  @CsvSource({"M20x1.5, 6H", "M1.2, 5H", "M1.6x0.2, 4H", "10-32, 2B", "1/2-13 UNC, 2B"})
  void class_left_out_is_assumed_and_said(String text, String assumed) throws Exception {
    ThreadSpec thread = Designations.parse(text);
    assertThat(thread.threadClass()).isEqualTo(assumed);
    assertThat(thread.sources().get(0)).startsWith("no class is written: " + assumed);
  }

  @Test
  void special_pair_of_diameter_and_pitch_is_said_to_be_special() throws Exception {
    assertThat(Designations.parse("M13x1.5-6H").sources()).anyMatch(s -> s.startsWith("special"));
    assertThat(Designations.parse("M20x1.5-6H").sources()).noneMatch(s -> s.startsWith("special"));
  }

  @Test
  void loose_class_beyond_the_tables_is_said() throws Exception {
    assertThat(Designations.parse("1/2-28 UNEF-1B").sources()).anyMatch(s -> s.startsWith("class"));
    assertThat(Designations.parse("1/2-13 UNC-1B").sources()).noneMatch(s -> s.startsWith("class"));
  }

  @Test
  void several_starts_multiply_the_lead_and_keep_the_limits() throws Exception {
    ThreadSpec one = Designations.parse("M20x1.5-6H");
    ThreadSpec two = Designations.parse("M20xPh3P1.5-6H");
    assertThat(two.starts()).isEqualTo(2);
    assertThat(two.lead()).isEqualTo(3);
    assertThat(two.limits()).isEqualTo(one.limits());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "M",
        "6H",
        "M20x",
        "MJ6x1-4H5H",
        "G1/2",
        "1/2 13",
        "-",
        "#",
        "#-32",
        "M.-6H",
        "M20x.-6H",
        "M20xPh.P1-6H",
        "1/0-13 UNC-2B",
        "1/2-0 UNC-2B",
        "M0-6H",
        "M20x0-6H",
        "M20x0.0001-6H",
        "M20x99999-6H",
        "0/4-20 UNC-2B",
        "\u0000",
        "M\u06602-6H"
      })
  void nonsense_is_refused_with_a_reason_and_a_way_out(String text) {
    assertThatThrownBy(() -> Designations.parse(text))
        .isInstanceOfSatisfying(
            InvalidDesignationException.class,
            e -> {
              assertThat(e.getMessage()).isNotBlank();
              assertThat(e.why()).isNotBlank();
              assertThat(e.fix()).isNotBlank();
            });
  }

  @Test
  void text_of_any_length_is_refused_and_not_repeated() {
    assertThatThrownBy(() -> Designations.parse("M2" + "0".repeat(100_000)))
        .isInstanceOf(InvalidDesignationException.class)
        .hasMessage("the thread designation is 100002 characters long");
  }
}
