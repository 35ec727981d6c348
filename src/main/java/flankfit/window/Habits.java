package flankfit.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What the window keeps of a user's doings from one time to the next: programs opened. */
final class Habits implements AutoCloseable {
  private static final long PATIENCE = 1000;

  private final Optional<RecentFiles> recent;
  private volatile Optional<String> complaint = Optional.empty();
  private Thread writing = new Thread(() -> {});

  private Habits(Optional<RecentFiles> recent) {
    this.recent = recent;
  }

  /** Those kept in a folder. */
  static Habits in(Path folder) {
    return new Habits(Optional.of(RecentFiles.read(folder.resolve("recent.txt"))));
  }

  /** None are kept. */
  static Habits none() {
    return new Habits(Optional.empty());
  }

  /** Programs opened before, the last one first. */
  List<Path> recent() {
    return recent.map(RecentFiles::all).orElse(List.of());
  }

  /** A program is there; writing it down goes on beside. */
  void opened(Loaded program) {
    String file = program.input().file();
    if (recent.isPresent() && program.whole() && !file.isEmpty()) {
      RecentFiles files = recent.get();
      if (files.opened(Path.of(file))) {
        writing = new Thread(() -> write(files), "recent");
        writing.setDaemon(true);
        writing.start();
      }
    }
  }

  private void write(RecentFiles files) {
    try {
      files.write();
    } catch (IOException e) {
      complaint = Optional.of("recent files cannot be kept: " + e);
    }
  }

  /** Why they could not be kept; empty when they could. */
  Optional<String> complaint() {
    return complaint;
  }

  /** Waits a little for what is being written. */
  @Override
  public void close() {
    try {
      writing.join(PATIENCE);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
