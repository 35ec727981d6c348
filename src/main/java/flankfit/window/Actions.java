package flankfit.window;

import static flankfit.window.KeyStroke.alt;
import static flankfit.window.KeyStroke.ctrl;
import static flankfit.window.KeyStroke.key;
import static flankfit.window.KeyStroke.shift;
import static flankfit.window.KeyStroke.typed;
import static org.lwjgl.glfw.GLFW.*;

import flankfit.picture.View;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * All actions in one table. Keys, palette, the page of keys, the help of the command line and the
 * table in the README come from it.
 */
final class Actions {
  private final List<Action> all = new ArrayList<>();
  private final Map<KeyStroke, List<Action>> byKey = new HashMap<>();

  /**
   * The actions with the sheets that there are.
   *
   * @param sheets in their order
   */
  Actions(List<SheetName> sheets) {
    sheets(sheets);
    if (sheets.contains(SheetName.METAL)) {
      MetalActions.addTo(all);
    }
    if (sheets.contains(SheetName.GAUGE)) {
      GaugeActions.addTo(all);
    }
    if (sheets.contains(SheetName.LESSON)) {
      LessonActions.addTo(all);
    }
    position();
    view();
    program();
    window();
    for (Action action : all) {
      for (KeyStroke stroke : action.keys()) {
        List<Action> same = byKey.computeIfAbsent(stroke, key -> new ArrayList<>());
        if (same.stream().anyMatch(a -> a.when() == action.when())) {
          throw new IllegalArgumentException("two actions have the key " + stroke.words());
        }
        same.add(action);
      }
    }
  }

  /** All of them, by group. */
  List<Action> all() {
    return List.copyOf(all);
  }

  /**
   * The action of a key that makes sense now. A sheet may have its own use for a key of all sheets:
   * that comes first in the table.
   */
  Optional<Action> of(KeyStroke stroke, ViewState state) {
    return byKey.getOrDefault(stroke, List.of()).stream()
        .filter(a -> a.when().holds(state))
        .findFirst();
  }

  /** The action that makes sense now of a key as people read it, in letters of either case. */
  Optional<Action> of(String keyWords, ViewState state) {
    return all.stream()
        .filter(a -> a.keys().stream().anyMatch(k -> k.words().equalsIgnoreCase(keyWords)))
        .filter(a -> a.when().holds(state))
        .findFirst();
  }

  private void sheets(List<SheetName> sheets) {
    for (SheetName sheet : sheets) {
      String id = "sheet." + sheet.word().toLowerCase(Locale.ROOT);
      KeyStroke stroke = ctrl(GLFW_KEY_0 + sheet.digit());
      add(id, sheet.word() + " sheet", When.ALWAYS, s -> s.sheet(sheet), stroke);
    }
  }

  private void position() {
    steps("go.next-block", "next block", s -> s.course().stepForward(), key(GLFW_KEY_RIGHT));
    steps("go.block-before", "block before", s -> s.course().stepBack(), key(GLFW_KEY_LEFT));
    steps("go.page-on", "twenty lines on", s -> s.course().page(1), key(GLFW_KEY_PAGE_DOWN));
    steps("go.page-back", "twenty lines back", s -> s.course().page(-1), key(GLFW_KEY_PAGE_UP));
    moves("go.first", "first block", s -> s.course().toStart(), key(GLFW_KEY_HOME));
    moves("go.last", "last block", s -> s.course().toEnd(), key(GLFW_KEY_END));
    steps("go.next-thread", "next thread", s -> s.course().toThread(true), shift(GLFW_KEY_RIGHT));
    steps(
        "go.thread-before", "thread before", s -> s.course().toThread(false), shift(GLFW_KEY_LEFT));
    steps("go.next-tool", "next tool change", s -> s.course().toTool(true), ctrl(GLFW_KEY_RIGHT));
    steps(
        "go.tool-before", "tool change before", s -> s.course().toTool(false), ctrl(GLFW_KEY_LEFT));
    steps("go.next-finding", "next finding", s -> s.course().toFinding(true), key(GLFW_KEY_E));
    steps(
        "go.finding-before", "finding before", s -> s.course().toFinding(false), shift(GLFW_KEY_E));
    steps(
        "go.back",
        "back to where the last jump came from",
        s -> s.course().back(),
        alt(GLFW_KEY_LEFT));
    steps("go.forth", "on again after going back", s -> s.course().forth(), alt(GLFW_KEY_RIGHT));
    add(
        "go.there",
        "go to the picked move or the line found",
        When.CHOSEN,
        ViewState::toChosen,
        key(GLFW_KEY_ENTER),
        key(GLFW_KEY_KP_ENTER));
    moves("play.toggle", "play, or hold", s -> s.player().toggle(), key(GLFW_KEY_SPACE));
    moves(
        "play.faster",
        "faster: real time, ×10, ×100, ×1000",
        s -> s.player().faster(1),
        key(GLFW_KEY_UP));
    moves("play.slower", "slower", s -> s.player().faster(-1), key(GLFW_KEY_DOWN));
  }

  private void view() {
    moves("view.plan", "plan: from above", s -> s.viewpoint().look(View.PLAN), number(1));
    moves("view.front", "front", s -> s.viewpoint().look(View.FRONT), number(2));
    moves("view.side", "side", s -> s.viewpoint().look(View.SIDE), number(3));
    moves("view.free", "free: at an angle", s -> s.viewpoint().look(View.ISO), number(4));
    moves(
        "view.wall",
        "wall: the hole unrolled, angle across, depth down",
        s -> s.viewpoint().unroll(),
        number(5));
    moves("view.whole", "fit the whole part", s -> s.viewpoint().fit(false), key(GLFW_KEY_F));
    moves("view.cut", "fit what is cut", s -> s.viewpoint().fit(true), key(GLFW_KEY_C));
    moves("view.block", "zoom to the block", s -> s.viewpoint().fitBlock(), key(GLFW_KEY_Z));
    moves(
        "view.measure",
        "measure between two points, or end it",
        ViewState::toggleMeasuring,
        key(GLFW_KEY_M));
    add("view.unit", "millimetres or inches", When.ALWAYS, ViewState::otherUnit, key(GLFW_KEY_U));
    moves(
        "view.meaning",
        "what the block meant, word by word, or the state",
        ViewState::toggleExplanation,
        key(GLFW_KEY_B));
  }

  private void program() {
    add(
        "program.search",
        "search in the program",
        When.PROGRAM,
        s -> s.desk().search(),
        ctrl(GLFW_KEY_F));
    add(
        "program.next-found",
        "next line found",
        When.SEARCHING,
        s -> s.find(true),
        key(GLFW_KEY_N));
    add(
        "program.found-before",
        "line found before",
        When.SEARCHING,
        s -> s.find(false),
        shift(GLFW_KEY_N));
    add("program.again", "read the program anew", When.PROGRAM, ViewState::reload, key(GLFW_KEY_R));
    add("program.stop", "stop reading, checking, gauging", When.LOADING, ViewState::stop);
    add(
        "program.picture",
        "save a picture of the sheet's scene",
        When.MOVES,
        s -> s.desk().wish(Desk.Wish.PICTURE),
        shift(GLFW_KEY_F12));
  }

  private void window() {
    add(
        "window.palette",
        "find an action, a file, a line",
        When.ALWAYS,
        s -> s.desk().palette(),
        ctrl(GLFW_KEY_K),
        typed('/'));
    add(
        "window.keys",
        "all keys",
        When.ALWAYS,
        ViewState::toggleHelp,
        typed('?'),
        key(GLFW_KEY_F1),
        key(GLFW_KEY_H));
    add(
        "window.samples",
        "sample programs and recent files",
        When.ALWAYS,
        s -> s.desk().toggleWelcome(),
        ctrl(GLFW_KEY_O));
    add("window.paper", "light or dark paper", When.ALWAYS, ViewState::otherTheme, key(GLFW_KEY_T));
    add(
        "window.larger",
        "larger letters",
        When.ALWAYS,
        s -> s.larger(1),
        ctrl(GLFW_KEY_EQUAL),
        ctrl(GLFW_KEY_KP_ADD));
    add(
        "window.smaller",
        "smaller letters",
        When.ALWAYS,
        s -> s.larger(-1),
        ctrl(GLFW_KEY_MINUS),
        ctrl(GLFW_KEY_KP_SUBTRACT));
    add(
        "window.plain-size",
        "letters of the display's size",
        When.ALWAYS,
        ViewState::plainSize,
        ctrl(GLFW_KEY_0));
    add(
        "window.still",
        "reduced motion: play block by block, or glide",
        When.ALWAYS,
        ViewState::otherStill);
    add(
        "window.screenshot",
        "save a picture of the window",
        When.ALWAYS,
        s -> s.desk().wish(Desk.Wish.SCREENSHOT),
        key(GLFW_KEY_F12));
    add(
        "window.leave",
        "close what is open, let go, hold, stop",
        When.ALWAYS,
        ViewState::leave,
        key(GLFW_KEY_ESCAPE));
    add(
        "window.quit",
        "close the window",
        When.ALWAYS,
        ViewState::quit,
        key(GLFW_KEY_Q),
        ctrl(GLFW_KEY_Q));
  }

  private static KeyStroke[] number(int digit) {
    return new KeyStroke[] {key(GLFW_KEY_0 + digit), key(GLFW_KEY_KP_0 + digit)};
  }

  private void steps(String id, String words, Consumer<ViewState> does, KeyStroke... keys) {
    all.add(new Action(id, words, List.of(keys), When.MOVES, true, does));
  }

  private void moves(String id, String words, Consumer<ViewState> does, KeyStroke... keys) {
    add(id, words, When.MOVES, does, keys);
  }

  private void add(
      String id, String words, When when, Consumer<ViewState> does, KeyStroke... keys) {
    all.add(new Action(id, words, List.of(keys), when, false, does));
  }
}
