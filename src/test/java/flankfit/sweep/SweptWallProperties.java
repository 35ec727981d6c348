package flankfit.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The wall of real paths against the slow witness, and its symmetries. */
class SweptWallProperties {
  /** Accuracy of the wall (mm). */
  private static final double WALL = 1e-6;

  /** What may open between two positions of the witness, at corners of a profile (mm). */
  private static final double WITNESS = 2e-4;

  private static final int POSITIONS = 6000;

  static List<MilledCase> cases() {
    Random random = new Random(20261125);
    double[][] sizes = {
      {3, 0.5},
      {3.505, 0.79375},
      {6, 1},
      {8, 1.25},
      {9.525, 1.5875},
      {12, 1.75},
      {12.7, 1.953846},
      {16, 1.5},
      {20, 1.5},
      {20, 2.5},
      {25.4, 3.175},
      {30, 3.5},
      {36, 4},
      {42, 2},
      {50.8, 5.644444},
      {64, 6}
    };
    List<MilledCase> found = new ArrayList<>();
    for (int i = 0; i < 3 * sizes.length; i++) {
      found.add(random(i, sizes[i % sizes.length], random));
    }
    return found;
  }

  private static MilledCase random(int i, double[] size, Random random) {
    boolean internal = i % 3 != 2;
    double major = size[0];
    double pitch = size[1];
    double share = internal ? 0.4 + 0.5 * random.nextDouble() : 0.4 + random.nextDouble();
    double mill = share * major;
    int starts = i % 7 == 3 && major > 8 * pitch ? 2 : 1;
    Tooth tooth =
        switch (i % 4) {
          case 0, 2 -> MilledCase.straight(mill, pitch);
          case 1 -> MilledCase.ground(internal, major, pitch, starts, mill);
          default -> MilledCase.lopsided(mill, pitch);
        };
    MilledCase.Entry entry = List.of(MilledCase.Entry.values()).get((i + i / 4) % 4);
    int rows = i % 5 == 4 ? 4 : i % 5 == 2 ? 2 : 1;
    double turns = new double[] {1, 1.25, 2.4, 0.6}[(i + i / 3) % 4];
    String name =
        i + (internal ? " in " : " out ") + major + "x" + pitch + " mill " + mill + " " + entry;
    return new MilledCase(
        name,
        internal,
        major,
        pitch,
        starts,
        mill,
        random.nextInt(3) > 0,
        random.nextBoolean(),
        entry,
        0.25 + 0.75 * random.nextDouble(),
        turns,
        rows,
        tooth,
        10 * random.nextDouble(),
        -7 * random.nextDouble(),
        6.3 * random.nextDouble() - 3);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void openings_are_those_of_very_many_positions(MilledCase milled) {
    // As good as no blank: a hair of a hole, a boss as large as a house.
    Blank none =
        milled.internal() ? Blank.hole(1e-3, -1000) : Blank.boss(1e4, milled.range().bottom());
    SweptWall wall = milled.wall(none, milled.sweep());
    SlowWall slow = new SlowWall(milled.sweep(), milled.x(), milled.y(), POSITIONS);
    Random random = new Random(5);
    for (int i = 0; i < 8; i++) {
      double theta = milled.startAngle() + (i < 4 ? 0.5 - 0.25 * i : 6 * random.nextDouble());
      double share = 1.02 * random.nextDouble();
      double rho = milled.blankRadius() + share * (milled.bottomRadius() - milled.blankRadius());
      double[] ends = new double[100];
      int n = wall.open(theta, rho, ends);
      List<double[]> expected = slow.open(theta, rho);
      assertThat(n).as("stretches at %s, %s", theta, rho).isEqualTo(expected.size());
      for (int k = 0; k < n; k++) {
        String place = k + " at " + theta + ", " + rho;
        isOpenAsFar(-ends[2 * k], -expected.get(k)[0], "low " + place);
        isOpenAsFar(ends[2 * k + 1], expected.get(k)[1], "high " + place);
      }
    }
  }

  /** Positions leave out what lies between them, so the wall may be open a little farther only. */
  private static void isOpenAsFar(double end, double witness, String place) {
    assertThat(end).as(place).isBetween(witness - WALL, witness + WITNESS);
  }
}
