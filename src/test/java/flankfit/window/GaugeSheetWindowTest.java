package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.gauge.Travel;
import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.lwjgl.opengl.GL33C;

/** The Gauge sheet by keys and pointer of the display. */
class GaugeSheetWindowTest {
  private static final String NAME = "filter-housing-m20";
  private static final int WIDTH = 1180;
  private static final int HEIGHT = 720;

  @TempDir Path folder;
  private final DrivenWindow<Seen> window = new DrivenWindow<>(this::look);
  private volatile boolean wantsPixels;
  private volatile String renderer = "";

  /** What a frame showed. */
  private record Seen(
      boolean gauged,
      double entry,
      String verdict,
      String words,
      boolean whole,
      boolean shaped,
      boolean rests,
      double noGoTurns,
      boolean noGoAtEnd,
      Optional<Travel> noGo,
      Desk.Over over,
      int seen,
      boolean advised,
      LengthUnit unit,
      Optional<byte[]> pixels,
      int error) {
    @Override
    public String toString() {
      return entry + " " + verdict + " " + words + " " + over + " whole " + whole;
    }
  }

  private Seen look(ViewState state, WindowLoop loop) {
    renderer = String.valueOf(GL33C.glGetString(GL33C.GL_RENDERER));
    Bench bench = state.gauge().bench();
    Bench.Shown shown = bench.shown();
    return new Seen(
        bench.base().isPresent(),
        bench.dial().map(Dial::entry).orElse(0.0),
        shown.thread().map(GaugeWords::verdict).orElse(""),
        new GaugeWords(state.unit()).entry(bench),
        shown.isWhole() && shown.isCurrent() && !bench.isGauging(),
        bench.shape().isPresent() && bench.realEntry() == shown.entry(),
        bench.hasOdds() && bench.odds().isPresent() && !bench.isReckoning(),
        bench.noGo().turns(),
        bench.noGo().isAtEnd(),
        bench.noGo().travel(),
        state.desk().over(),
        state.gauge().said().ofThread().size(),
        state.gauge().said().advice().isPresent(),
        state.unit(),
        wantsPixels ? Optional.of(loop.pixels()) : Optional.empty(),
        GL33C.glGetError());
  }

  @BeforeEach
  void needs_a_display_and_a_hand() {
    Xdotool.needed();
  }

  @Test
  @Timeout(value = 120, unit = TimeUnit.SECONDS)
  void the_dial_changes_the_verdict_and_a_gauge_stops_where_the_answer_says() throws Exception {
    MotionWindow.Places places = DrivenWindow.places(folder);
    new Preferences(
            WIDTH,
            HEIGHT,
            View.ISO,
            Theme.LIGHT,
            Optional.of(LengthUnit.MILLIMETRE),
            1,
            false,
            SheetName.GAUGE,
            false,
            false,
            1)
        .write(places.preferences());
    Path program = folder.resolve(NAME + ".nc");
    Files.copy(Path.of("sample-programs", NAME + ".nc"), program);
    String sheet = Files.readString(Path.of("sample-programs", NAME + ".setup.toml"));
    // Without the metal nothing bends, which spares time.
    Files.writeString(
        folder.resolve(NAME + ".setup.toml"), sheet.replaceAll("(?m)^\\[workpiece\\]\\R.*\\R", ""));
    try (Loader loader =
        new Loader(GaugedProgram.of(program), SetupSheet.empty(), List.of("a caution"))) {
      loader.begin();
      window.run(loader, places, Habits.none(), this::script);
    }
    assertThat(window.seen().error).isZero();
  }

  private void script() {
    window.await("a gauged program", s -> s.gauged);
    Xdotool.run("mousemove", "1150", "20", "key", "x");
    window.await("the wall as moved", s -> s.whole && s.shaped);
    assertThat(window.seen().verdict).isEqualTo("■ M20x1.5-6H: gauges good");
    dial();
    plug();
    said();
  }

  private void dial() {
    window.press(
        "Up",
        s ->
            s.entry == -0.046
                && s.words.startsWith("what if D4 wear were −0.046 mm? The sheet has −0.045 mm"));
    window.press("shift+Down", s -> s.entry == -0.036);
    window.press("ctrl+z", s -> s.entry == -0.046);
    Xdotool.run("key", "d");
    window.await("a line to type in", s -> s.over == Desk.Over.WEAR);
    Xdotool.run("type", "--", "-0.002");
    window.press("Return", s -> s.entry == -0.002);
    Seen refused = window.await("the whole answer", s -> s.whole);
    assertThat(refused.verdict).isEqualTo("▲ M20x1.5-6H: GO refused");
    picture("window-gauge-refused.png", s -> s.entry == -0.002);
    window.press("shift+k", s -> s.entry == -0.045 && s.verdict.endsWith("gauges good"));
    // The ladder is dragged down: the thread gets smaller, so the wear greater.
    Xdotool.run("mousemove", "260", "420", "mousedown", "1");
    window.await("the press", s -> s.entry == -0.045);
    Xdotool.run("mousemove", "260", "440", "mousemove", "260", "460", "mousemove", "260", "520");
    window.await("the dragged dial", s -> s.entry > -0.02);
    Xdotool.run("mouseup", "1", "mousemove", "1150", "20");
    window.press("ctrl+z", s -> s.entry == -0.045);
  }

  private void plug() {
    Seen out = window.await("the wall again", s -> s.whole && s.shaped);
    assertThat(out.noGoTurns).isZero();
    Seen stopped = window.press("ctrl+n", s -> s.noGoAtEnd);
    assertThat(stopped.noGoTurns).isEqualTo(stopped.noGo.orElseThrow().turns());
    assertThat(stopped.noGoTurns).isBetween(0.01, 2.0);
    window.press("ctrl+g", s -> s.whole);
    picture("window-gauge-plugs.png", s -> s.noGoAtEnd);
    // Odds stopped and asked for again are there in the end.
    Xdotool.run("key", "x", "x");
    window.settled("the odds", s -> s.rests);
    window.press("u", s -> s.unit == LengthUnit.INCH);
    window.press("u", s -> s.unit == LengthUnit.MILLIMETRE);
  }

  /** Compares what is shown at rest, all answers there, with a kept picture. */
  private void picture(String name, Predicate<Seen> then) {
    Xdotool.run("mousemove", "1150", "20");
    wantsPixels = true;
    Seen seen =
        window.settled(
            name, s -> then.test(s) && s.whole && s.shaped && s.rests && s.pixels.isPresent());
    wantsPixels = false;
    KeptScene.compare(renderer, name, seen.pixels.orElseThrow(), WIDTH, HEIGHT);
  }

  private void said() {
    Xdotool.run("key", "o");
    window.await("a line to tell it in", s -> s.over == Desk.Over.SEEN);
    window.press("Down", s -> s.over == Desk.Over.SEEN);
    window.press("Return", s -> s.over == Desk.Over.NOTHING && s.seen == 1);
    window.await("advice", s -> s.advised);
  }
}
