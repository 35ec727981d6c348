package flankfit.control;

import static flankfit.control.TapeRows.assertRows;
import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.Point;
import flankfit.setup.ControlSwitches.StartUp;
import org.junit.jupiter.api.Test;

/** Worked examples ex-28 to ex-40 and ex-55 of the language, section 18, as lists of moves. */
class RadiusCompensationExamplesTest {
  private static final int CW = -1;
  private static final int CCW = 1;

  private static Contour coverProfile() {
    return new Contour(0, 0, 200)
        .at(5)
        .rapid(-20, -10, 5)
        .line(-20, -10, -5)
        .on(5)
        .line(0, 0, -5)
        .line(0, 30, -5)
        .line(40, 30, -5)
        .line(40, 0, -5)
        .line(0, 0, -5)
        .off()
        .line(-10, -20, -5)
        .rapid(-10, -20, 50);
  }

  @Test
  void outside_corners_are_rounded() {
    Contour.Run run = coverProfile().run();
    assertRows(
        run.tape(),
        """
           5  rapid  -20  -10   5  -       -   -   -  -      -     -  196.277864     -  cw       off
           6  line   -20  -10  -5  -       -   -   -  -      -     -          10   400  cw       off
           7  line    -5    0  -5  -       -   -   -  -      -     -   18.027756   400  cw       left
           8  line    -5   30  -5  -       -   -   -  -      -     -          30   400  cw       left
           9  arc      0   35  -5  XY      0  30  -5  5    -90     0    7.853982   400  cw       left
           9  line    40   35  -5  -       -   -   -  -      -     -          40   400  cw       left
          10  arc     45   30  -5  XY     40  30  -5  5    -90     0    7.853982   400  cw       left
          10  line    45    0  -5  -       -   -   -  -      -     -          30   400  cw       left
          11  arc     40   -5  -5  XY     40   0  -5  5    -90     0    7.853982   400  cw       left
          11  line     0   -5  -5  -       -   -   -  -      -     -          40   400  cw       left
          12  line   -10  -20  -5  -       -   -   -  -      -     -   18.027756   400  cw       off
          13  rapid  -10  -20  50  -       -   -   -  -      -     -          55     -  cw       off
        """);
    assertThat(run.findings()).isEmpty();
    assertThat(run.tape().inserted(4)).isTrue();
    assertThat(run.tape().inserted(5)).isFalse();
    assertThat(run.tape().programmedTo(4).x()).isEqualTo(0);
    assertThat(run.tape().programmedTo(4).y()).isEqualTo(30);
    assertThat(run.tape().programmedTo(5).x()).isEqualTo(40);
  }

  @Test
  void outside_corners_are_mitred() {
    Contour.Run run = coverProfile().run(Contour.mitre());
    assertRows(
        run.tape(),
        """
           5  rapid  -20  -10   5  -       -   -   -  -      -     -  196.277864     -  cw       off
           6  line   -20  -10  -5  -       -   -   -  -      -     -          10   400  cw       off
           7  line    -5    0  -5  -       -   -   -  -      -     -   18.027756   400  cw       left
           8  line    -5   35  -5  -       -   -   -  -      -     -          35   400  cw       left
           9  line    45   35  -5  -       -   -   -  -      -     -          50   400  cw       left
          10  line    45   -5  -5  -       -   -   -  -      -     -          40   400  cw       left
          11  line     0   -5  -5  -       -   -   -  -      -     -          45   400  cw       left
          12  line   -10  -20  -5  -       -   -   -  -      -     -   18.027756   400  cw       off
          13  rapid  -10  -20  50  -       -   -   -  -      -     -          55     -  cw       off
        """);
    assertThat(run.findings()).isEmpty();
  }

  @Test
  void pocket_is_trimmed_at_its_inside_corners() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(2)
            .rapid(20, 15, 2)
            .line(20, 15, -4)
            .on(4.05)
            .line(20, 0, -4)
            .line(40, 0, -4)
            .line(40, 30, -4)
            .line(0, 30, -4)
            .line(0, 0, -4)
            .line(20, 0, -4)
            .off()
            .line(20, 15, -4)
            .rapid(20, 15, 50)
            .run();
    assertRows(
        run.tape(),
        """
           2  rapid     20     15   2  -       -   -   -  -      -     -  199.572042     -  cw       off
           3  line      20     15  -4  -       -   -   -  -      -     -           6   300  cw       off
           4  line      20   4.05  -4  -       -   -   -  -      -     -       10.95   300  cw       left
           5  line   35.95   4.05  -4  -       -   -   -  -      -     -       15.95   300  cw       left
           6  line   35.95  25.95  -4  -       -   -   -  -      -     -        21.9   300  cw       left
           7  line    4.05  25.95  -4  -       -   -   -  -      -     -        31.9   300  cw       left
           8  line    4.05   4.05  -4  -       -   -   -  -      -     -        21.9   300  cw       left
           9  line      20   4.05  -4  -       -   -   -  -      -     -       15.95   300  cw       left
          10  line      20     15  -4  -       -   -   -  -      -     -       10.95   300  cw       off
          11  rapid     20     15  50  -       -   -   -  -      -     -          54     -  cw       off
        """);
    assertThat(run.findings()).isEmpty();
  }

  @Test
  void line_and_arc_are_trimmed_where_they_cross() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(2)
            .rapid(0, 15, 2)
            .line(0, 15, -4)
            .on(3)
            .line(0, 0, -4)
            .line(10, 0, -4)
            .arc(CW, 30, 0, -4, 10, 0)
            .line(45, 0, -4)
            .off()
            .line(45, 15, -4)
            .run();
    assertRows(
        run.tape(),
        """
           2  rapid          0  15   2  -       -   -   -   -            -     -  198.567369     -  cw       off
           3  line           0  15  -4  -       -   -   -   -            -     -           6   300  cw       off
           4  line           0   3  -4  -       -   -   -   -            -     -          12   300  cw       left
           5  line    7.350889   3  -4  -       -   -   -   -            -     -    7.350889   300  cw       left
           6  arc    32.649111   3  -4  XY     20   0  -4  13  -153.315272     0   34.786132   300  cw       left
           7  line          45   3  -4  -       -   -   -   -            -     -   12.350889   300  cw       left
           8  line          45  15  -4  -       -   -   -   -            -     -          12   300  cw       off
        """);
    assertThat(run.findings()).isEmpty();
  }

  @Test
  void tangent_start_up_meets_the_published_contour() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(2)
            .rapid(0, 5, 0)
            .line(1, 5, 0)
            .on(0.5)
            .line(1, 4, 0)
            .arc(CCW, 2, 3, 0, 1, 0)
            .arc(CW, 3, 2, 0, 0, -1)
            .line(3, -1, 0)
            .arc(CW, 2, -2, 0, -1, 0)
            .line(-2, -2, 0)
            .arc(CW, -2.6, -0.2, 0, 0, 1)
            .line(1.4, 2.8, 0)
            .arc(CW, 2, 3, 0, 0.6, -0.8)
            .off()
            .run(Contour.style(StartUp.TANGENT));
    assertRows(
        run.tape(),
        """
           2  rapid          0     5  0  -       -   -   -    -            -     -  200.06249     -  cw       off
           3  line           1     5  0  -       -   -   -    -            -     -          1   100  cw       off
           4  line   1.433013  4.25  0  -       -   -   -    -            -     -   0.866025   100  cw       left
           5  arc         1.5     4  0  XY      1   4   0  0.5          -30     0   0.261799   100  cw       left
           5  arc           2   3.5  0  XY      2   4   0  0.5           90     0   0.785398   100  cw       left
           6  arc         3.5     2  0  XY      2   2   0  1.5          -90     0   2.356194   100  cw       left
           7  line        3.5    -1  0  -       -   -   -    -            -     -          3   100  cw       left
           8  arc           2  -2.5  0  XY      2  -1   0  1.5          -90     0   2.356194   100  cw       left
           9  line         -2  -2.5  0  -       -   -   -    -            -     -          4   100  cw       left
          10  arc        -2.9   0.2  0  XY     -2  -1   0  1.5  -143.130102     0   3.747137   100  cw       left
          11  line        1.1   3.2  0  -       -   -   -    -            -     -          5   100  cw       left
          12  arc           2   3.5  0  XY      2   2   0  1.5   -36.869898     0   0.965252   100  cw       left
        """);
    assertThat(run.findings()).isEmpty();
    assertThat(run.compensation().active()).isTrue();
  }

  @Test
  void own_normal_style_goes_round_the_first_and_the_last_corner() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(2)
            .rapid(10, -15, 2)
            .line(10, -15, -5)
            .on(5)
            .line(0, 0, -5)
            .line(0, 30, -5)
            .line(40, 30, -5)
            .off()
            .line(60, 20, -5)
            .run(Contour.style(StartUp.OWN_NORMAL));
    assertRows(
        run.tape(),
        """
           2  rapid         10        -15   2  -       -   -   -  -           -     -  198.819013     -  cw       off
           3  line          10        -15  -5  -       -   -   -  -           -     -           7   400  cw       off
           4  line   -4.160251  -2.773501  -5  -       -   -   -  -           -     -   18.708287   400  cw       left
           5  arc           -5          0  -5  XY      0   0  -5  5  -33.690068     0    2.940013   400  cw       left
           5  line          -5         30  -5  -       -   -   -  -           -     -          30   400  cw       left
           6  arc            0         35  -5  XY      0  30  -5  5         -90     0    7.853982   400  cw       left
           6  line          40         35  -5  -       -   -   -  -           -     -          40   400  cw       left
           7  arc    42.236068  34.472136  -5  XY     40  30  -5  5  -26.565051     0    2.318238   400  cw       left
           7  line          60         20  -5  -       -   -   -  -           -     -   22.912878   400  cw       off
        """);
    assertThat(run.findings()).isEmpty();
    assertThat(run.compensation().active()).isFalse();
  }

  @Test
  void blocks_without_plane_motion_are_made_at_the_trimmed_corner() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(2)
            .rapid(20, 15, 2)
            .on(4)
            .line(20, 0, 2)
            .line(20, 0, -4)
            .dwell(0.5)
            .line(40, 0, -4)
            .line(40, 0, -2)
            .line(40, 30, -2)
            .off()
            .line(20, 30, -2)
            .run();
    assertRows(
        run.tape(),
        """
           2  rapid  20  15   2  -       -   -   -  -      -     -  199.572042     -  cw       off
           3  line   20   4   2  -       -   -   -  -      -     -          11   300  cw       left
           4  line   20   4  -4  -       -   -   -  -      -     -           6   100  cw       left
           5  dwell  20   4  -4  -       -   -   -  -      -     -        0.5s     -  cw       left
           6  line   36   4  -4  -       -   -   -  -      -     -          16   300  cw       left
           7  line   36   4  -2  -       -   -   -  -      -     -           2   300  cw       left
           8  line   36  30  -2  -       -   -   -  -      -     -          26   300  cw       left
           9  line   20  30  -2  -       -   -   -  -      -     -          16   300  cw       off
        """);
    assertThat(run.codes()).containsExactly("RC17@5");
    assertThat(run.findings().get(0).why()).endsWith("by up to 4 mm");
    assertThat(run.tape().programmedTo(3)).isEqualTo(new Point(20, 0, -4));
  }

  @Test
  void rapid_while_on_goes_by_mitre_points() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(4)
            .rapid(-20, 0, 5)
            .line(-20, 0, -5)
            .on(5)
            .line(0, 0, -5)
            .line(0, 30, -5)
            .rapid(0, 30, 50)
            .rapid(40, 30, 50)
            .run();
    assertRows(
        run.tape(),
        """
           4  rapid  -20   0   5  -       -   -   -  -      -     -  196.022958     -  cw       off
           5  line   -20   0  -5  -       -   -   -  -      -     -          10   400  cw       off
           6  line    -5   0  -5  -       -   -   -  -      -     -          15   400  cw       left
           7  line    -5  30  -5  -       -   -   -  -      -     -          30   400  cw       left
           8  rapid   -5  30  50  -       -   -   -  -      -     -          55     -  cw       left
           9  rapid   -5  35  50  -       -   -   -  -      -     -           5     -  cw       left
           9  rapid   40  35  50  -       -   -   -  -      -     -          45     -  cw       left
        """);
    assertThat(run.findings()).isEmpty();
    assertThat(run.compensation().active()).isTrue();
    assertThat(run.compensation().toolAt()).contains(new Point(40, 35, 50));
  }

  @Test
  void tool_stays_displaced_after_a_lone_cancel_until_it_moves_in_the_plane() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(2)
            .rapid(20, 15, 2)
            .line(20, 15, -4)
            .on(4)
            .line(20, 0, -4)
            .line(40, 0, -4)
            .line(40, 15, -4)
            .off()
            .at(8)
            .then(c -> assertThat(c.toolAt()).contains(new Point(36, 15, -4)))
            .rapid(40, 15, 20)
            .rapid(20, 15, 20)
            .run();
    assertRows(
        run.tape(),
        """
           2  rapid  20  15   2  -       -   -   -  -      -     -  199.572042     -  cw       off
           3  line   20  15  -4  -       -   -   -  -      -     -           6   300  cw       off
           4  line   20   4  -4  -       -   -   -  -      -     -          11   300  cw       left
           5  line   36   4  -4  -       -   -   -  -      -     -          16   300  cw       left
           6  line   36  15  -4  -       -   -   -  -      -     -          11   300  cw       left
           8  rapid  36  15  20  -       -   -   -  -      -     -          24     -  cw       left
           9  rapid  20  15  20  -       -   -   -  -      -     -          16     -  cw       off
        """);
    assertThat(run.findings()).isEmpty();
  }

  @Test
  void quarter_entry_of_a_tool_centre_path_takes_wear() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(5)
            .rapid(0, 0, 5)
            .line(0, 0, -14)
            .on(-0.02)
            .line(1.5, -1.5, -14)
            .arc(CCW, 3, 0, -13.625, 0, 1.5)
            .arc(CCW, 3, 0, -12.125, -3, 0)
            .arc(CCW, 1.5, 1.5, -11.75, -1.5, 0)
            .off()
            .line(0, 0, -11.75)
            .rapid(0, 0, 50)
            .run();
    assertRows(
        run.tape(),
        """
           5  rapid     0      0        5  -        -   -        -     -      -      -        195     -  cw       off
           6  line      0      0      -14  -        -   -        -     -      -      -         19  1000  cw       off
           7  line    1.5  -1.52      -14  -        -   -        -     -      -      -   2.135509   180  cw       left
           8  arc    3.02      0  -13.625  XY     1.5   0      -14  1.52     90  0.375    2.41688   180  cw       left
           9  arc    3.02      0  -12.125  XY       0   0  -13.625  3.02    360    1.5  19.034415   180  cw       left
          10  arc     1.5   1.52   -11.75  XY     1.5   0  -12.125  1.52     90  0.375    2.41688   180  cw       left
          11  line      0      0   -11.75  -        -   -        -     -      -      -   2.135509   180  cw       off
          12  rapid     0      0       50  -        -   -        -     -      -      -      61.75     -  cw       off
        """);
    assertThat(run.findings()).isEmpty();
  }

  @Test
  void quarter_entry_of_a_part_contour_takes_radius_and_wear() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(5)
            .rapid(0, 0, 5)
            .line(0, 0, -14)
            .on(7.02)
            .line(1.5, -8.5, -14)
            .arc(CCW, 10, 0, -13.625, 0, 8.5)
            .arc(CCW, 10, 0, -12.125, -10, 0)
            .arc(CCW, 1.5, 8.5, -11.75, -8.5, 0)
            .off()
            .line(0, 0, -11.75)
            .rapid(0, 0, 50)
            .run();
    assertRows(
        run.tape(),
        """
           5  rapid     0      0        5  -        -   -        -     -      -      -       195     -  cw       off
           6  line      0      0      -14  -        -   -        -     -      -      -        19  1000  cw       off
           7  line    1.5  -1.48      -14  -        -   -        -     -      -      -  2.107226   180  cw       left
           8  arc    2.98      0  -13.625  XY     1.5   0      -14  1.48     90  0.375  2.354829   180  cw       left
           9  arc    2.98      0  -12.125  XY       0   0  -13.625  2.98    360    1.5  18.78388   180  cw       left
          10  arc     1.5   1.48   -11.75  XY     1.5   0  -12.125  1.48     90  0.375  2.354829   180  cw       left
          11  line      0      0   -11.75  -        -   -        -     -      -      -  2.107226   180  cw       off
          12  rapid     0      0       50  -        -   -        -     -      -      -     61.75     -  cw       off
        """);
    assertThat(run.findings()).isEmpty();
  }

  @Test
  void half_circle_entry_counts_from_the_programmed_point() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(5)
            .rapid(0, 0, 5)
            .line(0, 0, -14)
            .line(0, 1, -14)
            .on(0.02)
            .line(0, 0, -14)
            .arc(CCW, 3, 0, -13.25, 1.5, 0)
            .arc(CCW, 3, 0, -11.75, -3, 0)
            .arc(CCW, 0, 0, -11, -1.5, 0)
            .off()
            .line(0, 1, -11)
            .rapid(0, 1, 50)
            .run();
    assertRows(
        run.tape(),
        """
           5  rapid     0  0       5  -        -   -       -     -      -     -       195     -  cw       off
           6  line      0  0     -14  -        -   -       -     -      -     -        19  1000  cw       off
           7  line      0  1     -14  -        -   -       -     -      -     -         1  1000  cw       off
           8  line   0.02  0     -14  -        -   -       -     -      -     -    1.0002   180  cw       left
           9  arc    2.98  0  -13.25  XY     1.5   0     -14  1.48    180  0.75  4.709658   180  cw       left
          10  arc    2.98  0  -11.75  XY       0   0  -13.25  2.98    360   1.5  18.78388   180  cw       left
          11  arc    0.02  0     -11  XY     1.5   0  -11.75  1.48    180  0.75  4.709658   180  cw       left
          12  line      0  1     -11  -        -   -       -     -      -     -    1.0002   180  cw       off
          13  rapid     0  1      50  -        -   -       -     -      -     -        61     -  cw       off
        """);
    assertThat(run.findings()).isEmpty();
  }

  @Test
  void entry_arc_smaller_than_the_compensation_stops_before_the_start_up() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(2)
            .rapid(0, 0, 5)
            .line(0, 0, -14)
            .on(7)
            .line(5, -5, -14)
            .arc(CCW, 10, 0, -14, 0, 5)
            .arc(CCW, 10, 0, -14, -10, 0)
            .run();
    assertRows(
        run.tape(),
        """
           2  rapid  0  0    5  -       -   -   -  -      -     -     195     -  cw       off
           3  line   0  0  -14  -       -   -   -  -      -     -      19  1000  cw       off
        """);
    assertThat(run.codes()).containsExactly("RC05@5");
    assertThat(run.compensation().stopped()).isTrue();
  }

  @Test
  void compensation_switched_on_in_an_arc_stops() {
    Contour.Run run =
        new Contour(0, 0, 200)
            .at(2)
            .rapid(0, 0, 5)
            .line(0, 0, -14)
            .on(0.02)
            .arc(CCW, 3, 0, -14, 1.5, 0)
            .run();
    assertRows(
        run.tape(),
        """
           2  rapid  0  0    5  -       -   -   -  -      -     -     195     -  cw       off
           3  line   0  0  -14  -       -   -   -  -      -     -      19  1000  cw       off
        """);
    assertThat(run.codes()).containsExactly("RC02@4");
    assertThat(run.compensation().stopped()).isTrue();
  }
}
