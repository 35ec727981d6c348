package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PaletteTest {
  private final ViewState state = new ViewState(WindowSamples.thread(), Preferences.first());
  private final Palette palette = new Palette(state, WindowKeys.actions());

  private String first(String typed) {
    state.desk().palette();
    state.desk().entry().paste(typed);
    return palette.entries().isEmpty() ? "" : palette.entries().get(0).words();
  }

  @Test
  void letters_fit_in_order_and_beginnings_of_words_count_most() {
    assertThat(Fuzzy.rate("xyz", "next thread")).isNegative();
    assertThat(Fuzzy.rate("", "anything")).isZero();
    assertThat(Fuzzy.rate("nt", "next thread")).isGreaterThan(Fuzzy.rate("nt", "front"));
    assertThat(Fuzzy.rate("tool", "tool change before"))
        .isGreaterThan(Fuzzy.rate("tool", "to go on loosely"));
    assertThat(Fuzzy.rate("plan", "plan")).isGreaterThan(Fuzzy.rate("plan", "plan: from above"));
    assertThat(Fuzzy.rate("FRONT", "front")).isEqualTo(Fuzzy.rate("front", "front"));
    assertThat(Fuzzy.rate("thb", "thread before")).isNotNegative();
  }

  @Test
  void what_people_type_finds_what_they_mean() {
    assertThat(first("measure")).startsWith("measure between");
    assertThat(first("next th")).isEqualTo("next thread");
    assertThat(first("inch")).isEqualTo("millimetres or inches");
    assertThat(first("dark")).isEqualTo("light or dark paper");
    assertThat(first("wear-sign")).isEqualTo("sample broken-wear-sign");
    assertThat(first("qqqq")).isEmpty();
  }

  @Test
  void a_number_is_a_line_and_a_path_a_file() {
    assertThat(first("14")).isEqualTo("go to line 14");
    palette.run(0);
    assertThat(state.line()).isEqualTo(14);
    assertThat(state.desk().over()).isEqualTo(Desk.Over.NOTHING);
    assertThat(first("/home/a/part.nc")).isEqualTo("open the file /home/a/part.nc");
  }

  @Test
  void typing_edits_where_the_caret_is() {
    TextEntry entry = new TextEntry();
    entry.paste("next thread\nsecond line");
    assertThat(entry.text()).isEqualTo("next thread");
    entry.backspace(true);
    assertThat(entry.text()).isEqualTo("next ");
    entry.toStart();
    entry.type('→');
    entry.type(7);
    assertThat(entry.text()).isEqualTo("→next ");
    entry.delete();
    assertThat(entry.text()).isEqualTo("→ext ");
    entry.move(-1);
    entry.move(-1);
    entry.backspace(false);
    assertThat(entry.text()).isEqualTo("→ext ");
    entry.toEnd();
    entry.type(0x1F529);
    entry.backspace(false);
    assertThat(entry.text()).isEqualTo("→ext ");
  }
}
