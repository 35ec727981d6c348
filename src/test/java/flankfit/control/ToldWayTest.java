package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where blocks are told to lead, in the part and in program coordinates. */
class ToldWayTest {
  private static List<BlockTrace> blocks(String text, String sheet) {
    ObservedRun run = new ObservedRun();
    Interpreter.observe(
        Programs.source("p.nc", Programs.HEAD + text), ExampleSheet.of(sheet), List.of(), run);
    return run.blocks();
  }

  private static void near(Point p, double x, double y, double z) {
    assertThat(p.distance(new Point(x, y, z))).as("%s", p).isCloseTo(0, within(1e-9));
  }

  @Test
  void coordinates_are_those_of_the_words_whatever_frame_is_on() {
    List<BlockTrace> blocks =
        blocks(
            """
            G55 X1. Y2. Z3.
            G52 X10.
            X4.
            G68 X0 Y0 R90.
            X5. Y6.
            G91 X1.
            G90 G69
            G51 X0 Y0 Z0 P2.
            X7. Y8.
            G50
            G51.1 X0
            X9.
            G50.1
            """,
            "G55 = [100, 50, 0]");
    near(blocks.get(2).way().end(), 1, 2, 3);
    near(blocks.get(2).way().to(), 101, 52, 3);
    near(blocks.get(4).way().end(), 4, 2, 3);
    near(blocks.get(6).way().end(), 5, 6, 3);
    near(blocks.get(7).way().way(), 1, 0, 0);
    near(blocks.get(7).way().partWay(), 0, 1, 0);
    near(blocks.get(10).way().end(), 7, 8, 1.5);
    near(blocks.get(13).way().end(), 9, blocks.get(13).way().begin().y(), 3);
  }

  /** The variables for the position say the same, #5001 to #5003 (nc language, 14.3). */
  @Test
  void end_is_what_the_variables_of_the_position_hold() {
    List<BlockTrace> blocks =
        blocks("G68 X3. Y1. R37.\nG1 X5. Y6. Z-2.\n#1=#5001\n#2=#5002\n#3=#5003\n", "");
    Point end = blocks.get(3).way().end();
    double[] held = new double[3];
    for (int i = 0; i < 3; i++) {
      for (FlowStep step : blocks.get(4 + i).steps()) {
        if (step instanceof FlowStep.Assigned assigned) {
          held[i] = assigned.after().orElseThrow();
        }
      }
    }
    near(end, held[0], held[1], held[2]);
    near(end, 5, 6, -2);
  }

  /** Ways join, and each move of a block ends, as programmed, on its way. */
  @Test
  void compensated_ways_join_and_are_the_programmed_ones() {
    List<BlockTrace> blocks =
        blocks(
            "G41 D1 G1 X10. Y10.\nY30.\nG2 X20. Y40. I10.\nG1 X50.\nZ-3.\nX60. Y20.\nG40 X0\n",
            "D1 = { geometry = 3 }");
    for (int i = 1; i < blocks.size(); i++) {
      assertThat(blocks.get(i).way().from()).isEqualTo(blocks.get(i - 1).way().to());
    }
    int compensated = 0;
    for (BlockTrace block : blocks) {
      for (int i = 0; i < block.moves().size(); i++) {
        if (!block.moves().inserted(i)) {
          Point told = block.way().to();
          near(block.moves().programmedTo(i), told.x(), told.y(), told.z());
          compensated += told.distance(block.moves().to(i)) > 1 ? 1 : 0;
        }
      }
    }
    assertThat(compensated).isGreaterThan(4);
  }
}
