package flankfit.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.LengthUnit;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moves as they were written, read back. */
class TapeTest {
  private static final ModalState FEED_600 = Tapes.state(Plane.XY, 600);

  @Test
  void a_tape_without_moves_is_its_start_point() {
    Tape tape = new TapeBuilder(new Point(1, 2, 3), Tapes.RATES).build();
    assertThat(tape.size()).isZero();
    assertThat(tape.extents()).isEqualTo(new Extents(new Point(1, 2, 3), new Point(1, 2, 3)));
    assertThat(tape.states()).isEmpty();
  }

  @Test
  void every_move_begins_where_the_one_before_ends() {
    TapeBuilder builder = new TapeBuilder(new Point(1, 2, 3), Tapes.RATES);
    builder.straight(MoveKind.RAPID, 4, 5, 6, 10, 1, FEED_600);
    builder.straight(MoveKind.LINE, 7, 8, 9, 11, 2, FEED_600);
    builder.dwell(0.5, 12, 3, FEED_600);
    Tape tape = builder.build();
    assertThat(tape.from(0)).isEqualTo(new Point(1, 2, 3));
    assertThat(tape.from(1)).isEqualTo(tape.to(0)).isEqualTo(new Point(4, 5, 6));
    assertThat(tape.from(2)).isEqualTo(tape.to(2)).isEqualTo(new Point(7, 8, 9));
    assertThat(tape.fromX(0) + tape.fromY(0) + tape.fromZ(0)).isEqualTo(6);
    assertThat(tape.kind(0)).isEqualTo(MoveKind.RAPID);
    assertThat(tape.kind(1)).isEqualTo(MoveKind.LINE);
    assertThat(tape.kind(2)).isEqualTo(MoveKind.DWELL);
    assertThat(tape.line(2)).isEqualTo(12);
    assertThat(tape.block(2)).isEqualTo(3);
  }

  @Test
  void a_helix_keeps_centre_radius_sweep_and_rise() {
    Tape tape = Tapes.arc(Plane.XY, 10, -5, 3, 3, 0, -2 * Math.PI, 1.5);
    assertThat(tape.centreU(0)).isEqualTo(10);
    assertThat(tape.centreV(0)).isEqualTo(-5);
    assertThat(tape.radius(0)).isEqualTo(3).isEqualTo(tape.endRadius(0));
    assertThat(tape.sweep(0)).isEqualTo(-2 * Math.PI);
    assertThat(tape.startAngle(0)).isZero();
    assertThat(tape.rise(0)).isEqualTo(1.5);
  }

  @Test
  void lengths_are_straight_helical_or_none() {
    // hypot(2 pi 3, 1.5) = 18.909145..., worked by hand from the definition of the helix
    assertThat(Tapes.arc(Plane.XY, 0, 0, 3, 3, 0, 2 * Math.PI, 1.5).length(0))
        .isCloseTo(18.909145, within(1e-6));
    TapeBuilder builder = Tapes.builder();
    builder.straight(MoveKind.LINE, 2, 3, 6, 1, 1, FEED_600);
    builder.dwell(1, 2, 2, FEED_600);
    assertThat(builder.build().length(0)).isEqualTo(7);
    assertThat(builder.build().length(1)).isZero();
  }

  @Test
  void seconds_come_from_the_feed_the_slowest_axis_or_the_dwell() {
    TapeBuilder builder = Tapes.builder();
    builder.straight(MoveKind.LINE, 2, 3, 6, 1, 1, FEED_600);
    builder.straight(MoveKind.RAPID, 102, 103, 106, 1, 1, FEED_600);
    builder.dwell(1.25, 2, 2, FEED_600);
    builder.straight(MoveKind.LINE, 0, 0, 0, 3, 3, Tapes.STATE);
    Tape tape = builder.build();
    assertThat(tape.seconds(0)).isCloseTo(0.7, within(1e-15));
    assertThat(tape.seconds(1)).isCloseTo(0.6, within(1e-15));
    assertThat(tape.seconds(2)).isEqualTo(1.25);
    assertThat(tape.seconds(3)).isInfinite();
  }

  @Test
  void the_programmed_end_is_kept_apart_for_lines_arcs_and_dwells() {
    TapeBuilder builder = Tapes.builder();
    builder.straight(MoveKind.LINE, 2, 3, 6, 1, 1, FEED_600);
    builder.programmedTo(20, 30, 60);
    builder.arc(2, 3, 8, 0, 3, 2, 2, 2 * Math.PI, 2, 2, FEED_600);
    builder.programmedTo(21, 31, 61);
    builder.dwell(1.25, 3, 3, FEED_600);
    builder.programmedTo(22, 32, 62);
    builder.straight(MoveKind.LINE, 0, 0, 0, 4, 4, FEED_600);
    builder.programmedTo(0, 0, 0);
    Tape tape = builder.build();
    assertThat(tape.programmedTo(0)).isEqualTo(new Point(20, 30, 60));
    assertThat(tape.programmedTo(1)).isEqualTo(new Point(21, 31, 61));
    assertThat(tape.programmedTo(2)).isEqualTo(new Point(22, 32, 62));
    assertThat(tape.programmedTo(3)).isEqualTo(tape.to(3));
    assertThat(tape.radius(1)).isEqualTo(2);
    assertThat(tape.sweep(1)).isEqualTo(2 * Math.PI);
    assertThat(tape.seconds(2)).isEqualTo(1.25);
  }

  @Test
  void the_programmed_end_can_be_said_once() {
    TapeBuilder builder = Tapes.builder();
    builder.straight(MoveKind.LINE, 2, 3, 6, 1, 1, FEED_600);
    builder.programmedTo(20, 30, 60);
    assertThatIllegalStateException().isThrownBy(() -> builder.programmedTo(21, 30, 60));
  }

  @Test
  void a_move_keeps_its_state_whether_the_pool_holds_numbers_of_it_or_not() {
    TapeBuilder builder = Tapes.builder();
    builder.straight(MoveKind.LINE, 2, 3, 6, 1, 1, FEED_600);
    builder.straight(MoveKind.LINE, 3, 3, 6, 1, 1, Tapes.state(Plane.XY, 700));
    builder.programmedTo(20, 30, 60);
    builder.markInserted();
    builder.arc(2, 3, 8, 0, 3, 2, 2, 2 * Math.PI, 2, 2, Tapes.state(Plane.ZX, 800));
    builder.programmedTo(21, 31, 61);
    builder.dwell(1.25, 3, 3, Tapes.state(Plane.XY, 900));
    builder.straight(MoveKind.RAPID, 0, 0, 0, 4, 4, Tapes.state(Plane.XY, 700));
    double[] feeds = {600, 700, 800, 900, 700};
    Tape whole = builder.build();
    Tape later = builder.part(1, 5);
    for (int move = 0; move < feeds.length; move++) {
      assertThat(whole.state(move).feed()).isEqualTo(feeds[move]);
      if (move > 0) {
        assertThat(later.state(move - 1)).isEqualTo(whole.state(move));
        assertThat(later.kind(move - 1)).isEqualTo(whole.kind(move));
        assertThat(later.inserted(move - 1)).isEqualTo(whole.inserted(move));
        assertThat(later.programmedTo(move - 1)).isEqualTo(whole.programmedTo(move));
      }
    }
    assertThat(later.states()).hasSize(3);
    assertThat(later.radius(1)).isEqualTo(2);
    assertThat(later.seconds(2)).isEqualTo(1.25);
  }

  @Test
  void an_inserted_move_is_marked_and_no_other() {
    TapeBuilder builder = Tapes.builder();
    builder.straight(MoveKind.LINE, 1, 0, 0, 1, 1, FEED_600);
    builder.arc(1, 0, 0, 0, 0, 1, 1, 2 * Math.PI, 1, 1, FEED_600);
    builder.markInserted();
    builder.straight(MoveKind.LINE, 2, 0, 0, 1, 1, FEED_600);
    Tape tape = builder.build();
    assertThat(tape.inserted(0)).isFalse();
    assertThat(tape.inserted(1)).isTrue();
    assertThat(tape.kind(1)).isEqualTo(MoveKind.ARC);
    assertThat(tape.inserted(2)).isFalse();
  }

  @Test
  void nothing_can_be_said_of_a_last_move_that_is_not_there() {
    assertThatIllegalStateException().isThrownBy(() -> Tapes.builder().markInserted());
    assertThatIllegalStateException().isThrownBy(() -> Tapes.builder().programmedTo(1, 2, 3));
  }

  @Test
  void equal_states_are_kept_once_whatever_their_order() {
    TapeBuilder builder = Tapes.builder();
    for (int i = 0; i < 1000; i++) {
      builder.straight(MoveKind.LINE, i, 0, 0, i, i, Tapes.state(Plane.XY, 100 + i % 3));
    }
    Tape tape = builder.build();
    assertThat(tape.states()).hasSize(3).doesNotHaveDuplicates();
    for (int i = 0; i < 1000; i++) {
      assertThat(tape.state(i).feed()).isEqualTo(100 + i % 3);
      assertThat(tape.states().get(tape.stateIndex(i))).isEqualTo(tape.state(i));
    }
  }

  @Test
  void a_tape_does_not_change_while_its_builder_goes_on() {
    TapeBuilder builder = Tapes.builder();
    builder.straight(MoveKind.LINE, 1, 0, 0, 1, 1, FEED_600);
    Tape tape = builder.build();
    builder.markInserted();
    builder.programmedTo(5, 5, 5);
    builder.straight(MoveKind.LINE, 2, 0, 0, 2, 2, Tapes.STATE);
    assertThat(tape.size()).isEqualTo(1);
    assertThat(tape.inserted(0)).isFalse();
    assertThat(tape.programmedTo(0)).isEqualTo(new Point(1, 0, 0));
    assertThat(tape.states()).hasSize(1);
    assertThat(builder.size()).isEqualTo(2);
  }

  @Test
  void a_straight_move_takes_at_most_forty_bytes_in_columns() throws IllegalAccessException {
    TapeBuilder builder = Tapes.builder();
    int moves = 10_000;
    for (int i = 0; i < moves; i++) {
      builder.straight(MoveKind.LINE, i, -i, 0, i, i, FEED_600);
    }
    assertThat(columnBytes(builder.build())).isBetween(36L * moves, 40L * moves);
  }

  /** Bytes of all primitive columns but the three rapid rates. */
  private static long columnBytes(Tape tape) throws IllegalAccessException {
    long bytes = 0;
    for (Field field : Tape.class.getDeclaredFields()) {
      if (Modifier.isStatic(field.getModifiers()) || field.getName().equals("rapidRates")) {
        continue;
      }
      field.setAccessible(true);
      Object value = field.get(tape);
      if (value instanceof double[] numbers) {
        bytes += 8L * numbers.length;
      } else if (value instanceof int[] numbers) {
        bytes += 4L * numbers.length;
      }
    }
    return bytes;
  }

  @Test
  void the_words_of_an_arc_are_refused_for_other_moves() {
    TapeBuilder builder = Tapes.builder();
    builder.straight(MoveKind.LINE, 1, 0, 0, 1, 1, FEED_600);
    Tape tape = builder.build();
    assertThatIllegalArgumentException().isThrownBy(() -> tape.radius(0));
    assertThatIllegalArgumentException().isThrownBy(() -> tape.centreU(0));
    assertThatIllegalArgumentException().isThrownBy(() -> tape.sweep(0));
  }

  @Test
  void a_builder_refuses_what_no_move_can_have() {
    TapeBuilder builder = Tapes.builder();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.straight(MoveKind.ARC, 0, 0, 0, 1, 1, FEED_600));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.straight(MoveKind.LINE, Double.NaN, 0, 0, 1, 1, FEED_600));
    assertThatIllegalArgumentException().isThrownBy(() -> builder.dwell(-1, 1, 1, FEED_600));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.arc(0, 0, 0, 0, 0, -1, 1, 1, 1, 1, FEED_600));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.arc(0, 0, 0, 0, 0, 1, 1, Double.NaN, 1, 1, FEED_600));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.arc(0, 0, 0, 0, 0, 1, 1, 0, 1, 1, FEED_600));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.arc(0, 0, 0, Double.NaN, 0, 1, 1, 1, 1, 1, FEED_600));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TapeBuilder(Point.ZERO, new double[] {1, 0, 1}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TapeBuilder(Point.ZERO, new double[] {1, 1}));
    assertThat(builder.size()).isZero();
  }

  @Test
  void planes_turn_from_their_first_axis_to_their_second_about_the_normal() {
    for (Plane plane : Plane.values()) {
      assertThat(new int[] {plane.u(), plane.v(), plane.n()}).containsExactlyInAnyOrder(0, 1, 2);
      assertThat((plane.u() + 1) % 3).isEqualTo(plane.v());
      assertThat((plane.v() + 1) % 3).isEqualTo(plane.n());
    }
  }

  @Test
  void a_quarter_turn_runs_anticlockwise_in_every_plane() {
    for (Plane plane : Plane.values()) {
      Tape tape = Tapes.arc(plane, 0, 0, 2, 2, 0, Math.PI / 2, 0);
      double[] p = new double[3];
      tape.pointAt(0, 0.5, p);
      assertThat(p[plane.u()]).isCloseTo(Math.sqrt(2), within(1e-12));
      assertThat(p[plane.v()]).isCloseTo(Math.sqrt(2), within(1e-12));
      assertThat(p[plane.n()]).isEqualTo(1.25);
    }
  }

  @Test
  void boxes_join_and_have_a_middle_and_a_diagonal() {
    Extents a = new Extents(new Point(0, 0, 0), new Point(1, 2, 2));
    Extents b = new Extents(new Point(-1, 1, 0), new Point(0, 5, 1));
    assertThat(a.union(b)).isEqualTo(new Extents(new Point(-1, 0, 0), new Point(1, 5, 2)));
    assertThat(a.union(b)).isEqualTo(b.union(a));
    assertThat(a.middle()).isEqualTo(new Point(0.5, 1, 1));
    assertThat(a.diagonal()).isEqualTo(3);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Extents(new Point(0, 1, 0), new Point(1, 0, 0)));
  }

  @Test
  void a_point_has_three_finite_coordinates() {
    Point p = new Point(1, 2, 3);
    assertThat(Arrays.stream(new int[] {0, 1, 2}).mapToDouble(p::axis))
        .containsExactly(1.0, 2.0, 3.0);
    assertThat(p.distance(new Point(3, 5, 9))).isEqualTo(7);
    assertThatIllegalArgumentException().isThrownBy(() -> p.axis(3));
    assertThatIllegalArgumentException().isThrownBy(() -> new Point(0, Double.NaN, 0));
  }

  @Test
  void the_first_state_of_a_control_has_nothing_on() {
    ModalState state = ModalState.initial(LengthUnit.INCH);
    assertThat(state.unit()).isEqualTo(LengthUnit.INCH);
    assertThat(state.compensation()).isEqualTo(ModalState.Compensation.OFF);
    assertThat(state.spindle()).isEqualTo(ModalState.Spindle.OFF);
    assertThat(state.feed()).isZero();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 999, 1000, 5000})
  void a_straight_move_takes_at_most_forty_bytes_whatever_room_was_set_aside(int likelyMoves) {
    TapeBuilder builder =
        new TapeBuilder(Point.ZERO, Tapes.RATES, likelyMoves, TapeBuilder.MOST_MOVES);
    ModalState state = ModalState.initial(LengthUnit.MILLIMETRE);
    for (int move = 1; move <= 1000; move++) {
      builder.straight(MoveKind.LINE, move, 0, 0, move, move, state);
    }
    Tape tape = builder.build();
    assertThat(tape.size()).isEqualTo(1000);
    assertThat(tape.columnBytes()).isBetween(36_000L, 40_000L);
    assertThat(tape.toX(999)).isEqualTo(1000);
  }
}
