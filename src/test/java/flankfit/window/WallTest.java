package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.picture.View;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The wall laid flat, and what the window does with it. */
class WallTest {
  /** Last digits of single precision at 60 mm. */
  private static final double SINGLE = 1e-4;

  private static final ModalState STATE = ModalState.initial(LengthUnit.MILLIMETRE);
  private final WallFrame wall = new WallFrame("port", 30, 20, 10, 0, -22);

  /** Three turns of a helix of lead 1.5 mm about the axis, radius 3 mm, from 100 degrees on. */
  private static Tape helix() {
    double from = Math.toRadians(100);
    Point start = new Point(30 + 3 * Math.cos(from), 20 + 3 * Math.sin(from), -17);
    TapeBuilder tape = new TapeBuilder(start, new double[] {9000, 9000, 9000});
    double[] end = {start.x(), start.y(), start.z() + 4.5};
    tape.arc(end[0], end[1], end[2], 30, 20, 3, 3, 6 * Math.PI, 5, 1, STATE);
    return tape.build();
  }

  /** A helix is a straight line when its cylinder is unrolled: height = lead × angle / turn. */
  @Test
  void a_helix_is_straight_with_the_slope_of_its_lead() {
    Tape tape = helix();
    assertThat(tape.state(0).plane()).isEqualTo(Plane.XY);
    FlatPath flat = new FlatPath(wall, tape, MoveBoxes.of(tape), 0.001);
    assertThat(flat.count()).isGreaterThan(100);
    double slope = 1.5 / wall.circumference();
    double across = 0;
    for (int i = 0; i < flat.count(); i++) {
      double dx = flat.number(i, 2) - flat.number(i, 0);
      double dz = flat.number(i, 3) - flat.number(i, 1);
      assertThat(dz).isCloseTo(slope * dx, within(SINGLE));
      assertThat(flat.number(i, 0)).isBetween(0f, (float) wall.circumference() + 1e-3f);
      assertThat(flat.number(i, 2)).isBetween(0f, (float) wall.circumference() + 1e-3f);
      across += dx;
    }
    // Three turns are three circumferences, cut at the seam and lost nowhere.
    assertThat(across).isCloseTo(3 * wall.circumference(), within(0.01));
    assertThat(flat.isComplete()).isTrue();
  }

  @Test
  void the_axis_has_no_angle_and_other_places_are_not_on_the_wall() {
    TapeBuilder tape = new TapeBuilder(new Point(30, 20, 5), new double[] {1, 1, 1});
    tape.straight(MoveKind.LINE, 30, 20, -17, 1, 1, STATE);
    tape.straight(MoveKind.LINE, 80, 20, -17, 2, 2, STATE);
    Tape built = tape.build();
    FlatPath flat = new FlatPath(wall, built, MoveBoxes.of(built), 0.001);
    for (int i = 0; i < flat.count(); i++) {
      assertThat(flat.move(i)).isEqualTo(1);
      assertThat(flat.number(i, 0)).isCloseTo(0, within(1e-3f));
    }
  }

  @Test
  void the_nearest_place_on_the_wall_is_picked_exactly() {
    Tape tape = helix();
    FlatPath flat = new FlatPath(wall, tape, MoveBoxes.of(tape), 0.001);
    double[] p = new double[3];
    tape.pointAt(0, 0.4, p);
    Point at = wall.flat(p[0], p[1], p[2]);
    Pick pick = flat.nearest(at.x() + 0.02, at.z() - 0.01, 0.5).orElseThrow();
    assertThat(pick.kind()).isEqualTo(Pick.Kind.LINE);
    assertThat(pick.share()).isCloseTo(0.4, within(0.01));
    Point end = wall.flat(tape.toX(0), tape.toY(0), tape.toZ(0));
    assertThat(flat.nearest(end.x(), end.z(), 0.5).orElseThrow().kind()).isEqualTo(Pick.Kind.END);
    assertThat(flat.nearest(5, 0, 0.5)).isEmpty();
  }

  @Test
  void the_wall_is_that_of_the_hole_the_tip_is_at_else_of_the_next_arc() {
    WindowInput input = WindowSamples.thread();
    assertThat(WallFrame.of(input.tape(), input.setup(), 3).map(WallFrame::name)).contains("port");
    Tape tape = helix();
    WallFrame found = WallFrame.of(tape, SetupSheet.empty(), 0).orElseThrow();
    assertThat(found.x()).isEqualTo(30);
    assertThat(found.radius()).isEqualTo(3);
    assertThat(WallFrame.of(PlainTapes.lines(4), SetupSheet.empty(), 0)).isEmpty();
  }

  @Test
  void unrolling_and_a_view_of_the_part_go_to_and_fro_and_share_the_rule_of_depth() {
    ViewState state = new ViewState(WindowSamples.thread(), Preferences.first());
    state.viewpoint().unroll();
    assertThat(state.viewpoint().isUnrolled()).isTrue();
    assertThat(state.viewpoint().wall()).isPresent();
    assertThat(state.viewpoint().camera().showsDepth()).isTrue();
    assertThat(state.viewpoint().takeFit()).isTrue();
    assertThat(state.viewpoint().fitted()).isEqualTo(state.viewpoint().wall().orElseThrow().box());
    DepthScale depth = DepthScale.of(state, new Layout(1000, 700, 1), 1);
    assertThat(depth.heightAt(depth.rowOf(-12.5))).isCloseTo(-12.5, within(1e-9));
    assertThat(depth.depthAt(depth.rowOf(state.scene().top()))).isCloseTo(0, within(1e-9));
    state.viewpoint().fitBlock();
    assertThat(state.viewpoint().takeFit()).isTrue();
    state.viewpoint().look(View.FRONT);
    assertThat(state.viewpoint().isUnrolled()).isFalse();
    assertThat(state.viewpoint().wall()).isEmpty();
    assertThat(state.preferences(800, 600).wall()).isFalse();
  }

  @Test
  void what_is_dropped_is_opened_and_a_sheet_alone_is_explained() {
    ViewState state = new ViewState(WindowSamples.thread(), Preferences.first());
    state.opening().drop(List.of(Path.of("p.setup.toml")));
    assertThat(state.desk().problems()).hasSize(1);
    assertThat(state.desk().problems().get(0).fix()).contains("drop the program");
    state.opening().drop(List.of());
    state.leave();
    assertThat(state.desk().problems()).isEmpty();
    assertThat(Optional.of(state.desk().isWelcome())).contains(false);
  }
}
