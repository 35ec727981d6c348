package flankfit.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Point;
import flankfit.unit.Angles;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The wall of real paths where something simpler tells what it must be. */
class SweptWallTest {
  /** An M20 with straight flanks, several turns, half-turn entry from the axis. */
  static MilledCase m20(double pitch, double mill, Tooth tooth, double riseShare, double turns) {
    return new MilledCase(
        "M20",
        true,
        20,
        pitch,
        1,
        mill,
        true,
        true,
        MilledCase.Entry.HALF,
        riseShare,
        turns,
        1,
        tooth,
        0,
        0,
        0.4);
  }

  static GroovePhase phase(MilledCase milled) {
    double z = milled.zStart() + milled.cutter().lowestRow();
    double per = milled.perRadian();
    return new GroovePhase(z - per * milled.startAngle(), per, milled.pitch());
  }

  @Test
  void away_from_the_ends_it_is_the_regular_thread() {
    for (Tooth tooth :
        List.of(
            MilledCase.straight(14, 1.5),
            MilledCase.ground(true, 20, 1.5, 1, 14),
            MilledCase.lopsided(14, 1.5))) {
      MilledCase milled = m20(1.5, 14, tooth, 0.5, 3);
      RegularThread thread =
          new RegularThread(new HelicalGroove(tooth, true, 3, 1.5), 1.5, milled.blankRadius());
      Wall regular = new RegularWall(thread, phase(milled), milled.range());
      Wall wall = milled.wall();
      double[] ends = new double[64];
      double[] own = new double[64];
      Random random = new Random(3);
      for (int i = 0; i < 200; i++) {
        double theta = 20 * random.nextDouble() - 10;
        double rho = milled.blankRadius() + 1e-3 + 0.85 * random.nextDouble() * milled.depth();
        int n = wall.open(theta, rho, own);
        regular.open(theta, rho, ends);
        // The middle one of three or four grooves has turns on both sides.
        assertThat(n).isGreaterThanOrEqualTo(3);
        double middle = (own[2] + own[3]) / 2;
        int k = nearest(ends, middle);
        assertThat(own[2]).isCloseTo(ends[2 * k], within(1e-8));
        assertThat(own[3]).isCloseTo(ends[2 * k + 1], within(1e-8));
        double z = middle + milled.pitch() * (random.nextDouble() - 0.5);
        assertThat(wall.radius(theta, z)).isCloseTo(regular.radius(theta, z), within(1e-6));
      }
    }
  }

  private static int nearest(double[] ends, double z) {
    int k = 0;
    while (ends[2 * k + 1] < z) {
      k++;
    }
    return k;
  }

  /** The whole of it may be turned, moved and mirrored. */
  @Test
  void it_turns_shifts_and_mirrors_with_the_motion() {
    Random random = new Random(11);
    for (MilledCase a : SweptWallProperties.cases().subList(0, 12)) {
      MilledCase turned = with(a, a.rightHand(), a.anticlockwise(), 3, 4, a.startAngle() + 1);
      MilledCase mirrored = with(a, !a.rightHand(), !a.anticlockwise(), 0, 0, -a.startAngle());
      for (int i = 0; i < 10; i++) {
        double theta = 6.28 * random.nextDouble();
        double rho = a.blankRadius() + random.nextDouble() * (a.bottomRadius() - a.blankRadius());
        double[] one = new double[64];
        double[] other = new double[64];
        int n = a.wall().open(theta, rho, one);
        assertThat(turned.wall().open(theta + 1, rho, other)).isEqualTo(n);
        assertThat(other).containsExactly(one, within(1e-6));
        assertThat(mirrored.wall().open(-theta, rho, other)).isEqualTo(n);
        assertThat(other).containsExactly(one, within(1e-6));
        Wall raised = a.wall(a.blank(), a.sweep().shifted(0, 0, 0.25));
        assertThat(raised.open(theta, rho, other)).isEqualTo(n);
        for (int k = 0; k < 2 * n; k++) {
          boolean clipped = Math.abs(one[k]) >= a.range().top() - 0.25;
          assertThat(other[k]).isCloseTo(clipped ? other[k] : one[k] + 0.25, within(1e-6));
        }
      }
    }
  }

  private static MilledCase with(
      MilledCase a, boolean right, boolean anticlockwise, double x, double y, double start) {
    return new MilledCase(
        a.name(),
        a.internal(),
        a.major(),
        a.pitch(),
        a.starts(),
        a.mill(),
        right,
        anticlockwise,
        a.entry(),
        a.riseShare(),
        a.turns(),
        a.rows(),
        a.tooth(),
        x,
        y,
        start);
  }

  /** Figures of a direct maximisation over path and direction, to the tenth of a micrometre. */
  @ParameterizedTest(name = "M{0}x{1} mill {2}, {3} degrees, a = {4} e, rise {5} P")
  @CsvFileSource(resources = "entry-marks.csv", numLinesToSkip = 3)
  void entry_marks_are_those_of_direct_maximisation(
      double major,
      double pitch,
      double mill,
      double sweep,
      double arcShare,
      double riseShare,
      double direct,
      Double degreesTold) {
    Tooth tooth = MilledCase.straight(mill, pitch);
    MilledCase.Entry entry = sweep > 100 ? MilledCase.Entry.HALF : MilledCase.Entry.QUARTER;
    MilledCase milled =
        new MilledCase(
            "",
            true,
            major,
            pitch,
            1,
            mill,
            true,
            true,
            entry,
            360 / sweep * riseShare,
            3,
            1,
            tooth,
            0,
            0,
            0);
    HelicalGroove groove = new HelicalGroove(tooth, true, milled.pathRadius(), pitch);
    RegularThread thread = new RegularThread(groove, pitch, milled.blankRadius());
    Wall wall = milled.wall();
    GroovePhase phase = phase(milled);
    double deepest = 0;
    double at = 0;
    for (double degrees = -45; degrees <= 5; degrees += 0.3) {
      double theta = Angles.toRadians(degrees);
      for (int side = -1; side <= 1; side += 2) {
        double z = phase.middle(0, theta) + side * pitch / 4;
        double beyond = wall.radius(theta, z) - thread.surface(side * pitch / 4);
        if (beyond > deepest) {
          deepest = beyond;
          at = degrees;
        }
      }
    }
    assertThat(deepest * 1000).isCloseTo(direct, within(0.06));
    if (degreesTold != null) {
      assertThat(at).isCloseTo(degreesTold, within(0.4));
    }
  }

  @Test
  void a_mill_of_hardly_any_radius_leaves_its_own_v() {
    // The over-cut goes with the mill's radius: p² r / (2 tan²α e ρ).
    double before = Double.POSITIVE_INFINITY;
    for (double mill : new double[] {16, 8, 4, 2, 1}) {
      Tooth tooth = MilledCase.straight(mill, 0.5);
      MilledCase milled =
          new MilledCase(
              "",
              true,
              64,
              0.5,
              1,
              mill,
              true,
              true,
              MilledCase.Entry.HALF,
              0.5,
              3,
              1,
              tooth,
              0,
              0,
              0);
      double[] ends = new double[64];
      milled.wall().open(1, 31.85, ends);
      double v = 2 * tooth.halfWidth(mill / 2 - 0.15, Flank.UP);
      double over = ends[3] - ends[2] - v;
      double p = 0.5 / Angles.TURN;
      double r = mill / 2 - 0.15;
      double expected = p * p * r / Math.tan(MilledCase.ANGLE) / (32 - mill / 2) / 31.85;
      assertThat(over).isPositive().isCloseTo(expected, within(0.02 * expected));
      assertThat(over).isLessThan(before);
      before = over;
    }
  }

  @Test
  void passes_leave_together_what_reaches_beyond() {
    MilledCase milled = m20(1.5, 14, MilledCase.straight(14, 1.5), 0.5, 2);
    Sweep finish = milled.sweep();
    Sweep rough = finish.drawnIn(0.2);
    Sweep late = finish.shifted(0, 0, 0.02);
    double[] one = new double[64];
    double[] all = new double[64];
    milled.wall().open(2, 9.5, one);
    milled.wall(milled.blank(), rough, finish, finish).open(2, 9.5, all);
    assertThat(all).containsExactly(one);
    milled.wall(milled.blank(), rough, late, finish).open(2, 9.5, all);
    assertThat(all[3]).isCloseTo(one[3] + 0.02, within(1e-9));
    assertThat(all[2]).isEqualTo(one[2]);
  }

  @Test
  void rows_drawn_in_leave_the_groove_of_a_smaller_path() {
    Tooth tooth = MilledCase.straight(14, 1.5);
    MilledCase single = m20(1.5, 14, tooth, 0.5, 1.1);
    Cutter comb = new Cutter(tooth, 3, 1.5, 0.7, 1.5, List.of());
    Sweep sweep = Sweep.of(comb, single.path()).drawnIn(0.03, 0.02, 0.01);
    double[] ends = new double[64];
    int n = single.wall(single.blank(), sweep).open(4, 9.6, ends);
    assertThat(n).isEqualTo(3);
    for (int row = 0; row < 3; row++) {
      double path = 3 - 0.01 * (3 - row);
      double half = new HelicalGroove(tooth, true, path, 1.5).halfWidth(9.6, Flank.UP);
      assertThat(ends[2 * row + 1] - ends[2 * row]).isCloseTo(2 * half, within(1e-9));
    }
  }

  @Test
  void on_an_oval_path_the_wall_stands_out_where_the_oval_does() {
    Tooth tooth = MilledCase.straight(14, 1.5);
    MilledCase milled = m20(1.5, 14, tooth, 0.5, 2);
    CutterPath oval = milled.path().stretched(0, 0, 1 + 0.01 / 3, 1 - 0.01 / 3);
    Wall wall = milled.wall(milled.blank(), Sweep.of(milled.cutter(), oval));
    double[] along = new double[64];
    double[] across = new double[64];
    wall.open(2 * Math.PI, 9.6, along);
    wall.open(1.5 * Math.PI, 9.6, across);
    double more = along[3] - along[2];
    double less = across[3] - across[2];
    // Between them the path's radius changes by 0.020; the curvature of an oval takes some off.
    assertThat(more - less).isBetween(1.5 * 0.02 * Math.tan(MilledCase.ANGLE), 0.024);
    double[] p = new double[3];
    for (PathPiece piece : oval.pieces()) {
      for (double share = 0; share <= 1; share += 0.05) {
        piece.pointAt(share, p);
        double a = p[0] / 3.01;
        double b = p[1] / 2.99;
        if (piece instanceof PathPiece.Arc arc && arc.radius() > 2.9) {
          assertThat(Math.hypot(a, b)).isCloseTo(1, within(3e-7));
        }
      }
    }
  }

  @Test
  void a_comb_gone_round_twice_with_a_wrong_lead_meets_its_own_grooves_shifted() {
    Tooth tooth = MilledCase.straight(14, 1.5);
    double lead = 1.512;
    double per = lead / Angles.TURN;
    Cutter comb = new Cutter(tooth, 6, 1.5, 0.7, 1.5, List.of());
    CutterPath turns =
        new CutterPath(
            List.of(
                new PathPiece.Arc(0, 0, 3, 3, 0, 2.5 * Angles.TURN, -12, -12 + 2.5 * lead, -1)));
    SweptWall wall =
        new SweptWall(
            true,
            0,
            0,
            new SweptWall.Range(-20, 0),
            List.of(Blank.hole(9.2, -20)),
            List.of(Sweep.of(comb, turns)));
    HelicalGroove groove = new HelicalGroove(tooth, true, 3, lead);
    JoinedGroove joined =
        new JoinedGroove(
            List.of(new JoinedGroove.Member(groove, 0), new JoinedGroove.Member(groove, 0.012)));
    double[] ends = new double[64];
    // At a right angle and beyond the half turn the line meets two passages, before it three.
    double theta = 1.4 * Math.PI;
    assertThat(wall.open(theta, 9.5, ends)).isEqualTo(7);
    double middle = -12 + 0.7 + per * theta + 3 * 1.5;
    assertThat(ends[7]).isCloseTo(middle + joined.halfWidth(9.5, Flank.UP), within(1e-8));
    assertThat(ends[6]).isCloseTo(middle - joined.halfWidth(9.5, Flank.DOWN), within(1e-8));
    wall.open(0.5 * Math.PI, 9.5, ends);
    double single = groove.width(9.5);
    assertThat(ends[7] - ends[6]).isCloseTo(single + 0.024, within(1e-8));
  }

  @Test
  void seen_from_another_axis_the_same_metal_is_gone() {
    MilledCase milled = m20(1.5, 14, MilledCase.ground(true, 20, 1.5, 1, 14), 1, 1.3);
    SweptWall own = milled.wall(Blank.hole(1, -30), milled.sweep());
    SweptWall off =
        new SweptWall(
            true,
            0.05,
            -0.02,
            milled.range(),
            List.of(Blank.hole(1, -30)),
            List.of(milled.sweep()));
    double[] one = new double[64];
    double[] other = new double[64];
    for (double theta = 0; theta < 6; theta += 0.31) {
      double px = 9.6 * Math.cos(theta) - 0.05;
      double py = 9.6 * Math.sin(theta) + 0.02;
      int n = own.open(theta, 9.6, one);
      assertThat(off.open(Math.atan2(py, px), Math.hypot(px, py), other)).isEqualTo(n);
      assertThat(other).containsExactly(one, within(1e-9));
    }
  }

  @Test
  void the_bored_hole_is_open_too() {
    Blank blind =
        new Blank(
            true,
            List.of(
                new Blank.Corner(-12, 0),
                new Blank.Corner(-10, 4),
                new Blank.Corner(-1, 4),
                new Blank.Corner(0, 5)));
    SweptWall wall =
        new SweptWall(true, 0, 0, new SweptWall.Range(-15, 0), List.of(blind), List.of());
    double[] ends = new double[4];
    assertThat(wall.open(1, 2, ends)).isEqualTo(1);
    assertThat(ends).containsExactly(new double[] {-11, 0, 0, 0}, within(1e-12));
    assertThat(wall.open(1, 4.5, ends)).isEqualTo(1);
    assertThat(ends[0]).isCloseTo(-0.5, within(1e-12));
    assertThat(wall.open(1, 5.5, ends)).isZero();
    assertThat(wall.radius(2, -5)).isEqualTo(4);
    assertThat(wall.radius(2, -11)).isCloseTo(2, within(1e-12));
    assertThat(wall.radius(2, -13)).isZero();
  }

  @Test
  void a_neck_too_thick_rubs_and_takes_metal_away() {
    Tooth tooth = MilledCase.straight(14, 1.5);
    MilledCase milled = m20(1.5, 14, tooth, 0.5, 1);
    Cutter.Section neck = new Cutter.Section("neck", 6.4, 2, 8);
    Cutter.Section slim = new Cutter.Section("slim", 6.1, 2, 8);
    Cutter thick = new Cutter(tooth, 1, 0, 0.7, 1.5, List.of(neck));
    Cutter thin = new Cutter(tooth, 1, 0, 0.7, 1.5, List.of(slim));
    SweptWall rubbed = milled.wall(milled.blank(), Sweep.of(thick, milled.path()));
    SweptWall free = milled.wall(milled.blank(), Sweep.of(thin, milled.path()));
    assertThat(free.rubs()).isEmpty();
    assertThat(rubbed.rubs()).hasSize(1);
    Rub rub = rubbed.rubs().get(0);
    assertThat(rub.section().name()).isEqualTo("neck");
    assertThat(rub.depth()).isCloseTo(3 + 6.4 - milled.blankRadius(), within(1e-9));
    double theta = milled.startAngle() + 2;
    double z = milled.zStart() + 2 * milled.perRadian() + 5;
    assertThat(rubbed.radius(theta, z)).isCloseTo(9.4, within(1e-6));
    assertThat(free.radius(theta, z)).isCloseTo(milled.blankRadius(), within(1e-9));
  }

  @Test
  void a_helix_in_many_arcs_and_a_near_circle_are_as_one() {
    MilledCase milled = m20(1.5, 14, MilledCase.straight(14, 1.5), 0.5, 2);
    CutterPath whole = milled.path();
    CutterPath split = new CutterPath(quartered(whole));
    double[] one = new double[64];
    double[] other = new double[64];
    for (double theta = 0; theta < 6; theta += 0.7) {
      milled.wall(milled.blank(), Sweep.of(milled.cutter(), whole)).open(theta, 9.7, one);
      milled.wall(milled.blank(), Sweep.of(milled.cutter(), split)).open(theta, 9.7, other);
      assertThat(other).containsExactly(one, within(1e-9));
    }
  }

  private static List<PathPiece> quartered(CutterPath path) {
    PathPiece.Arc helix = (PathPiece.Arc) path.pieces().get(1);
    List<PathPiece> pieces = new ArrayList<>();
    pieces.add(path.pieces().get(0));
    double[] p = new double[3];
    double z = helix.zStart();
    for (int i = 1; i <= 8; i++) {
      helix.pointAt(i / 8.0, p);
      double start =
          Math.IEEEremainder(helix.startAngle() + helix.sweep() * (i - 1) / 8, 2 * Math.PI);
      pieces.add(
          new PathPiece.Arc(helix.x(), helix.y(), 3, 3, start, helix.sweep() / 8, z, p[2], i));
      z = p[2];
    }
    pieces.add(path.pieces().get(2));
    return pieces;
  }

  @Test
  void a_plunge_along_the_axis_leaves_the_cutters_outline() {
    Tooth tooth = MilledCase.straight(14, 1.5);
    CutterPath plunge =
        new CutterPath(List.of(new PathPiece.Line(new Point(3, 0, -4), new Point(3, 0, -6), -1)));
    SweptWall wall =
        new SweptWall(
            true,
            0,
            0,
            new SweptWall.Range(-20, 0),
            List.of(Blank.hole(9.25, -20)),
            List.of(Sweep.of(Cutter.single(tooth), plunge)));
    double[] ends = new double[8];
    assertThat(wall.open(0, 9.6, ends)).isEqualTo(1);
    double half = tooth.halfWidth(6.6, Flank.UP);
    assertThat(ends[0]).isCloseTo(-6 - half, within(1e-12));
    assertThat(ends[1]).isCloseTo(-4 + half, within(1e-12));
  }
}
