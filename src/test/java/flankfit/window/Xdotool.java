package flankfit.window;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;

/** Keys and pointer of the display. */
final class Xdotool {
  private Xdotool() {}

  /** Leaves out a test where there is no display, or nothing to press keys with. */
  static void needed() {
    assumeTrue(
        System.getenv("DISPLAY") != null,
        "DISPLAY is not set; run under a display, for instance with xvfb-run");
    assumeTrue(isThere(), "xdotool is not installed, so no key can be pressed");
  }

  static boolean isThere() {
    try {
      return new ProcessBuilder("xdotool", "version").start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Gives the window the keys. */
  static void focus() {
    run("search", "--sync", "--name", "Flankfit", "windowmove", "0", "0", "windowfocus");
  }

  static void run(String... arguments) {
    String[] command = new String[arguments.length + 1];
    command[0] = "xdotool";
    System.arraycopy(arguments, 0, command, 1, arguments.length);
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      String said = new String(process.getInputStream().readAllBytes(), UTF_8);
      assertThat(process.waitFor()).as(said).isZero();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Waits (ms). */
  static void pause(long milliseconds) {
    try {
      Thread.sleep(milliseconds);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
