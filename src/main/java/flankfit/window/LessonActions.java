package flankfit.window;

import static flankfit.window.KeyStroke.key;
import static flankfit.window.KeyStroke.shift;
import static org.lwjgl.glfw.GLFW.*;

import java.util.List;
import java.util.function.Consumer;

/** The actions of the Lesson sheet. */
final class LessonActions {
  private final List<Action> table;

  private LessonActions(List<Action> table) {
    this.table = table;
  }

  /** Adds them to a table. */
  static void addTo(List<Action> table) {
    LessonActions actions = new LessonActions(table);
    actions.add(
        "lesson.tellings",
        "both tellings, or one of them alone",
        When.LESSON,
        LessonSide::otherShown,
        key(GLFW_KEY_S));
    actions.add(
        "lesson.ask",
        "ask me first, or tell",
        When.LESSON,
        LessonSide::toggleAsking,
        key(GLFW_KEY_A));
    actions.add(
        "lesson.answer",
        "show the answer",
        When.ASKED,
        LessonSide::answer,
        key(GLFW_KEY_ENTER),
        key(GLFW_KEY_KP_ENTER));
    actions.add(
        "lesson.question",
        "another question about the block",
        When.ASKING,
        LessonSide::otherQuestion,
        key(GLFW_KEY_TAB));
    actions.add(
        "lesson.forget",
        "what if the mode word were left out, or put it back",
        When.LESSON,
        LessonSide::toggleForgetting,
        key(GLFW_KEY_W));
    actions.add(
        "lesson.forget-other",
        "what if another mode word were left out",
        When.LESSON,
        LessonSide::otherWord,
        shift(GLFW_KEY_W));
  }

  private void add(
      String id, String words, When when, Consumer<LessonSide> does, KeyStroke... keys) {
    table.add(new Action(id, words, List.of(keys), when, false, s -> does.accept(s.lesson())));
  }
}
