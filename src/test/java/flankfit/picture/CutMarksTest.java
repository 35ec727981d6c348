package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.MoveKind;
import org.junit.jupiter.api.Test;

class CutMarksTest {
  private static double[] at(int maker, double x, double y, double nx, double ny, double nz) {
    Scene scene = Samples.thread();
    double[] grain = new double[3];
    new CutMarks(scene.tape(), scene.setup()).at(maker, x, y, nx, ny, nz, grain);
    return grain;
  }

  private static int firstFeed(Scene scene) {
    for (int move = 0; move < scene.tape().size(); move++) {
      boolean level =
          Math.hypot(
                  scene.tape().toX(move) - scene.tape().fromX(move),
                  scene.tape().toY(move) - scene.tape().fromY(move))
              > 1;
      if (scene.tape().kind(move) == MoveKind.LINE && level) {
        return move;
      }
    }
    throw new AssertionError("no straight feed in the sample");
  }

  @Test
  void skin_of_the_stock_has_none() {
    assertThat(at(-1, 3, 4, 0, 0, 1)).containsExactly(0, 0, 0);
  }

  @Test
  void on_walls_they_run_level_along_the_wall() {
    double[] grain = at(3, 3, 4, 0.6, 0.8, 0);
    assertThat(grain[0] * 0.6 + grain[1] * 0.8).isCloseTo(0, within(1e-12));
    assertThat(Math.hypot(grain[0], grain[1])).isCloseTo(1, within(1e-12));
    assertThat(grain[2]).isZero();
  }

  @Test
  void on_floors_they_cross_the_path_in_its_middle_and_follow_it_at_the_tools_edge() {
    Scene scene = Samples.thread();
    int move = firstFeed(scene);
    double dx = scene.tape().toX(move) - scene.tape().fromX(move);
    double dy = scene.tape().toY(move) - scene.tape().fromY(move);
    double length = Math.hypot(dx, dy);
    double mx = (scene.tape().toX(move) + scene.tape().fromX(move)) / 2;
    double my = (scene.tape().toY(move) + scene.tape().fromY(move)) / 2;
    double[] middle = at(move, mx, my, 0, 0, 1);
    assertThat(middle[0] * dx + middle[1] * dy).isCloseTo(0, within(1e-9));
    double radius = scene.setup().tool(scene.tape().state(move).tool()).orElseThrow().radius();
    double[] edge = at(move, mx - radius * dy / length, my + radius * dx / length, 0, 0, 1);
    assertThat(Math.abs(edge[0] * dx + edge[1] * dy) / length).isCloseTo(1, within(1e-9));
  }
}
