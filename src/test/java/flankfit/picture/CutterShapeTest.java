package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CutterShapeTest {
  @Test
  void a_thread_mill_has_its_rows_at_their_heights_and_nothing_wider_than_its_diameter() {
    CutterShape shape = new CutterShape(Samples.threadSetup().tools().get(0));
    for (int row = 0; row < 12; row++) {
      double middle = 0.75 + 1.5 * row;
      assertThat(shape.profile())
          .anyMatch(p -> Math.abs(p[0] - middle - 0.095) < 1e-9 && p[1] == 7);
    }
    assertThat(shape.profile()).allMatch(p -> p[1] >= 0 && p[1] <= 7);
    assertThat(shape.cuttingTop()).isEqualTo(18.5);
    assertThat(shape.profile().get(shape.profile().size() - 1)[0]).isEqualTo(66);
  }

  @Test
  void heights_never_fall_from_tip_to_shank() {
    CutterShape shape = new CutterShape(Samples.patternSetup().tools().get(0));
    for (int i = 1; i < shape.profile().size(); i++) {
      assertThat(shape.profile().get(i)[0]).isGreaterThanOrEqualTo(shape.profile().get(i - 1)[0]);
    }
  }
}
