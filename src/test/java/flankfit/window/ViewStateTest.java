package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.ModalState;
import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

class ViewStateTest {
  private final ViewState state = new ViewState(WindowSamples.thread(), Preferences.first());

  @Test
  void it_begins_at_the_first_block() {
    assertThat(state.line()).isEqualTo(3);
    assertThat(state.scene().position()).hasValue(0);
  }

  @Test
  void steps_move_the_cutter_and_the_words() {
    state.stepForward();
    state.stepForward();
    assertThat(state.line()).isEqualTo(6);
    assertThat(state.stateRows())
        .contains(new StateWords.Row("compensation", "left, 7.800 mm, D12"))
        .contains(new StateWords.Row("distance", "incremental"))
        .contains(new StateWords.Row("tool", "T2 thread mill, 14 mm"));
    state.stepBack();
    assertThat(state.line()).isEqualTo(4);
    state.toEnd();
    assertThat(state.line()).isEqualTo(28);
    state.toStart();
    assertThat(state.line()).isEqualTo(3);
  }

  @Test
  void positions_are_told_as_programmed_and_as_they_are() {
    state.toLine(14);
    assertThat(state.positionRows())
        .containsExactly(
            new StateWords.Row("programmed", "X  10.000 Y   0.000 Z −18.813"),
            new StateWords.Row("actual", "X   2.700 Y   0.000 Z −18.813"));
    state.otherUnit();
    assertThat(state.unit()).isEqualTo(LengthUnit.INCH);
    assertThat(state.positionRows().get(0).value()).isEqualTo("X  0.3937 Y  0.0000 Z −0.7406");
  }

  @Test
  void turning_by_hand_leaves_the_standing_view_and_a_key_comes_back_to_it() {
    state.look(View.FRONT);
    assertThat(state.camera().showsDepth()).isTrue();
    state.orbit(40, 10);
    assertThat(state.standing()).isEmpty();
    assertThat(state.camera().showsDepth()).isFalse();
    state.look(View.SIDE);
    assertThat(state.standing()).contains(View.SIDE);
    assertThat(state.camera().showsDepth()).isTrue();
  }

  @Test
  void leaving_closes_the_help_first() {
    state.toggleHelp();
    state.leave();
    assertThat(state.help()).isFalse();
    assertThat(state.closes()).isFalse();
    state.leave();
    assertThat(state.closes()).isTrue();
  }

  @Test
  void what_is_chosen_is_remembered() {
    state.look(View.PLAN);
    state.otherTheme();
    state.otherUnit();
    Preferences kept = state.preferences(1000, 700);
    assertThat(kept.view()).isEqualTo(View.PLAN);
    assertThat(kept.theme()).isEqualTo(Theme.DARK);
    assertThat(kept.unit()).contains(LengthUnit.INCH);
  }

  @Test
  void every_change_of_what_is_seen_counts() {
    long before = state.changes();
    state.zoom(1, 10, 10);
    state.pan(3, 3);
    state.stepForward();
    state.otherTheme();
    assertThat(state.changes()).isEqualTo(before + 4);
  }

  @Test
  void an_empty_program_has_no_place_to_step_to() {
    var tape = new TapeBuilder(Point.ZERO, new double[] {1, 1, 1}).build();
    var input =
        new WindowInput("empty.nc", List.of(), tape, SetupSheet.empty(), List.of(), "", List.of());
    ViewState empty = new ViewState(input, Preferences.first());
    empty.stepForward();
    empty.stepBack();
    empty.toStart();
    empty.toEnd();
    empty.toLine(1);
    empty.toShareOfTime(0.5);
    assertThat(empty.position()).isEqualTo(-1);
    assertThat(empty.line()).isZero();
    assertThat(ModalState.initial(LengthUnit.MILLIMETRE).workOffset()).isEqualTo("G54");
  }
}
