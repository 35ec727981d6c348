package flankfit.window;

import java.nio.file.Path;

/** Makes programs of files that the user opens in the window. */
public interface Programs {
  /** The program in a file; reads nothing yet. */
  ProgramSource of(Path file);
}
