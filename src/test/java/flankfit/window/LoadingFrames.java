package flankfit.window;

import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Measures how the window keeps going while it loads a program; a tool, no test. Needs a display.
 * Argument: the program. Prints when the first move was on the screen and how long frames took.
 */
final class LoadingFrames {
  private final long begun = System.nanoTime();
  private volatile long firstKnown;
  private long firstFrame;
  private long firstMove;
  private long longest;
  private long whole;
  private long done;
  private long frames;
  private int slow;
  private final List<Long> times = new ArrayList<>();
  private long settled;

  private LoadingFrames() {}

  public static void main(String[] arguments) throws Exception {
    for (int i = 0; i < 5; i++) {
      firstMove(new FileSource(Path.of(arguments[0])));
    }
    new LoadingFrames().measure(Path.of(arguments[0]));
  }

  private void measure(Path program) throws Exception {
    ProgramSource source = new FileSource(program);
    Path kept = Files.createTempDirectory("loading-frames").resolve("window.properties");
    try (Loader loader = new Loader(source, SetupSheet.empty(), List.of())) {
      loader.begin();
      Thread watch = new Thread(() -> waitForMove(loader));
      watch.start();
      MotionWindow.open(loader, kept, this::drawn);
      print("first move known to the window", firstKnown - begun);
      print("first frame", firstFrame - begun);
      print("first frame with a move", firstMove - begun);
      print("all moves known", whole - begun);
      print("checked and gauged", done - begun);
      print("picture at rest", settled - begun);
      print("longest frame after the first with a move", longest);
      System.out.println("frames " + frames + ", of these above 33 ms: " + slow);
      print("median frame", times.stream().sorted().skip(times.size() / 2).findFirst().orElse(0L));
      int first = loader.latest().input().tape().size();
      System.out.println("moves " + first);
      System.exit(0);
    }
  }

  /** How long it takes from asking for a file to its first move, without a window. */
  private static void firstMove(ProgramSource source) {
    try (Loader loader = new Loader(source, SetupSheet.empty(), List.of())) {
      long begun = System.nanoTime();
      loader.begin();
      while (loader.latest().input().tape().size() == 0) {
        Thread.onSpinWait();
      }
      print("from asking to the first move", System.nanoTime() - begun);
    }
  }

  private void waitForMove(Loader loader) {
    while (loader.latest().input().tape().size() == 0) {
      Xdotool.pause(1);
    }
    firstKnown = System.nanoTime();
  }

  private static void print(String what, long nanoseconds) {
    System.out.println(String.format(Locale.ROOT, "%-45s %8.1f ms", what, nanoseconds / 1e6));
  }

  private void drawn(ViewState state, WindowLoop loop) {
    org.lwjgl.opengl.GL33C.glFinish();
    long now = System.nanoTime();
    if (firstFrame == 0) {
      firstFrame = now;
    }
    if (firstMove != 0) {
      frames++;
      long time = loop.frameTime(now);
      longest = Math.max(longest, time);
      times.add(time);
      slow += time > 33_000_000 ? 1 : 0;
    }
    if (firstMove == 0 && state.position() >= 0) {
      firstMove = now;
    }
    if (whole == 0 && state.loaded().whole()) {
      whole = now;
    }
    if (done == 0 && !state.isLoading()) {
      done = now;
    }
    if (done != 0 && !loop.isUnfinished()) {
      settled = now;
      state.quit();
    }
  }

  /** A program without a sheet. */
  private record FileSource(Path program) implements ProgramSource {
    @Override
    public String file() {
      return String.valueOf(program.getFileName());
    }

    @Override
    public Text read() throws UnreadableProgramException {
      try {
        return new Text(
            SourceText.of(file(), Files.readAllBytes(program)),
            SetupSheet.empty(),
            List.of(),
            Map.of());
      } catch (IOException e) {
        throw new UnreadableProgramException(e.toString());
      }
    }

    @Override
    public Optional<Text> beginning(int most) throws UnreadableProgramException {
      try (InputStream in = Files.newInputStream(program)) {
        SourceText text = SourceText.of(file(), in.readNBytes(most)).beginning(most - 1);
        return Optional.of(new Text(text, SetupSheet.empty(), List.of(), Map.of()));
      } catch (IOException e) {
        throw new UnreadableProgramException(e.toString());
      }
    }

    @Override
    public Judgement judge(Text text, flankfit.control.Interpretation checked) {
      return new Judgement(checked.findings(), "no thread is gauged");
    }
  }
}
