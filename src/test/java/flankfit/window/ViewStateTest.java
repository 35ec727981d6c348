package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.ModalState;
import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.nio.file.Path;
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
    state.course().stepForward();
    state.course().stepForward();
    assertThat(state.line()).isEqualTo(6);
    assertThat(state.course().stateRows())
        .contains(new StateWords.Row("compensation", "left, 7.800 mm, D12"))
        .contains(new StateWords.Row("distance", "incremental"))
        .contains(new StateWords.Row("tool", "T2 thread mill, 14 mm"));
    state.course().stepBack();
    assertThat(state.line()).isEqualTo(4);
    state.course().toEnd();
    assertThat(state.line()).isEqualTo(28);
    state.course().toStart();
    assertThat(state.line()).isEqualTo(3);
  }

  @Test
  void positions_are_told_as_programmed_and_as_they_are() {
    state.toLine(14);
    assertThat(state.course().positionRows())
        .containsExactly(
            new StateWords.Row("programmed", "X  10.000 Y   0.000 Z −18.813"),
            new StateWords.Row("actual", "X   2.700 Y   0.000 Z −18.813"));
    state.otherUnit();
    assertThat(state.unit()).isEqualTo(LengthUnit.INCH);
    assertThat(state.course().positionRows().get(0).value())
        .isEqualTo("X  0.3937 Y  0.0000 Z −0.7406");
  }

  @Test
  void turning_by_hand_leaves_the_standing_view_and_a_key_comes_back_to_it() {
    state.viewpoint().look(View.FRONT);
    assertThat(state.viewpoint().camera().showsDepth()).isTrue();
    state.viewpoint().orbit(40, 10);
    assertThat(state.viewpoint().standing()).isEmpty();
    assertThat(state.viewpoint().camera().showsDepth()).isFalse();
    state.viewpoint().look(View.SIDE);
    assertThat(state.viewpoint().standing()).contains(View.SIDE);
    assertThat(state.viewpoint().camera().showsDepth()).isTrue();
  }

  @Test
  void leaving_closes_one_thing_at_a_time_and_never_the_window() {
    state.desk().problems(List.of(new Problem("what", "where", "why", "fix")));
    state.toggleMeasuring();
    state.toggleHelp();
    state.leave();
    assertThat(state.help()).isFalse();
    assertThat(state.desk().problems()).hasSize(1);
    state.leave();
    assertThat(state.desk().problems()).isEmpty();
    assertThat(state.selection().isMeasuring()).isTrue();
    state.leave();
    assertThat(state.selection().isMeasuring()).isFalse();
    state.leave();
    assertThat(state.closes()).isFalse();
    assertThat(state.desk().notice()).contains("Q");
    state.quit();
    assertThat(state.closes()).isTrue();
  }

  @Test
  void what_is_chosen_is_remembered() {
    state.viewpoint().look(View.PLAN);
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
    state.viewpoint().zoom(1, 10, 10);
    state.viewpoint().pan(3, 3);
    state.course().stepForward();
    state.otherTheme();
    assertThat(state.changes()).isEqualTo(before + 4);
  }

  @Test
  void an_empty_program_has_no_place_to_step_to() {
    var tape = new TapeBuilder(Point.ZERO, new double[] {1, 1, 1}).build();
    var input =
        new WindowInput("empty.nc", List.of(), tape, SetupSheet.empty(), List.of(), "", List.of());
    ViewState empty = new ViewState(input, Preferences.first());
    empty.course().stepForward();
    empty.course().stepBack();
    empty.course().toStart();
    empty.course().toEnd();
    empty.toLine(1);
    empty.toShareOfTime(0.5);
    assertThat(empty.position()).isEqualTo(-1);
    assertThat(empty.line()).isZero();
    assertThat(ModalState.initial(LengthUnit.MILLIMETRE).workOffset()).isEqualTo("G54");
  }

  /** Loads that the test gives out. */
  private static final class Given implements Loads {
    private Loaded now = Loaded.of(WindowSamples.thread()).at(Stage.GAUGING, -1);
    private int stops;
    private int begins;

    @Override
    public Loaded latest() {
      return now;
    }

    @Override
    public void open(Path file) {
      // Nothing else is given.
    }

    @Override
    public void open(Samples.Sample sample) {
      // Nothing else is given.
    }

    @Override
    public void begin() {
      begins++;
    }

    @Override
    public void stop() {
      stops++;
      now = now.ended(Stage.STOPPED, LoadWords.stopped(now));
    }

    @Override
    public void wakes(Runnable whom) {
      // The test asks by itself.
    }
  }

  private static Loaded lines(long beginning, Stage stage, int moves) {
    var tape = PlainTapes.lines(moves);
    var input =
        new WindowInput("p.nc", List.of(), tape, SetupSheet.empty(), List.of(), "", List.of());
    Loaded whole = Loaded.of(input);
    return new Loaded(beginning, stage, 0.5, false, moves, input, whole.steps(), whole.scene(), "");
  }

  @Test
  void leaving_stops_what_is_under_way() {
    Given given = new Given();
    ViewState loading = new ViewState(given, Preferences.first());
    assertThat(loading.isLoading()).isTrue();
    loading.leave();
    assertThat(given.stops).isEqualTo(1);
    assertThat(loading.closes()).isFalse();
    assertThat(loading.follow()).isTrue();
    assertThat(loading.sentence())
        .isEqualTo("stopped: the path is whole and checked, but not gauged");
    loading.leave();
    assertThat(loading.closes()).isFalse();
    loading.reload();
    assertThat(given.begins).isEqualTo(1);
  }

  @Test
  void more_moves_leave_the_position_and_grow_the_picture() {
    Given given = new Given();
    given.now = lines(2, Stage.EXECUTING, 10);
    ViewState growing = new ViewState(given, Preferences.first());
    growing.course().stepForward();
    growing.viewpoint().takeFit();
    long changes = growing.changes();
    given.now = lines(2, Stage.EXECUTING, 80);
    assertThat(growing.follow()).isTrue();
    assertThat(growing.follow()).isFalse();
    assertThat(growing.position()).isEqualTo(1);
    assertThat(growing.changes()).isGreaterThan(changes);
    assertThat(growing.viewpoint().takeFit()).isTrue();
    assertThat(growing.viewpoint().fitted().union(growing.scene().bounds()))
        .isEqualTo(growing.viewpoint().fitted());
    growing.course().toEnd();
    assertThat(growing.line()).isEqualTo(81);
  }

  @Test
  void a_hand_that_chose_what_is_seen_is_left_alone() {
    Given given = new Given();
    given.now = lines(2, Stage.EXECUTING, 10);
    ViewState growing = new ViewState(given, Preferences.first());
    growing.viewpoint().takeFit();
    growing.viewpoint().zoom(2, 10, 10);
    given.now = lines(2, Stage.EXECUTING, 80);
    growing.follow();
    assertThat(growing.viewpoint().takeFit()).isFalse();
    growing.viewpoint().fit(false);
    assertThat(growing.viewpoint().takeFit()).isTrue();
  }

  @Test
  void the_lesson_begins_with_what_is_cut_here_unless_a_hand_chose_what_is_seen() {
    // No frame was drawn yet: the fit that a window begins with is still wanted.
    state.sheet(SheetName.LESSON);
    state.follow();
    assertThat(state.viewpoint().takeFit()).isTrue();
    assertThat(state.viewpoint().fitted().diagonal())
        .isLessThan(0.7 * state.scene().bounds().diagonal());
    state.follow();
    assertThat(state.viewpoint().takeFit()).as("fitted once").isFalse();
    state.viewpoint().fit(false);
    state.viewpoint().takeFit();
    state.follow();
    assertThat(state.viewpoint().takeFit()).as("the whole part was asked for").isFalse();
    state.sheet(SheetName.MOTION);
    state.sheet(SheetName.LESSON);
    state.follow();
    assertThat(state.viewpoint().takeFit()).isTrue();
    state.viewpoint().zoom(2, 10, 10);
    state.sheet(SheetName.MOTION);
    state.sheet(SheetName.LESSON);
    state.follow();
    assertThat(state.viewpoint().takeFit()).as("zoomed by hand").isFalse();
  }

  @Test
  void a_program_read_anew_comes_back_to_its_line() {
    Given given = new Given();
    given.now = lines(2, Stage.DONE, 60);
    ViewState reread = new ViewState(given, Preferences.first());
    reread.toLine(40);
    given.now = lines(3, Stage.EXECUTING, 5);
    reread.follow();
    assertThat(reread.line()).isEqualTo(2);
    given.now = lines(3, Stage.EXECUTING, 70);
    reread.follow();
    assertThat(reread.line()).isEqualTo(2);
    given.now = lines(3, Stage.DONE, 70);
    reread.follow();
    assertThat(reread.line()).isEqualTo(40);
  }

  @Test
  void pages_go_twenty_lines_and_stop_at_both_ends() {
    Given given = new Given();
    given.now = lines(2, Stage.DONE, 50);
    ViewState paged = new ViewState(given, Preferences.first());
    paged.course().page(1);
    assertThat(paged.line()).isEqualTo(22);
    paged.course().page(1);
    paged.course().page(1);
    assertThat(paged.line()).isEqualTo(51);
    paged.course().page(-1);
    assertThat(paged.line()).isEqualTo(31);
    paged.course().page(-1);
    paged.course().page(-1);
    assertThat(paged.line()).isEqualTo(2);
  }
}
