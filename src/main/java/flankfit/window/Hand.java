package flankfit.window;

import static org.lwjgl.glfw.GLFW.*;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lwjgl.glfw.Callbacks;
import org.lwjgl.glfw.GLFWDropCallback;

/** What keys, pointer and wheel do. Its callbacks come before those of the panels. */
final class Hand implements AutoCloseable {
  /** A press that moved less far (logical px) is a click. */
  private static final double STILL = 4;

  private final ViewState state;
  private final Actions actions;
  private final Typing typing;
  private final ProblemPanel problems;
  private final long window;
  private final Events events;
  private final Picks picks;
  private Layout layout = new Layout(1, 1, 1);
  private float pixels = 1;
  private double column = -1;
  private double row = -1;
  private double pressedColumn;
  private double pressedRow;
  private boolean pressed;
  private boolean turning;
  private boolean shifting;
  private boolean dragging;
  private boolean swallows;

  /** Finds what lies at a place of the scene (px, rows upwards). */
  interface Picks {
    /** What lies there. */
    Optional<Pick> at(double column, double row);
  }

  /**
   * Told of all that comes, so that it is drawn.
   *
   * @param touched for what the next frames show together: where the pointer is, the window's size
   * @param pressed for what is taken in one frame after the other: keys, letters, buttons, wheel
   */
  record Events(Runnable touched, Runnable pressed) {}

  Hand(
      ViewState state,
      Actions actions,
      Typing typing,
      ProblemPanel problems,
      long window,
      Picks picks,
      Events events) {
    this.state = state;
    this.actions = actions;
    this.typing = typing;
    this.problems = problems;
    this.window = window;
    this.picks = picks;
    this.events = events;
    glfwSetKeyCallback(window, (w, key, code, action, mods) -> key(key, code, action, mods));
    glfwSetCharCallback(window, (w, character) -> typed(character));
    glfwSetCursorPosCallback(window, (w, x, y) -> move(x, y));
    glfwSetCursorEnterCallback(window, (w, entered) -> enter(entered));
    glfwSetMouseButtonCallback(window, (w, button, action, mods) -> button(button, action, mods));
    glfwSetScrollCallback(window, (w, x, y) -> wheel(y));
    glfwSetDropCallback(window, (w, count, names) -> drop(count, names));
    glfwSetWindowFocusCallback(window, (w, focused) -> events.touched().run());
    glfwSetFramebufferSizeCallback(window, (w, width, height) -> events.touched().run());
    glfwSetWindowRefreshCallback(window, w -> events.touched().run());
    glfwSetWindowContentScaleCallback(window, (w, x, y) -> events.touched().run());
    glfwSetWindowIconifyCallback(window, (w, iconified) -> events.touched().run());
  }

  /** Takes where things stand now. */
  void layout(Layout now, float pixelsNow) {
    layout = now;
    pixels = pixelsNow;
  }

  /** Column of the pointer (window units); -1 outside. */
  double column() {
    return column;
  }

  /** Row of the pointer, downwards (window units); -1 outside. */
  double row() {
    return row;
  }

  private void key(int key, int code, int action, int mods) {
    events.pressed().run();
    if (action == GLFW_RELEASE) {
      return;
    }
    swallows = false;
    KeyStroke stroke = KeyStroke.pressed(letter(key, code), mods);
    if (typing.key(stroke, () -> glfwGetClipboardString(window))) {
      return;
    }
    Optional<Action> wanted = actions.of(stroke, state);
    if (wanted.isPresent() && (action == GLFW_PRESS || wanted.get().repeats())) {
      wanted.get().does().accept(state);
      // The letter of a key that opens a line to type in is no letter of what is typed.
      swallows = state.desk().isTyping() && !stroke.ctrl() && !stroke.alt();
    }
  }

  /** The letter that the keyboard has on a key, whatever its place; other keys stay. */
  private static int letter(int key, int code) {
    if (key < GLFW_KEY_A || key > GLFW_KEY_Z) {
      return key;
    }
    String name = glfwGetKeyName(key, code);
    if (name == null || name.length() != 1) {
      return key;
    }
    char upper = Character.toUpperCase(name.charAt(0));
    return upper >= 'A' && upper <= 'Z' ? upper : key;
  }

  private void typed(int character) {
    events.pressed().run();
    if (swallows) {
      swallows = false;
      return;
    }
    if (!typing.character(character)) {
      actions
          .of(KeyStroke.typed(character), state)
          .ifPresent(action -> action.does().accept(state));
    }
  }

  private void drop(int count, long names) {
    events.touched().run();
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      try {
        files.add(Path.of(GLFWDropCallback.getName(names, i)));
      } catch (InvalidPathException e) {
        state.desk().notice("what was dropped is no file: " + e.getReason());
      }
    }
    state.opening().drop(files);
  }

  private void enter(boolean entered) {
    events.touched().run();
    if (!entered && !turning && !shifting && !dragging) {
      column = -1;
      row = -1;
    }
  }

  private void move(double x, double y) {
    events.touched().run();
    double dx = (x - column) * pixels;
    double dy = (y - row) * pixels;
    column = x;
    row = y;
    if (dragging) {
      state.metal().drag(state.viewpoint().camera(), dx, -dy);
      return;
    }
    if (pressed && far()) {
      pressed = false;
      dx = (x - pressedColumn) * pixels;
      dy = (y - pressedRow) * pixels;
    }
    if (pressed) {
      return;
    }
    if (shifting) {
      state.viewpoint().pan(dx, dy);
    } else if (turning && state.viewpoint().isUnrolled()) {
      state.viewpoint().pan(dx, dy);
    } else if (turning) {
      state.viewpoint().orbit(dx / pixels / layout.scale(), dy / pixels / layout.scale());
    }
  }

  private boolean far() {
    return Math.hypot(column - pressedColumn, row - pressedRow) > STILL * layout.scale();
  }

  /** Whether the pointer is over the scene and over no panel that lies on it. */
  private boolean isInScene() {
    return state.sheet() != SheetName.GAUGE
        && state.desk().over() == Desk.Over.NOTHING
        && !state.desk().isWelcome()
        && layout.inScene(column, row)
        && !problems.covers(layout, column, row);
  }

  private void button(int button, int action, int mods) {
    events.pressed().run();
    if (action == GLFW_RELEASE) {
      if (pressed && turning) {
        click();
      }
      pressed = false;
      turning = false;
      shifting = false;
      if (dragging) {
        dragging = false;
        state.metal().release();
      }
      return;
    }
    if (!isInScene()) {
      return;
    }
    if (button == GLFW_MOUSE_BUTTON_LEFT && grabs()) {
      dragging = true;
      return;
    }
    boolean shift = (mods & GLFW_MOD_SHIFT) != 0;
    shifting = button == GLFW_MOUSE_BUTTON_MIDDLE || (button == GLFW_MOUSE_BUTTON_LEFT && shift);
    turning = button == GLFW_MOUSE_BUTTON_LEFT && !shift;
    pressed = true;
    pressedColumn = column;
    pressedRow = row;
  }

  /** Whether the pointer takes the grip of a plane. */
  private boolean grabs() {
    double reach = MetalMarks.GRIP_REACH * layout.scale() * pixels;
    return state.sheet() == SheetName.METAL
        && state.metal().grab(state.viewpoint().camera(), column * pixels, up(), reach);
  }

  private void click() {
    Optional<Pick> met = picks.at(column * pixels, up());
    Optional<Pick> before = state.selection().picked();
    boolean again =
        !state.selection().isMeasuring()
            && met.isPresent()
            && before.isPresent()
            && met.get().move() == before.get().move();
    state.selection().take(met);
    if (again) {
      state.toPicked();
    }
  }

  /** Row of the pointer in the scene, upwards (px). */
  private double up() {
    return state.viewpoint().camera().height() - (row - layout.header()) * pixels;
  }

  private void wheel(double notches) {
    events.pressed().run();
    if (isInScene()) {
      state.viewpoint().zoom(notches, column * pixels, up());
    }
  }

  @Override
  public void close() {
    Callbacks.glfwFreeCallbacks(window);
  }
}
