package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A bad designation is told what is wrong and what is nearest. */
class NearestDesignationTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M13-6H | M13 has no coarse pitch, and no pitch is written | M12x1.75 and M14x2",
        "M25-6H | M25 has no coarse pitch, and no pitch is written | M25x2 or M25x1.5 or M25x1",
        "M20x1.1-6H | no metric thread has the pitch 1.1 mm | M20x2.5 or M20x2 or M20x1.5 or M20x1",
        "M13x1.1-6H | no metric thread has the pitch 1.1 mm | M13x1 or M13x1.25",
        "M20x12-6H | the pitch 12 mm of M20 is out of range | M20x2.5",
        "M20x0.1-6H | the pitch 0.1 mm of M20 is out of range | M20x1",
        "M20x6-6H | the pitch 6 mm is too coarse for a diameter of 20 mm | M20x2.5",
        "M400x4-6H | the diameter 400 mm has no tolerances | a diameter in that range",
        "M0.5-6H | the diameter 0.5 mm has no tolerances | M1x0.25",
        "M20xPh4P1.5-6H | the lead 4 mm is no multiple of the pitch 1.5 mm | M20xPh4.5P1.5",
        "M20x1.5-9H | 9H is not a class for a hole at a pitch of 1.5 mm | M20x1.5-8H",
        "M20x1.5-3H | 3H is not a class for a hole at a pitch of 1.5 mm | M20x1.5-4H",
        "M1.6x0.2-6H | 6H is not a class for a hole at a pitch of 0.2 mm | M1.6x0.2-4H",
        "M3x0.5-8H | 8H is not a class for a hole at a pitch of 0.5 mm | M3x0.5-7H",
        "M10-5g | 5g is not a class for a screw at a pitch of 1.5 mm | M10x1.5-5g6g",
        "M10-7g | 7g is not a class for a screw at a pitch of 1.5 mm | M10x1.5-7g6g",
        "M10-9g | 9g is not a class for a screw at a pitch of 1.5 mm | M10x1.5-9g8g",
        "M3x0.35-6e | there is no position e at a pitch of 0.35 mm | M3x0.35-6g",
        "M10-6K | 6K is not a thread class known here: position K | M10x1.5-6H",
        "M10-H6 | H6 is not a thread class | M10x1.5-6H",
        "M10-2B | 2B is not a thread class known here: position B | M10x1.5-6H",
        "M10-6H6G | the class 6H6G has two positions | M10x1.5-6H",
        "M10-6H/6g | 6H/6g names a fit, not one thread | M10x1.5-6H",
        "M10-6H-6H | 6H has no meaning behind the class | M10x1.5-6H",
        "M10-6H- | the designation ends in a hyphen or has two together | M10x1.5-6H",
        "20x1.5-6H | 20x1.5-6H is not a Unified thread designation | M20x1.5-6H",
        "#7-32 UNC-2B | there is no Unified size number 7 | #6 or #8",
        "11-32 UNC-2B | there is no Unified size number 11 | #10 or #12",
        "11/33-18 UNC-2B | 11/33 is not a size in fractions of an inch | 5/16",
        "1/2-13 UNF-2B | 1/2-13 is not UNF | 1/2-13 UNC-2B",
        "1/2-13 UN-2B | 1/2-13 is not UN | 1/2-13 UNC-2B",
        "1/2-13 UNS-2B | 1/2-13 is not UNS | 1/2-13 UNC-2B",
        "1/2-12 UN-2B | 1/2-12 is not UN | 1/2-12 UNS-2B",
        "1/2-14 UNC-2B | 1/2-14 is not UNC | 1/2-13 UNC-2B, or 1/2-14 UNS-2B",
        "0.3-18 UNC-2B | 0.3-18 is not UNC | 5/16-18 UNC-2B, or 0.3-18 UNS-2B",
        "1/2-14 | 1/2-14 belongs to no standard series, and no series is written | 1/2-13 UNC",
        "1/2-13 UNC-4B | 4B is not a class of Unified threads | 1/2-13 UNC-2B",
        "1/2-13 UNC-3C | 3C is not a class of Unified threads | 1/2-13 UNC-3B for a hole or -3A",
        "1/2-13 UNC-6H | 6H is not a class of Unified threads | 1/2-13 UNC-2B",
        "1/2-13 NPT | NPT is not a series of Unified threads known here | 1/2-13 UNC-2B",
        "1/2-3 UNS-2B | 3 threads per inch are too coarse for the size 1/2 | 1/2-13 UNC or 1/2-20 UNF",
        "1/2-100 UNS-2B | 100 threads per inch are out of range | 1/2-13 UNC",
        "1/2 UNC-2B | 1/2 UNC-2B names no threads per inch | 1/2-13 UNC-2B",
        "7.5-8 UN-2B | the diameter 7.5 in is out of range | the largest is 6 in",
        ".05-80 UNF-2B | the diameter 0.05 in is out of range | #0-80 UNF"
      })
  void what_is_wrong_and_what_is_nearest_is_said(String text, String what, String fix) {
    InvalidDesignationException refused =
        catchThrowableOfType(InvalidDesignationException.class, () -> Designations.parse(text));
    assertThat(refused).as(text).isNotNull();
    assertThat(refused.getMessage()).isEqualTo(what);
    assertThat(refused.fix()).contains(fix);
    assertThat(refused.why()).isNotBlank();
  }

  @Test
  void the_reason_names_the_grades_that_there_are() {
    assertThatThrownBy(() -> Designations.parse("M20x1.5-9H"))
        .isInstanceOfSatisfying(
            InvalidDesignationException.class,
            e ->
                assertThat(e.why())
                    .isEqualTo(
                        "ISO 965-1 has grades 4 to 8 for the pitch diameter of a hole at a pitch"
                            + " of 1.5 mm"));
  }

  @Test
  void the_reason_names_the_series_that_fits() {
    assertThatThrownBy(() -> Designations.parse("1/2-20 UNC-2B"))
        .isInstanceOfSatisfying(
            InvalidDesignationException.class,
            e -> assertThat(e.why()).isEqualTo("ASME B1.1 lists 1/2-20 as UNF"));
  }
}
