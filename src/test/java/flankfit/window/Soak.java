package flankfit.window;

import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.setup.SetupSheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToLongFunction;
import org.lwjgl.opengl.GL33C;

/**
 * Plays about with the window at random for some minutes: scrubs, changes sheets, turns the dial
 * and gauges, looks from elsewhere, changes letters and paper. Tells heap, memory of the process,
 * objects of OpenGL and times of frames, and fails where anything grows. Not part of the tests.
 */
final class Soak {
  /** Time between two looks at the memory (ns). */
  private static final long BETWEEN = 5_000_000_000L;

  /** Frames without a hand before such a look: what was asked for has come. */
  private static final int REST = 60;

  /** Looks at the beginning that do not count: programs are compiled, caches filled. */
  private static final int WARM = 3;

  private static final double MORE = 1.15;
  private static final long MEGABYTE = 1 << 20;

  private final long duration;
  private final SoakHand hand;
  private final Map<SheetName, FrameTimes> times = new EnumMap<>(SheetName.class);
  private final List<Look> looks = new ArrayList<>();
  private long begun;
  private long lastLook;
  private int resting;
  private boolean skips;
  private String failure = "the window was closed by hand";

  /** What was there at one time (bytes, number). */
  private record Look(long heap, long resident, long objects) {}

  private Soak(double minutes, long seed) {
    duration = Math.round(minutes * 60e9);
    hand = new SoakHand(new Random(seed));
  }

  /** Minutes, and a seed; the program is a sample. */
  public static void main(String[] args) throws Exception {
    double minutes = Double.parseDouble(args[0]);
    long seed = Long.parseLong(args[1]);
    Soak soak = new Soak(minutes, seed);
    Path program = Path.of("sample-programs", "filter-housing-m20.nc");
    Preferences preferences =
        new Preferences(
            1280,
            800,
            View.ISO,
            Theme.LIGHT,
            Optional.empty(),
            1,
            false,
            SheetName.GAUGE,
            false,
            false,
            1);
    try (Loader loader =
        new Loader(GaugedProgram.of(program), SetupSheet.empty(), List.of("a caution"))) {
      loader.begin();
      MotionWindow.show(loader, preferences, soak::drawn);
    }
    soak.tell(minutes, seed);
    if (!soak.failure.isEmpty()) {
      System.err.println("soak: " + soak.failure);
      System.exit(1);
    }
  }

  private void drawn(ViewState state, WindowLoop loop) {
    long now = System.nanoTime();
    loop.again();
    if (begun == 0) {
      if (state.gauge().bench().base().isEmpty() || state.isLoading()) {
        return;
      }
      begun = now;
      lastLook = now;
    }
    if (!skips) {
      times.computeIfAbsent(state.sheet(), sheet -> new FrameTimes()).add(loop.frameTime(now));
    }
    skips = false;
    if (resting > 0) {
      rest(state);
    } else if (now - lastLook > BETWEEN) {
      hand.tidy(state);
      resting = REST;
    } else {
      hand.act(state);
    }
  }

  /** Lets the window come to rest, then looks at the memory. */
  private void rest(ViewState state) {
    resting--;
    if (resting > 0) {
      return;
    }
    int error = GL33C.glGetError();
    if (error != GL33C.GL_NO_ERROR) {
      failure = "OpenGL tells of error " + error;
      state.quit();
      return;
    }
    looks.add(new Look(SoakMemory.heap(), SoakMemory.resident(), SoakMemory.objects()));
    skips = true;
    lastLook = System.nanoTime();
    if (lastLook - begun > duration) {
      failure = growth();
      state.quit();
    }
  }

  /** What has grown; empty for nothing. */
  private String growth() {
    List<Look> counted = looks.subList(Math.min(WARM, looks.size()), looks.size());
    if (counted.size() < 6) {
      return "too short to tell growth: " + looks.size() + " looks at the memory";
    }
    List<String> grown = new ArrayList<>();
    grows(counted, Look::heap, 16 * MEGABYTE).ifPresent(s -> grown.add("heap" + s));
    grows(counted, Look::resident, 64 * MEGABYTE).ifPresent(s -> grown.add("resident" + s));
    grows(counted, Look::objects, 4).ifPresent(s -> grown.add("objects of OpenGL" + s));
    return String.join("; ", grown);
  }

  /** Compares the middle of the first third with that of the last. */
  private static Optional<String> grows(List<Look> looks, ToLongFunction<Look> what, long atLeast) {
    int third = looks.size() / 3;
    long first = median(looks.subList(0, third), what);
    long last = median(looks.subList(looks.size() - third, looks.size()), what);
    boolean more = last > first * MORE && last - first > atLeast;
    return more ? Optional.of(" grew from " + first + " to " + last) : Optional.empty();
  }

  private static long median(List<Look> looks, ToLongFunction<Look> what) {
    long[] all = looks.stream().mapToLong(what).sorted().toArray();
    return all[all.length / 2];
  }

  private void tell(double minutes, long seed) {
    System.out.printf(Locale.ROOT, "soak of %.1f minutes, seed %d%n", minutes, seed);
    System.out.println("look   heap MB   resident MB   objects of OpenGL");
    for (int i = 0; i < looks.size(); i++) {
      Look look = looks.get(i);
      System.out.printf(
          Locale.ROOT,
          "%4d %9.1f %13.1f %8d%n",
          i + 1,
          look.heap() / (double) MEGABYTE,
          look.resident() / (double) MEGABYTE,
          look.objects());
    }
    times.forEach((sheet, frames) -> System.out.println(sheet.word() + " sheet: " + frames));
  }
}
