package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.Camera;
import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.lwjgl.PointerBuffer;
import org.lwjgl.glfw.GLFW;
import org.lwjgl.glfw.GLFWDropCallback;
import org.lwjgl.opengl.GL33C;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/** The window from the samples on: chosen, played, picked, measured, searched, edited. */
class SheetsWindowTest {
  private static final int WIDTH = 1000;
  private static final int HEIGHT = 700;

  @TempDir Path folder;
  private final DrivenWindow<Seen> window = new DrivenWindow<>(this::look);
  private final AtomicReference<Optional<Path>> dropped = new AtomicReference<>(Optional.empty());
  private volatile boolean wantsPixels;
  private volatile String renderer = "";

  /** What a frame showed. */
  private record Seen(
      String file,
      Stage stage,
      int line,
      double seconds,
      boolean playing,
      int times,
      Desk.Over over,
      boolean welcome,
      int problems,
      String problem,
      Optional<Pick> picked,
      Optional<Measure> measure,
      int points,
      int found,
      int foundLine,
      double textSize,
      String notice,
      boolean wall,
      Optional<double[]> end,
      Optional<double[]> start,
      String text,
      Optional<byte[]> pixels,
      boolean still,
      int error) {
    @Override
    public String toString() {
      return file
          + " "
          + stage
          + " line "
          + line
          + " "
          + over
          + " "
          + problem
          + " "
          + notice
          + " picked "
          + picked
          + " found "
          + found
          + " size "
          + textSize;
    }
  }

  private Seen look(ViewState state, WindowLoop loop) {
    dropped.getAndSet(Optional.empty()).ifPresent(SheetsWindowTest::drop);
    Tape tape = state.course().tape();
    int helix = helix(tape);
    renderer = String.valueOf(GL33C.glGetString(GL33C.GL_RENDERER));
    List<Problem> problems = state.desk().problems();
    Playback playback = state.player().playback();
    return new Seen(
        state.input().file(),
        state.loaded().stage(),
        state.line(),
        state.course().seconds(),
        playback.isPlaying(),
        playback.times(),
        state.desk().over(),
        state.desk().isWelcome(),
        problems.size(),
        problems.isEmpty() ? "" : problems.get(0).what(),
        state.selection().picked(),
        state.selection().measure(),
        state.selection().points().size(),
        state.search().count(),
        state.search().current(),
        state.paper().textSize(),
        state.desk().notice(),
        state.viewpoint().isUnrolled(),
        helix < 0 ? Optional.empty() : Optional.of(place(state, tape.to(helix))),
        helix < 0 ? Optional.empty() : Optional.of(place(state, tape.from(helix))),
        state.line() < 1 ? "" : state.input().programLines().get(state.line() - 1),
        wantsPixels ? Optional.of(loop.pixels()) : Optional.empty(),
        !loop.isUnfinished(),
        GL33C.glGetError());
  }

  /** A file dropped on the window, as GLFW tells it: no tool of the display can drag one. */
  private static void drop(Path file) {
    long window = GLFW.glfwGetCurrentContext();
    GLFWDropCallback callback = GLFW.glfwSetDropCallback(window, null);
    try (MemoryStack stack = MemoryStack.stackPush()) {
      PointerBuffer names = stack.pointers(stack.UTF8(file.toString()));
      callback.invoke(window, 1, MemoryUtil.memAddress(names));
    }
    GLFW.glfwSetDropCallback(window, callback);
  }

  private static int helix(Tape tape) {
    for (int move = 0; move < tape.size(); move++) {
      if (tape.kind(move) == MoveKind.ARC && Math.abs(tape.sweep(move)) > 6) {
        return move;
      }
    }
    return -1;
  }

  /** Column and row, downwards, of a point in the window (px). */
  private static double[] place(ViewState state, Point p) {
    Camera camera = state.viewpoint().camera();
    float header = new Layout(WIDTH, HEIGHT, 1).header();
    return new double[] {
      camera.column(p.x(), p.y(), p.z()), header + camera.height() - camera.row(p.x(), p.y(), p.z())
    };
  }

  @BeforeEach
  void needs_a_display_and_a_hand() {
    Xdotool.needed();
  }

  @Test
  @Timeout(value = 180, unit = TimeUnit.SECONDS)
  void a_sample_is_chosen_played_picked_measured_searched_and_edited() throws Exception {
    MotionWindow.Places places = DrivenWindow.places(folder);
    new Preferences(WIDTH, HEIGHT, View.ISO, Theme.LIGHT, Optional.of(LengthUnit.MILLIMETRE))
        .write(places.preferences());
    Samples samples = new Samples(folder.resolve("samples"));
    try (Loader loader =
            new Loader(
                Optional.empty(),
                SetupSheet.empty(),
                List.of("a caution"),
                Optional.of(SheetPrograms::of),
                Optional.of(samples));
        Watch watch = new Watch(loader::files, loader::begin);
        Habits habits = Habits.in(folder)) {
      watch.start();
      window.run(loader, places, habits, this::script);
    }
    assertThat(window.seen().error).isZero();
    assertThat(RecentFiles.read(folder.resolve("recent.txt")).all())
        .containsExactly(
            folder.resolve("valve-block-half-13.nc"),
            folder.resolve("samples").resolve("filter-housing-m20.nc"));
    assertThat(Preferences.read(places.preferences()).wall()).isTrue();
    try (var pictures = Files.list(places.pictures())) {
      assertThat(pictures.map(p -> p.getFileName().toString()).sorted())
          .containsExactly(
              "flankfit-filter-housing-m20-plan-1.png", "flankfit-filter-housing-m20-window-1.png");
    }
  }

  private void script() {
    assertThat(window.seen().welcome).isTrue();
    window.press("Return", s -> s.stage == Stage.DONE);
    assertThat(window.seen().file).endsWith("filter-housing-m20.nc");
    assertThat(window.seen().welcome).isFalse();
    jump();
    play();
    pick();
    measure();
    search();
    edit();
    keep();
    drop("valve-block-half-13");
  }

  private void drop(String name) {
    Path program = folder.resolve(name + ".nc");
    try {
      for (String ending : List.of(".nc", ".setup.toml")) {
        Files.copy(Path.of("sample-programs", name + ending), folder.resolve(name + ending));
      }
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    dropped.set(Optional.of(program));
    Xdotool.run("mousemove", "600", "300");
    window.await(
        "the dropped file", s -> s.file.equals(program.toString()) && s.stage == Stage.DONE);
    window.press("5", s -> s.wall);
  }

  private void jump() {
    int before = window.seen().line;
    window.press("slash", s -> s.over == Desk.Over.PALETTE);
    window.type("last bl");
    Xdotool.run("key", "Return");
    window.await("the last block", s -> s.over == Desk.Over.NOTHING && s.line > 25);
    window.press("alt+Left", s -> s.line == before);
    window.press("shift+e", s -> s.line <= before);
    window.press("e", s -> s.line >= before);
    window.press("Home", s -> s.line == before);
  }

  private void play() {
    double begun = window.seen().seconds;
    window.press("Up", s -> s.times == 10);
    window.press("space", s -> s.playing && s.seconds > begun + 0.5);
    Seen held = window.press("space", s -> !s.playing);
    Xdotool.pause(300);
    assertThat(window.seen().seconds).isEqualTo(held.seconds);
    window.press("Home", s -> s.seconds == begun);
  }

  private void pick() {
    Xdotool.run("key", "1", "c");
    Seen plan = window.settled("the plan at rest", s -> s.still && s.end.isPresent());
    double[] at = plan.end.orElseThrow();
    window.click(at[0], at[1]);
    Seen met = window.await("a picked move", s -> s.picked.isPresent());
    assertThat(met.picked.get().kind()).isEqualTo(Pick.Kind.END);
    wantsPixels = true;
    Xdotool.run("mousemove", "990", "20");
    Seen marked = window.await("the marked move", s -> s.pixels.isPresent() && s.still);
    wantsPixels = false;
    KeptScene.compare(renderer, "window-picked.png", marked.pixels.orElseThrow(), WIDTH, HEIGHT);
    assertThat(plan.line).isEqualTo(met.line);
    window.press("Return", s -> s.line != plan.line);
    window.press("Escape", s -> s.picked.isEmpty());
  }

  private void measure() {
    window.press("m", s -> s.notice.contains("two points"));
    double[] a = window.seen().start.orElseThrow();
    window.click(a[0], a[1]);
    window.await("the first point", s -> s.points == 1);
    double[] b = window.seen().end.orElseThrow();
    window.click(b[0], b[1]);
    Seen measured = window.await("the measure", s -> s.measure.isPresent());
    // Start and end of a turn lie above each other; other passes begin at other radii.
    assertThat(measured.measure.get().inPlan()).isCloseTo(0, within(2.0));
    window.press("Escape", s -> s.points == 0 && s.measure.isEmpty());
  }

  private void search() {
    window.press("ctrl+f", s -> s.over == Desk.Over.SEARCH);
    window.type("g41");
    window.await("lines with G41", s -> s.found == 3);
    Seen first = window.press("Return", s -> s.over == Desk.Over.NOTHING && s.foundLine > 0);
    Seen next = window.press("n", s -> s.foundLine != first.foundLine);
    window.press("shift+n", s -> s.foundLine == first.foundLine);
    window.press("n", s -> s.foundLine == next.foundLine);
    window.press("Return", s -> s.line == next.foundLine);
    window.press("Escape", s -> s.found == 0);
  }

  private void edit() {
    Path program = folder.resolve("samples").resolve("filter-housing-m20.nc");
    Seen before = window.seen();
    try {
      String text = Files.readString(program);
      Files.writeString(program, text.replaceFirst("\n", "\n(A LINE MORE)\n"));
      Seen after =
          window.await(
              "the block one line on", s -> s.stage == Stage.DONE && s.line == before.line + 1);
      assertThat(after.text).isEqualTo(before.text);
      Path sheet = program.resolveSibling("filter-housing-m20.setup.toml");
      String good = Files.readString(sheet);
      Files.writeString(sheet, good.replaceFirst("units", "unitz"));
      Seen broken = window.await("an error in a panel", s -> s.problems > 0);
      assertThat(broken.problem).contains("unitz");
      assertThat(broken.line).isEqualTo(after.line);
      Files.writeString(sheet, good);
      window.await("the mended sheet", s -> s.problems == 0 && s.stage == Stage.DONE);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private void keep() {
    window.press("ctrl+equal", s -> s.textSize == 1.15);
    window.press("ctrl+0", s -> s.textSize == 1);
    window.press("F12", s -> s.notice.startsWith("saved ") && s.notice.endsWith("window-1.png"));
    window.press(
        "shift+F12", s -> s.notice.startsWith("saved ") && s.notice.endsWith("plan-1.png"));
    Xdotool.run("mousemove", "990", "20");
    window.press("5", s -> s.wall);
    Xdotool.run("key", "slash");
    window.type("13");
    window.press("Return", s -> s.line == 13);
    wantsPixels = true;
    Seen wall = window.press("Right", s -> s.pixels.isPresent() && s.line == 14);
    wantsPixels = false;
    KeptScene.compare(renderer, "window-wall.png", wall.pixels.orElseThrow(), WIDTH, HEIGHT);
    window.press("question", s -> s.over == Desk.Over.KEYS);
    window.press("Escape", s -> s.over == Desk.Over.NOTHING);
  }
}
