package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.IntBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.lwjgl.system.MemoryStack;

/** A linked pair of shaders from {@code flankfit/shaders}; uniforms are looked up once, by name. */
final class ShaderProgram implements AutoCloseable {
  private final String name;
  private final int program;
  private final Map<String, Integer> uniforms = new HashMap<>();

  /**
   * Compiles and links {@code name.vert} and {@code name.frag}.
   *
   * @throws IllegalStateException with the driver's log if either fails
   */
  ShaderProgram(String name) {
    this.name = name;
    int vertex = compile(GL_VERTEX_SHADER, name + ".vert");
    int fragment = compile(GL_FRAGMENT_SHADER, name + ".frag");
    program = glCreateProgram();
    glAttachShader(program, vertex);
    glAttachShader(program, fragment);
    glLinkProgram(program);
    glDeleteShader(vertex);
    glDeleteShader(fragment);
    if (glGetProgrami(program, GL_LINK_STATUS) == GL_FALSE) {
      throw new IllegalStateException(name + " does not link: " + glGetProgramInfoLog(program));
    }
    findUniforms();
  }

  private void findUniforms() {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      IntBuffer size = stack.mallocInt(1);
      IntBuffer type = stack.mallocInt(1);
      int count = glGetProgrami(program, GL_ACTIVE_UNIFORMS);
      for (int i = 0; i < count; i++) {
        String found = glGetActiveUniform(program, i, size, type);
        String plain = found.endsWith("[0]") ? found.substring(0, found.length() - 3) : found;
        uniforms.put(plain, glGetUniformLocation(program, found));
      }
    }
  }

  private static int compile(int kind, String file) {
    int shader = glCreateShader(kind);
    glShaderSource(shader, source(file));
    glCompileShader(shader);
    if (glGetShaderi(shader, GL_COMPILE_STATUS) == GL_FALSE) {
      throw new IllegalStateException(file + " does not compile: " + glGetShaderInfoLog(shader));
    }
    return shader;
  }

  private static String source(String file) {
    try (InputStream in = ShaderProgram.class.getResourceAsStream("/flankfit/shaders/" + file)) {
      if (in == null) {
        throw new IllegalStateException("shader is missing: " + file);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Draws with this program from now on. */
  void use() {
    glUseProgram(program);
  }

  /**
   * The place of a uniform.
   *
   * @throws IllegalArgumentException if the program uses no uniform of that name
   */
  int uniform(String uniform) {
    Integer location = uniforms.get(uniform);
    if (location == null) {
      throw new IllegalArgumentException(name + " uses no uniform " + uniform);
    }
    return location;
  }

  @Override
  public void close() {
    glDeleteProgram(program);
  }
}
