package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.lesson.Told;
import flankfit.picture.KeptPicture;
import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.lwjgl.opengl.GL33C;

/** The Lesson sheet by keys and pointer of the display. */
class LessonSheetWindowTest {
  private static final String NAME = "filter-housing-m20";
  private static final int WIDTH = 1100;
  private static final int HEIGHT = 700;

  @TempDir Path folder;
  private final DrivenWindow<Seen> window = new DrivenWindow<>(this::look);
  private volatile boolean wantsPixels;
  private volatile String renderer = "";

  /** What a frame showed. */
  private record Seen(
      SheetName sheet,
      int line,
      int told,
      String plain,
      boolean whole,
      boolean finished,
      boolean hides,
      Optional<String> question,
      Optional<String> without,
      LessonSide.Shown shown,
      double scale,
      Optional<byte[]> pixels,
      int error) {
    @Override
    public String toString() {
      return sheet + " line " + line + " told " + told + " " + plain + " " + without + " " + scale;
    }
  }

  private Seen look(ViewState state, WindowLoop loop) {
    renderer = String.valueOf(GL33C.glGetString(GL33C.GL_RENDERER));
    LessonSide lesson = state.lesson();
    Optional<Told> told = lesson.told();
    return new Seen(
        state.sheet(),
        state.line(),
        told.map(t -> t.step().place().line()).orElse(0),
        told.map(t -> t.step().plain()).orElse(""),
        state.loaded().stage() == Stage.DONE,
        !loop.isUnfinished(),
        lesson.isHiding(),
        lesson.question().map(q -> q.question()),
        lesson.accident().map(a -> a.left().word() + " " + a.left().place().line()),
        lesson.shown(),
        state.viewpoint().camera().millimetresPerPixel(),
        wantsPixels ? Optional.of(loop.pixels()) : Optional.empty(),
        GL33C.glGetError());
  }

  @BeforeEach
  void needs_a_display_and_a_hand() {
    Xdotool.needed();
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void a_block_is_told_asked_about_and_told_without_its_mode_word() throws Exception {
    MotionWindow.Places places = DrivenWindow.places(folder);
    new Preferences(WIDTH, HEIGHT, View.PLAN, Theme.LIGHT, Optional.of(LengthUnit.MILLIMETRE))
        .write(places.preferences());
    for (String ending : List.of(".nc", ".setup.toml")) {
      Files.copy(Path.of("sample-programs", NAME + ending), folder.resolve(NAME + ending));
    }
    ProgramSource source = SheetPrograms.of(folder.resolve(NAME + ".nc"));
    try (Loader loader = new Loader(source, SetupSheet.empty(), List.of("a caution"))) {
      loader.begin();
      window.run(loader, places, Habits.none(), this::script);
    }
    assertThat(window.seen().error).isZero();
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void a_picture_is_taken_when_the_sheet_is_complete() throws Exception {
    ProgramSource source = SheetPrograms.of(Path.of("sample-programs", NAME + ".nc"));
    byte[] png =
        WindowPicture.png(
            source,
            source.read(),
            List.of("a caution"),
            new WindowPicture.Wanted("lesson", 13, 800, 600, true, List.of()));
    BufferedImage picture = ImageIO.read(new ByteArrayInputStream(png));
    assertThat(picture.getWidth()).isEqualTo(800);
    assertThat(picture.getHeight()).isEqualTo(600);
    // Words in the hue of incremental mode, to be had only where the block is told.
    int hue = Theme.DARK.palette().incrementalText();
    int seen = 0;
    for (int x = 400; x < 800; x++) {
      for (int y = 380; y < 560; y++) {
        seen += (picture.getRGB(x, y) & 0xFFFFFF) == hue ? 1 : 0;
      }
    }
    assertThat(seen).isGreaterThan(300);
  }

  private void script() {
    window.await("the program", s -> s.whole);
    Xdotool.run("mousemove", "1080", "20", "key", "ctrl+4");
    // At rest: the eye goes to what is cut, and the listing takes its place.
    window.settled("the sheet", s -> s.sheet == SheetName.LESSON && s.told > 0);
    // The listing shows the first lines; a click on line 8 goes there, keys to the helix.
    Layout layout = new Layout(WIDTH, HEIGHT, 1, false, true);
    window.click(layout.sceneWidth() + 150, layout.header() + 8 + 7 * 21 + 10);
    window.await("the step of line 8", s -> s.line == 8 && s.told == 8);
    // One by one, for the listing follows each: how far it has gone shows in the pictures.
    window.press("Right", s -> s.told == 11);
    window.press("Right", s -> s.told == 12);
    Seen helix = window.press("Right", s -> s.line == 13 && s.told == 13);
    assertThat(helix.plain)
        .isEqualTo(
            "from where it stands, 1.5 up while going once round anticlockwise, centre 2.6 left");
    window.press("z", s -> s.scale != helix.scale);
    Xdotool.run("mousemove", "1080", "20");
    wantsPixels = true;
    Predicate<Seen> whole = s -> s.finished && s.pixels.isPresent();
    compare("window-lesson.png", window.settled("the whole picture", whole));
    window.press("w", s -> s.without.equals(Optional.of("G91 10")));
    compare("window-lesson-without.png", window.settled("the wrong path", whole));
    wantsPixels = false;
    window.press("Right", s -> s.told == 14 && s.without.isPresent());
    window.press("Escape", s -> s.without.isEmpty());
    window.press("a", s -> s.hides && s.question.isPresent());
    window.press("Return", s -> !s.hides);
    window.press("Right", s -> s.told == 15 && s.hides);
    window.press("a", s -> !s.hides);
    window.press("s", s -> s.shown == LessonSide.Shown.ABSOLUTE);
  }

  private void compare(String name, Seen seen) {
    if (!renderer.contains("llvmpipe")) {
      return; // pictures are kept for that renderer alone
    }
    try {
      KeptPicture.compare(name, seen.pixels.orElseThrow(), WIDTH, HEIGHT);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
