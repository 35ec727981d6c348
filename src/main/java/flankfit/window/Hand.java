package flankfit.window;

import static org.lwjgl.glfw.GLFW.*;

import flankfit.picture.View;
import org.lwjgl.glfw.Callbacks;

/** What keys, pointer and wheel do. Its callbacks come before those of the panels. */
final class Hand implements AutoCloseable {
  private final ViewState state;
  private final long window;
  private final Runnable touched;
  private Layout layout = new Layout(1, 1, 1);
  private float pixels = 1;
  private double column = -1;
  private double row = -1;
  private boolean turning;
  private boolean shifting;

  Hand(ViewState state, long window, Runnable touched) {
    this.state = state;
    this.window = window;
    this.touched = touched;
    glfwSetKeyCallback(window, (w, key, code, action, mods) -> key(key, action));
    glfwSetCharCallback(window, (w, character) -> touched.run());
    glfwSetCursorPosCallback(window, (w, x, y) -> move(x, y));
    glfwSetCursorEnterCallback(window, (w, entered) -> enter(entered));
    glfwSetMouseButtonCallback(window, (w, button, action, mods) -> button(button, action, mods));
    glfwSetScrollCallback(window, (w, x, y) -> wheel(y));
    glfwSetWindowFocusCallback(window, (w, focused) -> touched.run());
    glfwSetFramebufferSizeCallback(window, (w, width, height) -> touched.run());
    glfwSetWindowRefreshCallback(window, w -> touched.run());
    glfwSetWindowContentScaleCallback(window, (w, x, y) -> touched.run());
    glfwSetWindowIconifyCallback(window, (w, iconified) -> touched.run());
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

  private void key(int key, int action) {
    touched.run();
    if (action == GLFW_RELEASE) {
      return;
    }
    switch (key) {
      case GLFW_KEY_RIGHT, GLFW_KEY_N -> state.stepForward();
      case GLFW_KEY_LEFT, GLFW_KEY_P -> state.stepBack();
      case GLFW_KEY_HOME -> state.toStart();
      case GLFW_KEY_END -> state.toEnd();
      case GLFW_KEY_1, GLFW_KEY_KP_1 -> state.look(View.PLAN);
      case GLFW_KEY_2, GLFW_KEY_KP_2 -> state.look(View.FRONT);
      case GLFW_KEY_3, GLFW_KEY_KP_3 -> state.look(View.SIDE);
      case GLFW_KEY_4, GLFW_KEY_KP_4 -> state.look(View.ISO);
      case GLFW_KEY_F -> state.fit(false);
      case GLFW_KEY_C -> state.fit(true);
      case GLFW_KEY_T -> state.otherTheme();
      case GLFW_KEY_U -> state.otherUnit();
      case GLFW_KEY_PAGE_DOWN -> state.page(1);
      case GLFW_KEY_PAGE_UP -> state.page(-1);
      case GLFW_KEY_R -> state.reload();
      case GLFW_KEY_B -> state.toggleExplanation();
      case GLFW_KEY_H, GLFW_KEY_F1 -> state.toggleHelp();
      case GLFW_KEY_ESCAPE -> state.leave();
      case GLFW_KEY_Q -> state.quit();
      default -> {
        // Other keys mean nothing here.
      }
    }
  }

  private void enter(boolean entered) {
    touched.run();
    if (!entered && !turning && !shifting) {
      column = -1;
      row = -1;
    }
  }

  private void move(double x, double y) {
    touched.run();
    double dx = (x - column) * pixels;
    double dy = (y - row) * pixels;
    column = x;
    row = y;
    if (shifting) {
      state.pan(dx, dy);
    } else if (turning) {
      state.orbit(dx / pixels / layout.scale(), dy / pixels / layout.scale());
    }
  }

  private void button(int button, int action, int mods) {
    touched.run();
    if (action == GLFW_RELEASE) {
      turning = false;
      shifting = false;
      return;
    }
    if (state.help() || !layout.inScene(column, row)) {
      return;
    }
    boolean shift = (mods & GLFW_MOD_SHIFT) != 0;
    shifting = button == GLFW_MOUSE_BUTTON_MIDDLE || (button == GLFW_MOUSE_BUTTON_LEFT && shift);
    turning = button == GLFW_MOUSE_BUTTON_LEFT && !shift;
  }

  private void wheel(double notches) {
    touched.run();
    if (!state.help() && layout.inScene(column, row)) {
      double up = state.camera().height() - (row - layout.header()) * pixels;
      state.zoom(notches, column * pixels, up);
    }
  }

  @Override
  public void close() {
    Callbacks.glfwFreeCallbacks(window);
  }
}
