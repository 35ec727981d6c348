package flankfit.window;

import flankfit.picture.MotionPicture;
import flankfit.picture.NoOpenGlException;
import flankfit.picture.Png;
import flankfit.picture.Scene;
import flankfit.picture.Theme;
import flankfit.picture.View;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;

/** Writes pictures on a thread of its own, each under a new name, never over a file. */
final class WindowFiles {
  private static final int WIDTH = 2400;
  private static final int HEIGHT = 1600;

  /**
   * Times that letters and lines of a picture are larger: it is seen whole, on paper or a slide.
   */
  private static final double LETTERS = 2;

  private static final int MOST = 10_000;

  private final Path folder;
  private final Runnable wake;
  private final AtomicReference<Outcome> outcome = new AtomicReference<>();

  /** How a picture came out: where it lies, or what went wrong. */
  private record Outcome(String notice, Problem problem) {}

  /** Makes the bytes of a picture. */
  private interface Drawing {
    byte[] png() throws NoOpenGlException;
  }

  /** Pictures go into a folder; waking tells that one is written. */
  WindowFiles(Path folder, Runnable wake) {
    this.folder = folder;
    this.wake = wake;
  }

  /**
   * Where people keep pictures: a folder Pictures in their own one if there is one, else that one.
   */
  static Path folder(String home) {
    Path pictures = Path.of(home, "Pictures");
    return Files.isDirectory(pictures) ? pictures : Path.of(home);
  }

  /** Saves what a window shows: red, green, blue, rows from the top. */
  void screenshot(String program, byte[] rgb, int width, int height) {
    start(program + "-window", () -> Png.encode(rgb, width, height));
  }

  /** Saves a picture of the motion with title, rules and key. */
  void picture(String program, Scene scene, View view, Theme theme) {
    start(
        program + "-" + view.word(),
        () -> MotionPicture.png(scene, view, WIDTH, HEIGHT, LETTERS, theme));
  }

  /** Saves the scene of a sheet: red, green, blue, rows from the top. */
  void scene(String program, SheetName sheet, byte[] rgb, PixelBox box) {
    String name = program + "-" + sheet.word().toLowerCase(Locale.ROOT);
    start(name, () -> Png.encode(rgb, box.width(), box.height()));
  }

  private void start(String name, Drawing drawing) {
    Thread thread = new Thread(() -> run(name, drawing), "picture");
    thread.setDaemon(true);
    thread.start();
  }

  private void run(String name, Drawing drawing) {
    try {
      Path file = write(name, drawing.png());
      outcome.set(new Outcome("saved " + file, null));
    } catch (NoOpenGlException e) {
      outcome.set(
          new Outcome("", new Problem("the picture cannot be drawn", "", e.getMessage(), e.fix())));
    } catch (IOException e) {
      outcome.set(
          new Outcome(
              "",
              new Problem(
                  "the picture cannot be written",
                  folder.toString(),
                  e.toString(),
                  "free the disk or mend the rights of that folder")));
    }
    wake.run();
  }

  private Path write(String name, byte[] png) throws IOException {
    Files.createDirectories(folder);
    for (int i = 1; i <= MOST; i++) {
      Path file = folder.resolve("flankfit-" + name + "-" + i + ".png");
      if (!Files.exists(file)) {
        return Files.write(file, png, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      }
    }
    throw new IOException("there are " + MOST + " pictures of " + name + " already");
  }

  /** Tells how the last picture came out, once; gives whether there was something to tell. */
  boolean tell(Desk desk) {
    Outcome now = outcome.getAndSet(null);
    if (now == null) {
      return false;
    }
    if (now.problem() == null) {
      desk.notice(now.notice());
    } else {
      desk.problems(java.util.List.of(now.problem()));
    }
    return true;
  }

  /** The name of a program without folder and ending, for the names of its pictures. */
  static String stem(String program) {
    Path name = Path.of(program).getFileName();
    String text = name == null || name.toString().isEmpty() ? "window" : name.toString();
    int dot = text.lastIndexOf('.');
    return dot > 0 ? text.substring(0, dot) : text;
  }
}
