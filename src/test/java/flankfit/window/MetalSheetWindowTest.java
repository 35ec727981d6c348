package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.Point;
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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.lwjgl.opengl.GL33C;

/** The Metal sheet by keys and pointer of the display. */
class MetalSheetWindowTest {
  private static final int WIDTH = 1000;
  private static final int HEIGHT = 640;

  @TempDir Path folder;
  private final DrivenWindow<Seen> window = new DrivenWindow<>(this::look);
  private volatile boolean wantsPixels;
  private volatile String renderer = "";

  /** What a frame showed. */
  private record Seen(
      int moves,
      boolean fine,
      boolean rests,
      boolean opened,
      double plane,
      double gripColumn,
      double gripRow,
      double slotColumn,
      double slotRow,
      Optional<MetalPick> picked,
      boolean byTool,
      LengthUnit unit,
      Optional<byte[]> pixels,
      int error) {
    @Override
    public String toString() {
      return "moves " + moves + " fine " + fine + " plane " + plane + " " + picked;
    }
  }

  private Seen look(ViewState state, WindowLoop loop) {
    renderer = String.valueOf(GL33C.glGetString(GL33C.GL_RENDERER));
    MetalSide side = state.metal();
    Camera camera = state.viewpoint().camera();
    Point grip = SectionGrips.grip(side.sections(), 1, camera);
    Optional<MetalPicture> shown = side.bench().shown();
    double below = new Layout(WIDTH, HEIGHT, 1).header() + camera.height();
    return new Seen(
        shown.map(p -> p.of().moves()).orElse(-1),
        shown.isPresent() && shown.get().fine(),
        !loop.isUnfinished(),
        side.sections().isOn(1),
        side.sections().at(1),
        camera.column(grip.x(), grip.y(), grip.z()),
        below - camera.row(grip.x(), grip.y(), grip.z()),
        camera.column(-7, 1, -3),
        below - camera.row(-7, 1, -3),
        side.picked(),
        side.isByTool(),
        state.unit(),
        wantsPixels ? Optional.of(loop.pixels()) : Optional.empty(),
        GL33C.glGetError());
  }

  @BeforeEach
  void needs_a_display_and_a_hand() {
    Xdotool.needed();
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void metal_follows_the_position_a_plane_follows_the_hand_and_a_place_tells_its_tool()
      throws Exception {
    MotionWindow.Places places = DrivenWindow.places(folder);
    new Preferences(
            WIDTH,
            HEIGHT,
            View.ISO,
            Theme.LIGHT,
            Optional.of(LengthUnit.MILLIMETRE),
            1,
            false,
            SheetName.METAL,
            false,
            false,
            1)
        .write(places.preferences());
    Path program = folder.resolve("bracket.nc");
    Files.writeString(program, MetalJob.PROGRAM);
    Files.writeString(folder.resolve("bracket.setup.toml"), MetalJob.SHEET);
    try (Loader loader =
        new Loader(SheetPrograms.of(program), SetupSheet.empty(), List.of("a caution"))) {
      loader.begin();
      window.run(loader, places, Habits.none(), this::script);
    }
    assertThat(window.seen().error).isZero();
  }

  private void script() {
    Xdotool.run("mousemove", "980", "20");
    window.await("the stock", s -> s.moves >= 0 && s.rests);
    wantsPixels = true;
    byte[] stock = pixels("before the slot");
    window.press("End", s -> s.moves > 4 && s.fine && s.rests);
    byte[] cut = pixels("after the last move");
    assertThat(differing(stock, cut)).isGreaterThan(5000);
    wantsPixels = false;
    window.press("g", s -> true);
    window.press("y", s -> s.opened && s.plane == 0);
    window.press("Up", s -> s.plane > 0.09 && s.plane < 0.11);
    window.press("BackSpace", s -> s.plane == 0);
    drag();
    pick();
    wantsPixels = true;
    window.press("k", s -> s.byTool && s.rests);
    KeptScene.compare(renderer, "window-metal-tools.png", pixels("tools"), WIDTH, HEIGHT);
    wantsPixels = false;
    window.press("y", s -> !s.opened);
    window.press("y", s -> s.opened);
    window.press("Up", s -> true);
    wantsPixels = true;
    window.press("Down", s -> s.rests);
    KeptScene.compare(renderer, "window-metal.png", pixels("all of it"), WIDTH, HEIGHT);
    wantsPixels = false;
    window.press("u", s -> s.unit == LengthUnit.INCH);
  }

  private void drag() {
    Seen before = window.seen();
    int column = (int) Math.round(before.gripColumn);
    int row = (int) Math.round(before.gripRow);
    Xdotool.run("mousemove", "" + column, "" + row, "mousedown", "1");
    Xdotool.run("mousemove", "" + (column + 20), "" + (row - 10));
    Xdotool.run("mousemove", "" + (column + 40), "" + (row - 20), "mouseup", "1");
    Seen after = window.await("a dragged plane", s -> s.plane > 0.5);
    assertThat(after.opened).isTrue();
    Xdotool.run("mousemove", "980", "20");
    window.press("BackSpace", s -> s.plane == 0);
  }

  private void pick() {
    Seen before = window.seen();
    window.click(before.slotColumn, before.slotRow);
    MetalPick met = window.await("a picked place", s -> s.picked.isPresent()).picked.orElseThrow();
    assertThat(met.place().z()).isBetween(-3.001, -2.999);
    assertThat(met.maker()).isPositive();
    Xdotool.run("mousemove", "980", "20");
    window.press("Escape", s -> s.picked.isEmpty() && s.opened);
  }

  private byte[] pixels(String what) {
    return window.settled(what, s -> s.rests && s.pixels.isPresent()).pixels.orElseThrow();
  }

  private static int differing(byte[] one, byte[] other) {
    int count = 0;
    for (int i = 0; i < one.length; i += 3) {
      count += Math.abs((one[i] & 0xFF) - (other[i] & 0xFF)) > 8 ? 1 : 0;
    }
    return count;
  }
}
