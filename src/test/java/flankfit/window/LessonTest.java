package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.lesson.NearSteps;
import flankfit.lesson.Told;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.lwjgl.glfw.GLFW;

/** The Lesson sheet without its window: figures, a forgotten word, questions, room. */
class LessonTest {
  /** A square bracket of 4 mm steps; where the tool goes without G91 follows by hand. */
  private static final String PROGRAM =
      """
      G21 G17 G90 G94 G54
      G0 X10. Y0. Z0.
      G91
      G1 X4. F100.
      G3 X4. Y4. J4.
      G90
      G0 X0. Y0.
      M30
      """;

  private static final SourceText SOURCE =
      SourceText.of("bracket.nc", PROGRAM.getBytes(StandardCharsets.UTF_8));

  private static final ProgramSource.Text TEXT =
      new ProgramSource.Text(SOURCE, SetupSheet.empty(), List.of(), Map.of());

  private static ViewState state() {
    Interpretation done = Interpreter.interpret(SOURCE, SetupSheet.empty());
    WindowInput input =
        new WindowInput(
            "bracket.nc",
            SOURCE.lines(),
            done.tape(),
            SetupSheet.empty(),
            done.findings(),
            "",
            List.of(),
            Map.of(),
            Replay.of(TEXT));
    ViewState state = new ViewState(input, Preferences.first());
    state.sheet(SheetName.LESSON);
    return state;
  }

  private static void until(ViewState state, java.util.function.BooleanSupplier condition) {
    long end = System.nanoTime() + 10_000_000_000L;
    while (!condition.getAsBoolean()) {
      assertThat(System.nanoTime()).as("waited in vain").isLessThan(end);
      state.follow();
      Xdotool.pause(2);
    }
  }

  private static void press(ViewState state, KeyStroke stroke) {
    WindowKeys.actions().of(stroke, state).orElseThrow().does().accept(state);
  }

  private static Told told(int number) {
    return NearSteps.of(Replay.of(TEXT)::run, SetupSheet.empty(), 1, 99, n -> true)
        .at(number)
        .orElseThrow();
  }

  @Test
  void figures_follow_the_unit_and_distances_carry_a_sign() {
    Told arc = told(5);
    LessonWords mm = new LessonWords(LengthUnit.MILLIMETRE);
    assertThat(mm.absolute(arc.step()))
        .containsExactly("ends at  X 18  Y 4  Z 0  mm", "centre at  X 14  Y 4  mm");
    assertThat(mm.incremental(arc.step()))
        .containsExactly("goes  X +4  Y +4  Z 0  mm", "centre from the start  I 0  J +4  mm");
    LessonWords inch = new LessonWords(LengthUnit.INCH);
    // 4 mm are 0.15748 inch: an inch is 25.4 mm (from memory of ISO 80000-3)
    assertThat(inch.incremental(arc.step()).get(0))
        .isEqualTo("goes  X +0.1575  Y +0.1575  Z 0  in");
  }

  @Test
  void vectors_start_where_the_mode_counts_from() {
    var arc = told(5).step();
    assertThat(arc.onPart().orElseThrow().zero().distance(Point.ZERO)).isZero();
    assertThat(arc.onPart().orElseThrow().begin()).isEqualTo(new Point(14, 0, 0));
    assertThat(arc.onPart().orElseThrow().end()).isEqualTo(new Point(18, 4, 0));
    assertThat(arc.arc().orElseThrow().partToCentre()).isEqualTo(new Point(0, 4, 0));
  }

  @Test
  void a_forgotten_g91_is_drawn_and_told_beside_the_right_path() {
    Accident accident = Accident.of(TEXT, List.of(), 4, 3, 0).orElseThrow();
    assertThat(accident.left().word()).isEqualTo("G91");
    assertThat(accident.choices()).isEqualTo(2);
    assertThat(accident.parting().first().orElseThrow().line()).isEqualTo(4);
    // As coordinates X4. lies 10 mm left of X14.
    assertThat(accident.parting().greatest()).isGreaterThanOrEqualTo(10);
    Tape path = accident.path();
    int move = accident.move(4, 4).orElseThrow();
    assertThat(path.to(move)).isEqualTo(new Point(4, 0, 0));
    assertThat(accident.move(4, 99)).isEmpty();
    assertThat(Accident.of(TEXT, List.of(), 4, 3, 1).orElseThrow().left().word()).isEqualTo("G1");
    assertThat(Accident.of(TEXT, List.of(), 8, 0, 0)).isEmpty();
  }

  @Test
  void findings_of_the_accident_are_those_that_the_right_program_does_not_have() {
    Accident accident = Accident.of(TEXT, List.of(), 5, 3, 0).orElseThrow();
    assertThat(accident.raised()).isNotEmpty();
    Accident known = Accident.of(TEXT, accident.raised(), 5, 3, 0).orElseThrow();
    assertThat(known.raised()).isEmpty();
  }

  @Test
  void keys_ask_show_hide_and_leave_out() {
    ViewState state = state();
    LessonSide lesson = state.lesson();
    state.toLine(4);
    until(state, () -> lesson.told().isPresent());
    assertThat(lesson.before()).hasSize(1);
    assertThat(lesson.before().get(0).step().text()).isEqualTo("G91");
    press(state, KeyStroke.key(GLFW.GLFW_KEY_S));
    assertThat(lesson.shown()).isEqualTo(LessonSide.Shown.ABSOLUTE);
    press(state, KeyStroke.key(GLFW.GLFW_KEY_A));
    until(state, () -> lesson.question().isPresent());
    assertThat(lesson.isHiding()).isTrue();
    assertThat(lesson.question().get().question()).contains("Line 4 says G1 X4. F100.");
    press(state, KeyStroke.key(GLFW.GLFW_KEY_ENTER));
    assertThat(lesson.isHiding()).isFalse();
    press(state, KeyStroke.key(GLFW.GLFW_KEY_TAB));
    assertThat(lesson.isHiding()).isTrue();
    press(state, KeyStroke.key(GLFW.GLFW_KEY_ENTER));
    state.course().stepForward();
    until(state, () -> lesson.told().filter(t -> t.step().place().line() == 5).isPresent());
    assertThat(lesson.isHiding()).isTrue();
    press(state, KeyStroke.key(GLFW.GLFW_KEY_W));
    until(state, () -> lesson.accident().isPresent());
    assertThat(lesson.accident().get().headline()).startsWith("without G91 of line 3");
    press(state, KeyStroke.shift(GLFW.GLFW_KEY_W));
    until(state, () -> lesson.accident().map(a -> a.which() == 2).orElse(false));
    press(state, KeyStroke.key(GLFW.GLFW_KEY_ESCAPE));
    assertThat(lesson.isForgetting()).isFalse();
    press(state, KeyStroke.key(GLFW.GLFW_KEY_ESCAPE));
    assertThat(lesson.asks()).isFalse();
    lesson.close();
  }

  @Test
  void its_keys_are_its_own() {
    ViewState state = state();
    state.sheet(SheetName.MOTION);
    Actions actions = WindowKeys.actions();
    assertThat(actions.of(KeyStroke.key(GLFW.GLFW_KEY_W), state)).isEmpty();
    assertThat(state.lesson().follow(false)).isFalse();
    assertThat(state.lesson().told()).isEqualTo(Optional.empty());
  }

  @Test
  void labels_do_not_cover_each_other_while_there_is_room() {
    FreePlaces places = new FreePlaces();
    places.clear();
    float[] tops = new float[6];
    for (int i = 0; i < tops.length; i++) {
      places.put(900, 150, 100, 20, 800, 80, 400, 1);
      assertThat(places.left()).isLessThanOrEqualTo(800 - 100);
      tops[i] = places.top();
    }
    java.util.Arrays.sort(tops);
    for (int i = 1; i < tops.length; i++) {
      assertThat(tops[i] - tops[i - 1]).isGreaterThanOrEqualTo(20);
    }
  }

  @Test
  void scene_program_and_tellings_share_the_height() {
    float[][] sizes = {
      {900, 600, 1}, {1440, 900, 1}, {1440, 900, 2}, {2880, 1800, 2}, {640, 480, 1}
    };
    for (float[] size : sizes) {
      Layout layout = new Layout(size[0], size[1], size[2], false, true);
      assertThat(
              layout.header()
                  + layout.sceneHeight()
                  + layout.band()
                  + layout.tellings()
                  + layout.footer())
          .isEqualTo(layout.height());
      assertThat(layout.tellings()).isGreaterThan(150 * layout.scale());
      assertThat(layout.sceneHeight()).isGreaterThan(100 * layout.scale());
      assertThat(layout.listingHeight()).isEqualTo(layout.sceneHeight() + layout.band());
    }
    assertThat(new Layout(900, 600, 1).tellings()).isZero();
  }
}
