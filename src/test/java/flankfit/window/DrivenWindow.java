package flankfit.window;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiFunction;
import java.util.function.Predicate;

/**
 * A real window under a real display, driven by key and pointer events of the display from a thread
 * beside it. Each frame leaves a snapshot for that thread to look at.
 *
 * @param <S> the snapshot
 */
final class DrivenWindow<S> {
  /** A program is gauged meanwhile, on a machine that may be busy otherwise (ms). */
  private static final long PATIENCE = 40_000;

  /** A window that has drawn nothing for so long waits for events (ms). */
  private static final long QUIET = 250;

  private final BiFunction<ViewState, WindowLoop, S> look;
  private final AtomicReference<ViewState> state = new AtomicReference<>();
  private volatile S seen;
  private volatile long frames;

  /** Looks at each frame so. */
  DrivenWindow(BiFunction<ViewState, WindowLoop, S> look) {
    this.look = look;
  }

  /** Opens a window, lets a script run beside it, and closes the window when that ends. */
  void run(Loads loads, MotionWindow.Places places, Habits habits, Runnable script)
      throws Exception {
    CompletableFuture<Void> hand =
        CompletableFuture.runAsync(
            () -> {
              while (frames < 3) {
                Xdotool.pause(10);
              }
              Xdotool.focus();
              script.run();
            });
    // A window that waits for events draws no frame: it must be told from outside.
    CompletableFuture<Void> closed =
        hand.whenComplete(
            (done, failure) -> {
              state.get().quit();
              WindowLoop.wake();
            });
    MotionWindow.open(
        loads,
        places,
        habits,
        (now, loop) -> {
          state.set(now);
          seen = look.apply(now, loop);
          frames = loop.frames();
        });
    closed.get(10, TimeUnit.SECONDS);
  }

  /** The last snapshot. */
  S seen() {
    return seen;
  }

  /** Presses a key and waits for what it does. */
  S press(String key, Predicate<S> then) {
    Xdotool.run("key", key);
    return await("what the key " + key + " does", then);
  }

  /** Types a text. */
  void type(String text) {
    Xdotool.run("type", text);
  }

  /** Clicks at a place of the window (px, rows downwards). */
  void click(double column, double row) {
    Xdotool.run("mousemove", "" + Math.round(column), "" + Math.round(row), "click", "1");
  }

  /** Waits until a snapshot is as wanted. */
  S await(String what, Predicate<S> condition) {
    long end = System.nanoTime() + PATIENCE * 1_000_000;
    while (true) {
      S now = seen;
      if (condition.test(now)) {
        return now;
      }
      if (System.nanoTime() > end) {
        throw new AssertionError("waited in vain for " + what + "; last seen: " + now);
      }
      Xdotool.pause(10);
    }
  }

  /**
   * Waits until a snapshot is as wanted and stays so while the window has nothing more to draw:
   * what a key or the pointer asked for may take some frames.
   */
  S settled(String what, Predicate<S> condition) {
    long end = System.nanoTime() + PATIENCE * 1_000_000;
    while (System.nanoTime() < end) {
      await(what, condition);
      long drawn = frames;
      Xdotool.pause(QUIET);
      S now = seen;
      if (frames == drawn && condition.test(now)) {
        return now;
      }
    }
    throw new AssertionError("never came to rest: " + what + "; last seen: " + seen);
  }

  /** Places for a window's files in a folder. */
  static MotionWindow.Places places(Path folder) {
    return new MotionWindow.Places(folder.resolve("window.properties"), folder.resolve("pictures"));
  }
}
