package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.gauge.OffsetAdvice;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The arithmetic of the wear dial. */
class DialTest {
  private static OffsetAdvice advice(double now, double increment) {
    return new OffsetAdvice(
        "D4",
        0,
        now,
        -1.98,
        -0.0479,
        -0.009,
        -0.0981,
        increment,
        -0.048,
        -0.009,
        -0.098,
        true,
        Optional.empty(),
        Optional.empty());
  }

  private final Dial dial = new Dial(advice(-0.045, 0.001), 0.75);

  @Test
  void it_goes_by_the_least_increment_to_numbers_as_they_would_be_read() {
    assertThat(dial.entry()).isEqualTo(-0.045);
    assertThat(dial.isMoved()).isFalse();
    assertThat(dial.growsThread()).isFalse();
    for (int i = 0; i < 8; i++) {
      assertThat(dial.step(-1)).isTrue();
    }
    assertThat(dial.entry()).isEqualTo(-0.053);
    dial.step(10);
    assertThat(dial.entry()).isEqualTo(-0.043);
    assertThat(dial.isMoved()).isTrue();
  }

  @Test
  void an_entry_between_two_steps_goes_to_the_next_one_first() {
    Dial between = new Dial(advice(-0.0455, 0.001), 0.75);
    between.step(1);
    assertThat(between.entry()).isEqualTo(-0.045);
    between.home();
    between.step(-1);
    assertThat(between.entry()).isEqualTo(-0.046);
    between.home();
    assertThat(between.entry()).isEqualTo(-0.0455);
  }

  @Test
  void a_ten_thousandth_of_an_inch_is_a_step_of_an_inch_control() {
    Dial inch = new Dial(advice(0, 0.00254), 0.5);
    inch.step(-17);
    assertThat(inch.entry()).isEqualTo(-0.04318);
  }

  @Test
  void it_ends_half_a_pitch_beyond_sheet_and_advice() {
    assertThat(dial.least()).isEqualTo(-0.0479 - 0.75);
    assertThat(dial.most()).isEqualTo(-0.045 + 0.75);
    assertThat(dial.to(3)).isFalse();
    assertThat(dial.entry()).isEqualTo(0.705);
    assertThat(dial.step(1)).isFalse();
    assertThat(dial.entry()).isEqualTo(0.705);
  }

  @Test
  void what_was_turned_is_undone_and_done_again_and_a_drag_is_one_turn() {
    dial.to(-0.048);
    dial.begin();
    dial.drag(-0.05);
    dial.drag(-0.06);
    dial.drag(-0.07);
    assertThat(dial.undo()).isTrue();
    assertThat(dial.entry()).isEqualTo(-0.048);
    assertThat(dial.undo()).isTrue();
    assertThat(dial.entry()).isEqualTo(-0.045);
    assertThat(dial.undo()).isFalse();
    assertThat(dial.redo()).isTrue();
    assertThat(dial.redo()).isTrue();
    assertThat(dial.entry()).isEqualTo(-0.07);
    dial.undo();
    dial.step(1);
    assertThat(dial.redo()).isFalse();
    assertThat(dial.entry()).isEqualTo(-0.047);
  }

  @Test
  void another_entry_in_the_sheet_moves_a_dial_that_stood_there_and_no_other() {
    dial.follow(advice(-0.048, 0.001), 0.75);
    assertThat(dial.entry()).isEqualTo(-0.048);
    dial.to(-0.01);
    dial.follow(advice(-0.02, 0.001), 0.75);
    assertThat(dial.entry()).isEqualTo(-0.01);
    assertThat(dial.sheet()).isEqualTo(-0.02);
  }
}
