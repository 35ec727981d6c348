package flankfit.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.LengthUnit;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ObservationTest {
  private static Observation read(String text) {
    return Observation.of(text, LengthUnit.MILLIMETRE);
  }

  @Test
  void the_forms_are_read() {
    assertThat(read("go=enters")).isEqualTo(new Observation.Go(true, OptionalDouble.empty()));
    assertThat(read(" GO = stops:3 ")).isEqualTo(new Observation.Go(false, OptionalDouble.of(3)));
    assertThat(read("no-go=turns:0.5"))
        .isEqualTo(new Observation.NoGo(false, OptionalDouble.of(0.5)));
    assertThat(read("no-go=stops")).isEqualTo(new Observation.NoGo(true, OptionalDouble.empty()));
    assertThat(read("pitch=18.94")).isEqualTo(new Observation.Pitch(18.94, OptionalDouble.empty()));
    Observation.Pitch wanted = new Observation.Pitch(18.94, OptionalDouble.of(0.004));
    assertThat(read("pitch=18.94±0.004")).isEqualTo(wanted);
    assertThat(read("pitch=18.94 +- 0.004mm")).isEqualTo(wanted);
    assertThat(wanted.uncertainty()).isEqualTo(0.002);
  }

  @Test
  void lengths_are_in_the_unit_of_the_sheet_or_their_own() {
    Observation.Pitch inch = (Observation.Pitch) Observation.of("pitch=0.75", LengthUnit.INCH);
    assertThat(inch.diameter()).isCloseTo(19.05, within(1e-12));
    Observation.Pitch own = (Observation.Pitch) read("pitch=0.75 in±0.0002in");
    assertThat(own.diameter()).isCloseTo(19.05, within(1e-12));
    assertThat(own.uncertainty()).isCloseTo(0.00254, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "go=enters",
        "go=stops",
        "go=stops:3.5",
        "no-go=stops",
        "no-go=enters",
        "no-go=turns:0.5",
        "pitch=18.94mm",
        "pitch=18.94mm±0.004mm"
      })
  void the_log_writes_what_is_read_again(String text) {
    assertThat(read(text).text()).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "go",
        "go=",
        "go=3",
        "go=enters:3",
        "stop=go",
        "no-go=turns:-1",
        "no-go=turns:x",
        "no-go=turns:NaN",
        "pitch=0",
        "pitch=-3",
        "pitch=18.9±0",
        "pitch=18,94",
        "pitch=Infinity",
        "pitch=18.94 furlong",
        "pitch=NaN",
        "go=stops:1e9"
      })
  void anything_else_is_refused_with_a_reason(String text) {
    assertThatThrownBy(() -> read(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageMatching("(?s).{10,}");
  }

  @Test
  void the_turns_of_a_no_go_gauge_mean_what_the_rule_says() {
    Observation.NoGo two = (Observation.NoGo) read("no-go=turns:2");
    assertThat(two.accepted(2)).isTrue();
    assertThat(((Observation.NoGo) read("no-go=turns:2.1")).accepted(2)).isFalse();
  }
}
