package flankfit.picture;

import static org.lwjgl.egl.EGL10.*;
import static org.lwjgl.egl.EGL12.EGL_RENDERABLE_TYPE;
import static org.lwjgl.egl.EGL12.eglBindAPI;
import static org.lwjgl.egl.EGL12.eglReleaseThread;
import static org.lwjgl.egl.EGL14.EGL_OPENGL_API;
import static org.lwjgl.egl.EGL14.EGL_OPENGL_BIT;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_MAJOR_VERSION;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_MINOR_VERSION;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_OPENGL_DEBUG;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_OPENGL_PROFILE_MASK;
import static org.lwjgl.system.MemoryUtil.NULL;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.List;
import org.lwjgl.PointerBuffer;
import org.lwjgl.egl.EGL;
import org.lwjgl.opengl.GL;
import org.lwjgl.opengl.GL33C;
import org.lwjgl.system.JNI;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/**
 * An OpenGL 3.3 core context without a window or a display, current on the thread that opened it.
 *
 * <p>First each EGL device is asked, which reaches a graphics processor on a headless machine, then
 * the platform without any surface. The display is fetched through the function's address: the
 * bound wrappers look for it before the display exists and fail. Context and display are released
 * in {@link #close}; a process that ends without it may crash in the driver.
 */
final class GlContext implements AutoCloseable {
  private static final int PLATFORM_DEVICE = 0x313F;
  private static final int PLATFORM_SURFACELESS = 0x31DD;
  private static final int MOST_DEVICES = 16;

  private final long display;
  private final long context;

  private GlContext(long display, long context) {
    this.display = display;
    this.context = context;
  }

  /**
   * Opens a context.
   *
   * @param debug whether the driver shall report mistakes
   * @throws NoOpenGlException if no device and no platform gives one
   */
  static GlContext open(boolean debug) throws NoOpenGlException {
    List<String> refusals = new ArrayList<>();
    try {
      long getDisplay = address("eglGetPlatformDisplayEXT", "eglGetPlatformDisplay");
      for (long device : devices()) {
        GlContext opened =
            tryOpen(JNI.callPPP(PLATFORM_DEVICE, device, NULL, getDisplay), debug, refusals);
        if (opened != null) {
          return opened;
        }
      }
      GlContext opened =
          tryOpen(JNI.callPPP(PLATFORM_SURFACELESS, NULL, NULL, getDisplay), debug, refusals);
      if (opened != null) {
        return opened;
      }
    } catch (LinkageError | IllegalStateException e) {
      throw NoOpenGlException.because("EGL answers: " + e.getMessage());
    }
    throw NoOpenGlException.because(
        refusals.isEmpty()
            ? "EGL offers no device"
            : "EGL answers: " + String.join("; ", refusals));
  }

  private static long address(String... names) throws NoOpenGlException {
    for (String name : names) {
      long address = EGL.getFunctionProvider().getFunctionAddress(name);
      if (address != NULL) {
        return address;
      }
    }
    throw NoOpenGlException.because("EGL lacks " + names[0]);
  }

  private static long[] devices() {
    long query = EGL.getFunctionProvider().getFunctionAddress("eglQueryDevicesEXT");
    if (query == NULL) {
      return new long[0];
    }
    try (MemoryStack stack = MemoryStack.stackPush()) {
      PointerBuffer devices = stack.mallocPointer(MOST_DEVICES);
      IntBuffer count = stack.callocInt(1);
      int answer =
          JNI.callPPI(
              MOST_DEVICES, MemoryUtil.memAddress(devices), MemoryUtil.memAddress(count), query);
      long[] found = new long[answer == 0 ? 0 : count.get(0)];
      for (int i = 0; i < found.length; i++) {
        found[i] = devices.get(i);
      }
      return found;
    }
  }

  private static GlContext tryOpen(long display, boolean debug, List<String> refusals) {
    if (display == NULL) {
      refusals.add("no display");
      return null;
    }
    try (MemoryStack stack = MemoryStack.stackPush()) {
      IntBuffer major = stack.mallocInt(1);
      IntBuffer minor = stack.mallocInt(1);
      if (!eglInitialize(display, major, minor)) {
        refusals.add("eglInitialize fails with 0x" + Integer.toHexString(eglGetError()));
        return null;
      }
      EGL.createDisplayCapabilities(display, major.get(0), minor.get(0));
      long context = makeContext(display, debug, stack);
      if (context == NULL) {
        refusals.add("eglCreateContext fails with 0x" + Integer.toHexString(eglGetError()));
        eglTerminate(display);
        return null;
      }
      if (!eglMakeCurrent(display, NULL, NULL, context)) {
        refusals.add("eglMakeCurrent fails with 0x" + Integer.toHexString(eglGetError()));
        eglDestroyContext(display, context);
        eglTerminate(display);
        return null;
      }
      GL.createCapabilities();
      return new GlContext(display, context);
    }
  }

  private static long makeContext(long display, boolean debug, MemoryStack stack) {
    if (!eglBindAPI(EGL_OPENGL_API)) {
      return NULL;
    }
    IntBuffer wanted =
        stack.ints(
            EGL_SURFACE_TYPE, EGL_PBUFFER_BIT, EGL_RENDERABLE_TYPE, EGL_OPENGL_BIT, EGL_NONE);
    PointerBuffer configs = stack.mallocPointer(1);
    IntBuffer count = stack.callocInt(1);
    if (!eglChooseConfig(display, wanted, configs, count) || count.get(0) == 0) {
      return NULL;
    }
    IntBuffer attributes = stack.mallocInt(9);
    attributes.put(EGL_CONTEXT_MAJOR_VERSION).put(3);
    attributes.put(EGL_CONTEXT_MINOR_VERSION).put(3);
    attributes.put(EGL_CONTEXT_OPENGL_PROFILE_MASK).put(EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT);
    if (debug) {
      attributes.put(EGL_CONTEXT_OPENGL_DEBUG).put(EGL_TRUE);
    }
    attributes.put(EGL_NONE).flip();
    return eglCreateContext(display, configs.get(0), NULL, attributes);
  }

  /**
   * Checks that the driver reports no mistake.
   *
   * @throws IllegalStateException with the code if it does
   */
  void requireNoError() {
    int error = GL33C.glGetError();
    if (error != GL33C.GL_NO_ERROR) {
      throw new IllegalStateException("OpenGL reports 0x" + Integer.toHexString(error));
    }
  }

  @Override
  public void close() {
    GL.setCapabilities(null);
    eglMakeCurrent(display, NULL, NULL, NULL);
    eglDestroyContext(display, context);
    eglTerminate(display);
    // Without it one driver takes the names of the next context for those of this one.
    eglReleaseThread();
  }
}
