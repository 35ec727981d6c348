package flankfit.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.setup.Hole;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Cutter, path and blank taken from tool, tape and hole. */
class SweepInputsTest {
  private static final ModalState XY = ModalState.initial(LengthUnit.MILLIMETRE);
  private static final double[] RATES = {1000, 1000, 1000};

  private static ModalState in(Plane plane) {
    return new ModalState(
        XY.distance(),
        plane,
        XY.compensation(),
        0,
        0,
        0,
        XY.unit(),
        XY.workOffset(),
        0,
        100,
        XY.spindle(),
        0,
        false);
  }

  @Test
  void a_path_has_the_moves_of_the_tape_but_no_dwell() {
    TapeBuilder builder = new TapeBuilder(new Point(3, 0, 5), RATES);
    builder.straight(MoveKind.RAPID, 3, 0, 0, 1, 1, XY);
    builder.dwell(1, 2, 2, XY);
    builder.arc(-3, 0, 0.75, 0, 0, 3, 3, Math.PI, 3, 3, XY);
    builder.arc(-5, 0, 2.75, 0.75, -5, 2, 2, -Math.PI / 2, 4, 4, in(Plane.ZX));
    Tape tape = builder.build();
    CutterPath path = CutterPath.of(tape, 0, 3);
    assertThat(path.pieces().get(0))
        .isEqualTo(new PathPiece.Line(new Point(3, 0, 5), new Point(3, 0, 0), 0));
    assertThat(path.pieces().get(1))
        .isEqualTo(new PathPiece.Arc(0, 0, 3, 3, 0, Math.PI, 0, 0.75, 2));
    assertThat(path.pieces().size()).isGreaterThan(100);
    double[] p = new double[3];
    for (PathPiece piece : path.pieces().subList(2, path.pieces().size())) {
      assertThat(piece.move()).isEqualTo(3);
      piece.pointAt(0.5, p);
      assertThat(Math.hypot(p[0] + 5, p[2] - 0.75)).isCloseTo(2, within(1.01e-5));
    }
  }

  private static Tool mill(Optional<Double> pitch, Optional<Tool.Section> neck) {
    return new Tool(
        7,
        Tool.Kind.THREAD_MILL,
        false,
        14,
        4,
        Optional.of(
            new Tool.Teeth(
                pitch.isPresent() ? 5 : 1,
                pitch,
                Math.PI / 6,
                0.1875,
                new Tool.CutterForm.Straight(),
                0.6)),
        Math.PI,
        0,
        9,
        neck,
        Optional.of(new Tool.Section(16, 40)),
        Optional.empty(),
        0,
        0,
        "carbide",
        1);
  }

  @Test
  void a_cutter_has_rows_and_what_is_above_them() {
    Tooth tooth = PolylineTooth.straight(7, 0.1875, Math.PI / 6);
    Optional<Tool.Section> neck = Optional.of(new Tool.Section(11, 30));
    Cutter comb = Cutter.of(mill(Optional.of(1.5), neck), tooth);
    assertThat(comb.height(4)).isCloseTo(6.6, within(1e-12));
    assertThat(comb.rowReach()).isEqualTo(1.5);
    assertThat(comb.body())
        .containsExactly(
            new Cutter.Section("neck", 5.5, 9, 30), new Cutter.Section("shank", 8, 30, 70));
    Cutter single = Cutter.of(mill(Optional.empty(), neck), tooth);
    assertThat(single.rowReach()).isEqualTo(tooth.halfWidth(5.5, Flank.UP));
    assertThat(Cutter.of(mill(Optional.empty(), Optional.empty()), tooth).rowReach()).isInfinite();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Sweep.of(comb, new CutterPath(List.of())).drawnIn(0.1))
        .withMessageContaining("5 rows");
  }

  private static Hole hole(boolean boss, Optional<Double> depth, double bottomAngle) {
    return new Hole(
        "port",
        boss,
        1,
        2,
        10,
        18.5,
        depth,
        bottomAngle,
        Optional.of(new Hole.Countersink(boss ? 17 : 20.5, Math.PI / 2)),
        Optional.empty(),
        Optional.empty(),
        1);
  }

  @Test
  void a_blank_has_countersink_and_point() {
    Blank blind = Blank.of(hole(false, Optional.of(30.0), Math.toRadians(118)), -100);
    assertThat(blind.radius(9.5)).isCloseTo(9.75, within(1e-12));
    assertThat(blind.radius(0)).isEqualTo(9.25);
    assertThat(blind.radius(-20)).isEqualTo(9.25);
    double point = 9.25 / Math.tan(Math.toRadians(59));
    assertThat(blind.radius(-20 - point / 2)).isCloseTo(9.25 / 2, within(1e-9));
    assertThat(blind.radius(-21 - point)).isZero();
    assertThat(Blank.of(hole(false, Optional.of(30.0), Math.PI), -100).radius(-20.1)).isZero();
    Blank through = Blank.of(hole(false, Optional.empty(), Math.PI), -100);
    assertThat(through.radius(-99)).isEqualTo(9.25);
    Blank boss = Blank.of(hole(true, Optional.empty(), Math.PI), -100);
    assertThat(boss.radius(10)).isCloseTo(8.5, within(1e-12));
    assertThat(boss.radius(0)).isEqualTo(9.25);
  }

  @Test
  void on_a_chamfered_boss_what_lies_outside_is_open() {
    Blank boss = Blank.of(hole(true, Optional.empty(), Math.PI), -20);
    SweptWall wall =
        new SweptWall(false, 1, 2, new SweptWall.Range(-20, 10), List.of(boss), List.of());
    double[] ends = new double[4];
    assertThat(wall.open(0, 9.3, ends)).isEqualTo(1);
    assertThat(ends).containsExactly(-20, 10, 0, 0);
    assertThat(wall.open(0, 9, ends)).isEqualTo(1);
    assertThat(ends[0]).isCloseTo(9.5, within(1e-12));
    assertThat(wall.open(0, 8, ends)).isZero();
    assertThat(wall.radius(1, 9.5)).isCloseTo(9, within(1e-9));
  }

  @Test
  void a_row_ends_where_its_reach_does() {
    for (Tooth tooth :
        List.of(
            PolylineTooth.straight(7, 0.1875, Math.PI / 6),
            MilledCase.ground(true, 20, 1.5, 1, 14))) {
      FlankShape flank = tooth.side(Flank.UP).endingAt(0.4);
      assertThat(flank.width(3)).isCloseTo(0.4, within(1e-12));
      assertThat(flank.width(6.9)).isCloseTo(tooth.halfWidth(6.9, Flank.UP), within(1e-9));
      Station station = new Station(9.3, 3, 1.5);
      double whole = flank.reach(station, station.nearest(), 7);
      double direct = 0;
      for (double d = station.nearest(); d <= 7; d += 1e-5) {
        direct = Math.max(direct, station.risen(d) + flank.width(d));
      }
      assertThat(whole).isBetween(direct - 1e-12, direct + 1e-5);
      assertThat(tooth.side(Flank.UP).endingAt(0.01).width(7)).isEqualTo(0.01);
      assertThat(tooth.side(Flank.UP).endingAt(50)).isSameAs(tooth.side(Flank.UP));
    }
  }

  @Test
  void the_table_of_a_ground_flank_is_its_form() {
    double[][] mills = {{6, 1, 4}, {8, 1.25, 6.7}, {20, 2.5, 16}, {64, 6, 52}};
    for (double[] mill : mills) {
      for (boolean internal : new boolean[] {true, false}) {
        Tooth tooth = MilledCase.ground(internal, mill[0], mill[1], 1, mill[2]);
        double high = tooth.outsideRadius() - tooth.rootRadius();
        for (double share = 0; share <= 1; share += 0.00731) {
          double d = tooth.rootRadius() + share * high;
          assertThat(tooth.side(Flank.UP).width(d))
              .as("%s of %s", share, mill[0])
              .isCloseTo(tooth.halfWidth(d, Flank.UP), within(1e-11));
        }
      }
    }
  }
}
