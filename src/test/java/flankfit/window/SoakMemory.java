package flankfit.window;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.lwjgl.opengl.GL33C;

/** What a window takes. */
final class SoakMemory {
  /** Names of objects that are asked for; a driver gives the lowest ones that are free. */
  private static final int NAMES = 4096;

  private SoakMemory() {}

  /** Objects of the heap that are still in use (bytes). */
  static long heap() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }

  /** Memory of the process that is not swapped out (bytes); 0 where the system does not tell. */
  static long resident() {
    Path status = Path.of("/proc/self/status");
    if (!Files.exists(status)) {
      return 0;
    }
    try {
      return Files.readAllLines(status).stream()
          .filter(line -> line.startsWith("VmRSS:"))
          .mapToLong(line -> 1024 * Long.parseLong(line.replaceAll("[^0-9]", "")))
          .sum();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Textures, buffers, framebuffers, arrays and programs of the present context. */
  static long objects() {
    long count = 0;
    for (int name = 1; name <= NAMES; name++) {
      count += GL33C.glIsTexture(name) ? 1 : 0;
      count += GL33C.glIsBuffer(name) ? 1 : 0;
      count += GL33C.glIsFramebuffer(name) ? 1 : 0;
      count += GL33C.glIsRenderbuffer(name) ? 1 : 0;
      count += GL33C.glIsVertexArray(name) ? 1 : 0;
      count += GL33C.glIsProgram(name) ? 1 : 0;
    }
    return count;
  }
}
