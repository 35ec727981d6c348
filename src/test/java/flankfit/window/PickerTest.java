package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.Camera;
import flankfit.picture.View;
import flankfit.unit.LengthUnit;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What the pointer meets on the thread of a valve block, and on long paths. */
class PickerTest {
  /** A tenth of a pixel: places are found by chords of half a pixel. */
  private static final double CLOSE = 0.1;

  private final WindowInput input = WindowSamples.thread();
  private final Tape tape = input.tape();
  private final Camera camera = new Camera(View.ISO);

  PickerTest() {
    camera.resize(900, 700);
    camera.scale(0.05);
    camera.centre(new Point(0, 0, -18));
  }

  private Picker picker(Tape of, boolean centres) {
    return new Picker(of, MoveBoxes.of(of), camera, Picker.REACH, centres);
  }

  private double[] seen(Point p) {
    return new double[] {camera.column(p.x(), p.y(), p.z()), camera.row(p.x(), p.y(), p.z())};
  }

  private int helix() {
    for (int move = 0; move < tape.size(); move++) {
      if (tape.kind(move) == MoveKind.ARC && Math.abs(tape.sweep(move)) > 6) {
        return move;
      }
    }
    throw new AssertionError("the sample has no helix");
  }

  @Test
  void an_end_is_met_exactly_even_some_pixels_off() {
    Point end = tape.to(helix());
    double[] at = seen(end);
    Pick pick = picker(tape, false).at(at[0] + 2, at[1] - 3).orElseThrow();
    assertThat(pick.kind()).isEqualTo(Pick.Kind.END);
    assertThat(pick.point()).isEqualTo(end);
  }

  @Test
  void a_point_on_an_arc_lies_on_its_radius_and_near_the_pointer() {
    int move = helix();
    double[] p = new double[3];
    for (double share : new double[] {0.11, 0.34, 0.61, 0.87}) {
      tape.pointAt(move, share, p);
      double[] at = seen(new Point(p[0], p[1], p[2]));
      Pick pick = picker(tape, false).at(at[0], at[1]).orElseThrow();
      double[] met = seen(pick.point());
      assertThat(Math.hypot(met[0] - at[0], met[1] - at[1])).isLessThan(Picker.REACH);
      if (pick.move() == move) {
        double radius =
            Math.hypot(
                pick.point().x() - tape.centreU(move), pick.point().y() - tape.centreV(move));
        assertThat(radius).isCloseTo(tape.radius(move), within(1e-9));
        assertThat(Math.hypot(met[0] - at[0], met[1] - at[1])).isLessThan(CLOSE);
      }
    }
  }

  @Test
  void a_centre_counts_only_where_it_is_asked_for() {
    int move = helix();
    Point centre = ArcVectors.of(tape, move).centre();
    camera.look(View.PLAN);
    camera.scale(0.01);
    camera.centre(centre);
    double[] at = seen(centre);
    Pick pick = picker(tape, true).at(at[0], at[1]).orElseThrow();
    assertThat(pick.kind()).isEqualTo(Pick.Kind.CENTRE);
    assertThat(pick.point().x()).isEqualTo(tape.centreU(pick.move()));
    Optional<Pick> without = picker(tape, false).at(at[0], at[1]);
    assertThat(without.map(Pick::kind)).isNotEqualTo(Optional.of(Pick.Kind.CENTRE));
  }

  @Test
  void nothing_is_met_seven_pixels_away() {
    Tape line = PlainTapes.lines(2);
    camera.look(View.PLAN);
    camera.scale(0.01);
    camera.centre(line.to(0));
    double[] a = seen(line.from(1));
    double[] b = seen(line.to(1));
    double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    double nx = -(b[1] - a[1]) / length;
    double ny = (b[0] - a[0]) / length;
    double x = (a[0] + b[0]) / 2;
    double y = (a[1] + b[1]) / 2;
    assertThat(picker(line, false).at(x + 5.9 * nx, y + 5.9 * ny)).isPresent();
    assertThat(picker(line, false).at(x + 7 * nx, y + 7 * ny)).isEmpty();
  }

  @Test
  void of_two_moves_that_cross_the_one_nearer_to_the_eye_is_met() {
    ModalState state = ModalState.initial(LengthUnit.MILLIMETRE);
    var builder = new flankfit.motion.TapeBuilder(new Point(-10, 0, -5), new double[] {1, 1, 1});
    builder.straight(MoveKind.LINE, 10, 0, -5, 1, 1, state);
    builder.straight(MoveKind.LINE, 0, -10, 5, 2, 2, state);
    builder.straight(MoveKind.LINE, 0, 10, 5, 3, 3, state);
    Tape cross = builder.build();
    camera.look(View.PLAN);
    camera.centre(Point.ZERO);
    double[] at = seen(Point.ZERO);
    assertThat(picker(cross, false).at(at[0], at[1]).orElseThrow().move()).isEqualTo(2);
  }

  @Test
  void boxes_leave_out_nothing_that_a_look_at_every_move_would_meet() {
    Random random = new Random(11);
    Picker whole = picker(tape, false);
    for (int i = 0; i < 300; i++) {
      camera.turn(random.nextDouble() * 6, random.nextDouble() - 0.5);
      int move = random.nextInt(tape.size());
      if (tape.kind(move) == MoveKind.DWELL) {
        continue;
      }
      double[] p = new double[3];
      tape.pointAt(move, random.nextDouble(), p);
      double[] at = seen(new Point(p[0], p[1], p[2]));
      assertThat(whole.at(at[0], at[1])).isPresent();
    }
  }

  @Test
  void a_pick_in_a_million_moves_holds_up_no_frame() {
    Tape many = PlainTapes.lines(1_000_000);
    MoveBoxes boxes = MoveBoxes.of(many);
    camera.look(View.PLAN);
    camera.scale(1);
    camera.centre(many.to(500_000));
    long best = Long.MAX_VALUE;
    for (int i = 0; i < 8; i++) {
      long begun = System.nanoTime();
      new Picker(many, boxes, camera, Picker.REACH, false).at(450, 350);
      best = Math.min(best, System.nanoTime() - begun);
    }
    // A frame at 60 Hz is 16 ms; the bound leaves room for a loaded machine.
    assertThat(best).isLessThan(60_000_000L);
  }
}
