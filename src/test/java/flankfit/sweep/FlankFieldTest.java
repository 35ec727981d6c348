package flankfit.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.Angles;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Flanks followed along the grooves. */
class FlankFieldTest {
  private static double[] degrees(int n) {
    return IntStream.range(0, n).mapToDouble(i -> Angles.TURN * i / n).toArray();
  }

  @Test
  void grooves_are_followed_along_the_helix_and_counted_from_the_mouth() {
    for (boolean right : new boolean[] {true, false}) {
      Tooth tooth = MilledCase.straight(14, 1.5);
      MilledCase milled =
          new MilledCase(
              "",
              true,
              20,
              1.5,
              1,
              14,
              right,
              true,
              MilledCase.Entry.HALF,
              0.5,
              4,
              1,
              tooth,
              5,
              6,
              1);
      GroovePhase phase = SweptWallTest.phase(milled);
      double[] radii = {9.3, 9.5, 9.7, 10.2};
      FlankField field = FlankField.of(milled.wall(), phase, degrees(36), radii);
      assertThat(field.grooves()).isEqualTo(5);
      double half = new HelicalGroove(tooth, true, 3, 1.5).halfWidth(9.5, Flank.UP);
      int whole = 0;
      for (int i = 0; i < field.angles(); i++) {
        for (int k = 0; k < field.grooves(); k++) {
          assertThat(field.z(i, k, Flank.UP, 3)).isNaN();
          double up = field.z(i, k, Flank.UP, 1);
          double down = field.z(i, k, Flank.DOWN, 1);
          double middle = field.phase().middle(k, field.theta(i));
          if (Math.abs(up - middle - half) < 1e-8 && Math.abs(middle - down - half) < 1e-8) {
            whole++;
          }
          double[] flank = new double[4];
          field.copyFlank(i, k, Flank.DOWN, flank);
          assertThat(Double.valueOf(flank[1])).isEqualTo(Double.valueOf(down));
        }
      }
      // Four turns of 36 angles, less the few near both ends and more by what the arcs cut.
      assertThat(whole).isBetween(138, 146);
    }
  }

  @Test
  void the_outcome_is_the_same_however_it_is_shared_out() {
    MilledCase milled = SweptWallTest.m20(1.5, 14, MilledCase.straight(14, 1.5), 1, 2);
    GroovePhase phase = SweptWallTest.phase(milled);
    double[] radii = {9.4, 9.8};
    FlankField all = FlankField.of(milled.wall(), phase, degrees(48), radii);
    for (int i = 0; i < 48; i++) {
      double[] one = {all.theta(i)};
      FlankField alone = FlankField.of(milled.wall(), all.phase(), one, radii);
      for (int k = 0; k < alone.grooves(); k++) {
        int same = k + (int) Math.round((all.phase().z() - alone.phase().z()) / 1.5);
        Double expected = all.z(i, same, Flank.UP, 1);
        assertThat(Double.valueOf(alone.z(0, k, Flank.UP, 1))).isEqualTo(expected);
      }
    }
  }

  @Test
  void flanks_between_grooves_run_together_do_not_exist() {
    Tooth tooth = MilledCase.straight(14, 1.5);
    MilledCase milled = SweptWallTest.m20(1.5, 14, tooth, 0.5, 3);
    // Below the radius on which neighbouring grooves meet, no hole there.
    double meet = 9.99 - (0.75 - 1.5 / 16) / Math.tan(MilledCase.ANGLE);
    double[] radii = {meet - 0.2, 9.5};
    FlankField field =
        FlankField.of(
            milled.wall(Blank.hole(1, -30), milled.sweep()),
            SweptWallTest.phase(milled),
            degrees(8),
            radii);
    int outer = 0;
    for (int k = 0; k < field.grooves(); k++) {
      outer += Double.isNaN(field.z(0, k, Flank.UP, 0)) ? 0 : 1;
      outer += Double.isNaN(field.z(0, k, Flank.DOWN, 0)) ? 0 : 1;
    }
    assertThat(outer).isEqualTo(2);
  }

  @Test
  void a_regular_wall_gives_its_own_groove_on_a_boss_as_well() {
    Tooth tooth = PolylineTooth.straight(10, 0.375, MilledCase.ANGLE);
    HelicalGroove groove = new HelicalGroove(tooth, false, 19.2, 1.5);
    RegularThread thread = new RegularThread(groove, 1.5, 10);
    GroovePhase phase = new GroovePhase(0.3, -1.5 / Angles.TURN, 1.5);
    Wall wall = new RegularWall(thread, phase, new SweptWall.Range(-8, 0));
    double[] radii = {9.4, 9.7};
    FlankField field = FlankField.of(wall, phase, degrees(12), radii);
    double width = groove.width(9.7);
    assertThat(field.width(4, 3, 1)).isCloseTo(width, within(1e-12));
    assertThat(wall.radius(1, phase.middle(2, 1))).isCloseTo(9.2, within(1e-12));
    double[] ends = new double[2];
    assertThat(wall.open(1, 10.5, ends)).isEqualTo(1);
    assertThat(ends).containsExactly(-8, 0);
  }
}
