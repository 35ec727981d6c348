package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.lwjgl.opengl.GL;
import org.lwjgl.opengl.GL33C;
import org.lwjgl.opengl.GLDebugMessageCallback;
import org.lwjgl.opengl.KHRDebug;

/** A context that collects every complaint of the driver; closing it fails if there was one. */
final class Drawing implements AutoCloseable {
  private final GlContext context;
  private final List<String> complaints = new ArrayList<>();
  private final GLDebugMessageCallback callback;

  Drawing() throws NoOpenGlException {
    context = GlContext.open(true);
    callback =
        GLDebugMessageCallback.create(
            (source, type, id, severity, length, message, user) -> {
              if (type == KHRDebug.GL_DEBUG_TYPE_ERROR
                  || type == KHRDebug.GL_DEBUG_TYPE_UNDEFINED_BEHAVIOR) {
                complaints.add(GLDebugMessageCallback.getMessage(length, message));
              }
            });
    if (GL.getCapabilities().GL_KHR_debug) {
      KHRDebug.glDebugMessageCallback(callback, 0);
      GL33C.glEnable(KHRDebug.GL_DEBUG_OUTPUT_SYNCHRONOUS);
    }
  }

  /** Name of the renderer. */
  String renderer() {
    return String.valueOf(GL33C.glGetString(GL33C.GL_RENDERER));
  }

  /** Colour of a pixel of a picture, row from below. */
  static int pixel(byte[] rgb, int width, int height, double column, double row) {
    int x = (int) Math.floor(column);
    int y = height - 1 - (int) Math.floor(row);
    int at = 3 * (y * width + x);
    return (rgb[at] & 0xFF) << 16 | (rgb[at + 1] & 0xFF) << 8 | (rgb[at + 2] & 0xFF);
  }

  /** Greatest difference of a channel (1). */
  static int difference(int a, int b) {
    int most = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      most = Math.max(most, Math.abs((a >> shift & 0xFF) - (b >> shift & 0xFF)));
    }
    return most;
  }

  @Override
  public void close() {
    context.requireNoError();
    if (GL.getCapabilities().GL_KHR_debug) {
      KHRDebug.glDebugMessageCallback(null, 0);
    }
    callback.free();
    context.close();
    assertThat(complaints).isEmpty();
  }
}
