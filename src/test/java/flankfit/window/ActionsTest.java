package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.lwjgl.glfw.GLFW;

/** The one table of actions, and all that is made of it. */
class ActionsTest {
  private static final String BEGIN = "<!-- keys: made by ActionsTest -->";
  private static final String END = "<!-- end of keys -->";

  private final Actions actions = WindowKeys.actions();
  private final ViewState state = new ViewState(WindowSamples.thread(), Preferences.first());

  @Test
  void no_name_is_there_twice_and_no_key_means_two_things_at_once() {
    Set<String> names = new HashSet<>();
    Set<String> keys = new HashSet<>();
    for (Action action : actions.all()) {
      assertThat(names.add(action.id())).as(action.id()).isTrue();
      for (KeyStroke stroke : action.keys()) {
        assertThat(keys.add(stroke.words() + " " + action.when())).as(stroke.words()).isTrue();
      }
    }
    assertThat(names).hasSizeGreaterThan(30);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Actions(List.of(SheetName.MOTION, SheetName.MOTION)))
        .withMessageContaining("Ctrl+1");
  }

  @Test
  void every_action_has_a_key_or_stands_in_the_palette() {
    state
        .selection()
        .take(java.util.Optional.of(new Pick(Pick.Kind.END, 0, 1, state.tip().orElseThrow())));
    state.search().look("G3", state.input().programLines());
    Palette palette = new Palette(state, actions);
    state.desk().palette();
    List<String> rows = palette.entries().stream().map(Palette.Entry::words).toList();
    for (Action action : actions.all()) {
      boolean offered = rows.contains(action.words());
      boolean sleeps = !action.when().holds(state);
      assertThat(offered || sleeps || !action.keys().isEmpty()).as(action.id()).isTrue();
      boolean there = action.when().holds(state) && !action.id().equals("window.palette");
      assertThat(offered).as(action.id()).isEqualTo(there);
    }
  }

  @Test
  void keys_do_nothing_where_their_action_makes_no_sense() {
    KeyStroke enter = KeyStroke.key(GLFW.GLFW_KEY_ENTER);
    assertThat(actions.of(enter, state)).isEmpty();
    state
        .selection()
        .take(java.util.Optional.of(new Pick(Pick.Kind.END, 9, 1, state.tip().orElseThrow())));
    actions.of(enter, state).orElseThrow().does().accept(state);
    assertThat(state.position()).isEqualTo(state.steps().endOfBlock(9));
    assertThat(actions.of(KeyStroke.key(GLFW.GLFW_KEY_N), state)).isEmpty();
  }

  @Test
  void a_sheet_has_its_own_use_for_a_key_only_while_it_is_shown() {
    KeyStroke up = KeyStroke.key(GLFW.GLFW_KEY_UP);
    assertThat(actions.of(up, state)).get().extracting(Action::id).isEqualTo("play.faster");
    state.sheet(SheetName.GAUGE);
    assertThat(state.gauge().bench().base()).isEmpty();
    assertThat(actions.of(up, state)).get().extracting(Action::id).isEqualTo("play.faster");
  }

  @Test
  void only_sheets_that_are_there_have_a_key() {
    assertThat(actions.all())
        .filteredOn(a -> a.group().equals("sheet"))
        .extracting(Action::words)
        .containsExactly("Motion sheet", "Metal sheet", "Gauge sheet", "Lesson sheet");
    assertThat(new Actions(List.of(SheetName.MOTION)).all())
        .extracting(Action::group)
        .doesNotContain("gauge");
  }

  @Test
  void the_table_of_the_readme_is_the_table_of_actions() throws Exception {
    Path readme = Path.of("README.md");
    String text = Files.readString(readme);
    assertThat(text).contains(BEGIN, END);
    String wanted = "\n" + String.join("\n", WindowKeys.markdown()) + "\n";
    int from = text.indexOf(BEGIN) + BEGIN.length();
    int to = text.indexOf(END);
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(readme, text.substring(0, from) + wanted + text.substring(to));
      return;
    }
    assertThat(text.substring(from, to)).isEqualTo(wanted);
  }

  @Test
  void lines_for_the_command_line_hold_every_action_and_what_the_pointer_does() {
    List<String> lines = WindowKeys.lines();
    List<String> missing = new ArrayList<>();
    for (Action action : actions.all()) {
      if (lines.stream().noneMatch(line -> line.endsWith(action.words()))) {
        missing.add(action.id());
      }
    }
    assertThat(missing).isEmpty();
    assertThat(lines).anyMatch(line -> line.contains("drop a file"));
    assertThat(lines).noneMatch(line -> line.length() > 100);
  }

  @Test
  void strokes_are_worded_as_people_read_them() {
    assertThat(KeyStroke.ctrl(GLFW.GLFW_KEY_K).words()).isEqualTo("Ctrl+K");
    assertThat(KeyStroke.shift(GLFW.GLFW_KEY_RIGHT).words()).isEqualTo("Shift+→");
    assertThat(KeyStroke.key(GLFW.GLFW_KEY_F12).words()).isEqualTo("F12");
    assertThat(KeyStroke.typed('?').words()).isEqualTo("?");
    assertThat(KeyStroke.pressed(GLFW.GLFW_KEY_F, GLFW.GLFW_MOD_SUPER | GLFW.GLFW_MOD_CAPS_LOCK))
        .isEqualTo(KeyStroke.ctrl(GLFW.GLFW_KEY_F));
  }
}
