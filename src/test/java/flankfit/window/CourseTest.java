package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.picture.Theme;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ways through a program: steps, jumps, time, history. */
class CourseTest {
  private final Look look = new Look(Theme.LIGHT, LengthUnit.MILLIMETRE, 1, false);
  private final Loaded loaded = Loaded.of(WindowSamples.thread());
  private int changes;
  private final Course course = new Course(loaded, look, () -> changes++);

  @Test
  void jumps_go_to_findings_and_stay_at_the_last() {
    course.toFinding(true);
    assertThat(course.line()).isEqualTo(6); // of line 5, which makes no move
    course.toFinding(true);
    assertThat(course.line()).isEqualTo(14);
    course.toFinding(true);
    assertThat(course.line()).isEqualTo(14);
    course.toFinding(false);
    assertThat(course.line()).isEqualTo(6);
  }

  @Test
  void back_and_forth_come_to_where_jumps_came_from() {
    course.toLine(14);
    course.toLine(20);
    course.stepForward();
    int line = course.line();
    course.back();
    assertThat(course.line()).isEqualTo(14);
    course.back();
    assertThat(course.line()).isEqualTo(3);
    course.back();
    assertThat(course.line()).isEqualTo(3);
    course.forth();
    assertThat(course.line()).isEqualTo(14);
    course.forth();
    assertThat(course.line()).isEqualTo(line);
  }

  @Test
  void a_time_within_a_block_stands_within_it() {
    double begun = course.steps().begun(5);
    double until = course.steps().until(5);
    course.toTime(begun + 0.25 * (until - begun));
    assertThat(course.move()).isEqualTo(5);
    assertThat(course.position().share()).isCloseTo(0.25, within(1e-9));
    assertThat(course.scene().share()).isEqualTo(course.position().share());
    assertThat(course.seconds()).isCloseTo(begun + 0.25 * (until - begun), within(1e-9));
    course.stepForward();
    assertThat(course.position().share()).isEqualTo(1);
    course.toTime(1e9);
    assertThat(course.seconds()).isEqualTo(course.steps().seconds());
    course.toTime(-1);
    assertThat(course.seconds()).isZero();
    assertThat(changes).isPositive();
  }

  @Test
  void operations_are_told_by_tool_and_hole() {
    List<Operation> all = loaded.survey().operations().all();
    assertThat(all)
        .filteredOn(o -> o.kind() == Operation.Kind.THREAD)
        .extracting(Operation::label)
        .containsExactly("T2 port");
    course.toEnd();
    course.toThread(false);
    assertThat(course.move()).isLessThan(loaded.input().tape().size() - 1);
    assertThat(all.get(0).first()).isZero();
    for (int i = 1; i < all.size(); i++) {
      assertThat(all.get(i).first()).isEqualTo(all.get(i - 1).last() + 1);
    }
  }

  @Test
  void tool_changes_are_jumped_to_both_ways() {
    ModalState first = ModalState.initial(LengthUnit.MILLIMETRE);
    TapeBuilder builder = new TapeBuilder(Point.ZERO, new double[] {1, 1, 1});
    for (int i = 1; i <= 9; i++) {
      ModalState state = withTool(first, i < 4 ? 1 : i < 7 ? 2 : 3);
      builder.straight(MoveKind.LINE, i, 0, 0, i, i, state);
    }
    Tape tape = builder.build();
    Operations operations = Operations.of(tape, SetupSheet.empty());
    assertThat(operations.toolChanges()).containsExactly(0, 3, 6);
    Jumps jumps = new Jumps(operations.toolChanges());
    assertThat(jumps.after(0)).hasValue(3);
    assertThat(jumps.after(6)).isEmpty();
    assertThat(jumps.before(6)).hasValue(3);
    assertThat(jumps.before(0)).isEmpty();
    assertThat(new Jumps(new int[] {5, -1, 5, 2}).count()).isEqualTo(2);
  }

  private static ModalState withTool(ModalState s, int tool) {
    return new ModalState(
        s.distance(),
        s.plane(),
        s.compensation(),
        s.compensationOffset(),
        s.radiusRegister(),
        s.lengthRegister(),
        s.unit(),
        s.workOffset(),
        tool,
        500,
        s.spindle(),
        s.rpm(),
        s.coolant());
  }

  @Test
  void playing_follows_the_clock_at_its_rate_and_ends() {
    Playback playback = new Playback(10);
    assertThat(playback.times()).isEqualTo(10);
    playback.play(2);
    assertThat(playback.advance(0.1, 100)).isCloseTo(3, within(1e-12));
    playback.faster(1);
    assertThat(playback.advance(0.1, 100)).isCloseTo(13, within(1e-12));
    // A stall of a minute counts as a quarter of a second: no leap.
    assertThat(playback.advance(60, 100)).isCloseTo(38, within(1e-12));
    playback.faster(9);
    assertThat(playback.times()).isEqualTo(1000);
    assertThat(playback.advance(0.1, 100)).isEqualTo(100);
    assertThat(playback.isPlaying()).isFalse();
    playback.faster(-9);
    assertThat(playback.times()).isEqualTo(1);
  }

  @Test
  void a_player_glides_within_blocks_or_goes_block_by_block() {
    Desk desk = new Desk();
    Player player = new Player(course, look, desk, new Playback(1));
    player.toggle();
    assertThat(desk.notice()).isEqualTo("playing, real time");
    player.tick(0);
    assertThat(player.tick(200_000_000)).isTrue();
    double before = course.seconds();
    assertThat(player.tick(400_000_000)).isTrue();
    assertThat(course.seconds() - before).isCloseTo(0.2, within(1e-9));
    look.otherStill();
    assertThat(player.tick(500_000_000)).isTrue();
    assertThat(course.position().share()).isEqualTo(1);
    assertThat(course.seconds()).isGreaterThan(before + 0.3);
    player.toggle();
    assertThat(player.tick(900_000_000)).isFalse();
    course.toEnd();
    player.toggle();
    look.otherStill();
    player.tick(1_000_000_000);
    assertThat(course.seconds()).as("from the beginning again").isLessThan(1);
  }

  @Test
  void a_line_is_found_again_by_its_text_and_neighbours() {
    List<String> before = List.of("A", "G1", "B", "G1", "C");
    assertThat(NearestLine.of(before, 4, List.of("new", "A", "G1", "B", "G1", "C"))).isEqualTo(5);
    assertThat(NearestLine.of(before, 2, List.of("new", "A", "G1", "B", "G1", "C"))).isEqualTo(3);
    assertThat(NearestLine.of(before, 4, List.of("A", "G1", "C"))).isEqualTo(2);
    assertThat(NearestLine.of(before, 5, List.of("A"))).isEqualTo(1);
    assertThat(NearestLine.of(before, 3, List.of())).isEqualTo(1);
    assertThat(NearestLine.of(before, 3, before)).isEqualTo(3);
  }
}
