package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MotionPictureTest {
  @Test
  void a_picture_is_the_same_twice() throws Exception {
    byte[] once = MotionPicture.png(Samples.thread(), View.PLAN, 640, 480, Theme.LIGHT);
    byte[] again = MotionPicture.png(Samples.thread(), View.PLAN, 640, 480, Theme.LIGHT);
    assertThat(again).isEqualTo(once);
  }
}
