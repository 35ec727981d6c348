package flankfit.window;

import static org.lwjgl.glfw.GLFW.*;
import static org.lwjgl.opengl.GL33C.*;
import static org.lwjgl.system.MemoryUtil.NULL;

import flankfit.picture.Colours;
import flankfit.picture.RenderTarget;
import imgui.ImGui;
import imgui.gl3.ImGuiImplGl3;
import imgui.glfw.ImGuiImplGlfw;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lwjgl.glfw.GLFWErrorCallback;
import org.lwjgl.opengl.GL;

/** The window itself: waits for events, then draws three frames, then waits again. */
final class WindowLoop implements AutoCloseable {
  private static final int FRAMES_AFTER_EVENT = 3;

  /** Frames that are drawn at most for what has come at once. */
  private static final int MOST_FRAMES = 60;

  private static final double LONGEST_WAIT = 0.5;
  private static final double WAIT_FOR_BLOCK = 0.05;
  private static final int GPU_SAMPLES = 4;

  /** Time between two frames while the program plays (s). */
  private static final double FRAME = 1 / 60.0;

  private final ViewState state;
  private final long window;
  private final ImGuiImplGlfw glfwSide = new ImGuiImplGlfw();
  private final ImGuiImplGl3 glSide = new ImGuiImplGl3();
  private final Hand hand;
  private final WindowPanels panels;
  private final List<Sheet> sheets;
  private final WindowFiles files;
  private final int[] a = new int[1];
  private final int[] b = new int[1];
  private final float[] ground = new float[4];
  private final float[] f = new float[1];
  private final float[] g = new float[1];
  private final GlyphRanges ranges;
  private PaperStyle style;
  private String shownFile;
  private Layout layout = new Layout(1, 1, 1);
  private float contentScale;
  private float pixels = 1;
  private int framebufferWidth;
  private int framebufferHeight;
  private int width;
  private int height;
  private long drawnChanges = -1;
  private long frames;
  private boolean pointer = true;
  private long frameBegun;
  private int pending = FRAMES_AFTER_EVENT;

  WindowLoop(ViewState state, Preferences preferences, Path pictures) throws NoDisplayException {
    this.state = state;
    files = new WindowFiles(pictures, WindowLoop::wake);
    window = openWindow(preferences, title(state.input().file()));
    shownFile = state.input().file();
    Actions actions = WindowKeys.actions();
    panels = new WindowPanels(state, actions, WindowKeys.SHEETS);
    Typing typing = new Typing(state, panels.palette(), panels.welcome());
    hand =
        new Hand(
            state,
            actions,
            typing,
            panels.problems(),
            window,
            this::pick,
            new Hand.Events(this::touched, this::pressed));
    GL.createCapabilities();
    ImGui.createContext();
    ImGui.getIO().setIniFilename(null);
    glfwSide.init(window, true);
    measure();
    ranges = new GlyphRanges();
    style = new PaperStyle(contentScale / pixels, pixels, ranges);
    glSide.init("#version 330 core");
    String name = String.valueOf(glGetString(GL_RENDERER));
    int samples = isSoftware(name) ? 0 : GPU_SAMPLES;
    MotionSheet motion = new MotionSheet(state, contentScale, samples);
    sheets =
        List.of(
            motion,
            new MetalSheet(state, contentScale, samples),
            new GaugeSheet(state, contentScale),
            new LessonSheet(state, motion));
  }

  private static String title(String file) {
    return file.isEmpty() ? "Flankfit" : "Flankfit: " + file;
  }

  private Sheet sheet() {
    for (Sheet sheet : sheets) {
      if (sheet.name() == state.sheet()) {
        return sheet;
      }
    }
    return sheets.get(0);
  }

  private Optional<Pick> pick(double column, double row) {
    return sheet().pick(column, row);
  }

  private static boolean isSoftware(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.contains("llvmpipe") || lower.contains("softpipe") || lower.contains("swrast");
  }

  private static long openWindow(Preferences preferences, String title) throws NoDisplayException {
    StringBuilder refusal = new StringBuilder();
    GLFWErrorCallback complaints =
        GLFWErrorCallback.create(
            (code, text) -> refusal.append(GLFWErrorCallback.getDescription(text)));
    GLFWErrorCallback before = glfwSetErrorCallback(complaints);
    if (before != null) {
      before.free();
    }
    if (!glfwInit()) {
      throw new NoDisplayException("the display answers: " + refusal);
    }
    glfwDefaultWindowHints();
    glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
    glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 3);
    glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
    glfwWindowHint(GLFW_OPENGL_FORWARD_COMPAT, GLFW_TRUE);
    glfwWindowHint(GLFW_SCALE_TO_MONITOR, GLFW_TRUE);
    long window = glfwCreateWindow(preferences.width(), preferences.height(), title, NULL, NULL);
    if (window == NULL) {
      glfwTerminate();
      throw new NoDisplayException("the display answers: " + refusal);
    }
    glfwSetWindowSizeLimits(
        window, Preferences.LEAST_WIDTH, Preferences.LEAST_HEIGHT, GLFW_DONT_CARE, GLFW_DONT_CARE);
    glfwMakeContextCurrent(window);
    glfwSwapInterval(1);
    return window;
  }

  /** Makes a waiting loop look for what has come; may be called on any thread. */
  static void wake() {
    glfwPostEmptyEvent();
  }

  private void touched() {
    pending = Math.max(pending, FRAMES_AFTER_EVENT);
  }

  /**
   * Presses, releases, letters and turns of the wheel are queued and taken one in each frame, and
   * with them the pointer's place: many at once want as many frames.
   */
  private void pressed() {
    touched();
    pending = Math.min(pending + 1, MOST_FRAMES);
  }

  /** Runs until the user or the observer closes the window. */
  void run(WindowObserver observer) {
    while (!glfwWindowShouldClose(window) && !state.closes()) {
      boolean plays = state.player().tick(System.nanoTime());
      if (state.follow()
          || files.tell(state.desk())
          || drawnChanges != state.changes()
          || panels.block().hasCome()) {
        touched();
      }
      if (plays) {
        touched();
        double since = (System.nanoTime() - frameBegun) * 1e-9;
        glfwWaitEventsTimeout(Math.max(1e-4, FRAME - since));
      } else if (pending > 0) {
        glfwPollEvents();
      } else {
        boolean soon = panels.block().isWaiting() || state.isCutting();
        glfwWaitEventsTimeout(soon ? WAIT_FOR_BLOCK : LONGEST_WAIT);
      }
      if (pending > 0 && glfwGetWindowAttrib(window, GLFW_ICONIFIED) == GLFW_FALSE) {
        pending--;
        frameBegun = System.nanoTime();
        frame();
        observer.drawn(state, this);
        glfwSwapBuffers(window);
      } else if (pending > 0) {
        pending = 0;
      }
    }
  }

  private void frame() {
    measure();
    nameWindow();
    hand.layout(layout, pixels);
    state
        .viewpoint()
        .resize(
            Math.round(layout.sceneWidth() * pixels), Math.round(layout.sceneHeight() * pixels));
    drawnChanges = state.changes();
    Paper paper =
        new Paper(
            style,
            layout,
            state.theme().palette(),
            pixels,
            pointer ? hand.column() : -1,
            pointer ? hand.row() : -1);
    glBindFramebuffer(GL_FRAMEBUFFER, 0);
    glViewport(0, 0, framebufferWidth, framebufferHeight);
    Colours.put(state.theme().palette().ground(), 1, ground, 0);
    glClearColor(ground[0], ground[1], ground[2], 1);
    glClear(GL_COLOR_BUFFER_BIT);
    int below =
        framebufferHeight
            - Math.round(layout.header() * pixels)
            - state.viewpoint().camera().height();
    Sheet sheet = sheet();
    if (!state.desk().isWelcome()) {
      sheet.picture(paper, below);
      glBindFramebuffer(GL_FRAMEBUFFER, 0);
      glViewport(0, 0, framebufferWidth, framebufferHeight);
    }
    glfwSide.newFrame();
    glSide.newFrame();
    style.apply(state.theme());
    ImGui.newFrame();
    panels.draw(paper, Optional.of(sheet));
    ImGui.render();
    glSide.renderDrawData(ImGui.getDrawData());
    frames++;
    grant();
    if (!state.desk().isWelcome() && sheet.isUnfinished()) {
      touched();
    }
  }

  private void nameWindow() {
    if (!shownFile.equals(state.input().file())) {
      shownFile = state.input().file();
      glfwSetWindowTitle(window, title(shownFile));
    }
  }

  /** Saves the pictures that were wished for. */
  private void grant() {
    Optional<Desk.Wish> wish = state.desk().takeWish();
    String name = WindowFiles.stem(state.input().file());
    if (wish.isPresent()) {
      switch (wish.get()) {
        case SCREENSHOT -> files.screenshot(name, pixels(), framebufferWidth, framebufferHeight);
        case PICTURE -> picture(name);
      }
      state.desk().notice("saving a picture …");
      touched();
    }
  }

  /** Saves the motion with title and key, or the scene of another sheet as it is seen. */
  private void picture(String name) {
    if (state.sheet() == SheetName.MOTION) {
      files.picture(name, state.scene(), state.viewpoint().view(), state.theme());
      return;
    }
    PixelBox box =
        new PixelBox(
            0,
            Math.round(layout.header() * pixels),
            Math.min(framebufferWidth, Math.round(layout.sceneWidth() * pixels)),
            Math.min(
                framebufferHeight, Math.round((layout.header() + layout.sceneHeight()) * pixels)));
    files.scene(name, state.sheet(), box.of(pixels(), framebufferWidth), box);
  }

  /** Reads sizes and scale; makes letters anew when the scale changed. */
  private void measure() {
    glfwGetWindowSize(window, a, b);
    width = Math.max(1, a[0]);
    height = Math.max(1, b[0]);
    glfwGetFramebufferSize(window, a, b);
    framebufferWidth = Math.max(1, a[0]);
    framebufferHeight = Math.max(1, b[0]);
    pixels = framebufferWidth / (float) width;
    glfwGetWindowContentScale(window, f, g);
    float wanted = Math.max(0.5f, f[0]) * (float) state.paper().textSize();
    if (wanted != contentScale) {
      boolean first = contentScale == 0;
      contentScale = wanted;
      if (!first) {
        rescale();
      }
    }
    boolean explained =
        (state.explains() && state.position() >= 0) || state.sheet() == SheetName.GAUGE;
    boolean lesson = state.sheet() == SheetName.LESSON && !state.desk().isWelcome();
    layout = new Layout(width, height, contentScale / pixels, explained, lesson);
  }

  private void rescale() {
    style = new PaperStyle(contentScale / pixels, pixels, ranges);
    glSide.destroyFontsTexture();
    glSide.createFontsTexture();
    sheets.forEach(sheet -> sheet.rescale(contentScale));
    drawnChanges = -1;
  }

  /**
   * How long the present frame has taken (ns).
   *
   * @param now the time (ns, of {@link System#nanoTime})
   */
  long frameTime(long now) {
    return now - frameBegun;
  }

  /** Draws from now on as if there were no pointer. */
  void withoutPointer() {
    pointer = false;
  }

  /** Draws another frame after this one. */
  void again() {
    touched();
  }

  /** Whether some of the picture is still to come. */
  boolean isUnfinished() {
    return sheet().isUnfinished();
  }

  /** Frames drawn so far. */
  long frames() {
    return frames;
  }

  /** What the window shows now: red, green, blue, rows from the top. */
  byte[] pixels() {
    glBindFramebuffer(GL_READ_FRAMEBUFFER, 0);
    return RenderTarget.readBound(framebufferWidth, framebufferHeight);
  }

  /** Width of the picture of {@link #pixels()} (px). */
  int pixelWidth() {
    return framebufferWidth;
  }

  /** Height of the picture of {@link #pixels()} (px). */
  int pixelHeight() {
    return framebufferHeight;
  }

  /** What to remember, at the size the window has now. */
  Preferences preferences() {
    float s = contentScale / pixels / (float) state.paper().textSize();
    return state.preferences(Math.round(width / s), Math.round(height / s));
  }

  @Override
  public void close() {
    state.gauge().close();
    state.lesson().close();
    state.metal().close();
    sheets.forEach(Sheet::close);
    glSide.shutdown();
    // The panels' own shutdown destroys cursors that a display may not have given and fails on
    // them; glfwTerminate frees those it gave.
    glfwSide.restoreCallbacks(window);
    ImGui.destroyContext();
    ranges.close();
    hand.close();
    GL.setCapabilities(null);
    glfwMakeContextCurrent(NULL);
    glfwDestroyWindow(window);
    glfwTerminate();
    GLFWErrorCallback last = glfwSetErrorCallback(null);
    if (last != null) {
      last.free();
    }
  }
}
