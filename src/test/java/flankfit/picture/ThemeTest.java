package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ThemeTest {
  @ParameterizedTest
  @EnumSource(Theme.class)
  void text_has_a_contrast_of_four_and_a_half_and_lines_of_three(Theme theme) {
    Theme.Palette p = theme.palette();
    for (int ground : new int[] {p.ground(), p.shade()}) {
      assertThat(Colours.contrast(p.ink(), ground)).isGreaterThan(7);
      assertThat(Colours.contrast(p.softInk(), ground)).isGreaterThan(4.5);
      assertThat(Colours.contrast(p.alarm(), ground)).isGreaterThan(4.5);
    }
    assertThat(Colours.contrast(p.absolute(), p.ground())).isGreaterThan(3);
    assertThat(Colours.contrast(p.incrementalText(), p.ground())).isGreaterThan(3);
    assertThat(Colours.contrast(p.stockEdge(), p.ground())).isGreaterThan(3);
  }

  @Test
  void orange_on_light_paper_has_an_edge_that_is_seen_on_both_sides() {
    Theme.Palette p = Theme.LIGHT.palette();
    assertThat(Colours.contrast(p.casing(), p.ground())).isGreaterThan(3);
    assertThat(Colours.contrast(p.casing(), p.incremental())).isGreaterThan(3);
  }

  @Test
  void contrast_is_that_of_the_published_formula() {
    assertThat(Colours.contrast(0x000000, 0xFFFFFF)).isEqualTo(21);
    assertThat(Colours.contrast(0x0072B2, 0xFFFFFF)).isCloseTo(5.19, within(0.01));
    assertThat(Colours.contrast(0xE69F00, 0xFFFFFF)).isCloseTo(2.25, within(0.01));
  }
}
